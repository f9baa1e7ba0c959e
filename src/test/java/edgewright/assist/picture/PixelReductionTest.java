package edgewright.assist.picture;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.assist.picture.PictureReading.Read;
import edgewright.assist.picture.PictureReading.Refused;
import edgewright.assist.picture.PixelReduction.Crop;
import edgewright.chart.Colour;
import edgewright.chart.Yarn;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

class PixelReductionTest {
    private static final int DARK = 0xff201c22;
    private static final int PALE = 0xfff0e4d0;
    private static final int RED = 0xffc03020;
    private static final List<Yarn> YARNS =
            List.of(new Yarn("A", "Peat", Colour.parse("#2b2a33")), new Yarn("B", "Chalk", Colour.parse("#f2ead8")));

    @Test
    void withoutFurtherWordEachPixelIsACellAndTakesTheNearestYarn() {
        assertThat(read(PixelReduction.NONE, pixels(2, DARK, PALE, PALE, DARK, PALE, PALE)))
                .hasToString("AB\nBA\nBB\n");
    }

    @Test
    void whatIsTransparentWantsNoYarn() {
        assertThat(read(PixelReduction.NONE, pixels(3, 0x00ffffff, 0x40000000, 0xc0000000)))
                .hasToString("..A\n");
    }

    @Test
    void squaresOfSeveralPixelsHaveTheMeanOfTheirLight() {
        // Half black and half white is nearer to the white as light mixes: #bcbcbc.
        Pixels half = pixels(2, 0xff000000, 0xffffffff, 0xffffffff, 0xff000000);
        assertThat(read(scaled(1, 1), half)).hasToString("B\n");
    }

    @Test
    void oneNumberIsEnoughSinceSquaresAreSquare() {
        Pixels wide = pixels(6, DARK, DARK, DARK, PALE, PALE, PALE, DARK, DARK, DARK, PALE, PALE, PALE);
        // The middle square lies half on dark and half on pale pixels, which together are nearer to the pale yarn.
        assertThat(read(scaled(3, 0), wide)).hasToString("ABB\n");
        assertThat(read(scaled(0, 2), wide)).hasToString("AAABBB\nAAABBB\n");
    }

    @Test
    void aPartIsCutOutFirst() {
        Pixels pixels = pixels(3, RED, RED, RED, RED, DARK, PALE, RED, PALE, DARK);
        PixelReduction cut = new PixelReduction(
                Optional.of(new Crop(1, 1, 2, 2)), OptionalInt.empty(), OptionalInt.empty(), OptionalDouble.empty());
        assertThat(read(cut, pixels)).hasToString("AB\nBA\n");
        for (Crop outside : List.of(
                new Crop(2, 1, 2, 2),
                new Crop(0, 0, 0, 1),
                new Crop(1, 1, Integer.MAX_VALUE, 1),
                new Crop(-1, 0, 1, 1))) {
            PixelReduction far = new PixelReduction(
                    Optional.of(outside), OptionalInt.empty(), OptionalInt.empty(), OptionalDouble.empty());
            assertThat(far.read(pixels, YARNS)).isEqualTo(new Refused(new PictureFault.CropOutside(3, 3)));
        }
    }

    @Test
    void aColourFarFromEveryYarnWantsNoneIfThereIsALimit() {
        PixelReduction near =
                new PixelReduction(Optional.empty(), OptionalInt.empty(), OptionalInt.empty(), OptionalDouble.of(15));
        assertThat(read(near, pixels(3, DARK, RED, PALE))).hasToString("A.B\n");
    }

    @Test
    void moreThanAChartTakesIsRefused() {
        assertThat(PixelReduction.NONE.read(new Pixels(2_001, 1, new int[2_001]), YARNS))
                .isEqualTo(new Refused(new PictureFault.TooWide(2_001)));
        assertThat(PixelReduction.NONE.read(new Pixels(1, 2_001, new int[2_001]), YARNS))
                .isEqualTo(new Refused(new PictureFault.TooManyRounds(2_001)));
        assertThat(scaled(2_000, 0).read(new Pixels(1, 5, new int[5]), YARNS))
                .isEqualTo(new Refused(new PictureFault.TooManyRounds(10_000)));
    }

    private static PixelReduction scaled(int stitches, int rounds) {
        return new PixelReduction(
                Optional.empty(),
                stitches == 0 ? OptionalInt.empty() : OptionalInt.of(stitches),
                rounds == 0 ? OptionalInt.empty() : OptionalInt.of(rounds),
                OptionalDouble.empty());
    }

    private static Pixels pixels(int width, int... argb) {
        return new Pixels(width, argb.length / width, argb);
    }

    private static WantedPicture read(PixelReduction reduction, Pixels pixels) {
        return ((Read) reduction.read(pixels, YARNS)).picture();
    }
}
