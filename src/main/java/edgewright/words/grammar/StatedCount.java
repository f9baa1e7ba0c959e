package edgewright.words.grammar;

import edgewright.chart.Counting;
import edgewright.chart.Side;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A number of stitches that a text states.
 *
 * @param of what is counted
 * @param sides the sides that are named with it; empty if none is
 * @param values for each size; for {@link Of#TWO_LENGTHS} that of top and bottom, then that of left and right
 * @param counting how it is counted, if that is said beside it
 * @param corners the corners that are named beside it, if they are
 * @param afterRound the number of the round after which it is counted, if that is said beside it
 * @param between whether it is said to be of the stitches between the corners, without those that go into them
 */
public record StatedCount(
        Lexeme at,
        Of of,
        Set<Side> sides,
        List<Integer> values,
        Optional<Counting> counting,
        Optional<Corners> corners,
        Optional<Lexeme> afterRound,
        boolean between) {
    /**
     * Corners that are named beside a count.
     *
     * @param chains of each, if that is said; else 0
     */
    public record Corners(Lexeme at, int many, int chains) {}

    /** What is counted. */
    public enum Of {
        /** Each side, or those sides that are named. */
        SIDE,
        /** The whole round. */
        ROUND,
        /** Top and bottom, and left and right. */
        TWO_LENGTHS,
        /** All four sides in their order. */
        FOUR_LENGTHS,
        /** One round after the other, under one title. */
        ROUNDS,
        /** It is not said; a side or the whole round. */
        UNSAID
    }

    public StatedCount {
        sides = Set.copyOf(sides);
        values = List.copyOf(values);
    }

    /** A count beside which nothing is said of its sides, its counting and its corners. */
    public static StatedCount plain(Lexeme at, Of of, List<Integer> values) {
        return new StatedCount(at, of, Set.of(), values, Optional.empty(), Optional.empty(), Optional.empty(), false);
    }

    /** Two numbers that were told for two sizes as those of top and bottom and of left and right; any other count as it is. */
    public StatedCount ofTwoLengths() {
        boolean two = values.size() == 2 && sides.isEmpty() && (of == Of.UNSAID || of == Of.SIDE);
        return two ? new StatedCount(at, Of.TWO_LENGTHS, sides, values, counting, corners, afterRound, between) : this;
    }

    /** This count of one round among several that it was told for. */
    public StatedCount ofRound(int index) {
        Of one = sides.isEmpty() ? Of.UNSAID : Of.SIDE;
        return new StatedCount(at, one, sides, List.of(values.get(index)), counting, corners, afterRound, between);
    }
}
