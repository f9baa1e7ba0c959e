package edgewright.draw.paint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class PenPathTest {
    @Test
    void rectangles_and_level_or_upright_lines_can_be_set_on_whole_pixels_and_nothing_else() {
        assertThat(PenPath.rectangle(new Area(1, 2, 3, 4)).isUpright()).isTrue();
        assertThat(PenPath.line(1, 2, 1, 9).isUpright()).isTrue();
        assertThat(PenPath.line(1, 2, 5, 2).isUpright()).isTrue();
        assertThat(PenPath.line(1, 2, 5, 3).isUpright()).isFalse();
        assertThat(PenPath.circle(1, 2, 3).isUpright()).isFalse();
        assertThat(PenPath.rounded(new Area(0, 0, 9, 9), 1).isUpright()).isFalse();
        PenPath kite = new PenPath.Builder()
                .moveTo(0, 0)
                .lineTo(4, 0)
                .lineTo(4, 4)
                .lineTo(1, 4)
                .close()
                .build();
        assertThat(kite.isUpright()).isFalse();
        PenPath open = new PenPath.Builder()
                .moveTo(0, 0)
                .lineTo(4, 0)
                .lineTo(4, 4)
                .lineTo(0, 4)
                .build();
        assertThat(open.isUpright()).isFalse();
    }

    @Test
    void bounds_hold_every_point_and_handle() {
        assertThat(PenPath.circle(5, 5, 2).bounds()).isEqualTo(new Area(3, 3, 4, 4));
        assertThat(PenPath.rounded(new Area(1, 1, 8, 4), 9).bounds()).isEqualTo(new Area(1, 1, 8, 4));
        assertThat(PenPath.line(3, 1, 2, 7).bounds()).isEqualTo(new Area(2, 1, 1, 6));
    }

    @Test
    void a_path_through_a_frame_is_moved_turned_and_scaled() {
        PenPath path = PenPath.line(0, 0, 1, 2).through(Frame.of(1, 10, 20, 5));
        assertThat(path).isEqualTo(PenPath.line(10, 20, 0, 25)).hasSameHashCodeAs(PenPath.line(10, 20, 0, 25));
        assertThat(path).isNotEqualTo(PenPath.line(10, 20, 0, 26));
    }

    @Test
    void a_path_starts_somewhere() {
        assertThatThrownBy(() -> new PenPath.Builder().lineTo(1, 1)).isInstanceOf(IllegalStateException.class);
    }
}
