package edgewright.proof;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.Back;
import edgewright.chart.Chart;
import edgewright.chart.PerSide;
import edgewright.chart.Round;
import edgewright.chart.Side;
import edgewright.chart.SideShape;
import edgewright.hands.HouseRules;
import edgewright.hands.Maker;
import edgewright.hands.WorkOutcome;
import edgewright.proof.ChartFromWords.Answer;
import edgewright.proof.ChartFromWords.Why;
import edgewright.testing.RandomCharts;
import edgewright.texts.English;
import edgewright.words.read.PatternReader;
import edgewright.words.read.ReadingResult;
import edgewright.words.tree.Instructions;
import edgewright.words.write.PatternWriter;
import edgewright.words.write.WordingOptions;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class ChartFromWordsTest {
    private static final String TYPED = """
            Tide Steps
            UK terms

            Round 1, Peat. 2 dc blo; *8 dc blo; repeat from * to the last 3 sts; 3 dc blo; corner: 2 ch.
            Round 2, Chalk. dc blo in every stitch; corner: 2 ch.
            Round 3, Peat. 4 dc blo; *1 drop tr, 1 dc blo, 1 drop tr, 1 dc blo, 1 drop tr, 3 dc blo; rep from * to the
              last 5 sts; 1 drop tr, 1 dc blo, 1 drop tr, 2 dc blo; corner: 2 ch.
            """;

    @Test
    void typed_words_become_the_chart_they_describe() {
        Chart chart = drawn(TYPED, PerSide.all(27));
        assertThat(chart.shape(Side.FIRST)).isEqualTo(new SideShape(1, 8, 2));
        assertThat(chart.rounds())
                .extracting(round -> round.fromCorner() + " " + round.repeat() + " " + round.toCorner())
                .containsExactly("bb bbbbbbbb bbb", "bbb bbbbbbbb bbbb", "bbbb lblblbbb lblbb");
        assertThat(chart.rounds())
                .extracting(Round::yarn)
                .containsExactly(
                        chart.yarns().get(0).id(),
                        chart.yarns().get(1).id(),
                        chart.yarns().get(0).id());
        assertThat(chart.title()).isEqualTo("Tide Steps");
    }

    @Test
    void the_chart_drawn_from_words_makes_the_fabric_that_the_words_made() {
        RandomCharts charts = new RandomCharts(11);
        int drawn = 0;
        for (int i = 0; i < 300; i++) {
            Chart chart = charts.workable();
            Instructions pattern = PatternWriter.tree(chart, WordingOptions.of(chart, English.LANGUAGE));
            WorkOutcome outcome =
                    work(pattern, PerSide.all(chart.shape(Side.FIRST).stitches(0, 2)));
            if (ChartFromWords.of(pattern, outcome.fabric()) instanceof Answer.Drawn answer) {
                drawn++;
                int times = answer.chart()
                        .shape()
                        .repeats(0, chart.shape(Side.FIRST).stitches(0, 2))
                        .orElseThrow();
                ProofResult result = new Prover(answer.chart(), English.LANGUAGE).prove(pattern, PerSide.all(times));
                assertThat(result).as("%s", chart).isInstanceOf(ProofResult.Agrees.class);
            }
        }
        assertThat(drawn).isEqualTo(300);
    }

    @Test
    void starts_and_a_back_layer_are_drawn_from_the_words_too() {
        RandomCharts charts = new RandomCharts(12);
        int starts = 0;
        for (int i = 0; i < 200; i++) {
            Chart chart = charts.started(charts.workable());
            chart = chart.withMaking(chart.making().withBack(Optional.of(Back.DEFAULT)));
            PerSide<Integer> repeats = PerSide.all(3);
            Instructions pattern = PatternWriter.tree(
                    chart, WordingOptions.of(chart, English.LANGUAGE).withRepeats(repeats));
            WorkOutcome outcome =
                    work(pattern, PerSide.all(chart.shape(Side.FIRST).stitches(0, 3)));
            Chart drawn = ((Answer.Drawn) ChartFromWords.of(pattern, outcome.fabric())).chart();
            int times = drawn.shape(Side.FIRST)
                    .repeats(0, chart.shape(Side.FIRST).stitches(0, 3))
                    .orElseThrow();
            assertThat(drawn.making().back()).hasValue(Back.DEFAULT);
            assertThat(new Prover(drawn, English.LANGUAGE)
                            .prove(pattern, PerSide.all(times))
                            .agrees())
                    .isTrue();
            if (drawn.making().start().isPresent()) {
                starts++;
                Instructions again = PatternWriter.tree(
                        drawn, WordingOptions.of(drawn, English.LANGUAGE).withRepeats(PerSide.all(times)));
                assertThat(starts(again)).isEqualTo(starts(pattern));
            }
        }
        // A start in the first repeat of one chart may lie past the first repeat of the other, which no chart can say.
        assertThat(starts).isGreaterThan(120);
    }

    private static List<String> starts(Instructions pattern) {
        return pattern.rounds().stream()
                .map(round -> round.start()
                        .map(start -> start.side() + " " + start.stitch())
                        .orElse("at a corner"))
                .toList();
    }

    @Test
    void rounds_that_turn_their_corners_in_different_ways_are_not_one_chart() {
        String other = TYPED.replaceFirst("corner: 2 ch", "corner: 3 ch");
        assertThat(answer(other, PerSide.all(27))).isEqualTo(new Answer.NotOneChart(Why.CORNERS_DIFFER));
    }

    @Test
    void rounds_that_share_no_repeat_within_the_side_are_not_one_chart() {
        String other = TYPED + "\nRound 4, Chalk. 4 dc blo; *8 dc blo, 1 dc; repeat from * to the last 4 sts;"
                + " 4 dc blo; corner: 2 ch.\n";
        assertThat(answer(other, PerSide.all(27))).isEqualTo(new Answer.NotOneChart(Why.NO_COMMON_REPEAT));
    }

    private static Chart drawn(String text, PerSide<Integer> base) {
        Answer answer = answer(text, base);
        assertThat(answer).isInstanceOf(Answer.Drawn.class);
        return ((Answer.Drawn) answer).chart();
    }

    private static Answer answer(String text, PerSide<Integer> base) {
        ReadingResult reading = PatternReader.read(text, English.LANGUAGE);
        assertThat(reading).isInstanceOf(ReadingResult.Understood.class);
        Instructions pattern = ((ReadingResult.Understood) reading).pattern();
        return ChartFromWords.of(pattern, work(pattern, base).fabric());
    }

    private static WorkOutcome work(Instructions pattern, PerSide<Integer> base) {
        WorkOutcome outcome = new Maker(HouseRules.ALL_ALLOWED).work(pattern, base);
        assertThat(outcome).isInstanceOf(WorkOutcome.Finished.class);
        return outcome;
    }
}
