package edgewright.desk.own;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.swing.edt.GuiActionRunner.execute;

import edgewright.chart.Colour;
import edgewright.chart.Extras;
import edgewright.chart.Imprint;
import edgewright.chart.OwnMatter;
import edgewright.chart.OwnSection;
import edgewright.chart.Photo;
import edgewright.desk.DeskOnDisplay;
import edgewright.desk.parts.Look;
import edgewright.desk.work.Theme;
import edgewright.file.ImprintFiles;
import edgewright.testing.Pictures;
import edgewright.texts.English;
import java.awt.Window;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.swing.SwingUtilities;
import org.assertj.swing.core.Robot;
import org.assertj.swing.fixture.DialogFixture;
import org.assertj.swing.timing.Condition;
import org.assertj.swing.timing.Pause;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/** Photographs, texts and imprint, given at the desk. */
class OwnPagesWindowTest {
    private static final OwnMatter BEFORE =
            OwnMatter.NONE.withSections(List.of(new OwnSection("Care", "Wash it cold.")));

    /** A folder with one photograph and no imprint. */
    private static final class Reeds implements OwnFolder {
        @Override
        public Optional<String> photograph() {
            return Optional.of("reed.jpg");
        }

        @Override
        public Optional<String> imprint() {
            return Optional.empty();
        }

        @Override
        public Optional<String> edited(Window above, String name) {
            return Optional.empty();
        }
    }

    @TempDir
    private Path folder;

    @RegisterExtension
    private final DeskOnDisplay display = new DeskOnDisplay();

    private Robot robot;

    @BeforeEach
    void takeTheMouse() {
        execute(() -> Look.setUp(Theme.LIGHT));
        robot = display.robot();
    }

    @Test
    void aPhotographATextAndAnImprintAreAddedAndEachAsksForItsWords() {
        OwnPagesDialog dialog =
                execute(() -> new OwnPagesDialog(null, BEFORE, Optional.of(new Reeds()), English.LANGUAGE));
        DialogFixture window = new DialogFixture(robot, dialog);
        SwingUtilities.invokeLater(dialog::ask);
        Pause.pause(new Condition("the dialog is open") {
            @Override
            public boolean test() {
                return execute(dialog::isShowing);
            }
        });
        window.button("own.photos.add").click();
        window.label("objection").requireText("Say in words what 'reed.jpg' shows, for those who do not see it.");
        window.button("accept").requireDisabled();
        window.textBox("own.alternative").enterText("Reeds");
        window.button("accept").requireEnabled();
        window.comboBox("own.at").selectItem(0);
        window.tabbedPane("own.tabs").selectTab(1);
        window.textBox("own.title").requireText("Care");
        window.button("own.texts.add").click();
        window.button("accept").requireDisabled();
        window.textBox("own.title").enterText("Thanks");
        window.textBox("own.text").enterText("To the herons.");
        window.button("own.texts.up").click();
        window.tabbedPane("own.tabs").selectTab(2);
        window.textBox("own.imprint").enterText("saltmarsh.imprint.json");
        window.button("accept").requireEnabled();
        assertThat(execute(dialog::matter))
                .isEqualTo(new OwnMatter(
                        List.of(new Photo("reed.jpg", "Reeds", "", Photo.At.COVER)),
                        List.of(new OwnSection("Thanks", "To the herons."), new OwnSection("Care", "Wash it cold.")),
                        Optional.of("saltmarsh.imprint.json")));
        window.button("cancel").click();
    }

    @Test
    void aPhotographFromElsewhereIsCopiedBesideTheChartUnlessAnotherHasItsName() throws IOException {
        Path charts = Files.createDirectory(folder.resolve("charts"));
        PhotoFiles photos = new PhotoFiles(charts.resolve("reed-bank.border.json"), English.LANGUAGE);
        Path shore = Files.write(folder.resolve("shore.png"), Pictures.png(Pictures.shore(30, 20)));
        assertThat(photos.bring(shore)).isEqualTo(new PhotoFiles.Brought(Optional.of("shore.png"), ""));
        assertThat(charts.resolve("shore.png")).hasSameBinaryContentAs(shore);
        assertThat(photos.bring(charts.resolve("shore.png")).name()).contains("shore.png");
        assertThat(photos.bring(shore).refusal())
                .isEqualTo(
                        "There is another file 'shore.png' beside the chart; expected a photograph with a name of its own.");
        Path broken = Files.write(folder.resolve("broken.png"), new byte[] {1, 2, 3});
        assertThat(photos.bring(broken).refusal())
                .endsWith("'broken.png' is neither JPEG nor PNG; expected one of them");
        assertThat(charts.resolve("broken.png")).doesNotExist();
    }

    @Test
    void anImprintFromElsewhereIsCopiedBesideTheChartWithItsLogo() throws Exception {
        Path charts = Files.createDirectory(folder.resolve("charts"));
        ImprintPlace place = new ImprintPlace(charts.resolve("reed-bank.border.json"), English.LANGUAGE);
        Path studio = Files.createDirectory(folder.resolve("studio"));
        Path file = studio.resolve("saltmarsh.imprint.json");
        Files.createDirectory(studio.resolve("art"));
        Files.write(studio.resolve("art").resolve("heron.png"), Pictures.png(Pictures.shore(30, 20)));
        ImprintFiles.write(file, imprint("art/heron.png", "#5b4b8a"));
        assertThat(place.bring(file)).isEqualTo(new PhotoFiles.Brought(Optional.of("saltmarsh.imprint.json"), ""));
        assertThat(ImprintFiles.read(charts.resolve("saltmarsh.imprint.json")))
                .isEqualTo(new ImprintFiles.Read(imprint("heron.png", "#5b4b8a")));
        assertThat(charts.resolve("heron.png")).exists();
        assertThat(place.bring(file).refusal())
                .isEqualTo("There is another file 'saltmarsh.imprint.json' beside the chart;"
                        + " expected an imprint with a name of its own.");
        Path pale = studio.resolve("pale.imprint.json");
        ImprintFiles.write(pale, imprint("", "#e0e0e0"));
        assertThat(place.bring(pale).refusal()).contains("pale.imprint.json", "#e0e0e0", "4.5");
        assertThat(charts.resolve("pale.imprint.json")).doesNotExist();
    }

    @Test
    void anImprintSaysAtOnceWhetherItsAccentCanBeReadAndKeepsWhatItDoesNotKnow() {
        Imprint before = imprint("", "#e0e0e0");
        ImprintDialog dialog =
                execute(() -> new ImprintDialog(null, Optional.of(before), Optional::empty, English.LANGUAGE));
        assertThat(execute(dialog::imprint)).isEqualTo(before);
        // From memory: the luminance of #e0e0e0 is 0.745, so 1.05 / 0.795 on white.
        assertThat(execute(dialog::objection))
                .contains("This accent is too pale on white paper: contrast 1.32, expected 4.5 or more.");
        execute(() -> dialog.dispose());
    }

    private static Imprint imprint(String logo, String accent) {
        return new Imprint(
                "Saltmarsh Studio",
                "",
                "",
                "© 2026 Saltmarsh Studio",
                "",
                logo,
                Optional.of(Colour.parse(accent)),
                new Extras(Map.of("mark", "1")));
    }
}
