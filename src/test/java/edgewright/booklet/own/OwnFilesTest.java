package edgewright.booklet.own;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.OwnMatter;
import edgewright.chart.Photo;
import edgewright.testing.Pictures;
import edgewright.texts.English;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Hostile, broken and missing files: each is read, or refused in one sentence. */
class OwnFilesTest {
    private static final String IMPRINT =
            "{ \"format\": \"edgewright-imprint\", \"version\": 1, \"name\": \"Saltmarsh Studio\"";

    @TempDir
    private Path outside;

    private Path folder;
    private Path chart;
    private byte[] jpeg;
    private byte[] png;

    @BeforeEach
    void makeAFolderWithAChart() throws IOException {
        folder = Files.createDirectory(outside.resolve("charts"));
        chart = folder.resolve("reed-bank.border.json");
        jpeg = Pictures.jpeg(Pictures.shore(64, 48));
        png = Pictures.png(Pictures.shore(64, 48));
    }

    @Test
    void photographsStandWhereTheyAreMeantToStand() throws IOException {
        Files.write(folder.resolve("reed.jpg"), jpeg);
        Files.createDirectory(folder.resolve("more"));
        Files.write(folder.resolve("more/reed.png"), png);
        List<Photo> photos = List.of(
                photo("reed.jpg", Photo.At.COVER),
                photo("more/reed.png", Photo.At.COVER),
                photo("reed.jpg", Photo.At.GALLERY),
                photo("reed.jpg", Photo.At.JOINING));
        PrintedMatter matter = read(OwnMatter.NONE.withPhotos(photos));
        assertThat(matter.photos().stream().map(PrintedPhoto::photo)).containsExactlyElementsOf(photos);
        assertThat(matter.cover().map(PrintedPhoto::photo)).contains(photos.get(0));
        assertThat(matter.gallery().stream().map(PrintedPhoto::photo)).containsExactly(photos.get(1), photos.get(2));
        assertThat(matter.at(Photo.At.JOINING).stream().map(PrintedPhoto::photo))
                .containsExactly(photos.get(3));
    }

    @Test
    void aFileThatIsMissingIsNamed() {
        refuses("heron.jpg", "there is no file 'heron.jpg'; expected one in the folder or below it");
        refuses("no\0ught.jpg", "there is no file 'nought.jpg'; expected one in the folder or below it");
    }

    @Test
    void aFolderIsNoPhotograph() throws IOException {
        Files.createDirectory(folder.resolve("reeds"));
        refuses("reeds", "'reeds' is not an ordinary file; expected a JPEG or PNG");
    }

    @Test
    void aFileOutsideOfTheFolderIsNotLookedAt() throws IOException {
        Files.write(outside.resolve("reed.jpg"), jpeg);
        String sentence = " leads out of the folder; expected a file in the folder or below it";
        refuses("../reed.jpg", "'../reed.jpg'" + sentence);
        refuses("more/../../reed.jpg", "'more/../../reed.jpg'" + sentence);
        Files.write(folder.resolve("reed.jpg"), jpeg);
        String absolute = folder.resolve("reed.jpg").toString();
        refuses(absolute, "'" + absolute + "'" + sentence);
        Files.createSymbolicLink(folder.resolve("link.jpg"), outside.resolve("reed.jpg"));
        refuses("link.jpg", "'link.jpg'" + sentence);
        Files.createSymbolicLink(folder.resolve("way"), outside);
        refuses("way/reed.jpg", "'way/reed.jpg'" + sentence);
    }

    @Test
    void aLinkInsideOfTheFolderIsFollowed() throws IOException {
        Files.write(folder.resolve("reed.jpg"), jpeg);
        Files.createSymbolicLink(folder.resolve("cover.jpg"), Path.of("reed.jpg"));
        assertThat(read(OwnMatter.NONE.withPhotos(List.of(photo("cover.jpg", Photo.At.COVER))))
                        .photos())
                .hasSize(1);
    }

    @Test
    void aFileOfAnotherKindIsNoPhotograph() throws IOException {
        refuses(
                "reed.gif",
                "GIF89a...".getBytes(StandardCharsets.US_ASCII),
                " is neither JPEG nor PNG; expected one of them");
        refuses("empty.jpg", new byte[0], " is neither JPEG nor PNG; expected one of them");
    }

    @Test
    void aPictureThatIsCutOffIsRefusedWhereverItIsCut() throws IOException {
        String sentence = " is cut off, damaged or of a kind that is not read; expected a JPEG or PNG that is whole";
        for (int length = 12; length < jpeg.length; length += 97) {
            refuses("cut.jpg", Arrays.copyOf(jpeg, length), sentence);
        }
        for (int length = 12; length < png.length; length += 97) {
            refuses("cut.png", Arrays.copyOf(png, length), sentence);
        }
        refuses("end.jpg", Arrays.copyOf(jpeg, jpeg.length - 1), sentence);
        refuses("end.png", Arrays.copyOf(png, png.length - 1), sentence);
    }

    @Test
    void aJpegWhoseDataEndEarlyIsRefusedThoughItsEndIsMarked() throws IOException {
        byte[] early = Arrays.copyOf(jpeg, jpeg.length - 300);
        early[early.length - 2] = (byte) 0xff;
        early[early.length - 1] = (byte) 0xd9;
        refuses(
                "early.jpg",
                early,
                " is cut off, damaged or of a kind that is not read; expected a JPEG or PNG that is whole");
    }

