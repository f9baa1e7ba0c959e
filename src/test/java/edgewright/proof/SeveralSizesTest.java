package edgewright.proof;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.Chart;
import edgewright.chart.Counting;
import edgewright.chart.HookHand;
import edgewright.chart.NamedSize;
import edgewright.chart.PerSide;
import edgewright.chart.Side;
import edgewright.chart.Terms;
import edgewright.fit.PatternSize;
import edgewright.hands.Stop;
import edgewright.testing.RandomCharts;
import edgewright.texts.English;
import edgewright.texts.Language;
import edgewright.texts.Languages;
import edgewright.words.page.PlainText;
import edgewright.words.tree.Instructions;
import edgewright.words.tree.SideSize;
import edgewright.words.tree.WrittenRound;
import edgewright.words.write.PatternWriter;
import edgewright.words.write.WordingOptions;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** A pattern for several sizes is worked in each of them, and no number of it may be wrong. */
class SeveralSizesTest {
    /** Three sizes, of which the third alone differs from the first at left and right. */
    private static final List<PerSide<Integer>> THREE =
            List.of(PerSide.pairs(3, 2), PerSide.pairs(5, 4), PerSide.pairs(3, 6));

    private static PatternSize named(List<PerSide<Integer>> sizes) {
        return new PatternSize.OfSizes(IntStream.range(0, sizes.size())
                .mapToObj(i -> new PatternSize.OfSizes.Size("Size " + i, sizes.get(i)))
                .toList());
    }

    @Test
    void the_words_for_up_to_eight_sizes_make_the_chart_in_each_of_them() {
        RandomCharts charts = new RandomCharts(31);
        Random random = charts.random();
        for (int i = 0; i < 60; i++) {
            Chart chart = charts.workable();
            if (i % 3 == 0) {
                chart = charts.started(chart);
            }
            List<PerSide<Integer>> sizes = IntStream.rangeClosed(1, 1 + random.nextInt(NamedSize.MOST))
                    .mapToObj(each -> PerSide.pairs(random.nextInt(9), random.nextInt(9)))
                    .toList();
            Language language = Languages.of(i / 2);
            WordingOptions options = WordingOptions.of(chart, language)
                    .withTerms(Terms.values()[random.nextInt(2)])
                    .withCounting(Counting.values()[random.nextInt(2)])
                    .withHand(HookHand.values()[random.nextInt(2)])
                    .withSize(named(sizes));
            String text = PlainText.of(PatternWriter.write(chart, options));
            Prover prover = new Prover(chart, language);
            for (PerSide<Integer> size : sizes) {
                assertThat(prover.prove(text, size).agrees())
                        .as("%s%n%s", new ProofSentences(English.LANGUAGE).of(prover.prove(text, size)), text)
                        .isTrue();
            }
            assertThat(prover.prove(text, PerSide.all(10)).agrees()).as(text).isFalse();
        }
    }

    @Test
    void a_count_that_is_wrong_in_one_size_only_is_found_in_that_size_at_its_round_and_in_no_other() {
        Chart chart = new RandomCharts(32).workable();
        Instructions tree = PatternWriter.tree(
                chart, WordingOptions.of(chart, English.LANGUAGE).withSize(named(THREE)));
        Prover prover = new Prover(chart, English.LANGUAGE);
        for (int round = 1; round <= tree.rounds().size(); round++) {
            for (int wrong = 0; wrong < THREE.size(); wrong++) {
                Instructions spoilt = spoilt(tree, round, wrong);
                for (int size = 0; size < THREE.size(); size++) {
                    ProofResult result = prover.prove(spoilt, THREE.get(size));
                    assertThat(result.agrees())
                            .as("round %d, size %d", round, wrong)
                            .isEqualTo(size != wrong);
                    if (size == wrong) {
                        Stop stop = ((ProofResult.Stopped) result).stop();
                        assertThat(stop.reason()).isEqualTo(Stop.Reason.COUNT_NOT_MET);
                        assertThat(stop.round()).isEqualTo(round);
                        assertThat(stop.side()).isEqualTo(Side.LEFT);
                    }
                }
            }
        }
    }

    /** The tree with one stitch too many at left and right of this size in this round. */
    private static Instructions spoilt(Instructions tree, int round, int size) {
        List<WrittenRound> rounds = new ArrayList<>(tree.rounds());
        WrittenRound right = rounds.get(round - 1);
        List<PerSide<Integer>> counts = new ArrayList<>(right.side().counts());
        PerSide<Integer> sides = counts.get(size);
        counts.set(size, PerSide.pairs(sides.top(), sides.left() + 1));
        SideSize stated = SideSize.of(counts);
        rounds.set(
                round - 1,
                right.start()
                        .<WrittenRound>map(start -> new WrittenRound.AlongSide(
                                round, right.yarn(), stated, right.stretch(), right.cornerChains(), start))
                        .orElseGet(() -> new WrittenRound.AtCorner(
                                round, right.yarn(), stated, right.stretch(), right.cornerChains())));
        return tree.withRounds(rounds);
    }

    @Test
    void an_example_that_is_wrong_is_found_on_a_piece_of_any_size() {
        Chart chart = new RandomCharts(33).workable();
        WordingOptions options = WordingOptions.of(chart, English.LANGUAGE);
        Instructions tree = PatternWriter.tree(chart, options);
        Prover prover = new Prover(chart, English.LANGUAGE);
        for (int repeats : List.of(0, 1, 5, 11)) {
            PerSide<Integer> piece = LongEnough.repeats(chart, options, PerSide.all(repeats));
            assertThat(prover.prove(tree, piece)).isInstanceOf(ProofResult.Agrees.class);
            for (int example = 0; example < 2; example++) {
                ProofResult result = prover.prove(spoilt(tree, tree.rounds().size(), example), piece);
                assertThat(((ProofResult.Stopped) result).stop().round())
                        .isEqualTo(tree.rounds().size());
            }
        }
    }
}
