package edgewright.booklet.parts;

import edgewright.booklet.page.Anchor;
import edgewright.booklet.page.ColumnSlice;
import edgewright.booklet.page.LabelledEntries;
import edgewright.booklet.page.PageItem;
import edgewright.booklet.page.RoundsTableSetter;
import edgewright.booklet.page.StructureRole;
import edgewright.booklet.page.TableSetter;
import edgewright.booklet.page.Tag;
import edgewright.booklet.page.TextSetter;
import edgewright.booklet.page.TextStyle;
import edgewright.chart.Chart;
import edgewright.chart.Yarn;
import edgewright.words.page.PatternPart;
import edgewright.words.page.TextBlock;
import edgewright.words.page.TextBlockPrinter;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;

/** Sets one part of the written pattern: its heading, then its blocks. */
public final class PartPages implements TextBlockPrinter {
    /** So many chips stand before the title of rounds, and leave room for its words. */
    private static final int MOST_CHIPS = 4;

    private final TextSetter setter;
    private final LabelledEntries entries;
    private final Chart chart;
    private final List<Yarn> yarns;
    private final PatternPart.Kind kind;
    private final Tag parent;
    private final List<ColumnSlice> strips = new ArrayList<>();
    private int headingStrips;
    private int yarnsSeen;
    private int roundsSet;
    private Tag list;
    /** Whether the last line holds one short entry, with room for another. */
    private boolean endsShort;

    private PartPages(TextSetter setter, Chart chart, PatternPart.Kind kind, Tag parent) {
        this.setter = setter;
        this.entries = new LabelledEntries(setter);
        this.chart = chart;
        this.yarns = chart.yarnsUsed();
        this.kind = kind;
        this.parent = parent;
    }

    /**
     * A part under a heading of its own.
     *
     * @param heading what is to be done to the heading
     */
    public static List<ColumnSlice> set(
            TextSetter setter,
            Chart chart,
            PatternPart part,
            Tag parent,
            UnaryOperator<List<ColumnSlice>> heading,
            Anchor anchor) {
        PartPages pages = new PartPages(setter, chart, part.kind(), parent);
        pages.strips.addAll(heading.apply(setter.partHeading(parent, anchor)));
        pages.headingStrips = setter.sheet().oneColumn() ? 1 : pages.strips.size();
        part.blocks().forEach(block -> block.printOn(pages));
        if (part.kind() == PatternPart.Kind.ABBREVIATIONS) {
            pages.keepTogether();
        }
        return pages.strips;
    }

    /** A list that is looked things up in is seen at a glance. */
    private void keepTogether() {
        strips.subList(0, strips.size() - 1)
                .replaceAll(strip ->
                        strip.below() == ColumnSlice.Break.FREE ? strip.breaking(ColumnSlice.Break.UNWELCOME) : strip);
    }

    @Override
    public void prose(TextBlock.Prose prose) {
        list = null;
        add(setter.paragraph(parent, prose.text()), setter.betweenPt());
    }

    @Override
    public void entry(TextBlock.Entry entry) {
        boolean begins = list == null;
        if (begins) {
            list = parent.child(StructureRole.LIST);
        }
        Tag item = list.child(StructureRole.ITEM);
        List<PageItem> chip = List.of();
        double indent = 0;
        if (kind == PatternPart.Kind.NEEDS && yarnsSeen < yarns.size()) {
            Yarn yarn = yarns.get(yarnsSeen);
            yarnsSeen++;
            chip = List.of(setter.chips().of(yarn, 0, 0));
            indent = setter.chips().indentPt();
        }
        TextStyle text = setter.styles().text();
        List<ColumnSlice> set = entries.entry(
                item.child(StructureRole.LABEL),
                entry.word(),
                setter.styles().strong(),
                chip,
                indent,
                List.of(new LabelledEntries.Line(item.child(StructureRole.BODY), entry.text(), text, false)));
        boolean isShort = kind == PatternPart.Kind.ABBREVIATIONS && isShort(set);
        if (isShort && endsShort) {
            ColumnSlice beside = strips.remove(strips.size() - 1);
            strips.add(besideEachOther(beside, set.get(0)));
        } else {
            add(set, begins || setter.sheet().oneColumn() ? setter.betweenPt() : 0);
        }
        endsShort = isShort && !endsShort;
    }

