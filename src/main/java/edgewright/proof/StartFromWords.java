package edgewright.proof;

import edgewright.chart.Chart;
import edgewright.chart.PerSide;
import edgewright.chart.Side;
import edgewright.chart.SideShape;
import edgewright.chart.Start;
import edgewright.fit.RoundStart;
import edgewright.fit.Starts;
import edgewright.words.tree.Instructions;
import edgewright.words.tree.StartMarkers;
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
        Optional<StartMarkers> markers = pattern.markers();
        if (markers.isEmpty()) {
            return Optional.empty();
        }
        StartMarkers inBase = markers.get();
        int column = inBase.odd().stitch() - 1 - inBase.round();
        if (column < 1 || column > chart.border().lastStart()) {
            return Optional.empty();
        }
        PerSide<Integer> times = PerSide.each(side -> repeats.applyAsInt(chart.shape(side), side));
        Start start = new Start(
                OptionalInt.of(column), inBase.odd().side(), inBase.even().side());
        return agree(Starts.of(chart, start, times), pattern.rounds()) ? Optional.of(start) : Optional.empty();
    }

    private static boolean agree(List<RoundStart> starts, List<WrittenRound> rounds) {
        for (int i = 0; i < rounds.size(); i++) {
            RoundStart start = starts.get(i);
            Optional<WrittenStart> written = rounds.get(i).start();
            boolean agrees = start.free()
                    ? written.filter(each -> each.side() == start.side() && each.stitch() == start.number())
                            .isPresent()
                    : written.isEmpty();
            if (!agrees) {
                return false;
            }
        }
        return true;
    }
}
