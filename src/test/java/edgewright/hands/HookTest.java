package edgewright.hands;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.PerSide;
import edgewright.chart.Side;
import edgewright.chart.Stitch;
import edgewright.chart.StitchLoop;
import edgewright.hands.Stop.Reason;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The laws of loops, one by one, on a piece whose four sides are worked alike. */
class HookTest {
    @Test
    void each_side_takes_two_stitches_more_in_every_round() {
        // Source: common practice, no source: a corner of chains with a stitch at each arm makes each side two longer.
        Fabric fabric = finished("bbbbb", "bbbbbbb", "bbbbbbbbb");
        assertThat(fabric.side(1, Side.TOP)).hasSize(5);
        assertThat(fabric.side(2, Side.BOTTOM)).hasSize(7);
        assertThat(fabric.total(3)).isEqualTo(4 * 9);
    }

    @Test
    void a_long_stitch_goes_into_what_the_stitch_between_was_worked_into_and_covers_it() {
        Fabric fabric = finished("bbbbb", "bbbbbbb", "bbbblbbbb");
        FabricStitch drop = fabric.side(3, Side.LEFT).get(4);
        assertThat(drop.into()).contains(fabric.side(1, Side.LEFT).get(2));
        assertThat(fabric.side(2, Side.LEFT).get(3).inFront()).contains(drop);
        assertThat(Fabric.shownRound(fabric.side(2, Side.LEFT).get(3))).isEqualTo(3);
        assertThat(Fabric.shownRound(fabric.side(1, Side.LEFT).get(2))).isEqualTo(1);
    }

    /** Hands and chart each have a table of their own: what was really worked, loop by loop, is what the chart says of it. */
    @Test
    void a_stitch_takes_and_leaves_the_loops_that_the_chart_says() {
        for (Stitch stitch : Stitch.values()) {
            String between = stitch.coversStitchBelow() ? "bbcbb" : "bbbbb"; // a chain between takes no loop itself
            Fabric fabric = finished("bbb", between, "bbb" + stitch.letter() + "bbb");
            FabricStitch worked = fabric.side(3, Side.TOP).get(3);
            FabricStitch below = fabric.side(2, Side.TOP).get(2);
            Optional<FabricStitch> foot = stitch.roundsDown() == 0
                    ? Optional.empty()
                    : Optional.of(fabric.side(3 - stitch.roundsDown(), Side.TOP).get(3 - stitch.roundsDown()));
            assertThat(worked.into()).as("%s is worked into", stitch).isEqualTo(foot);
            assertThat(below.inFront().isPresent()).as("%s covers", stitch).isEqualTo(stitch.coversStitchBelow());
            for (Loop loop : Loop.values()) {
                StitchLoop same = StitchLoop.valueOf(loop.name());
                assertThat(foot.isPresent() && !foot.get().isFree(loop))
                        .as("%s takes %s", stitch, loop)
                        .isEqualTo(stitch.takes(same));
                assertThat(below.isFree(loop) && below.inFront().isEmpty())
                        .as("%s leaves %s", stitch, loop)
                        .isEqualTo(stitch.leavesFree(same));
            }
        }
    }

    /** As the pattern says under 'Corners'. Common practice, no source. */
    @Test
    void in_a_corner_chain_a_back_loop_stitch_takes_the_back_loop_and_a_long_stitch_the_front_loop() {
        Fabric untouched = finished("bbb", "bbbbb");
        FabricStitch arm = untouched.side(1, Side.TOP).get(0).into().orElseThrow();
        assertThat(arm.kind()).isEqualTo(FabricStitch.Kind.CORNER);
        assertThat(arm.isFree(Loop.BACK)).isFalse();
        assertThat(arm.isFree(Loop.FRONT)).isTrue();
        FabricStitch dropped =
                finished("bbb", "blblb").side(2, Side.TOP).get(1).into().orElseThrow();
        assertThat(dropped.isFree(Loop.FRONT)).isFalse();
        FabricStitch plain = finished("ppp").side(1, Side.TOP).get(0).into().orElseThrow();
        assertThat(plain.isFree(Loop.BACK) || plain.isFree(Loop.FRONT)).isFalse();
    }

    @Test
    void the_second_and_the_last_but_one_land_in_the_corner_of_the_round_two_below() {
        // Source: common practice, no source.
        Fabric fabric = finished("bbb", "blblb");
        assertThat(fabric.side(2, Side.RIGHT).get(1).into().map(FabricStitch::kind))
                .contains(FabricStitch.Kind.CORNER);
        assertThat(fabric.side(2, Side.RIGHT).get(3).into().map(FabricStitch::kind))
                .contains(FabricStitch.Kind.CORNER);
        assertThat(fabric.side(2, Side.RIGHT).get(1).into().map(FabricStitch::round))
                .contains(0);
    }

