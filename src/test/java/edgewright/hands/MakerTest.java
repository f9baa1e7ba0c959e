package edgewright.hands;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import edgewright.chart.Counting;
import edgewright.chart.HookHand;
import edgewright.chart.PerSide;
import edgewright.chart.Side;
import edgewright.chart.Stitch;
import edgewright.chart.Terms;
import edgewright.hands.Stop.Reason;
import edgewright.words.tree.BaseRound;
import edgewright.words.tree.Bracket;
import edgewright.words.tree.ChangingStep;
import edgewright.words.tree.Group;
import edgewright.words.tree.Instructions;
import edgewright.words.tree.Multiple;
import edgewright.words.tree.PatternYarn;
import edgewright.words.tree.Run;
import edgewright.words.tree.SideInstructions;
import edgewright.words.tree.SideSize;
import edgewright.words.tree.SideStep;
import edgewright.words.tree.StartMark;
import edgewright.words.tree.StartMark.Part;
import edgewright.words.tree.StartMarker;
import edgewright.words.tree.StartMarkers;
import edgewright.words.tree.WrittenRound;
import edgewright.words.tree.WrittenStart;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;

/** What a maker does with words: groups, last stitches, corners and stated counts. */
class MakerTest {
    /** All back-loop: 2; *4; to the last 3. */
    private static final WrittenRound FIRST = round(1, runs("2b"), group("4b", 3), runs("3b"));

    @Test
    void a_group_is_worked_as_often_as_it_fits_on_each_side() {
        WrittenRound round = round(1, runs("1b 1p"), group("1p 3b", 3), runs("1p 1b 1p"));
        Fabric fabric = finished(pattern(round), PerSide.of(3, 7, 11, 15));
        assertThat(List.of(
                        fabric.letters(1, Side.TOP),
                        fabric.letters(1, Side.LEFT),
                        fabric.letters(1, Side.BOTTOM),
                        fabric.letters(1, Side.RIGHT)))
                .containsExactly("bppbp", "bppbbbpbp", "bppbbbpbbbpbp", "bppbbbpbbbpbbbpbp");
        assertThat(fabric.total(1)).isEqualTo(5 + 9 + 13 + 17);
    }

    @Test
    void a_round_without_a_group_is_worked_as_it_stands() {
        assertThat(finished(
                                pattern(new WrittenRound.AtCorner(
                                        1, "A", SideSize.unstated(), SideInstructions.of(runs("5b")), 2)),
                                PerSide.all(3))
                        .letters(1, Side.RIGHT))
                .isEqualTo("bbbbb");
    }

    @Test
    void a_group_that_does_not_come_out_before_the_last_stitches_stops_the_hands() {
        assertThat(stop(pattern(FIRST), PerSide.pairs(7, 8)))
                .isEqualTo(new Stop(Reason.GROUP_DOES_NOT_FIT, 1, Side.LEFT, 7, Optional.empty(), 3, 4));
    }

    @Test
    void last_stitches_that_are_not_what_follows_are_noticed_at_the_corner() {
        Instructions tooFew = pattern(round(1, runs("2b"), group("4b", 3), runs("2b")));
        assertThat(stop(tooFew, PerSide.all(7)))
                .isEqualTo(new Stop(Reason.STITCHES_LEFT, 1, Side.TOP, 9, Optional.empty(), 0, 1));
        Instructions tooMany = pattern(round(1, runs("2b"), group("4b", 3), runs("4b")));
        assertThat(stop(tooMany, PerSide.all(7)).reason()).isEqualTo(Reason.SIDE_FULL);
    }

    @Test
    void a_side_too_short_for_what_stands_before_the_group_is_full() {
        Instructions pattern = pattern(round(1, runs("6b"), group("4b", 3), runs("3b")));
        assertThat(stop(pattern, PerSide.all(3)))
                .isEqualTo(new Stop(Reason.SIDE_FULL, 1, Side.TOP, 6, Optional.of(Stitch.BACK_LOOP), 0, 5));
    }

    @Test
    void a_stated_count_that_is_not_reached_stops_the_hands_on_its_side() {
        SideSize stated = SideSize.of(PerSide.of(9, 9, 9, 13));
        WrittenRound round = new WrittenRound.AtCorner(1, "A", stated, FIRST.stretch(), 2);
        assertThat(stop(pattern(round), PerSide.all(7)))
                .isEqualTo(new Stop(Reason.COUNT_NOT_MET, 1, Side.RIGHT, 9, Optional.empty(), 13, 9));
        assertThat(finished(pattern(round), PerSide.of(7, 7, 7, 11)).total(1)).isEqualTo(40);
    }

