package edgewright.fit;

import edgewright.chart.Side;
import java.util.List;

/** Something that a maker should know before working a plan: what stands against it, or only what the edge will do. */
public sealed interface FitWarning {
    /**
     * The changing round is not before the first long stitch: rounds of the design have been worked on sides that do not
     * close, or are worked while the sides are changed.
     *
     * @param changing the changing round
     * @param rounds the rounds in which the counts should have been put right
     */
    record TooLate(int changing, ChangeRounds rounds) implements FitWarning {}

    /**
     * These long stitches of the round after the changing round would drop across it where two stitches share a foot or one
     * stands on two: two of them, or one of two places, for one loop.
     *
     * @param changing the changing round
     * @param longStitches from the top on, each side in working order
     */
    record LandsAcross(int changing, List<SideStitch> longStitches) implements FitWarning {
        public LandsAcross {
            longStitches = List.copyOf(longStitches);
        }
    }

    /**
     * More than one change in six stitches: the edge will ruffle where stitches are added and pull in where they are lost.
     *
     * @param change stitches added, or lost if below 0
     * @param stitches the stitches that the side has, corner chains not counted
     * @param reliefs what would help, best first; empty if nothing does
     */
    record Crowded(Side side, int change, int stitches, List<TooManyChangesRemedy> reliefs) implements FitWarning {
        public Crowded {
            reliefs = List.copyOf(reliefs);
        }
    }

    /** Whether the border would not come out as it is charted. */
    default boolean isObjection() {
        return !(this instanceof Crowded);
    }
}
