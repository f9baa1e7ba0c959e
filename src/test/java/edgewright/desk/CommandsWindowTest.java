package edgewright.desk;

import static edgewright.desk.WindowParts.named;
import static edgewright.desk.WindowParts.until;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.swing.edt.GuiActionRunner.execute;

import edgewright.chart.Place;
import edgewright.chart.Section;
import edgewright.chart.Stitch;
import edgewright.desk.command.Command;
import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.swing.JDialog;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JTextField;
import javax.swing.SwingUtilities;
import org.assertj.swing.core.Robot;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/** Every command can be found and done with the keys: by its own key, by walking the panes, by the search. */
class CommandsWindowTest {
    private static final Place HERE = new Place(1, Section.REPEAT, 1);

    @TempDir
    private Path folder;

    @RegisterExtension
    private final DeskOnDisplay display = new DeskOnDisplay();

    private Robot robot;
    private DeskFrame desk;

    @BeforeEach
    void openTheDesk() {
        robot = display.robot();
        desk = display.show(folder);
        robot.focusAndWaitForFocusGain(desk.canvas());
    }

    @Test
    void everyCommandOfTheDeskStandsInTheMenus() {
        List<String> planned = MenuPlan.BAR.stream().flatMap(MenuPlan::commands).toList();
        assertThat(execute(() -> desk.actions().all().stream().map(Command::id).toList()))
                .containsExactlyInAnyOrderElementsOf(planned);
    }

    @Test
    void theSearchOfCommandsFindsOneByAWordAndDoesItWithEnter() {
        press(KeyEvent.VK_L);
        withControl(KeyEvent.VK_K);
        JDialog search = search();
        JTextField query = (JTextField) named(search, "commandQuery");
        JList<?> list = (JList<?>) named(search, "commandsFound");
        assertThat(execute(() -> list.getModel().getSize()))
                .isEqualTo(execute(() -> desk.actions().all().size()));
        robot.enterText("by a quarter");
        until("it is found", () -> lines(list).size() == 1);
        assertThat(lines(list))
                .containsExactly("Rotate by a quarter, Ctrl+T, "
                        + "View – Rotate the chart clockwise by a quarter, so that another side is at the top");
        robot.pressAndReleaseKey(KeyEvent.VK_ENTER);
        until(
                "it is done",
                () -> execute(() -> desk.document().view().turn().name().equals("CLOCKWISE")
                        || desk.document().view().turn().ordinal() == 1));
        assertThat(execute(() -> search.isDisplayable())).isFalse();
        assertThat(execute(() -> query.isShowing())).isFalse();
    }

    @Test
    void theSearchSaysWhyACommandIsGreyedAndDoesNotDoIt() {
        withControl(KeyEvent.VK_K);
        JDialog search = search();
        JList<?> list = (JList<?>) named(search, "commandsFound");
        robot.enterText("even out");
        until("it is found", () -> lines(list).size() == 1);
        assertThat(lines(list))
                .containsExactly("Even out ragged sections, , Edit – Every section is as long as its round.");
        robot.pressAndReleaseKey(KeyEvent.VK_ENTER);
        robot.waitForIdle();
        assertThat(execute(() -> search.isShowing())).isTrue();

        robot.enterText(" velvet");
        JLabel none = (JLabel) named(search, "noCommandFound");
        until("it says that there is none", () -> execute(() -> none.isShowing()));
        robot.pressAndReleaseKey(KeyEvent.VK_ESCAPE);
        until("it is away", () -> !execute(() -> search.isShowing()));
    }

    @Test
    void f6WalksThePanesAndTheTabulatorPassesOverProse() {
        List<String> walked = new ArrayList<>();
        for (int i = 0; i < 6; i++) {
            press(KeyEvent.VK_F6);
            walked.add(focused());
        }
        assertThat(walked).containsExactly("words", "rounds", "yarns", "noFindingsText", "choose.l", "chart");
        robot.pressKey(KeyEvent.VK_SHIFT);
        press(KeyEvent.VK_F6);
        robot.releaseKey(KeyEvent.VK_SHIFT);
        assertThat(focused()).isEqualTo("choose.l");

        List<String> tabbed = execute(() -> {
            List<String> names = new ArrayList<>();
            Component at = desk.canvas();
            do {
                names.add(String.valueOf(at.getName()));
                at = desk.getFocusTraversalPolicy().getComponentAfter(desk, at);
            } while (at != desk.canvas() && names.size() < 200);
            return names;
        });
        assertThat(tabbed).contains("rounds", "yarns").doesNotContain("words", "noFindingsText");
    }

    @Test
    void theFirstRemedyIsOneKeyFromTheChartAndTheKeysStayThere() {
        press(KeyEvent.VK_L);
        press(KeyEvent.VK_LEFT);
        execute(() -> desk.bench().moveCursor(HERE));
        until(
                "its finding is explained",
                () -> execute(() -> desk.front().findings().canMend(1)));
        press(KeyEvent.VK_1);
        until(
                "it is mended",
                () -> execute(() -> desk.bench().verdict().findings().isEmpty()));
        assertThat(execute(() -> desk.bench().chart().stitch(HERE))).isNotEqualTo(Stitch.LONG);
        assertThat(focused()).isEqualTo("chart");
    }

    @Test
    void aLetterThatDrawsOnTheChartIsOnlyALetterElsewhere() {
        robot.focusAndWaitForFocusGain(named(desk, "rounds"));
        press(KeyEvent.VK_L);
        press(KeyEvent.VK_DELETE);
        assertThat(execute(() -> desk.bench().undoName())).isEmpty();
    }

    private JDialog search() {
        until("the search is open", () -> execute(() -> searches().findFirst().isPresent()));
        JDialog search = (JDialog) execute(() -> searches().findFirst().orElseThrow());
        Component query = named(search, "commandQuery");
        until("it has the keys", () -> execute(query::isFocusOwner));
        return search;
    }

    private Stream<java.awt.Window> searches() {
        return Stream.of(desk.getOwnedWindows())
                .filter(window -> window.isShowing() && "commandSearch".equals(window.getName()));
    }

    @SuppressWarnings({"unchecked", "rawtypes"}) // A list renders what it holds.
    private static List<String> lines(JList list) {
        return execute(() -> IntStream.range(0, list.getModel().getSize())
                .mapToObj(i -> list.getCellRenderer()
                        .getListCellRendererComponent(list, list.getModel().getElementAt(i), i, false, false)
                        .getAccessibleContext()
                        .getAccessibleName())
                .toList());
    }

    private String focused() {
        robot.waitForIdle();
        return execute(() -> {
            Component owner =
                    KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
            return owner == null || !SwingUtilities.isDescendingFrom(owner, desk) ? "-" : owner.getName();
        });
    }

    private void press(int key) {
        robot.pressAndReleaseKey(key);
        robot.waitForIdle();
    }

    private void withControl(int key) {
        robot.pressKey(KeyEvent.VK_CONTROL);
        press(key);
        robot.releaseKey(KeyEvent.VK_CONTROL);
        robot.waitForIdle();
    }
}