    /** Whether an entry in narrow columns is but one line, and no more than half of that. */
    private boolean isShort(List<ColumnSlice> entry) {
        return setter.sheet().narrow()
                && entry.size() == 1
                && entry.get(0).pieces().stream()
                        .flatMap(piece -> piece.inks().stream())
                        .filter(PageItem.Words.class::isInstance)
                        .map(PageItem.Words.class::cast)
                        .allMatch(words -> words.xPt() + words.widthPt() < secondPt() - 2 * setter.betweenPt());
    }

    /** Where the second of two short entries on a line begins. */
    private double secondPt() {
        return setter.sheet().widthPt() / 2;
    }

    private ColumnSlice besideEachOther(ColumnSlice first, ColumnSlice second) {
        List<ColumnSlice.Piece> pieces = new ArrayList<>(first.pieces());
        second.pieces()
                .forEach(piece -> pieces.add(new ColumnSlice.Piece(
                        piece.tag(),
                        piece.inks().stream()
                                .map(ink -> ink.moved(secondPt(), 0))
                                .toList())));
        return first.holding(pieces);
    }

    @Override
    public void round(TextBlock.RoundWords round) {
        list = null;
        List<LabelledEntries.Line> lines = new ArrayList<>();
        for (String line : round.steps()) {
            lines.add(new LabelledEntries.Line(
                    parent.child(StructureRole.PARAGRAPH), line, setter.styles().text(), true));
        }
        round(round.numbers(), round.name(), lines);
    }

    private void round(IntStream numbers, String name, List<LabelledEntries.Line> lines) {
        roundsSet++;
        if (roundsSet == 2) {
            // Under the heading there are two rounds, or it goes to the next page with the first.
            strips.set(strips.size() - 1, strips.get(strips.size() - 1).breaking(ColumnSlice.Break.UNWELCOME));
        }
        List<Yarn> yarns = numbers.filter(number -> number > 0)
                .mapToObj(chart::yarnOf)
                .distinct()
                .limit(MOST_CHIPS)
                .toList();
        List<ColumnSlice> set = entries.entry(
                parent.child(StructureRole.H3),
                name,
                setter.styles().label(),
                setter.chips().of(yarns),
                setter.chips().indentPt(yarns.size()),
                lines);
        add(set, setter.sheet().linePt());
    }

    @Override
    public void rounds(TextBlock.RoundsTable table) {
        list = null;
        if (setter.sheet().oneColumn()) {
            table.rows().forEach(this::listed);
            return;
        }
        List<RoundsTableSetter.Row> rows = table.rows().stream()
                .map(row -> new RoundsTableSetter.Row(chart.yarnOf(row.round()), row.across(), row.cells()))
                .toList();
        add(
                new RoundsTableSetter(setter).set(parent, table.columns(), rows),
                setter.sheet().halfLinePt());
    }

    /** A row where there is no room for columns: its cells one under the other, each under the head of its column. */
    private void listed(TextBlock.RoundRow row) {
        List<LabelledEntries.Line> lines = row.listed().stream()
                .skip(1)
                .map(line -> new LabelledEntries.Line(
                        parent.child(StructureRole.PARAGRAPH),
                        line,
                        setter.styles().text(),
                        true))
                .toList();
        round(IntStream.of(row.round()), row.name(), lines);
    }

    @Override
    public void technique(TextBlock.Technique technique) {
        throw new IllegalArgumentException("techniques have pages of their own");
    }

    @Override
    public void counts(TextBlock.CountsTable table) {
        list = null;
        List<ColumnSlice> caption = setter.paragraph(parent, table.caption());
        caption.set(caption.size() - 1, caption.get(caption.size() - 1).breaking(ColumnSlice.Break.NEVER));
        add(caption, setter.sheet().halfLinePt());
        double x = setter.sheet().labelPt();
        add(
                new TableSetter(setter)
                        .fitting(
                                parent,
                                table.columns(),
                                table.rows(),
                                x,
                                setter.sheet().textPt()),
                setter.sheet().halfLinePt());
    }

    private void add(List<ColumnSlice> more, double abovePt) {
        List<ColumnSlice> spaced = new ArrayList<>(more);
        if (!spaced.isEmpty() && strips.size() > headingStrips) {
            spaced.set(0, spaced.get(0).spaced(abovePt));
        }
        strips.addAll(spaced);
    }
}
