package edgewright.booklet.parts;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.choice;

import edgewright.booklet.choice.BookletOptions;
import edgewright.booklet.choice.PrintedTerms;
import edgewright.booklet.page.Anchor;
import edgewright.booklet.page.ColumnSlice;
import edgewright.booklet.page.ColumnSlice.Break;
import edgewright.booklet.page.TableSetter;
import edgewright.booklet.page.Tag;
import edgewright.booklet.page.TextSetter;
import edgewright.chart.Chart;
import edgewright.chart.PerSide;
import edgewright.chart.Yarn;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import edgewright.yarn.Amounts;
import edgewright.yarn.YarnSentences;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * How much yarn the border takes: what to have of each yarn, then round by round. For the size of the pattern or, where it is
 * for any size, for a small, a middling and a large piece.
 */
public final class YarnPages {
    /** Exact: https://www.nist.gov/pml/owm/si-units-length */
    private static final double METRES_IN_A_YARD = 0.9144;

    private final TextSetter setter;
    private final Messages says;
    private final Language language;
    private final Chart chart;
    private final YarnSentences sentences;
    private final boolean oneSize;
    /** Whether this is one size, several or examples, in the keys of what is said. */
    private final String kind;

    private final boolean isOfExamples;
    /** What the sizes or examples are called; none for one size. */
    private final List<String> sizes;

    private final List<Amounts> amounts;
    private final boolean weighed;
    private final PrintedTerms terms;

    public YarnPages(TextSetter setter, Chart chart, BookletOptions options) {
        this.setter = setter;
        this.says = setter.says();
        this.chart = chart;
        language = options.language();
        sentences = new YarnSentences(language);
        oneSize = options.repeats().isPresent();
        isOfExamples = options.size().sizes().isEmpty();
        kind = oneSize ? "size" : isOfExamples ? "examples" : "sizes";
        if (oneSize) {
            sizes = List.of();
            amounts = List.of(Amounts.of(chart, options.repeats().get()));
        } else if (!options.size().sizes().isEmpty()) {
            sizes = options.size().names();
            amounts = options.size().sizes().stream()
                    .map(size -> Amounts.of(chart, size))
                    .toList();
        } else {
            List<Integer> examples = examples(CountsPages.repeats(chart));
            sizes = examples.stream()
                    .map(repeats -> CountsPages.repeats(setter, repeats))
                    .toList();
            amounts = examples.stream()
                    .map(repeats -> Amounts.of(chart, PerSide.all(repeats)))
                    .toList();
        }
        terms = options.telling().terms();
        weighed = chart.yarns().stream().anyMatch(yarn -> yarn.ball().isPresent());
    }

    /** The first, the middle and the last. */
    private static List<Integer> examples(List<Integer> repeats) {
        return IntStream.of(0, repeats.size() / 2, repeats.size() - 1)
                .distinct()
                .mapToObj(repeats::get)
                .toList();
    }

    /** Everything under one heading. */
    public List<ColumnSlice> set(Tag parent, Anchor anchor) {
        List<ColumnSlice> strips = new ArrayList<>(setter.partHeading(parent, anchor));
        strips.addAll(needs(parent));
        strips.addAll(rounds(parent));
        return strips;
    }

    /** What to have of each yarn on a small, a middling and a large piece; nothing where the words say it of each size. */
    private List<ColumnSlice> needs(Tag parent) {
        if (!isOfExamples) {
            return List.of();
        }
        List<ColumnSlice> strips = new ArrayList<>(paragraph(parent, says.text("yarn-needs-examples")));
        strips.replaceAll(strip -> strip.breaking(Break.NEVER));
        List<String> columns = new ArrayList<>(List.of(says.text("counts-yarn")));
        columns.addAll(heads());
        List<List<String>> rows = new ArrayList<>();
        for (Yarn yarn : chart.yarnsUsed()) {
            List<String> row = new ArrayList<>(List.of(name(yarn)));
            int inList = chart.yarns().indexOf(yarn);
            for (Amounts size : amounts) {
                row.addAll(cells(size.yarns().get(inList)));
            }
            rows.add(row);
        }
        strips.addAll(table(parent, 1, columns, rows));
        return strips;
    }

