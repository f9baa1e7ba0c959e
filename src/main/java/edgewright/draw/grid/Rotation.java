package edgewright.draw.grid;

/** How far a picture is rotated clockwise from the way it lies on the fabric, where it is the upper left one. */
public enum Rotation {
    /** As on the fabric: the arm that is worked to the corner lies level, above. */
    NONE,
    /** The corner at the upper right; the arm that is worked from the corner lies level, above. */
    QUARTER,
    /** The corner at the lower right. */
    HALF,
    /** The corner at the lower left. */
    THREE_QUARTERS;

    /** Rotated clockwise by a quarter more. */
    public Rotation clockwise() {
        return values()[(ordinal() + 1) % 4];
    }

    /** Rotated anticlockwise by a quarter. */
    public Rotation anticlockwise() {
        return values()[(ordinal() + 3) % 4];
    }

    /** Whether the corner lies on the left of the drawing. */
    public boolean cornerLeft() {
        return this == NONE || this == THREE_QUARTERS;
    }

    /** Whether the corner lies in the upper half of the drawing. */
    public boolean cornerAbove() {
        return this == NONE || this == QUARTER;
    }

    /** Whether what lies level on the fabric stands upright, and the other way round. */
    public boolean isOnItsSide() {
        return this == QUARTER || this == THREE_QUARTERS;
    }

    /** Whether the arm that is worked to the corner lies level; else the other one does. */
    public boolean incomingArmIsHorizontal() {
        return !isOnItsSide();
    }
}
