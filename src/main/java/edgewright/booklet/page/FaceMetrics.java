package edgewright.booklet.page;

import edgewright.draw.paint.FontStack;
import edgewright.draw.paint.Shape.Weight;
import edgewright.draw.paint.Typeface;
import java.util.HashMap;
import java.util.Map;
import java.util.function.IntToDoubleFunction;

/**
 * How wide the type of one weight is: the faces of {@link FontStack}, as they are printed. There is no kerning and no ligature,
 * so that what is measured and what is shown is the same. Texts are measured as the stack has them printed, with a number in
 * brackets for what no face has.
 */
public final class FaceMetrics {
    /** How far a face reaches over the baseline, as a share of its size. */
    static final double CAP_HEIGHT = 0.668;

    private final Weight weight;
    private final boolean tabular;
    private final IntToDoubleFunction columnWidth;
    private final Map<Integer, Double> figures = new HashMap<>();

    private FaceMetrics(Weight weight, boolean tabular, IntToDoubleFunction columnWidth) {
        this.weight = weight;
        this.tabular = tabular;
        this.columnWidth = columnWidth;
    }

    /** For running text. */
    public static FaceMetrics running(Weight weight) {
        return new FaceMetrics(weight, false, character -> {
            throw new IllegalStateException("running text stands in no columns");
        });
    }

    /**
     * With all figures equally wide, for columns.
     *
     * @param columnWidth how wide a character of the first face is in columns, in parts of its size: another glyph may stand
     *     for it there. No figure is ever printed in another face
     */
    public static FaceMetrics tabular(Weight weight, IntToDoubleFunction columnWidth) {
        return new FaceMetrics(weight, true, columnWidth);
    }

    public Weight weight() {
        return weight;
    }

    /** Whether its figures are equally wide. */
    public boolean isTabular() {
        return tabular;
    }

    /** How wide a text is as it is printed. */
    public double widthPt(String text, double sizePt) {
        return FontStack.runs(text).stream().mapToDouble(this::width).sum() * sizePt;
    }

    private double width(FontStack.Run run) {
        return tabular && run.typeface() == Typeface.HYPERLEGIBLE
                ? run.text().codePoints().mapToDouble(this::figure).sum()
                : run.width(weight);
    }

    private double figure(int character) {
        return figures.computeIfAbsent(character, columnWidth::applyAsDouble);
    }
}
