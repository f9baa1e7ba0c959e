package edgewright.cli;

import static edgewright.cli.CommandLineHelper.run;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import edgewright.cli.CommandLineHelper.Ended;
import edgewright.file.BrokenCharts;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Whatever a designer calls things, the words work and no terminal is steered. */
class NastyNamesTest {
    private static final JsonMapper JSON = JsonMapper.builder().build();

    /** What no terminal should be sent: controls but line ends, and what turns the writing direction. */
    private static final String STEERING =
            "(?s).*[\\x00-\\x09\\x0b-\\x1f\\x7f-\\x9f\\u061c\\u200e\\u200f\\u202a-\\u202e\\u2066-\\u2069].*";

    @TempDir
    private Path folder;

    static Stream<String> names() {
        return Stream.of(
                "Snow White, cotton",
                "Merino 50g: Sand",
                "St. Anne. Grey",
                "Chalk (100% wool), 4.5 mm; see note 2.",
                "Round 2",
                "2 dc blo",
                "*rep from* twice",
                "dc blo in every st. 45 sts",
                "B",
                "yarn B",
                "Peat",
                "  Reed   Bank  ",
                "Reed\u00a0Bank",
                "Reed\u202f\u2009Bank",
                "Reed\nBank",
                "Reed\r\n\r\nBank",
                "Reed\u2028Bank\u0085Side",
                "Reed\tBank",
                "Re\u0000ed\u0007 \u001b[31mBank",
                "Reed\u009b31mBank",
                "\u202eknaB deeR",
                "half \ud83e a pair",
                "Re\u0301ed Ba\u0308nk",
                "\ud83d\udc69\u200d\ud83c\udf3e wool",
                "Ж и Ш",
                "編み糸",
                "{0} '' {creator} <html>&amp;",
                "A very long name of a yarn that was dyed by hand in the shed behind the sluice, in the autumn of a wet year");
    }

    @ParameterizedTest
    @MethodSource("names")
    void words_of_a_chart_with_any_names_work_out_from_the_text_and_in_the_printed_pattern(String name)
            throws IOException {
        Path chart = named(name);
        Path words = folder.resolve("words.txt");
        assertThat(run("write", chart, "--to", words, "--repeats", "3,3").err()).isEmpty();
        Ended worked = run("work", chart, "--from", words, "--repeats", "3,3");
        assertThat(worked)
                .as(worked.out() + Files.readString(words))
                .extracting(Ended::status)
                .isEqualTo(0);
        Ended published = run("publish", chart, "--to", folder.resolve("pattern.pdf"), "--repeats", "3,3");
        assertThat(published).as(published.out()).extracting(Ended::status).isEqualTo(0);
        assertThat(published.out() + published.err()).doesNotContain("do not make the chart");
    }

    @ParameterizedTest
    @MethodSource("names")
    void no_command_sends_a_terminal_what_would_steer_it(String name) throws IOException {
        Path chart = named(name);
        Path text = Files.writeString(
                folder.resolve("typed.txt"), ("Round 1, " + name + ". 2 dc blo; " + name).replace("\ud83e", ""));
        Path strange = Files.copy(chart, folder.resolve("x\u009b31m\u202e.border.json"));
        for (List<Object> command : List.<List<Object>>of(
                List.of("check", chart, strange),
                List.of("check", "no" + name.replace("\0", "") + ".border.json"),
                List.of("write", chart, "--repeats", "3,3"),
                List.of("work", chart, "--repeats", "3,3"),
                List.of("work", "--from", text, "--sides", "15,15"),
                List.of("work", chart, "--from", text, "--repeats", "3,3"),
                List.of("fit", chart, "--at-round", "0", "--counts", "16,16"),
                List.of("yarn", chart, "--repeats", "3,3"),
                List.of("draw", strange, "--to", folder.resolve("y\u009b.svg")),
                List.of("fit", chart, "--" + name),
                List.of("draw", chart, "--layer", name, "--to", "y.svg"))) {
            Ended ended = run(command.toArray());
            assertThat(ended.out() + ended.err()).as("%s", command).isNotEmpty().doesNotMatch(STEERING);
        }
    }

    @Test
    void a_yarn_id_that_no_chart_takes_is_bad_input_and_nothing_is_drawn() throws IOException {
        String written = run("write", Charts.sound(folder), "--repeats", "1,1").out();
        Path words = Files.writeString(folder.resolve("typed.txt"), written.replaceAll("\\bB\\b", "SALTMARSH"));
        drawnIsRefused(words, "SALTMARSH", "10,10");
    }

    @Test
    void more_yarns_than_a_chart_takes_are_bad_input_and_nothing_is_drawn() throws IOException {
        StringBuilder rounds = new StringBuilder();
        for (int r = 1; r <= 65; r++) {
            rounds.append("Round ")
                    .append(r)
                    .append(", Shade ")
                    .append(r)
                    .append(". dc blo in every st; corner: 2 ch.\n");
        }
        drawnIsRefused(typed(rounds.toString()), "65 yarns", "3,3");
    }

    @Test
    void more_rounds_than_can_be_worked_are_bad_input_and_nothing_is_drawn() throws IOException {
        StringBuilder rounds = new StringBuilder();
        for (int r = 1; r <= 2_001; r++) {
            rounds.append("Round ").append(r).append(", Peat. dc blo in every st; corner: 2 ch.\n");
        }
        drawnIsRefused(typed(rounds.toString()), "this piece would have 16,048,020 stitches", "3,3");
    }

    private void drawnIsRefused(Path words, String named, String sides) {
        Path to = folder.resolve("drawn.border.json");
        Ended ended = run("work", "--from", words, "--sides", sides, "--to", to);
        assertThat(ended.err().lines())
                .singleElement()
                .asString()
                .contains(named)
                .doesNotContain("mistake");
        assertThat(ended.status()).isEqualTo(2);
        assertThat(to).doesNotExist();
    }

    private Path typed(String rounds) throws IOException {
        return Files.writeString(folder.resolve("typed.txt"), "Tide Steps\nUK terms\n\n" + rounds);
    }

    /** The sound chart with this name for its title, its designer, its second yarn and in its notes. */
    private Path named(String name) throws IOException {
        ObjectNode chart = (ObjectNode) JSON.readTree(BrokenCharts.sound());
        chart.put("title", name).put("designer", name).put("notes", "First:\n" + name + "\n\n" + name);
        ((ObjectNode) chart.at("/yarns/1")).put("name", name);
        // Written by hand, since half a pair is lost in UTF-8.
        StringBuilder ascii = new StringBuilder();
        chart.toString().chars().forEach(c -> ascii.append(c < 128 ? "" + (char) c : String.format("\\u%04x", c)));
        return Files.writeString(folder.resolve("named.border.json"), ascii);
    }
}
