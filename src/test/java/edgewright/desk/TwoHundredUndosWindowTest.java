package edgewright.desk;

import static edgewright.desk.WindowParts.until;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.swing.edt.GuiActionRunner.execute;

import edgewright.chart.Chart;
import edgewright.chart.Place;
import edgewright.chart.Section;
import edgewright.chart.SideShape;
import edgewright.desk.work.Workbench;
import edgewright.texts.English;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import org.assertj.swing.core.Robot;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/** A long evening at one chart: two hundred strokes by the keys, all taken back, all done again. */
class TwoHundredUndosWindowTest {
    private static final int STROKES = 200;
    private static final int WIDTH = 10;

    @TempDir
    private Path folder;

    @RegisterExtension
    private final DeskOnDisplay display = new DeskOnDisplay();

    @Tag("journey")
    @Test
    void twoHundredStrokesAreTakenBackAndDoneAgainAndTheHistoryKeepsOneRoundForEach() {
        Chart blank = Chart.blank(
                "Long Evening",
                new SideShape(2, WIDTH, 2),
                STROKES / WIDTH,
                Desk.blank(English.LANGUAGE).yarns());
        DeskFrame desk = display.show(blank, folder);
        Robot robot = display.robot();
        Workbench bench = desk.bench();
        List<Chart> seen = new ArrayList<>();
        execute(() -> bench.listen(change -> {
            if (seen.isEmpty() || !seen.get(seen.size() - 1).equals(bench.chart())) {
                seen.add(bench.chart());
            }
        }));
        robot.focusAndWaitForFocusGain(desk.canvas());
        for (int round = 1; round <= STROKES / WIDTH; round++) {
            Place begin = new Place(round, Section.REPEAT, 1);
            execute(() -> bench.moveCursor(begin));
            display.press(KeyEvent.VK_P, WIDTH);
        }
        until(
                "all strokes are worked",
                () -> execute(() ->
                                bench.chart().round(STROKES / WIDTH).repeat().letters())
                        .equals("p".repeat(WIDTH)));
        List<Chart> worked = execute(() -> List.copyOf(seen));
        assertThat(worked).as("one chart a stroke").hasSize(STROKES);
        Chart last = worked.get(STROKES - 1);

        robot.pressKey(KeyEvent.VK_CONTROL);
        display.press(KeyEvent.VK_Z, STROKES);
        robot.releaseKey(KeyEvent.VK_CONTROL);
        until("all is taken back", () -> execute(() -> bench.undoName().isEmpty()));
        assertThat(execute(bench::chart)).isEqualTo(blank);
        assertThat(execute(bench::hasUnsavedWork)).isFalse();
        List<Chart> back = execute(() -> List.copyOf(seen.subList(STROKES, seen.size())));
        List<Chart> before = new ArrayList<>(worked.subList(0, STROKES - 1));
        Collections.reverse(before);
        before.add(blank);
        assertThat(back).as("in the order of the strokes").isEqualTo(before);

        robot.pressKey(KeyEvent.VK_CONTROL);
        display.press(KeyEvent.VK_Y, STROKES);
        robot.releaseKey(KeyEvent.VK_CONTROL);
        until("all is done again", () -> execute(() -> bench.redoName().isEmpty()));
        assertThat(execute(bench::chart)).isEqualTo(last);
        assertThat(execute(() -> List.copyOf(seen.subList(2 * STROKES, seen.size()))))
                .isEqualTo(worked);

        Set<Object> rounds = Collections.newSetFromMap(new IdentityHashMap<>());
        worked.forEach(chart -> rounds.addAll(chart.rounds()));
        assertThat(rounds.size())
                .as("rounds in memory: what a stroke leaves alone is shared by all charts before and after it")
                .isLessThanOrEqualTo(STROKES + blank.rounds().size());
    }
}
