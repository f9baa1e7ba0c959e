package edgewright.words.tree;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import edgewright.chart.Stitch;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Runs and brackets are counted and taken apart alike. */
class SideStepTest {
    private static final Run L1 = new Run(1, Stitch.LONG);
    private static final Run B2 = new Run(2, Stitch.BACK_LOOP);
    private static final Bracket TWICE = new Bracket(List.of(L1, B2), 2);
    private static final Bracket NESTED = new Bracket(List.of(TWICE, L1), 3);

    @Test
    void a_bracket_is_worked_as_often_as_it_says() {
        assertThat(SideWords.letters(List.of(NESTED, B2))).isEqualTo("lbblbbl".repeat(3) + "bb");
        assertThat(SideStep.stitches(List.of(NESTED, B2))).isEqualTo(23);
        assertThat(NESTED.runs()).containsExactly(L1, B2, L1);
    }

    @Test
    void the_stitch_at_each_place_is_the_one_that_is_worked_there() {
        List<SideStep> steps = List.of(B2, NESTED, L1);
        StringBuilder letters = new StringBuilder();
        for (int place = 1; place <= SideStep.stitches(steps); place++) {
            letters.append(SideStep.stitchAt(steps, place).letter());
        }
        assertThat(letters).hasToString(SideWords.letters(steps));
    }

    @Test
    void brackets_stand_in_brackets_once_and_are_worked_twice_at_least() {
        assertThatIllegalArgumentException().isThrownBy(() -> new Bracket(List.of(NESTED), 2));
        assertThatIllegalArgumentException().isThrownBy(() -> new Bracket(List.of(L1), 1));
        assertThatIllegalArgumentException().isThrownBy(() -> new Bracket(List.of(), 2));
    }

    @Test
    void more_stitches_than_can_be_counted_are_the_most_that_can() {
        Bracket many = new Bracket(List.of(new Run(999_999_999, Stitch.PLAIN)), 999_999_999);
        assertThat(new Bracket(List.of(many, many), 2).stitches()).isEqualTo(Integer.MAX_VALUE);
        assertThat(SideStep.stitches(List.of(many, L1))).isEqualTo(Integer.MAX_VALUE);
    }

    @Test
    void a_round_can_only_be_worked_as_one_before_it() {
        WrittenRound.AtCorner second =
                new WrittenRound.AtCorner(2, "A", SideSize.unstated(), SideInstructions.of(List.of(L1)), 2);
        WrittenRound again = new WrittenRound.AsRound(5, "B", SideSize.unstated(), second);
        assertThat(again.stretch()).isEqualTo(second.stretch());
        assertThat(again.start()).isEqualTo(Optional.empty());
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new WrittenRound.AsRound(2, "B", SideSize.unstated(), second));
    }
}
