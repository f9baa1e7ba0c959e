package edgewright.booklet.own;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.testing.Pictures;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PhotographTest {
    private static final int RED = 0xff0000;
    private static final int GREEN = 0x00ff00;
    private static final int BLUE = 0x0000ff;
    private static final int WHITE = 0xffffff;

    @TempDir
    private Path folder;

    /**
     * The first row and the first column of the stored picture belong where the standard says: CIPA DC-008-2012, 4.6.4 A,
     * Orientation. Copied here in its words, so that nothing is computed as the program does.
     */
    @ParameterizedTest
    @CsvSource({
        "1, top, left",
        "2, top, right",
        "3, bottom, right",
        "4, bottom, left",
        "5, left, top",
        "6, right, top",
        "7, right, bottom",
        "8, left, bottom"
    })
    void aPictureStandsAsTheCameraWasHeld(int orientation, String row0, String column0) throws Exception {
        // Red where the first row and the first column meet, green along the first row, blue along the first column.
        BufferedImage stored = new BufferedImage(3, 2, BufferedImage.TYPE_INT_RGB);
        int[] colours = {RED, GREEN, GREEN, BLUE, WHITE, WHITE};
        stored.setRGB(0, 0, 3, 2, colours, 0, 3);
        byte[] png = Pictures.withChunk(Pictures.png(stored), "eXIf", Pictures.exif(orientation));
        BufferedImage shown = shown(read("reed.png", png));
        boolean across = row0.equals("top") || row0.equals("bottom");
        assertThat(List.of(shown.getWidth(), shown.getHeight())).isEqualTo(across ? List.of(3, 2) : List.of(2, 3));
        int right = shown.getWidth() - 1;
        int foot = shown.getHeight() - 1;
        Map<String, Integer> x = Map.of("left", 0, "right", right);
        Map<String, Integer> y = Map.of("top", 0, "bottom", foot);
        String vertical = across ? row0 : column0;
        String horizontal = across ? column0 : row0;
        int redX = x.get(horizontal);
        int redY = y.get(vertical);
        assertThat(rgb(shown, redX, redY)).isEqualTo(RED);
        // Along the first row it is green up to its other end, along the first column blue.
        assertThat(rgb(shown, across ? right - redX : redX, across ? redY : foot - redY))
                .isEqualTo(GREEN);
        assertThat(rgb(shown, across ? redX : right - redX, across ? foot - redY : redY))
                .isEqualTo(BLUE);
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 9, 77, -1})
    void anOrientationThatMakesNoSenseIsNone(int orientation) throws Exception {
        byte[] jpeg = Pictures.withPrivateMatter(Pictures.jpeg(Pictures.shore(40, 20)), orientation);
        assertThat(read("reed.jpg", jpeg).aspect()).isEqualTo(2.0);
    }

    @Test
    void aPictureOnItsSideIsTurnedAndNothingPrivateOfItIsKept() throws Exception {
        byte[] jpeg = Pictures.withPrivateMatter(Pictures.jpeg(Pictures.shore(400, 200)), 6);
        assertThat(latin(jpeg)).contains("SECRET-CAMERA", "SECRET-PERSON", "Exif");
        Photograph photograph = read("reed.jpg", jpeg);
        EncodedPicture printed = photograph.printed(50, false);
        assertThat(List.of(printed.mediaType(), printed.width(), printed.height()))
                .isEqualTo(List.of("image/jpeg", 200, 400));
        assertThat(latin(printed.bytes())).doesNotContain("SECRET", "Exif", "xmp", "ICC_PROFILE");
    }

    @Test
    void noMorePixelsArePrintedThanThreeHundredAnInch() throws Exception {
        Photograph photograph = read("reed.jpg", Pictures.jpeg(Pictures.shore(3000, 1500)));
        EncodedPicture printed = photograph.printed(50.8, false);
        assertThat(List.of(printed.width(), printed.height())).isEqualTo(List.of(600, 300));
        EncodedPicture widest = photograph.printed(1000, false);
        assertThat(List.of(widest.width(), widest.height())).isEqualTo(List.of(2125, 1063));
    }

    @Test
    void aSmallPictureIsNotBlownUp() throws Exception {
        EncodedPicture printed =
                read("reed.jpg", Pictures.jpeg(Pictures.shore(60, 30))).printed(170, false);
        assertThat(List.of(printed.width(), printed.height())).isEqualTo(List.of(60, 30));
    }

    /** Half black and half white light is sRGB 188: IEC 61966-2-1, by hand: 1.055 * 0.5 ^ (1 / 2.4) - 0.055 = 0.735. */
    @Test
    void stripesKeepTheirLightWhenTheyAreMadeSmaller() throws Exception {
        BufferedImage stripes = new BufferedImage(20, 20, BufferedImage.TYPE_INT_RGB);
        for (int i = 0; i < 400; i++) {
            stripes.setRGB(i % 20, i / 20, i % 2 == 0 ? 0 : WHITE);
        }
        EncodedPicture half = read("stripes.png", Pictures.png(stripes)).inPixels(10, false);
        assertThat(rgb(ImageIO.read(new ByteArrayInputStream(half.bytes())), 5, 5))
                .isEqualTo(0xbcbcbc);
    }

    @Test
    void inOneInkAPictureIsGrey() throws Exception {
        BufferedImage green = new BufferedImage(8, 8, BufferedImage.TYPE_INT_RGB);
        green.setRGB(0, 0, 8, 8, new int[8], 0, 0);
        for (int i = 0; i < 64; i++) {
            green.setRGB(i % 8, i / 8, GREEN);
        }
        EncodedPicture printed = read("green.png", Pictures.png(green)).inPixels(8, true);
        BufferedImage grey = ImageIO.read(new ByteArrayInputStream(printed.bytes()));
        // By hand: 1.055 * 0.7152 ^ (1 / 2.4) - 0.055 = 0.862, times 255.
        assertThat(List.of(grey.getRaster().getNumBands(), grey.getRaster().getSample(3, 3, 0)))
                .isEqualTo(List.of(1, 220));
    }

    @Test
    void coloursOfAnotherProfileBecomeThoseOfTheScreen() throws Exception {
        BufferedImage brown = new BufferedImage(16, 16, BufferedImage.TYPE_INT_RGB);
        for (int i = 0; i < 256; i++) {
            brown.setRGB(i % 16, i / 16, 0x808080);
        }
        // Half of the light, as above.
        assertThat(near(
                        rgb(shown(read("brown.png", Pictures.pngWithLinearProfile(Pictures.png(brown)))), 8, 8),
                        0xbcbcbc))
                .isTrue();
        assertThat(near(
                        rgb(shown(read("brown.jpg", Pictures.withLinearProfile(Pictures.jpeg(brown)))), 8, 8),
                        0xbcbcbc))
                .isTrue();
        assertThat(near(rgb(shown(read("plain.jpg", Pictures.jpeg(brown))), 8, 8), 0x808080))
                .isTrue();
    }

    @Test
    void greysAndDeepColoursAndGlassAreReadAsTheyLook() throws Exception {
        BufferedImage grey = new BufferedImage(8, 8, BufferedImage.TYPE_BYTE_GRAY);
        for (int i = 0; i < 64; i++) {
            grey.getRaster().setSample(i % 8, i / 8, 0, 128);
        }
        assertThat(rgb(shown(read("grey.png", Pictures.png(grey))), 3, 3)).isEqualTo(0x808080);
        assertThat(near(rgb(shown(read("grey.jpg", Pictures.jpeg(grey))), 3, 3), 0x808080))
                .isTrue();
        BufferedImage deepGrey = new BufferedImage(8, 8, BufferedImage.TYPE_USHORT_GRAY);
        for (int i = 0; i < 64; i++) {
            deepGrey.getRaster().setSample(i % 8, i / 8, 0, 0x8080);
        }
        assertThat(rgb(shown(read("deep-grey.png", Pictures.png(deepGrey))), 3, 3))
                .isEqualTo(0x808080);
        assertThat(rgb(shown(read("deep.png", Pictures.png(Pictures.deep(0xffff, 0x8080, 0)))), 3, 3))
                .isEqualTo(0xff8000);
        BufferedImage glass = new BufferedImage(8, 8, BufferedImage.TYPE_INT_ARGB);
        for (int i = 0; i < 64; i++) {
            glass.setRGB(i % 8, i / 8, 0x80ff0000);
        }
        assertThat(rgb(shown(read("glass.png", Pictures.png(glass))), 3, 3)).isEqualTo(0xff7f7f);
    }

    @Test
    void ofAnAnimationTheStillPictureIsRead() throws Exception {
        byte[] png =
                Pictures.withChunk(Pictures.png(Pictures.shore(12, 6)), "acTL", new byte[] {0, 0, 0, 2, 0, 0, 0, 0});
        assertThat(read("tide.png", png).aspect()).isEqualTo(2.0);
    }

    @Test
    void aPictureThatIsLargerThanNeededIsThinnedOutWhileItIsRead() throws Exception {
        Photograph photograph =
                read("large.png", Pictures.png(new BufferedImage(8000, 4000, BufferedImage.TYPE_BYTE_BINARY)));
        assertThat(photograph.aspect()).isBetween(1.99, 2.01);
    }

    private Photograph read(String name, byte[] file) throws IOException, UnprintableException {
        Files.write(folder.resolve(name), file);
        return Photograph.read(folder, name);
    }

    private static BufferedImage shown(Photograph photograph) throws IOException {
        return ImageIO.read(
                new ByteArrayInputStream(photograph.inPixels(10_000, false).bytes()));
    }

    /** As it stands in the file: the library takes greys for linear ones. */
    private static int rgb(BufferedImage image, int x, int y) {
        return image.getRaster().getNumBands() == 1 && image.getColorModel().getPixelSize() == 8
                ? image.getRaster().getSample(x, y, 0) * 0x010101
                : image.getRGB(x, y) & WHITE;
    }

    private static boolean near(int one, int two) {
        return List.of(16, 8, 0).stream()
                .allMatch(shift -> Math.abs(((one >> shift) & 255) - ((two >> shift) & 255)) <= 2);
    }

    private static String latin(byte[] bytes) {
        return new String(bytes, StandardCharsets.ISO_8859_1);
    }
}
