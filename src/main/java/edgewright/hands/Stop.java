package edgewright.hands;

import edgewright.chart.Side;
import edgewright.chart.Stitch;
import java.util.Optional;

/**
 * Where and why a maker had to stop.
 *
 * @param round the round being worked; 0 where the base round is not what the pattern asks for
 * @param side where; of something that is not of one side, the first of them
 * @param stitch which stitch of that side was to be made next, counted from 1; for a count, the last one made
 * @param wanted the stitch that was to be made, where it was one
 * @param expected what the words ask for, where it is a number; else 0
 * @param found what there is, where it is a number; else 0
 */
public record Stop(Reason reason, int round, Side side, int stitch, Optional<Stitch> wanted, int expected, int found) {

    /** Why hands stop. */
    public enum Reason {
        /** A long stitch in round 1: there is no round two below. */
        NO_ROUND_BELOW,
        /** A long stitch over a corner: under the corner's chains there is nothing of this side. */
        NOTHING_UNDER_CORNER,
        /** The loop wanted lies behind a long stitch. */
        COVERED,
        /** The loop wanted was taken by the stitch between. */
        LOOP_TAKEN,
        /** The stitch between shares its foot with its neighbour or stands on two: it is not clear what to drop into. */
        ACROSS_A_CHANGE,
        /** A stitch is to be added or lost with one that is not worked into the stitch below. */
        CHANGE_NOT_PLAIN,
        /** What lies two rounds below is a long stitch, and the pattern does not stack them. */
        ON_LONG,
        /** What lies two rounds below is a chain, which has no front loop that holds. */
        ON_CHAIN,
        /** What lies two rounds below is a corner chain, and the pattern does not land there. */
        ON_CORNER,
        /** A chain over a corner: the corner has nothing to hold it. */
        CHAIN_OVER_CORNER,
        /** The words go on, but the side has come to its end; {@code found} is how many stitches the side takes. */
        SIDE_FULL,
        /** The words turn the corner, but the side has not; {@code found} is how many stitches are left. */
        STITCHES_LEFT,
        /** The yarn is to be joined in stitch {@code expected} of a side below, which has only {@code found} places. */
        NO_PLACE_TO_JOIN,
        /**
         * The round starts with stitch {@code expected} of a side behind it, but in its words the mark of the start stands after
         * {@code found} of them.
         */
        MARK_ELSEWHERE,
        /** The last stitch of the round, where its yarn was joined, is not worked into the stitch below. */
        NOT_TO_BE_CLOSED,
        /** The words go on, but the round has come back to where its yarn was joined: a stitch would be worked twice. */
        PAST_THE_JOIN,
        /** The round ends, but {@code found} stitches up to where its yarn was joined are not worked. */
        SHORT_OF_THE_JOIN,
        /**
         * The group does not come out: {@code found} stitches are left on the side, which are fewer than the group needs to
         * stop before the last {@code expected}.
         */
        GROUP_DOES_NOT_FIT,
        /** A count is stated as {@code expected}, and {@code found} were made. */
        COUNT_NOT_MET,
        /** A multiple is stated, and {@code found} is none: it is {@code expected} stitches over. */
        MULTIPLE_NOT_MET,
        /** A count of a back round is stated as {@code expected}, and {@code found} were made. */
        BACK_COUNT_NOT_MET,
        /** A multiple is stated of a back round, and {@code found} is none: it is {@code expected} stitches over. */
        BACK_MULTIPLE_NOT_MET,
        /** The front round that a back round is said to match has {@code expected} stitches, and {@code found} were made. */
        BACK_NOT_AS_FRONT,
        /** The front turns its last corners with {@code expected} chains, the back with {@code found}. */
        CORNERS_DIFFER,
        /** When the layers are joined the front has {@code expected} stitches on a side, the back {@code found}. */
        LAYERS_DIFFER,
        /** The base round has {@code found} stitches, fewer than the {@code expected} the pattern asks for. */
        BASE_TOO_SHORT
    }

    /** A stop at a count: so many stitches were expected on a side, and so many are there. */
    static Optional<Stop> atCount(Reason reason, int round, Side side, int expected, int found) {
        return Optional.of(new Stop(reason, round, side, found, Optional.empty(), expected, found));
    }
}
