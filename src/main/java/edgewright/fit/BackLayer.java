package edgewright.fit;

import edgewright.chart.BorderShape;
import edgewright.chart.Corner;
import edgewright.chart.Counting;
import edgewright.chart.PerSide;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/**
 * The back layer of a double border, as wide as the front and worked on a base round with the same counts: rounds twice as high in
 * half the number, and one low round last if the front has an odd number. Back round k so has the counts of front round 2k,
 * and the last rounds of both match stitch for stitch.
 *
 * <p>Source: common practice, no source.
 *
 * @param frontRounds the rounds of the front; 1 or more
 */
public record BackLayer(BorderShape border, int frontRounds) {
    /**
     * A round of the back layer.
     *
     * @param number counted outwards from 1
     * @param frontRound the round of the front that has the same counts
     */
    public record Round(int number, BackStitch stitch, int frontRound) {}

    /**
     * The round that joins the two layers: a slip stitch in every stitch, through the back loops of both, and one in every
     * corner chain of both; no chains are made at the corners.
     *
     * @param stitches the stitches on each side, corner chains not counted
     * @param chains the chains of each corner
     */
    public record Joining(PerSide<Integer> stitches, int chains) {
        /** All slip stitches of the round. */
        public long total() {
            return PerSide.sum(stitches) + Corner.chainsOfRound(chains);
        }
    }

    public BackLayer {
        if (frontRounds < 1) {
            throw new IllegalArgumentException("a front of " + frontRounds + " rounds");
        }
    }

    /** The rounds of the back layer: half as many as those of the front, rounded up. */
    public List<Round> rounds() {
        return IntStream.rangeClosed(1, (frontRounds + 1) / 2)
                .mapToObj(this::round)
                .toList();
    }

    /** The round of that number. */
    public Round round(int number) {
        if (number < 1 || number > (frontRounds + 1) / 2) {
            throw new IllegalArgumentException("back round " + number + ": expected 1 to " + (frontRounds + 1) / 2);
        }
        return 2 * number > frontRounds
                ? new Round(number, BackStitch.SHORT, frontRounds)
                : new Round(number, BackStitch.TALL, 2 * number);
    }

    /** The stitches on each side in a back round when the repeat is worked that often on the front. */
    public PerSide<Integer> stitches(int number, PerSide<Integer> repeats) {
        return border.stitches(round(number).frontRound(), repeats);
    }

    /**
     * The round that joins the two layers.
     *
     * @param chains the chains of each corner
     */
    public Joining joining(PerSide<Integer> repeats, int chains) {
        return new Joining(border.stitches(frontRounds, repeats), chains);
    }

    /** The back round that has the counts of this front round; empty if it falls between two. */
    public OptionalInt matching(int frontRound) {
        return rounds().stream()
                .filter(round -> round.frontRound() == frontRound)
                .mapToInt(Round::number)
                .findFirst();
    }

    /**
     * What is asked when the sides were counted in a back round, 0 for the base round. The layers are joined stitch for stitch, so
     * the counts that are wanted are those of the front and no others. The answer is about front rounds, but targets and places
     * hold for the back round as they stand; the changes are worked in the back round after it.
     *
     * @param repeats how often the repeat is worked on each side of the front
     */
    public FitQuestion question(int backRound, PerSide<Integer> counts, Counting counting, PerSide<Integer> repeats) {
        int frontRound = backRound == 0 ? 0 : round(backRound).frontRound();
        return FitQuestion.of(frontRound, counts, counting)
                .wanting(border.stitches(frontRound, repeats).map(counting::shown));
    }

    /**
     * How often the repeat is worked on a front whose sides were counted; empty if it does not come out even on all of them.
     *
     * @param frontRound the round that was counted, 0 for the base round
     */
    public Optional<PerSide<Integer>> repeats(int frontRound, PerSide<Integer> counts, Counting counting) {
        return border.repeats(frontRound, counts.map(counting::stitches));
    }
}
