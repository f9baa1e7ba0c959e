package edgewright.draw.picture;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.BorderGrid;
import edgewright.chart.Chart;
import edgewright.chart.GridCell;
import edgewright.chart.HookHand;
import edgewright.chart.PerSide;
import edgewright.chart.Section;
import edgewright.chart.Side;
import edgewright.draw.EnglishStyle;
import edgewright.draw.grid.Rotation;
import edgewright.draw.marks.Drawing;
import edgewright.draw.marks.Emphasis;
import edgewright.draw.marks.Layer;
import edgewright.draw.marks.Mark;
import edgewright.draw.paint.Area;
import edgewright.testing.RandomCharts;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What holds of every layout, whatever part of a border it shows: a corner, the whole border, and one level side, which is
 * sketched here to show that a new kind of picture is one small class.
 */
class CellLayoutTest {
    private static final int REPEATS = 2;
    private static final double CELL_MM = 4;

    /** A side from corner to corner, one row a round. */
    private static final class LevelSideLayout extends CellLayout {
        LevelSideLayout(Chart chart, Placement placement) {
            super(
                    new Part(
                            new BorderGrid(chart.border(), PerSide.all(REPEATS)),
                            chart.rounds().size(),
                            PerSide.<Set<Section>>all(EnumSet.noneOf(Section.class))
                                    .with(Side.TOP, EnumSet.allOf(Section.class)),
                            EnumSet.of(Side.RIGHT, Side.TOP)),
                    placement);
        }
    }

    private static CellLayout.Placement placement(Rotation rotation, HookHand hand) {
        return new CellLayout.Placement(CELL_MM, rotation, hand, Optional.empty(), 3, 9);
    }

    private static List<CellLayout> layouts(Chart chart) {
        List<CellLayout> layouts = new ArrayList<>();
        for (Rotation rotation : Rotation.values()) {
            for (HookHand hand : HookHand.values()) {
                CellLayout.Placement placement = placement(rotation, hand);
                int rounds = chart.rounds().size();
                BorderGrid grid = new BorderGrid(chart.border(), PerSide.pairs(1, 2));
                layouts.add(new CornerLayout(chart.border(), rounds, REPEATS, placement));
                layouts.add(new BorderPicture.BorderLayout(grid, rounds, placement));
                layouts.add(new LevelSideLayout(chart, placement));
            }
        }
        return layouts;
    }

