package edgewright.words.write;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.Chart;
import edgewright.fit.ChangeRounds;
import edgewright.texts.English;
import edgewright.texts.Language;
import edgewright.words.SeededCharts;
import org.junit.jupiter.api.Test;

/** The words and the worksheet must name the same rounds, though they find them in different things. */
class ChangingAdviceTest {

    @Test
    void theWordsNameTheRoundsThatTheWorksheetNames() {
        int onTheWay = 0;
        for (long seed = 0; seed < 600; seed++) {
            Chart chart = new SeededCharts(seed).any();
            ChangeRounds rounds = ChangeRounds.of(chart);
            ChangingAdvice advice = new ChangingAdvice(
                    English.LANGUAGE,
                    PatternWriter.tree(chart, WordingOptions.of(chart, English.LANGUAGE))
                            .rounds());
            String said = advice.paragraph().replace(Language.NO_BREAK, ' ');
            if (rounds.changing() == 0) {
                assertThat(said).as("seed %d", seed).contains("put it right before round 1");
                continue;
            }
            onTheWay++;
            int counting = rounds.counting().getAsInt();
            assertThat(said)
                    .as("seed %d", seed)
                    .contains("count every side in " + (counting == 0 ? "the base round," : "round " + counting + ","))
                    .contains("more or fewer in round " + rounds.changing() + ",")
                    .contains("count again in "
                            + (rounds.checking().isPresent()
                                    ? "round " + rounds.checking().getAsInt() + "."
                                    : "that round."));
        }
        assertThat(onTheWay).isBetween(50, 550);
    }
}
