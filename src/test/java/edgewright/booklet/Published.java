package edgewright.booklet;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.booklet.choice.BookletOptions;
import edgewright.booklet.choice.Progress;
import edgewright.chart.Chart;
import edgewright.file.ChartFiles;
import edgewright.file.ReadResult;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** What tests of printed patterns start from. */
public final class Published {
    /** A chart of every kind: two yarns, three, stacked long stitches, and one with every flaw. */
    static final List<String> SAMPLES =
            List.of("reed-bank", "tide-steps", "lantern-posts", "mooring-rope", "first-try-unfinished");

    private static final Map<Object, byte[]> MADE = new ConcurrentHashMap<>();

    private Published() {}

    public static Chart sample(String name) {
        ReadResult result = ChartFiles.read(Path.of("sample-charts", name + ChartFiles.ENDING));
        assertThat(result).as("sample " + name).isInstanceOf(ReadResult.Read.class);
        return ((ReadResult.Read) result).chart();
    }

    /** The pattern of a chart; made once, since many tests read the same one. */
    public static byte[] bytes(Chart chart, BookletOptions options) {
        return MADE.computeIfAbsent(List.of(chart, options), key -> fresh(chart, options));
    }

    /** The pattern of a chart, made now. */
    public static byte[] fresh(Chart chart, BookletOptions options) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            assertThat(Booklet.publish(chart, options, out, Progress.NONE))
                    .isInstanceOf(PublishOutcome.Published.class);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }

    public static ReadBack read(Chart chart, BookletOptions options) {
        return new ReadBack(bytes(chart, options));
    }
}
