package edgewright.cli;

import static edgewright.cli.CommandLineHelper.run;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import edgewright.cli.CommandLineHelper.Ended;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a maker reads, in full; the texts below were read by a person. */
class FitCommandTest {
    private static final String REED_BANK = "sample-charts/reed-bank.border.json";
    private static final String HERON_WALK = "sample-charts/heron-walk.border.json";

    @TempDir
    private Path folder;

    @Test
    void a_piece_is_told_its_counts_its_changes_and_their_rounds() {
        Ended ended = run("fit", REED_BANK, "--at-round", 2, "--counts", "60,41,58,39");
        assertThat(ended).isEqualTo(new Ended(0, """
                Counted in round 2, stitches only: top 60, left 41, bottom 58, right 39.
                Top: 60 should be 57, with the repeat 8 times. Lose 3: work together stitches 15 + 16, 30 + 31 and \
                45 + 46.
                Left: 41 should be 39, with the repeat 5 times. Lose 2: work together stitches 14 + 15 and 28 + 29.
                Bottom: 58 should be 57, with the repeat 8 times. Lose 1: work stitches 29 + 30 together.
                Right: 39 comes out even, with the repeat 5 times.
                Top, in round 3: 1 stitch in the corner chain, work 14, the next two together, work 13, the next \
                two together, work 13, the next two together, work 14; then 1 stitch in the next corner chain. The \
                side then has 59.
                Left, in round 3: 1 stitch in the corner chain, work 13, the next two together, work 12, the next \
                two together, work 12; then 1 stitch in the next corner chain. The side then has 41.
                Bottom, in round 3: 1 stitch in the corner chain, work 28, the next two together, work 28; then 1 \
                stitch in the next corner chain. The side then has 59.
                Top and bottom: the next sizes are 51 and 63.
                Left and right: the next sizes are 33 and 45.
                Best for this chart: count in round 2, change in round 3, count again in round 4. These are the \
                last plain rounds before the first long stitch, in round 5.
                """, ""));
    }

    @Test
    void two_numbers_stand_for_the_pairs_of_sides() {
        assertThat(run("fit", REED_BANK, "--at-round", 2, "--counts", "60,41"))
                .isEqualTo(run("fit", REED_BANK, "--at-round", 2, "--counts", "60,41,60,41"));
    }

    @Test
    void counts_with_chains_are_two_higher_and_say_so() {
        Ended ended = run("fit", REED_BANK, "--at-round", 2, "--counts", "59,41", "--counting", "with-chains");
        assertThat(ended.status()).isZero();
        assertThat(ended.out())
                .startsWith(
                        "Counted in round 2, with one corner chain at each end: top 59, left 41, bottom 59, right 41.\n")
                .contains("Top: 59 comes out even, with the repeat 8 times.")
                .contains("Left: 41 comes out even, with the repeat 5 times.");
    }

    @Test
    void json_has_targets_changes_places_and_next_sizes() {
        Ended ended = run("fit", REED_BANK, "--at-round", 2, "--counts", "60,39,57,40", "--json");
        assertThat(ended).isEqualTo(new Ended(0, """
                {
                  "round": 2,
                  "counting": "stitches",
                  "sides": [
                    {
                      "side": "top",
                      "actual": 60,
                      "target": 57,
                      "change": -3,
                      "places": [
                        15,
                        30,
                        45
                      ]
                    },
                    {
                      "side": "left",
                      "actual": 39,
                      "target": 39,
                      "change": 0,
                      "places": []
                    },
                    {
                      "side": "bottom",
                      "actual": 57,
                      "target": 57,
                      "change": 0,
                      "places": []
                    },
                    {
                      "side": "right",
                      "actual": 40,
                      "target": 39,
                      "change": -1,
                      "places": [
                        20
                      ]
                    }
                  ],
                  "next": [
                    {
                      "side": "top",
                      "smaller": 51,
                      "larger": 63
                    },
                    {
                      "side": "left",
                      "smaller": 33,
                      "larger": 45
                    },
                    {
                      "side": "bottom",
                      "smaller": 51,
                      "larger": 63
                    },
                    {
                      "side": "right",
                      "smaller": 33,
                      "larger": 45
                    }
                  ]
                }
                """, ""));
    }

