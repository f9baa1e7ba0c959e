package edgewright.words.write;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.Chart;
import edgewright.chart.Counting;
import edgewright.chart.HookHand;
import edgewright.chart.Side;
import edgewright.chart.SideShape;
import edgewright.fit.ChangeRounds;
import edgewright.texts.English;
import edgewright.texts.Language;
import edgewright.words.SeededCharts;
import edgewright.words.tree.Instructions;
import org.junit.jupiter.api.Test;

/** The words and the worksheet must name the same rounds, though they find them in different things. */
class ChangingAdviceTest {

    @Test
    void theWordsNameTheRoundsThatTheWorksheetNames() {
        int onTheWay = 0;
        for (long seed = 0; seed < 600; seed++) {
            Chart chart = new SeededCharts(seed).any();
            ChangeRounds rounds = ChangeRounds.of(chart);
            Instructions pattern = PatternWriter.tree(chart, WordingOptions.of(chart, English.LANGUAGE));
            ChangingAdvice advice = new ChangingAdvice(
                    English.LANGUAGE,
                    pattern.rounds(),
                    pattern.base().side().multiple(),
                    new SizeWording(English.LANGUAGE, Counting.STITCHES, HookHand.RIGHT));
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
                    .contains("(two together) in round " + rounds.changing() + ",")
                    .contains("count again in "
                            + (rounds.checking().isPresent()
                                    ? "round " + rounds.checking().getAsInt() + "."
                                    : "that round."));
            int checking = rounds.checking().orElse(rounds.changing());
            SideShape shape = chart.shape(Side.FIRST);
            int plus = shape.stitches(checking, 0) % shape.w();
            if (shape.w() > 1) {
                assertThat(said)
                        .as("seed %d", seed)
                        .endsWith("There a side must have a multiple of " + shape.w()
                                + (plus == 0 ? "" : " plus " + plus) + " stitches.");
            }
        }
        assertThat(onTheWay).isBetween(50, 550);
    }
}
