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
        FabricStamps fabric = FabricStamps.ofBorder(detail, List.of(CHALK), false);
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

    /** Loops are linked, so a stitch reaches a tenth of a cell into its neighbours, and a long one over the cell below. */
    @ParameterizedTest
    @EnumSource
    void a_stitch_reaches_a_tenth_into_the_cells_beside_it_and_only_a_long_one_over_the_cell_below(Detail detail) {
        for (int quarters = 0; quarters < 4; quarters++) {
            for (Frame frame : List.of(frame(quarters), frame(quarters).mirrored())) {
                for (Stitch stitch : Stitch.values()) {
                    for (LoopsOnTop loops : LoopsOnTop.values()) {
                        double lowest = stitch == Stitch.LONG ? -1.6 : -0.6;
                        Area room = Area.between(-0.6, lowest, 0.6, 0.6).grown(1e-9);
                        for (Shape shape : everyWay(detail, stitch, loops, frame)) {
                            Area lies = inCells(shape.bounds(), frame);
                            assertThat(room.holds(lies))
                                    .as("%s %s %s", stitch, loops, lies)
                                    .isTrue();
                            assertThat(lies.yMm() < -0.6).isEqualTo(stitch == Stitch.LONG);
                        }
                    }
                }
            }
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3})
    void a_corner_is_an_open_hole_towards_the_piece_with_a_link_of_two_strands_for_each_chain(int chains) {
        FabricStamps fabric = FabricStamps.ofBorder(Detail.PLIES, List.of(CHALK), false);
        for (int quarters = 0; quarters < 4; quarters++) {
            Frame frame = frame(quarters);
            for (LoopsOnTop loops : List.of(LoopsOnTop.FRONT, LoopsOnTop.EDGE)) {
                Shape corner = fabric.corner(chains, loops, CHALK, frame, new GridCell(5, 5));
                assertThat(Area.between(-0.6, -0.6, 0.6, 0.6).grown(1e-9).holds(inCells(corner.bounds(), frame)))
                        .isTrue();
                List<Shape> shapes = parts(corner);
                // A ground, the hole, and for each chain what is open in it and two strands of a shadow and six shapes.
                assertThat(shapes).hasSize(2 + 15 * chains);
                Shape.Fill hole = (Shape.Fill) shapes.get(1);
                assertThat(hole.colour().luminance()).isLessThan(0.2 * CHALK.luminance());
                Area open = inCells(hole.bounds(), frame);
                assertThat(Area.between(-0.5, -0.5, 0, 0).holds(open)).isTrue();
                assertThat(open.widthMm()).isGreaterThan(0.4);
                for (int strand = 0; strand < 2 * chains; strand++) {
                    Area link = inCells(shapes.get(3 + chains + 7 * strand).bounds(), frame);
                    assertThat(link.middleXMm() + link.middleYMm()).isGreaterThan(open.middleXMm() + open.middleYMm());
                }
            }
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
                        assertThat(bar.heightMm()).isLessThan(0.65);
                        assertThat(bar.middleYMm()).isBetween(0.25, 0.45);
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
                assertThat(over.yMm()).isBetween(-1.1, -0.8);
                assertThat(over.bottomMm()).isBetween(0.4, 0.6);
            }
        }
    }

    @Test
    void a_plain_stitch_above_hides_both_loops_and_the_last_round_shows_both() {
        FabricStamps fabric = FabricStamps.ofBorder(Detail.PLIES, List.of(CHALK), false);
        GridCell cell = new GridCell(2, 2);
        List<Integer> strands = new ArrayList<>();
        for (LoopsOnTop loops : List.of(LoopsOnTop.NONE, LoopsOnTop.FRONT, LoopsOnTop.BOTH, LoopsOnTop.EDGE)) {
            int shapes = parts(fabric.stitch(Stitch.BACK_LOOP, loops, CHALK, frame(0), cell))
                    .size();
            // A ground, the yarn behind of two shapes and two legs of six; a loop has a shadow too.
            strands.add((shapes - 15) / 7);
        }
        assertThat(strands).containsExactly(0, 1, 2, 2);
    }

    /** Where a stitch of a row lies, in cells away from where it would if all were alike: along, then out. */
    private static List<List<Double>> offsets(Detail detail, boolean drifts, int row) {
        FabricStamps fabric = FabricStamps.ofBorder(detail, List.of(CHALK), drifts);
        List<List<Double>> offsets = new ArrayList<>();
        for (int x = 0; x < 60; x++) {
            Shape.Stamped printed = (Shape.Stamped)
                    fabric.stitch(Stitch.BACK_LOOP, LoopsOnTop.FRONT, CHALK, frame(0), new GridCell(x, row));
            offsets.add(List.of((printed.xMm() - 100) / CELL_MM, (printed.yMm() - 200) / CELL_MM));
        }
        return offsets;
    }

    private static double span(List<List<Double>> offsets, int axis) {
        List<Double> sorted =
                offsets.stream().map(offset -> offset.get(axis)).sorted().toList();
        return sorted.get(sorted.size() - 1) - sorted.get(0);
    }

    @Test
    void a_row_wanders_by_more_than_a_tenth_of_a_stitch_but_never_by_as_much_as_a_quarter_from_its_place() {
        for (int row = 0; row < 20; row++) {
            List<List<Double>> offsets = offsets(Detail.PLIES, true, row);
            assertThat(span(offsets, 0)).isGreaterThan(0.1);
            assertThat(span(offsets, 1)).isGreaterThan(0.1);
            assertThat(offsets)
                    .allSatisfy(offset -> assertThat(offset)
                            .allSatisfy(part -> assertThat(part).isBetween(-0.25, 0.25)));
        }
    }

    @Test
    void neighbours_wander_together_so_that_no_stitch_tears_from_the_next() {
        for (int row = 0; row < 20; row++) {
            List<List<Double>> offsets = offsets(Detail.PLIES, true, row);
            List<List<Double>> next = offsets(Detail.PLIES, true, row + 1);
            for (int x = 1; x < offsets.size(); x++) {
                for (int axis = 0; axis < 2; axis++) {
                    double here = offsets.get(x).get(axis);
                    assertThat(offsets.get(x - 1).get(axis)).isBetween(here - 0.2, here + 0.2);
                    assertThat(next.get(x).get(axis)).isBetween(here - 0.2, here + 0.2);
                }
            }
        }
    }

    @Test
    void the_hand_is_the_same_each_time_and_another_in_another_row() {
        assertThat(offsets(Detail.PLIES, true, 3)).isEqualTo(offsets(Detail.PLIES, true, 3));
        assertThat(offsets(Detail.PLIES, true, 3)).isNotEqualTo(offsets(Detail.PLIES, true, 4));
    }

    @Test
    void under_marks_and_where_they_are_small_all_stitches_lie_in_their_squares() {
        for (List<List<Double>> offsets : List.of(offsets(Detail.PLIES, false, 3), offsets(Detail.SIMPLE, true, 3))) {
            assertThat(span(offsets, 0) + span(offsets, 1)).isLessThan(1e-9);
        }
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
        // Four legs and a loop with their shadows, on a ground and, but for the smallest, on yarn behind.
        assertThat(shapes).containsExactly(1 + 5 * 2, 3 + 5 * 5, 3 + 5 * 7, 3 + 5 * 7);
    }
}
