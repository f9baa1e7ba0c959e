package edgewright.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import edgewright.testing.RandomCharts;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

class PatternDetailsTest {
    /** Common practice, no source: rounds started on opposite sides in turn keep the woven ends apart. */
    @Test
    void startsInTurnLieOnOppositeSides() {
        Start start = Start.inTurn(Side.LEFT);
        assertThat(start.of(1)).isEqualTo(Side.LEFT);
        assertThat(start.of(2)).isEqualTo(Side.RIGHT);
        assertThat(start.of(3)).isEqualTo(Side.LEFT);
    }

    /** Common practice, no source: the back layer takes a hook one size smaller, 4.5 mm where the front takes 5 mm. */
    @Test
    void theBackIsWorkedOneHookSizeSmallerUnlessItHasAHookOfItsOwn() {
        PatternDetails front = PatternDetails.NONE.withHook(Optional.of(HookSize.ofMm(5)));
        assertThat(front.backHook()).isEmpty();
        PatternDetails doubled = front.withBack(Optional.of(Back.DEFAULT));
        assertThat(doubled.backHook()).contains(HookSize.ofMm(4.5));
        assertThat(doubled.withBack(Optional.of(Back.DEFAULT.withHook(Optional.of(HookSize.ofMm(3)))))
                        .backHook())
                .contains(HookSize.ofMm(3));
    }

    @Test
    void aStartColumnComesBackOntoTheSideWhenTheRepeatGetsShorter() {
        Chart chart = new RandomCharts(7).workable();
        int last = chart.border().lastStart();
        Chart started = chart.withMaking(
                PatternDetails.NONE.withStart(Optional.of(Start.DEFAULT.withColumn(OptionalInt.of(last)))));
        assertThat(started.withRounds(started.rounds())).isEqualTo(started);
        Round first = started.round(1);
        Round shorter = new Round(first.yarn(), Stitches.of("b"), Stitches.of("b"), first.toCorner(), first.extras());
        assertThat(started.withRound(1, shorter).making().start().orElseThrow().column())
                .hasValue(1);
    }

    @Test
    void aStartColumnPastTheFirstRepeatIsRefused() {
        Chart chart = new RandomCharts(7).workable();
        int past = chart.border().lastStart() + 1;
        PatternDetails making =
                PatternDetails.NONE.withStart(Optional.of(Start.DEFAULT.withColumn(OptionalInt.of(past))));
        assertThatThrownBy(() -> chart.withMaking(making)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void theLeftHandTravelsTheOtherWayRound() {
        for (HookHand hand : HookHand.values()) {
            for (int i = 0; i < 4; i++) {
                assertThat(hand.after(hand.workingOrder().get(i)))
                        .isEqualTo(hand.workingOrder().get((i + 1) % 4));
            }
        }
        assertThat(HookHand.LEFT.after(Side.TOP)).isEqualTo(Side.RIGHT);
    }
}
