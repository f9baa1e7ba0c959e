package edgewright.desk.piece;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.Side;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import org.junit.jupiter.api.Test;

/** The drawing of a piece: where its border, its rounds and the stitches of its sides lie. */
class PieceBoxTest {
    @Test
    void the_way_round_is_anticlockwise_from_the_top_right_corner() {
        Rectangle2D on = new Rectangle2D.Double(10, 20, 100, 60);

        assertThat(PieceBox.point(on, Side.TOP, 0, 0)).isEqualTo(new Point2D.Double(110, 20));
        assertThat(PieceBox.point(on, Side.TOP, 1, 0)).isEqualTo(PieceBox.point(on, Side.LEFT, 0, 0));
        assertThat(PieceBox.point(on, Side.LEFT, 1, 0)).isEqualTo(PieceBox.point(on, Side.BOTTOM, 0, 0));
        assertThat(PieceBox.point(on, Side.BOTTOM, 1, 0)).isEqualTo(PieceBox.point(on, Side.RIGHT, 0, 0));
        assertThat(PieceBox.point(on, Side.RIGHT, 1, 0)).isEqualTo(PieceBox.point(on, Side.TOP, 0, 0));
        assertThat(PieceBox.point(on, Side.LEFT, 0.5, 7)).isEqualTo(new Point2D.Double(3, 50));
        assertThat(PieceBox.point(on, Side.BOTTOM, 0.25, 7)).isEqualTo(new Point2D.Double(35, 87));
    }

    @Test
    void the_rounds_lie_around_each_other_from_the_piece_to_the_outer_edge() {
        PieceBox box = PieceBox.in(900, 700, 0, 20);

        assertThat(box.round(0)).isEqualTo(box.inner());
        assertThat(box.round(20)).isEqualTo(box.outer());
        for (int r = 1; r <= 20; r++) {
            assertThat(box.round(r).contains(box.round(r - 1))).isTrue();
        }
    }

    @Test
    void the_box_has_the_proportions_of_the_piece_as_far_as_its_fields_leave_room() {
        PieceBox square = PieceBox.in(1_200, 800, 1, 10);
        assertThat(square.outer().getWidth()).isEqualTo(square.outer().getHeight());
        PieceBox wide = PieceBox.in(1_200, 800, 1.5, 10);
        assertThat(wide.outer().getWidth() / wide.outer().getHeight()).isEqualTo(1.5, within());
        PieceBox scarf = PieceBox.in(1_200, 800, 30, 10);
        assertThat(scarf.outer().getHeight()).isGreaterThanOrEqualTo(470);
        PieceBox ribbon = PieceBox.in(1_200, 800, 0.01, 10);
        assertThat(ribbon.outer().getWidth()).isGreaterThanOrEqualTo(590);
    }

    private static org.assertj.core.data.Offset<Double> within() {
        return org.assertj.core.data.Offset.offset(0.01);
    }
}
