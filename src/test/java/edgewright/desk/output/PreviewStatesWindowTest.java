package edgewright.desk.output;

import static edgewright.desk.WindowParts.named;
import static edgewright.desk.WindowParts.until;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.swing.edt.GuiActionRunner.execute;

import edgewright.booklet.Preview;
import edgewright.booklet.choice.BookletOptions;
import edgewright.booklet.choice.Edition;
import edgewright.booklet.choice.Progress;
import edgewright.chart.Chart;
import edgewright.chart.SideShape;
import edgewright.desk.Desk;
import edgewright.desk.parts.Look;
import edgewright.desk.work.Theme;
import edgewright.texts.English;
import java.awt.Component;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.CountDownLatch;
import java.util.stream.IntStream;
import javax.swing.AbstractButton;
import javax.swing.JDialog;
import javax.swing.JLabel;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The pages beside the dialog for publishing, while they are being made and when they cannot be. */
class PreviewStatesWindowTest {
    private final Chart chart = Chart.blank(
            "Reed Bank", new SideShape(2, 5, 1), 4, Desk.blank(English.LANGUAGE).yarns());
    private final List<Preview> made = new CopyOnWriteArrayList<>();
    private volatile PagePreview.Pages pages = this::make;
    private volatile BookletOptions choice = BookletOptions.of(chart, English.LANGUAGE);
    private JDialog dialog;

    @BeforeEach
    void open() {
        execute(() -> Look.setUp(Theme.LIGHT));
        dialog = execute(() -> {
            JDialog shown = new JDialog();
            shown.add(new PagePreview(
                    (options, progress) -> pages.make(options, progress), () -> choice, English.LANGUAGE));
            shown.pack();
            return shown;
        });
    }

    @AfterEach
    void close() {
        execute(() -> dialog.dispose());
    }

    @Test
    void pagesThatCannotBeMadeAreSaidNotToBe() {
        pages = (options, progress) -> {
            throw new IOException("no room");
        };
        execute(() -> dialog.setVisible(true));
        until("it is said", () -> where().equals("These pages cannot be shown."));
        assertThat(execute(() -> button("preview.stop").isEnabled())).isFalse();
    }

    @Test
    void pagesThatWereCancelledAreSaidToBeAndNoneIsLeftOpen() throws Exception {
        CountDownLatch making = new CountDownLatch(1);
        CountDownLatch goOn = new CountDownLatch(1);
        pages = (options, progress) -> {
            making.countDown();
            await(goOn);
            // It was through before it could look whether it should go on.
            return make(options, Progress.NONE);
        };
        execute(() -> dialog.setVisible(true));
        making.await();
        execute(() -> button("preview.stop").doClick());
        goOn.countDown();
        until("it is said", () -> where().equals("Cancelled until the next choice."));
        until("nothing is left open", () -> made.size() == 1 && made.get(0).isClosed());
    }

    @Test
    void whoeverHasTurnedThePageStaysThereWhenTheNextPagesAreMade() throws Exception {
        execute(() -> dialog.setVisible(true));
        until("the first page is there", () -> where().startsWith("Page 1 of "));
        CountDownLatch making = new CountDownLatch(1);
        CountDownLatch goOn = new CountDownLatch(1);
        pages = (options, progress) -> {
            making.countDown();
            await(goOn);
            return make(options, progress);
        };
        choice = choice.withEdition(Edition.LARGE_PRINT);
        making.await();
        execute(() -> button("preview.on").doClick());
        goOn.countDown();
        until("the next pages are there", () -> made.size() == 2 && made.get(0).isClosed());
        assertThat(where()).isEqualTo("Page 2 of " + made.get(1).pages());
    }

    @Test
    void pagesThatAreMadeAfterTheDialogHasGoneAreNotLeftOpen() throws Exception {
        CountDownLatch making = new CountDownLatch(1);
        CountDownLatch goOn = new CountDownLatch(1);
        pages = (options, progress) -> {
            making.countDown();
            await(goOn);
            return make(options, Progress.NONE);
        };
        execute(() -> dialog.setVisible(true));
        making.await();
        execute(() -> dialog.dispose());
        goOn.countDown();
        until("nothing is left open", () -> made.size() == 1 && made.get(0).isClosed());
    }

    /** Where nothing stands, a person does not know whether anything comes. */
    @Test
    void untilTheFirstPageIsThereWordsStandOnAnEmptySheet() throws Exception {
        CountDownLatch making = new CountDownLatch(1);
        CountDownLatch goOn = new CountDownLatch(1);
        pages = (options, progress) -> {
            making.countDown();
            await(goOn);
            return make(options, progress);
        };
        execute(() -> dialog.setVisible(true));
        making.await();
        assertThat(where()).isEqualTo("Making the pages…");
        assertThat(coloursOfThePaper()).as("more than ground and frame").isGreaterThan(2);
        goOn.countDown();
        until("the first page is there", () -> where().startsWith("Page 1 of "));
    }

    private long coloursOfThePaper() {
        return execute(() -> {
            Component paper = named(dialog, "preview.paper");
            BufferedImage image = new BufferedImage(paper.getWidth(), paper.getHeight(), BufferedImage.TYPE_INT_RGB);
            paper.paint(image.createGraphics());
            return IntStream.of(image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth()))
                    .distinct()
                    .count();
        });
    }

    private Optional<Preview> make(BookletOptions options, Progress progress) throws IOException {
        Optional<Preview> preview = Preview.of(chart, options, progress);
        preview.ifPresent(made::add);
        return preview;
    }

    private static void await(CountDownLatch latch) throws IOException {
        try {
            latch.await();
        } catch (InterruptedException e) {
            throw new IOException(e);
        }
    }

    private String where() {
        return execute(() -> ((JLabel) named(dialog, "preview.where")).getText());
    }

    private AbstractButton button(String name) {
        return (AbstractButton) named(dialog, name);
    }
}
