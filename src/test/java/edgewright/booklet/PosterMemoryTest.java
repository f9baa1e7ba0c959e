package edgewright.booklet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;

/** A poster needs no more memory than a program has anyway: its sheets are made one after another. */
class PosterMemoryTest {
    @TempDir
    private Path folder;

    private void assertPublishedIn(String heap, int rounds) throws IOException, InterruptedException {
        Path said = folder.resolve("said.txt");
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Xmx" + heap,
                        "-Djava.awt.headless=true",
                        "-classpath",
                        System.getProperty("java.class.path"),
                        PosterMemory.class.getName(),
                        Integer.toString(rounds))
                .redirectErrorStream(true)
                .redirectOutput(said.toFile())
                .start();
        assertThat(process.waitFor())
                .as(Files.readString(said, StandardCharsets.UTF_8))
                .isZero();
    }

    @Test
    void aHundredRoundsArePublishedInALittleMemory() throws Exception {
        assertPublishedIn("64m", 100);
    }

    @Test
    @EnabledIfSystemProperty(
            named = "edgewright.exhaustive",
            matches = "[2-9]",
            disabledReason = "takes half a minute; -Dedgewright.exhaustive=2 runs it")
    void fourHundredRoundsArePublishedInAQuarterOfAGigabyte() throws Exception {
        assertPublishedIn("256m", 400);
    }
}
