package edgewright.file.codec;

import edgewright.chart.Chart;
import edgewright.file.json.JsonWalk;
import edgewright.file.json.UnreadableException;
import java.util.List;
import java.util.Optional;

/**
 * Makes a chart of a JSON text, or says all that is wrong with it.
 *
 * <p>Members may come in any order. Those that version 1 does not know are kept as they are written, at every level. A
 * section that is too long or too short for its round is no mistake here; it is found when the chart is checked.
 */
public final class ChartReader {
    /** The most problems that are told of one text. */
    static final int MOST_PROBLEMS = 100;

    private static final ChartCodec CHART = new ChartCodec();

    private ChartReader() {}

    /** Reads the whole text. */
    public static DecodedChart read(String text) {
        try {
            Reading in = new Reading(JsonWalk.ofObject(text));
            Optional<Chart> chart = CHART.readAlone(in);
            return new DecodedChart(chart, chart.isPresent() ? List.of() : in.problems());
        } catch (UnreadableException refusal) {
            return new DecodedChart(Optional.empty(), List.of(refusal.problem()));
        }
    }

    /** Whether the character may stand before a JSON text and mean nothing. */
    public static boolean isBlank(char c) {
        return JsonWalk.isBlank(c);
    }
}
