package edgewright.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.swing.edt.GuiActionRunner.execute;

import edgewright.chart.Chart;
import edgewright.chart.Edits;
import edgewright.chart.Place;
import edgewright.chart.Section;
import edgewright.chart.Stitch;
import edgewright.chart.Yarn;
import edgewright.desk.canvas.ChartCanvas;
import edgewright.desk.parts.Look;
import edgewright.desk.work.ChartCommands;
import edgewright.desk.work.Settings;
import edgewright.desk.work.Theme;
import edgewright.texts.English;
import java.awt.Component;
import java.awt.Window;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import javax.swing.JComponent;
import javax.swing.JPopupMenu;
import javax.swing.JToolTip;
import javax.swing.table.JTableHeader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Names of any length are shortened with a sign or wrap; no window becomes wider by them. */
class LongNamesWindowTest {
    private static final int LETTERS = 300;

    /** No wider than this beside what is pointed at, and beside the menu bar. */
    private static final int MOST_PX = 640;

    @TempDir
    private Path folder;

    @RegisterExtension
    private final DeskOnDisplay display = new DeskOnDisplay();

    @ParameterizedTest
    @ValueSource(strings = {"m", "marsh "})
    void noWindowOrDialogIsLaidOutWiderForLongNames(String repeated) {
        List<Integer> usual = new ArrayList<>();
        assertThat(cutOff(Desk.blank(English.LANGUAGE), usual)).isEmpty();
        List<Integer> wide = new ArrayList<>();
        String name = repeated.repeat(LETTERS / repeated.length()).strip();
        assertThat(cutOff(named(name), wide)).isEmpty();
        assertThat(wide).isEqualTo(usual);
    }

    @Test
    void theStitchAtTheCursorIsSaidWholeBesideNewsOfALongName() {
        DeskFrame desk = desk(named("m".repeat(LETTERS)));
        Component stitch = WindowParts.named(desk, "stitchAtCursor");
        assertThat(execute(() -> stitch.getWidth() >= stitch.getPreferredSize().width))
                .isTrue();
        execute(desk::dispose);
    }

    @Test
    void noMenuOrTipIsWiderThanThatForLongNames() {
        DeskFrame desk = desk(named("m".repeat(LETTERS)));
        List<Window> windows = AllWindows.of(desk, folder);
        assertThat(execute(() -> windows.stream()
                        .flatMap(window -> AllWindows.where(window, LongNamesWindowTest::isTooWide).stream())
                        .toList()))
                .isEmpty();
        assertThat(execute(desk::getTitle)).hasSizeLessThan(200).contains("\u2026");
        AllWindows.close(windows);
    }

    private static boolean isTooWide(JComponent part) {
        return (part instanceof JToolTip || part instanceof JPopupMenu) && part.getPreferredSize().width > MOST_PX;
    }

    /** What reaches beyond what it stands in, to the right; and how wide each window is. */
    private List<String> cutOff(Chart chart, List<Integer> widths) {
        DeskFrame desk = desk(chart);
        List<Window> windows = AllWindows.of(desk, folder);
        // Before it has its place and its frame, a window may be narrower by that frame.
        windows.stream().filter(Component::isShowing).forEach(display::waitForPlace);
        List<String> cutOff = execute(() -> windows.stream()
                .flatMap(window -> {
                    window.validate();
                    widths.add(window.getWidth());
                    return WindowParts.parts(window).stream()
                            .filter(LongNamesWindowTest::isCutOff)
                            .map(part -> window.getName() + "/"
                                    + part.getClass().getSimpleName() + " " + part.getName() + " " + part.getBounds());
                })
                .toList());
        AllWindows.close(windows);
        return cutOff;
    }

    /** The chart may be larger than its part of the window; the head of a table follows the table. */
    private static boolean isCutOff(Component part) {
        return part.isVisible()
                && part.getParent().getWidth() > 0
                && part.getX() + part.getWidth() > part.getParent().getWidth() + 2
                && !(part instanceof ChartCanvas || part instanceof JTableHeader);
    }

    private DeskFrame desk(Chart chart) {
        return execute(() -> {
            Look.setUp(Theme.LIGHT);
            Settings settings = new Settings(folder.resolve("desk.properties"));
            settings.addRecent(folder.resolve("m".repeat(240) + ".border.json"));
            DeskFrame desk = new DeskFrame(chart, settings, English.LANGUAGE);
            desk.setVisible(true);
            Yarn yarn = chart.yarns().get(1);
            ChartCommands.changeYarn(
                    desk.bench(), yarn, yarn.withColour(chart.yarns().get(0).colour()));
            desk.bench()
                    .edit(
                            yarn.name(),
                            edited -> Edits.setStitches(edited, Map.of(new Place(1, Section.REPEAT, 2), Stitch.LONG)));
            return desk;
        });
    }

    private static Chart named(String name) {
        Chart chart = Desk.blank(English.LANGUAGE);
        List<Yarn> yarns = chart.yarns().stream()
                .map(yarn -> new Yarn(yarn.id(), name, yarn.colour()))
                .toList();
        return chart.withYarns(yarns)
                .withTitle(name)
                .withDesigner(name)
                .withNotes(name)
                .withMaking(chart.making().withSkill(name));
    }
}
