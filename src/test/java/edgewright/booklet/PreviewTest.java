package edgewright.booklet;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.booklet.choice.BookletOptions;
import edgewright.booklet.choice.BookletParts;
import edgewright.booklet.choice.Edition;
import edgewright.booklet.choice.Progress;
import edgewright.chart.Chart;
import edgewright.chart.Yarn;
import edgewright.texts.English;
import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.util.HashSet;
import java.util.Set;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.Test;

/** Pages looked at before they are printed. */
class PreviewTest {
    private static final Chart STEPS = Published.sample("tide-steps");
    /** Of 255: an edge that falls on the other side of a sixteenth of a dot. */
    private static final int ROUNDING = 40;
    /** Of all dots of a page with fabric on it. */
    private static final double SEAMS = 0.025;

    @Test
    void thePagesAreThoseThatArePrinted() throws Exception {
        BookletOptions options = BookletOptions.of(STEPS, English.LANGUAGE).withParts(BookletParts.USUAL);
        try (Preview preview = Preview.of(STEPS, options, Progress.NONE).orElseThrow();
                ReadBack read = Published.read(STEPS, options)) {
            assertThat(preview.pages()).isEqualTo(read.document().getNumberOfPages());
            BufferedImage cover = preview.page(1, 420, 600);
            // A4 is 210 by 297 mm, so it is the height that leaves less room.
            assertThat(cover.getHeight()).isBetween(593, 600);
            assertThat(cover.getWidth() / (double) cover.getHeight()).isBetween(0.70, 0.715);
            Set<Integer> colours = new HashSet<>();
            for (int x = 0; x < cover.getWidth(); x++) {
                for (int y = 0; y < cover.getHeight(); y++) {
                    colours.add(cover.getRGB(x, y) & 0xffffff);
                }
            }
            for (Yarn yarn : STEPS.yarns()) {
                assertThat(colours)
                        .contains(Integer.parseInt(yarn.colour().toString().substring(1), 16));
            }
        }
    }

    /** Forms are read once and painted again; whoever does it otherwise must come to the same picture. */
    @Test
    void thePagesLookAsTheLibraryDrawsThem() throws Exception {
        BookletOptions options = BookletOptions.of(STEPS, English.LANGUAGE);
        ByteArrayOutputStream pattern = new ByteArrayOutputStream();
        Booklet.publish(STEPS, options, pattern, Progress.NONE);
        try (Preview preview = Preview.ofPublished(pattern.toByteArray());
                PDDocument document = Loader.loadPDF(pattern.toByteArray())) {
            PDFRenderer library = new PDFRenderer(document);
            for (int page = 1; page <= 3; page++) {
                BufferedImage ours = preview.page(page, 400, Integer.MAX_VALUE);
                BufferedImage theirs = library.renderImage(
                        page - 1, 400 / document.getPage(page - 1).getMediaBox().getWidth(), ImageType.RGB);
                // The library cuts each stitch off at a whole dot, so only what lies on seams may differ.
                assertThat(differing(ours, theirs, ours.getHeight()) / (double) (ours.getWidth() * ours.getHeight()))
                        .as("page " + page)
                        .isLessThan(page == 1 ? SEAMS : 1e-9);
            }
        }
    }

    @Test
    void theFirstPageIsThereBeforeTheOthersAndDiffersInItsFootOnly() throws Exception {
        BookletOptions options = BookletOptions.of(STEPS, English.LANGUAGE);
        try (Preview all = Preview.of(STEPS, options, Progress.NONE).orElseThrow();
                Preview first = Preview.firstOf(STEPS, options, Progress.NONE).orElseThrow()) {
            assertThat(first.pages()).isEqualTo(1);
            BufferedImage alone = first.page(1, 420, Integer.MAX_VALUE);
            // The foot stands 12 mm above the edge of a page of 297 mm.
            int foot = alone.getHeight() * (297 - 17) / 297;
            assertThat(differing(alone, all.page(1, 420, Integer.MAX_VALUE), foot))
                    .isZero();
        }
    }

    @Test
    void inLargePrintTheFirstPageIsNotKnownBeforeTheOthers() throws Exception {
        BookletOptions large = BookletOptions.of(STEPS, English.LANGUAGE).withEdition(Edition.LARGE_PRINT);
        assertThat(Preview.firstOf(STEPS, large, Progress.NONE)).isEmpty();
    }

    /** How many dots above a row differ by more than the rounding of an edge. */
    private static long differing(BufferedImage one, BufferedImage other, int belowRow) {
        assertThat(other.getWidth()).isEqualTo(one.getWidth());
        long differing = 0;
        for (int y = 0; y < belowRow; y++) {
            for (int x = 0; x < one.getWidth(); x++) {
                Color ours = new Color(one.getRGB(x, y));
                Color theirs = new Color(other.getRGB(x, y));
                int most = Math.max(
                        Math.abs(ours.getRed() - theirs.getRed()),
                        Math.max(
                                Math.abs(ours.getGreen() - theirs.getGreen()),
                                Math.abs(ours.getBlue() - theirs.getBlue())));
                differing += most > ROUNDING ? 1 : 0;
            }
        }
        return differing;
    }

    @Test
    void aChartThatCannotBeWorkedIsSeenAsADraft() throws Exception {
        Chart flawed = Published.sample("first-try-unfinished");
        try (Preview preview = Preview.of(flawed, BookletOptions.of(flawed, English.LANGUAGE), Progress.NONE)
                .orElseThrow()) {
            assertThat(preview.pages()).isGreaterThan(3);
        }
    }

    @Test
    void whoeverAsksToStopGetsNoPages() throws Exception {
        assertThat(Preview.of(STEPS, BookletOptions.of(STEPS, English.LANGUAGE), (done, pages) -> done < 2))
                .isEmpty();
    }
}
