package edgewright.desk.work;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.booklet.choice.Edition;
import edgewright.booklet.choice.Paper;
import edgewright.chart.Counting;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the desk remembers. */
class SettingsTest {
    @TempDir
    private Path folder;

    @Test
    void howAPatternWasPublishedLastIsProposedAgain() {
        Path file = folder.resolve("desk.properties");
        Settings settings = new Settings(file);
        assertThat(settings.choice(Edition.STANDARD)).isEqualTo(Edition.STANDARD);
        settings.choose(Edition.LARGE_PRINT);
        settings.choose(Paper.LETTER);
        assertThat(new Settings(file).choice(Edition.STANDARD)).isEqualTo(Edition.LARGE_PRINT);
        assertThat(new Settings(file).choice(Paper.A4)).isEqualTo(Paper.LETTER);
    }

    @Test
    void withoutAFileEverythingIsAsItComes() {
        Settings settings = settings();

        assertThat(settings.theme()).isEqualTo(Theme.LIGHT);
        assertThat(settings.counting()).isEqualTo(Counting.STITCHES);
        assertThat(settings.recent()).isEmpty();
    }

    @Test
    void whatWasChosenIsThereTheNextDay() {
        Settings before = settings();
        before.setTheme(Theme.DARK);
        before.setCounting(Counting.WITH_CHAINS);
        before.addRecent(folder.resolve("reed-bank.border.json"));

        Settings after = settings();
        assertThat(after.theme()).isEqualTo(Theme.DARK);
        assertThat(after.counting()).isEqualTo(Counting.WITH_CHAINS);
        assertThat(after.recent()).containsExactly(folder.resolve("reed-bank.border.json"));
    }

    @Test
    void theChartWorkedOnLastComesFirstAndOnce() {
        Settings settings = settings();
        settings.addRecent(folder.resolve("reed-bank.border.json"));
        settings.addRecent(folder.resolve("tide-steps.border.json"));
        settings.addRecent(folder.resolve("reed-bank.border.json"));

        assertThat(settings.recent())
                .containsExactly(folder.resolve("reed-bank.border.json"), folder.resolve("tide-steps.border.json"));
    }

    @Test
    void eightChartsAreRemembered() {
        Settings settings = settings();
        List<Path> charts = IntStream.rangeClosed(1, 10)
                .mapToObj(i -> folder.resolve(i + ".border.json"))
                .toList();
        charts.forEach(settings::addRecent);

        assertThat(settings().recent())
                .containsExactly(
                        charts.get(9),
                        charts.get(8),
                        charts.get(7),
                        charts.get(6),
                        charts.get(5),
                        charts.get(4),
                        charts.get(3),
                        charts.get(2));
    }

    @Test
    void aChartThatIsGoneCanBeForgotten() {
        Settings settings = settings();
        settings.addRecent(folder.resolve("reed-bank.border.json"));
        settings.addRecent(folder.resolve("tide-steps.border.json"));
        settings.removeRecent(folder.resolve("tide-steps.border.json"));

        assertThat(settings().recent()).containsExactly(folder.resolve("reed-bank.border.json"));
    }

    @Test
    void aFileThatMakesNoSenseIsAsGoodAsNone() throws IOException {
        Files.writeString(file(), "counting=in-dozens\ntheme=\\u00zz\n");

        assertThat(settings().counting()).isEqualTo(Counting.STITCHES);
        assertThat(settings().theme()).isEqualTo(Theme.LIGHT);
    }

    @Test
    void aFolderThatCannotBeWrittenDisturbsNobody() throws IOException {
        Files.writeString(folder.resolve("taken"), "a file where a folder is wanted");
        Settings settings = new Settings(folder.resolve("taken").resolve("desk.properties"));
        settings.setTheme(Theme.DARK);

        assertThat(settings.theme()).isEqualTo(Theme.DARK);
    }

    @Test
    void aChartThatIsGoneIsForgottenByItsRelativePathToo() {
        Settings settings = settings();
        Path relative = Path.of("sample-charts", "..", "gone.border.json");
        settings.addRecent(relative);
        settings.removeRecent(relative);

        assertThat(settings().recent()).isEmpty();
    }

    @Test
    void whoeverReadsTheSettingsWhileTheyAreWrittenSeesThemWhole() throws IOException {
        settings().setCounting(Counting.WITH_CHAINS);
        String before = Files.readString(file());
        try (BufferedReader reading = Files.newBufferedReader(file())) {
            settings().setTheme(Theme.DARK);
            assertThat(reading.lines().collect(Collectors.joining("\n", "", "\n")))
                    .isEqualTo(before);
        }
        try (Stream<Path> beside = Files.list(folder)) {
            assertThat(beside).containsExactly(file());
        }
    }

    /** As the XDG Base Directory Specification has it: https://specifications.freedesktop.org/basedir-spec/latest/ */
    @Test
    void theSettingsLieInTheFolderForSettingsOfTheUser() {
        Path home = folder.resolve("home");
        Path config = folder.resolve("config");
        String inIt = "edgewright/desk.properties";

        assertThat(Settings.fileOfUser(Map.of("XDG_CONFIG_HOME", config.toString(), "HOME", home.toString())))
                .isEqualTo(config.resolve(inIt));
        assertThat(Settings.fileOfUser(Map.of("HOME", home.toString())))
                .isEqualTo(home.resolve(".config").resolve(inIt));
        assertThat(Settings.fileOfUser(Map.of("XDG_CONFIG_HOME", "not/absolute", "HOME", home.toString())))
                .as("a relative path in this variable is invalid and ignored")
                .isEqualTo(home.resolve(".config").resolve(inIt));
        assertThat(Settings.fileOfUser(Map.of()))
                .isEqualTo(Path.of(System.getProperty("user.home"), ".config").resolve(inIt));
    }

    @Test
    void noTestReadsOrChangesTheSettingsOrTheUnsavedWorkOfWhoeverRunsIt() throws IOException {
        try (Stream<Path> tests = Files.walk(Path.of("src", "test", "java"))) {
            assertThat(tests.filter(path -> path.toString().endsWith(".java"))
                            .filter(SettingsTest::asksForTheUser)
                            .map(path -> path.getFileName().toString()))
                    .containsExactly("SettingsTest.java");
        }
    }

    /** Only the desk as it is opened for a user does; a test gives it a folder of its own. */
    private static boolean asksForTheUser(Path source) {
        try {
            String text = Files.readString(source);
            return text.contains("Settings.ofUser(")
                    || text.contains("JournalFolder.ofUser(")
                    || text.contains("Desk.open(");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private Settings settings() {
        return new Settings(file());
    }

    private Path file() {
        return folder.resolve("desk.properties");
    }
}
