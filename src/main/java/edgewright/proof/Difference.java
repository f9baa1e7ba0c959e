package edgewright.proof;

import edgewright.chart.Side;
import edgewright.chart.Stitch;
import java.util.Optional;

/** Something that came off the hook otherwise than the chart has it: what the chart has, and what was found. */
public sealed interface Difference {
    /** The number of rounds of the front. */
    record Rounds(int expected, int found) implements Difference {}

    /**
     * The yarn of a round, by its name; by its id if it has none.
     *
     * @param round from 1, as in all differences
     */
    record OtherYarn(int round, String expected, String found) implements Difference {}

    /** The chains of the corners of a round. */
    record CornerChains(int round, int expected, int found) implements Difference {}

    /** The stitches on a side, corner chains not counted. */
    record Count(int round, Side side, int expected, int found) implements Difference {}

    /** Which stitch stands at a place. */
    record OtherStitch(FabricPlace place, Stitch expected, Stitch found) implements Difference {}

    /**
     * Where a long stitch landed.
     *
     * @param place where the long stitch stands
     * @param expected empty if the chart lets it land nowhere
     * @param found empty if it was worked into nothing
     */
    record OtherLanding(FabricPlace place, Optional<FabricPlace> expected, Optional<FabricPlace> found)
            implements Difference {}

    /** The round whose yarn shows at a place. */
    record OtherShown(FabricPlace place, int expected, int found) implements Difference {}

    /** The number of rounds of the back layer; 0 if there is none. */
    record BackRounds(int expected, int found) implements Difference {}

    /**
     * How many rounds of the front a back round is as high as.
     *
     * @param round of the back layer, from 1
     */
    record BackHeight(int round, int expected, int found) implements Difference {}

    /**
     * The chains of the corners of a back round.
     *
     * @param round of the back layer, from 1
     */
    record BackCornerChains(int round, int expected, int found) implements Difference {}

    /**
     * The stitches on a side of a back round.
     *
     * @param round of the back layer, from 1
     */
    record BackCount(int round, Side side, int expected, int found) implements Difference {}

    /** The slip stitches that join the layers; 0 if they are not joined. */
    record Joins(long expected, long found) implements Difference {}
}
