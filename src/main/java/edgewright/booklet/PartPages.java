package edgewright.booklet;

import edgewright.chart.Chart;
import edgewright.chart.Yarn;
import edgewright.words.Block;
import edgewright.words.BlockPrinter;
import edgewright.words.Part;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.apache.pdfbox.pdmodel.documentinterchange.taggedpdf.StandardStructureTypes;

/** Sets one part of the written pattern: its heading, then its blocks. */
final class PartPages implements BlockPrinter {
    private final TextSetter setter;
    private final Entries entries;
    private final Chart chart;
    private final List<Yarn> yarns;
    private final Part.Kind kind;
    private final Tag parent;
    private final List<Strip> strips = new ArrayList<>();
    private int headingStrips;
    private int yarnsSeen;
    private Tag list;

    private PartPages(TextSetter setter, Chart chart, Part.Kind kind, Tag parent) {
        this.setter = setter;
        this.entries = new Entries(setter);
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
    static List<Strip> set(
            TextSetter setter, Chart chart, Part part, Tag parent, UnaryOperator<List<Strip>> heading, Anchor anchor) {
        PartPages pages = new PartPages(setter, chart, part.kind(), parent);
        pages.strips.addAll(heading.apply(setter.partHeading(parent, anchor)));
        pages.headingStrips = setter.sheet().oneColumn() ? 1 : pages.strips.size();
        part.blocks().forEach(block -> block.printOn(pages));
        if (part.kind() == Part.Kind.ABBREVIATIONS) {
            pages.keepTogether();
        }
        return pages.strips;
    }

    /** A list that is looked things up in is seen at a glance. */
    private void keepTogether() {
        strips.subList(0, strips.size() - 1)
                .replaceAll(strip -> strip.below() == Strip.Break.FREE ? strip.breaking(Strip.Break.UNWELCOME) : strip);
    }

    @Override
    public void prose(Block.Prose prose) {
        list = null;
        add(setter.paragraph(parent, prose.text()), setter.betweenPt());
    }

    @Override
    public void entry(Block.Entry entry) {
        if (list == null) {
            list = parent.child(StandardStructureTypes.L);
        }
        Tag item = list.child(StandardStructureTypes.LI);
        List<Ink> chip = List.of();
        double indent = 0;
        if (kind == Part.Kind.NEEDS && yarnsSeen < yarns.size()) {
            Yarn yarn = yarns.get(yarnsSeen);
            yarnsSeen++;
            chip = List.of(setter.chips().of(yarn, 0, 0));
            indent = setter.chips().indentPt();
        }
        Style text = setter.styles().text();
        add(
                entries.entry(
                        item.child(StandardStructureTypes.LBL),
                        entry.word(),
                        setter.styles().strong(),
                        chip,
                        indent,
                        List.of(new Entries.Line(
                                item.child(StandardStructureTypes.L_BODY), entry.text(), text, false))),
                setter.sheet().oneColumn() ? setter.betweenPt() : 0);
    }

    @Override
    public void round(Block.RoundWords round) {
        list = null;
        Optional<Yarn> yarn = round.round() == 0 ? Optional.empty() : Optional.of(chart.yarnOf(round.round()));
        List<Ink> chip = yarn.map(y -> List.of(setter.chips().of(y, 0, 0))).orElse(List.of());
        String head = round.lines().get(0);
        int end = endOfName(head, yarn.map(Yarn::name).orElse(""));
        List<Entries.Line> lines = new ArrayList<>();
        lines.add(new Entries.Line(
                parent.child(StandardStructureTypes.P),
                head.substring(end).strip(),
                setter.styles().text(),
                true));
        for (String line : round.lines().subList(1, round.lines().size())) {
            lines.add(new Entries.Line(
                    parent.child(StandardStructureTypes.P),
                    line,
                    setter.styles().text(),
                    true));
        }
        List<Strip> set = entries.entry(
                parent.child(StandardStructureTypes.H3),
                head.substring(0, end).strip(),
                setter.styles().label(),
                chip,
                chip.isEmpty() ? 0 : setter.chips().indentPt(),
                lines);
        add(set, setter.sheet().linePt());
    }

    @Override
    public void counts(Block.CountsTable table) {
        list = null;
        List<Strip> caption = setter.paragraph(parent, table.caption());
        caption.set(caption.size() - 1, caption.get(caption.size() - 1).breaking(Strip.Break.NEVER));
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

    /** Where the sentence that names a round and its yarn ends; the yarn's name may hold full stops of its own. */
    static int endOfName(String head, String yarn) {
        int named = Math.max(0, head.indexOf(yarn)) + yarn.length();
        int end = head.indexOf(". ", Math.min(named, head.length()));
        return end < 0 ? head.length() : end + 1;
    }

    private void add(List<Strip> more, double abovePt) {
        List<Strip> spaced = new ArrayList<>(more);
        if (!spaced.isEmpty() && strips.size() > headingStrips) {
            spaced.set(0, spaced.get(0).spaced(abovePt));
        }
        strips.addAll(spaced);
    }
}
