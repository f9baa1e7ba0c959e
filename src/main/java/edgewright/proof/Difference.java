package edgewright.proof;

/**
 * Something that came off the hook otherwise than the chart has it.
 *
 * @param round from 1
 * @param side 0 to 3 in working order; 0 where the whole round is meant
 * @param stitch which stitch of that side, from 1; 0 where the whole side or round is meant
 * @param expected what the chart has, as a letter, a number or a name; as {@code kind} says
 * @param found what came off the hook
 */
public record Difference(Kind kind, int round, int side, int stitch, String expected, String found) {
    /** What differs. */
    public enum Kind {
        /** The number of rounds. */
        ROUNDS,
        /** The yarn of a round. */
        YARN,
        /** The chains of the corners of a round. */
        CORNER,
        /** The stitches on a side. */
        COUNT,
        /** Which stitch stands at a place, by its letter. */
        STITCH,
        /** Where a long stitch landed, as round and stitch of its side. */
        LANDING,
        /** The round whose yarn shows at a place. */
        SHOWN,
        /** The rounds of the back layer. */
        BACK_ROUNDS,
        /** How many rounds of the front a round of the back layer is as high as. */
        BACK_HEIGHT,
        /** The stitches on a side of a back round. */
        BACK_COUNT,
        /** The slip stitches that join the layers. */
        JOINS
    }
}
