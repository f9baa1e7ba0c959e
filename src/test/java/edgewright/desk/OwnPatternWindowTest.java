package edgewright.desk;

import static edgewright.desk.WindowParts.until;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.swing.edt.GuiActionRunner.execute;

import edgewright.booklet.PageText;
import edgewright.chart.GridCell;
import edgewright.chart.Place;
import edgewright.chart.Section;
import edgewright.chart.Stitch;
import edgewright.testing.Pictures;
import java.awt.Point;
import java.awt.Rectangle;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.swing.JFileChooser;
import javax.swing.SwingUtilities;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.assertj.swing.core.GenericTypeMatcher;
import org.assertj.swing.core.MouseButton;
import org.assertj.swing.core.Robot;
import org.assertj.swing.finder.JFileChooserFinder;
import org.assertj.swing.finder.WindowFinder;
import org.assertj.swing.fixture.DialogFixture;
import org.assertj.swing.fixture.FrameFixture;
import org.assertj.swing.fixture.JFileChooserFixture;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/** A designer makes a pattern to sell from nothing, by the window alone. */
class OwnPatternWindowTest {
    /** In each round, counted from 1, the stitches of the repeat that become long. */
    private static final int[][] WAVES = {
        {}, {}, {2, 3, 4}, {6}, {}, {3, 4, 5}, {1}, {}, {2, 3, 4}, {6}, {}, {},
    };

    @TempDir
    private Path folder;

    @RegisterExtension
    private final DeskOnDisplay display = new DeskOnDisplay();

    private Robot robot;
    private DeskFrame desk;
    private FrameFixture window;

    @BeforeEach
    void open() {
        robot = display.robot();
        desk = display.show(folder);
        window = new FrameFixture(robot, desk);
    }

    @Test
    void aPatternMadeFromNothingHasThePhotographsTheTextsAndTheImprintOfItsDesigner() throws IOException {
        Path camera = Files.createDirectory(folder.resolve("camera"));
        Files.write(camera.resolve("cloth.jpg"), Pictures.jpeg(Pictures.shore(1600, 1100)));
        Files.write(camera.resolve("corner.png"), Pictures.png(Pictures.shore(900, 900)));
        begin();
        drawWaves();
        menu("menu.saveAs");
        choose(Files.createDirectory(folder.resolve("patterns")).resolve("spring-tide.border.json"));
        until("the chart is saved", () -> !desk.bench().hasUnsavedWork());

        menu("menu.ownPages");
        DialogFixture own = dialog("ownPages");
        photograph(own, camera.resolve("cloth.jpg"), "A cloth with waves along its edge", 0);
        photograph(own, camera.resolve("corner.png"), "A corner, from close by", 1);
        own.tabbedPane("own.tabs").selectTab(1);
        text(own, "About this border", "Small waves run along the edge, as they do over the flats at *spring tide*.");
        text(own, "Thanks", "To those who tested it.");
        own.tabbedPane("own.tabs").selectTab(2);
        own.button("own.imprint.edit").click();
        imprint();
        until("the imprint has a name", () -> !own.textBox("own.imprint").text().isEmpty());
        own.textBox("own.imprint").requireText("saltmarsh-studio.imprint.json");
        own.button("accept").click();
        until("the chart has them", () -> execute(() -> desk.bench().hasUnsavedWork()));

        menu("menu.publish");
        DialogFixture form = dialog("publish");
        form.textBox("publish.version").setText("1.0");
        form.button("accept").click();
        Path pattern = folder.resolve("patterns").resolve("spring-tide.pdf");
        choose(pattern);
        until("the pattern is published", () -> window.label("news").text().startsWith("Published spring-tide.pdf"));
        try (PDDocument printed = Loader.loadPDF(pattern.toFile())) {
            assertThat(new PageText().getText(printed))
                    .contains(
                            "Spring Tide",
                            "About this border",
                            "spring tide",
                            "To those who tested it.",
                            "Saltmarsh Studio",
                            "https://saltmarsh.example",
                            "© 2026 Saltmarsh Studio",
                            "You may sell what you make.",
                            "1.0");
            assertThat(pagesWithPictures(printed)).isGreaterThanOrEqualTo(2);
        }
    }

    private void begin() {
        menu("menu.new");
        DialogFixture form = dialog("newChart");
        form.textBox("newChart.chartTitle").setText("Spring Tide");
        form.button("accept").click();
        until(
                "it lies on the desk",
                () -> execute(() -> desk.bench().chart().title()).equals("Spring Tide"));
    }

    private void drawWaves() {
        for (int round = 1; round <= WAVES.length; round++) {
            for (int stitch : WAVES[round - 1]) {
                Place place = new Place(round, Section.REPEAT, stitch);
                robot.click(desk.canvas(), middle(place), MouseButton.LEFT_BUTTON, 1);
                until("it is long", () -> execute(() -> desk.bench().chart().stitch(place)) == Stitch.LONG);
            }
        }
        until("it is judged", () -> execute(() -> desk.bench().verdict().judged()));
        assertThat(execute(() -> desk.bench().verdict().count().errors())).isZero();
    }

    private Point middle(Place place) {
        return execute(() -> {
            GridCell cell = desk.canvas().cells().cellsOf(place).get(0);
            Rectangle bounds = desk.canvas().boundsOf(cell);
            desk.canvas().scrollRectToVisible(bounds);
            return new Point((int) bounds.getCenterX(), (int) bounds.getCenterY());
        });
    }

    private void photograph(DialogFixture own, Path file, String words, int place) {
        own.button("own.photos.add").click();
        choose(file);
        until(
                "it is in the list",
                () -> own.textBox("own.alternative").isEnabled()
                        && own.textBox("own.alternative").text().isEmpty());
        own.textBox("own.alternative").setText(words);
        own.comboBox("own.at").selectItem(place);
    }

    private static void text(DialogFixture own, String title, String words) {
        own.button("own.texts.add").click();
        own.textBox("own.title").setText(title);
        own.textBox("own.text").setText(words);
    }

    private void imprint() {
        DialogFixture imprint = dialog("imprint");
        imprint.button("accept").requireDisabled();
        imprint.textBox("imprint.name").setText("Saltmarsh Studio");
        imprint.textBox("imprint.contact").setText("desk@saltmarsh.example");
        imprint.textBox("imprint.web").setText("saltmarsh");
        imprint.button("accept").requireDisabled();
        imprint.textBox("imprint.web").setText("https://saltmarsh.example");
        imprint.textBox("imprint.copyright").setText("© 2026 Saltmarsh Studio");
        imprint.textBox("imprint.use").setText("You may sell what you make.");
        imprint.checkBox("imprint.ofItsOwn").click();
        imprint.button("accept").click();
    }

    private static long pagesWithPictures(PDDocument printed) {
        long pages = 0;
        for (var page : printed.getPages()) {
            pages += page.getResources().getXObjectNames().iterator().hasNext() ? 1 : 0;
        }
        return pages;
    }

    private void menu(String name) {
        SwingUtilities.invokeLater(() -> window.menuItem(name).target().doClick());
    }

    private DialogFixture dialog(String name) {
        return WindowFinder.findDialog(name).withTimeout(20_000).using(robot);
    }

    private void choose(Path file) {
        JFileChooserFixture where = JFileChooserFinder.findFileChooser(
                        new GenericTypeMatcher<JFileChooser>(JFileChooser.class) {
                            @Override
                            protected boolean isMatching(JFileChooser chooser) {
                                return chooser.isShowing();
                            }
                        })
                .withTimeout(20_000)
                .using(robot);
        where.fileNameTextBox().setText(file.toString());
        where.approve();
    }
}
