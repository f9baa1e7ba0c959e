package edgewright.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a look at a file sees of what others did to it. */
class WatchedFileTest {
    @TempDir
    private Path folder;

    private Path file;
    private WatchedFile watched;

    @BeforeEach
    void lookOnce() throws IOException {
        file = Files.writeString(folder.resolve("reed.border.json"), "ebb");
        watched = new WatchedFile(file);
        assertThat(watched.look()).isEqualTo(of("ebb"));
    }

    @Test
    void aFileWrittenOverIsSeen() throws IOException {
        Files.writeString(file, "flood");
        assertThat(watched.look()).isEqualTo(of("flood"));
    }

    @Test
    void aFileReplacedByOneOfTheSameLengthAndTimeIsSeen() throws IOException {
        FileTime time = Files.getLastModifiedTime(file);
        SafeFile.write(file, out -> out.write("low".getBytes(StandardCharsets.UTF_8)));
        Files.setLastModifiedTime(file, time);
        assertThat(watched.look()).isEqualTo(of("low"));
    }

    @Test
    void aFileThatWasOnlyTouchedHoldsWhatItHeld() throws IOException {
        Files.setLastModifiedTime(file, FileTime.fromMillis(0));
        assertThat(watched.look()).isEqualTo(of("ebb"));
    }

    @Test
    void aFileThatGoesAndComesBackIsSeenToDoBoth() throws IOException {
        Files.delete(file);
        assertThat(watched.look()).isEmpty();
        Files.writeString(file, "ebb");
        assertThat(watched.look()).isEqualTo(of("ebb"));
    }

    @Test
    void aFileThatNobodyTouchedIsNotReadAgain() throws IOException {
        FileTime time = Files.getLastModifiedTime(file);
        // Of the same length, in the same file and with its time: so no look from outside tells them apart.
        Files.writeString(file, "low");
        Files.setLastModifiedTime(file, time);
        assertThat(watched.look()).isEqualTo(of("ebb"));
    }

    private static Optional<Fingerprint> of(String text) {
        return Optional.of(Fingerprint.of(text.getBytes(StandardCharsets.UTF_8)));
    }
}
