package edgewright.desk;

import static edgewright.desk.WindowParts.named;
import static edgewright.desk.WindowParts.until;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.swing.edt.GuiActionRunner.execute;

import edgewright.chart.Chart;
import edgewright.chart.Place;
import edgewright.chart.Section;
import edgewright.chart.Stitch;
import edgewright.desk.parts.Look;
import edgewright.desk.work.Theme;
import edgewright.file.ChartFiles;
import edgewright.file.ReadResult;
import edgewright.texts.English;
import java.awt.Component;
import java.awt.Window;
import java.awt.event.KeyEvent;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.swing.AbstractButton;
import javax.swing.JLabel;
import javax.swing.JTable;
import org.assertj.swing.core.Robot;
import org.assertj.swing.core.matcher.JButtonMatcher;
import org.assertj.swing.finder.JOptionPaneFinder;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/** Several charts in one window, each with its own edits, cursor and view. */
class TabsWindowTest {
    private static final Place HERE = new Place(3, Section.REPEAT, 1);

    @TempDir
    private Path folder;

    @RegisterExtension
    private final DeskOnDisplay display = new DeskOnDisplay();

    private Robot robot;
    private DeskFrame desk;
    private Path reeds;
    private Path tide;

    @BeforeEach
    void openTwoCharts() throws IOException {
        robot = display.robot();
        reeds = write("Reed Bank");
        tide = write("Tide Steps");
        desk = display.show(folder);
        assertThat(execute(() -> desk.tabs().getBoundsAt(0).height))
                .as("one chart has no row of tabs")
                .isZero();
        assertThat(titles()).isEmpty();
        open(reeds);
        open(tide);
    }

    @AfterEach
    void putAway() {
        execute(() -> Look.setUp(Theme.LIGHT));
    }

    private Path write(String title) throws IOException {
        Path file = folder.resolve(title.toLowerCase(java.util.Locale.ROOT).replace(' ', '-') + ".border.json");
        Chart blank = Desk.blank(English.LANGUAGE);
        ChartFiles.write(file, Chart.blank(title, blank.shape(), 12, blank.yarns()));
        return file;
    }

    private void open(Path file) {
        execute(() -> desk.open(file));
        until("it is in front", () -> execute(() -> desk.document().isOf(file)));
        robot.waitForIdle();
    }

    @Tag("journey")
    @Test
    void twoChartsInTabsWithCopiesBetween() {
        assertThat(titles()).as("the untouched blank chart gave way").containsExactly("Reed Bank", "Tide Steps");
        robot.focusAndWaitForFocusGain(desk.canvas());
        execute(() -> desk.bench().moveCursor(HERE));
        press(KeyEvent.VK_L);
        press(KeyEvent.VK_P);
        execute(() -> desk.bench().moveCursor(HERE));
        robot.pressKey(KeyEvent.VK_SHIFT);
        press(KeyEvent.VK_LEFT);
        robot.releaseKey(KeyEvent.VK_SHIFT);
        control(KeyEvent.VK_C);
        assertThat(titles()).containsExactly("Reed Bank", "Tide Steps •");

        control(KeyEvent.VK_TAB);
        until("the other chart is in front", () -> execute(() -> desk.document().isOf(reeds)));
        until("the keys are on it", () -> execute(() -> desk.canvas().isFocusOwner()));
        assertThat(execute(() -> desk.bench().cursor())).isEqualTo(new Place(1, Section.REPEAT, 1));
        execute(() -> desk.bench().moveCursor(HERE));
        control(KeyEvent.VK_V);
        until(
                "it is pasted",
                () -> execute(
                        () -> desk.bench().chart().round(3).repeat().letters().startsWith("lp")));
        assertThat(titles()).containsExactly("Reed Bank •", "Tide Steps •");
        control(KeyEvent.VK_Z);
        until("it is undone here", () -> !execute(() -> desk.bench().hasUnsavedWork()));
        assertThat(titles()).as("and here only").containsExactly("Reed Bank", "Tide Steps •");

        robot.pressKey(KeyEvent.VK_SHIFT);
        control(KeyEvent.VK_TAB);
        robot.releaseKey(KeyEvent.VK_SHIFT);
        until(
                "the first one is in front again",
                () -> execute(() -> desk.document().isOf(tide)));
        assertThat(execute(() -> desk.bench().chart().stitch(HERE))).isEqualTo(Stitch.LONG);
    }

    @Test
    void aChartThatIsOpenIsGoneToAndNotOpenedAgain() {
        open(folder.resolve(".").resolve(reeds.getFileName()));
        assertThat(titles()).containsExactly("Reed Bank", "Tide Steps");
        JLabel news = (JLabel) named(desk, "news");
        assertThat(execute(news::getText)).isEqualTo("reed-bank.border.json is open already.");
    }

