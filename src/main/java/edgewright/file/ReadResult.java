package edgewright.file;

import edgewright.chart.Chart;
import edgewright.file.fault.Problem;
import java.util.List;

/** What came of reading a chart file: the chart, or why there is none. */
public sealed interface ReadResult {

    /**
     * The file is a chart. It may be ragged or unworkable; that is for the checks to say.
     *
     * @param fingerprint of the bytes that the chart was read from
     */
    record Read(Chart chart, Fingerprint fingerprint) implements ReadResult {}

    /**
     * The file is not a chart.
     *
     * @param problems at least one, in the order of the file as far as they have lines; at most {@link
     *     ChartFiles#MOST_PROBLEMS}
     */
    record Problems(List<Problem> problems) implements ReadResult {
        public Problems {
            problems = List.copyOf(problems);
            if (problems.isEmpty()) {
                throw new IllegalArgumentException("a chart that cannot be read has a reason");
            }
        }
    }
}
