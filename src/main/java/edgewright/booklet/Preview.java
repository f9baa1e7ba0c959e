package edgewright.booklet;

import edgewright.booklet.choice.BookletOptions;
import edgewright.booklet.choice.BookletPart;
import edgewright.booklet.choice.BookletParts;
import edgewright.booklet.choice.Edition;
import edgewright.booklet.choice.Progress;
import edgewright.chart.Chart;
import java.awt.image.BufferedImage;
import java.awt.print.Pageable;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.printing.PDFPageable;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;

/**
 * The pages of a pattern as they will be printed, to be looked at before they are: the very file, drawn. Draws one page at a
 * time, for whichever thread asks; a page of a large chart takes a noticeable while.
 */
public final class Preview implements AutoCloseable {
    private static final float POINTS_PER_INCH = 72;

    private final PDDocument document;
    private final PDFRenderer renderer;

    private Preview(PDDocument document) {
        this.document = document;
        this.renderer = new PreviewRenderer(document);
    }

    /**
     * Sets the pages of a chart; of one that cannot be worked those of a draft.
     *
     * @return empty if the caller asked to stop
     * @throws IOException if the pages cannot be read back
     */
    public static Optional<Preview> of(Chart chart, BookletOptions options, Progress progress) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        PublishOutcome outcome = Booklet.publish(chart, options.withDraft(true), bytes, progress);
        return outcome instanceof PublishOutcome.Published
                ? Optional.of(ofPublished(bytes.toByteArray()))
                : Optional.empty();
    }

    /**
     * The first page alone, which is there long before the others: its foot counts one page, all else on it is as it will be.
     *
     * @return empty if the caller asked to stop, or if the first page is not known before the others: without a cover, or in
     *     large print, where what follows begins under it
     * @throws IOException if the page cannot be read back
     */
    public static Optional<Preview> firstOf(Chart chart, BookletOptions options, Progress progress) throws IOException {
        List<BookletPart> order = options.inOrder();
        if (options.edition() == Edition.LARGE_PRINT || order.get(0) != BookletPart.COVER) {
            return Optional.empty();
        }
        List<BookletPart> first = order.stream()
                .takeWhile(part -> part == BookletPart.COVER || part == BookletPart.INTRODUCTION)
                .toList();
        return of(chart, options.withParts(new BookletParts(first, false)), progress);
    }

    /**
     * The pages of a pattern that has been published.
     *
     * @throws IOException if they cannot be read back
     */
    public static Preview ofPublished(byte[] pattern) throws IOException {
        return new Preview(Loader.loadPDF(pattern));
    }

    /** How many there are, one or more. */
    public int pages() {
        return document.getNumberOfPages();
    }

    /**
     * One page, as large as fits in so many pixels.
     *
     * @param number from 1 to {@link #pages}
     */
    public synchronized BufferedImage page(int number, int widthPx, int heightPx) throws IOException {
        var box = document.getPage(number - 1).getMediaBox();
        float scale = Math.min(widthPx / box.getWidth(), heightPx / box.getHeight());
        return renderer.renderImageWithDPI(number - 1, scale * POINTS_PER_INCH, ImageType.RGB);
    }

    /** The pages for a printer, each on a sheet of its own size and drawn at that size. */
    public Pageable forPrinter() {
        return new PDFPageable(document);
    }

    /** Whether it was put away; there are no pages then. */
    public boolean isClosed() {
        return document.getDocument().isClosed();
    }

    @Override
    public synchronized void close() {
        try {
            document.close();
        } catch (IOException ignored) {
            // It was only in memory.
        }
    }
}