    @Test
    void aTabIsClosedByItsButtonOnceWhatIsNotSavedWasAskedAbout() {
        execute(() -> desk.bench().work(List.of(HERE), Stitch.LONG));
        AbstractButton close = closer("Close Tide Steps");
        robot.click(close);
        answer(3);
        assertThat(titles()).containsExactly("Reed Bank", "Tide Steps •");
        robot.click(close);
        answer(1);
        until("it is closed", () -> execute(() -> desk.tabs().all().size() == 1));
        assertThat(((ReadResult.Read) ChartFiles.read(tide)).chart().stitch(HERE))
                .isEqualTo(Stitch.LONG);
        assertThat(execute(() -> desk.document().isOf(reeds))).isTrue();

        robot.focusAndWaitForFocusGain(desk.canvas());
        control(KeyEvent.VK_W);
        until("a new chart lies there", () -> execute(() -> desk.bench().file().isEmpty()));
        assertThat(titles()).as("one chart needs no head").isEmpty();
        assertThat(execute(desk::getTitle)).isEqualTo("Start page – Edgewright");
    }

    @Test
    void nobodyIsToldAnyMoreOfAChartThatWasClosedAndItsWindowsGoWithIt() {
        execute(() -> desk.actions().get("guide").actionPerformed(null));
        DocumentPane pane = execute(() -> desk.front());
        assertThat(beside()).containsExactly("guideWindow");
        execute(() -> desk.tabs().step(1));
        assertThat(beside()).as("the windows of the chart behind are hidden").isEmpty();
        execute(() -> desk.tabs().step(1));
        assertThat(beside()).containsExactly("guideWindow");

        JTable rounds = execute(() -> pane.rounds().rounds());
        List<String> heard = new ArrayList<>();
        execute(() -> rounds.getModel().addTableModelListener(event -> heard.add("rounds")));
        execute(() -> desk.close(pane));
        assertThat(beside()).isEmpty();
        execute(() -> pane.document().bench().work(List.of(HERE), Stitch.LONG));
        assertThat(heard).isEmpty();
        JLabel news = (JLabel) named(desk, "news");
        assertThat(execute(news::getText)).isEqualTo("Tide Steps is off the desk.");
    }

    @Test
    void quittingAsksAboutEachChartThatIsNotSaved() {
        execute(() -> desk.bench().work(List.of(HERE), Stitch.LONG));
        execute(() -> desk.tabs().step(1));
        execute(() -> desk.bench().work(List.of(HERE), Stitch.LONG));
        robot.focusAndWaitForFocusGain(desk.canvas());
        control(KeyEvent.VK_Q);
        answer(2);
        answer(3);
        assertThat(execute(() -> desk.isDisplayable())).isTrue();
        assertThat(execute(() -> desk.document().isOf(tide)))
                .as("the one asked about is seen")
                .isTrue();
        control(KeyEvent.VK_Q);
        answer(2);
        answer(1);
        until("the desk is closed", () -> !execute(() -> desk.isDisplayable()));
        assertThat(((ReadResult.Read) ChartFiles.read(tide)).chart().stitch(HERE))
                .isEqualTo(Stitch.LONG);
        assertThat(((ReadResult.Read) ChartFiles.read(reeds)).chart().stitch(HERE))
                .isEqualTo(Stitch.BACK_LOOP);
    }

    @Test
    void aChartThatWasBehindWhileTheThemeChangedComesInTheNewOne() throws IOException {
        execute(() -> desk.actions().get("theme.DARK").actionPerformed(null));
        Component front = named(desk, "words");
        execute(() -> desk.tabs().step(1));
        Component behind = named(desk, "words");
        assertThat(behind).isNotSameAs(front);
        assertThat(execute(behind::getBackground)).isEqualTo(execute(front::getBackground));
        assertThat(Files.readString(folder.resolve("desk.properties"))).contains("theme=DARK");
    }

    private List<String> titles() {
        robot.waitForIdle();
        return execute(() -> {
            List<String> titles = new ArrayList<>();
            for (Component part : WindowParts.parts(desk)) {
                if (part instanceof JLabel label && "tabTitle".equals(label.getName())) {
                    titles.add(label.getText());
                }
            }
            return titles;
        });
    }

    private AbstractButton closer(String heard) {
        return (AbstractButton) execute(() -> WindowParts.parts(desk).stream()
                .filter(part -> "closeTab".equals(part.getName())
                        && heard.equals(part.getAccessibleContext().getAccessibleName()))
                .findFirst()
                .orElseThrow());
    }

    private List<String> beside() {
        robot.waitForIdle();
        return execute(() -> Stream.of(desk.getOwnedWindows())
                .filter(Window::isShowing)
                .map(Window::getName)
                .toList());
    }

    private void answer(int number) {
        JOptionPaneFinder.findOptionPane()
                .withTimeout(30_000)
                .using(robot)
                .button(JButtonMatcher.withName("answer" + number))
                .click();
        robot.waitForIdle();
    }

    private void press(int key) {
        robot.pressAndReleaseKey(key);
        robot.waitForIdle();
    }

    private void control(int key) {
        robot.pressKey(KeyEvent.VK_CONTROL);
        press(key);
        robot.releaseKey(KeyEvent.VK_CONTROL);
        robot.waitForIdle();
    }
}
