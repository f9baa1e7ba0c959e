package edgewright.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A process that saves is killed, at any moment, as the system kills it: without a word. {@code -Dedgewright.exhaustive=2}
 * kills three hundred of them.
 */
class KilledSaveTest {
    private static final int KILLS = Integer.getInteger("edgewright.exhaustive", 1) > 1 ? 300 : 10;

    /** So many are at work at a time, each in a folder of its own; most of a kill is the start of the next process. */
    private static final int AT_ONCE = 2;

    private static final int MOST_SAVES = 5;

    @TempDir
    private Path folder;

    private Path small;
    private Path large;

    @Test
    void theFileIsTheOldOneOrTheNewOneAndTheNextSaveLeavesNothingBesideIt() throws Exception {
        small = Files.writeString(folder.resolve("small"), "reed bank\n".repeat(20_000));
        large = Files.writeString(folder.resolve("large"), "slack water\n".repeat(50_000));
        List<String> either = List.of(Files.readString(small), Files.readString(large));
        Random random = new Random(15);
        int halves = 0;
        for (int kill = 0; kill < KILLS; kill += AT_ONCE) {
            List<Saving> savings = List.of(begin(kill), begin(kill + 1));
            for (Saving saving : savings) {
                saving.killAtRandom(random);
                assertThat(either).as("kill " + kill).contains(Files.readString(saving.file()));
                halves += saving.beside().size();
                SafeFile.write(saving.file(), out -> out.write("next".getBytes(StandardCharsets.UTF_8)));
                assertThat(saving.file()).hasContent("next");
                assertThat(saving.beside()).isEmpty();
                assertThat(saving.link()).isSymbolicLink();
            }
        }
        // Else no kill was at a moment that matters.
        assertThat(halves).isBetween(1, KILLS);
    }

    private Saving begin(int number) throws IOException {
        Path place = Files.createDirectory(folder.resolve("kill-" + number));
        Path file = Files.createFile(place.resolve("chart"));
        Path link = Files.createSymbolicLink(folder.resolve("link-" + number), file);
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-XX:+UseSerialGC",
                        "-Xmx64m",
                        "-cp",
                        System.getProperty("java.class.path"),
                        SavingProcess.class.getName(),
                        link.toString(),
                        small.toString(),
                        large.toString())
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        return new Saving(process, file, link);
    }

    /** A process at work. */
    private record Saving(Process process, Path file, Path link) {
        /** After some saves, somewhere within the time that the next two take. */
        void killAtRandom(Random random) throws IOException, InterruptedException {
            InputStream saved = process.getInputStream();
            long before = System.nanoTime();
            for (int i = 0; i <= 1 + random.nextInt(MOST_SAVES); i++) {
                assertThat(saved.read()).isEqualTo(1);
                before = System.nanoTime();
            }
            assertThat(saved.read()).isEqualTo(1);
            long after = System.nanoTime();
            long point = after + random.nextLong(2 * (after - before) + 1);
            while (System.nanoTime() < point) {
                Thread.onSpinWait();
            }
            process.destroyForcibly();
            assertThat(process.waitFor(1, TimeUnit.MINUTES)).isTrue();
        }

        List<Path> beside() throws IOException {
            try (var files = Files.list(file.getParent())) {
                return files.filter(path -> !path.equals(file)).toList();
            }
        }
    }
}
