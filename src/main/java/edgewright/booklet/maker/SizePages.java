package edgewright.booklet.maker;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.choice;
import static edgewright.texts.Arg.count;
import static edgewright.texts.Arg.decimal;
import static edgewright.texts.Arg.number;
import static edgewright.texts.Arg.shortest;

import edgewright.booklet.page.ColumnSlice;
import edgewright.booklet.page.ColumnSlice.Break;
import edgewright.booklet.page.StructureRole;
import edgewright.booklet.page.TableSetter;
import edgewright.booklet.page.Tag;
import edgewright.booklet.page.TextSetter;
import edgewright.booklet.parts.CountsPages;
import edgewright.chart.Chart;
import edgewright.chart.HookSize;
import edgewright.chart.PerSide;
import edgewright.chart.SideShape;
import edgewright.chart.Swatch;
import edgewright.chart.Terms;
import edgewright.fit.BackLayer;
import edgewright.fit.FinishedSize;
import edgewright.fit.GuideSentences;
import edgewright.fit.Inches;
import edgewright.fit.Ratio;
import edgewright.texts.Messages;
import edgewright.yarn.HookNames;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** The tables of the worksheet: counts that come out even, sizes, what is picked up, the back layer. */
final class SizePages {
    /** Repeats in a row of the table of counts, so that tens stand at the left and ones at the head. */
    private static final int TEN = 10;

    /** The table goes on to sides of about so many stitches: a large bed. */
    private static final int LARGE_SIDE = 320;

    private static final int MOST_TENS = 9;

    /** After the point, of what a swatch counts. */
    private static final int DIGITS = 3;

    /** Rows of a piece in ten centimetres, from thick yarn to thin. */
    private static final List<Integer> PIECE_ROWS = List.of(8, 10, 12, 14, 16, 18, 20, 24, 28);

    private final TextSetter setter;
    private final Messages says;
    private final WorksheetPlan plan;
    private final Chart chart;
    private final SideShape shape;
    private final Optional<Swatch> swatch;
    /** Whether US terms are told, be it beside others. */
    private final boolean american;

    SizePages(TextSetter setter, WorksheetPlan plan) {
        this.setter = setter;
        this.says = setter.says();
        this.plan = plan;
        this.chart = plan.chart();
        this.shape = chart.shape();
        this.swatch = chart.making().swatch();
        this.american = plan.options().telling().terms().inTurn().contains(Terms.US);
    }

    /** The counts with which a side comes out even in the counting round; around the size of the pattern, if it has one. */
    List<ColumnSlice> closing(Tag parent) {
        List<ColumnSlice> strips = headed(parent, says.text("sizes-even", arg("where", plan.name(plan.counting()))));
        String way = says.text("worksheet-count-way-" + plan.options().counting());
        if (shape.w() == 1) {
            strips.addAll(wide(
                    setter,
                    parent,
                    says.text("sizes-any", count("fewest", plan.stitches(plan.counting(), 0)), arg("way", way))));
            return strips;
        }
        int most = Math.max(tens().get(tens().size() - 1) * TEN + TEN, TEN);
        // Where the type is large, a row of ten would be wider than the page.
        int inRow = new TableSetter(setter).fits(TEN, plan.count(plan.counting(), most), widthPt()) ? TEN : TEN / 2;
        strips.addAll(wide(setter, parent, says.text("sizes-how-" + inRow, arg("way", way))));
        List<String> columns = new ArrayList<>(List.of(says.text("sizes-repeats")));
        IntStream.range(0, inRow).forEach(more -> columns.add(setter.language().count(more)));
        List<List<String>> rows = new ArrayList<>();
        for (int first : tens().stream()
                .flatMap(tens -> Stream.iterate(TEN * tens, m -> m < TEN * tens + TEN, m -> m + inRow))
                .toList()) {
            List<String> row = new ArrayList<>(List.of(setter.language().count(first)));
            IntStream.range(0, inRow).forEach(more -> row.add(plan.count(plan.counting(), first + more)));
            rows.add(row);
        }
        strips.addAll(table(parent, columns, rows));
        return strips;
    }

    private List<Integer> tens() {
        List<PerSide<Integer>> sizes = plan.options().size().sizes();
        if (!sizes.isEmpty()) {
            TreeSet<Integer> tens = new TreeSet<>();
            sizes.stream().flatMap(PerSide::stream).forEach(repeats -> {
                tens.add(Math.max(0, repeats - TEN / 2) / TEN);
                tens.add((repeats + TEN / 2) / TEN);
            });
            return List.copyOf(tens);
        }
        int largest = Math.max(TEN, (LARGE_SIDE - shape.fewestStitches(0)) / shape.w());
        return IntStream.rangeClosed(0, Math.min(MOST_TENS - 1, largest / TEN))
                .boxed()
                .toList();
    }

