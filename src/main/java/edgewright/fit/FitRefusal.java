package edgewright.fit;

import edgewright.chart.Side;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/** Why there is no plan for a piece. */
public sealed interface FitRefusal extends FitAnswer {
    /**
     * These sides are shorter than the corner sections of the design alone: the piece is too small for it.
     *
     * @param fewest A + B + 2R, the stitches that a side must have at the least in the counting round, corner chains not
     *     counted
     * @param sides in working order
     */
    record TooSmall(FitQuestion question, int fewest, List<Side> sides) implements FitRefusal, PickUpAnswer {
        public TooSmall {
            sides = List.copyOf(sides);
        }

        /** How many stitches this side is short of the fewest. */
        public int missing(Side side) {
            return fewest - question.stitches().of(side);
        }
    }

    /**
     * The design cannot close on the counts that are wanted, or on those that the piece has if no round is left to change
     * them in.
     *
     * @param repeat the width of the design's repeat
     * @param closing why not; never {@link Closing.Closes}
     */
    record CannotClose(FitQuestion question, Cause cause, int repeat, Closing closing) implements FitRefusal {
        /** Why the counts cannot be helped. */
        public enum Cause {
            /** They are what the maker wants. */
            WANTED,
            /** They were counted in the last round of the chart. */
            NO_ROUND_LEFT
        }
    }

    /**
     * So many changes that a side has no room for them in one round.
     *
     * @param targets the counts with the least change
     * @param sides in working order
     * @param reliefs what would help, best first; empty if nothing does
     */
    record NoRoom(FitQuestion question, Targets targets, List<Side> sides, List<Relief> reliefs) implements FitRefusal {
        public NoRoom {
            sides = List.copyOf(sides);
            reliefs = List.copyOf(reliefs);
        }

        /** The most changes that this side has room for, away from the two stitches next to each corner. */
        public int most(Side side) {
            return SideChange.most(targets.counted().of(side), targets.change(side));
        }
    }

    /**
     * The piece can be made to fit, but no words for the whole of it could be worked.
     *
     * @param rounds the rounds in which the counts should be put right
     * @param patterned rounds up to the changing round that need right counts, from the first on; may be empty
     * @param across the long stitches that would drop across a change, if there are any
     */
    record NotInWords(
            FitQuestion question, ChangeRounds rounds, List<Integer> patterned, Optional<FitWarning.LandsAcross> across)
            implements FitRefusal {
        public NotInWords {
            Objects.requireNonNull(rounds);
            Objects.requireNonNull(across);
            patterned = List.copyOf(patterned);
        }
    }
}