    @Test
    void a_stated_multiple_that_is_not_met_stops_the_hands() {
        SideSize stated = SideSize.of(new Multiple(4, 2, List.of()));
        WrittenRound round = new WrittenRound.AtCorner(1, "A", stated, FIRST.stretch(), 2);
        assertThat(stop(pattern(round), PerSide.all(7)))
                .isEqualTo(new Stop(Reason.MULTIPLE_NOT_MET, 1, Side.TOP, 9, Optional.empty(), 3, 9));
    }

    @Test
    void the_base_round_must_be_what_the_pattern_asks_for() {
        BaseRound base = new BaseRound(SideSize.of(Multiple.containing(4, 3)), OptionalInt.of(7), OptionalInt.of(2));
        Instructions pattern = pattern(base, FIRST);
        assertThat(stop(pattern, PerSide.of(7, 7, 3, 7)))
                .isEqualTo(new Stop(Reason.BASE_TOO_SHORT, 0, Side.BOTTOM, 3, Optional.empty(), 7, 3));
        assertThat(stop(pattern, PerSide.pairs(7, 9)))
                .isEqualTo(new Stop(Reason.MULTIPLE_NOT_MET, 0, Side.LEFT, 9, Optional.empty(), 2, 9));
        assertThat(finished(pattern, PerSide.all(7)).rounds()).isEqualTo(1);
    }

    @Test
    void the_hands_stop_at_the_first_stitch_that_cannot_be_made_and_keep_what_they_have() {
        WrittenRound second = round(2, runs("3b"), group("3b 1l", 4), runs("4b"));
        WrittenRound third = round(3, runs("4b"), group("3b 1l", 5), runs("5b"));
        WorkOutcome outcome = new Maker(HouseRules.ALL_ALLOWED).work(pattern(FIRST, second, third), PerSide.all(11));
        assertThat(((WorkOutcome.Stopped) outcome).stop())
                .isEqualTo(new Stop(Reason.COVERED, 3, Side.TOP, 8, Optional.of(Stitch.LONG), 0, 0));
        assertThat(outcome.fabric().letters(3, Side.TOP)).isEqualTo("bbbbbbb");
    }

    @Test
    void what_stands_in_brackets_is_worked_as_often_as_they_say_and_no_further_than_the_side() {
        List<SideStep> steps = List.of(new Bracket(List.of(new Bracket(List.copyOf(runs("1b 1p")), 2), run("1b")), 2));
        WrittenRound round = new WrittenRound.AtCorner(1, "A", SideSize.unstated(), SideInstructions.of(steps), 2);
        assertThat(finished(pattern(round), PerSide.all(8)).letters(1, Side.LEFT))
                .isEqualTo("bpbpbbpbpb");
        assertThat(stop(pattern(round), PerSide.all(7)))
                .isEqualTo(new Stop(Reason.SIDE_FULL, 1, Side.TOP, 10, Optional.of(Stitch.BACK_LOOP), 0, 9));
        List<SideStep> endless = List.of(new Bracket(List.copyOf(runs("1b")), 999_999_999));
        WrittenRound group = new WrittenRound.AtCorner(
                1, "A", SideSize.unstated(), SideInstructions.of(List.of(), new Group(endless, 0), List.of()), 2);
        assertThat(stop(pattern(group), PerSide.all(7)).reason()).isEqualTo(Reason.GROUP_DOES_NOT_FIT);
    }

    @Test
    void a_round_that_is_worked_as_another_is_worked_with_its_words_in_its_own_yarn() {
        WrittenRound.AtCorner told = new WrittenRound.AtCorner(
                1, "A", SideSize.unstated(), SideInstructions.of(List.of(), group("1b 1p 1b", 0), List.of()), 2);
        WrittenRound again = new WrittenRound.AsRound(2, "B", SideSize.unstated(), told);
        assertThat(stop(pattern(told, again), PerSide.all(7)))
                .isEqualTo(new Stop(Reason.GROUP_DOES_NOT_FIT, 2, Side.TOP, 10, Optional.empty(), 0, 2));
        assertThat(finished(pattern(told), PerSide.all(7)).letters(1, Side.TOP)).isEqualTo("bpbbpbbpb");
    }

