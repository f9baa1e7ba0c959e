package edgewright.proof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import edgewright.chart.Chart;
import edgewright.chart.HookHand;
import edgewright.chart.PerSide;
import edgewright.chart.Side;
import edgewright.testing.RandomCharts;
import edgewright.texts.English;
import edgewright.texts.Languages;
import edgewright.words.write.WordingOptions;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;

class SizeProofsTest {
    private static final ProofSentences SAYS = new ProofSentences(English.LANGUAGE);
    private static final Chart CHART = new RandomCharts(5).workable();

    @Test
    void the_words_are_worked_for_every_size_and_each_is_told_of() {
        List<SizeProofs.Trial> told = new ArrayList<>();
        List<SizeProofs.Trial> trials = SizeProofs.run(
                CHART, WordingOptions.of(CHART, English.LANGUAGE), SizeProofs.USUAL, SAYS, told::add, () -> false);
        assertThat(told).isEqualTo(trials);
        assertThat(trials).extracting(SizeProofs.Trial::repeats).isEqualTo(SizeProofs.USUAL);
        assertThat(trials).allMatch(SizeProofs.Trial::agrees);
        for (SizeProofs.Trial trial : trials) {
            long stitches = 0;
            for (int r = 1; r <= CHART.rounds().size(); r++) {
                int round = r;
                stitches += PerSide.sum(
                        trial.repeats().map(times -> CHART.shape(Side.FIRST).stitches(round, times)));
            }
            assertThat(trial.stitches()).isEqualTo(stitches);
        }
    }

    @Test
    void the_words_of_a_chart_with_starts_are_worked_too_on_sides_that_are_too_short_for_its_every_size() {
        RandomCharts charts = new RandomCharts(7);
        for (int i = 0; i < 40; i++) {
            Chart chart = charts.started(charts.workable());
            WordingOptions options =
                    WordingOptions.of(chart, Languages.of(i / 2)).withHand(HookHand.values()[i % 2]);
            assertThat(SizeProofs.run(chart, options, SizeProofs.USUAL, SAYS, trial -> {}, () -> false))
                    .allMatch(SizeProofs.Trial::agrees);
        }
    }

    @Test
    void none_one_odd_even_and_differing_sides_are_among_the_usual_sizes() {
        assertThat(SizeProofs.USUAL).contains(PerSide.all(0), PerSide.all(1));
        assertThat(SizeProofs.USUAL).anyMatch(size -> size.top() > 1 && size.top() % 2 == 0);
        assertThat(SizeProofs.USUAL).anyMatch(size -> size.top() > 1 && size.top() % 2 == 1);
        assertThat(SizeProofs.USUAL).anyMatch(size -> size.stream().distinct().count() == 4);
    }

    @Test
    void the_trials_can_be_called_off() {
        assertThatThrownBy(() -> SizeProofs.run(
                        CHART,
                        WordingOptions.of(CHART, English.LANGUAGE),
                        SizeProofs.USUAL,
                        SAYS,
                        trial -> {},
                        () -> true))
                .isInstanceOf(CancellationException.class);
    }
}
