package edgewright.file;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.Chart;
import edgewright.chart.Colour;
import edgewright.chart.Corner;
import edgewright.chart.Extras;
import edgewright.chart.Heading;
import edgewright.chart.Round;
import edgewright.chart.Rules;
import edgewright.chart.Terms;
import edgewright.chart.Yarn;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class ChartTextTest {
    private static final String REED_BANK = """
            {
              "format": "edgewright-chart", "version": 1,
              "title": "Reed Bank", "designer": "Saltmarsh Studio", "notes": "",
              "terms": "UK", "corner": { "chains": 2 },
              "rules": { "landOnCornerChain": true, "stackLongStitches": false, "looseRun": 9 },
              "yarns": [
                { "id": "A", "name": "Peat", "colour": "#2b2a33" },
                { "id": "B", "name": "Chalk", "colour": "#f2ead8" }
              ],
              "rounds": [
                { "yarn": "A", "fromCorner": "bb", "repeat": "bbbbbb", "toCorner": "bbb" },
                { "yarn": "B", "fromCorner": "bbb", "repeat": "bbbbbb", "toCorner": "bbbb" }
              ]
            }
            """;

    private static final Chart REED_BANK_CHART = new Chart(
                    new Heading("Reed Bank", "Saltmarsh Studio", "", Terms.UK),
                    List.of(
                            new Yarn("A", "Peat", Colour.parse("#2b2a33")),
                            new Yarn("B", "Chalk", Colour.parse("#f2ead8"))),
                    List.of(Round.of("A", "bb", "bbbbbb", "bbb"), Round.of("B", "bbb", "bbbbbb", "bbbb")))
            .withCorner(new Corner(2, Extras.NONE))
            .withRules(new Rules(true, false, 9, Extras.NONE));

    @Test
    void aChartIsWrittenWithOneYarnAndOneRoundALine() {
        assertThat(ChartText.toJson(REED_BANK_CHART)).isEqualTo(REED_BANK);
    }

    @Test
    void whatIsWrittenIsReadAsTheSameChart() {
        assertThat(read(REED_BANK)).isEqualTo(REED_BANK_CHART);
    }

    @Test
    void membersThatAChartNeedNotHaveStandForTheUsual() {
        String short1 = """
                {"rounds":[{"toCorner":"b","repeat":"bb","fromCorner":"b","yarn":"A"}],
                 "yarns":[{"colour":"#2B2A33","name":"Peat","id":"A"}], "title":"", "version":1.0,
                 "format":"edgewright-chart"}""";
        assertThat(read(short1))
                .isEqualTo(new Chart(
                        Heading.of(""),
                        List.of(new Yarn("A", "Peat", Colour.parse("#2b2a33"))),
                        List.of(Round.of("A", "b", "bb", "b"))));
    }

    @Test
    void aRulesOrCornerObjectMayStateOnlyWhatIsUnusual() {
        String text = REED_BANK
                .replace("{ \"chains\": 2 }", "{}")
                .replaceAll("\"rules\": .*", "\"rules\": { \"stackLongStitches\": true },");
        assertThat(read(text)).isEqualTo(REED_BANK_CHART.withRules(Rules.DEFAULT.withStackLongStitches(true)));
    }

    @Test
    void unknownMembersSurviveAtEveryLevelInTheirOrderAndDigitForDigit() {
        String text = """
                {
                  "format": "edgewright-chart", "version": 1,
                  "title": "Tide Steps", "designer": "", "notes": "",
                  "terms": "US", "corner": { "chains": 3, "turn": "left" },
                  "rules": { "landOnCornerChain": false, "stackLongStitches": true, "looseRun": 12, "z": 1, "a": 2 },
                  "yarns": [
                    { "id": "A", "name": "Peat", "colour": "#2b2a33", "metres": 105.000, "more": { "b": [ ], "a": null } }
                  ],
                  "rounds": [
                    { "yarn": "A", "fromCorner": "b", "repeat": "bb", "toCorner": "b", "layer": "back", "at": -0.0 },
                    { "yarn": "A", "fromCorner": "bb", "repeat": "pc", "toCorner": "bb" }
                  ],
                  "zebra": 1e400,
                  "gauge": {
                    "stitches": 18.50,
                    "over mm": 123456789012345678901234567890,
                    "": "\\u00e9\\/\\ud83d"
                  },
                  "start \\"here\\"": [1,2 , 3]
                }
                """;
        Chart chart = read(text);
        assertThat(chart.extras().json())
                .containsExactly(
                        Map.entry("zebra", "1e400"), Map.entry("gauge", """
                                {
                                    "stitches": 18.50,
                                    "over mm": 123456789012345678901234567890,
                                    "": "\\u00e9\\/\\ud83d"
                                  }"""), Map.entry("start \"here\"", "[1,2 , 3]"));
        assertThat(chart.round(1).extras().json())
                .containsExactly(Map.entry("layer", "\"back\""), Map.entry("at", "-0.0"));
        assertThat(ChartText.toJson(chart)).isEqualTo(text);
    }

    @Test
    void anUnknownMemberOfARoundComesIntoTheLineOfTheRound() {
        String text = REED_BANK.replace("\"bb\",", "\"bb\",\n \"marker\": {\r\n  \"at\":\n [ 1,\n\n 2 ] },");
        Chart chart = read(text);
        assertThat(chart.round(1).extras().json()).containsExactly(Map.entry("marker", "{ \"at\": [ 1, 2 ] }"));
        assertThat(ChartText.toJson(chart))
                .isEqualTo(REED_BANK.replace("\"bbb\" }", "\"bbb\", \"marker\": { \"at\": [ 1, 2 ] } }"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"\r\n", "\r", "\n"})
    void anyKindOfLineEndIsRead(String end) {
        String text = REED_BANK.replace("]\n}", "],\n  \"gauge\": {\n  }\n}").replace("\n", end);
        Chart chart = read(text);
        assertThat(ChartText.toJson(chart)).isEqualTo(REED_BANK.replace("]\n}", "],\n  \"gauge\": {\n  }\n}"));
    }

    @Test
    void aByteOrderMarkIsReadAndNotWritten() {
        // RFC 8259, 8.1: https://www.rfc-editor.org/rfc/rfc8259#section-8.1
        assertThat(ChartText.toJson(read("\ufeff" + REED_BANK))).isEqualTo(REED_BANK);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "Reed \"Bank\" \\ / é ß 编织 🧶",
                "one\ntwo\r\nthree\ttab",
                "\u0000\u0007\u001f\u007f\u0085\u2028\u2029\ufeff",
                "half a pair \ud83e and the other \uddf6 half"
            })
    void everyTextSurvives(String words) {
        Chart chart = REED_BANK_CHART.withTitle(words).withDesigner(words).withNotes(words);
        String text = ChartText.toJson(chart);
        assertThat(read(text)).isEqualTo(chart);
        assertThat(text.lines()).hasSize(words.isEmpty() ? 14 : 15);
    }

    @Test
    void aSectionOfTheWrongLengthIsRead() {
        String text = REED_BANK.replace("\"bbbbbb\", \"toCorner\": \"bbbb\"", "\"\", \"toCorner\": \"bbbbbbbb\"");
        assertThat(read(text)).isEqualTo(REED_BANK_CHART.withRound(2, Round.of("B", "bbb", "", "bbbbbbbb")));
    }

    @Test
    void asManyAsAllowedAreRead() {
        String row = "b".repeat(Chart.MOST_STITCHES);
        List<Yarn> yarns = IntStream.range(0, Chart.MOST_YARNS)
                .mapToObj(i -> new Yarn("Y" + i, "", new Colour(i)))
                .toList();
        List<Round> rounds = new ArrayList<>(Collections.nCopies(Chart.MOST_ROUNDS, Round.of("Y63", "b", "l", "c")));
        rounds.set(0, Round.of("Y0", row, row, row));
        Chart chart = new Chart(new Heading("", "", "", Terms.US), yarns, rounds);
        assertThat(read(ChartText.toJson(chart))).isEqualTo(chart);
    }

    @Test
    void theChartInTheReadmeIsWhole() throws IOException {
        String readme = Files.readString(Path.of("README.md"));
        int start = readme.indexOf("```json") + "```json".length();
        assertThat(read(readme.substring(start, readme.indexOf("```", start)))).isEqualTo(REED_BANK_CHART);
    }

    @ParameterizedTest
    @MethodSource("sampleCharts")
    void everySampleIsWrittenAsItLies(Path file) throws IOException {
        String text = Files.readString(file);
        assertThat(ChartText.toJson(read(text))).isEqualTo(text);
    }

    static List<Path> sampleCharts() throws IOException {
        try (var files = Files.newDirectoryStream(Path.of("sample-charts"), "*" + ChartFiles.ENDING)) {
            List<Path> all = new ArrayList<>();
            files.forEach(all::add);
            return all;
        }
    }

    private static Chart read(String text) {
        ReadResult result = ChartText.fromJson(text);
        assertThat(result).isInstanceOf(ReadResult.Read.class);
        return ((ReadResult.Read) result).chart();
    }
}
