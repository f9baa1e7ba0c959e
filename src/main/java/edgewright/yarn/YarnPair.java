package edgewright.yarn;

import edgewright.chart.Chart;
import edgewright.chart.Colour;
import edgewright.chart.Yarn;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Two yarns that lie beside each other, because a round of one is worked on a round of the other.
 *
 * @param round the outer of the first two rounds in which they meet
 */
public record YarnPair(Yarn inner, Yarn outer, int round) {

    /** All pairs of different yarns that meet, each once, in the order in which they meet first, from the inside out. */
    public static List<YarnPair> of(Chart chart) {
        List<YarnPair> meetings = new ArrayList<>();
        Set<Set<String>> met = new HashSet<>();
        for (int r = 2; r <= chart.rounds().size(); r++) {
            String inner = chart.round(r - 1).yarn();
            String outer = chart.round(r).yarn();
            boolean metJustNow = r > 2 && outer.equals(chart.round(r - 2).yarn()); // most charts take two yarns in turn
            if (!metJustNow && !inner.equals(outer) && met.add(Set.of(inner, outer))) {
                meetings.add(new YarnPair(chart.yarnOf(r - 1), chart.yarnOf(r), r));
            }
        }
        return List.copyOf(meetings);
    }

    /** How well the two can be told apart. */
    public Contrast contrast() {
        return Contrast.between(inner.colour(), outer.colour());
    }

    /**
     * The colour nearest to that of this yarn that can be told apart from every yarn it meets in the chart; its own if it can.
     * Empty if there is none.
     */
    public static Optional<Colour> suggestion(Chart chart, Yarn yarn) {
        List<Colour> others = of(chart).stream()
                .flatMap(meeting -> meeting.beside(yarn).stream())
                .map(Yarn::colour)
                .toList();
        return ColourSuggestion.nearest(yarn.colour(), others);
    }

    /** The other one of the two, if this yarn is one of them. */
    private Optional<Yarn> beside(Yarn yarn) {
        if (inner.id().equals(yarn.id())) {
            return Optional.of(outer);
        }
        return outer.id().equals(yarn.id()) ? Optional.of(inner) : Optional.empty();
    }
}
