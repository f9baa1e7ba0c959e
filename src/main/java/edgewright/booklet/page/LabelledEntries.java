package edgewright.booklet.page;

import edgewright.booklet.page.ColumnSlice.Break;
import edgewright.booklet.page.ColumnSlice.Piece;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Sets what has a label that hangs to the left of it, or stands over it where there is but one column: an abbreviation and its
 * meaning, a round and its words.
 */
public final class LabelledEntries {
    /** White between a label and what it names. */
    private static final double GUTTER_PT = 10;

    /** White between a label and what goes on beside it on the same line. */
    private static final double RUN_IN_PT = 6;

    private final TextSetter setter;

    public LabelledEntries(TextSetter setter) {
        this.setter = setter;
    }

    /** One paragraph beside a label. */
    public record Line(Tag tag, String text, TextStyle style, boolean stitches) {}

    /**
     * The label goes with the first line beside it. Read out, it comes before all of them.
     *
     * @param ornaments drawn at the left of the label, for instance the chip of a yarn, and as wide as {@code indentPt}
     * @param lines paragraphs one under the other; may be none
     */
    public List<ColumnSlice> entry(
            Tag labelTag, String label, TextStyle style, List<PageItem> ornaments, double indentPt, List<Line> lines) {
        if (setter.sheet().oneColumn()) {
            return stacked(labelTag, label, style, ornaments, indentPt, lines);
        }
        if (setter.sheet().narrow()) {
            return lines.size() == 1
                    ? hanging(labelTag, label, style, ornaments, indentPt, lines.get(0))
                    : stacked(labelTag, label, style, ornaments, indentPt, lines);
        }
        double room = setter.sheet().labelPt() - GUTTER_PT - indentPt;
        List<ColumnSlice> beside = new ArrayList<>();
        for (Line line : lines) {
            if (!line.text().isEmpty()) {
                beside.addAll(paragraph(line));
            }
        }
        boolean runsOver = beside.isEmpty();
        List<String> labelLines = LineBreaker.forProse(style.face(), style.sizePt())
                .lines(label, runsOver ? setter.sheet().widthPt() - indentPt : room);
        List<PageItem> labelInks = new ArrayList<>();
        for (int i = 0; i < labelLines.size(); i++) {
            double baselinePt = i * style.leadingPt() + style.baselinePt();
            labelInks.add(setter.words(indentPt, baselinePt, labelLines.get(i), style));
        }
        while (beside.size() < labelLines.size()) {
            beside.add(ColumnSlice.of(style.leadingPt(), List.of()));
        }
        List<Piece> first = new ArrayList<>();
        if (!ornaments.isEmpty()) {
            first.add(new Piece(Optional.empty(), ornaments));
        }
        first.add(new Piece(Optional.of(labelTag), labelInks));
        first.addAll(beside.get(0).pieces());
        beside.set(
                0,
                ColumnSlice.of(beside.get(0).heightPt(), first)
                        .breaking(beside.get(0).below()));
        return glued(beside, labelLines.size());
    }

    /** The label on lines of its own, then what it names. */
    private List<ColumnSlice> stacked(
            Tag labelTag, String label, TextStyle style, List<PageItem> ornaments, double indentPt, List<Line> lines) {
        List<ColumnSlice> strips = new ArrayList<>(setter.paragraph(
                labelTag, label, style, indentPt, setter.sheet().widthPt() - indentPt));
        if (!ornaments.isEmpty()) {
            ColumnSlice first = strips.get(0);
            List<Piece> pieces = new ArrayList<>(List.of(new Piece(Optional.empty(), ornaments)));
            pieces.addAll(first.pieces());
            strips.set(0, ColumnSlice.of(first.heightPt(), pieces).breaking(first.below()));
        }
        int labelLines = strips.size();
        for (Line line : lines) {
            if (!line.text().isEmpty()) {
                strips.addAll(paragraph(line));
            }
        }
        return glued(strips, labelLines);
    }

    /** The label, and what it names on the same line and those under it, as wide as the column. */
    public List<ColumnSlice> runIn(Tag labelTag, String label, TextStyle style, Line line) {
        return runIn(labelTag, label, style, 0, 0, line);
    }

    /** The label after its ornaments, what it names beside it, and more lines set in under it. */
    private List<ColumnSlice> hanging(
            Tag labelTag, String label, TextStyle style, List<PageItem> ornaments, double indentPt, Line line) {
        List<ColumnSlice> strips = new ArrayList<>(
                runIn(labelTag, label, style, indentPt, setter.sheet().linePt(), line));
        if (!ornaments.isEmpty()) {
            List<Piece> pieces = new ArrayList<>(List.of(new Piece(Optional.empty(), ornaments)));
            pieces.addAll(strips.get(0).pieces());
            strips.set(0, strips.get(0).holding(pieces));
        }
        return strips;
    }

    /**
     * @param labelPt where the label begins
     * @param hangPt where lines begin that have no label
     */
    private List<ColumnSlice> runIn(
            Tag labelTag, String label, TextStyle style, double labelPt, double hangPt, Line line) {
        double widthPt = setter.sheet().widthPt() - hangPt;
        PageItem.Words head = setter.words(labelPt, style.baselinePt(), label + " ", style);
        double beginsPt = labelPt + head.widthPt() + RUN_IN_PT;
        TextStyle text = line.style();
        List<String> lines = TextSetter.breaker(text, line.stitches())
                .lines(line.text(), widthPt, Math.min(widthPt, widthPt + hangPt - beginsPt));
        List<ColumnSlice> strips = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            List<Piece> pieces = new ArrayList<>();
            if (i == 0) {
                pieces.add(Piece.of(labelTag, head));
            }
            if (!lines.get(i).isEmpty()) {
                double x = i == 0 ? beginsPt : hangPt;
                pieces.add(Piece.of(line.tag(), setter.words(x, text.baselinePt(), lines.get(i), text)));
            }
            strips.add(ColumnSlice.of(text.leadingPt(), pieces));
        }
        return glued(strips, lines.get(0).isEmpty() ? 2 : 1);
    }

    private List<ColumnSlice> paragraph(Line line) {
        double x = setter.sheet().labelPt();
        double width = setter.sheet().textPt();
        return line.stitches()
                ? setter.stitches(line.tag(), line.text(), line.style(), x, width)
                : setter.paragraph(line.tag(), line.text(), line.style(), x, width);
    }

    /** Keeps an entry together: no break beside the label, near the edges or, if it can be helped, anywhere in it. */
    private static List<ColumnSlice> glued(List<ColumnSlice> strips, int labelLines) {
        List<ColumnSlice> glued = new ArrayList<>();
        for (int i = 0; i < strips.size(); i++) {
            boolean last = i == strips.size() - 1;
            boolean never = i < Math.max(labelLines, 2)
                    || i >= strips.size() - 3
                    || strips.get(i).below() == Break.NEVER;
            glued.add(
                    last
                            ? strips.get(i).breaking(Break.FREE)
                            : strips.get(i).breaking(never ? Break.NEVER : Break.UNWELCOME));
        }
        return glued;
    }
}
