package edgewright.draw.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import edgewright.chart.BorderShape;
import edgewright.chart.GridCell;
import edgewright.chart.HookHand;
import edgewright.chart.Place;
import edgewright.chart.Section;
import edgewright.chart.SideShape;
import edgewright.draw.grid.CellRange;
import edgewright.draw.grid.Direction;
import edgewright.draw.grid.Rotation;
import edgewright.draw.paint.Area;
import edgewright.draw.paint.Frame;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class CornerLayoutTest {
    private static final SideShape SHAPE = new SideShape(2, 5, 1);
    private static final int ROUNDS = 5;
    private static final int REPEATS = 2;

    private static CornerLayout layout(Rotation rotation) {
        return new CornerLayout(
                BorderShape.of(SHAPE),
                ROUNDS,
                REPEATS,
                new CellLayout.Placement(5, rotation, HookHand.RIGHT, Optional.empty(), 7, 11));
    }

    private record ArmStitch(Arm arm, Place place, int occurrence) {
        GridCell in(CellLayout layout) {
            return layout.cellOf(arm.side(), place, occurrence);
        }
    }

    /** Every stitch that a corner shows, from the lengths of sections alone. */
    private static List<ArmStitch> stitches() {
        List<ArmStitch> stitches = new ArrayList<>();
        for (Arm arm : Arm.values()) {
            for (int round = 0; round <= ROUNDS; round++) {
                for (int place = 1; place <= SHAPE.length(arm.atCorner(), round); place++) {
                    stitches.add(new ArmStitch(arm, new Place(round, arm.atCorner(), place), 1));
                }
                for (int occurrence = 1; occurrence <= REPEATS; occurrence++) {
                    for (int place = 1; place <= SHAPE.w(); place++) {
                        stitches.add(new ArmStitch(arm, new Place(round, Section.REPEAT, place), occurrence));
                    }
                }
            }
        }
        return stitches;
    }

    @ParameterizedTest
    @EnumSource
    void every_stitch_has_a_cell_of_its_own_and_the_cell_knows_the_stitch(Rotation rotation) {
        CornerLayout layout = layout(rotation);
        Set<GridCell> cells = new HashSet<>();
        for (ArmStitch stitch : stitches()) {
            GridCell cell = stitch.in(layout);
            assertThat(layout.stitchIn(cell))
                    .contains(new DrawnCell.OfStitch(cell, stitch.arm().side(), stitch.place(), stitch.occurrence()));
            assertThat(layout.isDrawn(cell)).isTrue();
            cells.add(cell);
        }
        for (int round = 0; round <= ROUNDS; round++) {
            assertThat(layout.cornerIn(layout.cornerCell(round))).contains(round);
            cells.add(layout.cornerCell(round));
        }
        assertThat(cells).hasSize(stitches().size() + ROUNDS + 1);
        assertThat(drawnCells(layout)).containsExactlyInAnyOrderElementsOf(cells);
    }

    @ParameterizedTest
    @EnumSource
    void a_point_anywhere_in_a_cells_rectangle_hits_that_cell(Rotation rotation) {
        CornerLayout layout = layout(rotation);
        for (ArmStitch stitch : stitches()) {
            GridCell cell = stitch.in(layout);
            Area area = layout.areaOf(cell);
            for (double part : new double[] {0.001, 0.3, 0.999}) {
                assertThat(layout.cellAt(area.xMm() + part * 5, area.yMm() + (1 - part) * 5))
                        .contains(cell);
            }
        }
    }

    @ParameterizedTest
    @EnumSource
    void points_beside_the_cells_and_in_the_piece_hit_nothing(Rotation rotation) {
        CornerLayout layout = layout(rotation);
        Area area = layout.area();
        assertThat(layout.cellAt(area.xMm() - 0.1, area.middleYMm())).isEmpty();
        assertThat(layout.cellAt(area.rightMm() + 0.1, area.middleYMm())).isEmpty();
        assertThat(layout.cellAt(area.middleXMm(), area.yMm() - 0.1)).isEmpty();
        assertThat(layout.cellAt(area.middleXMm(), area.bottomMm() + 0.1)).isEmpty();
        Area piece = layout.areaOf(new GridCell(0, 0));
        assertThat(layout.cellAt(piece.middleXMm(), piece.middleYMm())).isEmpty();
    }

    @Test
    void all_cells_of_a_place_are_where_that_place_is_drawn() {
        CornerLayout layout = layout(Rotation.NONE);
        Place inRepeat = new Place(3, Section.REPEAT, 2);
        assertThat(layout.cellsOf(inRepeat))
                .containsExactlyElementsOf(stitches().stream()
                        .filter(stitch -> stitch.place().equals(inRepeat))
                        .map(stitch -> stitch.in(layout))
                        .toList())
                .hasSize(2 * REPEATS);
        assertThat(layout.cellsOf(new Place(3, Section.TO_CORNER, 4))).hasSize(1);
        assertThat(layout.cellsOf(new Place(3, Section.FROM_CORNER, 1))).hasSize(1);
    }

    @Test
    void a_rotation_clockwise_takes_every_cell_round_the_middle_by_a_right_angle() {
        for (Rotation rotation : Rotation.values()) {
            CornerLayout before = layout(rotation);
            CornerLayout after = layout(rotation.clockwise());
            assertThat(rotation.clockwise().anticlockwise()).isEqualTo(rotation);
            for (ArmStitch stitch : stitches()) {
                GridCell cell = stitch.in(before);
                assertThat(after.columnOf(cell)).isEqualTo(before.rows() - 1 - before.rowOf(cell));
                assertThat(after.rowOf(cell)).isEqualTo(before.columnOf(cell));
            }
        }
    }

    @Test
    void as_on_the_fabric_the_arm_to_the_corner_is_worked_leftwards_and_the_other_downwards() {
        CornerLayout layout = layout(Rotation.NONE);
        GridCell first = new ArmStitch(Arm.INCOMING, new Place(2, Section.TO_CORNER, 1), 1).in(layout);
        GridCell second = new ArmStitch(Arm.INCOMING, new Place(2, Section.TO_CORNER, 2), 1).in(layout);
        assertThat(layout.neighbour(first, Direction.LEFT)).contains(second);
        GridCell down = new ArmStitch(Arm.OUTGOING, new Place(2, Section.FROM_CORNER, 2), 1).in(layout);
        GridCell start = new ArmStitch(Arm.OUTGOING, new Place(2, Section.FROM_CORNER, 1), 1).in(layout);
        assertThat(layout.neighbour(start, Direction.DOWN)).contains(down);
        assertThat(layout.neighbour(layout.cornerCell(2), Direction.DOWN)).contains(start);
    }

    @ParameterizedTest
    @EnumSource
    void the_marks_of_a_side_point_from_the_piece_outwards_however_the_corner_is_rotated(Rotation rotation) {
        CornerLayout layout = layout(rotation);
        for (Arm arm : Arm.values()) {
            Place low = new Place(2, Section.REPEAT, 2);
            GridCell cell = new ArmStitch(arm, low, 1).in(layout);
            GridCell above = new ArmStitch(arm, SHAPE.above(low), 1).in(layout);
            GridCell next = new ArmStitch(arm, new Place(2, Section.REPEAT, 3), 1).in(layout);
            Frame frame = layout.frameOf(cell, arm.side());
            assertThat(frame.xMm(0, 1)).isCloseTo(layout.areaOf(above).middleXMm(), within(1e-9));
            assertThat(frame.yMm(0, 1)).isCloseTo(layout.areaOf(above).middleYMm(), within(1e-9));
            assertThat(frame.xMm(1, 0)).isCloseTo(layout.areaOf(next).middleXMm(), within(1e-9));
            assertThat(frame.yMm(1, 0)).isCloseTo(layout.areaOf(next).middleYMm(), within(1e-9));
        }
    }

    @ParameterizedTest
    @EnumSource
    void a_point_of_the_squared_paper_lies_at_the_cell_that_begins_there(Rotation rotation) {
        CornerLayout layout = layout(rotation);
        for (ArmStitch stitch : stitches()) {
            GridCell cell = stitch.in(layout);
            Frame paper = layout.paperFrame();
            Area area = layout.areaOf(cell);
            assertThat(paper.xMm(cell.x() + 0.5, cell.y() + 0.5)).isCloseTo(area.middleXMm(), within(1e-9));
            assertThat(paper.yMm(cell.x() + 0.5, cell.y() + 0.5)).isCloseTo(area.middleYMm(), within(1e-9));
        }
    }

    @Test
    void a_part_of_the_corner_shows_its_own_cells_alone_and_they_start_where_the_whole_would() {
        CornerLayout whole = layout(Rotation.QUARTER);
        CellRange shown = new CellRange(3, 2, 6, 4);
        CornerLayout part = new CornerLayout(
                BorderShape.of(SHAPE),
                ROUNDS,
                REPEATS,
                new CellLayout.Placement(5, Rotation.QUARTER, HookHand.RIGHT, Optional.of(shown), 0, 0));
        assertThat(part.area()).isEqualTo(new Area(0, 0, 30, 20));
        assertThat(drawnCells(part))
                .isSubsetOf(drawnCells(whole))
                .allSatisfy(
                        cell -> assertThat(part.area().holds(part.areaOf(cell))).isTrue());
        assertThat(drawnCells(whole))
                .filteredOn(cell -> shown.holds(whole.columnOf(cell), whole.rowOf(cell)))
                .containsExactlyInAnyOrderElementsOf(drawnCells(part));
    }

    private static List<GridCell> drawnCells(CornerLayout layout) {
        return Stream.iterate(-ROUNDS - 3, x -> x + 1)
                .limit(40)
                .flatMap(x -> Stream.iterate(-ROUNDS - 3, y -> y + 1).limit(40).map(y -> new GridCell(x, y)))
                .filter(layout::isDrawn)
                .toList();
    }
}