    private List<String> heads() {
        List<String> heads = new ArrayList<>();
        for (String size : sizes) {
            heads.addAll(lengthsOf(size));
            if (weighed) {
                heads.add(says.text("yarn-gramsOf", arg("size", size)));
            }
        }
        return heads;
    }

    private List<String> cells(Amounts.OfYarn yarn) {
        List<String> cells = new ArrayList<>(terms.measures(
                List.of(roundedUp(yarn.metres())), List.of(roundedUp(yarn.metres() / METRES_IN_A_YARD))));
        if (weighed) {
            cells.add(yarn.grams().isPresent() ? roundedUp(yarn.grams().getAsDouble()) : says.text("yarn-unknown"));
        }
        return cells;
    }

    /** What each round takes of its yarn. */
    private List<ColumnSlice> rounds(Tag parent) {
        List<ColumnSlice> strips =
                new ArrayList<>(paragraph(parent, says.text("yarn-rounds-" + kind, choice("terms", terms))));
        if (isOfExamples) {
            strips.set(0, strips.get(0).spaced(setter.sheet().linePt()));
        }
        strips.replaceAll(strip -> strip.breaking(Break.NEVER));
        List<String> columns = new ArrayList<>(List.of(says.text("counts-round"), says.text("counts-yarn")));
        columns.addAll(roundHeads());
        List<List<String>> rows = new ArrayList<>();
        for (int i = 0; i < amounts.get(0).rounds().size(); i++) {
            int at = i;
            Amounts.OfRound first = amounts.get(0).rounds().get(i);
            List<String> row = new ArrayList<>(
                    List.of(sentences.round(first.round()), first.round().yarn()));
            row.addAll(oneSize ? lengths(first) : lengths(at));
            rows.add(row);
        }
        strips.addAll(table(parent, CountsPages.NAMING, columns, rows));
        return strips;
    }

    private List<String> roundHeads() {
        List<String> columns = new ArrayList<>();
        for (String size : sizes) {
            columns.addAll(lengthsOf(size));
        }
        if (oneSize) {
            columns.addAll(terms.measures(
                    List.of(says.text("yarn-metres"), says.text("yarn-soFar")),
                    List.of(says.text("yarn-yards"), says.text("yarn-yardsSoFar"))));
        }
        return columns;
    }

    /** The heads of the columns for one of several sizes. */
    private List<String> lengthsOf(String size) {
        return terms.measures(
                List.of(says.text("yarn-metresOf", arg("size", size))),
                List.of(says.text("yarn-yardsOf", arg("size", size))));
    }

    /** What a round takes and what was used by its end, on a piece of one size. */
    private List<String> lengths(Amounts.OfRound round) {
        return terms.measures(
                List.of(metres(round.metres()), metres(round.metresSoFar())),
                List.of(yards(round.metres()), yards(round.metresSoFar())));
    }

    /** What a round takes in each size. */
    private List<String> lengths(int at) {
        List<String> cells = new ArrayList<>();
        for (Amounts size : amounts) {
            double metres = size.rounds().get(at).metres();
            cells.addAll(terms.measures(List.of(metres(metres)), List.of(yards(metres))));
        }
        return cells;
    }

    private List<ColumnSlice> table(Tag parent, int naming, List<String> columns, List<List<String>> rows) {
        List<ColumnSlice> table = new ArrayList<>(new TableSetter(setter)
                .tables(
                        parent,
                        naming,
                        columns,
                        rows,
                        setter.sheet().labelPt(),
                        setter.sheet().textPt()));
        table.set(0, table.get(0).spaced(setter.sheet().halfLinePt()));
        return table;
    }

    private List<ColumnSlice> paragraph(Tag parent, String text) {
        return new ArrayList<>(setter.paragraph(parent, text));
    }

    private String name(Yarn yarn) {
        String name = yarn.id() + " " + yarn.name();
        return setter.fitted(name, setter.styles().figures(), setter.sheet().textPt() / 3);
    }

    private String yards(double metres) {
        return metres(metres / METRES_IN_A_YARD);
    }

    private String metres(double metres) {
        return language.decimal(metres, 1);
    }

    private String roundedUp(double number) {
        return language.count((long) Math.ceil(number - 1e-6));
    }
}
