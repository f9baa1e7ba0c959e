package edgewright.file.codec;

import edgewright.chart.Chart;
import edgewright.file.fault.FileFault;
import edgewright.file.fault.JsonFault;
import edgewright.file.fault.Problem;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;

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
        OptionalInt start = IntStream.range(0, text.length())
                .filter(place -> !JsonWalk.isBlank(text.charAt(place)))
                .findFirst();
        if (start.isEmpty()) {
            return refused(Problem.ofFile(FileFault.Simple.EMPTY));
        }
        if (text.charAt(start.getAsInt()) != '{') {
            String found = JsonMistake.pieceAt(text, start.getAsInt());
            return refused(Problem.ofFile(new JsonFault.NoObject(found)));
        }
        try {
            Reading in = new Reading(new JsonWalk(text));
            Optional<Chart> chart = CHART.readAlone(in);
            return new DecodedChart(chart, chart.isPresent() ? List.of() : in.problems());
        } catch (UnreadableException refusal) {
            return refused(refusal.problem());
        }
    }

    /** Whether the character may stand before a JSON text and mean nothing. */
    public static boolean isBlank(char c) {
        return JsonWalk.isBlank(c);
    }

    private static DecodedChart refused(Problem problem) {
        return new DecodedChart(Optional.empty(), List.of(problem));
    }
}
