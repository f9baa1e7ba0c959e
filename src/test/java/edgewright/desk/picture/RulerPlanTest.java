package edgewright.desk.picture;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.HookHand;
import edgewright.chart.SideShape;
import edgewright.desk.parts.Look;
import edgewright.desk.work.ChartView;
import edgewright.desk.work.Seeing;
import edgewright.desk.work.Theme;
import edgewright.desk.work.Workbench;
import edgewright.draw.picture.CellLayout;
import edgewright.testing.BlankBench;
import edgewright.texts.English;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** What is read beside the rows of a chart and over its columns. */
class RulerPlanTest {
    private final Workbench bench = BlankBench.of(new SideShape(2, 5, 1));
    private final ChartView view = new ChartView(English.LANGUAGE);

    @BeforeAll
    static void light() {
        Look.setUp(Theme.LIGHT);
    }

    @Test
    void besideALevelSideStandTheRoundsAndOverItTheStitchesFromTheCornerJustTurned() {
        view.see(Seeing.USUAL.withDrawn(Seeing.Drawn.SIDE));

        assertThat(RulerPlan.of(layout(), true, 1).rounds())
                .isEqualTo(Map.of(0, 6, 1, 5, 2, 4, 3, 3, 4, 2, 5, 1, 6, 0));
        RulerPlan above = RulerPlan.of(layout(), false, 1);
        assertThat(above.rounds()).isEmpty();
        // After the repeat they are counted back from the next corner.
        assertThat(above.stitches())
                .isEqualTo(Map.of(15, 1, 14, 2, 13, 3, 12, 4, 11, 5, 10, 6, 9, 7, 8, 8, 7, 2, 6, 1));
        assertThat(above.repeats()).isEqualTo(Map.of(12, 8));
    }

    @Test
    void forTheLeftHandTheRulerRunsTheOtherWay() {
        view.see(new Seeing(Seeing.Drawn.SIDE, HookHand.LEFT, Seeing.USUAL.vision()));

        assertThat(RulerPlan.of(layout(), false, 1).stitches())
                .isEqualTo(Map.of(6, 1, 7, 2, 8, 3, 9, 4, 10, 5, 11, 6, 12, 7, 13, 8, 14, 2, 15, 1));
        assertThat(RulerPlan.of(layout(), false, 1).repeats()).isEqualTo(Map.of(9, 13));
    }

    @Test
    void overACornerStandTheRoundsOfOneArmAndTheStitchesOfTheOther() {
        RulerPlan above = RulerPlan.of(layout(), false, 1);

        assertThat(above.rounds()).isEqualTo(Map.of(0, 6, 1, 5, 2, 4, 3, 3, 4, 2, 5, 1, 6, 0));
        Map<Integer, Integer> beforeTheCorner = new TreeMap<>();
        IntStream.rangeClosed(7, 22).forEach(column -> beforeTheCorner.put(column, column - 5));
        assertThat(above.stitches()).isEqualTo(beforeTheCorner);
        assertThat(above.repeats()).isEqualTo(Map.of(22, 18, 17, 13, 12, 8));
    }

    @Test
    void aRotatedCornerIsReadTheSameWay() {
        RulerPlan unturned = RulerPlan.of(layout(), false, 3);
        for (int quarter = 0; quarter < 4; quarter++) {
            view.turnOn();
        }
        assertThat(RulerPlan.of(layout(), false, 3)).isEqualTo(unturned);
        view.turnOn();
        // A quarter clockwise, what ran level runs down.
        assertThat(RulerPlan.of(layout(), true, 3)).isEqualTo(unturned);
    }

    @Test
    void whereSquaresAreSmallFewerNumbersAreWritten() {
        assertThat(IntStream.of(40, 12, 11, 6, 5, 3, 1).map(px -> RulerPlan.step(px, 12)))
                .containsExactly(1, 1, 2, 2, 5, 5, 20);
    }

    private CellLayout layout() {
        return CanvasPicture.of(bench, view).layout();
    }
}
