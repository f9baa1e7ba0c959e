package edgewright.proof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import edgewright.chart.Chart;
import edgewright.chart.Colour;
import edgewright.chart.Counting;
import edgewright.chart.Edits;
import edgewright.chart.HookHand;
import edgewright.chart.PerSide;
import edgewright.chart.Place;
import edgewright.chart.Section;
import edgewright.chart.Side;
import edgewright.chart.SideShape;
import edgewright.chart.Start;
import edgewright.chart.Stitch;
import edgewright.chart.Terms;
import edgewright.chart.Yarn;
import edgewright.hands.Stop;
import edgewright.testing.RandomCharts;
import edgewright.texts.English;
import edgewright.texts.Languages;
import edgewright.words.page.PlainText;
import edgewright.words.write.PatternWriter;
import edgewright.words.write.WordingOptions;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;

class ProverTest {
    private static final PerSide<Integer> REPEATS = PerSide.of(0, 1, 2, 3);

    @Test
    void the_words_of_thousands_of_charts_make_their_charts_in_either_terms_for_any_size() {
        RandomCharts charts = new RandomCharts(20_261_125);
        Random random = charts.random();
        for (int i = 0; i < 1_500; i++) {
            Chart chart = charts.workable();
            chart = chart.withCorner(chart.corner().withChains(1 + random.nextInt(3)));
            PerSide<Integer> repeats =
                    PerSide.of(random.nextInt(4), random.nextInt(4), random.nextInt(4), random.nextInt(4));
            WordingOptions options = new WordingOptions(
                    Languages.of(i / 2),
                    Terms.values()[i % 2],
                    Counting.values()[random.nextInt(2)],
                    random.nextBoolean() ? Optional.of(repeats) : Optional.empty());
            assertAgrees(chart, options, LongEnough.repeats(chart, options, repeats));
        }
    }

    @Test
    void the_words_of_thousands_of_charts_with_starts_make_their_charts_for_either_hand() {
        RandomCharts charts = new RandomCharts(20_261_126);
        Random random = charts.random();
        for (int i = 0; i < 2_000; i++) {
            Chart chart = charts.started(charts.workable());
            chart = chart.withCorner(chart.corner().withChains(1 + random.nextInt(3)));
            PerSide<Integer> repeats =
                    PerSide.of(random.nextInt(4), random.nextInt(4), random.nextInt(4), random.nextInt(4));
            WordingOptions everySize = WordingOptions.of(chart, Languages.of(i / 2))
                    .withTerms(Terms.values()[i % 2])
                    .withHand(HookHand.values()[random.nextInt(2)]);
            assertAgrees(chart, everySize.withRepeats(repeats), repeats);
            assertAgrees(chart, everySize, LongEnough.repeats(chart, everySize, repeats));
        }
    }

    private static void assertAgrees(Chart chart, WordingOptions options, PerSide<Integer> repeats) {
        assertThat(new Prover(chart, options.language()).prove(options, repeats))
                .as("%s%n%s", repeats, PlainText.of(PatternWriter.write(chart, options)))
                .isInstanceOf(ProofResult.Agrees.class);
    }

    @Test
    void a_side_that_is_too_short_for_its_start_is_refused_at_the_base_round() {
        // Column 5 is the third of the first repeat, columns 3 to 7; the words that follow the group take in some of
        // the last.
        Chart chart = Edits.setStitches(blank(), List.of(new Place(3, Section.REPEAT, 2)), Stitch.LONG);
        chart = chart.withMaking(
                chart.making().withStart(Optional.of(new Start(OptionalInt.of(5), Side.TOP, Side.LEFT))));
        WordingOptions everySize = WordingOptions.of(chart, English.LANGUAGE);
        assertThat(PatternWriter.tree(chart, everySize).base().fewest()).hasValue(13);
        assertThat(new Prover(chart, English.LANGUAGE)
                        .prove(everySize, PerSide.all(2))
                        .agrees())
                .isTrue();
        ProofResult.Stopped stopped =
                (ProofResult.Stopped) new Prover(chart, English.LANGUAGE).prove(everySize, REPEATS);
        assertThat(stopped.stop().reason()).isEqualTo(Stop.Reason.BASE_TOO_SHORT);
        assertThat(new Prover(chart, English.LANGUAGE)
                        .prove(everySize.withRepeats(REPEATS), REPEATS)
                        .agrees())
                .isTrue();
    }

