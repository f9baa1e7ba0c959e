package edgewright.desk;

import static edgewright.desk.WindowParts.remedy;
import static edgewright.desk.WindowParts.until;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.swing.edt.GuiActionRunner.execute;

import edgewright.chart.Chart;
import edgewright.chart.GridCell;
import edgewright.chart.Place;
import edgewright.chart.Section;
import edgewright.chart.Side;
import edgewright.chart.Stitch;
import edgewright.check.Finding;
import edgewright.desk.panes.RoundTable;
import edgewright.desk.parts.Look;
import edgewright.desk.work.Settings;
import edgewright.desk.work.Theme;
import edgewright.file.ChartFiles;
import edgewright.file.ReadResult;
import edgewright.texts.English;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.KeyEvent;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.swing.JFileChooser;
import javax.swing.JTable;
import javax.swing.SwingUtilities;
import org.assertj.swing.core.GenericTypeMatcher;
import org.assertj.swing.core.MouseButton;
import org.assertj.swing.core.Robot;
import org.assertj.swing.finder.JFileChooserFinder;
import org.assertj.swing.finder.JOptionPaneFinder;
import org.assertj.swing.finder.WindowFinder;
import org.assertj.swing.fixture.DialogFixture;
import org.assertj.swing.fixture.FrameFixture;
import org.assertj.swing.fixture.JFileChooserFixture;
import org.assertj.swing.fixture.JOptionPaneFixture;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/**
 * The desk as somebody works at it, with mouse and keys on a display: open, draw, see what cannot be worked, mend it, undo,
 * save, publish, close.
 */
class DeskWindowTest {
    private static final Path SAMPLE = Path.of("sample-charts", "reed-bank.border.json");
    /** A back-loop stitch of a round 1, which nothing lies two rounds below. */
    private static final Place IN_ROUND_1 = new Place(1, Section.REPEAT, 2);

    @TempDir
    private Path folder;

    @RegisterExtension
    private final DeskOnDisplay display = new DeskOnDisplay();

    private Robot robot;
    private DeskFrame desk;
    private FrameFixture window;
    private Path file;

    @BeforeEach
    void openTheSample() throws IOException {
        file = folder.resolve("reed-bank.border.json");
        Files.copy(SAMPLE, file);
        robot = display.robot();
        desk = display.show(folder);
        window = new FrameFixture(robot, desk);
        execute(() -> desk.open(file));
        until("the sample is open", () -> chart().title().equals("Reed Bank"));
    }

    @Test
    void whatCannotBeWorkedIsFlaggedMendedUndoneRedoneSavedAndPublished() throws IOException {
        Chart opened = chart();
        click(IN_ROUND_1, MouseButton.LEFT_BUTTON);
        until("the stitch is drawn", () -> chart().stitch(IN_ROUND_1) == Stitch.LONG);
        assertThat(rules()).containsExactly("no-round-below");
        assertThat(window.label("stitchAtCursor").text())
                .isEqualTo("Round 1, repeat, stitch 2: long stitch over the base round, has no round to land on.");
        assertThat(window.list("findings").contents()).hasSize(1);

        clickRemedy();
        until("the remedy has helped", () -> rules().isEmpty());

        undo();
        until("the finding is back", () -> rules().equals(List.of("no-round-below")));
        undo();
        until("the chart is as it was opened", () -> chart().equals(opened));
        redo();
        redo();
        until("all is done again", () -> rules().isEmpty());
        undo();
        undo();

        Place higher = new Place(3, Section.REPEAT, 1);
        click(higher, MouseButton.LEFT_BUTTON);
        until("another stitch is drawn", () -> chart().stitch(higher) == Stitch.LONG);
        withControl(KeyEvent.VK_S);
        until("the chart is saved", () -> !desk.bench().hasUnsavedWork());
        assertThat(onDisk()).isEqualTo(chart());

        publish("reed-bank");
        Path pattern = folder.resolve("reed-bank.pdf");
        until("the pattern is published", () -> window.label("news").text().startsWith("Published reed-bank.pdf"));
        assertThat(Files.readAllBytes(pattern)).startsWith("%PDF".getBytes(StandardCharsets.US_ASCII));
    }

    @Test
    void closingWithUnsavedWorkCanBeThoughtBetterOf() {
        click(IN_ROUND_1, MouseButton.LEFT_BUTTON);
        window.close();
        answer(3);
        until("the question is gone", () -> window.label("news").text().equals("The chart stays on the desk."));

        assertThat(execute(() -> desk.isDisplayable())).isTrue();
        assertThat(execute(() -> desk.bench().hasUnsavedWork())).isTrue();
    }

