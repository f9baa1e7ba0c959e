package edgewright.file.codec;

import edgewright.chart.Chart;
import edgewright.file.fault.Problem;
import java.util.List;
import java.util.Optional;

/**
 * What a JSON text came to.
 *
 * @param chart empty if something is wrong with it
 * @param problems all that is wrong; none if there is a chart
 */
public record DecodedChart(Optional<Chart> chart, List<Problem> problems) {
    public DecodedChart {
        problems = List.copyOf(problems);
    }
}
