package edgewright.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;

class BorderGridTest {
    private static final SideShape SHAPE = new SideShape(2, 5, 1);
    private static final BorderGrid GRID = new BorderGrid(BorderShape.of(SHAPE), PerSide.pairs(2, 1));

    @Test
    void every_ring_is_filled_without_gap_or_overlap_and_the_next_one_fits_round_it() {
        for (int r = 0; r <= 6; r++) {
            Map<GridCell, GridContent> ring = new HashMap<>();
            for (Side side : Side.values()) {
                for (int p = 1; p <= SHAPE.stitches(r, GRID.repeats().get(side)); p++) {
                    SidePlace stitch = new SidePlace(r, p);
                    put(ring, GRID.cellOf(side, stitch), new GridContent.SideStitch(side, stitch));
                }
                put(ring, GRID.cornerCell(side, r), new GridContent.CornerChains(side, r));
            }
            int width = GRID.width() + 2 * r;
            int height = GRID.height() + 2 * r;
            assertThat(ring).hasSize(2 * width + 2 * height + 4);
            ring.forEach((cell, content) -> assertThat(GRID.contentOf(cell)).isEqualTo(content));
        }
    }

    @Test
    void every_cell_inside_the_base_round_is_the_piece() {
        for (int x = 0; x < GRID.width(); x++) {
            for (int y = 0; y < GRID.height(); y++) {
                assertThat(GRID.contentOf(new GridCell(x, y))).isEqualTo(new GridContent.Piece());
            }
        }
    }

    @Test
    void the_top_is_worked_from_right_to_left_and_a_fabric_column_runs_straight_out() {
        assertThat(GRID.width()).isEqualTo(13);
        assertThat(GRID.cellOf(Side.TOP, new SidePlace(0, 1))).isEqualTo(new GridCell(12, -1));
        assertThat(GRID.cellOf(Side.TOP, new SidePlace(1, 2))).isEqualTo(new GridCell(12, -2));
        assertThat(GRID.cellOf(Side.TOP, new SidePlace(2, 3))).isEqualTo(new GridCell(12, -3));
        assertThat(GRID.cornerCell(Side.TOP, 0)).isEqualTo(new GridCell(-1, -1));
        assertThat(GRID.cellOf(Side.LEFT, new SidePlace(0, 1))).isEqualTo(new GridCell(-1, 0));
        assertThat(GRID.cellOf(Side.BOTTOM, new SidePlace(0, 1))).isEqualTo(new GridCell(0, GRID.height()));
        assertThat(GRID.cellOf(Side.RIGHT, new SidePlace(0, 1))).isEqualTo(new GridCell(13, GRID.height() - 1));
    }

    @Test
    void each_side_follows_the_corner_at_the_end_of_the_side_before() {
        for (Side side : Side.values()) {
            for (int r = 0; r <= 3; r++) {
                int last = SHAPE.stitches(r, GRID.repeats().get(side));
                GridCell corner = GRID.cornerCell(side, r);
                assertThat(distance(GRID.cellOf(side, new SidePlace(r, last)), corner))
                        .isEqualTo(1);
                assertThat(distance(GRID.cellOf(side.next(), new SidePlace(r, 1)), corner))
                        .isEqualTo(1);
            }
        }
    }

    @Test
    void a_piece_whose_opposite_sides_differ_does_not_lie_on_squared_paper() {
        assertThatThrownBy(() -> new BorderGrid(BorderShape.of(SHAPE), PerSide.of(1, 2, 3, 2)))
                .isInstanceOf(IllegalArgumentException.class);
    }

    private static int distance(GridCell a, GridCell b) {
        return Math.abs(a.x() - b.x()) + Math.abs(a.y() - b.y());
    }

    private static void put(Map<GridCell, GridContent> ring, GridCell cell, GridContent content) {
        assertThat(ring.put(cell, content)).as("one content at " + cell).isNull();
    }
}
