package edgewright.cli;

import static edgewright.cli.CommandLineHelper.run;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import edgewright.cli.CommandLineHelper.Ended;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class YarnCommandTest {
    /** A = 2, w = 5, B = 1. With one repeat a side: 4 sides of 10, 12 and 14 stitches, and 8 chains a round. */
    private static final String STRIPES = """
            {
              "format": "edgewright-chart", "version": 1, "title": "Stripes",
              "yarnUse": { "backLoop": 100, "plain": 100, "long": 200, "chain": 50 },
              "yarns": [
                { "id": "A", "name": "Peat", "colour": "#2b2a33", "ball": { "metres": 160, "grams": 50 } },
                { "id": "B", "name": "Chalk", "colour": "#f2ead8"%s },
                { "id": "C", "name": "Fog", "colour": "#e4dccb"%s }
              ],
              "rounds": [
                { "yarn": "A", "fromCorner": "bbb", "repeat": "bbbbb", "toCorner": "bb" },
                { "yarn": "B", "fromCorner": "bbbb", "repeat": "bbbbb", "toCorner": "bbb" },
                { "yarn": "A", "fromCorner": "bbbbb", "repeat": "lbbbb", "toCorner": "bbbb" }
              ]
            }
            """;

    @TempDir
    private Path folder;

    @Test
    void eachRoundAndYarnStandsWithItsLength() throws IOException {
        // By hand: 40 stitches at 5 cm, 8 chains at 2.5 cm and 30 cm of tails are 2.5 m; then 48 are 2.9 m; then 52 at
        // 5 and 4 at 10 are 3.5 m. Peat: 6.0 m and a tenth more, 6.6 m or 2.0625 g. Chalk: 3.19 m.
        // What is needed is rounded up.
        Ended ended = run("yarn", chart("", ""), "--repeats", "1,1");
        assertThat(ended.status()).isZero();
        assertThat(ended.out().lines().limit(11))
                .containsExactly(
                        "'Stripes', on a base round of 8, 8, 8 and 8 stitches",
                        "",
                        "Round  Yarn     Stitches  Length  Of this yarn so far",
                        "1      A Peat         48   2.5 m                2.5 m",
                        "2      B Chalk        56   2.9 m                2.9 m",
                        "3      A Peat         64   3.5 m                6.0 m",
                        "",
                        "Yarn     Needed  Grams   Balls  In hand",
                        "A Peat      7 m    3 g  1 ball        -",
                        "B Chalk     4 m      -       -        -",
                        "C Fog       0 m      -       -        -");
        assertThat(ended.out())
                .contains("The lengths come from the designer's own stitches.")
                .contains("Peat and Chalk can be told apart")
                .contains("No yarn in hand is entered.");
    }

    @Test
    void whatIsNotEnoughIsANoWithTheRoundsThatHelp() throws IOException {
        Ended ended = run("yarn", chart(", \"inHand\": 2", ", \"inHand\": 50"), "--sides", "8,8");
        assertThat(ended.status()).isEqualTo(1);
        assertThat(ended.err()).isEmpty();
        assertThat(ended.out())
                .contains("Chalk: 1.2 m short.\n")
                .contains("With round 2 in Fog it is enough, and the picture stays the same.\n")
                .contains("Round 2 (Chalk) could be worked in Fog.\n")
                .contains("Rounds 1 and 3 (Peat) cannot be worked in any other of these yarns.\n");
    }

    @Test
    void whereNothingIsEnoughTheAnswerIsNo() throws IOException {
        Ended ended = run("yarn", chart(", \"inHand\": 2", ", \"inHand\": 0"), "--repeats", "1,1");
        assertThat(ended.status()).isEqualTo(1);
        assertThat(ended.out()).contains("No other choice among these yarns is enough and keeps the picture.\n");
    }

    @Test
    void enoughIsAYes() throws IOException {
        Ended ended = run("yarn", chart(", \"inHand\": 4", ""), "--repeats", "1,1");
        assertThat(ended.status()).isZero();
        assertThat(ended.out()).contains("The yarn in hand is enough.\n");
    }

    @Test
    void anotherProgramIsToldTheSame() throws IOException {
        Ended ended = run("yarn", chart(", \"inHand\": 2", ", \"inHand\": 50"), "--repeats", "1,1", "--json");
        assertThat(ended.status()).isEqualTo(1);
        JsonNode answer = new ObjectMapper().readTree(ended.out());
        assertThat(answer.at("/rounds/2")).isEqualTo(json("""
                {"layer":"front","round":3,"yarn":"A","stitches":{"backLoop":52,"long":4,"chain":8},
                 "metres":3.5,"metresSoFar":6.0}"""));
        assertThat(answer.at("/yarns/0")).isEqualTo(json("""
                {"yarn":"A","name":"Peat","metres":6.6,"grams":2.06,"balls":1}"""));
        assertThat(answer.at("/yarns/1")).isEqualTo(json("""
                {"yarn":"B","name":"Chalk","metres":3.19,"inHand":2.0,"missing":1.19}"""));
        assertThat(answer.at("/left")).isEqualTo(json("""
                {"answer":"otherYarns","yarns":["A","C","A"],"proved":true}"""));
        assertThat(answer.at("/swaps/1")).isEqualTo(json("""
                {"rounds":[2],"from":"B","to":["C"]}"""));
        assertThat(answer.at("/contrast/0/low").asBoolean()).isFalse();
        assertThat(answer.at("/estimated")).isEmpty();
    }

    @Test
    void yarnsThatAreHardToTellApartGetAColour() throws IOException {
        Path chart = Files.writeString(
                folder.resolve("pale.border.json"),
                STRIPES.formatted("", "").replace("\"yarn\": \"A\"", "\"yarn\": \"C\""));
        assertThat(run("yarn", chart, "--repeats", "1,1").out())
                .contains("Fog and Chalk are hard to tell apart: ratio 1.1, difference 3.")
                .contains("The nearest colour for Fog that can be told apart from all that it meets is #")
                .contains("These limits are ours");
    }

    @Test
    void aBorderWithoutASizeTakesNoAmount() throws IOException {
        Ended ended = run("yarn", chart("", ""));
        assertThat(ended.status()).isEqualTo(2);
        assertThat(ended.err())
                .isEqualTo(
                        "found no size on which all sides come out even, expected --sides or --repeats to count yarn for;"
                                + " 'edgewright yarn --help' shows how\n");
    }

    @Test
    void aChartThatCannotBeWorkedIsNotCounted() throws IOException {
        Path chart = Charts.unworkable(folder);
        assertThat(run("yarn", chart, "--repeats", "1,1").status()).isEqualTo(1);
        assertThat(run("yarn", chart, "--repeats", "1,1").out()).isEmpty();
        assertThat(run("yarn", chart, "--repeats", "1,1", "--draft").out()).contains("Needed");
    }

    @Test
    void aTableHasItsNumbersFlushRight() {
        TextTable table = new TextTable(1);
        table.row("Yarn", "Length");
        table.row("Mauve", "7");
        assertThat(table.lines()).isEqualTo(List.of("Yarn   Length", "Mauve       7"));
    }

    private Path chart(String ofChalk, String ofFog) throws IOException {
        return Files.writeString(folder.resolve("stripes.border.json"), STRIPES.formatted(ofChalk, ofFog));
    }

    private static JsonNode json(String text) throws IOException {
        return new ObjectMapper().readTree(text);
    }
}
