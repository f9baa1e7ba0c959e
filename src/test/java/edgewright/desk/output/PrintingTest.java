package edgewright.desk.output;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.booklet.Preview;
import edgewright.booklet.choice.BookletOptions;
import edgewright.booklet.choice.Progress;
import edgewright.chart.Chart;
import edgewright.chart.SideShape;
import edgewright.desk.Desk;
import edgewright.desk.jobs.Jobs;
import edgewright.desk.jobs.Printers;
import edgewright.testing.PaperPrinter;
import edgewright.texts.English;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.awt.print.PageFormat;
import java.awt.print.Pageable;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import javax.print.attribute.standard.MediaSizeName;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The pages of a pattern on their way to a printer. */
class PrintingTest {
    private final Chart chart = Chart.blank(
            "Reed Bank", new SideShape(2, 5, 1), 4, Desk.blank(English.LANGUAGE).yarns());
    private final PaperPrinter paper = new PaperPrinter();
    private final Printers printers = Printers.ofMachine();

    @BeforeEach
    void standIn() {
        printers.printBy(paper::services, (job, choice) -> true);
    }

    @Test
    void whatIsPrintedIsPageForPageWhatWasShown() throws Exception {
        try (Preview preview = preview()) {
            Pageable sheets = preview.forPrinter();
            assertThat(sheets.getNumberOfPages()).isEqualTo(preview.pages());
            for (int i = 0; i < preview.pages(); i++) {
                PageFormat sheet = sheets.getPageFormat(i);
                BufferedImage shown = preview.page(i + 1, (int) sheet.getWidth(), (int) sheet.getHeight());
                BufferedImage printed =
                        new BufferedImage(shown.getWidth(), shown.getHeight(), BufferedImage.TYPE_INT_RGB);
                Graphics2D g = printed.createGraphics();
                g.setColor(Color.WHITE);
                g.fillRect(0, 0, printed.getWidth(), printed.getHeight());
                sheets.getPrintable(i).print(g, sheet, i);
                g.dispose();
                // Lines lie between dots of so coarse a picture, each way of drawing on its own side.
                assertThat(difference(shown, printed)).as("page " + (i + 1)).isLessThan(0.03);
                assertThat(difference(shown, blank(shown)))
                        .as("page " + (i + 1))
                        .isGreaterThan(0.035);
            }
        }
    }

    @Test
    void thePrinterIsGivenEveryPageOnce() throws Exception {
        List<Integer> told = new ArrayList<>();
        try (Preview preview = preview()) {
            Printers.Request request = printers.ask("Reed Bank", preview.forPrinter(), MediaSizeName.ISO_A4)
                    .orElseThrow();
            assertThat(request.print(worker(told, Integer.MAX_VALUE))).isTrue();
            assertThat(paper.pages()).isEqualTo(preview.pages());
            assertThat(told).isSorted().startsWith(0);
        }
    }

    @Test
    void aPrintThatIsStoppedOnItsFirstPageEndsThere() throws Exception {
        List<Integer> told = new ArrayList<>();
        try (Preview preview = preview()) {
            Printers.Request request = printers.ask("Reed Bank", preview.forPrinter(), MediaSizeName.ISO_A4)
                    .orElseThrow();
            assertThat(request.print(worker(told, 1))).isFalse();
            assertThat(told).containsOnly(0);
        }
    }

    private Preview preview() throws Exception {
        return Preview.of(chart, BookletOptions.of(chart, English.LANGUAGE), Progress.NONE)
                .orElseThrow();
    }

    /** Asks to stop when it has been told so often how far it is. */
    private static Jobs.Worker worker(List<Integer> told, int most) {
        AtomicInteger asked = new AtomicInteger();
        return new Jobs.Worker() {
            @Override
            public void progress(int percent) {
                told.add(percent);
            }

            @Override
            public boolean cancelled() {
                return asked.incrementAndGet() >= most;
            }
        };
    }

    private static BufferedImage blank(BufferedImage like) {
        BufferedImage blank = new BufferedImage(like.getWidth(), like.getHeight(), BufferedImage.TYPE_INT_RGB);
        Graphics2D g = blank.createGraphics();
        g.setColor(Color.WHITE);
        g.fillRect(0, 0, blank.getWidth(), blank.getHeight());
        g.dispose();
        return blank;
    }

    /** The share of what could differ at most: 0 where the pictures are one, 1 between black and white. */
    private static double difference(BufferedImage one, BufferedImage other) {
        long sum = 0;
        for (int y = 0; y < one.getHeight(); y++) {
            for (int x = 0; x < one.getWidth(); x++) {
                sum += Math.abs((one.getRGB(x, y) & 0xff) - (other.getRGB(x, y) & 0xff));
            }
        }
        return sum / 255.0 / one.getWidth() / one.getHeight();
    }
}
