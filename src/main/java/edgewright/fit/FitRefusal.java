package edgewright.fit;

import edgewright.chart.Side;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;

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
            return fewest - question.stitches().get(side);
        }
    }

    /**
     * Counts are wanted, others than those of the piece, and the design does not close on them.
     *
     * @param sides in working order; those on which it does close are not among them
     */
    record WantedOpen(FitQuestion question, List<OpenSide> sides) implements FitRefusal {
        public WantedOpen {
            sides = List.copyOf(sides);
        }

        /**
         * A side whose wanted count does not close.
         *
         * @param smaller the next smaller count that closes, corner chains not counted; empty if there is none
         * @param larger the next larger count that closes
         */
        public record OpenSide(Side side, OptionalInt smaller, int larger) {}
    }

    /**
     * The design cannot close on the counts that are wanted, which are those of the piece, or on those that the piece has if no round is left to change
     * them in.
     *
     * @param repeat the width of the design's repeat
     * @param closing why not; never {@link EvenSides.Closes}
     */
    record CannotClose(FitQuestion question, Cause cause, int repeat, EvenSides closing) implements FitRefusal {
        /** Why the counts cannot be helped. */
        public enum Cause {
            /** They are those of the piece, and the maker wants to leave it as it is. */
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
    record NoRoom(FitQuestion question, Targets targets, List<Side> sides, List<TooManyChangesRemedy> reliefs)
            implements FitRefusal {
        public NoRoom {
            sides = List.copyOf(sides);
            reliefs = List.copyOf(reliefs);
        }

        /** The most changes that this side has room for, away from the two stitches next to each corner. */
        public int most(Side side) {
            return SideChange.most(targets.counted().get(side), targets.change(side));
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