    @Test
    void a_piece_that_is_too_small_is_a_no() {
        Ended ended = run("fit", HERON_WALK, "--at-round", 0, "--counts", "40,9");
        assertThat(ended).isEqualTo(new Ended(1, """
                The piece is too small for this border. In the base round a side must have at least 13, stitches \
                only.
                Left: 9, which is 4 too few.
                Right: 9, which is 4 too few.
                Pick up more stitches in the base round, or choose a border with shorter corners.
                """, ""));
        assertThat(run("fit", HERON_WALK, "--at-round", 0, "--counts", "40,9", "--json"))
                .isEqualTo(new Ended(1, """
                {
                  "round": 0,
                  "counting": "stitches",
                  "sides": [
                    {
                      "side": "top",
                      "actual": 40,
                      "target": null,
                      "change": null,
                      "places": []
                    },
                    {
                      "side": "left",
                      "actual": 9,
                      "target": null,
                      "change": null,
                      "places": []
                    },
                    {
                      "side": "bottom",
                      "actual": 40,
                      "target": null,
                      "change": null,
                      "places": []
                    },
                    {
                      "side": "right",
                      "actual": 9,
                      "target": null,
                      "change": null,
                      "places": []
                    }
                  ],
                  "next": [],
                  "problems": [
                    "The piece is too small for this border. In the base round a side must have at least 13, \
                stitches only.",
                    "Left: 9, which is 4 too few.",
                    "Right: 9, which is 4 too few.",
                    "Pick up more stitches in the base round, or choose a border with shorter corners."
                  ]
                }
                """, ""));
    }

    @Test
    void counts_that_cannot_close_as_they_are_are_a_no() {
        Ended ended = run("fit", REED_BANK, "--at-round", 2, "--counts", "60,41", "--target", "60,41");
        assertThat(ended).isEqualTo(new Ended(1, """
                Counted in round 2, stitches only: top 60, left 41, bottom 60, right 41.
                The border cannot come out even in round 2 on the counts that are asked for: top 60, left 41, \
                bottom 60, right 41.
                Left and top differ by 19, which is not a multiple of the repeat of 6: whatever the corners, one of the two \
                is always out. Only a repeat of 19 or 1 stitches could come out even on all sides of this piece.
                Let a few stitches be added or lost.
                """, ""));
    }

    @Test
    void wanted_counts_that_do_not_close_are_told_the_ones_beside_them() {
        assertThat(run("fit", REED_BANK, "--at-round", 2, "--counts", "60,41", "--target", "61,41,63,45"))
                .isEqualTo(new Ended(1, """
                Counted in round 2, stitches only: top 60, left 41, bottom 60, right 41.
                Top: 61 does not come out even; 57 and 63 do.
                Left: 41 does not come out even; 39 and 45 do.
                """, ""));
        assertThat(run(
                                "fit",
                                REED_BANK,
                                "--at-round",
                                2,
                                "--counts",
                                "62,43",
                                "--counting",
                                "with-chains",
                                "--target",
                                "63,10")
                        .out())
                .endsWith("""
                Top and bottom: 63 does not come out even; 59 and 65 do.
                Left and right: 10 does not come out even; the smallest count that does is 11.
                """);
    }

    @Test
    void changes_after_the_design_has_begun_are_a_no_that_is_said_first() throws IOException {
        Ended ended = run("fit", REED_BANK, "--at-round", 5, "--counts", "60,47");
        assertThat(ended.status()).isEqualTo(1);
        assertThat(ended.out().lines().limit(3).toList())
                .satisfiesExactly(
                        late -> assertThat(late).startsWith("Changes in round 6 come too late"),
                        across -> assertThat(across).startsWith("After changes in round 6 these long stitches"),
                        counted -> assertThat(counted).startsWith("Counted in round 5"));
        Ended json = run("fit", REED_BANK, "--at-round", 5, "--counts", "60,47", "--json");
        assertThat(json.status()).isEqualTo(1);
        assertThat(new ObjectMapper().readTree(json.out()).get("problems"))
                .extracting(JsonNode::asText)
                .containsExactlyElementsOf(ended.out().lines().limit(2).toList());
        // Sides that are right already need no change, however late.
        assertThat(run("fit", REED_BANK, "--at-round", 5, "--counts", "63,45").status())
                .isZero();
    }

