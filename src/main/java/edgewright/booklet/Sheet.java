package edgewright.booklet;

import org.apache.pdfbox.pdmodel.common.PDRectangle;

/**
 * How a page is divided. The column of text is as high as a whole number of half lines, so that lines of facing columns and
 * pages stand on one grid; labels (the number of a round, an abbreviation) hang to the left of what they name.
 *
 * @param labelPt the width of the labels at the left of the column, with the white that parts them from the text
 */
record Sheet(
        double pageWidthPt,
        double pageHeightPt,
        double leftPt,
        double topPt,
        double widthPt,
        double heightPt,
        double labelPt) {
    /** Points of 1/72 inch in a millimetre. */
    static final double PT_PER_MM = 72 / 25.4;

    /** From line to line of running text. */
    static final double LINE_PT = 15;

    /** The step of the grid that everything stands on. */
    static final double HALF_LINE_PT = LINE_PT / 2;

    private static final double SIDE_MARGIN_MM = 20;
    private static final double NARROWEST_MARGIN_MM = 12;
    private static final double TOP_MARGIN_MM = 26;
    private static final double FOOT_MARGIN_MM = 22;
    private static final double LABEL_PT = 96;

    static Sheet of(Paper paper) {
        double width = paper.widthMm() * PT_PER_MM;
        double height = paper.heightMm() * PT_PER_MM;
        double left = SIDE_MARGIN_MM * PT_PER_MM;
        double top = TOP_MARGIN_MM * PT_PER_MM;
        double room = height - top - FOOT_MARGIN_MM * PT_PER_MM;
        return new Sheet(
                width, height, left, top, width - 2 * left, Math.floor(room / HALF_LINE_PT) * HALF_LINE_PT, LABEL_PT);
    }

    /** The next height that is a whole number of half lines. */
    static double onGrid(double heightPt) {
        return Math.ceil(heightPt / HALF_LINE_PT - 1e-9) * HALF_LINE_PT;
    }

    /** The width of the widest picture: it may stand out into the margins, but not where printers cannot reach. */
    double widestPt() {
        return pageWidthPt - 2 * NARROWEST_MARGIN_MM * PT_PER_MM;
    }

    /** The width of what stands beside the labels. */
    double textPt() {
        return widthPt - labelPt;
    }

    /** From points under the top of the sheet to points over its foot. */
    double up(double yPt) {
        return pageHeightPt - yPt;
    }

    /** A rectangle of the page, given from the left edge of the column and the top of the sheet. */
    PDRectangle rectangle(double xPt, double yPt, double rectangleWidthPt, double rectangleHeightPt) {
        return new PDRectangle(
                (float) (leftPt + xPt), (float) up(yPt + rectangleHeightPt), (float) rectangleWidthPt, (float)
                        rectangleHeightPt);
    }
}
