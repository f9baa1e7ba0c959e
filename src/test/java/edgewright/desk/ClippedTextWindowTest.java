package edgewright.desk;

import static edgewright.desk.WindowParts.parts;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.swing.edt.GuiActionRunner.execute;

import edgewright.desk.parts.KeptSplit;
import edgewright.desk.parts.Look;
import edgewright.desk.work.Looks;
import edgewright.desk.work.Settings;
import edgewright.desk.work.Theme;
import edgewright.desk.work.TypeSize;
import edgewright.texts.English;
import edgewright.texts.Language;
import java.awt.Component;
import java.awt.Container;
import java.awt.Insets;
import java.awt.Rectangle;
import java.awt.Window;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import javax.swing.AbstractButton;
import javax.swing.CellRendererPane;
import javax.swing.Icon;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JMenuItem;
import javax.swing.JViewport;
import javax.swing.MenuElement;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** On a screen of 1024 by 700 every label and every button is read whole: with large letters and in a longer language, too. */
class ClippedTextWindowTest {
    private static final int WIDTH_PX = 1024;
    private static final int HEIGHT_PX = 700;
    /** Those that are looked at in large letters, too. */
    private static final String DIALOGS = "publish|picture|saveWords|newChart|properties|side|shift|letters";

    private static final String COLOUR = "#[0-9a-f]{6}";

    @TempDir
    private Path folder;

    private final List<String> shown = new ArrayList<>();

    @AfterEach
    void light() {
        execute(() -> Look.setUp(Theme.LIGHT));
    }

    @Test
    void nothingIsCutOffOnASmallScreen() {
        assertThat(cutOff(English.LANGUAGE, TypeSize.PERCENT_100, false)).isEmpty();
        assertThat(shown).hasSizeGreaterThan(200);
    }

    @Test
    void nothingIsCutOffOnASmallScreenInLettersHalfAsLargeAgainWithPanesFolded() {
        assertThat(cutOff(English.LANGUAGE, TypeSize.PERCENT_150, true)).isEmpty();
    }

    @Test
    void noDialogIsCutOffOnASmallScreenInLettersTwiceAsLarge() {
        assertThat(cutOff(English.LANGUAGE, TypeSize.PERCENT_200, true))
                .filteredOn(text -> !text.startsWith("desk/"))
                .isEmpty();
    }

    @Test
    void nothingIsCutOffOnASmallScreenInALongerLanguageAndNoWordIsEnglish() {
        assertThat(cutOff(LongLanguage.make(), TypeSize.PERCENT_100, false)).isEmpty();
        assertThat(shown.stream()
                        .flatMap(text -> Stream.of(text.replaceAll(COLOUR, "").split("[^\\p{L}&]+")))
                        .filter(word -> word.length() > 2 && word.chars().noneMatch(c -> c > 127))
                        .distinct())
                .isEmpty();
    }

    @Test
    void lettersAreAsLargeAsTheyAreChosenAtOnceAlsoInWhatIsFolded() {
        DeskFrame desk = WindowParts.shownDesk(folder);
        Component rounds = WindowParts.named(desk, "rounds");
        float before = execute(() -> rounds.getFont().getSize2D());
        execute(() -> {
            parts(desk).stream()
                    .filter(part -> part instanceof KeptSplit && "sideSplit".equals(part.getName()))
                    .forEach(split -> ((KeptSplit) split).fold(true));
            item(desk.getJMenuBar(), "menu.typeSize.PERCENT_200").doClick();
        });
        Component folded = WindowParts.named(desk, "sideSplit.line");
        assertThat(execute(() -> List.of(
                        rounds.getFont().getSize2D() / before,
                        desk.getJMenuBar().getFont().getSize2D() / before)))
                .containsExactly(2f, 2f);
        assertThat(execute(() -> folded.getMinimumSize().width)).isGreaterThan(50);
        assertThat(new Settings(folder.resolve("desk.properties")).looks())
                .isEqualTo(new Looks(Theme.LIGHT, TypeSize.PERCENT_200));
        execute(desk::dispose);
    }

    private static JMenuItem item(MenuElement in, String name) {
        return Stream.of(in.getSubElements())
                .map(inner -> name.equals(inner.getComponent().getName()) ? (JMenuItem) inner : item(inner, name))
                .filter(Objects::nonNull)
                .findFirst()
                .orElse(null);
    }

