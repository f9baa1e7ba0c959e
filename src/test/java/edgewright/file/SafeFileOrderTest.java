package edgewright.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import edgewright.file.fault.FileFault;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** In which order a file is written, and what a disk that fails at any of the steps leaves of it. */
class SafeFileOrderTest {
    private static final List<String> STEPS = List.of(
            "create part", "write part", "write part", "force part", "move part to chart in one step", "force charts");

    private final WatchedDisk disk = new WatchedDisk();
    private final Path folder = disk.getPath("/charts");
    private final Path file = folder.resolve("chart");

    @BeforeEach
    void saveTheOldOne() throws IOException {
        Files.createDirectory(folder);
        Files.writeString(file, "old");
    }

    @AfterEach
    void putTheDiskAway() throws IOException {
        disk.close();
    }

    @Test
    void allOfItIsOnTheDiskBeforeItTakesThePlaceOfTheOldOneInOneStepAndThenTheFolderIs() throws IOException {
        saveTheNewOne();

        assertThat(disk.deeds()).isEqualTo(STEPS);
        assertThat(Files.readString(file)).isEqualTo("new one");
    }

    @Test
    void throughALinkItIsTheFileItselfThatIsReplaced() throws IOException {
        Path link = folder.resolve("link");
        Files.createSymbolicLink(link, folder.getFileSystem().getPath("chart"));
        SafeFile.write(link, SafeFileOrderTest::newOne);

        assertThat(disk.deeds()).isEqualTo(STEPS);
        assertThat(Files.readSymbolicLink(link).toString()).isEqualTo("chart");
    }

    @Test
    void aStepThatFailsLeavesTheOldOneAndNothingBesideIt() throws IOException {
        for (int step = 0; step < STEPS.size() - 1; step++) {
            failAt(step, new FileSystemException("part", null, "no space left on device"));

            assertThatThrownBy(this::saveTheNewOne)
                    .as(STEPS.get(step))
                    .isInstanceOfSatisfying(
                            FileProblemException.class,
                            refusal -> assertThat(refusal.problem().fault())
                                    .isEqualTo(new FileFault.OfTheSystem("no space left on device")));
            disk.guard(deed -> {});
            assertThat(namesIn(folder)).as(STEPS.get(step)).containsExactly("chart");
            assertThat(Files.readString(file)).as(STEPS.get(step)).isEqualTo("old");
        }
    }

    @Test
    void aFolderThatCannotBeFlushedHasTheNewOneAllTheSame() throws IOException {
        failAt(STEPS.size() - 1, new FileSystemException("charts", null, "not a file"));
        saveTheNewOne();

        assertThat(Files.readString(file)).isEqualTo("new one");
        assertThat(namesIn(folder)).containsExactly("chart");
    }

    @Test
    void aKillBeforeAnyStepLeavesTheOldOneOrTheNewOneAndTheNextSaveNothingBesideIt() throws IOException {
        List<String> left = new ArrayList<>();
        for (int step = 0; step < STEPS.size(); step++) {
            Files.writeString(file, "old");
            killAt(step);
            assertThatThrownBy(this::saveTheNewOne).as(STEPS.get(step)).isInstanceOf(Killed.class);
            disk.guard(deed -> {});

            left.add(Files.readString(file) + " and " + (namesIn(folder).size() - 1));
            SafeFile.write(file, out -> out.write("next".getBytes(StandardCharsets.UTF_8)));
            assertThat(Files.readString(file)).isEqualTo("next");
            assertThat(namesIn(folder)).as(STEPS.get(step)).containsExactly("chart");
        }
        assertThat(left)
                .containsExactly("old and 0", "old and 1", "old and 1", "old and 1", "old and 1", "new one and 0");
    }

    @Test
    void whereNoFileIsReplacedInOneStepTheSaveIsRefused() throws IOException {
        failAt(4, new AtomicMoveNotSupportedException("part", "chart", "Invalid cross-device link"));

        assertThatThrownBy(this::saveTheNewOne)
                .isInstanceOfSatisfying(
                        FileProblemException.class,
                        refusal ->
                                assertThat(refusal.problem().fault()).isEqualTo(FileFault.Simple.NOT_REPLACED_AT_ONCE));
        disk.guard(deed -> {});
        assertThat(Files.readString(file)).isEqualTo("old");
        assertThat(namesIn(folder)).containsExactly("chart");
    }

    @Test
    void aFileThatAnotherProgramHoldsStaysAsItIs() throws IOException {
        // As Windows answers, where a file that is open elsewhere cannot be replaced.
        failAt(
                4,
                new FileSystemException(
                        "part", "chart", "The process cannot access the file because it is being used by another"));

        assertThatThrownBy(this::saveTheNewOne)
                .isInstanceOf(FileProblemException.class)
                .hasMessageContaining("being used by another");
        disk.guard(deed -> {});
        assertThat(Files.readString(file)).isEqualTo("old");
        assertThat(namesIn(folder)).containsExactly("chart");
    }

    @Test
    void aFolderInWhichNothingMayBeMadeIsRefused() throws IOException {
        failAt(0, new AccessDeniedException("part"));

        assertThatThrownBy(this::saveTheNewOne)
                .isInstanceOfSatisfying(
                        FileProblemException.class,
                        refusal -> assertThat(refusal.problem().fault()).isEqualTo(FileFault.Simple.NOT_WRITABLE));
        assertThat(Files.readString(file)).isEqualTo("old");
        assertThat(namesIn(folder)).containsExactly("chart");
    }

    private void saveTheNewOne() throws FileProblemException {
        disk.forget();
        SafeFile.write(file, SafeFileOrderTest::newOne);
    }

    /** In two pieces, so that a half is written at some time. */
    private static void newOne(java.io.OutputStream out) throws IOException {
        out.write("new ".getBytes(StandardCharsets.UTF_8));
        out.write("one".getBytes(StandardCharsets.UTF_8));
    }

    private void failAt(int step, IOException failure) {
        int[] next = {0};
        disk.guard(deed -> {
            if (next[0]++ == step) {
                throw failure;
            }
        });
    }

    /** From this step on nothing is done any more, not even the clearing up. */
    private void killAt(int step) {
        int[] next = {0};
        disk.guard(deed -> {
            if (next[0]++ >= step) {
                throw new Killed();
            }
        });
    }

    private static final class Killed extends Error {
        private static final long serialVersionUID = 1;
    }

    private static List<String> namesIn(Path folder) throws IOException {
        try (var files = Files.list(folder)) {
            return files.map(path -> path.getFileName().toString()).sorted().toList();
        }
    }
}
