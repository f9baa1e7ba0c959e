package edgewright.draw.paint;

import edgewright.draw.paint.Shape.Weight;

/**
 * The measures of the bundled faces: how wide a text is, read from the same font files that every driver sets it in, so that a
 * picture is laid out alike on every machine. Heights are those of the first face; the capitals of the other are as high.
 *
 * <p>Widths are the plain sums of advance widths. Drivers do not kern.
 */
public final class Lettering {
    /** How far letters with ascenders rise above the base line, in parts of the size. */
    public static final double ASCENT = 0.75;

    /** How far capital letters with accents rise above the base line, in parts of the size. */
    public static final double ACCENT = 0.95;

    /** How far letters with descenders reach below the base line, in parts of the size. */
    public static final double DESCENT = 0.22;

    /** The height of capital letters and figures, in parts of the size. */
    public static final double CAPITAL = 0.668;

    private Lettering() {}

    /** How wide a text is at that size, as {@link FontStack} has it printed. */
    public static double widthMm(String text, Weight weight, double sizeMm) {
        return sizeMm * FontStack.width(text, weight);
    }
}