    @Test
    void the_base_round_can_be_dropped_into_from_round_2() {
        assertThat(finished("bbbb", "bblbbb").side(2, Side.TOP).get(2).into().map(FabricStitch::kind))
                .contains(FabricStitch.Kind.BASE);
    }

    @Test
    void round_1_has_nothing_to_drop_into() {
        assertStops(Reason.NO_ROUND_BELOW, 2, "blb");
        assertStops(Reason.NO_ROUND_BELOW, 1, "lbb");
    }

    @Test
    void the_first_and_the_last_stitch_have_nothing_below_the_corner() {
        assertStops(Reason.NOTHING_UNDER_CORNER, 1, "bbb", "lbbbb");
        assertStops(Reason.NOTHING_UNDER_CORNER, 5, "bbb", "bbbbl");
    }

    @Test
    void a_loop_behind_a_long_stitch_cannot_be_reached() {
        assertStops(Reason.COVERED, 4, "bbb", "bblbb", "bbblbbb");
    }

    @Test
    void a_plain_stitch_between_has_taken_both_loops() {
        assertStops(Reason.LOOP_TAKEN, 3, "bbb", "bpbbb", "bblbbbb");
        assertStops(Reason.LOOP_TAKEN, 2, "pbb", "blbbb");
    }

    @Test
    void a_chain_between_leaves_both_loops_free() {
        assertThat(finished("bbb", "bbcbb", "bbblbbb").rounds()).isEqualTo(3);
    }

    @Test
    void a_chain_two_rounds_below_does_not_hold_a_long_stitch() {
        assertStops(Reason.ON_CHAIN, 4, "bcb", "bbbbb", "bbblbbb");
    }

    @Test
    void long_stitches_stack_only_where_the_pattern_lets_them() {
        String[] stacked = {"bbb", "bblbb", "bbbbbbb", "bbbblbbbb"};
        assertStops(Reason.ON_LONG, 5, stacked);
        assertThat(work(new HouseRules(true, true), stacked)).isInstanceOf(WorkOutcome.Finished.class);
    }

    @Test
    void a_pattern_may_forbid_landing_in_corner_chains() {
        assertThat(stop(work(new HouseRules(false, false), "bbb", "blbbb")).reason())
                .isEqualTo(Reason.ON_CORNER);
    }

    @Test
    void a_corner_does_not_hold_a_chain() {
        assertStops(Reason.CHAIN_OVER_CORNER, 1, "cbb");
        assertStops(Reason.CHAIN_OVER_CORNER, 3, "bbc");
    }

    @Test
    void stitches_left_over_and_stitches_too_many_are_noticed_at_the_corner() {
        assertThat(stop(work(HouseRules.ALL_ALLOWED, "bb")))
                .isEqualTo(new Stop(Reason.STITCHES_LEFT, 1, Side.TOP, 3, Optional.empty(), 0, 1));
        assertThat(stop(work(HouseRules.ALL_ALLOWED, "bbbb")))
                .isEqualTo(new Stop(Reason.SIDE_FULL, 1, Side.TOP, 4, Optional.of(Stitch.BACK_LOOP), 0, 3));
    }

    private static void assertStops(Reason reason, int stitch, String... rounds) {
        Stop stop = stop(work(new HouseRules(true, false), rounds));
        assertThat(List.of(stop.reason(), stop.round(), stop.side(), stop.stitch()))
                .containsExactly(reason, rounds.length, Side.TOP, stitch);
    }

    private static Fabric finished(String... rounds) {
        WorkOutcome outcome = work(new HouseRules(true, false), rounds);
        assertThat(outcome).isInstanceOf(WorkOutcome.Finished.class);
        return outcome.fabric();
    }

    private static Stop stop(WorkOutcome outcome) {
        assertThat(outcome).isInstanceOf(WorkOutcome.Stopped.class);
        return ((WorkOutcome.Stopped) outcome).stop();
    }

    /** Works rounds whose four sides are all alike. The base round has one stitch a side, or as many as the first round needs. */
    private static WorkOutcome work(HouseRules rules, String... rounds) {
        int base = rounds.length == 1 ? 1 : rounds[0].length() - 2;
        List<Maker.Cells> cells = new ArrayList<>();
        for (String round : rounds) {
            List<Stitch> side = round.chars()
                    .mapToObj(letter -> Stitch.ofLetter((char) letter).orElseThrow())
                    .toList();
            cells.add(new Maker.Cells("A", PerSide.all(side), 2));
        }
        return new Maker(rules).work(cells, PerSide.all(base), 2);
    }
}
