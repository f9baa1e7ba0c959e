package edgewright.desk;

import static edgewright.desk.WindowParts.named;
import static edgewright.desk.WindowParts.until;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.swing.edt.GuiActionRunner.execute;

import edgewright.chart.Chart;
import edgewright.chart.Colour;
import edgewright.chart.Place;
import edgewright.chart.Section;
import edgewright.check.Finding;
import edgewright.file.ChartFiles;
import edgewright.file.ReadResult;
import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.awt.Rectangle;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JList;
import javax.swing.text.JTextComponent;
import org.assertj.swing.core.Robot;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/** The unfinished sample, mended by remedies alone: looked at on the chart before, and done by mouse and keys. */
class FindingsWindowTest {
    private static final Pattern SQUARES = Pattern.compile("(\\d+|no) squares? looks? otherwise");

    @TempDir
    private Path folder;

    @RegisterExtension
    private final DeskOnDisplay display = new DeskOnDisplay();

    private Robot robot;
    private DeskFrame desk;
    private Chart flawed;

    @BeforeEach
    void openTheSample() {
        flawed = ((ReadResult.Read)
                        ChartFiles.read(Path.of("sample-charts", "first-try-unfinished" + ChartFiles.ENDING)))
                .chart();
        robot = display.robot();
        desk = display.show(flawed, folder);
        robot.focusAndWaitForFocusGain(desk.canvas());
    }

    @Tag("journey")
    @Test
    void theFlawedSampleIsMendedByRemediesAlone() {
        int said = 0;
        int steps = 0;
        press(KeyEvent.VK_F4);
        steps++;
        while (findings() > 0) {
            int before = findings();
            until(
                    "its remedies are known",
                    () -> execute(() -> desk.front().findings().canMend(1)));
            boolean several = execute(() -> desk.front().findings().canMendAll());
            Component offered = named(desk, "remedy1");
            // Looked at with the mouse: the chart shows it, and nothing of it is work yet.
            pointAt(several ? "remedyForAll" : "remedy1");
            until("it is seen on the chart", () -> note().contains("Seen on the chart"));
            said += squares(note());
            assertThat(execute(() -> desk.bench().undoName().isPresent())).isEqualTo(steps > 1);
            // Done with the key, from the chart.
            press(several ? KeyEvent.VK_0 : KeyEvent.VK_1);
            steps++;
            until(
                    "it is done",
                    () -> findings() < before
                            && execute(() ->
                                    desk.bench().chart().equals(desk.bench().worked())));
            robot.moveMouse(desk.canvas());
            until(
                    "the remedies of the next finding are offered",
                    () -> findings() == 0
                            || execute(() -> WindowParts.parts(desk).stream()
                                    .anyMatch(part -> "remedy1".equals(part.getName()) && !part.equals(offered))));
        }
        Chart mended = execute(() -> desk.bench().chart());
        assertThat(execute(() -> desk.bench().verdict().findings())).isEmpty();
        assertThat(differing(flawed, mended))
                .as("squares that look otherwise")
                .isPositive()
                .isLessThanOrEqualTo(said);
        assertThat(steps).as("keys pressed").isEqualTo(12);
    }

    @Test
    void aLookAtARemedyLeavesNoTrace() {
        press(KeyEvent.VK_F4);
        until(
                "its remedies are known",
                () -> execute(() -> desk.front().findings().canMend(1)));
        robot.focusAndWaitForFocusGain(named(desk, "remedy1"));
        until(
                "the keys on the button show it",
                () -> execute(() -> !desk.bench().chart().equals(flawed)));
        assertThat(execute(() -> desk.bench().hasUnsavedWork())).isFalse();
        press(KeyEvent.VK_DOWN);
        until("the next one is shown", () -> focused().equals("remedy2"));
        pointAt("remedy1");
        robot.moveMouse(desk.canvas());
        robot.focusAndWaitForFocusGain(desk.canvas());
        until("it is taken back", () -> execute(() -> desk.bench().chart().equals(flawed)));
        assertThat(execute(() -> desk.bench().undoName())).isEmpty();
        assertThat(execute(() -> desk.bench().redoName())).isEmpty();
    }

    @Test
    void theListIsFilteredByRuleAndRoundAndF4ShowsAllWhenNoneIsLeft() {
        int all = rows();
        Finding first = execute(() -> list().getModel().getElementAt(0));
        JComboBox<?> rules = (JComboBox<?>) named(desk, "findingsRule");
        JComboBox<?> rounds = (JComboBox<?>) named(desk, "findingsRound");
        execute(() -> rounds.setSelectedIndex(1));
        assertThat(rows()).isBetween(1, all - 1);
        execute(() -> rounds.setSelectedIndex(0));
        assertThat(rows()).isEqualTo(all);
        int row = execute(() -> {
            for (int i = 1; i < rules.getItemCount(); i++) {
                if (rules.getItemAt(i).toString().contains(first.rule())) {
                    return i;
                }
            }
            return 0;
        });
        execute(() -> rules.setSelectedIndex(row));
        assertThat(execute(() -> list().getModel().getElementAt(rows() - 1).rule()))
                .isEqualTo(first.rule());
        robot.focusAndWaitForFocusGain(desk.canvas());
        while (rows() > 0) {
            int before = rows();
            press(KeyEvent.VK_F4);
            until(
                    "its remedies are known",
                    () -> execute(() -> desk.front().findings().canMend(1)));
            press(KeyEvent.VK_1);
            until("it is done", () -> rows() < before);
        }
        assertThat(execute(() -> rules.isShowing())).isTrue();
        press(KeyEvent.VK_F4);
        assertThat(rows()).isEqualTo(findings());
    }

    /** Points at what has this name, which is scrolled to if it is not seen. */
    private void pointAt(String name) {
        JComponent part = (JComponent) named(desk, name);
        execute(() -> part.scrollRectToVisible(new Rectangle(part.getSize())));
        robot.waitForIdle();
        robot.moveMouse(part);
    }

    private void press(int key) {
        robot.pressAndReleaseKeys(key);
        robot.waitForIdle();
    }

    private int findings() {
        return execute(() -> desk.bench().verdict().count().all());
    }

    @SuppressWarnings("unchecked") // The list of findings shows findings.
    private JList<Finding> list() {
        return (JList<Finding>) named(desk, "findings");
    }

    private int rows() {
        return execute(() -> list().getModel().getSize());
    }

    private String note() {
        return execute(() -> ((JTextComponent) named(desk, "remedySeen")).getText());
    }

    private String focused() {
        return execute(() -> {
            Component owner =
                    KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
            return owner == null ? "" : String.valueOf(owner.getName());
        });
    }

    private static int squares(String note) {
        Matcher matcher = SQUARES.matcher(note);
        assertThat(matcher.find()).as(note).isTrue();
        return matcher.group(1).equals("no") ? 0 : Integer.parseInt(matcher.group(1));
    }

    /** Squares of the fabric that show another colour, each looked at on its own. */
    private static int differing(Chart before, Chart after) {
        int changed = 0;
        for (int r = 1; r <= before.rounds().size(); r++) {
            for (Section section : Section.values()) {
                for (int i = 1; i <= before.round(r).section(section).length(); i++) {
                    Place cell = new Place(r, section, i);
                    changed += shown(before, cell).equals(shown(after, cell)) ? 0 : 1;
                }
            }
        }
        return changed;
    }

    private static Colour shown(Chart chart, Place cell) {
        return chart.yarnOf(chart.shownRound(cell)).colour();
    }
}
