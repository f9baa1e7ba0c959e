package edgewright.fit;

/** A way of changing the count of a side by one. Source: common practice, no source. */
public enum CountChange {
    /** Two stitches worked into one: a stitch more. */
    INCREASE(1, 2),
    /** Two stitches worked together: a stitch less. */
    DECREASE(2, 1);

    private final int used;
    private final int made;

    CountChange(int used, int made) {
        this.used = used;
        this.made = made;
    }

    /** How many stitches of the round below it uses. */
    public int used() {
        return used;
    }

    /** How many stitches it makes. */
    public int made() {
        return made;
    }
}
