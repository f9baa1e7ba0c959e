package edgewright.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import edgewright.chart.PerSide;
import edgewright.chart.Round;
import edgewright.chart.Rules;
import edgewright.testing.RandomCharts;
import edgewright.testing.Sketches;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SketchTest {

    @Test
    void a_sketch_is_read_from_the_innermost_round_out_and_its_marks_are_left_out() {
        Sketch sketch = Sketch.read("""
                landOnCornerChain false
                stackLongStitches true
                looseRun 4
                sides 9,7
                D4 Marsh Samphire #6f8a4f

                ! TOP unclosed-side
                2 D4 lb|cp|bb
                     ^ past-corner
                1 A   b|bb|b
                ! low-contrast
                """);
        assertThat(sketch.chart().rounds())
                .containsExactly(Round.of("A", "b", "bb", "b"), Round.of("D4", "lb", "cp", "bb"));
        assertThat(sketch.chart().yarns())
                .extracting(yarn -> yarn.id() + " " + yarn.name() + " " + yarn.colour())
                .containsExactly("A Peat #2b2a33", "B Chalk #f2ead8", "D4 Marsh Samphire #6f8a4f");
        assertThat(sketch.chart().rules())
                .isEqualTo(Rules.DEFAULT
                        .withLandOnCornerChain(false)
                        .withStackLongStitches(true)
                        .withLooseRun(4));
        assertThat(sketch.sides()).contains(PerSide.pairs(9, 7));
    }

    @ParameterizedTest
    @ValueSource(strings = {"2 A b|b", "1 A x|b|b", "looseRun", "tightRun 3", "what is this"})
    void a_line_that_is_none_is_quoted(String line) {
        assertThatThrownBy(() -> Sketch.read("1 A b|b|b\n" + line))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("not a line of a sketch: '" + line + "'");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "2 A bb|b|bb", "A Peat #2b2a33"})
    void a_sketch_goes_down_to_round_1(String sketch) {
        assertThatThrownBy(() -> Sketch.read(sketch)).hasMessage("a sketch goes down to round 1");
    }

    @Test
    void rounds_stand_in_order() {
        assertThatThrownBy(() -> Sketch.read("3 A b|b|b\n1 A b|b|b")).hasMessage("not a line of a sketch: '1 A b|b|b'");
    }

    @Test
    void what_is_written_down_is_read_back() {
        RandomCharts charts = new RandomCharts(61);
        for (int i = 0; i < 200; i++) {
            var chart = i % 3 == 0 ? charts.ragged() : charts.small();
            String yarns = "C Fog #e4dccb\nD4 Rust #a9502f\nE Mud #3f3d46\n";
            assertThat(Sketches.chart(yarns + Sketches.rounds(chart)).rounds()).isEqualTo(chart.rounds());
        }
    }
}
