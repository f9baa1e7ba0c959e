package edgewright.proof;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.Back;
import edgewright.chart.Chart;
import edgewright.chart.Counting;
import edgewright.chart.HookHand;
import edgewright.chart.HookSize;
import edgewright.chart.PerSide;
import edgewright.chart.Side;
import edgewright.chart.Terms;
import edgewright.hands.BackFabric;
import edgewright.hands.Stop;
import edgewright.testing.RandomCharts;
import edgewright.texts.English;
import edgewright.texts.Languages;
import edgewright.words.page.PlainText;
import edgewright.words.read.PatternReader;
import edgewright.words.read.ReadingResult;
import edgewright.words.tree.Instructions;
import edgewright.words.tree.WrittenBack;
import edgewright.words.write.PatternWriter;
import edgewright.words.write.WordingOptions;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The words of the back layer of a double border, worked back to the join of both layers. */
class BackLayerWordsTest {
    private final RandomCharts charts = new RandomCharts(20_261_129);
    private final Random random = charts.random();

    @Test
    void both_layers_of_a_thousand_charts_are_made_from_their_words_and_joined() {
        for (int i = 0; i < 1_000; i++) {
            Chart chart = chart();
            PerSide<Integer> size = repeats();
            WordingOptions options = WordingOptions.of(chart, Languages.of(i / 2))
                    .withTerms(Terms.values()[i % 2])
                    .withCounting(Counting.values()[random.nextInt(2)])
                    .withHand(HookHand.values()[random.nextInt(2)]);
            PerSide<Integer> repeats = i % 3 == 0 ? LongEnough.repeats(chart, options, size) : size;
            ProofResult result = new Prover(chart, options.language())
                    .prove(i % 3 == 0 ? options : options.withRepeats(repeats), repeats);
            assertThat(result)
                    .as(() -> PlainText.of(PatternWriter.write(chart, options.withRepeats(repeats))))
                    .isInstanceOf(ProofResult.Agrees.class);
            BackFabric back = result.fabric().orElseThrow().back().orElseThrow();
            int rounds = chart.rounds().size();
            assertThat(back.rounds()).isEqualTo((rounds + 1) / 2);
            // A slip stitch in every stitch of the last round and in every corner chain.
            assertThat(back.joins())
                    .isEqualTo(result.fabric().orElseThrow().total(rounds)
                            + 4L * chart.corner().chains());
        }
    }

    @Test
    void a_round_of_the_tall_stitch_makes_each_side_four_stitches_longer() {
        // Published: 28, 44, 60, 76, 92, 108 stitches in rounds with two of the tall stitch at each arm of a corner.
        // https://crochetbouquet.co.uk/pages/week-three-square-ten-solid-square
        String rounds = IntStream.rangeClosed(1, 10)
                .mapToObj(r -> "Round %d, Peat: dc blo in every stitch; corner: 2 ch.\n\n".formatted(r))
                .reduce("", String::concat);
        String back = IntStream.rangeClosed(1, 5)
                .mapToObj(r ->
                        ("Back round %d, as round %d of the front. tr in every stitch between the corners; corner: "
                                        + "2 tr, 2 ch, 2 tr.\n\n")
                                .formatted(r, 2 * r))
                .reduce("", String::concat);
        ProofResult result = worked("UK terms\n\n" + rounds + "Back layer\n\n" + back);
        assertThat(result.agrees()).isTrue();
        BackFabric made = result.fabric().orElseThrow().back().orElseThrow();
        assertThat(IntStream.rangeClosed(0, 5)
                        .map(r -> Stream.of(Side.values())
                                .mapToInt(side -> made.side(r, side).size())
                                .sum())
                        .boxed())
                .isEqualTo(List.of(28, 44, 60, 76, 92, 108));
        assertThat(made.joins()).isZero();
    }

    @Test
    void rounds_of_a_back_layer_that_are_worked_alike_stand_together_unless_each_is_asked_for() {
        int together = 0;
        for (int i = 0; i < 200; i++) {
            Chart chart = chart();
            PerSide<Integer> repeats = repeats();
            WordingOptions options = WordingOptions.of(chart, Languages.of(i))
                    .withTerms(Terms.values()[i % 2])
                    .withRepeats(repeats);
            WordingOptions each = options.withEachRound(true);
            assertThat(PatternWriter.tree(chart, options).back())
                    .isEqualTo(PatternWriter.tree(chart, each).back());
            for (WordingOptions way : List.of(options, each)) {
                String text = PlainText.of(PatternWriter.write(chart, way));
                assertThat(((ReadingResult.Understood) PatternReader.read(text, way.language()))
                                .pattern()
                                .back())
                        .as(text)
                        .isEqualTo(PatternWriter.tree(chart, way).back());
            }
            if (options.language().equals(English.LANGUAGE)) {
                Predicate<WordingOptions> merged =
                        way -> PlainText.of(PatternWriter.write(chart, way)).contains("Back rounds");
                assertThat(merged.test(each)).isFalse();
                together += merged.test(options) ? 1 : 0;
            }
        }
        assertThat(together).isGreaterThan(20);
    }