    @Test
    void too_many_changes_for_one_round_are_a_no_and_keep_their_targets() {
        Ended ended = run("fit", HERON_WALK, "--at-round", 2, "--counts", "21,53", "--repeats", "5,2");
        assertThat(ended).isEqualTo(new Ended(1, """
                Counted in round 2, stitches only: top 21, left 53, bottom 21, right 53.
                There are too many changes for one round.
                Top: 76 to add to 21 stitches, but away from the corners there is room for only 17.
                Bottom: 76 to add to 21 stitches, but away from the corners there is room for only 17.
                Choose another size, or work the base round again with more suitable counts.
                """, ""));
    }

    @Test
    void wanted_repeats_become_targets() {
        Ended ended = run("fit", REED_BANK, "--at-round", 2, "--counts", "60,41", "--repeats", "9,5");
        assertThat(ended.status()).isZero();
        assertThat(ended.out())
                .contains("Top: 60 should be 63, with the repeat 9 times.")
                .contains("Left: 41 should be 39, with the repeat 5 times.");
    }

    @ParameterizedTest
    @CsvSource({"top-bottom, 57, 57", "left-right, 69, 39", "both, 57, 39"})
    void sides_that_are_untied_come_out_each_for_itself(String untied, int bottom, int right) {
        Ended ended = run("fit", REED_BANK, "--at-round", 2, "--counts", "71,59,59,41", "--untie", untied);
        assertThat(ended.status()).isZero();
        assertThat(ended.out())
                .contains("Top: 71 should be 69,", "Left: 59 should be 57,")
                .contains("Bottom: 59 should be " + bottom + ",", "Right: 41 should be " + right + ",");
    }

    @Test
    void warnings_stand_in_json_too() throws IOException {
        Ended ended =
                run("fit", REED_BANK, "--at-round", 2, "--counts", "71,59,59,41", "--untie", "top-bottom", "--json");
        assertThat(new ObjectMapper().readTree(ended.out()).get("warnings"))
                .extracting(JsonNode::asText)
                .containsExactly(
                        "Right: 16 changes in 41 stitches are more than one in six. The edge will ruffle. It would"
                                + " help to let left and right have different counts.");
    }

    @Test
    void the_sides_may_be_counted_in_a_round_of_the_back_layer() throws IOException {
        Path chart = folder.resolve("double.border.json");
        Files.writeString(chart, Files.readString(Path.of(HERON_WALK)).replace("\"terms\"", "\"back\": {}, \"terms\""));
        assertThat(run("fit", chart, "--layer", "back", "--at-round", 2, "--counts", "53,38,53,36", "--repeats", "2,1"))
                .isEqualTo(new Ended(0, """
                Counted in back round 2, stitches only: top 53, left 38, bottom 53, right 36. It has the counts of \
                round 4 of the front.
                Top: 53 comes out even, with the repeat 2 times.
                Left: 38 should be 37, with the repeat once. Lose 1: work stitches 19 + 20 together.
                Bottom: 53 comes out even, with the repeat 2 times.
                Right: 36 should be 37, with the repeat once. Add 1: work two into stitch 18.
                Left, in back round 3: 2 stitches in the corner chain, work 18, the next two together, work 18; then 2 \
                stitches in the next corner chain. The side then has 41.
                Right, in back round 3: 2 stitches in the corner chain, work 17, two in the next, work 18; then 2 \
                stitches in the next corner chain. The side then has 41.
                Make the changes in back round 3.
                """, ""));
        assertThat(run(
                                "fit",
                                chart,
                                "--layer",
                                "back",
                                "--at-round",
                                2,
                                "--counts",
                                "53,37",
                                "--repeats",
                                "2,1",
                                "--json")
                        .out())
                .startsWith("{\n  \"round\": 2,\n");
    }

