package edgewright.cli;

import static edgewright.cli.CommandLineHelper.run;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import edgewright.chart.Chart;
import edgewright.chart.Colour;
import edgewright.chart.SideShape;
import edgewright.chart.Yarn;
import edgewright.check.Checker;
import edgewright.cli.CommandLineHelper.Ended;
import edgewright.file.ChartFiles;
import edgewright.file.FileProblemException;
import edgewright.file.ReadResult;
import edgewright.testing.SampleFiles;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SurroundCommandTest {
    private static final List<Yarn> YARNS =
            List.of(new Yarn("A", "Peat", Colour.parse("#2b2a33")), new Yarn("B", "Chalk", Colour.parse("#f2ead8")));

    @TempDir
    Path folder;

    @Test
    void bothBordersAreOneChart() throws IOException {
        Path inner = blank("inner", new SideShape(1, 6, 2), 3, YARNS);
        Path outer = blank(
                "outer",
                new SideShape(0, 4, 1),
                2,
                List.of(YARNS.get(0), YARNS.get(1).withName("Fog")));
        Path to = folder.resolve("both.border.json");
        assertThat(run("surround", inner, outer, "--to", to)).isEqualTo(new Ended(0, """
                wrote %s: 5 rounds, a repeat of 12 stitches; sides of a multiple of 12 plus 3 in the base round
                Both come out even: no plain round between them.
                Of the outer border, yarn B is now C.
                """.formatted(to), ""));
        assertThat(chart(to).title()).isEqualTo("inner with outer round it");
        assertThat(run("surround", inner, outer, "--to", to, "--json")).satisfies(ended -> {
            assertThat(ended.status()).isZero();
            assertThat(new ObjectMapper().readTree(ended.out())).isEqualTo(new ObjectMapper().readTree("""
                    {"closes":true,"rounds":5,"repeat":12,"base":{"multiple":12,"plus":3},"between":0}"""));
        });
    }

    @Test
    void plainRoundsBetweenAreSaidWithTheirYarn() throws IOException {
        Path inner = blank("inner", new SideShape(0, 4, 0), 3, YARNS);
        Path outer = blank("outer", new SideShape(0, 4, 0), 2, YARNS);
        assertThat(run("surround", inner, outer, "--to", folder.resolve("both.border.json"))
                        .out())
                .endsWith("Both come out even: 1 plain round between them, of back-loop stitches in Peat.\n");
    }

    @Test
    void whereNoNumberOfPlainRoundsDoesTheAnswerIsNoAndNothingIsWritten() throws IOException {
        Path inner = blank("inner", new SideShape(1, 4, 0), 3, YARNS);
        Path outer = blank("outer", new SideShape(0, 4, 0), 2, YARNS);
        Path to = folder.resolve("both.border.json");
        Ended ended = run("surround", inner, outer, "--to", to);
        assertThat(ended.status()).isEqualTo(1);
        assertThat(ended.out())
                .startsWith("No number of plain rounds lets both come out even: the inner border needs an odd number of"
                        + " stitches on a side and the outer an even one, both repeats are multiples of 4, and each round"
                        + " adds 2. Where the repeat begins does not matter.\nIt is possible if the ")
                .contains("It is possible if the outer border has 1 instead of 0 stitches from the corner in its base"
                        + " round; then with 1 plain round between them.\n");
        assertThat(to).doesNotExist();
        Ended json = run("surround", inner, outer, "--to", to, "--json");
        assertThat(json.status()).isEqualTo(1);
        assertThat(new ObjectMapper().readTree(json.out()).get("closes").asBoolean())
                .isFalse();
        assertThat(new ObjectMapper()
                        .readTree(json.out())
                        .at("/changes/0/chart")
                        .asText())
                .isIn("inner", "outer");
    }

    @Test
    void anyTwoSamplesGoRoundEachOtherOrItIsSaidWhyNot() throws IOException {
        List<Path> samples = SampleFiles.sound();
        List<Integer> statuses = new ArrayList<>();
        Path to = folder.resolve("both.border.json");
        for (Path inner : samples) {
            for (Path outer : samples) {
                Files.deleteIfExists(to);
                Ended ended = run("surround", inner, outer, "--to", to);
                statuses.add(ended.status());
                assertThat(Files.exists(to)).isEqualTo(ended.status() == 0);
                if (ended.status() == 0) {
                    assertThat(Checker.check(chart(to)).errors()).isEmpty();
                }
            }
        }
        assertThat(statuses).contains(0).doesNotContain(2).hasSize(samples.size() * samples.size());
    }

    @Test
    void aBorderWithErrorsIsAnsweredWithItsFindings() throws IOException {
        Path unworkable = Charts.unworkable(folder);
        Path to = folder.resolve("both.border.json");
        Ended ended = run("surround", Charts.sound(folder), unworkable, "--to", to);
        assertThat(ended.status()).isEqualTo(1);
        assertThat(ended.out()).isEmpty();
        assertThat(ended.err()).startsWith(unworkable + ": ").contains("no-round-below");
        assertThat(to).doesNotExist();
    }

    @Test
    void twoBordersThatAreTooLargeTogetherAreBadInput() throws IOException {
        Path inner = blank("inner", new SideShape(0, 1_999, 0), 1, YARNS);
        Path outer = blank("outer", new SideShape(0, 2, 0), 1, YARNS);
        assertThat(run("surround", inner, outer, "--to", folder.resolve("both.border.json")))
                .isEqualTo(new Ended(
                        2,
                        "",
                        outer + ": one repeat of both borders would have 3998 stitches; expected 2000 at most for a"
                                + " chart\n"));
    }

    private Path blank(String title, SideShape shape, int rounds, List<Yarn> yarns) throws FileProblemException {
        Path file = folder.resolve(title + ChartFiles.ENDING);
        ChartFiles.write(file, Chart.blank(title, shape, rounds, yarns));
        return file;
    }

    private static Chart chart(Path file) {
        return ((ReadResult.Read) ChartFiles.read(file)).chart();
    }
}
