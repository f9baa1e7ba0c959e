package edgewright.desk;

import static edgewright.desk.WindowParts.until;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.swing.edt.GuiActionRunner.execute;

import edgewright.chart.Chart;
import edgewright.chart.Edits;
import edgewright.chart.Place;
import edgewright.chart.Section;
import edgewright.chart.Stitch;
import edgewright.chart.Yarn;
import edgewright.desk.jobs.Questions;
import edgewright.desk.parts.Look;
import edgewright.desk.work.Settings;
import edgewright.desk.work.Theme;
import edgewright.texts.English;
import java.awt.Window;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.stream.Stream;
import javax.swing.AbstractButton;
import javax.swing.JComponent;
import javax.swing.JFileChooser;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JOptionPane;
import javax.swing.JToolTip;
import javax.swing.SwingUtilities;
import javax.swing.plaf.basic.BasicHTML;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * No text of a user is ever HTML to the window: a picture in it would be fetched from wherever it lies, just because somebody
 * opened a file.
 */
class PlainTextWindowTest {
    private static final String MARKED = "<html><img src='file:marsh.png'>";

    @TempDir
    private Path folder;

    private DeskFrame desk;

    @BeforeEach
    void open() {
        Path recent = folder.resolve(MARKED + ".border.json");
        new Settings(folder.resolve("desk.properties")).addRecent(recent);
        desk = WindowParts.desk(marked(), folder);
        execute(() -> desk.setVisible(true));
    }

    @AfterEach
    void close() {
        execute(() -> desk.dispose());
    }

    @Test
    void noTextOfTheChartIsHtmlInAnyWindowDialogMenuOrTip() {
        List<Window> windows = AllWindows.of(desk, folder);
        assertThat(execute(() -> windows.stream()
                        .mapToInt(
                                window -> AllWindows.where(window, part -> true).size())
                        .sum()))
                .isGreaterThan(1_000);
        assertThat(html(windows)).isEmpty();
        execute(() -> Look.setUp(Theme.DARK));
        assertThat(html(windows)).as("after another look").isEmpty();
        execute(() -> Look.setUp(Theme.LIGHT));
        AllWindows.close(windows);
    }

    @Test
    void aFileThatIsNoChartIsRefusedWithoutHtmlInItsName() throws IOException {
        Path broken = folder.resolve(MARKED + ".border.json");
        Files.writeString(broken, "{");
        SwingUtilities.invokeLater(() -> desk.open(broken));
        Window told = dialogWith(JOptionPane.class);
        assertThat(html(List.of(told))).isEmpty();
        execute(() -> told.setVisible(false));
        JLabel news = (JLabel) WindowParts.named(desk, "news");
        until("the desk has said so", () -> execute(() -> news.getText().startsWith(MARKED)));
        assertThat(html(List.of(desk))).isEmpty();
    }

    @Test
    void theNamesOfFilesAreNoHtmlWhereOneIsChosen() throws IOException {
        Files.writeString(folder.resolve(MARKED + ".border.json"), "{");
        Questions asking = new Questions(desk, English.LANGUAGE);
        execute(() -> asking.lookBeside(folder.resolve("any")));
        SwingUtilities.invokeLater(asking::fileToOpen);
        Window chooser = dialogWith(JFileChooser.class);
        JList<?> files = execute(() -> WindowParts.parts(chooser).stream()
                .filter(JList.class::isInstance)
                .map(part -> (JList<?>) part)
                .findFirst()
                .orElseThrow());
        until("the files are listed", () -> execute(() -> files.getModel().getSize() > 0));
        assertThat(html(List.of(chooser))).isEmpty();
        execute(() -> chooser.setVisible(false));
    }

    private Window dialogWith(Class<?> content) {
        until(
                "a dialog is open",
                () -> execute(() -> dialogs(content).findFirst().isPresent()));
        return execute(() -> dialogs(content).findFirst().orElseThrow());
    }

    private static Stream<Window> dialogs(Class<?> content) {
        return Stream.of(Window.getWindows())
                .filter(Window::isShowing)
                .filter(window -> WindowParts.parts(window).stream().anyMatch(content::isInstance));
    }

    @Test
    void whateverTextALabelAButtonALineOfAMenuOrATipIsGivenItIsNoHtml() {
        List<Window> windows = AllWindows.of(desk, folder);
        assertThat(execute(() -> windows.stream()
                        .flatMap(window -> AllWindows.where(window, PlainTextWindowTest::takesHtml).stream())
                        .toList()))
                .isEmpty();
        AllWindows.close(windows);
    }

    /** Whether the text would be a page of HTML if there stood another one. */
    private static boolean takesHtml(JComponent part) {
        if (part instanceof JLabel label) {
            return takesHtml(label, label.getText(), label::setText);
        }
        if (part instanceof AbstractButton button) {
            return takesHtml(button, button.getText(), button::setText);
        }
        return part instanceof JToolTip tip && takesHtml(tip, tip.getTipText(), tip::setTipText);
    }

    private static boolean takesHtml(JComponent part, String before, Consumer<String> text) {
        text.accept(MARKED);
        boolean isHtml = part.getClientProperty(BasicHTML.propertyKey) != null;
        text.accept(before);
        return isHtml;
    }

    /** Where something is that has been made a page of HTML. */
    private static List<String> html(List<Window> windows) {
        return execute(() -> windows.stream()
                .flatMap(window ->
                        AllWindows.where(window, part -> part.getClientProperty(BasicHTML.propertyKey) != null)
                                .stream())
                .toList());
    }

    /** Every text of the user begins like a page, and some stitch wants care, so that there are findings. */
    private static Chart marked() {
        Chart chart = Desk.blank(English.LANGUAGE);
        List<Yarn> yarns = chart.yarns().stream()
                .map(yarn -> new Yarn(yarn.id(), MARKED + yarn.id(), yarn.colour()))
                .toList();
        return Edits.setStitches(
                chart.withYarns(yarns)
                        .withTitle(MARKED)
                        .withDesigner(MARKED)
                        .withNotes(MARKED)
                        .withMaking(chart.making().withSkill(MARKED)),
                Map.of(new Place(1, Section.REPEAT, 2), Stitch.LONG));
    }
}
