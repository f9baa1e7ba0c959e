package edgewright.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.swing.edt.GuiActionRunner.execute;

import edgewright.desk.parts.Look;
import edgewright.desk.work.Settings;
import edgewright.desk.work.Theme;
import edgewright.texts.English;
import java.awt.Container;
import java.awt.Dialog;
import java.awt.Window;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.swing.AbstractButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JTabbedPane;
import javax.swing.JTable;
import javax.swing.JToolTip;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What a window shows is a text, never the name by which the text or the part is found. The kit of the desk is handed texts and
 * names alike, so nothing else would see one in the place of the other.
 */
class ShownTextsWindowTest {
    /** As in {@code piece-tab-sizes}, or in {@code piece.tab.sizes}. */
    private static final String NAME = "[a-z][A-Za-z]*([-.][A-Za-z0-9_]+)+";

    @TempDir
    private Path folder;

    @Test
    void noWindowOrDialogShowsTheNameOfAText() {
        execute(() -> Look.setUp(Theme.LIGHT));
        DeskFrame desk = execute(() -> new DeskFrame(
                Desk.blank(English.LANGUAGE), new Settings(folder.resolve("desk.properties")), English.LANGUAGE));
        execute(() -> desk.setVisible(true));
        List<Window> windows = AllWindows.of(desk, folder);
        List<String> texts = execute(
                () -> windows.stream().flatMap(window -> texts(window).stream()).toList());
        AllWindows.close(windows);

        assertThat(texts)
                .hasSizeGreaterThan(500)
                .contains("The border on a piece", "Publish the pattern", "Round by round", "How it is made")
                // The start page calls a chart by its file.
                .noneMatch(text ->
                        text.matches(NAME) && !new java.io.File("sample-charts", text + ".border.json").exists());
    }

    @Test
    void aNameInThePlaceOfATextWouldBeSeen() {
        Container shown = execute(() -> {
            JTabbedPane tabs = new JTabbedPane();
            tabs.addTab("piece-tab-sizes", new JLabel("guide.level"));
            Container window = new Container();
            window.add(tabs);
            return window;
        });
        assertThat(execute(() -> texts(shown)))
                .filteredOn(text -> text.matches(NAME))
                .contains("piece-tab-sizes", "guide.level");
    }

    /** Everything that is read in a window, and what is heard of it. */
    private static List<String> texts(Container window) {
        List<String> texts = new ArrayList<>();
        if (window instanceof Dialog dialog) {
            texts.add(dialog.getTitle());
        }
        AllWindows.where(window, part -> texts.addAll(of(part)));
        return texts;
    }

    private static List<String> of(JComponent part) {
        List<String> texts = new ArrayList<>();
        if (part instanceof JLabel label) {
            texts.add(label.getText());
        } else if (part instanceof AbstractButton button) {
            texts.add(button.getText());
        } else if (part instanceof JTextComponent text) {
            texts.add(text.getText());
        } else if (part instanceof JToolTip tip) {
            texts.add(tip.getTipText());
        } else if (part instanceof JTabbedPane tabs) {
            for (int i = 0; i < tabs.getTabCount(); i++) {
                texts.add(tabs.getTitleAt(i));
            }
        } else if (part instanceof JTable table) {
            for (int i = 0; i < table.getColumnCount(); i++) {
                texts.add(table.getColumnName(i));
            }
        }
        if (part.getAccessibleContext() != null) {
            texts.add(part.getAccessibleContext().getAccessibleName());
            texts.add(part.getAccessibleContext().getAccessibleDescription());
        }
        return texts.stream()
                .filter(Objects::nonNull)
                .map(String::strip)
                .filter(text -> !text.isEmpty())
                .toList();
    }
}
