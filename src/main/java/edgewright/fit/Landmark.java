package edgewright.fit;

/** Something true of a round that a maker can see on the fabric. */
public sealed interface Landmark {
    /** Every long stitch of the round, corner sections included, lies so. */
    record EachLong(LandmarkRelation relation) implements Landmark {}

    /**
     * How many long stitches a side has: a number of its own for the two corner sections, and another for every time the
     * repeat is worked.
     */
    record LongsOnSide(int inCorners, int inRepeat) implements Landmark {
        /** The long stitches of a side whose repeat is worked that often. */
        public int on(int repeats) {
            return inCorners + repeats * inRepeat;
        }
    }

    /** Which stitch after the corner is the first long one; the stitch in the corner chain is number 1. */
    record FirstLong(int number) implements Landmark {}

    /**
     * The long stitches stand side by side in groups of this size, and none alone.
     *
     * @param size 2 or more
     */
    record InGroups(int size) implements Landmark {}
}
