package edgewright.draw.picture;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.draw.marks.Drawing;
import edgewright.draw.marks.Mark;
import edgewright.draw.marks.MarkKind;
import edgewright.draw.paint.Area;
import edgewright.draw.paint.Hatch;
import edgewright.draw.raster.RasterPicture;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Areas in one ink keep their tone when they are sampled: no beat of their lines with the dots of a printer shows as bands. */
class HatchToneTest {
    /** Fine enough to sample it at 100, 150 and 300 dots an inch: every 12th, 8th and 4th dot. */
    private static final int FINE_DPI = 1200;

    private static final int[] STEPS = {12, 8, 4};

    /**
     * How much the tone of one part of an area may differ from that of another, of 1 between white and black. Measured: what is
     * printed differs by 0.22 at most, with crossed lines in cells of half a millimetre, which are narrower than a dot of a hundred
     * an inch; in wider cells all hatches stay under 0.17. A hatch that beats with the dots differs by 0.67 or more, which is held
     * by {@link #BEAT}. So the bound is no taste: it lies in the gap between the two.
     */
    private static final double BOUND = 0.25;

    /** How much the tones of a hatch differ at the least that beats with the dots: bands as dark as the hatch and bands of paper. */
    private static final double BEAT = 0.5;

    private static BufferedImage field(Hatch hatch, double cellMm, int tile, int cells) {
        List<Mark> marks = new ArrayList<>();
        for (int row = 0; row < cells; row++) {
            for (int column = 0; column < cells; column++) {
                Area cell = new Area(column * cellMm, row * cellMm, cellMm, cellMm);
                marks.add(Mark.beside(MarkKind.LEGEND, hatch.in(cell, column, row, tile)));
            }
        }
        return RasterPicture.of(new Drawing(cells * cellMm, cells * cellMm, "hatch", "hatch", marks), FINE_DPI);
    }

    /** The tones of all parts, each two tiles wide and at least 4 mm, at all three samplings. */
    private static DoubleSummaryStatistics tones(Hatch hatch, double cellMm, int tile) {
        int tiles = Math.max(2, (int) Math.ceil(4 / (tile * cellMm)));
        BufferedImage fine = field(hatch, cellMm, tile, 3 * tiles * tile);
        int part = fine.getWidth() / 3;
        DoubleSummaryStatistics tones = new DoubleSummaryStatistics();
        for (int step : STEPS) {
            for (int begin = 0; begin < 9; begin++) {
                tones.accept(tone(fine, begin % 3 * part, begin / 3 * part, part, step));
            }
        }
        return tones;
    }

    private static double tone(BufferedImage fine, int left, int top, int part, int step) {
        int dark = 0;
        int all = 0;
        for (int y = step / 2; y < fine.getHeight(); y += step) {
            for (int x = step / 2; x < fine.getWidth(); x += step) {
                if (x >= left && x < left + part && y >= top && y < top + part) {
                    all++;
                    dark += (fine.getRGB(x, y) & 0xff) < 128 ? 1 : 0;
                }
            }
        }
        return dark / (double) all;
    }

    private static int tile(double cellMm) {
        return switch (FabricFill.ofDots(cellMm, FabricFill.PRINT_DPI)) {
            case SMALL -> 4;
            case SHADED -> 2;
            case FLAT, WORKED -> 1;
        };
    }

    @ParameterizedTest
    @EnumSource(Hatch.class)
    void an_area_has_one_tone_at_100_and_150_and_300_dots_an_inch(Hatch hatch) {
        for (double cellMm : new double[] {0.5, 0.6, 0.74, 0.9, 1.1, 1.6, 2.2, 2.4, 3, 5}) {
            DoubleSummaryStatistics tones = tones(hatch, cellMm, tile(cellMm));
            assertThat(tones.getMax() - tones.getMin())
                    .as("cells of %s mm: %s", cellMm, tones)
                    .isLessThan(BOUND);
        }
    }

    /** The cells of covers are so wide; a tile of one cell is what was printed there once. */
    @ParameterizedTest
    @CsvSource({"RISING, 0.5", "FALLING, 0.5", "LEVEL, 0.508"})
    void a_hatch_as_fine_as_the_dots_is_seen_to_beat_with_them(Hatch hatch, double cellMm) {
        DoubleSummaryStatistics tones = tones(hatch, cellMm, 1);
        assertThat(tones.getMax() - tones.getMin()).isGreaterThan(BEAT);
    }

    @Test
    void hatches_are_the_heavier_the_later_they_stand_in_their_order() {
        List<Double> tones = new ArrayList<>();
        for (Hatch hatch : Hatch.values()) {
            tones.add(Math.rint(20 * tones(hatch, 5, 1).getAverage()) / 20);
        }
        assertThat(tones).isSorted().startsWith(0.0).endsWith(0.4, 1.0);
    }
}
