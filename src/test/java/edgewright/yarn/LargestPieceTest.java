package edgewright.yarn;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.Back;
import edgewright.chart.Chart;
import edgewright.chart.Colour;
import edgewright.chart.PerSide;
import edgewright.chart.SideShape;
import edgewright.chart.Yarn;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The stitches of the largest piece that can be asked about are counted right. */
class LargestPieceTest {
    @ParameterizedTest
    @ValueSource(ints = {600, Chart.MOST_STITCHES})
    void the_stitches_of_a_million_repeats_a_side_are_more_than_an_int_holds(int w) {
        SideShape shape = new SideShape(1, w, 2);
        Chart blank = Chart.blank("Reed Bank", shape, 2, List.of(new Yarn("A", "Peat", Colour.parse("#2b2a33"))));
        Chart chart = blank.withMaking(blank.making().withBack(Optional.of(Back.DEFAULT)));
        PerSide<Integer> repeats = PerSide.all(PerSide.MOST_TYPED);
        long repeated = 4L * PerSide.MOST_TYPED * w;
        // Front: corner sections of 3 + 2r stitches and 8 chains. Back: a base round, a tall round, and slip stitches.
        assertThat(WorkedRound.of(chart, repeats).stream().map(WorkedRound::total))
                .containsExactly(
                        repeated + 4 * 5 + 8,
                        repeated + 4 * 7 + 8,
                        repeated + 4 * 3 + 8,
                        repeated + 4 * 7 + 8,
                        repeated + 4 * 7 + 8);
    }
}
