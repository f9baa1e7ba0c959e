package edgewright.hands;

import edgewright.chart.PerSide;
import edgewright.chart.Side;
import edgewright.hands.Stop.Reason;
import edgewright.words.tree.Multiple;
import edgewright.words.tree.SideSize;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * What a pattern states of the stitches on a side, held against what is made of one piece, side by side.
 *
 * <p>A pattern for several sizes has a number for each. Which of them the piece is shows in its base round, or in the first
 * rounds that give counts; from then on only these numbers count. Where the base round gives examples of a multiple, the numbers
 * of a round must have grown as the piece has, whatever its size is.
 */
final class StatedSizes {
    private final SideSize base;
    private final PerSide<Integer> piece;
    /** The sizes that the piece can be, by their place; empty until a pattern of several sizes gives counts. */
    private List<Integer> possible = List.of();
    /** Whether the base round has told the sizes, so that each one that is left must agree. */
    private boolean told;

    /**
     * @param base what is stated of the base round
     * @param piece the stitches on its sides
     */
    StatedSizes(SideSize base, PerSide<Integer> piece) {
        this.base = base;
        this.piece = piece;
    }

    /** The base round has been looked at on all sides. */
    void baseIsKnown() {
        told = base.counts().size() > 1;
    }

    /**
     * The stop, if so many stitches on this side are not what is stated.
     *
     * @param otherCount why a maker stops who has made another number
     * @param noMultiple why a maker stops whose number is not of the multiple
     */
    Optional<Stop> against(SideSize stated, int round, Side side, int made, Reason otherCount, Reason noMultiple) {
        Optional<Integer> expected =
                stated.counts().size() == examples().size() && stated.counts().size() > 0
                        ? grown(stated.counts(), side, made)
                        : other(stated.counts(), side, made);
        if (expected.isPresent()) {
            return Stop.atCount(otherCount, round, side, expected.get(), made);
        }
        if (stated.multiple().isPresent() && !stated.multiple().get().has(made)) {
            Multiple multiple = stated.multiple().get();
            int over = Math.floorMod(made - multiple.plus(), multiple.of());
            return Stop.atCount(noMultiple, round, side, over, made);
        }
        return Optional.empty();
    }

    /** The sides of the base round that stand as examples; none where it gives no multiple. */
    private List<Integer> examples() {
        return base.counts().isEmpty() ? base.multiple().map(Multiple::examples).orElse(List.of()) : List.of();
    }

    /** What this side would have if it had grown as an example has; empty if it has grown so. */
    private Optional<Integer> grown(List<PerSide<Integer>> counts, Side side, int made) {
        return IntStream.range(0, counts.size())
                .mapToObj(i ->
                        piece.get(side) + counts.get(i).get(side) - examples().get(i))
                .filter(expected -> expected != made)
                .findFirst();
    }

    /** What this side should have in a size that the piece can be; empty if it has that. */
    private Optional<Integer> other(List<PerSide<Integer>> counts, Side side, int made) {
        if (counts.size() < 2) {
            return counts.stream()
                    .map(each -> each.get(side))
                    .filter(count -> count != made)
                    .findFirst();
        }
        List<Integer> before = possible.isEmpty()
                ? IntStream.range(0, counts.size()).boxed().toList()
                : possible.stream().filter(size -> size < counts.size()).toList();
        List<Integer> agreeing = new ArrayList<>(before);
        agreeing.removeIf(size -> counts.get(size).get(side) != made);
        if (agreeing.isEmpty() || (told && agreeing.size() < before.size())) {
            return before.stream()
                    .filter(size -> !agreeing.contains(size))
                    .map(size -> counts.get(size).get(side))
                    .findFirst();
        }
        possible = List.copyOf(agreeing);
        return Optional.empty();
    }
}
