package edgewright.desk.output;

import static edgewright.desk.WindowParts.until;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.swing.edt.GuiActionRunner.execute;

import edgewright.booklet.choice.BookletOptions;
import edgewright.chart.Back;
import edgewright.chart.Chart;
import edgewright.chart.HookSize;
import edgewright.chart.OwnMatter;
import edgewright.chart.Photo;
import edgewright.desk.Desk;
import edgewright.desk.DeskFrame;
import edgewright.desk.WindowParts;
import edgewright.desk.jobs.Jobs;
import edgewright.desk.jobs.Questions;
import edgewright.desk.parts.FormDialog;
import edgewright.desk.work.ChartView;
import edgewright.desk.work.Settings;
import edgewright.desk.work.Workbench;
import edgewright.texts.English;
import java.awt.Window;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.stream.Stream;
import javax.swing.AbstractButton;
import javax.swing.SwingUtilities;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the window says before and after a pattern or a picture is written that is not all right. */
class NoticesWindowTest {
    /** A hook thicker than any that the reader of words takes. */
    private static final HookSize UNREADABLE = new HookSize(2 * HookSize.MOST_HUNDREDTHS_MM);

    @TempDir
    private Path folder;

    private Optional<DeskFrame> desk = Optional.empty();
    private final List<String> begun = new CopyOnWriteArrayList<>();

    @AfterEach
    void close() {
        execute(() ->
                Stream.of(Window.getWindows()).filter(Window::isShowing).forEach(window -> window.setVisible(false)));
        desk.ifPresent(frame -> execute(() -> frame.dispose()));
    }

    @Test
    void beforeAPatternIsPublishedTheWindowNamesTheCharactersThatCannotBePrinted() {
        PublishCommands publishing = publishing(Desk.blank(English.LANGUAGE).withTitle("Reed \u6f6e Bank"));
        SwingUtilities.invokeLater(publishing::publish);
        accept("publish");
        assertThat(told("news.unprinted"))
                .startsWith("Not all of this can be printed: ")
                .contains("title")
                .contains("\u6f6e");
    }

    @Test
    void beforeAPictureIsSavedTheWindowNamesTheCharactersThatCannotBePrinted() {
        PublishCommands publishing = publishing(Desk.blank(English.LANGUAGE).withTitle("Reed \u6f6e Bank"));
        SwingUtilities.invokeLater(publishing::picture);
        accept("picture");
        assertThat(told("news.unprinted"))
                .startsWith("Not all of this can be printed: ")
                .contains("title")
                .contains("\u6f6e");
    }

    @Test
    void aPatternWhoseWordsDoNotMakeTheChartIsNotPublishedAndTheWindowSaysWhy() {
        Chart chart = Desk.blank(English.LANGUAGE);
        Chart layered = chart.withMaking(chart.making().withBack(Optional.of(new Back(Optional.of(UNREADABLE)))));
        PublishCommands publishing = publishing(layered);
        Path file = folder.resolve("pattern.pdf");
        execute(() ->
                publishing.publish(layered, BookletOptions.of(layered, English.LANGUAGE), file, Optional.empty()));
        assertThat(told("news.notProved"))
                .startsWith("Not published: the words do not make the chart. ")
                .contains("hook");
        assertThat(Files.exists(file)).isFalse();
    }

    @Test
    void photographsAreReadBesideTheEventThreadBeforeADialogOpens() {
        OwnMatter own = OwnMatter.NONE.withPhotos(List.of(new Photo("reed.jpg", "Reeds", "", Photo.At.COVER)));
        PublishCommands publishing = publishing(Desk.blank(English.LANGUAGE).withOwn(own));
        SwingUtilities.invokeLater(publishing::publish);
        assertThat(told("news.ownFiles")).contains("reed.jpg");
        SwingUtilities.invokeLater(publishing::words);
        assertThat(told("news.ownFiles")).contains("reed.jpg");
        assertThat(begun)
                .containsExactly("Reading photographs and imprint\u2026", "Reading photographs and imprint\u2026");
    }

    private PublishCommands publishing(Chart chart) {
        DeskFrame frame = WindowParts.desk(chart, folder);
        desk = Optional.of(frame);
        execute(() -> frame.setVisible(true));
        return execute(() -> new PublishCommands(
                frame,
                new Workbench(chart, Optional.empty(), English.LANGUAGE),
                new Questions(frame, English.LANGUAGE),
                new Jobs(
                        new Jobs.Board() {
                            @Override
                            public void begin(String job, Optional<Runnable> stop) {
                                begun.add(job);
                            }

                            @Override
                            public void progress(int percent) {}

                            @Override
                            public void end(String outcome) {}
                        },
                        English.LANGUAGE),
                new ChartView(English.LANGUAGE),
                new Settings(folder.resolve("other.properties")),
                file -> {}));
    }

    private static void accept(String dialog) {
        Window form = window(dialog);
        assertThat(form).isInstanceOf(FormDialog.class);
        execute(() -> ((AbstractButton) WindowParts.named(form, "accept")).doClick());
    }

    private static String told(String name) {
        Window told = window(name);
        String message = execute(() -> ((JTextComponent) WindowParts.named(told, "message")).getText());
        execute(() -> told.setVisible(false));
        return message;
    }

    private static Window window(String name) {
        until(name + " is open", () -> execute(() -> showing(name).findFirst().isPresent()));
        return execute(() -> showing(name).findFirst().orElseThrow());
    }

    private static Stream<Window> showing(String name) {
        return Stream.of(Window.getWindows()).filter(window -> window.isShowing() && name.equals(window.getName()));
    }
}
