package edgewright.desk.work;

import edgewright.chart.Chart;
import edgewright.chart.Colour;
import edgewright.chart.PerSide;
import edgewright.chart.Yarn;
import edgewright.yarn.WhatIsLeft;
import edgewright.yarn.YarnPair;
import edgewright.yarn.YarnSwap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;

/**
 * What there is to say about the yarn of a chart in one size. Finding it can take a while, so it is found beside the event thread.
 *
 * @param suggestions for each yarn that is hard to tell apart from another that it meets, the nearest colour that is not
 */
public record YarnReport(
        Chart chart,
        WhatIsLeft left,
        List<YarnPair> meetings,
        Map<Yarn, Optional<Colour>> suggestions,
        List<YarnSwap> swaps) {
    /**
     * What there is to say now.
     *
     * @param cancelled asked again and again during a long search; once it answers true the work ends with a {@link
     *     java.util.concurrent.CancellationException}
     */
    public static YarnReport of(Chart chart, PerSide<Integer> repeats, BooleanSupplier cancelled) {
        List<YarnPair> meetings = YarnPair.of(chart);
        Map<Yarn, Optional<Colour>> suggestions = new LinkedHashMap<>();
        for (YarnPair meeting : meetings) {
            if (meeting.contrast().isLow()) {
                for (Yarn yarn : List.of(meeting.inner(), meeting.outer())) {
                    suggestions.computeIfAbsent(yarn, each -> YarnPair.suggestion(chart, each));
                }
            }
        }
        return new YarnReport(
                chart, WhatIsLeft.of(chart, repeats, cancelled), meetings, suggestions, YarnSwap.of(chart));
    }
}
