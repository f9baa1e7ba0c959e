package edgewright.draw.paint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import edgewright.chart.Colour;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** How colours are seen without one kind of cones, or as greys. */
class ColourVisionTest {
    /**
     * The matrices at severity 1 as their authors published them, doi:10.1109/TVCG.2009.113; read from
     * http://www.inf.ufrgs.br/~oliveira/pubs_files/CVD_Simulation/CVD_Simulation.html as Debian's python3-colorspacious 1.1.2
     * has them.
     */
    private static final Map<ColourVision, double[][]> PUBLISHED = Map.of(
            ColourVision.PROTAN,
                    new double[][] {
                        {0.152286, 1.052583, -0.204868},
                        {0.114503, 0.786281, 0.099216},
                        {-0.003882, -0.048116, 1.051998}
                    },
            ColourVision.DEUTAN,
                    new double[][] {
                        {0.367322, 0.860646, -0.227968}, {0.280085, 0.672501, 0.047413}, {-0.011820, 0.042940, 0.968881}
                    },
            ColourVision.TRITAN,
                    new double[][] {
                        {1.255528, -0.076749, -0.178779},
                        {-0.078411, 0.930809, 0.147602},
                        {0.004733, 0.691367, 0.303900}
                    });

    private final Random random = new Random(5);

    @Test
    void eachKindOfColourVisionIsThePublishedModelOnLinearLight() {
        PUBLISHED.forEach((vision, matrix) -> {
            for (int i = 0; i < 200; i++) {
                Colour colour = new Colour(random.nextInt(0x1000000));
                Colour seen = vision.seen(colour);
                int[] channels = {seen.red(), seen.green(), seen.blue()};
                for (int row = 0; row < 3; row++) {
                    double light = matrix[row][0] * Colour.linear(colour.red())
                            + matrix[row][1] * Colour.linear(colour.green())
                            + matrix[row][2] * Colour.linear(colour.blue());
                    assertThat(Colour.linear(channels[row]))
                            .as("%s of %s", vision, colour)
                            .isCloseTo(Math.max(0, Math.min(1, light)), within(0.005));
                }
            }
        });
    }

    @Test
    void greysStayAsTheyAreForAllEyes() {
        for (ColourVision vision : ColourVision.values()) {
            for (int grey = 0; grey < 256; grey++) {
                int rgb = grey * 0x010101;
                assertThat(vision.seen(rgb)).as("%s of %06x", vision, rgb).isEqualTo(rgb);
            }
        }
    }

    @Test
    void asGreyAColourKeepsItsLuminance() {
        for (int i = 0; i < 200; i++) {
            Colour colour = new Colour(random.nextInt(0x1000000));
            Colour grey = ColourVision.GREY.seen(colour);
            assertThat(grey.red()).isEqualTo(grey.green()).isEqualTo(grey.blue());
            assertThat(grey.luminance()).isCloseTo(colour.luminance(), within(0.005));
        }
    }

    @Test
    void aPictureIsSeenPixelByPixel() {
        int[] pixels =
                random.ints(500, 0, 40).map(step -> step * 0x05070b & 0xffffff).toArray();
        for (ColourVision vision : ColourVision.values()) {
            int[] seen = pixels.clone();
            vision.see(seen);
            for (int i = 0; i < seen.length; i++) {
                assertThat(seen[i]).isEqualTo(vision.seen(pixels[i]));
            }
        }
        int[] whole = pixels.clone();
        ColourVision.FULL.see(whole);
        assertThat(whole).isEqualTo(pixels);
    }
}
