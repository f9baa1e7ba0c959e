package edgewright.proof;

import edgewright.chart.Chart;
import edgewright.chart.PerSide;
import edgewright.chart.Side;
import edgewright.chart.SideShape;
import edgewright.chart.Start;
import edgewright.fit.RoundStart;
import edgewright.fit.Starts;
import edgewright.words.tree.Instructions;
import edgewright.words.tree.WrittenRound;
import edgewright.words.tree.WrittenStart;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.ToIntBiFunction;

/** Finds the one start from which a chart's rounds begin where the words begin them. */
final class StartFromWords {
    private StartFromWords() {}

    /**
     * The start; empty if a round begins at a corner, or if no column gives the very stitches of the words.
     *
     * @param chart drawn from the same words
     * @param repeats how often the repeat was worked on a side
     */
    static Optional<Start> of(Instructions pattern, Chart chart, ToIntBiFunction<SideShape, Side> repeats) {
        List<WrittenStart> written = pattern.rounds().stream()
                .map(WrittenRound::start)
                .flatMap(Optional::stream)
                .toList();
        if (written.isEmpty() || written.size() < pattern.rounds().size()) {
            return Optional.empty();
        }
        Side odd = written.get(0).side();
        Side even = written.size() > 1 ? written.get(1).side() : odd.opposite();
        PerSide<Integer> times = PerSide.each(side -> repeats.applyAsInt(chart.shape(side), side));
        // A start steps on from its column, never back; so the column is none above the first one.
        int first = Math.min(written.get(0).stitch() - 1, chart.border().lastStart());
        for (int column = first; column >= 1; column--) {
            Start start = new Start(OptionalInt.of(column), odd, even);
            if (agree(Starts.of(chart, start, times), written)) {
                return Optional.of(start);
            }
        }
        return Optional.empty();
    }

    private static boolean agree(List<RoundStart> starts, List<WrittenStart> written) {
        for (int i = 0; i < written.size(); i++) {
            if (starts.get(i).side() != written.get(i).side()
                    || starts.get(i).number() != written.get(i).stitch()) {
                return false;
            }
        }
        return true;
    }
}