    @Test
    void no_wrong_number_in_the_words_of_a_back_layer_passes() {
        // Which of the rounds before it a round is worked as makes no difference where these are alike.
        WrongNumbers wrong = new WrongNumbers("(?<!Work as\\s{1,5}back round )[0-9]+", right -> right + 1);
        int spoilt = 0;
        for (int i = 0; i < 60; i++) {
            Chart chart = chart();
            PerSide<Integer> repeats = repeats();
            String text = PlainText.of(PatternWriter.write(
                    chart,
                    WordingOptions.of(chart, English.LANGUAGE)
                            .withTerms(Terms.values()[i % 2])
                            .withRepeats(repeats)));
            int begin = text.indexOf("Back base round");
            spoilt += wrong.assertNonePasses(
                    text,
                    begin,
                    text.length() + 1,
                    words -> new Prover(chart, English.LANGUAGE)
                            .prove(words, repeats)
                            .agrees());
        }
        assertThat(spoilt).isGreaterThan(800);
    }

    @Test
    void layers_that_do_not_end_with_the_same_counts_are_not_joined() {
        String front = "UK terms\n\nRound 1, Peat: dc blo in every stitch; corner: 2 ch.\n\nBack layer\n\n";
        String joining =
                "Joining round. sl st in every stitch and every corner chain, through the back loops of both layers.";
        String tall = "Back round 1. tr in every stitch between the corners; corner: 2 tr, %d ch, 2 tr.\n\n";
        String low = "Back round 1. dc in every stitch between the corners; corner: 1 dc, 2 ch, 1 dc.\n\n";
        assertThat(stop(front + tall.formatted(2) + joining))
                .isEqualTo(new Stop(Stop.Reason.LAYERS_DIFFER, 1, Side.TOP, 11, Optional.empty(), 9, 11));
        assertThat(stop(front + tall.formatted(1) + joining).reason()).isEqualTo(Stop.Reason.CORNERS_DIFFER);
        assertThat(worked(front + low + joining).agrees()).isTrue();
    }

    @Test
    void a_double_border_whose_words_do_not_join_the_layers_does_not_make_the_chart() {
        for (int i = 0; i < 20; i++) {
            Chart chart = chart();
            PerSide<Integer> repeats = repeats();
            Instructions whole = PatternWriter.tree(
                    chart, WordingOptions.of(chart, English.LANGUAGE).withRepeats(repeats));
            WrittenBack back = whole.back().orElseThrow();
            Instructions unjoined =
                    whole.withBack(Optional.of(new WrittenBack(back.hook(), back.base(), back.rounds(), false)));
            int rounds = chart.rounds().size();
            long joins = PerSide.sum(repeats.map(m -> chart.shape(Side.FIRST).stitches(rounds, m)))
                    + 4L * chart.corner().chains();
            ProofResult result = new Prover(chart, English.LANGUAGE).prove(unjoined, repeats);
            assertThat(((ProofResult.Differs) result).differences()).containsExactly(new Difference.Joins(joins, 0));
        }
    }

    /** What comes of words on a piece of seven stitches a side, with no chart to compare with. */
    private static ProofResult worked(String text) {
        ReadingResult reading = PatternReader.read(text, English.LANGUAGE);
        return Prover.work(((ReadingResult.Understood) reading).pattern(), PerSide.all(7));
    }

    private static Stop stop(String text) {
        return ((ProofResult.Stopped) worked(text)).stop();
    }

    private Chart chart() {
        Chart chart = charts.workable();
        chart = random.nextBoolean() ? charts.started(chart) : chart;
        Optional<HookSize> hook = random.nextBoolean() ? Optional.of(HookSize.ofMm(4.5)) : Optional.empty();
        return chart.withCorner(chart.corner().withChains(1 + random.nextInt(3)))
                .withMaking(chart.making().withBack(Optional.of(new Back(hook))));
    }

    /** Enough for every start. */
    private PerSide<Integer> repeats() {
        return PerSide.all(0).map(zero -> 2 + random.nextInt(3));
    }
}