    @Test
    void the_yarn_and_the_corner_of_each_round_are_kept() {
        WrittenRound round = new WrittenRound.AtCorner(1, "B", SideSize.unstated(), FIRST.stretch(), 3);
        Fabric fabric = finished(pattern(round), PerSide.all(7));
        assertThat(fabric.yarn(1)).isEqualTo("B");
        assertThat(fabric.cornerChains(1)).isEqualTo(3);
    }

    /** The sides have 7 stitches below, so places 1 to 9. */
    private static Instructions started(int stitch, SideInstructions words, Part part, int step) {
        return started(stitch, words, part, step, SideSize.unstated());
    }

    private static Instructions started(int stitch, SideInstructions words, Part part, int step, SideSize stated) {
        WrittenStart start = new WrittenStart(Side.LEFT, stitch, new StartMark(part, step));
        StartMarker marker = new StartMarker(Side.LEFT, 1);
        return pattern()
                .withMarkers(Optional.of(new StartMarkers(0, marker, marker)))
                .withRounds(List.of(new WrittenRound.AlongSide(1, "A", stated, words, 2, start)));
    }

    private static final SideInstructions RUNS = SideInstructions.of(runs("3b 1p 1p 4b"));
    private static final SideInstructions GROUPS = SideInstructions.of(runs("1b"), group("1p 1b", 2), runs("1p 1b"));

    @Test
    void a_round_that_begins_along_a_side_comes_back_to_its_join() {
        // Source of the way round, and of the last stitch in the place of the join: common practice, no source.
        Fabric fabric = finished(started(4, RUNS, Part.BEFORE, 2), PerSide.all(7));
        assertThat(fabric.letters(1, Side.LEFT)).isEqualTo("bbbppbbbb");
        assertThat(fabric.side(1, Side.LEFT))
                .extracting(FabricStitch::number)
                .containsExactly(1, 2, 3, 4, 5, 6, 7, 8, 9);
        assertThat(fabric.side(1, Side.LEFT))
                .extracting(made -> made.below().orElseThrow().number())
                .containsExactly(0, 1, 2, 3, 4, 5, 6, 7, 8);
        assertThat(fabric.total(1)).isEqualTo(36);
    }

    @Test
    void a_mark_stands_for_any_repeat_of_its_group_and_for_one_place_before_and_after_it() {
        for (int stitch = 1; stitch <= 9; stitch++) {
            assertThat(works(started(stitch, GROUPS, Part.BEFORE, 0))).isFalse();
            assertThat(works(started(stitch, GROUPS, Part.BEFORE, 1))).isEqualTo(stitch == 1);
            // At its beginning the mark stands for where the group may stop, too.
            assertThat(works(started(stitch, GROUPS, Part.GROUP, 0))).isEqualTo(stitch % 2 == 1 && stitch <= 7);
            assertThat(works(started(stitch, GROUPS, Part.GROUP, 1))).isEqualTo(stitch % 2 == 0 && stitch <= 6);
            assertThat(works(started(stitch, GROUPS, Part.GROUP, 2)))
                    .isEqualTo(stitch % 2 == 1 && stitch >= 3 && stitch <= 7);
            assertThat(works(started(stitch, GROUPS, Part.AFTER, 0))).isEqualTo(stitch == 7);
            assertThat(works(started(stitch, GROUPS, Part.AFTER, 1))).isEqualTo(stitch == 8);
            assertThat(works(started(stitch, GROUPS, Part.AFTER, 2))).isEqualTo(stitch == 9);
        }
    }

    private static boolean works(Instructions pattern) {
        WorkOutcome outcome = new Maker(HouseRules.ALL_ALLOWED).work(pattern, PerSide.all(7));
        if (outcome instanceof WorkOutcome.Finished finished) {
            assertThat(finished.fabric().letters(1, Side.LEFT)).isEqualTo("bpbpbpbpb");
            return true;
        }
        assertThat(((WorkOutcome.Stopped) outcome).stop().reason()).isEqualTo(Reason.MARK_ELSEWHERE);
        return false;
    }

    @Test
    void a_mark_that_stands_elsewhere_is_noticed_before_the_first_stitch() {
        assertThat(stop(started(5, RUNS, Part.BEFORE, 2), PerSide.all(7)))
                .isEqualTo(new Stop(Reason.MARK_ELSEWHERE, 1, Side.LEFT, 5, Optional.empty(), 5, 4));
        assertThat(stop(started(5, GROUPS, Part.GROUP, 1), PerSide.all(7)))
                .isEqualTo(new Stop(Reason.MARK_ELSEWHERE, 1, Side.LEFT, 5, Optional.empty(), 5, 6));
        assertThat(stop(started(10, RUNS, Part.BEFORE, 2), PerSide.all(7)))
                .isEqualTo(new Stop(Reason.NO_PLACE_TO_JOIN, 1, Side.LEFT, 1, Optional.empty(), 10, 9));
    }

