package edgewright.desk.work;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.booklet.choice.Edition;
import edgewright.booklet.choice.Paper;
import edgewright.chart.Counting;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
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

        assertThat(settings.dark()).isFalse();
        assertThat(settings.counting()).isEqualTo(Counting.STITCHES);
        assertThat(settings.recent()).isEmpty();
    }

    @Test
    void whatWasChosenIsThereTheNextDay() {
        Settings before = settings();
        before.setDark(true);
        before.setCounting(Counting.WITH_CHAINS);
        before.addRecent(folder.resolve("reed-bank.border.json"));

        Settings after = settings();
        assertThat(after.dark()).isTrue();
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
        Files.writeString(file(), "counting=in-dozens\ndark=\\u00zz\n");

        assertThat(settings().counting()).isEqualTo(Counting.STITCHES);
        assertThat(settings().dark()).isFalse();
    }

    @Test
    void aFolderThatCannotBeWrittenDisturbsNobody() throws IOException {
        Files.writeString(folder.resolve("taken"), "a file where a folder is wanted");
        Settings settings = new Settings(folder.resolve("taken").resolve("desk.properties"));
        settings.setDark(true);

        assertThat(settings.dark()).isTrue();
    }

    private Settings settings() {
        return new Settings(file());
    }

    private Path file() {
        return folder.resolve("desk.properties");
    }
}
