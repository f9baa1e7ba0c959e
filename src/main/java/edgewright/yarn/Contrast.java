package edgewright.yarn;

import edgewright.chart.Colour;

/**
 * How well two yarns can be told apart, by the colours that the chart gives them. The same in either order. Only the yarns
 * themselves, side by side in daylight, decide.
 *
 * <p>The trade's test is to lay yarns side by side and look at them without colour: where the greys come close, the pattern
 * gets lost. That is the ratio. Two yarns of middling ratio are still told apart if their colours differ much; that is the
 * difference. No number of the trade's for 'enough' was found, so the limits are ours; the first is what WCAG 2.1 asks of
 * graphics.
 *
 * @param ratio of the luminances, after WCAG 2: from 1 (equal) to 21 (black and white)
 * @param difference of the colours, after CIEDE2000: from 0; about 1 is just seen side by side
 */
public record Contrast(double ratio, double difference) {
    /** From this ratio on two yarns are told apart whatever their colours. Source: WCAG 2.1, success criterion 1.4.11. */
    public static final double CLEAR_RATIO = 3.0;

    /** Below this ratio no difference of colour helps: as greys the two are one. Ours. */
    public static final double LEAST_RATIO = 1.5;

    /** Between the two ratios the colours must differ by this much. Ours. */
    public static final double LEAST_DIFFERENCE = 30.0;

    /** The contrast of two colours. */
    public static Contrast between(Colour one, Colour two) {
        double l1 = one.luminance();
        double l2 = two.luminance();
        double ratio = (Math.max(l1, l2) + 0.05) / (Math.min(l1, l2) + 0.05);
        return new Contrast(ratio, Ciede2000.between(Lab.of(one), Lab.of(two)));
    }

    /** Whether the two are hard to tell apart in the fabric. */
    public boolean isLow() {
        return ratio < LEAST_RATIO || (ratio < CLEAR_RATIO && difference < LEAST_DIFFERENCE);
    }

    /** The grey that is as light as a colour: what is left of it in a picture without colours. */
    public static Colour grey(Colour colour) {
        return new Lab(Lab.of(colour).lightness(), 0, 0).toColour();
    }
}