    @Test
    void words_for_one_size_do_not_make_another() {
        Chart chart = new RandomCharts(3).workable();
        ProofResult result = new Prover(chart, English.LANGUAGE)
                .prove(WordingOptions.of(chart, English.LANGUAGE).withRepeats(REPEATS), PerSide.of(0, 1, 2, 4));
        assertThat(result).isInstanceOf(ProofResult.Stopped.class);
    }

    @Test
    void a_stitch_that_is_another_one_is_found_where_it_stands() {
        Chart chart = blank();
        Chart other = Edits.setStitches(chart, List.of(new Place(3, Section.REPEAT, 2)), Stitch.LONG);
        ProofResult.Differs result = differs(other, chart);
        assertThat(result.differences())
                .startsWith(
                        new Difference.OtherShown(new FabricPlace(2, Side.LEFT, 6), 3, 2),
                        new Difference.OtherShown(new FabricPlace(2, Side.BOTTOM, 6), 3, 2))
                .contains(new Difference.OtherStitch(new FabricPlace(3, Side.LEFT, 7), Stitch.LONG, Stitch.BACK_LOOP));
        assertThat(result.agrees()).isFalse();
    }

    @Test
    void another_yarn_another_corner_and_a_round_too_few_are_found() {
        Chart chart = blank();
        String first = chart.round(1).yarn();
        Chart otherYarn = Edits.changeYarn(chart, 2, first);
        assertThat(differs(otherYarn, chart).differences())
                .containsExactly(new Difference.OtherYarn(
                        2, chart.yarnOf(1).name(), chart.yarnOf(2).name()));
        Chart otherCorner = chart.withCorner(chart.corner().withChains(3));
        assertThat(differs(otherCorner, chart).differences())
                .containsExactly(
                        new Difference.CornerChains(1, 3, 2),
                        new Difference.CornerChains(2, 3, 2),
                        new Difference.CornerChains(3, 3, 2));
        assertThat(differs(chart, Edits.deleteRounds(chart, 3, 3)).differences())
                .containsExactly(new Difference.Rounds(3, 2));
    }

    @Test
    void a_yarn_counts_as_the_same_by_its_name_where_only_one_has_that_name_and_by_its_id_where_two_have() {
        Chart chart = blank();
        List<Yarn> sameName =
                chart.yarns().stream().map(yarn -> yarn.withName("Peat")).toList();
        Chart twins = chart.withYarns(sameName);
        assertThat(new Prover(twins, English.LANGUAGE)
                        .prove(WordingOptions.of(twins, English.LANGUAGE), REPEATS)
                        .agrees())
                .isTrue();
        Chart swapped = Edits.changeYarn(Edits.changeYarn(twins, 1, "B"), 2, "A");
        assertThat(differs(twins, swapped).differences()).hasAtLeastOneElementOfType(Difference.OtherYarn.class);
    }

    @Test
    void words_that_cannot_be_read_are_not_worked() {
        Chart chart = blank();
        ProofResult result =
                new Prover(chart, English.LANGUAGE).prove("UK terms\nRound 1, Peat. 3 frobs; corner: 2 ch.", REPEATS);
        assertThat(result).isInstanceOf(ProofResult.Unread.class);
    }

    @Test
    void a_proof_can_be_called_off() {
        Chart chart = blank();
        assertThatThrownBy(() -> new Prover(chart, English.LANGUAGE, () -> true)
                        .prove(WordingOptions.of(chart, English.LANGUAGE), REPEATS))
                .isInstanceOf(CancellationException.class);
    }

    /** What comes of the words of one chart when they are held to another. */
    private static ProofResult.Differs differs(Chart meant, Chart written) {
        ProofResult result = new Prover(meant, English.LANGUAGE)
                .prove(PatternWriter.tree(written, WordingOptions.of(written, English.LANGUAGE)), REPEATS);
        assertThat(result).isInstanceOf(ProofResult.Differs.class);
        return (ProofResult.Differs) result;
    }

    private static Chart blank() {
        return Chart.blank(
                "Mud Ripple",
                new SideShape(2, 5, 1),
                3,
                List.of(
                        new Yarn("A", "Peat", Colour.parse("#2b2a33")),
                        new Yarn("B", "Chalk", Colour.parse("#f2ead8"))));
    }
}
