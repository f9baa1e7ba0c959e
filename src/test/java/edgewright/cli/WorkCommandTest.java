package edgewright.cli;

import static edgewright.cli.CommandLineHelper.run;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import edgewright.chart.Back;
import edgewright.chart.Chart;
import edgewright.cli.CommandLineHelper.Ended;
import edgewright.file.BrokenCharts;
import edgewright.file.ChartText;
import edgewright.file.ReadResult;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WorkCommandTest {
    private static final String TYPED = """
            UK terms

            Round 1, Peat. 2 dc blo; *8 dc blo; repeat from * to the last 3 sts; 3 dc blo; corner: 2 ch.
            Round 2, Chalk. dc blo in every stitch; corner: 2 ch.
            Round 3, Peat. 4 dc blo; *3 drop tr, 5 dc blo; repeat from * to the last 5 sts; 5 dc blo; corner: 2 ch.
            """;

    private static final String REED_BANK = "sample-charts/reed-bank.border.json";

    @TempDir
    private Path folder;

    @Test
    void the_words_of_a_sound_chart_make_the_chart() throws IOException {
        Ended ended = run("work", Charts.sound(folder), "--sides", "15,20");
        assertThat(ended.status()).isZero();
        assertThat(ended.err()).isEmpty();
        assertThat(ended.out())
                .startsWith("The words make the chart: ")
                .endsWith("worked on a base round of 15, 20, 15 and 20 stitches.\n");
    }

    @Test
    void amounts_are_grouped_from_five_digits_on() {
        // 21 rounds of 4220 stitches, each 8 longer than the one before: 21 x 4220 + 8 x 231.
        assertThat(run("work", REED_BANK, "--repeats", "200,150").out())
                .isEqualTo(
                        "The words make the chart: 21 rounds, 90,468 stitches, worked on a base round of 1205, 905, 1205 and"
                                + " 905 stitches.\n");
    }

    @Test
    void a_piece_of_more_stitches_than_are_worked_is_refused_before_its_words_are_written() {
        // 21 rounds of 24,000,020 stitches, each 8 longer than the one before, round a base round 8 shorter than the
        // first.
        Ended ended = run("work", REED_BANK, "--repeats", "1000000,1000000");
        assertThat(ended.status()).isEqualTo(2);
        assertThat(ended.out()).isEmpty();
        assertThat(ended.err())
                .isEqualTo(
                        "this piece would have 504,002,268 stitches; expected at most 1,000,000, for example with fewer"
                                + " repeats\n");
    }

    @Test
    void words_for_a_piece_of_more_stitches_than_are_worked_are_refused() throws IOException {
        Path text = Files.writeString(folder.resolve("typed.txt"), TYPED);
        Ended ended = run("work", "--from", text, "--sides", "1000000,1000000");
        assertThat(ended.status()).isEqualTo(2);
        // three rounds, the base round not counted
        assertThat(ended.err())
                .isEqualTo(
                        "this piece would have 12,000,048 stitches; expected at most 1,000,000, for example with fewer"
                                + " repeats\n");
    }

    @Test
    void json_tells_what_came_off_the_hook_side_by_side() throws IOException {
        Ended ended = run("work", Charts.sound(folder), "--repeats", "2,3", "--json", "--terms", "US");
        assertThat(ended.status()).isZero();
        JsonNode answer = new ObjectMapper().readTree(ended.out());
        assertThat(answer.fieldNames()).toIterable().containsExactly("agrees", "rounds");
        assertThat(answer.get("agrees").asBoolean()).isTrue();
        JsonNode first = answer.get("rounds").get(0);
        assertThat(first.get("round").asInt()).isEqualTo(1);
        assertThat(first.get("yarn").asText()).isEqualTo("A");
        assertThat(first.get("sides").get(1).asText()).isEqualTo("b".repeat(22));
        assertThat(first.get("total").asInt()).isEqualTo(17 + 22 + 17 + 22);
    }

    @Test
    void the_back_layer_of_a_double_border_is_worked_too() throws IOException {
        Chart sound = ((ReadResult.Read) ChartText.fromJson(BrokenCharts.sound())).chart();
        Chart chart = sound.withMaking(sound.making().withBack(Optional.of(Back.DEFAULT)));
        Path file = Files.writeString(folder.resolve("double.border.json"), ChartText.toJson(chart));
        int rounds = chart.rounds().size();
        int last = 4 * 2 * rounds + 15 + 20 + 15 + 20;
        int joins = last + 4 * chart.corner().chains();
        assertThat(run("work", file, "--sides", "15,20").out())
                .endsWith("\nBehind it the back layer: 1 round, joined by " + joins + " slip stitches.\n");
        JsonNode answer = new ObjectMapper()
                .readTree(run("work", file, "--sides", "15,20", "--json").out());
        assertThat(answer.get("joins").asInt()).isEqualTo(joins);
        assertThat(answer.get("back")).hasSize((rounds + 1) / 2);
        // The first back round is as high as two rounds of the front: four stitches more a side.
        assertThat(answer.get("back").get(0).get("sides").toString()).isEqualTo("[19,24,19,24]");
        assertThat(answer.get("back").get((rounds - 1) / 2).get("total").asInt())
                .isEqualTo(last);
    }

    @Test
    void words_that_make_something_else_are_told_of_where_they_do() throws IOException {
        Path chart = Charts.sound(folder);
        String words = run("write", chart).out();
        Path spoilt = Files.writeString(folder.resolve("spoilt.txt"), words.replaceFirst("1 drop tr", "1 dc"));
        Ended ended = run("work", chart, "--sides", "15,20", "--from", spoilt);
        assertThat(ended.status()).isEqualTo(1);
        assertThat(ended.out())
                .contains("top edge, stitch")
                .contains("the chart has a long stitch, but a plain stitch was made.");
        JsonNode answer = new ObjectMapper()
                .readTree(run("work", chart, "--sides", "15,20", "--from", spoilt, "--json")
                        .out());
        assertThat(answer.get("agrees").asBoolean()).isFalse();
        assertThat(answer.get("problems").get(0).asText()).contains("the chart has a long stitch");
    }

    @Test
    void words_that_cannot_be_read_are_bad_input_with_line_and_column() throws IOException {
        Path typed = Files.writeString(folder.resolve("typed.txt"), TYPED.replaceFirst("8 dc blo", "8 dcc blo"));
        Ended ended = run("work", "--from", typed, "--sides", "27,27");
        assertThat(ended.status()).isEqualTo(2);
        assertThat(ended.out()).isEmpty();
        assertThat(ended.err().lines())
                .singleElement()
                .asString()
                .startsWith(typed + ": line 3, column 29")
                .contains("dcc");
    }

    @Test
    void words_without_a_chart_are_worked_and_drawn() throws IOException {
        Path typed = Files.writeString(folder.resolve("typed.txt"), TYPED);
        Path drawn = folder.resolve("drawn.border.json");
        Ended ended = run("work", "--from", typed, "--sides", "27,35", "--to", drawn);
        assertThat(ended)
                .isEqualTo(new Ended(
                        0,
                        "The words can be worked: 3 rounds, 420 stitches, worked on a base round of 27, 35, 27 and 35"
                                + " stitches.\n",
                        ""));
        assertThat(run("work", drawn, "--sides", "27,35", "--from", typed).status())
                .isZero();
        assertThat(run("check", drawn).status()).isZero();
    }

    /** A round with no repeat on sides of so many stitches in the base round: one dc after so many dc blo. */
    private Path withoutRepeat(int stitches, int before) throws IOException {
        return Files.writeString(folder.resolve("bare.txt"), """
                UK terms

                Round 1, Peat. %d dc blo, 1 dc, %d dc blo; corner: 2 ch.
                Round 2, Chalk. %d dc blo, 1 dc, 1 dc blo, 1 dc, %d dc blo; corner: 2 ch.
                """.formatted(
                        before, stitches + 1 - before, before, stitches + 1 - before));
    }

    @Test
    void wide_corners_are_cut_so_that_a_chart_can_hold_them() throws IOException {
        Path drawn = folder.resolve("drawn.border.json");
        Ended ended = run("work", "--from", withoutRepeat(3_000, 1_500), "--sides", "3000,3000", "--to", drawn);
        assertThat(ended.err()).isEmpty();
        assertThat(ended.status()).isZero();
        assertThat(run("work", drawn, "--from", withoutRepeat(3_000, 1_500), "--sides", "3000,3000")
                        .status())
                .isZero();
    }

    @Test
    void a_corner_wider_than_a_chart_can_hold_is_refused() throws IOException {
        Path drawn = folder.resolve("drawn.border.json");
        Path text = withoutRepeat(4_200, 2_100);
        Ended ended = run("work", "--from", text, "--sides", "4200,4200", "--to", drawn);
        assertThat(ended.status()).isEqualTo(2);
        assertThat(ended.err())
                .isEqualTo(
                        text
                                + ": a corner section would have 2102 stitches in round 1; expected 2000 at most for a chart\n");
        assertThat(drawn).doesNotExist();
    }

    @Test
    void words_that_tell_no_size_need_one() throws IOException {
        Path typed = Files.writeString(folder.resolve("typed.txt"), TYPED);
        Ended ended = run("work", "--from", typed);
        assertThat(ended.status()).isEqualTo(2);
        assertThat(ended.err()).startsWith("found no --sides N,N,N,N; expected the stitches of each side");
    }

    @Test
    void a_text_of_somebody_else_is_explained_and_worked_in_the_size_that_it_tells() throws IOException {
        Path typed = Files.writeString(folder.resolve("typed.txt"), """
                Quay Hem
                US terms. A = Peat, B = Chalk
                The base round has 9 sts on each side.
                Rnd 1 (A): *sc blo in each st to corner, (sc, ch 2, sc) in corner; rep from * around. [11]
                """);
        assertThat(run("work", "--from", typed).out()).startsWith("The words can be worked: 1 round, 44 stitches");
        assertThat(run("work", "--from", typed, "--explain").out().replace('\u00a0', ' '))
                .contains("2 | US terms. A = Peat, B = Chalk")
                .contains("= Round 1 (Peat): 1 sc; sc blo in every st to last st; 1 sc; corner: 2 ch. 11 sts.")
                .contains("Rnd 1 (A)");
        Files.writeString(typed, Files.readString(typed).replace("[11]", "[12]"));
        Ended ended = run("work", "--from", typed);
        assertThat(ended.status()).isEqualTo(1);
        assertThat(ended.out()).contains("line 4, column 88: '12' does not come out: expected 11");
    }

    @Test
    void each_line_of_somebody_else_is_explained_by_what_is_worked_there() throws IOException {
        Path typed = Files.writeString(folder.resolve("typed.txt"), """
                Quay Hem
                US terms. A = Peat, B = Chalk
                The base round has 9 sts on each side.
                Rnd 1 (A): sc blo in each st to corner, ch 2 at corner, all four sides alike. [11]
                Rnd 2 (B): as rnd 1. [13]
                """);
        assertThat(run("work", "--from", typed, "--explain").out().replace('\u00a0', ' '))
                .contains("= Round 1 (Peat): sc blo in every st; corner: 2 ch. 11 sts.")
                .contains("= Round 2 (Chalk): sc blo in every st; corner: 2 ch. 13 sts.");
    }

    @Test
    void words_that_do_not_come_out_on_the_piece_stop_the_hands() throws IOException {
        Path typed = Files.writeString(folder.resolve("typed.txt"), TYPED);
        Ended ended = run("work", "--from", typed, "--sides", "27,28");
        assertThat(ended)
                .isEqualTo(new Ended(
                        1,
                        "Round 1, left-hand edge, stitch 27: 4 stitches are left, and the group after the asterisk"
                                + " does not come out even before the last 3.\n",
                        ""));
    }

    @Test
    void a_size_is_needed_and_must_close() throws IOException {
        Path chart = Charts.sound(folder);
        assertThat(run("work", chart).status()).isEqualTo(2);
        assertThat(run("work", "--from", "typed.txt").status()).isEqualTo(2);
        assertThat(run("work", "--sides", "15,20").status()).isEqualTo(2);
        assertThat(run("work", chart, "--sides", "15,20", "--to", "x.border.json")
                        .err())
                .contains("--to: found with a CHART");
        Ended unclosed = run("work", chart, "--sides", "16,20");
        assertThat(unclosed.status()).isEqualTo(1);
        assertThat(unclosed.err()).contains("unclosed-side");
    }

    @Test
    void a_chart_that_cannot_be_worked_is_not_worked() throws IOException {
        Path chart = Charts.unworkable(folder);
        Ended ended = run("work", chart, "--sides", "15,20");
        assertThat(ended.status()).isEqualTo(1);
        assertThat(ended.out()).isEmpty();
        assertThat(ended.err()).contains("no-round-below");
    }

    @Test
    void theWordsForAPieceAreWorkedOnTheCountsThatItHas() throws IOException {
        // Two stitches fewer a side for each round below the one that was counted: 56 = 60 - 4.
        Ended ended = run("work", REED_BANK, "--at-round", 2, "--counts", "60,41,58,36");
        assertThat(ended.status()).isZero();
        assertThat(ended.out())
                .startsWith("The words put the counts right and make the chart from there on: 21 rounds, ")
                .endsWith(" stitches, worked on a base round of 56, 37, 54 and 32 stitches.\n");
        String words = run("write", REED_BANK, "--at-round", 2, "--counts", "60,41,58,36")
                .out();
        Path text = Files.writeString(folder.resolve("piece.txt"), words);
        assertThat(run("work", REED_BANK, "--at-round", 2, "--counts", "60,41,58,36", "--from", text))
                .isEqualTo(ended);
        Files.writeString(text, words.replace("15 dc blo, dc2tog blo", "14 dc blo, dc2tog blo"));
        assertThat(run("work", REED_BANK, "--at-round", 2, "--counts", "60,41,58,36", "--from", text)
                        .status())
                .isEqualTo(1);
        // The same words on another piece.
        assertThat(run("work", REED_BANK, "--at-round", 2, "--counts", "60,41,58,37", "--from", text)
                        .status())
                .isEqualTo(1);
    }

    @Test
    void aPieceThatDoesNotFitIsNotWorked() {
        assertThat(run("work", REED_BANK, "--at-round", 6, "--counts", "60,41,58,36")
                        .status())
                .isEqualTo(1);
        assertThat(run("work", REED_BANK, "--at-round", 22, "--counts", "60,41,58,36")
                        .status())
                .isEqualTo(2);
        assertThat(run("work", REED_BANK, "--at-round", 2).status()).isEqualTo(2);
    }
}
