package edgewright.desk.work;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.Counting;
import edgewright.chart.PerSide;
import edgewright.texts.English;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** How a chart is looked at: each change is told as what it is, and what is so already is told to nobody. */
class ChartViewTest {
    private final ChartView view = new ChartView(English.LANGUAGE);
    private final List<ViewChange> heard = new ArrayList<>();

    @Test
    void eachChangeIsToldAsWhatItIsAndOnce() {
        view.listen(heard::add);
        for (int time = 1; time <= 2; time++) {
            view.zoomTo(24);
            view.show(ChartView.Layers.FABRIC);
            view.count(Counting.WITH_CHAINS);
            view.resize(PerSide.pairs(3, 4));
        }
        view.turnOn();

        assertThat(heard)
                .containsExactly(
                        ViewChange.SIZE, ViewChange.LAYERS, ViewChange.COUNTING, ViewChange.REPEATS, ViewChange.TURN);
    }

    @Test
    void aChartIsFittedUntilSomebodyChoosesASizeAndThenKeepsThat() {
        view.fitTo(11);
        assertThat(List.of(view.isFitted(), view.cellPx())).isEqualTo(List.of(true, 11));
        view.zoomTo(32);
        view.fitTo(12);
        assertThat(List.of(view.isFitted(), view.cellPx())).isEqualTo(List.of(false, 32));
        view.fit();
        view.fitTo(12);
        assertThat(List.of(view.isFitted(), view.cellPx())).isEqualTo(List.of(true, 12));
    }
}
