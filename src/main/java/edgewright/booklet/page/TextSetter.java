package edgewright.booklet.page;

import edgewright.booklet.page.ColumnSlice.Break;
import edgewright.booklet.page.ColumnSlice.Piece;
import edgewright.draw.paint.ShortenedText;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Sets text into strips: lines of a paragraph, of an entry with a hanging label, of a heading. */
public final class TextSetter {
    private final PageLayout sheet;
    private final TextStyles styles;
    private final YarnChips chips;
    private final Language language;
    private final Messages says;

    /** @param language in which the pattern speaks */
    public TextSetter(PageLayout sheet, TextStyles styles, YarnChips chips, Language language) {
        this.sheet = sheet;
        this.styles = styles;
        this.chips = chips;
        this.language = language;
        this.says = language.messages("booklet");
    }

    /** The same for one of two columns side by side. */
    public TextSetter inHalf() {
        PageLayout half = sheet.half();
        return new TextSetter(half, styles.inHalf(half), chips, language);
    }

    public TextStyles styles() {
        return styles;
    }

    public PageLayout sheet() {
        return sheet;
    }

    public YarnChips chips() {
        return chips;
    }

    /** In which the pattern speaks. */
    public Language language() {
        return language;
    }

    /** What the booklet says in its own words. */
    public Messages says() {
        return says;
    }

    /** The white between paragraphs: half a line, or a whole one where groups are to be parted by blank lines. */
    public double betweenPt() {
        return sheet.oneColumn() ? sheet.linePt() : sheet.halfLinePt();
    }

    /** The heading of a part of the pattern, under a rule across the column; goes with what follows it. */
    public List<ColumnSlice> partHeading(Tag parent, Anchor anchor) {
        TextStyle style = styles.part();
        List<String> lines = LineBreaker.forProse(style.face(), style.sizePt()).lines(anchor.title(), sheet.widthPt());
        Tag tag = parent.child(StructureRole.H2);
        boolean half = sheet.narrow();
        double leading =
                half ? style.leadingPt() : Math.max(1.5 * sheet.linePt(), style.leadingPt() - sheet.halfLinePt());
        double ruleToTop = sheet.halfLinePt();
        List<ColumnSlice> strips = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            boolean first = i == 0;
            boolean last = i == lines.size() - 1;
            double top = first ? ruleToTop : 0;
            List<Piece> pieces = new ArrayList<>();
            if (first) {
                pieces.add(Piece.ornament(PageItem.Box.filled(0, 0, sheet.widthPt(), 1.2, style.colour())));
            }
            double baseline = sheet.nearestBaselinePt(top + (leading + FaceMetrics.CAP_HEIGHT * style.sizePt()) / 2);
            pieces.add(Piece.of(tag, words(0, baseline, lines.get(i), style)));
            ColumnSlice strip = ColumnSlice.of(top + leading + (last && !half ? sheet.halfLinePt() : 0), pieces)
                    .breaking(Break.NEVER);
            strips.add(first ? strip.spaced((half ? 0.5 : 1.5) * sheet.linePt()).anchored(anchor) : strip);
        }
        return strips;
    }

    /** A heading inside a part; goes with what follows it. */
    public List<ColumnSlice> sectionHeading(Tag parent, String text, Optional<Anchor> anchor) {
        List<ColumnSlice> strips = new ArrayList<>();
        for (ColumnSlice strip :
                lines(parent.child(StructureRole.H3), text, styles.section(), 0, sheet.widthPt(), false)) {
            strips.add(strip.breaking(Break.NEVER));
        }
        ColumnSlice first = strips.get(0).spaced(sheet.linePt());
        strips.set(0, anchor.map(first::anchored).orElse(first));
        return strips;
    }

    /** A paragraph of running text beside the labels. */
    public List<ColumnSlice> paragraph(Tag parent, String text) {
        return paragraph(parent.child(StructureRole.PARAGRAPH), text, styles.text(), sheet.labelPt(), sheet.textPt());
    }

    /** A paragraph in its own style and place. */
    public List<ColumnSlice> paragraph(Tag tag, String text, TextStyle style, double xPt, double widthPt) {
        return together(lines(tag, text, style, xPt, widthPt, false));
    }

    /** The lines of a row of stitches, broken where it pauses. */
    List<ColumnSlice> stitches(Tag tag, String text, TextStyle style, double xPt, double widthPt) {
        return together(lines(tag, text, style, xPt, widthPt, true));
    }

    /** One line, cut with an ellipsis if it is wider than its room; not cut between a letter and its accent. */
    public String fitted(String text, TextStyle style, double widthPt) {
        return ShortenedText.toFit(text, shorter -> style.face().widthPt(shorter, style.sizePt()) <= widthPt);
    }

    public PageItem.Words words(double xPt, double baselinePt, String text, TextStyle style) {
        return new PageItem.Words(xPt, baselinePt, text, style.face(), style.sizePt(), style.colour());
    }

    /** Words that end at {@code rightPt}. */
    public PageItem.Words wordsTo(double rightPt, double baselinePt, String text, TextStyle style) {
        PageItem.Words words = words(0, baselinePt, text, style);
        return words.moved(rightPt - words.widthPt(), 0);
    }

    private List<ColumnSlice> lines(
            Tag tag, String text, TextStyle style, double xPt, double widthPt, boolean stitches) {
        List<String> lines = breaker(style, stitches).lines(text, widthPt);
        List<ColumnSlice> strips = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            String line = lines.get(i);
            strips.add(ColumnSlice.of(
                    style.leadingPt(), List.of(Piece.of(tag, words(xPt, style.baselinePt(), line, style)))));
        }
        return strips;
    }

    /** For rows of stitches or for sentences. */
    static LineBreaker breaker(TextStyle style, boolean stitches) {
        return stitches
                ? LineBreaker.forStitches(style.face(), style.sizePt())
                : LineBreaker.forProse(style.face(), style.sizePt());
    }

    /** No page ends after the first line of a paragraph or before its last. */
    public static List<ColumnSlice> together(List<ColumnSlice> lines) {
        List<ColumnSlice> kept = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            boolean nearEdge = i == 0 || i == lines.size() - 2;
            boolean last = i == lines.size() - 1;
            kept.add(last ? lines.get(i) : lines.get(i).breaking(nearEdge ? Break.NEVER : Break.UNWELCOME));
        }
        return kept;
    }
}