    /** A row a size: counts in the rounds that matter, and with a swatch how large it is. */
    List<ColumnSlice> sizes(Tag parent) {
        int last = chart.rounds().size();
        List<Integer> rounds =
                Stream.of(0, plan.counting(), plan.checking(), last).distinct().toList();
        List<String> columns = new ArrayList<>(List.of(says.text("sizes-repeats")));
        rounds.forEach(round ->
                columns.add(round == 0 ? says.text("sizes-base") : says.text("sizes-round", number("round", round))));
        swatch.ifPresent(s -> {
            List<String> cm = List.of(says.text("sizes-pieceCm"), says.text("sizes-outerCm"));
            columns.addAll(measures(cm, List.of(says.text("sizes-pieceIn"), says.text("sizes-outerIn"))));
        });
        List<List<String>> rows = new ArrayList<>();
        for (int repeats : repeats()) {
            List<String> row = new ArrayList<>(List.of(setter.language().count(repeats)));
            rounds.forEach(round -> row.add(plan.count(round, repeats)));
            swatch.ifPresent(s -> {
                FinishedSize size =
                        FinishedSize.onStitches(PerSide.all(Math.max(1, shape.stitches(0, repeats))), last, s);
                Inches in = new Inches(setter.language());
                row.addAll(measures(
                        List.of(cm(size.acrossMm()), cm(size.outerAcrossMm())),
                        List.of(in.ofMm(size.acrossMm()), in.ofMm(size.outerAcrossMm()))));
            });
            rows.add(row);
        }
        List<ColumnSlice> strips = headed(parent, says.text("sizes-heading"));
        String way = says.text("counts-caption-" + plan.options().counting());
        strips.addAll(wide(setter, parent, swatch.isPresent() ? way + " " + says.text("sizes-bySwatch") : way));
        strips.addAll(table(parent, columns, rows));
        return strips;
    }

    /** What is given in centimetres and, where US terms are told, in inches: those first if no others are. */
    private List<String> measures(List<String> cm, List<String> in) {
        return plan.options().telling().terms().measures(cm, in);
    }

    /** Those of the pattern and their neighbours, or examples. */
    private List<Integer> repeats() {
        if (plan.size().isEmpty()) {
            return CountsPages.repeats(chart, plan.options().size());
        }
        TreeSet<Integer> repeats = new TreeSet<>();
        plan.size().get().stream()
                .forEach(m -> IntStream.rangeClosed(Math.max(0, m - 1), m + 1).forEach(repeats::add));
        return List.copyOf(repeats);
    }

    /** How wide the border is by the swatch, and how large the whole; nothing without a swatch. */
    List<ColumnSlice> swatch(Tag parent) {
        if (swatch.isEmpty()) {
            return List.of();
        }
        Swatch measured = swatch.get();
        int rounds = chart.rounds().size();
        String by = says.text(
                "sizes-swatch",
                choice("terms", measuring()),
                shortest("stitches", measured.stitchesIn10Cm(), DIGITS),
                shortest("rounds", measured.roundsIn10Cm(), DIGITS));
        List<PerSide<Integer>> sizes = plan.options().size().sizes();
        List<ColumnSlice> strips = headed(parent, says.text("sizes-swatch-heading"));
        if (sizes.size() < 2) {
            String said = sizes.isEmpty() ? width(rounds * measured.roundMm()) : outer(sizes.get(0), measured);
            strips.addAll(wide(setter, parent, by + " " + said));
            return strips;
        }
        strips.addAll(wide(setter, parent, by));
        for (int i = 0; i < sizes.size(); i++) {
            String name = plan.options().size().names().get(i);
            strips.addAll(wide(
                    setter,
                    parent,
                    says.text("sizes-swatch-of", arg("size", name), arg("outer", outer(sizes.get(i), measured)))));
            // In large type all sizes together are higher than a page.
            int last = strips.size() - 1;
            strips.set(last, strips.get(last).breaking(Break.FREE));
        }
        return strips;
    }

    private String outer(PerSide<Integer> repeats, Swatch measured) {
        PerSide<Integer> base = chart.border().stitches(0, repeats).map(stitches -> Math.max(1, stitches));
        return new GuideSentences(setter.language())
                .outer(FinishedSize.onStitches(base, chart.rounds().size(), measured), measuring());
    }

    private String width(double mm) {
        return says.text(
                "sizes-width",
                choice("terms", measuring()),
                decimal("cm", mm / 10, 1),
                arg("inches", new Inches(setter.language()).ofMm(mm)));
    }

    /** The terms whose measures lead. */
    private Terms measuring() {
        return plan.options().telling().terms().measuring();
    }

