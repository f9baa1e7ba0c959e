package edgewright.booklet.page;

import edgewright.chart.Colour;

/**
 * How a line of text looks.
 *
 * @param leadingPt from baseline to baseline; a multiple of half a line
 * @param baselinePt how far under the top of its line a baseline lies
 */
public record TextStyle(FaceMetrics face, double sizePt, double leadingPt, double baselinePt, Colour colour) {

    /**
     * On the grid of a page, with capitals as near to the middle of their line as that allows: so a small line beside a large
     * one stands on the same baseline.
     */
    public static TextStyle on(PageLayout sheet, FaceMetrics face, double sizePt, double leadingPt, Colour colour) {
        double middlePt = (leadingPt + FaceMetrics.CAP_HEIGHT * sizePt) / 2;
        return new TextStyle(face, sizePt, leadingPt, sheet.nearestBaselinePt(middlePt), colour);
    }
}
