package edgewright.check;

import edgewright.chart.Chart;

/**
 * What the rule book says about one rule, for whoever asks why something was found.
 *
 * @param title its name, as a heading
 * @param law the law in the trade's words
 * @param why why hands cannot do it, or what becomes of it if they do
 * @param source where the law comes from: addresses, or that it is common practice, or derived
 * @param fails the smallest chart that breaks this rule, and no other
 * @param passes the nearest chart that breaks none
 * @param changes in how many stitches, yarns or settings the two charts differ
 */
public record RulePage(
        String id,
        Severity severity,
        String title,
        String law,
        String why,
        String source,
        Sketch fails,
        Sketch passes,
        int changes) {

    /** The smallest chart that breaks this rule. */
    public Chart failing() {
        return fails.chart();
    }

    /** The nearest chart that does not. */
    public Chart passing() {
        return passes.chart();
    }
}
