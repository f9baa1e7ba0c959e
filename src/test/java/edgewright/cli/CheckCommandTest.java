package edgewright.cli;

import static edgewright.cli.CommandLineHelper.run;
import static edgewright.cli.CommandLineHelper.runOnAScreen;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import edgewright.cli.CommandLineHelper.Ended;
import edgewright.file.BrokenCharts;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class CheckCommandTest {
    private static final JsonMapper JSON = JsonMapper.builder()
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .build();

    @TempDir
    private Path folder;

    @Test
    void aChartThatCanBeWorkedIsPassed() throws IOException {
        Path chart = Charts.sound(folder);
        assertThat(run("check", chart))
                .isEqualTo(new Ended(
                        0, chart + ": 'Lantern Posts', 2 rounds: no errors, no warnings; 1 long stitch judged.\n", ""));
    }

    @Test
    void aChartThatCannotBeWorkedIsToldOfWithPlacesReasonsAndRemedies() throws IOException {
        Path chart = Charts.unworkable(folder);
        Ended ended = run("check", chart);
        assertThat(ended.status()).isEqualTo(1);
        assertThat(ended.err()).isEmpty();
        assertThat(ended.out()).isEqualTo(chart + """
                        : 'Lantern Posts', 2 rounds: 2 errors, no warnings; 2 long stitches judged.
                          error  Round 1, repeat, stitch 3: A long stitch drops two rounds down, and under round 1 there \
                        is only the base round: the hook has no loop to reach for. [no-round-below]
                              try: Take the long stitch out and work a back-loop stitch (no square changes colour)
                              or:  Move the long stitch to round 2, in the same fabric column (1 square changes colour)
                          error  Round 2, from the corner, stitch 1: A long stitch cannot be the first stitch of a side: it \
                        stands on a corner chain, and under that chain there is nothing of this side for the hook to reach. \
                        [past-corner]
                              try: Take the long stitch out and work a back-loop stitch (no square changes colour)
                        """);
    }

    @Test
    void aChartWithWarningsAloneCanBeWorked() throws IOException {
        String text = BrokenCharts.sound().replace("#f2ead8", "#2b2a34");
        Ended ended = run("check", Files.writeString(folder.resolve("dark.border.json"), text));
        assertThat(ended.status()).isZero();
        assertThat(ended.out()).contains("no errors, 1 warning; ").contains("  warning  Round 2: ");
    }

    @Test
    void aRaggedChartIsReadAndToldOf() throws IOException {
        Ended ended = run("check", Charts.ragged(folder));
        assertThat(ended.status()).isEqualTo(1);
        assertThat(ended.out())
                .contains("1 error; no stitch can be judged")
                .contains("  error  Round 2, repeat: This section has 3 stitches where its round needs 5");
    }

    @Test
    void sidesThatDoNotCloseAreToldOf() throws IOException {
        Path chart = Charts.sound(folder);
        assertThat(run("check", "--sides", "15,20", chart).status()).isZero();
        assertThat(run("check", "--sides", "15, 20, 15, 10", chart).status()).isZero();
        Ended ended = run("check", "--sides", "15,20,16,20", chart);
        assertThat(ended.status()).isEqualTo(1);
        assertThat(ended.out()).contains("1 error").contains("The bottom edge: A side of 16 stitches");
    }

    @Test
    void everyChartIsReportedAndTheHighestStatusCounts() throws IOException {
        Path sound = Charts.sound(folder);
        Path unworkable = Charts.unworkable(folder);
        Path broken = Files.writeString(folder.resolve("broken.border.json"), "{");
        assertThat(run("check", sound, unworkable).status()).isEqualTo(1);
        Ended ended = run("check", broken, unworkable, sound);
        assertThat(ended.status()).isEqualTo(2);
        assertThat(ended.err().lines()).singleElement().asString().startsWith(broken + ", line 1: ");
        assertThat(ended.out()).contains(unworkable.toString()).contains(sound.toString());
    }

    @Test
    void jsonIsOneDocumentInTheShapeOfTheContract() throws IOException {
        Path unworkable = Charts.unworkable(folder);
        Path ragged = Charts.ragged(folder);
        Ended ended = run("check", "--json", "--sides", "15,20", unworkable, ragged);
        assertThat(ended.status()).isEqualTo(1);
        assertThat(ended.err()).isEmpty();
        assertThat(json(ended)).isEqualTo(JSON.readTree("""
                {"charts": [
                  {"file": "%s", "title": "Lantern Posts", "findings": [
                    {"rule": "no-round-below", "severity": "error", "round": 1, "section": "repeat", "place": 3,
                     "message": "A long stitch drops two rounds down, and under round 1 there \
                is only the base round: the hook has no loop to reach for."},
                    {"rule": "past-corner", "severity": "error", "round": 2, "section": "fromCorner", "place": 1,
                     "message": "A long stitch cannot be the first stitch of a side: it stands on a corner chain, and under \
                that chain there is nothing of this side for the hook to reach."}]},
                  {"file": "%s", "title": "Lantern Posts", "findings": [
                    {"rule": "ragged-section", "severity": "error", "round": 2, "section": "repeat", "place": null,
                     "message": "This section has 3 stitches where its round needs 5: the stitches after it have \
                none to stand on in their own fabric column, so no stitch can be judged."}]}
                ]}""".formatted(unworkable, ragged)));
    }

    @Test
    void jsonOfAChartWithNothingWrongHasNoFindings() throws IOException {
        Path chart = Charts.sound(folder);
        assertThat(run("check", "--json", chart).out()).isEqualTo("""
                {
                  "charts": [
                    {
                      "file": "%s",
                      "title": "Lantern Posts",
                      "findings": []
                    }
                  ]
                }
                """.formatted(chart));
    }

    @Test
    void jsonNamesTheSideThatDoesNotClose() throws IOException {
        Ended ended = run("check", "--json", "--sides", "15,20,16,20", Charts.sound(folder));
        JsonNode finding = json(ended).at("/charts/0/findings/0");
        assertThat(finding.get("rule").asText()).isEqualTo("unclosed-side");
        assertThat(finding.get("round").isNull()).isTrue();
        assertThat(finding.get("message").asText()).startsWith("The bottom edge: ");
    }

    @Test
    void jsonTellsOfTheSoundChartsWhenOneIsBroken() throws IOException {
        Path sound = Charts.sound(folder);
        Ended ended = run("check", "--json", folder.resolve("none.border.json"), sound);
        assertThat(ended.status()).isEqualTo(2);
        assertThat(ended.err())
                .isEqualTo(folder.resolve("none.border.json") + ": there is no such file; expected one to read\n");
        assertThat(json(ended).get("charts")).hasSize(1);
    }

    static List<BrokenCharts.BrokenChart> brokenCharts() {
        return BrokenCharts.all();
    }

    @ParameterizedTest
    @MethodSource("brokenCharts")
    void aBrokenFileIsOneLineAndNothingElse(BrokenCharts.BrokenChart broken) throws IOException {
        Path file = broken.in(folder);
        Ended expected = new Ended(2, "", file + broken.sentence() + "\n");
        assertThat(run("check", file)).isEqualTo(expected);
        assertThat(run("check", "--json", file)).isEqualTo(expected);
    }

    @Test
    void severalProblemsOfAFileAreOneLineWithTheirNumber() throws IOException {
        String text =
                BrokenCharts.sound().replace("\"chains\": 2", "\"chains\": 9").replace("bblb", "bbxb");
        Path file = Files.writeString(folder.resolve("two.border.json"), text);
        assertThat(run("check", file).err())
                .isEqualTo(
                        file + ", line 4, corner.chains: found 9, expected a whole number from 1 to 3 (the first of 2"
                                + " problems)\n");
    }

    @Test
    void coloursMarkSeveritiesOnAScreenOnly() throws IOException {
        Path chart = Charts.unworkable(folder);
        assertThat(runOnAScreen("check", chart).out()).contains("\u001b[1m\u001b[31merror\u001b[");
        assertThat(run("check", chart).out()).doesNotContain("\u001b");
        assertThat(runOnAScreen("check", "--json", chart).out()).doesNotContain("\u001b");
    }

    @Test
    void aSideThatDoesNotCloseIsHeldToTheMultiple() {
        assertThat(run("check", "sample-charts/reed-bank.border.json", "--sides", "54,35")
                        .out())
                .contains("since it is not a multiple of 6 plus 5: ");
    }

    @Test
    void namesThatWouldSteerATerminalDoNot() throws IOException {
        String text = BrokenCharts.sound().replace("Lantern Posts", "Red \\u001b[31m\\n\\nPosts");
        Path file = Files.writeString(folder.resolve("odd\u001b[31m\n.border.json"), text);
        assertThat(run("check", file).out())
                .isEqualTo(folder.resolve("odd\ufffd[31m\ufffd.border.json")
                        + ": 'Red [31m Posts', 2 rounds: no errors, no warnings; 1 long stitch judged.\n");
    }

    private static JsonNode json(Ended ended) throws IOException {
        return JSON.readTree(ended.out());
    }
}