    /** Every cell of the picture's rectangle, column by column, that holds something of the border. */
    private static List<DrawnCell> drawn(CellLayout layout) {
        List<DrawnCell> cells = new ArrayList<>();
        for (int column = 0; column < layout.columns(); column++) {
            for (int row = 0; row < layout.rows(); row++) {
                layout.contentOf(layout.cellAtColumn(column, row)).ifPresent(cells::add);
            }
        }
        return cells;
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6})
    void every_cell_is_found_under_each_of_its_points_and_lies_where_its_side_and_place_say(int seed) {
        for (CellLayout layout : layouts(new RandomCharts(seed).small())) {
            for (DrawnCell drawn : drawn(layout)) {
                Area area = layout.areaOf(drawn.cell());
                assertThat(layout.area().grown(1e-9).holds(area)).isTrue();
                for (double part : new double[] {0.01, 0.5, 0.99}) {
                    assertThat(layout.cellAt(area.xMm() + part * CELL_MM, area.yMm() + (1 - part) * CELL_MM))
                            .contains(drawn.cell());
                }
                if (drawn instanceof DrawnCell.OfStitch stitch) {
                    assertThat(layout.cellOf(stitch.side(), stitch.place(), stitch.occurrence()))
                            .isEqualTo(stitch.cell());
                    assertThat(layout.cellsOf(stitch.place())).contains(stitch.cell());
                } else {
                    assertThat(layout.grid().cornerCell(drawn.side(), drawn.round()))
                            .isEqualTo(drawn.cell());
                }
            }
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6})
    void the_cells_in_an_area_are_those_that_lie_in_it_from_the_inside_out(int seed) {
        Random random = new Random(seed);
        for (CellLayout layout : layouts(new RandomCharts(seed).small())) {
            List<DrawnCell> all = drawn(layout);
            assertThat(layout.cellsNear(layout.area(), 0)).containsExactlyInAnyOrderElementsOf(all);
            for (int i = 0; i < 20; i++) {
                Area area = Area.between(
                        layout.area().xMm() + layout.area().widthMm() * (1.2 * random.nextDouble() - 0.1),
                        layout.area().yMm() + layout.area().heightMm() * (1.2 * random.nextDouble() - 0.1),
                        layout.area().xMm() + layout.area().widthMm() * (1.2 * random.nextDouble() - 0.1),
                        layout.area().yMm() + layout.area().heightMm() * (1.2 * random.nextDouble() - 0.1));
                List<DrawnCell> near = layout.cellsNear(area, 0);
                assertThat(near.stream().map(DrawnCell::round)).isSorted();
                assertThat(near)
                        .containsExactlyInAnyOrderElementsOf(all.stream()
                                .filter(cell -> area.touches(layout.areaOf(cell.cell())))
                                .toList());
                assertThat(layout.rounds(area))
                        .containsExactlyElementsOf(all.stream()
                                .filter(cell -> cell.round() > 0)
                                .filter(cell -> {
                                    Area of = layout.areaOf(cell.cell());
                                    return area.holds(of.middleXMm(), of.middleYMm());
                                })
                                .map(DrawnCell::round)
                                .distinct()
                                .sorted()
                                .toList());
            }
        }
    }

    /** The marks that lie in an area, found one by one among all. */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3})
    void the_marks_in_an_area_are_those_of_the_whole_picture_that_touch_it(int seed) {
        Random random = new Random(seed);
        Chart chart = new RandomCharts(seed).small();
        for (CellLayout layout : layouts(chart)) {
            PictureStyle style = EnglishStyle.SCREEN.withHand(layout.hand()).withRotation(layout.rotation());
            PictureMarks marks = new PictureMarks(
                    style, layout, new CellMarks(chart, style, Emphasis.NONE, layout), new ArrayList<>());
            List<Mark> all = marks.in(layout.area().grown(CELL_MM));
            assertThat(all.stream().map(mark -> mark.kind().layer())).isSorted();
            for (int i = 0; i < 5; i++) {
                Area area = new Area(
                        layout.area().xMm() + layout.area().widthMm() * random.nextDouble(),
                        layout.area().yMm() + layout.area().heightMm() * random.nextDouble(),
                        2.5 * CELL_MM,
                        1.5 * CELL_MM);
                assertThat(marks.in(area))
                        .containsExactlyElementsOf(all.stream()
                                .filter(mark -> area.touches(mark.bounds()))
                                .toList());
            }
        }
    }

    @Test
    void a_level_side_has_a_row_for_each_round_with_a_corner_at_each_end() {
        Chart chart = new RandomCharts(3).small();
        for (HookHand hand : HookHand.values()) {
            CellLayout layout = new LevelSideLayout(chart, placement(Rotation.NONE, hand));
            int rounds = chart.rounds().size();
            assertThat(layout.rows()).isEqualTo(rounds + 1);
            assertThat(layout.columns()).isEqualTo(chart.shape(Side.FIRST).stitches(rounds, REPEATS) + 2);
            for (int round = 0; round <= rounds; round++) {
                int row = rounds - round;
                List<String> read = new ArrayList<>();
                for (int i = 0; i < layout.columns(); i++) {
                    // A right-handed maker works the side leftwards, a left-handed one rightwards.
                    int column = hand == HookHand.RIGHT ? layout.columns() - 1 - i : i;
                    layout.contentOf(layout.cellAtColumn(column, row)).ifPresent(cell -> read.add(described(cell)));
                }
                List<String> expected = new ArrayList<>(List.of("corner " + round));
                for (Section section : Section.values()) {
                    for (int times = 1; times <= (section == Section.REPEAT ? REPEATS : 1); times++) {
                        for (int place = 1; place <= chart.shape(Side.FIRST).length(section, round); place++) {
                            expected.add(section + " " + place + " of round " + round + ", time " + times);
                        }
                    }
                }
                expected.add("corner " + round);
                assertThat(read).isEqualTo(expected);
            }
        }
    }

    private static String described(DrawnCell cell) {
        return cell instanceof DrawnCell.OfStitch stitch
                ? stitch.place().section() + " " + stitch.place().place() + " of round " + stitch.round() + ", time "
                        + stitch.occurrence()
                : "corner " + cell.round();
    }

    @Test
    void the_cells_of_a_level_side_are_drawn_as_the_whole_border_draws_them() {
        for (HookHand hand : HookHand.values()) {
            Chart chart = new RandomCharts(5).small();
            PictureStyle style = EnglishStyle.SCREEN.withHand(hand).withCellMm(CELL_MM);
            CellLayout side = new LevelSideLayout(
                    chart, new CellLayout.Placement(CELL_MM, Rotation.NONE, hand, Optional.empty(), CELL_MM, CELL_MM));
            List<Mark> marks = new PictureMarks(
                            style, side, new CellMarks(chart, style, Emphasis.NONE, side), List.of())
                    .in(side.area());
            Drawing border = ChartPicture.wholeBorder(chart, PerSide.all(REPEATS), style);
            List<GridCell> cells = drawn(side).stream().map(DrawnCell::cell).toList();
            List<Mark> ofBorder = border.marks().stream()
                    .filter(mark -> mark.cell().filter(cells::contains).isPresent())
                    .filter(mark -> !style.labels() || mark.kind().layer() != Layer.LABELS)
                    .toList();
            // A long stitch that lands under the last row of the side is cut off there, and whole on the border.
            assertThat(marks.stream()
                            .filter(mark -> mark.kind().layer() != Layer.LABELS)
                            .filter(mark -> !isCutOff(mark, side)))
                    .containsExactlyInAnyOrderElementsOf(ofBorder.stream()
                            .filter(mark -> !isCutOff(mark, side))
                            .toList());
        }
    }

    private static boolean isCutOff(Mark mark, CellLayout side) {
        return side.rowOf(mark.cell().orElseThrow()) + 2 >= side.rows();
    }
}
