package edgewright.file;

import edgewright.chart.Chart;
import edgewright.file.codec.ChartCodec;
import edgewright.file.codec.ChartReader;
import edgewright.file.codec.DecodedChart;
import java.nio.charset.StandardCharsets;

/** A chart as the text of a chart file, version 1. */
public final class ChartText {
    private static final ChartCodec CHART = new ChartCodec();

    private ChartText() {}

    /**
     * The text of the chart, made to be read and compared line by line: one yarn a line, one round a line, lines ended by a
     * line feed. Every member that version 1 knows is written, then those that it does not know.
     */
    public static String toJson(Chart chart) {
        return CHART.write(chart);
    }

    /** The chart that the text stands for, or all that is wrong with it. A byte order mark at its start does not matter. */
    public static ReadResult fromJson(String text) {
        return fromJson(text, Fingerprint.of(text.getBytes(StandardCharsets.UTF_8)));
    }

    static ReadResult fromJson(String text, Fingerprint fingerprint) {
        DecodedChart decoded = ChartReader.read(TextFile.withoutByteOrderMark(text));
        return decoded.chart().isPresent()
                ? new ReadResult.Read(decoded.chart().get(), fingerprint)
                : new ReadResult.Problems(decoded.problems());
    }
}
