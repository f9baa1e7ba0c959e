package edgewright.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.swing.edt.GuiActionRunner.execute;

import edgewright.chart.Chart;
import edgewright.chart.Edits;
import edgewright.chart.Place;
import edgewright.chart.Section;
import edgewright.chart.Stitch;
import edgewright.desk.parts.Look;
import edgewright.desk.work.Settings;
import edgewright.desk.work.Theme;
import edgewright.texts.English;
import java.awt.Insets;
import java.awt.Window;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import javax.swing.JComponent;
import javax.swing.JToolTip;
import javax.swing.ListCellRenderer;
import javax.swing.SwingUtilities;
import javax.swing.plaf.basic.BasicArrowButton;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The theme can be changed while everything is open. */
class LookWindowTest {
    private static final String ROW_OF_TABS = "TabbedPane.scrollableViewport";

    @TempDir
    private Path folder;

    @AfterEach
    void light() {
        execute(() -> Look.setUp(Theme.LIGHT));
    }

    @Test
    void aWindowThatTurnsDarkLooksAsOneThatWasOpenedInTheDark() {
        List<String> turned = looks(Theme.LIGHT, Theme.DARK);
        List<String> dark = looks(Theme.DARK, Theme.DARK);
        assertThat(turned).hasSizeGreaterThan(1_000).containsExactlyElementsOf(dark);
    }

    @Test
    void aWindowThatTurnsFromHighContrastToLightLooksAsOneThatWasOpenedInTheLight() {
        assertThat(looks(Theme.HIGH_CONTRAST, Theme.LIGHT)).containsExactlyElementsOf(looks(Theme.LIGHT, Theme.LIGHT));
    }

    /** How everything looks that was opened so, and is so now. */
    private List<String> looks(Theme opened, Theme now) {
        Chart chart =
                Edits.setStitches(Desk.blank(English.LANGUAGE), Map.of(new Place(1, Section.REPEAT, 2), Stitch.LONG));
        execute(() -> Look.setUp(opened));
        DeskFrame desk =
                execute(() -> new DeskFrame(chart, new Settings(folder.resolve("desk.properties")), English.LANGUAGE));
        execute(() -> desk.setVisible(true));
        List<Window> windows = AllWindows.of(desk, folder);
        if (now != opened) {
            execute(() -> Look.setUp(now));
        }
        List<String> looks = new ArrayList<>();
        execute(() -> windows.forEach(window -> {
            List<String> each = new ArrayList<>();
            List<String> where = AllWindows.where(window, part -> !isMadeAnew(part) && each.add(look(part)));
            for (int i = 0; i < where.size(); i++) {
                looks.add(where.get(i) + " " + each.get(i));
            }
        }));
        AllWindows.close(windows);
        return looks;
    }

    /** Arrows, tips and the row of the tabs come into being with the look itself. */
    private static boolean isMadeAnew(JComponent part) {
        return part instanceof BasicArrowButton
                || part instanceof JToolTip
                || ROW_OF_TABS.equals(part.getName())
                || SwingUtilities.getAncestorNamed(ROW_OF_TABS, part) != null;
    }

    private static String look(JComponent part) {
        Insets insets = part.getInsets();
        return String.join(
                ", ",
                part.getForeground() == null
                        ? "-"
                        : Integer.toHexString(part.getForeground().getRGB()),
                part.getBackground() == null
                        ? "-"
                        : Integer.toHexString(part.getBackground().getRGB()),
                // A line of a list is clear where its list has the same ground.
                part.isOpaque() || part instanceof ListCellRenderer ? "opaque" : "clear",
                part.getFont() == null
                        ? "-"
                        : part.getFont().getName() + " " + part.getFont().getSize2D(),
                insets.top + " " + insets.left + " " + insets.bottom + " " + insets.right);
    }
}