    @Test
    void closingWithUnsavedWorkCanThrowItAway() throws IOException {
        String before = Files.readString(file);
        click(IN_ROUND_1, MouseButton.LEFT_BUTTON);
        window.close();
        answer(2);
        until("the desk is closed", () -> !desk.isDisplayable());

        assertThat(Files.readString(file)).isEqualTo(before);
    }

    @Test
    void closingWithUnsavedWorkCanSaveIt() {
        click(IN_ROUND_1, MouseButton.LEFT_BUTTON);
        Chart drawn = chart();
        window.close();
        answer(1);
        until("the desk is closed", () -> !desk.isDisplayable());

        assertThat(onDisk()).isEqualTo(drawn);
    }

    @Test
    void aDragIsOneEditAndTheRightButtonTakesOut() {
        Rectangle from = cell(new Place(2, Section.REPEAT, 1));
        Rectangle to = cell(new Place(2, Section.REPEAT, 5));
        robot.pressMouse(desk.canvas(), middle(from), MouseButton.LEFT_BUTTON);
        robot.moveMouse(desk.canvas(), middle(to));
        robot.releaseMouse(MouseButton.LEFT_BUTTON);
        until(
                "five stitches are drawn",
                () -> chart().round(2).repeat().letters().equals("lllllb"));
        assertThat(execute(() -> desk.bench().undoName())).contains("5 long stitches");

        click(new Place(2, Section.REPEAT, 3), MouseButton.RIGHT_BUTTON);
        until("one is taken out", () -> chart().round(2).repeat().letters().equals("llbllb"));
        undo();
        undo();
        until("nothing is left of it", () -> chart().round(2).repeat().letters().equals("bbbbbb"));
    }

    @Test
    void aRoundIsDrawnAndMendedWithTheKeysAlone() {
        robot.focusAndWaitForFocusGain(desk.canvas());
        until("the cursor stands in round 1", () -> cursor().equals(new Place(1, Section.REPEAT, 1)));
        press(KeyEvent.VK_UP);
        press(KeyEvent.VK_L);
        press(KeyEvent.VK_P);
        press(KeyEvent.VK_C);
        press(KeyEvent.VK_B);
        press(KeyEvent.VK_SPACE);
        until(
                "five stitches are drawn",
                () -> chart().round(2).repeat().letters().equals("lpcblb"));
        until(
                "the words say so",
                () -> words(window).contains("Round 2 (Chalk):")
                        && words(window).contains("1 drop tr; *1 dc, 1 ch"));
        press(KeyEvent.VK_BACK_SPACE);
        until("the last one is out", () -> chart().round(2).repeat().letters().equals("lpcbbb"));
        press(KeyEvent.VK_DOWN);
        press(KeyEvent.VK_L);
        until("round 1 cannot be worked", () -> rules().equals(List.of("no-round-below")));
        press(KeyEvent.VK_HOME);
        press(KeyEvent.VK_F4);
        until("the finding has led to its stitch", () -> chart().stitch(cursor()) == Stitch.LONG);
        press(KeyEvent.VK_DELETE);
        until("it is mended", () -> rules().isEmpty());
    }

    @Test
    void theDiagonalCannotBeDrawnOn() {
        Chart before = chart();
        Rectangle corner = execute(
                () -> desk.canvas().boundsOf(desk.canvas().cells().grid().cornerCell(Side.TOP, 5)));
        robot.click(desk.canvas(), middle(corner), MouseButton.LEFT_BUTTON, 1);
        click(new Place(1, Section.FROM_CORNER, 1), MouseButton.RIGHT_BUTTON);

        assertThat(chart()).isSameAs(before);
    }

    @Test
    void aRaggedChartOpensSaysSoAndIsMendedInTheWindow() throws IOException {
        Path ragged = folder.resolve("ragged.border.json");
        Files.writeString(
                ragged,
                Files.readString(file)
                        .replaceFirst(
                                "\"repeat\": \"bbbbbb\", \"toCorner\": \"bbbbb\"",
                                "\"repeat\": \"bbbb\", \"toCorner\": \"bbbbbbbb\""));
        execute(() -> desk.open(ragged));
        until("it is open", () -> rules().equals(List.of("ragged-section", "ragged-section")));

        window.list("findings").selectItem(0);
        clickRemedy();
        until("one section is mended", () -> rules().equals(List.of("ragged-section")));
        window.list("findings").selectItem(0);
        clickRemedy();
        until("no section is ragged", () -> !rules().contains("ragged-section"));
        until("the chart is judged", () -> execute(() -> desk.bench().verdict().judged()));
        assertThat(chart().raggedSections()).isEmpty();
    }