    @Test
    void a_round_that_ends_before_its_join_or_goes_past_it_stops_the_hands() {
        // The side does not come out in these words, but the way from the start to the corner does.
        PerSide<Integer> base = PerSide.all(7).with(Side.LEFT, 6);
        assertThat(stop(started(3, RUNS, Part.BEFORE, 2), base))
                .isEqualTo(new Stop(Reason.PAST_THE_JOIN, 1, Side.LEFT, 4, Optional.of(Stitch.PLAIN), 0, 3));
        assertThat(stop(started(5, RUNS, Part.BEFORE, 2), base.with(Side.LEFT, 8)))
                .isEqualTo(new Stop(Reason.SHORT_OF_THE_JOIN, 1, Side.LEFT, 5, Optional.empty(), 0, 1));
    }

    @Test
    void a_round_is_not_closed_with_a_long_stitch_or_a_chain() {
        SideInstructions chain = SideInstructions.of(runs("3b 1c 5b"));
        assertThat(stop(started(4, chain, Part.BEFORE, 2), PerSide.all(7)))
                .isEqualTo(new Stop(Reason.NOT_TO_BE_CLOSED, 1, Side.LEFT, 4, Optional.of(Stitch.CHAIN), 0, 0));
        assertThat(finished(started(3, chain, Part.BEFORE, 1), PerSide.all(7)).letters(1, Side.LEFT))
                .isEqualTo("bbbcbbbbb");
    }

    @Test
    void the_sides_after_a_start_are_come_to_in_the_order_of_the_hand() {
        // The bottom is one stitch too long: it is met after the left by the right hand, before it by the left hand.
        Instructions right = started(4, RUNS, Part.BEFORE, 2);
        Instructions left = new Instructions(
                right.title(),
                right.designer(),
                right.notes(),
                right.draft(),
                right.terms(),
                right.counting(),
                HookHand.LEFT,
                right.yarns(),
                right.base(),
                right.markers(),
                right.rounds(),
                right.back());
        PerSide<Integer> base = PerSide.pairs(8, 7);
        assertThat(stop(right, base).side()).isEqualTo(Side.BOTTOM);
        assertThat(stop(left, base).side()).isEqualTo(Side.TOP);
    }

    @Test
    void the_side_on_which_a_round_is_joined_is_counted_like_the_others() {
        SideSize stated = SideSize.of(PerSide.all(9).with(Side.LEFT, 10));
        assertThat(finished(started(4, RUNS, Part.BEFORE, 2), PerSide.all(7)).total(1))
                .isEqualTo(36);
        assertThat(stop(started(4, RUNS, Part.BEFORE, 2, stated), PerSide.all(7)))
                .isEqualTo(new Stop(Reason.COUNT_NOT_MET, 1, Side.LEFT, 9, Optional.empty(), 10, 9));
    }

    private static WrittenRound changed(ChangingStep... left) {
        List<ChangingStep> plain = List.of(work("9b"));
        return new WrittenRound.PuttingRight(
                1, "A", SideSize.unstated(), PerSide.of(plain, List.of(left), plain, plain), 2);
    }

    private static ChangingStep work(String run) {
        return new ChangingStep.Work(runs(run).get(0));
    }

    @Test
    void two_in_one_make_a_side_longer_and_two_together_make_it_shorter() {
        ChangingStep two = new ChangingStep.TwoInOne(Stitch.BACK_LOOP, Stitch.BACK_LOOP);
        ChangingStep together = new ChangingStep.Together(Stitch.BACK_LOOP);
        Fabric more = finished(pattern(changed(work("3b"), two, work("5b"))), PerSide.all(7));
        assertThat(feet(more)).containsExactly(0, 1, 2, 3, 3, 4, 5, 6, 7, 8);
        Fabric fewer = finished(
                pattern(changed(new ChangingStep.Times(List.of(work("2b"), together), 2), work("1b"))), PerSide.all(7));
        assertThat(feet(fewer)).containsExactly(0, 1, 2, 4, 5, 6, 8);
        assertThat(fewer.side(1, Side.LEFT))
                .extracting(FabricStitch::isUneven)
                .containsExactly(false, false, true, false, false, true, false);
    }

