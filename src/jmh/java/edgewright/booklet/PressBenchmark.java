package edgewright.booklet;

import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2D;
import edgewright.booklet.choice.BookletOptions;
import edgewright.booklet.choice.Edition;
import edgewright.booklet.choice.Progress;
import edgewright.booklet.page.PageItem;
import edgewright.booklet.page.PageLayout;
import edgewright.booklet.press.EmbeddedFonts;
import edgewright.booklet.press.MarkStamps;
import edgewright.booklet.press.PagePrinter;
import edgewright.chart.Chart;
import edgewright.draw.EnglishStyle;
import edgewright.draw.marks.Drawing;
import edgewright.draw.marks.Emphasis;
import edgewright.draw.picture.CornerPicture;
import edgewright.draw.picture.PictureStyle;
import edgewright.draw.raster.RasterSurface;
import edgewright.texts.English;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * The chart of a border of 60 rounds as a file of one page: printed mark by mark, beside painted on a general bridge from the
 * JDK's graphics to PDF. Read the ratio of the two. And the whole pattern of the same border, which should take well under a
 * second.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class PressBenchmark {
    private static final float PT_PER_MM = (float) PageLayout.PT_PER_MM;

    private Chart chart;
    private Drawing drawing;
    private float widthPt;
    private float heightPt;

    @Setup
    public void draw() throws IOException {
        chart = PosterMemory.chart(60);
        PictureStyle style = EnglishStyle.PRINT.withLegend(false).withCellMm(5);
        drawing = CornerPicture.of(chart, style, Emphasis.NONE).drawing();
        widthPt = (float) drawing.widthMm() * PT_PER_MM;
        heightPt = (float) drawing.heightMm() * PT_PER_MM;
        int printed = printMarkByMark().length;
        int painted = paintOnTheBridge().length;
        if (printed * 2 > painted) {
            throw new IllegalStateException(printed + " bytes printed, " + painted + " bytes painted");
        }
    }

    @Benchmark
    public byte[] printMarkByMark() throws IOException {
        PageLayout sheet = new PageLayout(widthPt, heightPt, 0, 0, widthPt, heightPt, 0, 15, 0, false);
        try (PDDocument document = new PDDocument()) {
            PDPage page = new PDPage(new PDRectangle(widthPt, heightPt));
            document.addPage(page);
            EmbeddedFonts fonts = new EmbeddedFonts(document);
            try (PDPageContentStream content =
                    new PDPageContentStream(document, page, PDPageContentStream.AppendMode.OVERWRITE, true)) {
                new PagePrinter(content, sheet, fonts, Edition.STANDARD, new MarkStamps(document), Map.of())
                        .print(new PageItem.Art(0, 0, widthPt, heightPt, () -> drawing, 0, 0, 1));
            }
            return saved(document);
        }
    }

    @Benchmark
    public byte[] paintOnTheBridge() throws IOException {
        try (PDDocument document = new PDDocument()) {
            PDPage page = new PDPage(new PDRectangle(widthPt, heightPt));
            document.addPage(page);
            PdfBoxGraphics2D graphics = new PdfBoxGraphics2D(document, widthPt, heightPt);
            graphics.scale(PT_PER_MM, PT_PER_MM);
            drawing.drawOn(new RasterSurface(graphics));
            graphics.dispose();
            try (PDPageContentStream content =
                    new PDPageContentStream(document, page, PDPageContentStream.AppendMode.OVERWRITE, true)) {
                content.drawForm(graphics.getXFormObject());
            }
            return saved(document);
        }
    }

    @Benchmark
    public byte[] publishTheWholePattern() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        Booklet.publish(chart, BookletOptions.of(chart, English.LANGUAGE), out, Progress.NONE);
        return out.toByteArray();
    }

    private static byte[] saved(PDDocument document) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        document.save(out);
        return out.toByteArray();
    }
}
