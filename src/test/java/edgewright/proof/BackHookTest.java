package edgewright.proof;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.Back;
import edgewright.chart.Chart;
import edgewright.chart.Colour;
import edgewright.chart.HookSize;
import edgewright.chart.PerSide;
import edgewright.chart.SideShape;
import edgewright.chart.Yarn;
import edgewright.texts.English;
import edgewright.words.write.WordingOptions;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is written of a hook is read back, for every thickness that a chart file may state. */
class BackHookTest {
    @ParameterizedTest
    @ValueSource(ints = {1, 5, 10, 75, 99, 100, 450, 455, 9_999, 10_000, 12_000, 1_234_567, 100_000_000})
    void theHookOfABackLayerIsReadAsItIsWritten(int hundredthsMm) {
        Chart chart = BLANK.withMaking(
                BLANK.making().withBack(Optional.of(new Back(Optional.of(new HookSize(hundredthsMm))))));
        ProofResult result =
                new Prover(chart, English.LANGUAGE).prove(WordingOptions.of(chart, English.LANGUAGE), PerSide.all(2));
        assertThat(result).isInstanceOf(ProofResult.Agrees.class);
        assertThat(((ProofResult.Agrees) result).pattern().back().orElseThrow().hook())
                .contains(new HookSize(hundredthsMm));
    }

    private static final Chart BLANK = Chart.blank(
            "Reed Bank", new SideShape(2, 5, 1), 4, List.of(new Yarn("A", "Peat", Colour.parse("#2b2a33"))));
}
