package edgewright.chart;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * The piece that a designer works the border on, as far as it was counted: no round twice, the innermost first. The chart need
 * not have all these rounds, since it may have had more when they were counted; nothing of the chart follows from them.
 *
 * @param front rounds of the front, 0 for the base round
 * @param back rounds of the back layer, from 1
 */
public record KeptPiece(List<RoundCounts> front, List<RoundCounts> back, Extras extras) {
    /** Nothing was counted yet. */
    public static final KeptPiece NONE = new KeptPiece(List.of(), List.of(), Extras.NONE);

    public KeptPiece {
        Objects.requireNonNull(extras);
        front = inOrder(front);
        back = inOrder(back);
        if (!back.isEmpty() && back.get(0).round() < 1) {
            throw new IllegalArgumentException("back rounds " + back + ": expected 1 or more");
        }
    }

    private static List<RoundCounts> inOrder(List<RoundCounts> rounds) {
        if (rounds.stream().map(RoundCounts::round).distinct().count() < rounds.size()) {
            throw new IllegalArgumentException("a round that was counted twice: " + rounds);
        }
        return rounds.stream().sorted(Comparator.comparing(RoundCounts::round)).toList();
    }

    /** The rounds of the one layer or of the other. */
    public List<RoundCounts> layer(boolean ofTheBack) {
        return ofTheBack ? back : front;
    }

    /** What was counted in this round of a layer; empty if nothing was. */
    public Optional<PerSide<Integer>> in(boolean ofTheBack, int round) {
        return layer(ofTheBack).stream()
                .filter(counts -> counts.round() == round)
                .map(RoundCounts::stitches)
                .findFirst();
    }

    /** The same piece with these counts in a round of a layer, whatever was counted there before. */
    public KeptPiece with(boolean ofTheBack, int round, PerSide<Integer> stitches) {
        List<RoundCounts> rounds = new ArrayList<>(layer(ofTheBack));
        Extras kept = rounds.stream()
                .filter(counts -> counts.round() == round)
                .map(RoundCounts::extras)
                .findFirst()
                .orElse(Extras.NONE);
        rounds.removeIf(counts -> counts.round() == round);
        rounds.add(new RoundCounts(round, stitches, kept));
        return ofTheBack ? new KeptPiece(front, rounds, extras) : new KeptPiece(rounds, back, extras);
    }
}
