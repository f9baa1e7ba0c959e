package edgewright.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class StitchTest {
    @Test
    void a_stitch_hides_every_stitch_between_its_own_round_and_where_it_lands() {
        for (Stitch stitch : Stitch.values()) {
            List<Integer> covered = IntStream.rangeClosed(0, Stitch.DEEPEST + 1)
                    .filter(stitch::covers)
                    .boxed()
                    .toList();
            assertThat(covered)
                    .as(stitch.toString())
                    .isEqualTo(IntStream.range(1, stitch.roundsDown()).boxed().toList());
        }
        assertThat(Stitch.covering()).containsExactly(Stitch.LONG);
        assertThat(Stitch.DEEPEST).isEqualTo(2);
    }

    @Test
    void a_stitch_takes_loops_where_it_lands_and_nowhere_else() {
        assertThat(Stitch.LONG.takes(StitchLoop.FRONT, 2)).isTrue();
        assertThat(Stitch.LONG.takes(StitchLoop.FRONT, 1)).isFalse();
        assertThat(Stitch.LONG.takes(StitchLoop.BACK, 2)).isFalse();
        assertThat(Stitch.PLAIN.takes(StitchLoop.FRONT, 1)).isTrue();
        assertThat(Stitch.BACK_LOOP.takes(StitchLoop.FRONT, 1)).isFalse();
        assertThat(Stitch.CHAIN.takes(StitchLoop.FRONT, 0)).isFalse();
    }

    @Test
    void every_stitch_is_found_by_its_letter_and_no_other_letter_has_one() {
        for (Stitch stitch : Stitch.values()) {
            assertThat(Stitch.ofLetter(stitch.letter())).contains(stitch);
            assertThat(Stitch.ofLetter(Character.toUpperCase(stitch.letter()))).isEmpty();
        }
        assertThat(Stitch.LETTERS).isEqualTo("bplc");
    }

    @Test
    void only_a_stitch_that_drops_lands_anywhere() {
        SideShape shape = new SideShape(1, 8, 2);
        Place place = new Place(3, Section.REPEAT, 1);
        assertThat(shape.landing(place, Stitch.LONG)).isEqualTo(new Landing.InStitch(new Place(1, Section.REPEAT, 1)));
        assertThatThrownBy(() -> shape.landing(place, Stitch.PLAIN)).isInstanceOf(IllegalArgumentException.class);
    }
}
