package edgewright.fit;

import edgewright.chart.Counting;
import edgewright.chart.PerSide;
import java.util.Objects;
import java.util.Optional;

/**
 * A piece on the table: what was counted on its four sides, in which round and how.
 *
 * @param round the round in which the sides were counted; 0 is the base round
 * @param counts what was counted, in the given way of counting; a side has no stitches at the least
 * @param counting whether a corner chain was counted at each end of every side; {@code wanted} is meant in the same way
 * @param ties which opposite sides must come out equal; not asked where {@code wanted} is given
 * @param wanted the counts that the maker wants to have in that round. The very counts of the piece ask whether it can stay
 *     as it is. Empty asks for the counts with the least change
 */
public record FitQuestion(
        int round, PerSide<Integer> counts, Counting counting, Ties ties, Optional<PerSide<Integer>> wanted) {
    /** @throws IllegalArgumentException for a round below 0, or a count lower than the chains counted with it */
    public FitQuestion {
        Objects.requireNonNull(ties);
        if (round < 0) {
            throw new IllegalArgumentException("round " + round + ": expected 0, the base round, or a later one");
        }
        requireSides(counts, counting);
        wanted.ifPresent(counts2 -> requireSides(counts2, counting));
    }

    /** Asks for the least change that makes the piece close, opposite sides equal. */
    public static FitQuestion of(int round, PerSide<Integer> counts, Counting counting) {
        return new FitQuestion(round, counts, counting, Ties.OPPOSITE, Optional.empty());
    }

    /** The stitches on each side, corner chains not counted. */
    public PerSide<Integer> stitches() {
        return counts.map(counting::stitches);
    }

    /** The stitches wanted on each side, corner chains not counted. */
    public Optional<PerSide<Integer>> wantedStitches() {
        return wanted.map(counts -> counts.map(counting::stitches));
    }

    /** The ties that are asked for; none where the maker wants counts, for these stand for each side alone. */
    public Ties tiesThatHold() {
        return wanted.isPresent() ? Ties.NONE : ties;
    }

    /** The same question about the same piece, with its sides counted in the other way. */
    public FitQuestion in(Counting other) {
        return new FitQuestion(
                round,
                stitches().map(other::shown),
                other,
                ties,
                wantedStitches().map(stitches -> stitches.map(other::shown)));
    }

    /** This question with other opposite sides tied. */
    public FitQuestion with(Ties otherTies) {
        return new FitQuestion(round, counts, counting, otherTies, wanted);
    }

    /** This question with counts that the maker wants, in this question's way of counting. */
    public FitQuestion wanting(PerSide<Integer> wantedCounts) {
        return new FitQuestion(round, counts, counting, ties, Optional.of(wantedCounts));
    }

    private static void requireSides(PerSide<Integer> counts, Counting counting) {
        int fewest = counting.shown(0);
        if (counts.stream().anyMatch(count -> count < fewest)) {
            throw new IllegalArgumentException("counts " + counts + ": expected " + fewest + " or more on each side");
        }
    }
}
