package edgewright.booklet.choice;

/** The sheet that a pattern is printed on, upright. */
public enum Paper {
    /** ISO 216 A4. */
    A4(210, 297),
    /** US Letter: 8.5 by 11 inches. */
    LETTER(215.9, 279.4);

    private final double widthMm;
    private final double heightMm;

    Paper(double widthMm, double heightMm) {
        this.widthMm = widthMm;
        this.heightMm = heightMm;
    }

    /** From the left edge to the right. */
    public double widthMm() {
        return widthMm;
    }

    /** From the top edge to the foot. */
    public double heightMm() {
        return heightMm;
    }
}
