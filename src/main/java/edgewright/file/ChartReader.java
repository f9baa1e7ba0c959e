package edgewright.file;

import edgewright.chart.Chart;
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
final class ChartReader {
    private static final ChartCodec CHART = new ChartCodec();

    private ChartReader() {}

    /** Reads the whole text. */
    static ReadResult read(String text, Fingerprint fingerprint) {
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
            return chart.isPresent()
                    ? new ReadResult.Read(chart.get(), fingerprint)
                    : new ReadResult.Problems(in.problems());
        } catch (Refusal refusal) {
            return refused(refusal.problem());
        }
    }

    private static ReadResult refused(Problem problem) {
        return new ReadResult.Problems(List.of(problem));
    }
}
