package edgewright.desk.piece;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.HookHand;
import edgewright.chart.Side;
import java.awt.Dimension;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import org.junit.jupiter.api.Test;

/** The drawing of a piece: where its border, its rounds and the stitches of its sides lie. */
class PieceBoxTest {
    private static final Dimension FIELDS = new Dimension(430, 300);

    @Test
    void the_way_round_is_anticlockwise_from_the_top_right_corner() {
        Rectangle2D on = new Rectangle2D.Double(10, 20, 100, 60);

        assertThat(PieceBox.point(on, Side.TOP, HookHand.RIGHT, 0, 0)).isEqualTo(new Point2D.Double(110, 20));
        assertThat(PieceBox.point(on, Side.TOP, HookHand.RIGHT, 1, 0))
                .isEqualTo(PieceBox.point(on, Side.LEFT, HookHand.RIGHT, 0, 0));
        assertThat(PieceBox.point(on, Side.LEFT, HookHand.RIGHT, 1, 0))
                .isEqualTo(PieceBox.point(on, Side.BOTTOM, HookHand.RIGHT, 0, 0));
        assertThat(PieceBox.point(on, Side.BOTTOM, HookHand.RIGHT, 1, 0))
                .isEqualTo(PieceBox.point(on, Side.RIGHT, HookHand.RIGHT, 0, 0));
        assertThat(PieceBox.point(on, Side.RIGHT, HookHand.RIGHT, 1, 0))
                .isEqualTo(PieceBox.point(on, Side.TOP, HookHand.RIGHT, 0, 0));
        assertThat(PieceBox.point(on, Side.LEFT, HookHand.RIGHT, 0.5, 7)).isEqualTo(new Point2D.Double(3, 50));
        assertThat(PieceBox.point(on, Side.BOTTOM, HookHand.RIGHT, 0.25, 7)).isEqualTo(new Point2D.Double(35, 87));
    }

    @Test
    void the_rounds_lie_around_each_other_from_the_piece_to_the_outer_edge() {
        PieceBox box = PieceBox.in(900, 700, 0, 20, FIELDS);

        assertThat(box.round(0)).isEqualTo(box.inner());
        assertThat(box.round(20)).isEqualTo(box.outer());
        for (int r = 1; r <= 20; r++) {
            assertThat(box.round(r).contains(box.round(r - 1))).isTrue();
        }
    }

    @Test
    void the_box_has_the_proportions_of_the_piece_as_far_as_its_fields_leave_room() {
        PieceBox square = PieceBox.in(1_200, 800, 1, 10, FIELDS);
        assertThat(square.outer().getWidth()).isEqualTo(square.outer().getHeight());
        PieceBox wide = PieceBox.in(1_200, 800, 1.5, 10, FIELDS);
        assertThat(wide.outer().getWidth() / wide.outer().getHeight()).isEqualTo(1.5, within());
        PieceBox scarf = PieceBox.in(1_200, 800, 30, 10, FIELDS);
        assertThat(scarf.inner().getHeight()).isGreaterThanOrEqualTo(FIELDS.height);
        PieceBox ribbon = PieceBox.in(1_200, 800, 0.01, 10, FIELDS);
        assertThat(ribbon.inner().getWidth()).isGreaterThanOrEqualTo(FIELDS.width);
    }

    @Test
    void the_left_hand_goes_the_other_way_round() {
        Rectangle2D on = new Rectangle2D.Double(10, 20, 100, 60);

        assertThat(PieceBox.point(on, Side.TOP, HookHand.LEFT, 0, 0)).isEqualTo(new Point2D.Double(10, 20));
        assertThat(PieceBox.point(on, Side.RIGHT, HookHand.LEFT, 0.25, 7)).isEqualTo(new Point2D.Double(117, 35));
        for (Side side : Side.values()) {
            assertThat(PieceBox.point(on, side, HookHand.LEFT, 1, 0))
                    .isEqualTo(PieceBox.point(on, HookHand.LEFT.after(side), HookHand.LEFT, 0, 0));
        }
    }

    @Test
    void the_room_of_the_fields_lies_within_a_piece_of_any_proportions() {
        for (int width = 700; width <= 1_500; width += 100) {
            Rectangle2D room = PieceBox.within(width, 600, FIELDS);
            assertThat(room.getWidth()).isGreaterThanOrEqualTo(FIELDS.width);
            assertThat(room.getHeight()).isGreaterThanOrEqualTo(FIELDS.height);
            for (double proportion : new double[] {0, 0.01, 0.6, 0.8, 1, 1.3, 1.6, 30}) {
                assertThat(PieceBox.in(width, 600, proportion, 10, FIELDS)
                                .inner()
                                .contains(room))
                        .as("%d wide, %s", width, proportion)
                        .isTrue();
            }
        }
    }

    private static org.assertj.core.data.Offset<Double> within() {
        return org.assertj.core.data.Offset.offset(0.01);
    }
}