    @Test
    void aFileThatIsNoChartIsRefusedInASentenceAndTheOpenChartStays() throws IOException {
        Path broken = folder.resolve("broken.border.json");
        Files.writeString(broken, "{ \"format\": \"edgewright-chart\" ");
        Chart before = chart();
        execute(() -> desk.open(broken));
        JOptionPaneFixture told =
                JOptionPaneFinder.findOptionPane().withTimeout(20_000).using(robot);
        told.requireErrorMessage();
        told.button("answer1").click();
        until("it is said", () -> window.label("news").text().equals("broken.border.json was not opened."));

        assertThat(chart()).isSameAs(before);
    }

    @Test
    void theWordsAreProvedForSeveralSizes() {
        SwingUtilities.invokeLater(() -> window.menuItem("menu.prove").target().doClick());
        DialogFixture form =
                WindowFinder.findDialog("prove").withTimeout(20_000).using(robot);
        form.textBox("prove.sizes").deleteText().enterText("1, x");
        form.button("accept").requireDisabled();
        form.textBox("prove.sizes").deleteText().enterText("0, 1\n2, 3, 4, 5");
        form.button("accept").click();
        DialogFixture outcome =
                WindowFinder.findDialog("proofWindow").withTimeout(30_000).using(robot);

        assertThat(outcome.table("proofTable").contents()).isDeepEqualTo(new String[][] {
            {"0, 1", "5, 11", "2520", "make the chart"}, {"2, 3, 4, 5", "17, 23, 29, 35", "4032", "make the chart"}
        });
        until("it is said", () -> window.label("news").text().equals("The words make the chart in all 2 sizes"));
        outcome.close();
        until(
                "the window is put away for good",
                () -> !execute(() -> outcome.target().isDisplayable()));
    }

    @Test
    void aFileThatSomebodyElseHasChangedIsAskedAboutBeforeItIsSavedOver() throws IOException {
        click(new Place(3, Section.REPEAT, 1), MouseButton.LEFT_BUTTON);
        String others = Files.readString(file).replace("Reed Bank", "Somebody Else");
        Files.writeString(file, others);
        withControl(KeyEvent.VK_S);
        answer(2);
        until("it is not saved", () -> window.label("news").text().equals("reed-bank.border.json was not saved."));
        assertThat(Files.readString(file)).isEqualTo(others);

        withControl(KeyEvent.VK_S);
        answer(1);
        until("it is saved", () -> !desk.bench().hasUnsavedWork());
        assertThat(onDisk()).isEqualTo(chart());
    }

    @Test
    void aNewChartIsBegunOnATabOfItsOwnAndTheUnsavedOneStays() {
        click(IN_ROUND_1, MouseButton.LEFT_BUTTON);
        withControl(KeyEvent.VK_N);
        DialogFixture form =
                WindowFinder.findDialog("newChart").withTimeout(20_000).using(robot);
        form.textBox("newChart.chartTitle").deleteText().enterText("Tide Steps");
        form.spinner("newChart.repeat").enterTextAndCommit("8");
        form.button("accept").click();
        until("it lies on the desk", () -> chart().title().equals("Tide Steps"));

        assertThat(chart().shape().w()).isEqualTo(8);
        assertThat(execute(() -> desk.bench().file())).isEmpty();
        assertThat(execute(() -> desk.tabs().all().get(0).document().bench().hasUnsavedWork()))
                .isTrue();
    }

    @Test
    void whoeverHasOpenedOrBegunAChartCanDrawWithTheKeysAtOnce() throws IOException {
        Path other = folder.resolve("tide-steps.border.json");
        Files.writeString(other, Files.readString(file).replace("Reed Bank", "Tide Steps"));
        robot.focusAndWaitForFocusGain(window.table("rounds").target());
        execute(() -> desk.open(other));
        until("the other chart is open", () -> chart().title().equals("Tide Steps"));
        until("the keys go to the chart", () -> execute(() -> desk.canvas().isFocusOwner()));

        robot.focusAndWaitForFocusGain(window.table("rounds").target());
        withControl(KeyEvent.VK_N);
        WindowFinder.findDialog("newChart")
                .withTimeout(20_000)
                .using(robot)
                .button("accept")
                .click();
        until("a new chart lies on the desk", () -> chart().title().equals("New border"));
        until(
                "the keys go to the chart again",
                () -> execute(() -> desk.canvas().isFocusOwner()));
    }

