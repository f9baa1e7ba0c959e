package edgewright.draw.paint;

/**
 * An upright rectangle on the paper.
 *
 * @param xMm its left edge
 * @param yMm its upper edge
 * @param widthMm 0 or more
 * @param heightMm 0 or more
 */
public record Area(double xMm, double yMm, double widthMm, double heightMm) {
    public Area {
        if (!(widthMm >= 0) || !(heightMm >= 0)) {
            throw new IllegalArgumentException("no area is " + widthMm + " mm by " + heightMm + " mm");
        }
    }

    /** The area between two opposite corners, whichever they are. */
    public static Area between(double x1Mm, double y1Mm, double x2Mm, double y2Mm) {
        return new Area(Math.min(x1Mm, x2Mm), Math.min(y1Mm, y2Mm), Math.abs(x2Mm - x1Mm), Math.abs(y2Mm - y1Mm));
    }

    /** The right edge. */
    public double rightMm() {
        return xMm + widthMm;
    }

    /** The lower edge. */
    public double bottomMm() {
        return yMm + heightMm;
    }

    /** Halfway across. */
    public double middleXMm() {
        return xMm + widthMm / 2;
    }

    /** Halfway down. */
    public double middleYMm() {
        return yMm + heightMm / 2;
    }

    /** This area made larger by as much on every side; smaller for a negative number, down to nothing in its middle. */
    public Area grown(double byMm) {
        double x = Math.max(byMm, -widthMm / 2);
        double y = Math.max(byMm, -heightMm / 2);
        return new Area(xMm - x, yMm - y, widthMm + 2 * x, heightMm + 2 * y);
    }

    /** This area moved. */
    public Area moved(double rightMm, double downMm) {
        return new Area(xMm + rightMm, yMm + downMm, widthMm, heightMm);
    }

    /** The smallest area that holds both. */
    public Area with(Area other) {
        return between(
                Math.min(xMm, other.xMm),
                Math.min(yMm, other.yMm),
                Math.max(rightMm(), other.rightMm()),
                Math.max(bottomMm(), other.bottomMm()));
    }

    /** Whether the two have a point in common, be it on their edges. */
    public boolean touches(Area other) {
        return xMm <= other.rightMm() && other.xMm <= rightMm() && yMm <= other.bottomMm() && other.yMm <= bottomMm();
    }

    /** Whether the other lies in this one, edges included. */
    public boolean holds(Area other) {
        return xMm <= other.xMm && other.rightMm() <= rightMm() && yMm <= other.yMm && other.bottomMm() <= bottomMm();
    }

    /** Whether the point lies in this area; the left and upper edges belong to it, the others do not. */
    public boolean holds(double pointXMm, double pointYMm) {
        return xMm <= pointXMm && pointXMm < rightMm() && yMm <= pointYMm && pointYMm < bottomMm();
    }
}
