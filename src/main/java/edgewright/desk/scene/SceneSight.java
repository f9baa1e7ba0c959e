package edgewright.desk.scene;

import edgewright.draw.paint.Area;
import java.awt.Point;

/**
 * Which part of a sheet is looked at, and how large: fitted into its window until somebody zooms or moves, and again when asked.
 * Sizes are in pixels of the screen.
 */
final class SceneSight {
    private static final double LARGEST_PX = 64;
    private static final double SMALLEST_PX = 0.3;
    /** From here on a stitch is whole pixels, so that its edges are sharp. */
    private static final double WHOLE_FROM_PX = 4;

    private Area sheet = new Area(0, 0, 1, 1);
    private double middleXMm;
    private double middleYMm;
    private double cellPx = 1;
    private int widthPx = 1;
    private int heightPx = 1;
    private boolean fitted = true;

    /** Lays another sheet, or gives the window another size; what was fitted stays so. */
    void lay(Area newSheet, int newWidthPx, int newHeightPx) {
        boolean other = !newSheet.equals(sheet);
        sheet = newSheet;
        widthPx = Math.max(1, newWidthPx);
        heightPx = Math.max(1, newHeightPx);
        if (fitted || (other && !newSheet.holds(middleXMm, middleYMm))) {
            fit();
        }
    }

    /** Makes the whole sheet seen. */
    void fit() {
        fitted = true;
        middleXMm = sheet.middleXMm();
        middleYMm = sheet.middleYMm();
        double mm = Math.min(widthPx / sheet.widthMm(), heightPx / sheet.heightMm());
        cellPx = within(whole(mm * SceneOrder.CELL_MM, false));
    }

    boolean isFitted() {
        return fitted;
    }

    /** Makes it that many times as large; what lies under the point stays there, and the sheet in sight. */
    void zoom(Point at, double factor) {
        double xMm = leftMm() + at.x / pxPerMm();
        double yMm = topMm() + at.y / pxPerMm();
        fitted = false;
        cellPx = within(cellPx * factor);
        middleXMm = xMm + (widthPx / 2.0 - at.x) / pxPerMm();
        middleYMm = yMm + (heightPx / 2.0 - at.y) / pxPerMm();
        stay();
    }

    /** Moves the sheet under the window. */
    void move(int rightPx, int downPx) {
        fitted = false;
        middleXMm -= rightPx / pxPerMm();
        middleYMm -= downPx / pxPerMm();
        stay();
    }

    private void stay() {
        middleXMm = Math.max(sheet.xMm(), Math.min(middleXMm, sheet.rightMm()));
        middleYMm = Math.max(sheet.yMm(), Math.min(middleYMm, sheet.bottomMm()));
    }

    private static double within(double px) {
        return Math.max(SMALLEST_PX, Math.min(px, LARGEST_PX));
    }

    private static double whole(double px, boolean nearest) {
        if (px < WHOLE_FROM_PX) {
            return px;
        }
        return nearest ? Math.rint(px) : Math.floor(px);
    }

    /** Pixels of the screen for a millimetre of the sheet. */
    private double pxPerMm() {
        return whole(cellPx, true) / SceneOrder.CELL_MM;
    }

    private double leftMm() {
        return onPixel(middleXMm - widthPx / 2.0 / pxPerMm());
    }

    private double topMm() {
        return onPixel(middleYMm - heightPx / 2.0 / pxPerMm());
    }

    /** Stitches begin on whole pixels. */
    private double onPixel(double mm) {
        return Math.rint(mm * pxPerMm()) / pxPerMm();
    }

    /** What is looked at now. */
    SceneOrder.Window window() {
        return new SceneOrder.Window(leftMm(), topMm(), pxPerMm(), widthPx, heightPx);
    }
}