    private static String words(FrameFixture window) {
        return window.textBox("words").text().replace('\u00a0', ' ');
    }

    @Test
    void theDeskTurnsDarkAndBackAndRemembersIt() {
        execute(() -> window.menuItem("menu.theme.DARK").target().doClick());
        until("it is dark", () -> execute(Look::isDark));
        assertThat(new Settings(folder.resolve("desk.properties")).theme()).isEqualTo(Theme.DARK);
        execute(() -> window.menuItem("menu.theme.LIGHT").target().doClick());
        until("it is light", () -> !execute(Look::isDark));
    }

    @Test
    void theWayOfCountingHoldsForEveryCountAndIsRememberedTheNextDay() {
        assertThat(stitchesOfRoundOne(window)).isEqualTo("43");

        execute(() -> window.menuItem("menu.counting.WITH_CHAINS").target().doClick());
        until("the rounds are counted so", () -> stitchesOfRoundOne(window).equals("45"));
        assertThat(window.comboBox("counting").selectedItem()).isEqualTo("with corner chains");
        until("the words count so too", () -> words(window).contains("Top and bottom 135 (165, 231) sts,"));

        DeskFrame nextDay = execute(() -> new DeskFrame(
                Desk.blank(English.LANGUAGE), new Settings(folder.resolve("desk.properties")), English.LANGUAGE));
        FrameFixture tomorrow = new FrameFixture(robot, nextDay);
        tomorrow.show(WindowParts.SIZE);
        assertThat(stitchesOfRoundOne(tomorrow)).isEqualTo("45");
        execute(() -> nextDay.dispose());
    }

    private static String stitchesOfRoundOne(FrameFixture of) {
        return execute(() -> {
            JTable rounds = of.table("rounds").target();
            return String.valueOf(rounds.getValueAt(rounds.getRowCount() - 1, RoundTable.STITCHES));
        });
    }

    private void publish(String name) {
        withControl(KeyEvent.VK_E);
        DialogFixture form =
                WindowFinder.findDialog("publish").withTimeout(20_000).using(robot);
        form.button("accept").click();
        JFileChooserFixture where = JFileChooserFinder.findFileChooser(
                        new GenericTypeMatcher<JFileChooser>(JFileChooser.class) {
                            @Override
                            protected boolean isMatching(JFileChooser chooser) {
                                return chooser.isShowing();
                            }
                        })
                .withTimeout(20_000)
                .using(robot);
        where.fileNameTextBox().setText(folder.resolve(name).toString());
        where.approve();
    }

    private void answer(int number) {
        JOptionPaneFixture question =
                JOptionPaneFinder.findOptionPane().withTimeout(20_000).using(robot);
        question.button("answer" + number).click();
    }

    private void clickRemedy() {
        remedy(desk);
        window.button("remedy1").click();
    }

    private void undo() {
        withControl(KeyEvent.VK_Z);
    }

    private void redo() {
        robot.pressKey(KeyEvent.VK_SHIFT);
        withControl(KeyEvent.VK_Z);
        robot.releaseKey(KeyEvent.VK_SHIFT);
    }

    private void press(int keyCode) {
        robot.pressAndReleaseKey(keyCode);
        robot.waitForIdle();
    }

    private void withControl(int keyCode) {
        robot.pressKey(KeyEvent.VK_CONTROL);
        robot.pressAndReleaseKey(keyCode);
        robot.releaseKey(KeyEvent.VK_CONTROL);
        robot.waitForIdle();
    }

    private void click(Place place, MouseButton button) {
        robot.click(desk.canvas(), middle(cell(place)), button, 1);
        robot.waitForIdle();
    }

    /** The first cell in which a place is drawn, in the window's view. */
    private Rectangle cell(Place place) {
        return execute(() -> {
            GridCell cell = desk.canvas().cells().cellsOf(place).get(0);
            Rectangle bounds = desk.canvas().boundsOf(cell);
            desk.canvas().scrollRectToVisible(bounds);
            return bounds;
        });
    }

    private static Point middle(Rectangle cell) {
        return new Point(cell.x + cell.width / 2, cell.y + cell.height / 2);
    }

    private Chart chart() {
        return execute(() -> desk.bench().chart());
    }

    private Place cursor() {
        return execute(() -> desk.bench().cursor());
    }

    private List<String> rules() {
        return execute(() ->
                desk.bench().verdict().findings().stream().map(Finding::rule).toList());
    }

    private Chart onDisk() {
        return ((ReadResult.Read) ChartFiles.read(file)).chart();
    }
}
