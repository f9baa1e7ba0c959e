package edgewright.cli;

import static edgewright.cli.CommandLineHelper.run;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import edgewright.cli.CommandLineHelper.Ended;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The commands on a chart that names sizes: Reed Bank has three. */
class NamedSizesCommandTest {
    private static final String REED_BANK = "sample-charts/reed-bank.border.json";

    @Test
    void thePatternIsForTheSizesThatTheChartNamesUnlessAnotherIsAskedFor() {
        // 6 m + 5 stitches: 131, 161 and 227 along the top, 161, 191 and 287 along the left; round 1 has two more.
        assertThat(onOneLine(run("write", REED_BANK).out()))
                .contains("Top and bottom 131 (161, 227) sts, left and right 161 (191, 287) sts;")
                .contains(
                        "Top and bottom 133 (163, 229) sts, left and right 163 (193, 289) sts in round 1, then 2 more")
                .contains("Sizes: Cot (Lap, Bed).")
                .doesNotContain("two examples");
        assertThat(onOneLine(run("write", REED_BANK, "--repeats", "8,8").out()))
                .contains("53 sts; corner chains not counted; multiple of 6 plus 5.")
                .doesNotContain("Cot");
        assertThat(onOneLine(run("write", REED_BANK, "--any-size").out()))
                .contains("Multiple of 6 plus 5, such as 35 (53) sts; corner chains not counted.")
                .contains("Numbers such as 35 (53) are two examples")
                .doesNotContain("Cot");
    }

    @Test
    void anySizeAndOneSizeAreNotAskedForTogether() {
        assertThat(run("write", REED_BANK, "--any-size", "--repeats", "8,8")).isEqualTo(new Ended(2, "", """
                        --repeats, --any-size: found together, expected one of them; 'edgewright write --help' shows how
                        """));
    }

    @Test
    void theWordsAreWorkedInEverySizeThatTheChartNames() {
        Ended ended = run("work", REED_BANK);
        assertThat(ended.status()).isZero();
        assertThat(ended.out().lines().toList())
                .containsExactly(
                        "The words make the chart: 21 rounds, 14,112 stitches, worked on a base round of 131, 161, 131 and 161 stitches.",
                        "The words make the chart: 21 rounds, 16,632 stitches, worked on a base round of 161, 191, 161 and 191 stitches.",
                        "The words make the chart: 21 rounds, 23,436 stitches, worked on a base round of 227, 287, 227 and 287 stitches.");
        Ended json = run("work", REED_BANK, "--json");
        assertThat(json.status()).isZero();
        assertThat(json.out().strip()).startsWith("{").endsWith("}");
        assertThat(json.out().split("\"agrees\"")).hasSize(2);
    }

    @Test
    void aSizeThatIsNamedTwiceIsAnsweredForOnceInJson(@TempDir Path folder) throws IOException {
        ObjectMapper json = new ObjectMapper();
        ObjectNode chart = (ObjectNode) json.readTree(Path.of(REED_BANK).toFile());
        ArrayNode sizes = (ArrayNode) chart.get("sizes");
        sizes.add(((ObjectNode) sizes.get(2)).deepCopy().put("name", "Guest bed"));
        Path file = folder.resolve("reed-bank.border.json");
        json.writeValue(file.toFile(), chart);
        Ended ended = run("work", file, "--json");
        assertThat(ended.status()).isZero();
        assertThat(json.readerFor(JsonNode.class)
                        .<JsonNode>readValues(ended.out())
                        .readAll())
                .hasSize(1)
                .allSatisfy(
                        answer -> assertThat(answer.get("agrees").asBoolean()).isTrue());
    }

    private static String onOneLine(String text) {
        return text.replaceAll("[\\s\u00a0]+", " ");
    }
}
