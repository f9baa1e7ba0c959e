package edgewright.draw.picture;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.BorderGrid;
import edgewright.chart.Chart;
import edgewright.chart.GridCell;
import edgewright.chart.GridContent;
import edgewright.chart.PerSide;
import edgewright.chart.Place;
import edgewright.draw.EnglishStyle;
import edgewright.draw.marks.Drawing;
import edgewright.draw.marks.Emphasis;
import edgewright.draw.marks.Layer;
import edgewright.draw.marks.Mark;
import edgewright.draw.marks.MarkKind;
import edgewright.draw.paint.Area;
import edgewright.testing.RandomCharts;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class BorderPictureTest {
    @Test
    void every_cell_around_the_piece_is_drawn_once_in_the_yarn_that_shows_there() {
        for (int seed = 0; seed < 20; seed++) {
            Chart chart = new RandomCharts(seed).small();
            PerSide<Integer> repeats = PerSide.of(2, seed % 3, 2, seed % 3);
            BorderGrid grid = new BorderGrid(chart.border(), repeats);
            List<Mark> cells = ChartPicture.wholeBorder(chart, repeats, EnglishStyle.FABRIC).marks().stream()
                    .filter(mark -> mark.cell().isPresent())
                    .toList();
            int rounds = chart.rounds().size();
            List<GridCell> all = new ArrayList<>();
            for (int x = -rounds - 1; x <= grid.width() + rounds; x++) {
                for (int y = -rounds - 1; y <= grid.height() + rounds; y++) {
                    if (!(grid.contentOf(new GridCell(x, y)) instanceof GridContent.Piece)) {
                        all.add(new GridCell(x, y));
                    }
                }
            }
            assertThat(cells.stream().map(mark -> mark.cell().orElseThrow())).containsExactlyInAnyOrderElementsOf(all);
            for (Mark mark : cells) {
                assertThat(mark.yarn()).isEqualTo(yarn(chart, grid, mark.cell().orElseThrow()));
            }
        }
    }

    private static Optional<String> yarn(Chart chart, BorderGrid grid, GridCell cell) {
        GridContent content = grid.contentOf(cell);
        int round;
        if (content instanceof GridContent.SideStitch stitch) {
            Place place = grid.border()
                    .on(stitch.side())
                    .placeOf(stitch.place(), grid.repeats().get(stitch.side()));
            round = place.round() == 0 ? 0 : chart.shownRound(place);
        } else {
            round = ((GridContent.CornerChains) content).round();
        }
        return round == 0 ? Optional.empty() : Optional.of(chart.round(round).yarn());
    }

    @Test
    void a_corner_of_it_is_what_the_picture_of_one_corner_shows() {
        Chart chart = new RandomCharts(3).small();
        PictureStyle style = EnglishStyle.FABRIC.withRepeats(2);
        CornerPicture corner = CornerPicture.of(chart, style, Emphasis.NONE);
        List<String> whole = described(ChartPicture.wholeBorder(chart, PerSide.all(2), style));
        assertThat(whole).containsAll(described(corner.drawing()));
    }

    private static List<String> described(Drawing drawing) {
        return drawing.marks().stream()
                .filter(mark -> mark.cell().isPresent())
                .map(mark -> mark.kind() + " " + mark.cell() + mark.place() + mark.yarn())
                .toList();
    }

    @ParameterizedTest
    @EnumSource
    void under_worked_stitches_lies_one_ground_that_no_seam_lets_the_paper_through(FabricFill look) {
        Chart chart = new RandomCharts(6).small();
        // With lines every stitch lies in its square, so the middle of its mark is in its cell.
        PictureStyle squared = EnglishStyle.FABRIC.withGrid(true).withLook(look);
        for (Drawing drawing : List.of(
                ChartPicture.wholeBorder(chart, PerSide.all(2), squared),
                ChartPicture.corner(chart, squared, Emphasis.NONE))) {
            List<Mark> fabric = drawing.marks().stream()
                    .filter(mark -> mark.kind().layer() == Layer.FABRIC)
                    .toList();
            if (look == FabricFill.FLAT) {
                assertThat(fabric).noneMatch(mark -> mark.kind() == MarkKind.FABRIC_GROUND);
                continue;
            }
            Mark ground = fabric.get(0);
            assertThat(ground.kind()).isEqualTo(MarkKind.FABRIC_GROUND);
            for (Mark mark : fabric) {
                if (mark.cell().isPresent()) {
                    Area cell = mark.bounds();
                    assertThat(ground.shapes())
                            .anyMatch(shape -> shape.bounds().holds(cell.middleXMm(), cell.middleYMm()));
                }
            }
        }
    }

    @Test
    void layers_and_lines_can_be_shown_apart() {
        Chart chart = new RandomCharts(4).small();
        Drawing marks = ChartPicture.wholeBorder(
                chart, PerSide.all(1), EnglishStyle.PRINT.withFabric(false).withGrid(false));
        assertThat(marks.marks()).noneMatch(mark -> mark.kind().layer() == Layer.FABRIC);
        assertThat(marks.marks()).anyMatch(mark -> mark.kind().layer() == Layer.MARKS);
        assertThat(marks.marks()).noneMatch(mark -> mark.kind().layer() == Layer.GRID);
        Drawing all = ChartPicture.wholeBorder(chart, PerSide.all(1), EnglishStyle.PRINT);
        assertThat(all.marks().stream().map(mark -> mark.kind().layer())).isSorted();
        assertThat(all.marks()).anyMatch(mark -> mark.kind() == MarkKind.GRID_LINE);
    }
}
