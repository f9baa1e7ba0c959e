package edgewright.booklet.page;

import edgewright.booklet.page.ColumnSlice.Break;
import edgewright.booklet.page.ColumnSlice.Piece;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A line of a form that is filled in with a pencil: fields with lines to write on, and boxes to tick, from the left. Lines
 * that say the same stand under one another. What does not fit in the column goes on in the next line, under the first field.
 */
public final class FormLine {
    /** From line to line in lines of text: in the usual edition 7.9 mm, room for figures by hand. Common practice, no source. */
    private static final double HEIGHT = 1.5;

    /** How far letters and the line to write on reach under the baseline, in lines of text. */
    private static final double DESCENT = 0.25;

    /** What a box to tick measures, in lines of text. */
    private static final double TICK = 0.63;

    private static final double RULE_PT = 0.7;

    private final TextSetter setter;
    private final TextStyles styles;
    private final PageLayout sheet;
    private final double indentPt;
    private final double gapPt;
    private final double baselinePt;
    private final List<List<PageItem>> ornaments = new ArrayList<>();
    private final List<List<PageItem>> words = new ArrayList<>();
    private double x;

    /**
     * @param indentPt where the first field begins
     */
    public FormLine(TextSetter setter, double indentPt) {
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
    public FormLine about(String text) {
        last(words).add(setter.words(0, baselinePt, text + " ", styles.strong()));
        return this;
    }

    /** Words, and a line to write on. */
    public FormLine field(String name, double blankPt) {
        return field(name, Optional.empty(), blankPt);
    }

    /** The same; what is known already stands on the line. */
    public FormLine field(String name, Optional<String> given, double blankPt) {
        say(name, blankPt);
        given.ifPresent(number -> {
            double width = setter.words(0, 0, number, styles.label()).widthPt();
            last(words).add(setter.words(x + (blankPt - width) / 2, baselinePt, number + " ", styles.label()));
        });
        rule(blankPt);
        return this;
    }

    /** Words, and a line to write on up to the right edge of the column. */
    public FormLine fieldToEdge(String name) {
        say(name, 0);
        rule(sheet.widthPt() - x);
        return this;
    }

    /** Boxes to tick, and what for; all on one line. */
    public FormLine ticks(String... texts) {
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
    public FormLine say(String text) {
        if (!text.isEmpty()) {
            say(text, 0);
        }
        return this;
    }

    /** A box to tick, and what for. */
    public FormLine tick(String text) {
        double width = setter.words(0, 0, text, styles.text()).widthPt() + tickPt(sheet) + gapPt;
        makeRoom(width);
        last(ornaments).add(tick(sheet, x, besidePt(sheet, baselinePt)));
        x += tickPt(sheet) + gapPt;
        say(text, 0);
        return this;
    }

    public List<ColumnSlice> set(Tag parent) {
        Tag tag = parent.child(StructureRole.PARAGRAPH);
        List<ColumnSlice> strips = new ArrayList<>();
        for (int i = 0; i < words.size(); i++) {
            strips.add(ColumnSlice.of(
                            HEIGHT * sheet.linePt(),
                            List.of(
                                    new Piece(Optional.empty(), ornaments.get(i)),
                                    new Piece(Optional.of(tag), words.get(i))))
                    .breaking(i < words.size() - 1 ? Break.NEVER : Break.UNWELCOME));
        }
        return strips;
    }

    /** The side of a box to tick. */
    public static double tickPt(PageLayout sheet) {
        return TICK * sheet.linePt();
    }

    /** The top of a box that stands as high as the capitals on this baseline. */
    public static double besidePt(PageLayout sheet, double baselinePt) {
        return baselinePt - (FaceMetrics.CAP_HEIGHT * sheet.textSizePt() + tickPt(sheet)) / 2;
    }

    /** An empty box. */
    public static PageItem.Box tick(PageLayout sheet, double xPt, double yPt) {
        return new PageItem.Box(
                xPt + 0.5,
                yPt,
                tickPt(sheet),
                tickPt(sheet),
                Optional.empty(),
                Optional.of(PageColour.INK),
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
        last(ornaments).add(PageItem.Box.filled(x, baselinePt + 2, widthPt, RULE_PT, PageColour.SOFT));
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
