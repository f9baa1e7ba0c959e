package edgewright.booklet;

import edgewright.booklet.Strip.Break;
import edgewright.booklet.Strip.Piece;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.pdmodel.documentinterchange.taggedpdf.StandardStructureTypes;

/** Sets text into strips: lines of a paragraph, of an entry with a hanging label, of a heading. */
final class TextSetter {
    private final Sheet sheet;
    private final Styles styles;
    private final Chips chips;

    TextSetter(Sheet sheet, Styles styles, Chips chips) {
        this.sheet = sheet;
        this.styles = styles;
        this.chips = chips;
    }

    Styles styles() {
        return styles;
    }

    Sheet sheet() {
        return sheet;
    }

    Chips chips() {
        return chips;
    }

    /** The white between paragraphs: half a line, or a whole one where groups are to be parted by blank lines. */
    double betweenPt() {
        return sheet.oneColumn() ? sheet.linePt() : sheet.halfLinePt();
    }

    /** The heading of a part of the pattern, under a rule across the column; goes with what follows it. */
    List<Strip> partHeading(Tag parent, Anchor anchor) {
        Style style = styles.part();
        List<String> lines = LineBreaker.forProse(style.face(), style.sizePt()).lines(anchor.title(), sheet.widthPt());
        Tag tag = parent.child(StandardStructureTypes.H2);
        double leading = Math.max(1.5 * sheet.linePt(), style.leadingPt() - sheet.halfLinePt());
        double ruleToTop = sheet.halfLinePt();
        List<Strip> strips = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            boolean first = i == 0;
            boolean last = i == lines.size() - 1;
            double top = first ? ruleToTop : 0;
            List<Piece> pieces = new ArrayList<>();
            if (first) {
                pieces.add(Piece.ornament(Ink.Box.filled(0, 0, sheet.widthPt(), 1.2, Tone.MARSH)));
            }
            double baseline = sheet.nearestBaselinePt(top + (leading + Face.CAP_HEIGHT * style.sizePt()) / 2);
            pieces.add(Piece.of(tag, words(0, baseline, ended(lines.get(i), last), style)));
            Strip strip = Strip.of(top + leading + (last ? sheet.halfLinePt() : 0), pieces)
                    .breaking(Break.NEVER);
            strips.add(first ? strip.spaced(1.5 * sheet.linePt()).anchored(anchor) : strip);
        }
        return strips;
    }

    /** A heading inside a part; goes with what follows it. */
    List<Strip> sectionHeading(Tag parent, String text, Optional<Anchor> anchor) {
        List<Strip> strips = new ArrayList<>();
        for (Strip strip :
                lines(parent.child(StandardStructureTypes.H3), text, styles.section(), 0, sheet.widthPt(), false)) {
            strips.add(strip.breaking(Break.NEVER));
        }
        Strip first = strips.get(0).spaced(sheet.linePt());
        strips.set(0, anchor.map(first::anchored).orElse(first));
        return strips;
    }

    /** A paragraph of running text beside the labels. */
    List<Strip> paragraph(Tag parent, String text) {
        return paragraph(parent.child(StandardStructureTypes.P), text, styles.text(), sheet.labelPt(), sheet.textPt());
    }

    /** A paragraph in its own style and place. */
    List<Strip> paragraph(Tag tag, String text, Style style, double xPt, double widthPt) {
        return together(lines(tag, text, style, xPt, widthPt, false));
    }

    /** The lines of a row of stitches, broken where it pauses. */
    List<Strip> stitches(Tag tag, String text, Style style, double xPt, double widthPt) {
        return together(lines(tag, text, style, xPt, widthPt, true));
    }

    /** One line, cut with an ellipsis if it is wider than its room. */
    String fitted(String text, Style style, double widthPt) {
        String printable = style.face().printable(text).strip();
        if (style.face().widthPt(printable, style.sizePt()) <= widthPt) {
            return printable;
        }
        int end = printable.length();
        while (end > 0 && style.face().widthPt(printable.substring(0, end).strip() + "…", style.sizePt()) > widthPt) {
            end = printable.offsetByCodePoints(end, -1);
        }
        return printable.substring(0, end).strip() + "…";
    }

    Ink.Words words(double xPt, double baselinePt, String text, Style style) {
        return new Ink.Words(
                xPt, baselinePt, style.face().printable(text), style.face(), style.sizePt(), style.colour());
    }

    /** Words that end at {@code rightPt}. */
    Ink.Words wordsTo(double rightPt, double baselinePt, String text, Style style) {
        Ink.Words words = words(0, baselinePt, text, style);
        return words.moved(rightPt - words.widthPt(), 0);
    }

    private List<Strip> lines(Tag tag, String text, Style style, double xPt, double widthPt, boolean stitches) {
        List<String> lines = breaker(style, stitches).lines(text, widthPt);
        List<Strip> strips = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            String line = ended(lines.get(i), i == lines.size() - 1);
            strips.add(Strip.of(
                    style.leadingPt(), List.of(Piece.of(tag, words(xPt, style.baselinePt(), line, style)))));
        }
        return strips;
    }

    /** For rows of stitches or for sentences. */
    static LineBreaker breaker(Style style, boolean stitches) {
        return stitches
                ? LineBreaker.forStitches(style.face(), style.sizePt())
                : LineBreaker.forProse(style.face(), style.sizePt());
    }

    /** A line that goes on ends with a blank, so that the last word and the next are two to whoever reads the text out. */
    static String ended(String line, boolean last) {
        return last ? line : line + " ";
    }

    /** No page ends after the first line of a paragraph or before its last. */
    static List<Strip> together(List<Strip> lines) {
        List<Strip> kept = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            boolean nearEdge = i == 0 || i == lines.size() - 2;
            boolean last = i == lines.size() - 1;
            kept.add(last ? lines.get(i) : lines.get(i).breaking(nearEdge ? Break.NEVER : Break.UNWELCOME));
        }
        return kept;
    }
}