    @Test
    void aPngWithAWrongChecksumIsRefused() throws IOException {
        byte[] damaged = png.clone();
        damaged[damaged.length / 2] ^= 1;
        refuses(
                "damaged.png",
                damaged,
                " is cut off, damaged or of a kind that is not read; expected a JPEG or PNG that is whole");
    }

    @Test
    void aPictureThatSaysItIsHugeIsRefusedBeforeThereIsMemoryForIt() throws IOException {
        refuses(
                "huge.png",
                Pictures.pngThatSaysItIs(100_000, 100_000),
                " has 10,000,000,000 pixels; expected 64,000,000 at most");
        byte[] huge = jpeg.clone();
        int frame = indexOf(huge, 0xff, 0xc0);
        Arrays.fill(huge, frame + 5, frame + 9, (byte) 0xff);
        refuses("huge.jpg", huge, " has 4,294,836,225 pixels; expected 64,000,000 at most");
        refuses(
                "none.png",
                Pictures.pngThatSaysItIs(0, 5),
                " is cut off, damaged or of a kind that is not read; expected a JPEG or PNG that is whole");
    }

    @Test
    void aJpegInFourInksIsRefused() throws IOException {
        refuses(
                "inks.jpg",
                Pictures.jpegInFourInks(),
                " is a JPEG in four inks (CMYK); expected one in colours of the screen (RGB) or in greys");
    }

    @Test
    void anImprintIsReadWithItsLogo() throws IOException {
        Files.write(folder.resolve("heron.png"), png);
        imprint(IMPRINT + ", \"logo\": \"heron.png\", \"accent\": \"#767676\" }");
        PrintedImprint imprint = read(OwnMatter.NONE.withImprint(Optional.of("saltmarsh.imprint.json")))
                .imprint()
                .orElseThrow();
        assertThat(imprint.imprint().name()).isEqualTo("Saltmarsh Studio");
        assertThat(imprint.logo()).isPresent();
    }

    /** #767676 on white is 4.54 to 1, #777777 4.48: https://webaim.org/articles/contrast/#sc143 */
    @Test
    void anAccentThatCannotBeReadOnPaperIsRefused() throws IOException {
        imprint(IMPRINT + ", \"accent\": \"#777777\" }");
        assertThat(refusal(OwnMatter.NONE.withImprint(Optional.of("saltmarsh.imprint.json"))))
                .isEqualTo(folder.resolve("saltmarsh.imprint.json")
                        + ", accent: #777777 has a contrast of 4.48 to 1 with white paper; expected 4.50 to 1 or more, so that"
                        + " headings can be read");
    }

    @Test
    void whatIsWrongWithAnImprintIsNamed() throws IOException {
        OwnMatter named = OwnMatter.NONE.withImprint(Optional.of("saltmarsh.imprint.json"));
        assertThat(refusal(named))
                .isEqualTo(chart + ", imprint: there is no file 'saltmarsh.imprint.json'; expected one in the folder or"
                        + " below it");
        assertThat(refusal(OwnMatter.NONE.withImprint(Optional.of("../saltmarsh.imprint.json"))))
                .isEqualTo(
                        chart + ", imprint: '../saltmarsh.imprint.json' leads out of the folder; expected a file in the"
                                + " folder or below it");
        imprint(IMPRINT + ", \"logo\": \"../heron.png\" }");
        assertThat(refusal(named))
                .isEqualTo(folder.resolve("saltmarsh.imprint.json")
                        + ", logo: '../heron.png' leads out of the folder; expected a file in the folder or below it");
        imprint("{}");
        assertThat(refusal(named))
                .isEqualTo(folder.resolve("saltmarsh.imprint.json")
                        + ": this is no imprint; expected an object in braces with the member 'format' and the text"
                        + " 'edgewright-imprint' in it");
    }

    @Test
    void anImprintThatIsAskedForTakesThePlaceOfThatOfTheChart() throws IOException {
        Path other = Files.writeString(outside.resolve("other.imprint.json"), IMPRINT + " }");
        OwnFiles.Result result = OwnFiles.read(
                OwnMatter.NONE.withImprint(Optional.of("missing.imprint.json")), chart, Optional.of(other));
        assertThat(((OwnFiles.Read) result)
                        .matter()
                        .imprint()
                        .orElseThrow()
                        .imprint()
                        .name())
                .isEqualTo("Saltmarsh Studio");
    }

    private void imprint(String text) throws IOException {
        Files.writeString(folder.resolve("saltmarsh.imprint.json"), text);
    }

    private void refuses(String name, byte[] file, String sentence) throws IOException {
        Files.write(folder.resolve(name), file);
        refuses(name, "'" + name + "'" + sentence);
    }

    private void refuses(String name, String sentence) {
        assertThat(refusal(OwnMatter.NONE.withPhotos(List.of(photo(name, Photo.At.GALLERY)))))
                .isEqualTo(chart + ", photos[0].file: " + sentence);
    }

    private String refusal(OwnMatter own) {
        OwnFiles.Result result = OwnFiles.read(own, chart, Optional.empty());
        return result instanceof OwnFiles.Refused refused
                ? new OwnSentences(English.LANGUAGE).of(refused.fault())
                : result.toString();
    }

    private PrintedMatter read(OwnMatter own) {
        return ((OwnFiles.Read) OwnFiles.read(own, chart, Optional.empty())).matter();
    }

    private static Photo photo(String name, Photo.At at) {
        return new Photo(name, "Reeds at low water", "", at);
    }

    private static int indexOf(byte[] bytes, int first, int second) {
        int at = 0;
        while ((bytes[at] & 0xff) != first || (bytes[at + 1] & 0xff) != second) {
            at++;
        }
        return at;
    }
}
