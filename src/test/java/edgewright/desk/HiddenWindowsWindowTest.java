package edgewright.desk;

import static edgewright.desk.WindowParts.named;
import static edgewright.desk.WindowParts.until;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.swing.edt.GuiActionRunner.execute;

import edgewright.chart.Edits;
import edgewright.chart.Place;
import edgewright.chart.Section;
import java.awt.Window;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import org.assertj.swing.core.Robot;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/** A window that is not shown does no work at an edit; it is right again when it is shown. */
class HiddenWindowsWindowTest {
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
    }

    @Test
    void theRoundGuideFollowsTheChartOnlyWhileItIsShown() {
        Window guide = opened(KeyEvent.VK_G, "guideWindow");
        JLabel heading = (JLabel) named(guide, "guideHeading");
        String first = execute(heading::getText);
        execute(() -> desk.bench().moveCursor(new Place(2, Section.REPEAT, 1)));
        String second = execute(heading::getText);
        assertThat(second).isNotEqualTo(first);

        execute(guide::dispose);
        execute(() -> desk.bench().moveCursor(new Place(3, Section.REPEAT, 1)));
        assertThat(execute(heading::getText)).as("not shown").isEqualTo(second);

        opened(KeyEvent.VK_G, "guideWindow");
        assertThat(execute(heading::getText))
                .as("shown again")
                .isEqualTo(second.replaceFirst("2", "3").replaceFirst("B", "A").replaceFirst("Chalk", "Peat"));
    }

    @Test
    void thePieceWindowFollowsTheChartOnlyWhileItIsShown() {
        Window piece = opened(KeyEvent.VK_M, "pieceWindow");
        JComboBox<?> rounds = (JComboBox<?>) named(piece, "piece.countedIn");
        assertThat(execute(rounds::getItemCount)).isEqualTo(13);
        execute(() -> desk.bench().edit("one more", chart -> Edits.insertRounds(chart, 13, List.of("A"))));
        assertThat(execute(rounds::getItemCount)).isEqualTo(14);

        execute(() -> piece.setVisible(false));
        execute(() -> desk.bench().edit("one more", chart -> Edits.insertRounds(chart, 14, List.of("B"))));
        assertThat(execute(rounds::getItemCount)).as("not shown").isEqualTo(14);

        opened(KeyEvent.VK_M, "pieceWindow");
        assertThat(execute(rounds::getItemCount)).as("shown again").isEqualTo(15);
    }

    /** The window of this name, opened with a key of the desk. */
    private Window opened(int key, String name) {
        execute(() -> {
            desk.toFront();
            desk.canvas().requestFocusInWindow();
        });
        robot.waitForIdle();
        robot.pressKey(KeyEvent.VK_CONTROL);
        robot.pressAndReleaseKeys(key);
        robot.releaseKey(KeyEvent.VK_CONTROL);
        until(
                name + " is shown",
                () -> execute(() -> Arrays.stream(desk.getOwnedWindows())
                        .anyMatch(window -> name.equals(window.getName()) && window.isShowing())));
        robot.waitForIdle();
        return execute(() -> Arrays.stream(desk.getOwnedWindows())
                .filter(window -> name.equals(window.getName()))
                .findFirst()
                .orElseThrow());
    }
}
