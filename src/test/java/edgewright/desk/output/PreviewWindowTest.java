package edgewright.desk.output;

import static edgewright.desk.WindowParts.until;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.swing.edt.GuiActionRunner.execute;

import edgewright.booklet.Booklet;
import edgewright.booklet.PublishOutcome;
import edgewright.booklet.choice.Edition;
import edgewright.booklet.choice.Paper;
import edgewright.booklet.choice.Progress;
import edgewright.chart.Chart;
import edgewright.chart.Colour;
import edgewright.chart.SideShape;
import edgewright.chart.Yarn;
import edgewright.desk.WindowParts;
import edgewright.desk.parts.Look;
import edgewright.desk.work.ChartView;
import edgewright.desk.work.Settings;
import edgewright.desk.work.Theme;
import edgewright.texts.English;
import java.awt.Component;
import java.awt.Dialog;
import java.awt.Graphics;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import org.assertj.swing.edt.FailOnThreadViolationRepaintManager;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The pages beside the dialog for publishing follow what is chosen in it. */
class PreviewWindowTest {
    @TempDir
    private Path folder;

    private final Chart chart = Chart.blank(
            "Reed Bank",
            new SideShape(2, 5, 1),
            4,
            List.of(new Yarn("A", "Peat", Colour.parse("#2b2a33")), new Yarn("B", "Chalk", Colour.parse("#f2ead8"))));
    private PublishDialog dialog;

    @BeforeAll
    static void catchWhatIsDoneOffTheEventThread() {
        FailOnThreadViolationRepaintManager.install();
    }

    @BeforeEach
    void open() {
        dialog = execute(() -> {
            Look.setUp(Theme.LIGHT);
            PublishDialog made = new PublishDialog(
                    null, chart, new ChartView(English.LANGUAGE), 0, new Settings(folder.resolve("desk.properties")));
            made.setModalityType(Dialog.ModalityType.MODELESS);
            made.pack();
            made.setVisible(true);
            return made;
        });
        until("the first page is there", () -> where().equals(pageOneOf(pagesOfChoice())));
    }

    @AfterEach
    void close() {
        execute(() -> dialog.dispose());
    }

    @Test
    void anotherChoiceSetsThePagesAnew() {
        int[] standard = paper();
        int standardPages = pagesOfChoice();
        execute(() -> combo("publish.edition").setSelectedItem(Edition.LARGE_PRINT));
        int large = pagesOfChoice();
        assertThat(large).isGreaterThan(standardPages);
        until("the pages are those of large print", () -> where().equals(pageOneOf(large)));
        int[] largePrint = paper();
        assertThat(largePrint).isNotEqualTo(standard);
        execute(() -> combo("publish.paper").setSelectedItem(Paper.LETTER));
        until("the page has the shape of the other paper", () -> !Arrays.equals(paper(), largePrint));
        execute(() -> combo("publish.paper").setSelectedItem(Paper.A4));
        execute(() -> combo("publish.edition").setSelectedItem(Edition.STANDARD));
        until("the page is as it was", () -> Arrays.equals(paper(), standard));
    }

    @Test
    void afterAStopTheNextChoiceIsStillFollowed() {
        execute(() -> combo("publish.edition").setSelectedItem(Edition.LARGE_PRINT));
        AbstractButton stop = (AbstractButton) part("preview.stop");
        until("pages are being set", () -> execute(stop::isEnabled));
        execute(() -> stop.doClick());
        execute(() -> combo("publish.edition").setSelectedItem(Edition.BLACK_AND_WHITE));
        int pages = pagesOfChoice();
        int[] before = paper();
        // Another edition may have as many pages, so the page itself must be another too.
        until(
                "the page is that of the last choice",
                () -> where().equals(pageOneOf(pages)) && !Arrays.equals(paper(), before));
    }

    /** As many as the booklet has when it is published so. */
    private int pagesOfChoice() {
        try {
            PublishOutcome outcome = Booklet.publish(
                    chart, execute(() -> dialog.options()), OutputStream.nullOutputStream(), Progress.NONE);
            return ((PublishOutcome.Published) outcome).pages();
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private static String pageOneOf(int pages) {
        return "Page 1 of " + pages;
    }

    private String where() {
        return execute(() -> ((JLabel) part("preview.where")).getText());
    }

    private JComboBox<?> combo(String name) {
        return (JComboBox<?>) part(name);
    }

    /** The pixels of the page that is shown. */
    private int[] paper() {
        return execute(() -> {
            Component paper = part("preview.paper");
            BufferedImage image = new BufferedImage(paper.getWidth(), paper.getHeight(), BufferedImage.TYPE_INT_RGB);
            Graphics graphics = image.createGraphics();
            paper.paint(graphics);
            graphics.dispose();
            return image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
        });
    }

    private Component part(String name) {
        return WindowParts.named(dialog, name);
    }
}