    private List<String> cutOff(Language language, TypeSize size, boolean folded) {
        Settings settings = new Settings(folder.resolve("desk.properties"));
        DeskFrame desk = execute(() -> {
            Look.setUp(new Looks(Theme.LIGHT, size));
            DeskFrame made = new DeskFrame(Desk.blank(language), settings, language);
            made.setSize(WIDTH_PX, HEIGHT_PX);
            made.setVisible(true);
            return made;
        });
        List<Window> windows = AllWindows.of(desk, folder, language);
        List<String> cutOff = execute(() -> {
            if (folded) {
                parts(desk).stream()
                        .filter(KeptSplit.class::isInstance)
                        .forEach(split -> ((KeptSplit) split).fold(true));
            }
            List<String> found = new ArrayList<>();
            for (Window window : windows) {
                boolean isOurs = window.getName().matches(DIALOGS);
                if (folded && !window.getName().equals("desk") && !isOurs) {
                    // With large letters the desk and its dialogs are looked at.
                    continue;
                }
                window.setMinimumSize(null);
                window.setSize(Math.min(window.getWidth(), WIDTH_PX), Math.min(window.getHeight(), HEIGHT_PX));
                window.validate();
                look(window, window.getName(), found);
            }
            return found;
        });
        AllWindows.close(windows);
        return cutOff;
    }

    private void look(Container in, String where, List<String> found) {
        for (Component part : in.getComponents()) {
            if (!part.isVisible() || part instanceof CellRendererPane || in.getWidth() * in.getHeight() == 0) {
                continue;
            }
            String text = text(part);
            if (!text.isEmpty()) {
                shown.add(text);
                String how = how((JComponent) part, text);
                if (!how.isEmpty()) {
                    found.add(where + "/" + part.getName() + " '" + text + "' " + how);
                }
            }
            if (part instanceof Container inner) {
                look(inner, where, found);
            }
        }
    }

    private static String text(Component part) {
        String text = part instanceof JLabel label
                ? label.getText()
                : part instanceof AbstractButton button && !(part instanceof JMenuItem) ? button.getText() : "";
        return text == null || text.startsWith("<html>") ? "" : text;
    }

    /** How it is cut off; nothing if it is whole. */
    private static String how(JComponent part, String text) {
        if (part.getName() != null && part.getName().endsWith("Split.line") && part.getHeight() > part.getWidth()) {
            // It is written upwards.
            return "";
        }
        Insets insets = part.getInsets();
        Rectangle room = new Rectangle(
                insets.left,
                insets.top,
                part.getWidth() - insets.left - insets.right,
                part.getHeight() - insets.top - insets.bottom);
        JLabel label = part instanceof JLabel of ? of : null;
        AbstractButton button = part instanceof AbstractButton of ? of : null;
        Icon icon = label != null ? label.getIcon() : button.getIcon();
        int gap = label != null ? label.getIconTextGap() : button.getIconTextGap();
        String fits = SwingUtilities.layoutCompoundLabel(
                part,
                part.getFontMetrics(part.getFont()),
                text,
                icon,
                0,
                0,
                0,
                SwingUtilities.RIGHT,
                room,
                new Rectangle(),
                new Rectangle(),
                gap);
        if (!fits.equals(text)) {
            return "is shortened at " + part.getWidth() + " of " + part.getPreferredSize().width;
        }
        if (room.height < part.getFontMetrics(part.getFont()).getAscent()) {
            return "is too low at " + part.getHeight();
        }
        // What lies in something that scrolls can be scrolled to.
        Container parent = part.getParent();
        while (parent != null && !(parent instanceof JViewport) && !(parent instanceof Window)) {
            Rectangle at = SwingUtilities.convertRectangle(part.getParent(), part.getBounds(), parent);
            if (at.x < -1
                    || at.y < -1
                    || at.getMaxX() > parent.getWidth() + 1
                    || at.getMaxY() > parent.getHeight() + 1) {
                return "lies beyond " + parent.getClass().getSimpleName() + ":" + parent.getName() + " " + at;
            }
            parent = parent.getParent();
        }
        return "";
    }
}
