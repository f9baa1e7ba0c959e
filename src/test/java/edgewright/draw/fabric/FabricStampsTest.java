package edgewright.draw.fabric;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.Colour;
import edgewright.chart.GridCell;
import edgewright.chart.Stitch;
import edgewright.draw.paint.Area;
import edgewright.draw.paint.Frame;
import edgewright.draw.paint.Shape;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class FabricStampsTest {
    private static final Colour CHALK = Colour.parse("#f2ead8");
    private static final double CELL_MM = 10;

    private static Frame frame(int quarters) {
        return Frame.of(quarters, 100, 200, CELL_MM);
    }

    /** A stitch as it lies in each of many cells. */
    private static List<Shape> everyWay(Detail detail, Stitch stitch, LoopsOnTop loops, Frame frame) {
        FabricStamps fabric = new FabricStamps(detail, List.of(CHALK));
        List<Shape> all = new ArrayList<>();
        for (int x = 0; x < 40; x++) {
            all.add(fabric.stitch(stitch, loops, CHALK, frame, new GridCell(x, 3)));
        }
        return all;
    }

    private static List<Shape> parts(Shape printed) {
        Shape.Stamped stamped = (Shape.Stamped) printed;
        return stamped.stamp().shapes().stream()
                .map(shape -> shape.moved(stamped.xMm(), stamped.yMm()))
                .toList();
    }

    /** In cells about the middle of the stitch's own: along the way of working, and away from the piece. */
    private static Area inCells(Area area, Frame frame) {
        Frame back = new Frame(0, 0, frame.alongXMm(), frame.alongYMm(), frame.outXMm(), frame.outYMm());
        double along1 = along(area.xMm(), area.yMm(), frame, back);
        double out1 = out(area.xMm(), area.yMm(), frame, back);
        double along2 = along(area.rightMm(), area.bottomMm(), frame, back);
        double out2 = out(area.rightMm(), area.bottomMm(), frame, back);
        return Area.between(along1, out1, along2, out2);
    }

    private static double along(double x, double y, Frame frame, Frame turned) {
        return ((x - frame.zeroXMm()) * turned.alongXMm() + (y - frame.zeroYMm()) * turned.alongYMm())
                / (CELL_MM * CELL_MM);
    }

    private static double out(double x, double y, Frame frame, Frame turned) {
        return ((x - frame.zeroXMm()) * turned.outXMm() + (y - frame.zeroYMm()) * turned.outYMm())
                / (CELL_MM * CELL_MM);
    }

    @ParameterizedTest
    @EnumSource
    void nothing_of_a_stitch_lies_in_the_cells_beside_it_and_only_a_long_one_reaches_into_the_cell_below(
            Detail detail) {
        for (int quarters = 0; quarters < 4; quarters++) {
            for (Frame frame : List.of(frame(quarters), frame(quarters).mirrored())) {
                for (Stitch stitch : Stitch.values()) {
                    for (LoopsOnTop loops : LoopsOnTop.values()) {
                        double lowest = stitch == Stitch.LONG ? -1.5 : -0.5;
                        Area room = Area.between(-0.5, lowest, 0.5, 0.5).grown(1e-9);
                        for (Shape shape : everyWay(detail, stitch, loops, frame)) {
                            Area lies = inCells(shape.bounds(), frame);
                            assertThat(room.holds(lies))
                                    .as("%s %s %s", stitch, loops, lies)
                                    .isTrue();
                        }
                    }
                }
            }
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3})
    void a_corner_lies_within_its_cell_with_a_strand_or_a_pair_for_each_chain(int chains) {
        FabricStamps fabric = new FabricStamps(Detail.PLIES, List.of(CHALK));
        for (int quarters = 0; quarters < 4; quarters++) {
            Frame frame = frame(quarters);
            List<Integer> shapes = new ArrayList<>();
            for (LoopsOnTop loops : List.of(LoopsOnTop.FRONT, LoopsOnTop.EDGE)) {
                Shape corner = fabric.corner(chains, loops, CHALK, frame, new GridCell(5, 5));
                assertThat(Area.between(-0.5, -0.5, 0.5, 0.5).grown(1e-9).holds(inCells(corner.bounds(), frame)))
                        .isTrue();
                shapes.add(parts(corner).size());
            }
            // A ground, two strands of six shapes that lean into the corner, and for each chain strands of seven.
            assertThat(shapes).containsExactly(1 + 12 + 7 * chains, 1 + 12 + 14 * chains);
        }
    }

    /** A double crochet in the back loop leaves the front loop free as a bar: https://www.gyho.co.uk/whatismosaiccrochet */
    @Test
    void the_free_front_loop_is_a_bar_along_the_side_far_from_the_piece_on_every_side_and_for_either_hand() {
        for (int quarters = 0; quarters < 4; quarters++) {
            for (Frame frame : List.of(frame(quarters), frame(quarters).mirrored())) {
                for (Stitch stitch : List.of(Stitch.BACK_LOOP, Stitch.PLAIN, Stitch.LONG)) {
                    for (Shape printed : everyWay(Detail.STRANDS, stitch, LoopsOnTop.FRONT, frame)) {
                        // The last strand: its shadow, then its edge and what lies within.
                        List<Shape> shapes = parts(printed);
                        Area bar = inCells(shapes.get(shapes.size() - 4).bounds(), frame);
                        assertThat(bar.widthMm()).isGreaterThan(0.95);
                        assertThat(bar.heightMm()).isLessThan(0.6);
                        assertThat(bar.middleYMm()).isBetween(0.2, 0.4);
                    }
                }
            }
        }
    }

    @Test
    void the_yarn_over_of_a_long_stitch_lies_across_the_edge_between_its_two_cells() {
        for (int quarters = 0; quarters < 4; quarters++) {
            Frame frame = frame(quarters);
            for (Shape printed : everyWay(Detail.STRANDS, Stitch.LONG, LoopsOnTop.NONE, frame)) {
                List<Shape> shapes = parts(printed);
                Area over = inCells(shapes.get(shapes.size() - 4).bounds(), frame);
                assertThat(over.yMm()).isBetween(-0.95, -0.7);
                assertThat(over.bottomMm()).isBetween(0.3, 0.5);
            }
        }
    }

    @Test
    void a_plain_stitch_above_hides_both_loops_and_the_last_round_shows_both() {
        FabricStamps fabric = new FabricStamps(Detail.PLIES, List.of(CHALK));
        GridCell cell = new GridCell(2, 2);
        List<Integer> strands = new ArrayList<>();
        for (LoopsOnTop loops : List.of(LoopsOnTop.NONE, LoopsOnTop.FRONT, LoopsOnTop.BOTH, LoopsOnTop.EDGE)) {
            int shapes = parts(fabric.stitch(Stitch.BACK_LOOP, loops, CHALK, frame(0), cell))
                    .size();
            // A ground and two legs of six shapes; a loop has a shadow too.
            strands.add((shapes - 13) / 7);
        }
        assertThat(strands).containsExactly(0, 1, 2, 2);
    }

    @Test
    void stitches_lie_in_a_few_ways_that_their_cells_decide() {
        Set<Shape> ways = new HashSet<>(everyWay(Detail.PLIES, Stitch.BACK_LOOP, LoopsOnTop.FRONT, frame(0)));
        assertThat(ways).hasSize(Hand.WAYS);
        assertThat(everyWay(Detail.PLIES, Stitch.BACK_LOOP, LoopsOnTop.FRONT, frame(0)))
                .isEqualTo(everyWay(Detail.PLIES, Stitch.BACK_LOOP, LoopsOnTop.FRONT, frame(0)));
    }

    @Test
    void the_smaller_the_stitches_the_less_is_drawn_of_them() {
        List<Integer> shapes = new ArrayList<>();
        for (double dots : new double[] {6, 12, 24, 48}) {
            shapes.add(parts(everyWay(Detail.ofDots(dots), Stitch.LONG, LoopsOnTop.FRONT, frame(0))
                            .get(0))
                    .size());
        }
        // Four legs and a loop with its shadow, on a ground.
        assertThat(shapes).containsExactly(1 + 4 + 2, 1 + 4 * 4 + 5, 1 + 4 * 6 + 7, 1 + 4 * 6 + 7);
    }
}
