package edgewright.booklet;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.booklet.choice.BookletOptions;
import edgewright.booklet.choice.BookletParts;
import edgewright.booklet.choice.Progress;
import edgewright.chart.Chart;
import edgewright.chart.Yarn;
import edgewright.texts.English;
import java.awt.image.BufferedImage;
import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Pages looked at before they are printed. */
class PreviewTest {
    private static final Chart STEPS = Published.sample("tide-steps");

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
