package edgewright.booklet.page;

import edgewright.booklet.choice.Edition;
import edgewright.booklet.choice.Paper;

/**
 * How a page is divided. The column of text is as high as a whole number of half lines, so that lines of facing columns and
 * pages stand on one grid; labels (the number of a round, an abbreviation) hang to the left of what they name, or stand over
 * it where there is but one column.
 *
 * @param labelPt the width of the labels at the left of the column, with the white that parts them from the text; 0 where
 *     they stand over it
 * @param linePt from line to line of running text
 * @param narrowestMarginPt how near to the edge of the page a picture may come
 * @param narrow whether this is one of two columns side by side: labels run into what they name
 */
public record PageLayout(
        double pageWidthPt,
        double pageHeightPt,
        double leftPt,
        double topPt,
        double widthPt,
        double heightPt,
        double labelPt,
        double linePt,
        double narrowestMarginPt,
        boolean narrow) {
    /** Points of 1/72 inch in a millimetre. */
    public static final double PT_PER_MM = 72 / 25.4;

    private static final double LINE_PT = 13;
    private static final double LARGE_LINE_PT = 30;
    private static final double TEXT_PT = 9.5;
    private static final double LARGE_TEXT_PT = 22;

    /** Of what stands in two columns side by side, so that the facts of a pattern go on one page. */
    private static final double NARROW_LINE_PT = 11.5;

    private static final double NARROW_TEXT_PT = 9;
    private static final double SIDE_MARGIN_MM = 20;
    private static final double NARROWEST_MARGIN_MM = 12;
    private static final double TOP_MARGIN_MM = 26;
    private static final double FOOT_MARGIN_MM = 22;
    /** White between two columns side by side. */
    private static final double GUTTER_PT = 22;

    private static final double LABEL_PT = 110;

    /** The margin on all sides that the advice for low vision asks for: an inch. */
    private static final double LARGE_MARGIN_MM = 25.4;

    private static final double LARGE_PICTURE_MARGIN_MM = 15;

    public static PageLayout of(Paper paper, Edition edition) {
        return of(paper.widthMm(), paper.heightMm(), edition);
    }

    /** A page of any size, with the margins and lines of an edition. */
    public static PageLayout of(double widthMm, double heightMm, Edition edition) {
        return edition == Edition.LARGE_PRINT ? large(widthMm, heightMm) : usual(widthMm, heightMm);
    }

    private static PageLayout usual(double widthMm, double heightMm) {
        double left = SIDE_MARGIN_MM * PT_PER_MM;
        return new PageLayout(
                widthMm * PT_PER_MM,
                heightMm * PT_PER_MM,
                left,
                TOP_MARGIN_MM * PT_PER_MM,
                widthMm * PT_PER_MM - 2 * left,
                halfLines(heightMm - TOP_MARGIN_MM - FOOT_MARGIN_MM, LINE_PT),
                LABEL_PT,
                LINE_PT,
                NARROWEST_MARGIN_MM * PT_PER_MM,
                false);
    }

    private static PageLayout large(double widthMm, double heightMm) {
        double margin = LARGE_MARGIN_MM * PT_PER_MM;
        return new PageLayout(
                widthMm * PT_PER_MM,
                heightMm * PT_PER_MM,
                margin,
                margin,
                widthMm * PT_PER_MM - 2 * margin,
                halfLines(heightMm - 2 * LARGE_MARGIN_MM, LARGE_LINE_PT),
                0,
                LARGE_LINE_PT,
                LARGE_PICTURE_MARGIN_MM * PT_PER_MM,
                false);
    }

    private static double halfLines(double heightMm, double linePt) {
        return Math.floor(heightMm * PT_PER_MM / (linePt / 2)) * (linePt / 2);
    }

    /** The left one of two columns side by side on such a page. They are set smaller, on a grid that both share. */
    public PageLayout half() {
        return new PageLayout(
                pageWidthPt,
                pageHeightPt,
                leftPt,
                topPt,
                (widthPt - GUTTER_PT) / 2,
                heightPt,
                0,
                NARROW_LINE_PT,
                narrowestMarginPt,
                true);
    }

    /** The step of the grid that everything stands on. */
    public double halfLinePt() {
        return linePt / 2;
    }

    /** The next height that is a whole number of half lines. */
    public double onGrid(double heightPt) {
        return Math.ceil(heightPt / halfLinePt() - 1e-9) * halfLinePt();
    }

    /** The baseline of the grid that is nearest to a depth under the top of the column. */
    public double nearestBaselinePt(double downPt) {
        double first = (linePt + FaceMetrics.CAP_HEIGHT * textSizePt()) / 2;
        return first + Math.rint((downPt - first) / halfLinePt()) * halfLinePt();
    }

    /** The size of running text. Advice for readers with low vision asks for 22 to 24 points and nothing smaller. */
    double textSizePt() {
        return oneColumn() ? LARGE_TEXT_PT : narrow ? NARROW_TEXT_PT : TEXT_PT;
    }

    /** Whether there is but one column: labels stand over what they name. */
    public boolean oneColumn() {
        return labelPt == 0 && !narrow;
    }

    /** The width of the widest picture: it may stand out into the margins, but not where printers cannot reach. */
    public double widestPt() {
        return pageWidthPt - 2 * narrowestMarginPt;
    }

    /** The width of what stands beside the labels. */
    public double textPt() {
        return widthPt - labelPt;
    }

    /** From points under the top of the sheet to points over its foot. */
    public double up(double yPt) {
        return pageHeightPt - yPt;
    }
}
