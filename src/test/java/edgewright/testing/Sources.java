package edgewright.testing;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** The sources of the program, for tests that hold texts and code to each other. */
public final class Sources {
    private Sources() {}

    /**
     * The sources of a package and of all rooms in it, each as one text.
     *
     * @param name the package below {@code edgewright}
     * @throws IllegalStateException if there is none, since a test over nothing passes always
     */
    public static List<String> of(String name) {
        try (Stream<Path> files = Files.walk(Path.of("src/main/java/edgewright", name))) {
            List<String> sources = files.filter(file -> file.toString().endsWith(".java"))
                    .filter(file -> !file.endsWith("package-info.java"))
                    .sorted()
                    .map(Sources::read)
                    .toList();
            if (sources.isEmpty()) {
                throw new IllegalStateException("no source in package " + name);
            }
            return sources;
        } catch (IOException problem) {
            throw new UncheckedIOException(problem);
        }
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException problem) {
            throw new UncheckedIOException(problem);
        }
    }
}