    /** How the base round is picked up along the edges of a bare piece. */
    List<ColumnSlice> pickUp(Tag parent) {
        List<ColumnSlice> strips = headed(parent, says.text("sizes-pickUp-heading"));
        strips.addAll(wide(setter, parent, says.text("sizes-pickUp")));
        swatch.ifPresent(measured -> {
            strips.addAll(apart(
                    setter,
                    parent,
                    says.text(
                            "sizes-pickUp-rows",
                            choice("terms", measuring()),
                            shortest("stitches", measured.stitchesIn10Cm(), DIGITS))));
            List<String> columns =
                    new ArrayList<>(List.of(says.text("sizes-pickUp-rowsIn10Cm", choice("terms", measuring()))));
            List<String> row = new ArrayList<>(List.of(says.text("sizes-pickUp-ratio")));
            for (int rows : PIECE_ROWS) {
                Ratio ratio = Ratio.alongRows(rows, measured);
                columns.add(setter.language().count(rows));
                row.add(says.text("sizes-pickUp-in", count("stitches", ratio.stitches()), count("rows", ratio.rows())));
            }
            strips.addAll(table(parent, columns, List.of(row)));
        });
        return strips;
    }

    /** The counts of the back layer beside the front rounds that they match; nothing for a border of one layer. */
    List<ColumnSlice> back(Tag parent) {
        if (chart.making().back().isEmpty()) {
            return List.of();
        }
        BackLayer back = new BackLayer(chart.border(), chart.rounds().size());
        List<String> columns = new ArrayList<>(List.of(says.text("sizes-back-round"), says.text("sizes-back-front")));
        List<Integer> sizes = new ArrayList<>();
        plan.size()
                .ifPresentOrElse(
                        size -> plan.options().hand().workingOrder().forEach(side -> {
                            columns.add(says.text("side-" + side));
                            sizes.add(size.get(side));
                        }),
                        () -> CountsPages.repeats(chart, plan.options().size()).forEach(repeats -> {
                            columns.add(says.text("counts-repeats", count("repeats", repeats)));
                            sizes.add(repeats);
                        }));
        List<List<String>> rows = new ArrayList<>();
        for (BackLayer.Round round : back.rounds()) {
            List<String> row =
                    new ArrayList<>(List.of(Integer.toString(round.number()), Integer.toString(round.frontRound())));
            sizes.forEach(repeats -> row.add(plan.count(round.frontRound(), repeats)));
            rows.add(row);
        }
        List<ColumnSlice> strips = headed(parent, says.text("sizes-back-heading"));
        chart.making().backHook().ifPresent(hook -> strips.addAll(wide(setter, parent, backHook(hook))));
        strips.addAll(apart(
                setter,
                parent,
                says.text("sizes-back-how") + " "
                        + says.text("counts-caption-" + plan.options().counting())));
        strips.addAll(table(parent, columns, rows));
        return strips;
    }

    private String backHook(HookSize hook) {
        var mm = shortest("mm", hook.mm(), 2);
        Optional<String> name = american ? HookNames.us(hook) : Optional.empty();
        return name.map(us -> says.text("sizes-back-hookUs", mm, arg("name", us)))
                .orElseGet(() -> says.text("sizes-back-hook", mm));
    }

    /** The text of a table is as wide as the column; what is shaded stands out a little. */
    private double widthPt() {
        return setter.sheet().widthPt() + 2 * new TableSetter(setter).indentPt();
    }

    private List<ColumnSlice> headed(Tag parent, String heading) {
        return new ArrayList<>(setter.sectionHeading(parent, heading, Optional.empty()));
    }

    private List<ColumnSlice> table(Tag parent, List<String> columns, List<List<String>> rows) {
        TableSetter tables = new TableSetter(setter);
        List<ColumnSlice> table = new ArrayList<>(tables.tables(parent, columns, rows, -tables.indentPt(), widthPt()));
        table.set(0, table.get(0).spaced(setter.sheet().halfLinePt()));
        return table;
    }

    /** A paragraph as wide as the column, which goes with what follows it. */
    static List<ColumnSlice> wide(TextSetter setter, Tag parent, String text) {
        List<ColumnSlice> strips = new ArrayList<>(setter.paragraph(
                parent.child(StructureRole.PARAGRAPH),
                text,
                setter.styles().text(),
                0,
                setter.sheet().widthPt()));
        strips.replaceAll(strip -> strip.breaking(Break.NEVER));
        return strips;
    }

    /** The same with white over it. */
    static List<ColumnSlice> apart(TextSetter setter, Tag parent, String text) {
        List<ColumnSlice> strips = wide(setter, parent, text);
        strips.set(0, strips.get(0).spaced(setter.sheet().halfLinePt()));
        return strips;
    }

    private String cm(double mm) {
        return setter.language().decimal(mm / 10, 1);
    }
}
