package edgewright.proof;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.BorderGrid;
import edgewright.chart.Chart;
import edgewright.chart.GridCell;
import edgewright.chart.GridContent;
import edgewright.chart.HookHand;
import edgewright.chart.PerSide;
import edgewright.chart.Side;
import edgewright.hands.Fabric;
import edgewright.testing.RandomCharts;
import edgewright.texts.English;
import edgewright.words.page.PlainText;
import edgewright.words.write.PatternWriter;
import edgewright.words.write.WordingOptions;
import java.util.HashMap;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * A left-handed maker who works the words for the left hand makes the mirror image of the chart. What comes off the hook is
 * laid out here by walking round the piece as a maker does, which knows nothing of the chart's own grid.
 *
 * <p>Source of the two ways round: https://froginthepond.wordpress.com/2010/08/04/the-left-handed-crocheter/
 */
class LeftHandTest {
    /** A step on squared paper, x to the right and y down. */
    private record Step(int x, int y) {
        /** The step after turning towards the piece at a corner. */
        Step turned(boolean clockwise) {
            return clockwise ? new Step(-y, x) : new Step(y, -x);
        }
    }

    @Test
    void the_words_for_the_left_hand_make_the_mirror_image_of_the_chart() {
        RandomCharts charts = new RandomCharts(20_261_127);
        Random random = charts.random();
        for (int i = 0; i < 400; i++) {
            Chart chart = charts.workable();
            chart = random.nextBoolean() ? charts.started(chart) : chart;
            int level = 1 + random.nextInt(3);
            int upright = 1 + random.nextInt(3);
            PerSide<Integer> repeats = PerSide.pairs(level, upright);
            Map<GridCell, String> right = worked(chart, repeats, HookHand.RIGHT);
            Map<GridCell, String> left = worked(chart, repeats, HookHand.LEFT);
            int width = chart.shape(Side.FIRST).stitches(0, level);
            assertThat(right).as("right hand, %d", i).isEqualTo(charted(chart, repeats));
            assertThat(left).as("left hand, %d", i).isEqualTo(mirrored(right, width));
        }
    }

    private static Map<GridCell, String> worked(Chart chart, PerSide<Integer> repeats, HookHand hand) {
        WordingOptions options =
                WordingOptions.of(chart, English.LANGUAGE).withHand(hand).withRepeats(repeats);
        ProofResult result =
                new Prover(chart, English.LANGUAGE).prove(PlainText.of(PatternWriter.write(chart, options)), repeats);
        assertThat(result.agrees()).isTrue();
        return laidOut(result.fabric().orElseThrow(), hand);
    }

    /** Each round walked from its first corner: along a side, over the corner's cell, and round it to the next side. */
    private static Map<GridCell, String> laidOut(Fabric fabric, HookHand hand) {
        boolean clockwise = hand == HookHand.LEFT;
        int width = fabric.side(0, Side.TOP).size();
        Map<GridCell, String> paper = new HashMap<>();
        for (int r = 1; r <= fabric.rounds(); r++) {
            int x = clockwise ? -r : width + r - 1;
            int y = -r - 1;
            Step step = new Step(clockwise ? 1 : -1, 0);
            Side side = Side.TOP;
            for (int turns = 0; turns < 4; turns++) {
                for (char letter : fabric.letters(r, side).toCharArray()) {
                    paper.put(new GridCell(x, y), r + " " + letter);
                    x += step.x();
                    y += step.y();
                }
                step = step.turned(clockwise);
                x += step.x();
                y += step.y();
                side = clockwise ? side.next().opposite() : side.next();
            }
        }
        return paper;
    }

    private static Map<GridCell, String> charted(Chart chart, PerSide<Integer> repeats) {
        BorderGrid grid = new BorderGrid(chart.border(), repeats);
        int out = chart.rounds().size() + 1;
        Map<GridCell, String> paper = new HashMap<>();
        for (int y = -out; y < grid.height() + out; y++) {
            for (int x = -out; x < grid.width() + out; x++) {
                GridCell cell = new GridCell(x, y);
                if (grid.contentOf(cell) instanceof GridContent.SideStitch in
                        && in.place().round() > 0) {
                    int m = repeats.get(in.side());
                    var place = chart.shape(Side.FIRST).placeOf(in.place(), m);
                    paper.put(cell, place.round() + " " + chart.stitch(place).letter());
                }
            }
        }
        return paper;
    }

    private static Map<GridCell, String> mirrored(Map<GridCell, String> paper, int width) {
        Map<GridCell, String> mirror = new HashMap<>();
        paper.forEach((cell, stitch) -> mirror.put(new GridCell(width - 1 - cell.x(), cell.y()), stitch));
        return mirror;
    }
}