    private static List<Integer> feet(Fabric fabric) {
        return fabric.side(1, Side.LEFT).stream()
                .map(made -> made.below().orElseThrow().number())
                .toList();
    }

    @Test
    void a_changed_side_that_does_not_come_out_at_its_corner_stops_the_hands() {
        ChangingStep together = new ChangingStep.Together(Stitch.PLAIN);
        assertThat(stop(pattern(changed(work("3b"), together)), PerSide.all(7)))
                .isEqualTo(new Stop(Reason.STITCHES_LEFT, 1, Side.LEFT, 5, Optional.empty(), 0, 4));
        assertThat(stop(pattern(changed(work("8b"), together)), PerSide.all(7)))
                .isEqualTo(new Stop(Reason.SIDE_FULL, 1, Side.LEFT, 9, Optional.of(Stitch.PLAIN), 0, 9));
        ChangingStep drops = new ChangingStep.TwoInOne(Stitch.LONG, Stitch.LONG);
        assertThat(stop(pattern(changed(work("8b"), drops)), PerSide.all(7)).reason())
                .isEqualTo(Reason.CHANGE_NOT_PLAIN);
    }

    @Test
    void a_long_stitch_does_not_drop_past_a_stitch_that_shares_its_foot_or_stands_on_two() {
        // A loop for two stitches, or two loops for one: common practice, no source.
        ChangingStep two = new ChangingStep.TwoInOne(Stitch.BACK_LOOP, Stitch.BACK_LOOP);
        WrittenRound above = new WrittenRound.AtCorner(
                2, "A", SideSize.unstated(), SideInstructions.of(runs("5b 1l"), group("1b", 0), List.of()), 2);
        assertThat(stop(pattern(changed(work("4b"), two, work("4b")), above), PerSide.all(7)))
                .isEqualTo(new Stop(Reason.ACROSS_A_CHANGE, 2, Side.LEFT, 6, Optional.of(Stitch.LONG), 0, 0));
        assertThat(finished(pattern(changed(work("2b"), two, work("6b")), above), PerSide.all(7))
                        .letters(2, Side.LEFT))
                .isEqualTo("bbbbblbbbbbb");
    }

    @Test
    void a_maker_can_be_called_away_between_rounds() {
        assertThatThrownBy(() -> new Maker(HouseRules.ALL_ALLOWED, () -> true).work(pattern(FIRST), PerSide.all(7)))
                .isInstanceOf(CancellationException.class);
    }

    private static Fabric finished(Instructions pattern, PerSide<Integer> base) {
        WorkOutcome outcome = new Maker(HouseRules.ALL_ALLOWED).work(pattern, base);
        assertThat(outcome).isInstanceOf(WorkOutcome.Finished.class);
        return outcome.fabric();
    }

    private static Stop stop(Instructions pattern, PerSide<Integer> base) {
        WorkOutcome outcome = new Maker(HouseRules.ALL_ALLOWED).work(pattern, base);
        assertThat(outcome).isInstanceOf(WorkOutcome.Stopped.class);
        return ((WorkOutcome.Stopped) outcome).stop();
    }

    private static Instructions pattern(WrittenRound... rounds) {
        return pattern(BaseRound.UNSTATED, rounds);
    }

    private static Instructions pattern(BaseRound base, WrittenRound... rounds) {
        return new Instructions(
                "Reed Bank",
                "",
                List.of(),
                false,
                Terms.UK,
                Counting.STITCHES,
                List.of(new PatternYarn("A", "Peat"), new PatternYarn("B", "Chalk")),
                base,
                List.of(rounds));
    }

    private static WrittenRound round(int number, List<Run> before, Group group, List<Run> after) {
        return new WrittenRound.AtCorner(
                number, "A", SideSize.unstated(), SideInstructions.of(before, group, after), 2);
    }

    private static Group group(String runs, int lastStitches) {
        return new Group(List.copyOf(runs(runs)), lastStitches);
    }

    private static List<Run> runs(String text) {
        return List.of(text.split(" ")).stream().map(MakerTest::run).toList();
    }

    private static Run run(String run) {
        return new Run(
                Integer.parseInt(run.substring(0, run.length() - 1)),
                Stitch.ofLetter(run.charAt(run.length() - 1)).orElseThrow());
    }
}
