package edgewright.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What was counted on a piece, round by round, on its front and on its back. */
class KeptPieceTest {
    private static final PerSide<Integer> COUNTS = PerSide.of(103, 131, 103, 131);

    @Test
    void rounds_stand_in_order_each_once_and_a_count_of_today_takes_the_place_of_an_older_one() {
        Extras kept = new Extras(Map.of("day", "\"Monday\""));
        KeptPiece piece = new KeptPiece(List.of(new RoundCounts(6, COUNTS, kept)), List.of(), Extras.NONE)
                .with(false, 0, PerSide.all(90))
                .with(true, 2, PerSide.all(98))
                .with(false, 6, PerSide.all(102));
        assertThat(piece)
                .isEqualTo(new KeptPiece(
                        List.of(new RoundCounts(0, PerSide.all(90)), new RoundCounts(6, PerSide.all(102), kept)),
                        List.of(new RoundCounts(2, PerSide.all(98))),
                        Extras.NONE));
        assertThat(piece.in(true, 2)).hasValue(PerSide.all(98));
        assertThat(piece.in(false, 2)).isEmpty();
    }

    @Test
    void a_round_that_cannot_be_or_stands_there_twice_is_refused() {
        assertThatThrownBy(() -> new KeptPiece(
                        List.of(new RoundCounts(2, COUNTS), new RoundCounts(2, COUNTS)), List.of(), Extras.NONE))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> KeptPiece.NONE.with(true, 0, COUNTS))
                .as("the back layer has no base round")
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new RoundCounts(Chart.MOST_ROUNDS + 1, COUNTS))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new RoundCounts(0, PerSide.all(RoundCounts.MOST_STITCHES + 1)))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
