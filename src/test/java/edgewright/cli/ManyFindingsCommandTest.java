package edgewright.cli;

import static edgewright.cli.CommandLineHelper.run;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import edgewright.cli.CommandLineHelper.Ended;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Charts that break the rules thousands of times: what is told of them, and in how much memory. */
class ManyFindingsCommandTest {
    @TempDir
    private Path folder;

    /** Long stitches all over, in yarns by turns; round 1 is back-loop stitches, or long ones too. */
    private Path longs(int rounds, int a, int w, int b, String inRound1) throws IOException {
        String charted = IntStream.rangeClosed(1, rounds)
                .mapToObj(r -> {
                    String stitch = r == 1 ? inRound1 : "l";
                    return "{\"yarn\":\"%s\",\"fromCorner\":\"%s\",\"repeat\":\"%s\",\"toCorner\":\"%s\"}"
                            .formatted(
                                    r % 2 == 0 ? "A" : "B",
                                    stitch.repeat(a + r),
                                    stitch.repeat(w),
                                    stitch.repeat(b + r));
                })
                .collect(Collectors.joining(","));
        return Files.writeString(folder.resolve("deep-marsh.border.json"), """
                {"format": "edgewright-chart", "version": 1, "title": "Deep Marsh",
                 "yarns": [{"id": "A", "name": "Peat", "colour": "#2b2a33"}, {"id": "B", "name": "Chalk", "colour": "#f2ead8"}],
                 "rounds": [%s]}""".formatted(charted));
    }

    @Test
    void checkTellsAThousandFindingsAndTheNumberOfTheRest() throws IOException {
        Ended ended = run("check", longs(5, 0, 800, 0, "b"));
        assertThat(ended.status()).isEqualTo(1);
        assertThat(ended.out().lines().filter(line -> line.matches("  (error|warning) .*")))
                .hasSize(1_000);
        assertThat(ended.out().lines().reduce((one, next) -> next)).contains("  and 3040 more");
    }

    @Test
    void jsonHoldsAThousandFindingsAndTheNumberOfTheRest() throws IOException {
        Ended ended = run("check", "--json", longs(5, 0, 800, 0, "b"));
        JsonNode checked =
                new ObjectMapper().readTree(ended.out()).get("charts").get(0);
        assertThat(checked.get("findings")).hasSize(1_000);
        assertThat(checked.get("more").intValue()).isEqualTo(3_040);
    }

    @Test
    void otherCommandsSayHowManyMoreTheCommandCheckWouldTell() throws IOException {
        Ended ended = run("write", longs(5, 0, 800, 0, "b"));
        assertThat(ended.status()).isEqualTo(1);
        assertThat(ended.err().lines().reduce((one, next) -> next))
                .contains("  and 4030 more; the command check lists the first 1000");
    }

    @Test
    void theLargestChartOfLongStitchesIsCheckedInAQuarterOfAGigabyte() throws Exception {
        Path chart = longs(2_000, 1_940, 2_000, 1_940, "l");
        assertThat(Files.size(chart)).isBetween(15_000_000L, 16L << 20);
        Path said = folder.resolve("said.txt");
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Xmx256m",
                        "-Djava.awt.headless=true",
                        "-classpath",
                        System.getProperty("java.class.path"),
                        "edgewright.Main",
                        "check",
                        chart.toString())
                .redirectErrorStream(true)
                .redirectOutput(said.toFile())
                .start();
        int status = process.waitFor();
        String text = Files.readString(said, StandardCharsets.UTF_8);
        assertThat(text).contains("2000 rounds").doesNotContain("memory");
        assertThat(status).isEqualTo(1);
    }
}
