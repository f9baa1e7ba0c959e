package edgewright.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class StitchesTest {
    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 63, 64, 65, 127, 128, 129, 200})
    void a_row_keeps_every_stitch_at_its_place(int length) {
        String letters = randomLetters(new Random(length), length);
        Stitches row = Stitches.of(letters);
        assertThat(row.letters()).isEqualTo(letters);
        assertThat(row.length()).isEqualTo(length);
        for (int place = 1; place <= length; place++) {
            assertThat(row.at(place).letter()).isEqualTo(letters.charAt(place - 1));
        }
    }

    @Test
    void every_edit_of_a_row_does_what_the_same_edit_does_to_its_letters() {
        Random random = new Random(1);
        for (int i = 0; i < 2_000; i++) {
            int length = 1 + random.nextInt(140);
            String letters = randomLetters(random, length);
            Stitches row = Stitches.of(letters);
            int place = 1 + random.nextInt(length);
            Stitch stitch = Stitch.values()[random.nextInt(4)];
            String with = letters.substring(0, place - 1) + stitch.letter() + letters.substring(place);
            String before = letters.substring(0, place - 1);
            assertThat(row.with(place, stitch)).isEqualTo(Stitches.of(with));
            assertThat(row.inserted(place, stitch).letters())
                    .isEqualTo(before + stitch.letter() + letters.substring(place - 1));
            assertThat(row.deleted(place).letters()).isEqualTo(before + letters.substring(place));
            assertThat(row.reversed().reversed()).isEqualTo(row);
            assertThat(row.rotated(place).rotated(-place)).isEqualTo(row);
            assertThat(row.between(1, place).followedBy(row.between(place + 1, length)))
                    .isEqualTo(row);
            assertThat(row.letters()).as("the row itself never changes").isEqualTo(letters);
            for (Stitch each : Stitch.values()) {
                assertThat(row.count(each)).isEqualTo((int)
                        letters.chars().filter(c -> c == each.letter()).count());
            }
        }
    }

    @Test
    void a_stitch_that_is_there_already_leaves_the_very_same_row() {
        Stitches row = Stitches.of("lbp");
        assertThat(row.with(1, Stitch.LONG)).isSameAs(row);
    }

    @Test
    void rotating_moves_every_stitch_on_and_the_last_ones_round_to_the_front() {
        assertThat(Stitches.of("lbbp").rotated(1).letters()).isEqualTo("plbb");
        assertThat(Stitches.of("lbbp").rotated(-1).letters()).isEqualTo("bbpl");
        assertThat(Stitches.of("").rotated(3).letters()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "lbbblbbblbbb, 4",
        "lbbb, 4",
        "bbbb, 1",
        "lblb, 2",
        "lbblb, 5",
        "l, 1",
        "lblblblb, 2",
        "lbbpbbbblbbpbbbb, 8"
    })
    void the_shortest_period_divides_the_length(String letters, int period) {
        assertThat(Stitches.of(letters).shortestPeriod()).isEqualTo(period);
    }

    @Test
    void a_bit_set_holds_the_places_of_its_stitch_and_nothing_past_the_end() {
        Stitches row = Stitches.of("l".repeat(70)).with(1, Stitch.PLAIN).resized(69);
        assertThat(row.words()).isEqualTo(2);
        assertThat(row.word(Stitch.LONG, 0)).isEqualTo(~1L);
        assertThat(row.word(Stitch.LONG, 1)).isEqualTo(0b11111L);
        assertThat(row.word(Stitch.PLAIN, 0)).isEqualTo(1L);
        assertThat(row.word(Stitch.CHAIN, 1)).isZero();
    }

    @Test
    void an_unknown_letter_is_refused_with_its_place() {
        assertThatThrownBy(() -> Stitches.of("bbx"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("no stitch has the letter 'x' (place 3)");
        assertThatThrownBy(() -> Stitches.of("B")).isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @ValueSource(ints = {-1, 0, 4})
    void a_place_outside_the_row_is_refused(int place) {
        assertThatThrownBy(() -> Stitches.of("bbb").at(place)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Stitches.of("bbb").with(place, Stitch.LONG))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Stitches.of("bbb").deleted(place)).isInstanceOf(IllegalArgumentException.class);
    }

    private static String randomLetters(Random random, int length) {
        StringBuilder letters = new StringBuilder();
        for (int i = 0; i < length; i++) {
            letters.append(Stitch.values()[random.nextInt(4)].letter());
        }
        return letters.toString();
    }
}
