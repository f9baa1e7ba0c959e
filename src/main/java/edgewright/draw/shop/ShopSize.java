package edgewright.draw.shop;

/** The sizes of pictures for a shop page. README and the help of {@code draw} name them too. */
public enum ShopSize {
    /** Upright, four to five. */
    COVER(2400, 3000),
    /** As wide as high. */
    SQUARE(2000, 2000),
    /** Upright, two to three. */
    PORTRAIT(2000, 3000),
    /** Lying, sixteen to nine. */
    WIDE(3200, 1800);

    /** Pixels an inch in all of them. */
    public static final double DPI = 300;

    private static final double MM_PER_INCH = 25.4;

    private final int widthPx;
    private final int heightPx;

    ShopSize(int widthPx, int heightPx) {
        this.widthPx = widthPx;
        this.heightPx = heightPx;
    }

    /** How many pixels it is wide. */
    public int widthPx() {
        return widthPx;
    }

    /** How many pixels it is high. */
    public int heightPx() {
        return heightPx;
    }

    /** So many pixels as a length on the sheet. */
    static double mm(double pixels) {
        return pixels * MM_PER_INCH / DPI;
    }
}
