package edgewright.booklet;

import edgewright.booklet.Strip.Break;
import edgewright.booklet.Strip.Piece;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.pdmodel.documentinterchange.taggedpdf.StandardStructureTypes;

/**
 * A line of a form that is filled in with a pencil: fields with lines to write on, and boxes to tick, from the left. Lines
 * that say the same stand under one another. What does not fit in the column goes on in the next line, under the first field.
 */
final class PencilLine {
    /** From line to line in lines of text: in the usual edition 7.9 mm, room for figures by hand. Common practice, no source. */
    private static final double HEIGHT = 1.5;

    /** How far letters and the line to write on reach under the baseline, in lines of text. */
    private static final double DESCENT = 0.25;

    /** What a box to tick measures, in lines of text. */
    private static final double TICK = 0.63;

    private static final double RULE_PT = 0.7;

    private final TextSetter setter;
    private final Styles styles;
    private final Sheet sheet;
    private final double indentPt;
    private final double gapPt;
    private final double baselinePt;
    private final List<List<Ink>> ornaments = new ArrayList<>();
    private final List<List<Ink>> words = new ArrayList<>();
    private double x;

    /**
     * @param indentPt where the first field begins
     */
    PencilLine(TextSetter setter, double indentPt) {
        this.setter = setter;
        this.styles = setter.styles();
        this.sheet = setter.sheet();
        this.indentPt = indentPt;
        this.gapPt = sheet.linePt() / 3;
        this.baselinePt = sheet.nearestBaselinePt((HEIGHT - DESCENT) * sheet.linePt());
        this.x = indentPt;
        newLine();
    }

    /** What the line is about, at its left edge. */
    PencilLine about(String text) {
        last(words).add(setter.words(0, baselinePt, text + " ", styles.strong()));
        return this;
    }

    /** Words, and a line to write on. */
    PencilLine field(String name, double blankPt) {
        return field(name, Optional.empty(), blankPt);
    }

    /** The same; what is known already stands on the line. */
    PencilLine field(String name, Optional<String> given, double blankPt) {
        say(name, blankPt);
        given.ifPresent(number -> {
            double width = setter.words(0, 0, number, styles.label()).widthPt();
            last(words).add(setter.words(x + (blankPt - width) / 2, baselinePt, number + " ", styles.label()));
        });
        rule(blankPt);
        return this;
    }

    /** Words, and a line to write on up to the right edge of the column. */
    PencilLine fieldToEdge(String name) {
        say(name, 0);
        rule(sheet.widthPt() - x);
        return this;
    }

    /** Boxes to tick, and what for; all on one line. */
    PencilLine ticks(String... texts) {
        double width = -gapPt;
        for (String text : texts) {
            width += tickPt(sheet)
                    + 2 * gapPt
                    + setter.words(0, 0, text, styles.text()).widthPt();
        }
        makeRoom(width);
        for (String text : texts) {
            tick(text);
        }
        return this;
    }

    /** Words alone. */
    PencilLine say(String text) {
        if (!text.isEmpty()) {
            say(text, 0);
        }
        return this;
    }

    /** A box to tick, and what for. */
    PencilLine tick(String text) {
        double width = setter.words(0, 0, text, styles.text()).widthPt() + tickPt(sheet) + gapPt;
        makeRoom(width);
        last(ornaments).add(tick(sheet, x, besidePt(sheet, baselinePt)));
        x += tickPt(sheet) + gapPt;
        say(text, 0);
        return this;
    }

    List<Strip> set(Tag parent) {
        Tag tag = parent.child(StandardStructureTypes.P);
        List<Strip> strips = new ArrayList<>();
        for (int i = 0; i < words.size(); i++) {
            strips.add(Strip.of(
                            HEIGHT * sheet.linePt(),
                            List.of(
                                    new Piece(Optional.empty(), ornaments.get(i)),
                                    new Piece(Optional.of(tag), words.get(i))))
                    .breaking(i < words.size() - 1 ? Break.NEVER : Break.UNWELCOME));
        }
        return strips;
    }

    /** The side of a box to tick. */
    static double tickPt(Sheet sheet) {
        return TICK * sheet.linePt();
    }

    /** The top of a box that stands as high as the capitals on this baseline. */
    static double besidePt(Sheet sheet, double baselinePt) {
        return baselinePt - (Face.CAP_HEIGHT * sheet.textSizePt() + tickPt(sheet)) / 2;
    }

    /** An empty box. */
    static Ink.Box tick(Sheet sheet, double xPt, double yPt) {
        return new Ink.Box(
                xPt + 0.5,
                yPt,
                tickPt(sheet),
                tickPt(sheet),
                Optional.empty(),
                Optional.of(Tone.INK),
                sheet.linePt() / 19);
    }

    private void say(String text, double thenPt) {
        double width = setter.words(0, 0, text, styles.text()).widthPt() + gapPt;
        // The white after words that nothing follows may stand beyond the column.
        makeRoom(thenPt == 0 ? width - gapPt : width + thenPt);
        last(words).add(setter.words(x, baselinePt, text + " ", styles.text()));
        x += width;
    }

    private void rule(double widthPt) {
        last(ornaments).add(Ink.Box.filled(x, baselinePt + 2, widthPt, RULE_PT, Tone.SOFT));
        x += widthPt + 2 * gapPt;
    }

    private void makeRoom(double widthPt) {
        if (x > indentPt && x + widthPt > sheet.widthPt()) {
            newLine();
            x = indentPt;
        }
    }

    private void newLine() {
        ornaments.add(new ArrayList<>());
        words.add(new ArrayList<>());
    }

    private static <T> T last(List<T> list) {
        return list.get(list.size() - 1);
    }
}
