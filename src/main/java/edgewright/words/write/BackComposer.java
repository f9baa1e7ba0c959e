package edgewright.words.write;

import edgewright.chart.Chart;
import edgewright.fit.BackLayer;
import edgewright.fit.BackStitch;
import edgewright.words.tree.BackRound;
import edgewright.words.tree.SideSize;
import edgewright.words.tree.WrittenBack;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.IntFunction;

/** Says the back layer of a chart, if it has one. */
final class BackComposer {
    private BackComposer() {}

    /** @param size what is said of the sides in a round of the front; 0 is the base round */
    static Optional<WrittenBack> compose(Chart chart, IntFunction<SideSize> size) {
        if (chart.making().back().isEmpty()) {
            return Optional.empty();
        }
        int chains = chart.corner().chains();
        List<BackRound> rounds = new BackLayer(chart.border(), chart.rounds().size())
                .rounds().stream()
                        .map(round -> new BackRound(
                                round.number(),
                                OptionalInt.of(round.frontRound()),
                                size.apply(round.frontRound()),
                                round.stitch() == BackStitch.TALL ? BackRound.Height.TALL : BackRound.Height.LOW,
                                round.stitch().atEachArm(),
                                chains))
                        .toList();
        return Optional.of(new WrittenBack(chart.making().backHook(), size.apply(0), rounds, true));
    }
}
