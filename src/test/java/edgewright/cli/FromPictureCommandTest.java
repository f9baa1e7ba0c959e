package edgewright.cli;

import static edgewright.cli.CommandLineHelper.run;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import edgewright.chart.Chart;
import edgewright.chart.Round;
import edgewright.chart.Yarn;
import edgewright.check.Checker;
import edgewright.cli.CommandLineHelper.Ended;
import edgewright.file.ChartFiles;
import edgewright.file.ReadResult;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FromPictureCommandTest {
    private static final String POSTS = """
            ABA
            BBA
            BBA
            AAA
            """;

    @TempDir
    Path folder;

    private Path picture;
    private Path to;

    @BeforeEach
    void givePicture() throws IOException {
        picture = Files.writeString(folder.resolve("posts.txt"), POSTS);
        to = folder.resolve("out.border.json");
    }

    @Test
    void aPictureInLettersBecomesAChartAndItsMissesAreNamed() {
        assertThat(run("from-picture", picture, "--to", to)).isEqualTo(new Ended(0, """
                wrote %s: 4 rounds, a repeat of 3 stitches; 2 squares show another yarn than is wanted
                Round 4, stitch 1 of the repeat: wanted A, shows B.
                Round 4, stitch 3 of the repeat: wanted A, shows B.
                No chart with these yarns shows it with fewer.
                """.formatted(to), ""));
    }

    @Test
    void theChartIsPlainAtItsCornersAndCanBeWorked() {
        run("from-picture", picture, "--to", to);
        Chart chart = chart();
        assertThat(chart.title()).isEqualTo("posts");
        assertThat(chart.rounds())
                .isEqualTo(List.of(
                        Round.of("A", "b", "bbb", "b"),
                        Round.of("B", "bb", "bbb", "bb"),
                        Round.of("A", "bbb", "bbl", "bbb"),
                        Round.of("B", "bbbb", "llb", "bbbb")));
        assertThat(Checker.check(chart).findings()).isEmpty();
    }

    @Test
    void anotherProgramIsToldTheSame() throws IOException {
        Ended ended = run("from-picture", picture, "--to", to, "--yarns", "A,B,B,A", "--json");
        assertThat(ended.status()).isZero();
        JsonNode answer = new ObjectMapper().readTree(ended.out());
        assertThat(answer).isEqualTo(new ObjectMapper().readTree("""
                {"rounds":4,"repeat":3,"misses":2,"missed":[
                  {"round":2,"place":3,"wanted":"A","shows":"B"},
                  {"round":4,"place":2,"wanted":"B","shows":"A"}]}"""));
    }

    @Test
    void theBestOrderOfTheYarnsIsFound() {
        assertThat(run("from-picture", picture, "--to", to, "--yarns", "find").out())
                .startsWith("wrote " + to + ": 4 rounds, a repeat of 3 stitches; 1 square shows")
                .contains("The yarns from round 1 on: A, A, B, A.\n");
    }

    @Test
    void yarnsGoOnFromTheFirstOnlyWhereThatIsSaid() {
        assertThat(run("from-picture", picture, "--to", to, "--yarns", "A,B,B,..."))
                .extracting(Ended::status)
                .isEqualTo(0);
        assertThat(chart().rounds().stream().map(Round::yarn)).containsExactly("A", "B", "B", "A");
        assertRefused(
                "--yarns: found 3 yarns for 4 rounds; expected one for each, or ',...' after the last to go on from the"
                        + " first",
                picture,
                "--yarns",
                "A,B,B");
        assertRefused(
                "--yarns: found 'A,,B', expected ids of yarns with commas between them, or find",
                picture,
                "--yarns",
                "A,,B");
    }

    @Test
    void yarnsRulesAndCornerComeFromTheChartThatItIsToBeLike() throws IOException {
        Path like = Charts.sound(folder);
        Chart model = ((ReadResult.Read) ChartFiles.read(like)).chart();
        assertThat(run("from-picture", picture, "--to", to, "--like", like, "--stack")
                        .status())
                .isZero();
        assertThat(chart().yarns()).isEqualTo(model.yarns());
        assertThat(chart().corner()).isEqualTo(model.corner());
        assertThat(chart().designer()).isEqualTo(model.designer());
        assertThat(chart().rules()).isEqualTo(model.rules().withStackLongStitches(true));
        assertRefused(
                "--yarns: found 'Q', which is no yarn of " + like + "; expected "
                        + String.join(
                                " or ", model.yarns().stream().map(Yarn::id).toList()),
                picture,
                "--like",
                like,
                "--yarns",
                "Q,A,B,A");
    }

    @Test
    void aPictureCanBeginAtItsRightAndHaveWiderCorners() throws IOException {
        Path left = Files.writeString(folder.resolve("step.txt"), "AAA\nABB\nAAA\n");
        run("from-picture", left, "--to", to, "--first", "right", "--from-corner", "2", "--to-corner", "1");
        assertThat(chart().rounds().get(2)).isEqualTo(Round.of("A", "bbbbb", "bbl", "bbbb"));
    }

    @Test
    void aPictureInPixelsTakesTheNearestYarns() throws IOException {
        Path png = png("AB", "BB", "AA");
        assertThat(run("from-picture", png, "--to", to).out()).startsWith("wrote " + to + ": 3 rounds, a repeat of 2");
        Path letters = Files.writeString(folder.resolve("picture.txt"), "AB\nBB\nAA\n");
        List<Round> ofPixels = chart().rounds();
        run("from-picture", letters, "--to", to);
        assertThat(chart().rounds()).isEqualTo(ofPixels);
    }

    @Test
    void optionsForPixelsAreRefusedForLetters() {
        for (List<String> option : List.of(
                List.of("--crop", "0,0,1,1"),
                List.of("--stitches", "3"),
                List.of("--rounds", "3"),
                List.of("--threshold", "3"))) {
            assertThat(run("from-picture", picture, "--to", to, option.get(0), option.get(1))
                            .err())
                    .startsWith(option.get(0) + ": found for '" + picture
                            + "', which has letters and no pixels; expected it with a PNG");
        }
    }

    @Test
    void whatIsNoPictureIsRefusedInOneSentenceAndNothingIsWritten() throws IOException {
        assertRefused(write("long.txt", "A\n".repeat(2_001)), "found 2001 rounds; expected 2000 at most for a chart");
        assertRefused(
                write("wide.txt", "A".repeat(2_001)),
                "found 2001 stitches in a round; expected 2000 at most for a repeat");
        assertRefused(
                write("empty.txt", "\n"),
                "found no square; expected a line for each round, with a letter for each stitch");
        assertRefused(
                write("typo.txt", "AB\nAC\n"),
                "line 2, column 2: found 'C', which is no yarn here; expected 'A', 'B' or '.'");
        assertRefused(
                write("ragged.txt", "AB\nA\n"),
                "line 2: found 1 letter; expected 2, as in the first round of the file");
        assertRefused(
                Files.write(folder.resolve("x.jpg"), new byte[] {(byte) 0xff, (byte) 0xd8, 0}),
                "this is neither text in UTF-8 nor a PNG; expected a picture of one repeat");
        assertRefused(folder.resolve("none.txt"), "there is no such file; expected one to read");
        Path whole = png("AB", "BB");
        assertRefused(
                Files.write(folder.resolve("cut.png"), Arrays.copyOf(Files.readAllBytes(whole), 50)),
                "this begins as a PNG, and cannot be read as one; expected a whole PNG");
    }

    @Test
    void aPictureOfAHundredMillionPixelsIsRefusedBeforeItTakesMemory() throws IOException {
        assertRefused(
                Files.write(folder.resolve("huge.png"), header(10_000, 10_000)),
                "found 100,000,000 pixels; expected 16,000,000 at most");
        assertRefused(
                Files.write(folder.resolve("huger.png"), header(Integer.MAX_VALUE, Integer.MAX_VALUE)),
                "found 4,611,686,014,132,420,609 pixels; expected 16,000,000 at most");
        assertRefused(
                "%s: found a part that does not lie in the picture; expected one within 2 by 2 pixels"
                        .formatted(png("AB", "BB")),
                folder.resolve("picture.png"),
                "--crop",
                "1,1,2,1");
    }

    @Test
    void theAnswerIsNeverWrittenOverWhatItIsMadeOf() throws IOException {
        Path like = Charts.sound(folder);
        String before = Files.readString(like);
        assertThat(run("from-picture", picture, "--to", like, "--like", like))
                .isEqualTo(new Ended(
                        2, "", like + ": this file is read for the answer; expected another file to write\n"));
        assertThat(Files.readString(like)).isEqualTo(before);
        assertThat(run("from-picture", picture, "--to", folder.resolve("x.txt")).err())
                .isEqualTo(folder.resolve("x.txt") + ": expected a file whose name ends in .border.json\n");
    }

    private Path write(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text);
    }

    private void assertRefused(Path file, String why) throws IOException {
        assertRefused(file + ": " + why, file);
    }

    private void assertRefused(String line, Object... arguments) {
        Object[] all = Stream.concat(
                        Stream.of("from-picture"),
                        Stream.concat(Arrays.stream(arguments), Stream.of("--to", folder.resolve("no.border.json"))))
                .toArray();
        assertThat(run(all)).isEqualTo(new Ended(2, "", line + "\n"));
        assertThat(folder.resolve("no.border.json")).doesNotExist();
    }

    private Chart chart() {
        return ((ReadResult.Read) ChartFiles.read(to)).chart();
    }

    private Path png(String... rows) throws IOException {
        BufferedImage image = new BufferedImage(rows[0].length(), rows.length, BufferedImage.TYPE_INT_RGB);
        for (int y = 0; y < rows.length; y++) {
            for (int x = 0; x < rows[y].length(); x++) {
                image.setRGB(x, y, rows[y].charAt(x) == 'A' ? 0x303030 : 0xeeeeee);
            }
        }
        Path file = folder.resolve("picture.png");
        ImageIO.write(image, "png", file.toFile());
        return file;
    }

    /** A PNG of that size of which there is nothing but the beginning. */
    private static byte[] header(int width, int height) throws IOException {
        ByteArrayOutputStream chunk = new ByteArrayOutputStream();
        DataOutputStream data = new DataOutputStream(chunk);
        data.write("IHDR".getBytes(StandardCharsets.US_ASCII));
        data.writeInt(width);
        data.writeInt(height);
        data.write(new byte[] {8, 2, 0, 0, 0});
        CRC32 sum = new CRC32();
        sum.update(chunk.toByteArray());
        ByteArrayOutputStream file = new ByteArrayOutputStream();
        DataOutputStream all = new DataOutputStream(file);
        all.write(new byte[] {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n'});
        all.writeInt(13);
        all.write(chunk.toByteArray());
        all.writeInt((int) sum.getValue());
        return file.toByteArray();
    }
}
