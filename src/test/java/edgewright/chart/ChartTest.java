package edgewright.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ChartTest {
    private static final Yarn PEAT = new Yarn("A", "Peat", Colour.parse("#2b2a33"));
    private static final Yarn CHALK = new Yarn("B", "Chalk", Colour.parse("#f2ead8"));
    private static final Chart CHART = Chart.blank("Reed Bank", new SideShape(1, 6, 2), 4, List.of(PEAT, CHALK));

    @Test
    void a_blank_chart_has_back_loop_rounds_of_the_right_length_with_its_yarns_in_turn() {
        assertThat(CHART.shape(Side.FIRST)).isEqualTo(new SideShape(1, 6, 2));
        assertThat(CHART.raggedSections()).isEmpty();
        assertThat(CHART.rounds()).allMatch(round -> round.isAll(Stitch.BACK_LOOP));
        assertThat(CHART.rounds()).extracting(Round::yarn).containsExactly("A", "B", "A", "B");
        assertThat(CHART.round(3).side(Side.FIRST, 2).length())
                .isEqualTo(CHART.shape(Side.FIRST).stitches(3, 2));
    }

    @Test
    void a_cell_shows_the_yarn_of_the_round_above_where_the_stitch_above_it_is_long() {
        Place covering = new Place(4, Section.FROM_CORNER, 4);
        Place covered = new Place(3, Section.FROM_CORNER, 3);
        Chart chart = Edits.setStitches(CHART, List.of(covering), Stitch.LONG);
        assertThat(chart.shownRound(covered)).isEqualTo(4);
        assertThat(CHART.shownRound(covered)).isEqualTo(3);
        assertThat(chart.shownRound(covering)).isEqualTo(4);
        assertThat(chart.yarnOf(4)).isEqualTo(CHALK);
    }

    @Test
    void a_round_must_name_a_yarn_of_the_chart() {
        assertThatThrownBy(() -> CHART.withYarns(List.of(PEAT)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("round 2 names the yarn 'B', which is not in the chart");
    }

    @Test
    void two_yarns_cannot_have_one_id() {
        assertThatThrownBy(() -> CHART.withYarns(List.of(PEAT, CHALK, PEAT.withName("Silt"))))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("two yarns have the id 'A'");
    }

    @Test
    void a_chart_has_1_to_2000_rounds_and_sections_of_round_1_have_1_to_2000_stitches() {
        assertThatThrownBy(() -> CHART.withRounds(List.of())).isInstanceOf(IllegalArgumentException.class);
        Round first = CHART.round(1);
        assertThatThrownBy(() -> CHART.withRounds(Collections.nCopies(2_001, first)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("rounds: 2001, expected 1 to 2000");
        assertThatThrownBy(() -> CHART.withRound(1, first.with(Section.REPEAT, Stitches.backLoops(0))))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> CHART.withRound(1, first.with(Section.REPEAT, Stitches.backLoops(2_001))))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("stitches in repeat of round 1: 2001, expected 1 to 2000");
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 4, -1})
    void a_corner_has_one_two_or_three_chains(int chains) {
        assertThatThrownBy(() -> Corner.DEFAULT.withChains(chains)).isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "123456789", "A-1", "A B"})
    void a_yarn_id_is_one_to_eight_letters_or_digits(String id) {
        assertThatThrownBy(() -> new Yarn(id, "Silt", PEAT.colour())).isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @CsvSource({"#2b2a33, 43, 42, 51", "#FFFFFF, 255, 255, 255", "#000000, 0, 0, 0"})
    void a_colour_is_read_and_written_as_rrggbb(String text, int red, int green, int blue) {
        Colour colour = Colour.parse(text);
        assertThat(List.of(colour.red(), colour.green(), colour.blue())).containsExactly(red, green, blue);
        assertThat(colour).hasToString(text.toLowerCase(java.util.Locale.ROOT));
    }

    @ParameterizedTest
    @ValueSource(strings = {"#12345", "123456", "#12345g", "#1234567", "red"})
    void anything_else_is_no_colour(String text) {
        assertThatThrownBy(() -> Colour.parse(text))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("'" + text + "': expected a colour as #rrggbb");
    }

    @Test
    void two_numbers_stand_for_top_and_bottom_then_left_and_right() {
        assertThat(PerSide.parse("29, 41")).isEqualTo(PerSide.of(29, 41, 29, 41));
        assertThat(PerSide.parse("1,2,3,4")).isEqualTo(PerSide.of(1, 2, 3, 4));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "1", "1,2,3", "1,2,3,4,5", "1,-2", "1,x", "1,", "1,1000001", "99999999999,1"})
    void sides_that_are_not_two_or_four_whole_numbers_are_refused(String text) {
        assertThatThrownBy(() -> PerSide.parse(text)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void stitches_have_the_letters_of_the_chart_file() {
        assertThat(Stitch.values()).extracting(Stitch::letter).containsExactly('b', 'p', 'l', 'c');
        for (Stitch stitch : Stitch.values()) {
            assertThat(Stitch.ofLetter(stitch.letter())).contains(stitch);
        }
        assertThat(Stitch.ofLetter('B')).isEmpty();
    }
}
