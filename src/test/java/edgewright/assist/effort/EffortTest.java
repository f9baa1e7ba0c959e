package edgewright.assist.effort;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import edgewright.chart.Chart;
import edgewright.chart.Colour;
import edgewright.chart.Heading;
import edgewright.chart.PerSide;
import edgewright.chart.Round;
import edgewright.chart.Yarn;
import java.util.List;
import org.junit.jupiter.api.Test;

class EffortTest {
    private static final Chart CHART = new Chart(
            Heading.of("Posts"),
            List.of(new Yarn("A", "Peat", Colour.parse("#2b2a33")), new Yarn("B", "Chalk", Colour.parse("#f2ead8"))),
            List.of(
                    Round.of("A", "b", "bbbb", "bb"),
                    Round.of("B", "bb", "bbbb", "bbb"),
                    Round.of("A", "bbb", "lblb", "lbbb")));

    @Test
    void theWorkOfEachRoundIsCountedOnAllFourSides() {
        Effort effort = Effort.of(CHART, PerSide.all(2), new Pace(20, 10));
        // A side of two repeats in round 3: bbb lblb lblb lbbb, 15 stitches, 5 of them long.
        assertThat(effort.rounds())
                .isEqualTo(List.of(
                        new RoundEffort(1, 44, 0, 0, 0),
                        new RoundEffort(2, 52, 0, 0, 0),
                        new RoundEffort(3, 60, 20, 3, 4)));
        assertThat(effort.stitches()).isEqualTo(156);
        assertThat(effort.longs()).isEqualTo(20);
        assertThat(effort.longestRun()).isEqualTo(3);
        assertThat(effort.changes()).isEqualTo(4);
        // 136 at 20 a minute, 20 at 10 a minute: 8.8 minutes.
        assertThat(effort.hours()).isEqualTo(8.8 / 60);
    }

    @Test
    void aPaceAtWhichNothingIsDoneIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Pace(0, 10))
                .withMessageContaining("expected more than 0");
        assertThatIllegalArgumentException().isThrownBy(() -> new Pace(20, Double.NaN));
    }
}
