package edgewright.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.google.common.jimfs.Configuration;
import com.google.common.jimfs.Jimfs;
import edgewright.chart.Chart;
import edgewright.file.fault.Fault;
import edgewright.file.fault.FileFault;
import edgewright.file.fault.ProblemSentences;
import edgewright.texts.English;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystem;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SafeFileTest {
    @TempDir
    private Path folder;

    @Test
    void aNewFileIsWritten() throws IOException {
        Path file = folder.resolve("reed bank – Röhricht 🌾.border.json");
        SafeFile.write(file, text("new"));
        assertThat(file).hasContent("new");
        assertThat(namesIn(folder)).containsExactly(file.getFileName().toString());
    }

    @Test
    void theOldFileIsReplaced() throws IOException {
        Path file = Files.writeString(folder.resolve("chart"), "the old one, which was longer");
        SafeFile.write(file, text("new"));
        assertThat(file).hasContent("new");
        assertThat(namesIn(folder)).containsExactly("chart");
    }

    @Test
    void aFileNamedWithoutAFolderIsWrittenWhereTheProgramRuns() throws IOException {
        try (FileSystem memory = Jimfs.newFileSystem(Configuration.unix())) {
            SafeFile.write(memory.getPath("chart"), text("new"));
            assertThat(Files.readString(memory.getPath("/work/chart"))).isEqualTo("new");
        }
    }

    @Test
    void windowsPathsAreWrittenToo() throws IOException {
        try (FileSystem memory = Jimfs.newFileSystem(Configuration.windows())) {
            Path file = memory.getPath("C:\\Charts of ours\\reed.border.json");
            Files.createDirectory(file.getParent());
            SafeFile.write(file, text("old"));
            SafeFile.write(file, text("new"));
            assertThat(Files.readString(file)).isEqualTo("new");
            assertThat(namesIn(file.getParent())).containsExactly("reed.border.json");
        }
    }

    @Test
    void theOldFileIsThereUntilTheNewOneIsWhole() throws IOException {
        Path file = Files.writeString(folder.resolve("chart"), "old");
        SafeFile.write(file, out -> {
            out.write("half".getBytes(StandardCharsets.UTF_8));
            out.flush();
            assertThat(file).hasContent("old");
            out.write(" and half".getBytes(StandardCharsets.UTF_8));
        });
        assertThat(file).hasContent("half and half");
    }

    @Test
    void aFailureWhileWritingLeavesTheOldFileAlone() throws IOException {
        Path file = Files.writeString(folder.resolve("chart"), "old");
        assertThatThrownBy(() -> SafeFile.write(file, out -> {
                    out.write(1);
                    throw new IOException("the paper is out");
                }))
                .satisfies(says("the system cannot reach it (the paper is out); expected a file that it can reach"));
        assertThat(file).hasContent("old");
        assertThat(namesIn(folder)).containsExactly("chart");
    }

    @Test
    void aMistakeOfTheProgramWhileWritingLeavesTheOldFileAlone() throws IOException {
        Path file = Files.writeString(folder.resolve("chart"), "old");
        assertThatThrownBy(() -> SafeFile.write(file, out -> {
                    out.write(1);
                    throw new IllegalStateException("a mistake");
                }))
                .isInstanceOf(IllegalStateException.class);
        assertThat(file).hasContent("old");
        assertThat(namesIn(folder)).containsExactly("chart");
    }

    @Test
    void runningOutOfMemoryWhileWritingLeavesTheOldFileAlone() throws IOException {
        Path file = Files.writeString(folder.resolve("chart"), "old");
        assertThatThrownBy(() -> SafeFile.write(file, out -> {
                    throw new OutOfMemoryError("a picture too large");
                }))
                .isInstanceOf(OutOfMemoryError.class);
        assertThat(file).hasContent("old");
        assertThat(namesIn(folder)).containsExactly("chart");
    }

    @Test
    void whatAnyNumberOfKilledSavesLeftIsClearedAwayByTheNextOne() throws IOException {
        for (int i = 0; i < 300; i++) {
            Files.writeString(folder.resolve(".edgewright-" + i + ".part"), "half");
        }
        Path file = folder.resolve("chart");
        SafeFile.write(file, text("new"));
        assertThat(file).hasContent("new");
        assertThat(namesIn(folder)).containsExactly("chart");
    }

    @Test
    void aSaveClearsAwayNeitherWhatIsBeingWrittenNowNorWhatIsNoFile() throws IOException {
        Files.createDirectory(folder.resolve(".edgewright-7.part"));
        SafeFile.write(folder.resolve("outer"), out -> {
            SafeFile.write(folder.resolve("inner"), text("inner"));
            assertThat(namesIn(folder)).hasSize(3).contains(".edgewright-7.part", "inner");
            out.write("outer".getBytes(StandardCharsets.UTF_8));
        });
        assertThat(folder.resolve("outer")).hasContent("outer");
        assertThat(namesIn(folder)).containsExactly(".edgewright-7.part", "inner", "outer");
    }

    @Test
    void aSaveThatFailedClearsNothingAway() throws IOException {
        Files.createFile(folder.resolve(".edgewright-0.part"));
        assertThatThrownBy(() -> SafeFile.write(folder.resolve("chart"), out -> {
                    throw new IOException("the paper is out");
                }))
                .isInstanceOf(FileProblemException.class);
        assertThat(namesIn(folder)).containsExactly(".edgewright-0.part");
    }

    @Test
    void aFullDiskLeavesTheOldFileAlone() throws IOException {
        Configuration small = Configuration.unix().toBuilder()
                .setBlockSize(1_000)
                .setMaxSize(5_000)
                .build();
        try (FileSystem memory = Jimfs.newFileSystem(small)) {
            Path file = Files.writeString(memory.getPath("/work/chart"), "old");
            assertThatThrownBy(() -> SafeFile.write(file, out -> out.write(new byte[20_000])))
                    .isInstanceOf(FileProblemException.class)
                    .hasMessageContaining("out of disk space");
            assertThat(Files.readString(file)).isEqualTo("old");
            assertThat(namesIn(memory.getPath("/work"))).containsExactly("chart");
        }
    }

    @Test
    void theFileAtTheEndOfTheLinksIsReplaced() throws IOException {
        Path real = Files.createDirectory(folder.resolve("charts")).resolve("real");
        Files.writeString(real, "old");
        Files.createSymbolicLink(folder.resolve("charts/inner"), Path.of("real"));
        Path link = Files.createSymbolicLink(folder.resolve("link"), Path.of("charts/inner"));
        SafeFile.write(link, text("new"));
        assertThat(real).hasContent("new");
        assertThat(Files.readSymbolicLink(link)).isEqualTo(Path.of("charts/inner"));
        assertThat(namesIn(folder.resolve("charts"))).containsExactly("inner", "real");
    }

    @Test
    void aLinkToNothingGetsItsFile() throws IOException {
        Path link = Files.createSymbolicLink(folder.resolve("link"), Path.of("not-there-yet"));
        SafeFile.write(link, text("new"));
        assertThat(folder.resolve("not-there-yet")).hasContent("new");
        assertThat(link).isSymbolicLink();
    }

    @Test
    void linksInACircleAreRefused() throws IOException {
        Files.createSymbolicLink(folder.resolve("a"), Path.of("b"));
        Path link = Files.createSymbolicLink(folder.resolve("b"), Path.of("a"));
        assertThatThrownBy(() -> SafeFile.write(link, text("new")))
                .hasMessageContaining("too many levels of symbolic links");
    }

    @ParameterizedTest
    @ValueSource(strings = {"rw-------", "rw-rw-r--", "rwxr-x---"})
    void permissionsAreKept(String permissions) throws IOException {
        Path file = Files.writeString(folder.resolve("chart"), "old");
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString(permissions));
        SafeFile.write(file, text("new"));
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
                .isEqualTo(permissions);
    }

    @Test
    void aNewFileHasThePermissionsOfAnyNewFile() throws IOException {
        Path file = folder.resolve("chart");
        SafeFile.write(file, text("new"));
        Path other = Files.createFile(folder.resolve("other"));
        assertThat(Files.getPosixFilePermissions(file)).isEqualTo(Files.getPosixFilePermissions(other));
    }

    @Test
    void aFolderIsNotReplaced() throws IOException {
        Path inner = Files.createDirectory(folder.resolve("charts"));
        refuses(inner, FileFault.Simple.IS_A_FOLDER);
        refuses(folder.getRoot(), FileFault.Simple.IS_A_FOLDER);
        assertThat(inner).isEmptyDirectory();
    }

    @Test
    void aFolderIsNotMade() {
        Path none = folder.resolve("no/such/folder");
        refuses(none.resolve("chart"), new FileFault.NoFolder(none.toString()));
        assertThat(folder).isEmptyDirectory();
    }

    @Test
    void aFileIsNoFolder() throws IOException {
        Path chart = Files.writeString(folder.resolve("chart"), "old");
        refuses(chart.resolve("inner"), new FileFault.NoFolder(chart.toString()));
    }

    @Test
    void aDeviceIsNotReplaced() {
        refuses(Path.of("/dev/null"), FileFault.Simple.NOT_A_FILE);
    }

    @Test
    void whereNobodyMayWriteTheSystemSaysSo() {
        // Not even an administrator can make a file there.
        refuses(Path.of("/sys/chart"), FileFault.Simple.NOT_WRITABLE);
    }

    @Test
    void aChartTooLargeToBeReadAgainIsNotWritten() throws IOException {
        Path file = Files.writeString(folder.resolve("chart"), "old");
        Chart chart = ((ReadResult.Read) ChartText.fromJson(BrokenCharts.sound())).chart();
        Chart large = chart.withNotes("n".repeat(ChartFiles.MOST_BYTES));
        assertThatThrownBy(() -> ChartFiles.write(file, large))
                .satisfies(says("the file is too large; expected at most 16,777,216 bytes"));
        assertThat(file).hasContent("old");
    }

    @Test
    void aWrittenChartIsReadAgainWithTheSameFingerprint() throws IOException {
        Path file = folder.resolve("lantern.border.json");
        Chart chart = ((ReadResult.Read) ChartText.fromJson(BrokenCharts.sound())).chart();
        Fingerprint written = ChartFiles.write(file, chart);
        assertThat(ChartFiles.read(file)).isEqualTo(new ReadResult.Read(chart, written));
        assertThat(ChartFiles.fingerprint(file)).contains(written);
    }

    @Test
    void aFileThatSomebodyElseChangedHasAnotherFingerprint() throws IOException {
        Path file = Files.writeString(folder.resolve("lantern.border.json"), BrokenCharts.sound());
        Fingerprint before = ChartFiles.fingerprint(file).orElseThrow();
        Files.writeString(file, BrokenCharts.sound().replace("Peat", "Leat"));
        assertThat(ChartFiles.fingerprint(file)).isPresent().get().isNotEqualTo(before);
        Files.delete(file);
        assertThat(ChartFiles.fingerprint(file)).isEmpty();
    }

    private static void refuses(Path file, Fault fault) {
        assertThatThrownBy(() -> SafeFile.write(file, text("new")))
                .isInstanceOfSatisfying(
                        FileProblemException.class,
                        refusal -> assertThat(refusal.problem().fault()).isEqualTo(fault));
    }

    private static Consumer<Throwable> says(String sentence) {
        return refusal -> assertThat(
                        new ProblemSentences(English.LANGUAGE).of(((FileProblemException) refusal).problem()))
                .isEqualTo(sentence);
    }

    private static SafeFile.Content text(String text) {
        return out -> out.write(text.getBytes(StandardCharsets.UTF_8));
    }

    private static List<String> namesIn(Path folder) throws IOException {
        try (var files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }
}