    @Test
    void a_back_layer_is_put_right_to_the_counts_of_the_front_and_never_to_the_nearest() throws IOException {
        Path chart = folder.resolve("double.border.json");
        Files.writeString(chart, Files.readString(Path.of(HERON_WALK)).replace("\"terms\"", "\"back\": {}, \"terms\""));
        Ended alone = run("fit", chart, "--layer", "back", "--at-round", 2, "--counts", "40,40");
        assertThat(alone.status()).isEqualTo(2);
        assertThat(alone.out()).isEmpty();
        assertThat(alone.err()).contains("the back must have the very counts of the front");
        // 45 stitches in the base round are the 53 of round 4: with 40 counted, the nearest size would be 37.
        assertThat(run(
                                "fit",
                                chart,
                                "--layer",
                                "back",
                                "--at-round",
                                2,
                                "--counts",
                                "50,52",
                                "--front-round",
                                0,
                                "--front-counts",
                                "45,45")
                        .out())
                .contains("Top: 50 should be 53", "Right: 52 should be 53", "Make the changes in back round 3.")
                .doesNotContain("next sizes");
        assertThat(run(
                                "fit",
                                chart,
                                "--layer",
                                "back",
                                "--at-round",
                                2,
                                "--counts",
                                "50,52",
                                "--front-round",
                                0,
                                "--front-counts",
                                "45,44")
                        .status())
                .isEqualTo(2);
    }

    @Test
    void a_round_that_the_back_layer_has_not_is_bad_input() throws IOException {
        Path chart = Charts.sound(folder);
        assertThat(run("fit", chart, "--layer", "back", "--at-round", 1, "--counts", "15,20"))
                .isEqualTo(new Ended(
                        2,
                        "",
                        chart + ": this chart has no back layer; expected one with a back layer, or --layer front\n"));
        Files.writeString(chart, Files.readString(chart).replace("\"terms\"", "\"back\": {}, \"terms\""));
        assertThat(run("fit", chart, "--layer", "back", "--at-round", 0, "--counts", "15,20"))
                .isEqualTo(new Ended(2, "", chart + ": there is no round 0 in the back layer; expected 1 to 1\n"));
    }

    @Test
    void a_ragged_chart_is_refused_with_its_findings() throws IOException {
        Path chart = Charts.ragged(folder);
        assertThat(run("fit", chart, "--at-round", 0, "--counts", "15,20"))
                .isEqualTo(new Ended(1, "", run("check", chart).out()));
    }

    @Test
    void other_errors_are_told_of_and_the_counts_answered() throws IOException {
        Ended ended = run("fit", Charts.unworkable(folder), "--at-round", 0, "--counts", "15,20");
        assertThat(ended.status()).isZero();
        assertThat(ended.out()).contains("Every side comes out even. Change nothing.");
        assertThat(ended.err().lines()).singleElement().asString().contains("2 errors");
    }

    @ParameterizedTest
    @ValueSource(strings = {"4", "-1", "2000000000"})
    void a_round_outside_the_chart_is_bad_input(String round) throws IOException {
        Path chart = Charts.sound(folder);
        assertThat(run("fit", chart, "--at-round=" + round, "--counts", "15,20"))
                .isEqualTo(new Ended(
                        2,
                        "",
                        chart + ": there is no round " + round + " in this chart; expected 0, the base round, to 2\n"));
    }

    @ParameterizedTest
    @CsvSource({"'1,15', '12,16', --counts", "'12,16', '12,0', --target"})
    void counts_below_their_chains_are_bad_input(String counts, String target, String option) throws IOException {
        Ended ended = run(
                "fit",
                Charts.sound(folder),
                "--at-round",
                0,
                "--counts",
                counts,
                "--target",
                target,
                "--counting",
                "with-chains");
        assertThat(ended.status()).isEqualTo(2);
        assertThat(ended.out()).isEmpty();
        assertThat(ended.err().lines())
                .singleElement()
                .asString()
                .contains(option)
                .endsWith("with corner chains counted, expected 2 or more for each side");
    }
}
