package edgewright.testing;

import edgewright.file.ChartFiles;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** The files of the sample charts, in the order of their names. */
public final class SampleFiles {
    private SampleFiles() {}

    /** Every sample. */
    public static List<Path> all() {
        try (Stream<Path> files = Files.list(Path.of("sample-charts"))) {
            return files.filter(file -> file.toString().endsWith(ChartFiles.ENDING))
                    .sorted()
                    .toList();
        } catch (IOException problem) {
            throw new UncheckedIOException(problem);
        }
    }

    /** Every sample but the one that is there for its findings. */
    public static List<Path> sound() {
        return all().stream()
                .filter(file -> !file.toString().contains("unfinished"))
                .toList();
    }
}
