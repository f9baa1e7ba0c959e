package edgewright.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import edgewright.chart.Chart;
import edgewright.chart.Counting;
import edgewright.chart.PerSide;
import edgewright.chart.Side;
import edgewright.chart.SidePlace;
import edgewright.chart.SideShape;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import org.junit.jupiter.api.Test;

class FitTest {
    private static final SideShape SHAPE = new SideShape(2, 5, 1);
    private static final Chart CHART = TestCharts.chart(SHAPE, 8, 5);

    @Test
    void a_piece_is_answered_with_targets_changes_and_places() {
        // Round 2 closes on 2 + 1 + 4 = 7 and whole repeats of 5: a multiple of 5 plus 2.
        FitPlan plan = plan(CHART, FitQuestion.of(2, PerSide.of(57, 38, 58, 39), Counting.STITCHES));

        assertThat(plan.targets().wanted()).isEqualTo(PerSide.pairs(57, 37));
        assertThat(plan.changes().stream())
                .containsExactly(
                        new SideChange(Side.TOP, 2, 57, 0),
                        new SideChange(Side.LEFT, 2, 38, -1),
                        new SideChange(Side.BOTTOM, 2, 58, -1),
                        new SideChange(Side.RIGHT, 2, 39, -2));
        assertThat(plan.change(Side.LEFT).places()).containsExactly(new SidePlace(2, 19));
        assertThat(plan.stitchesAfterwards()).isEqualTo(PerSide.pairs(59, 39));
        assertThat(plan.changing()).isEqualTo(3);
        assertThat(plan.warnings()).isEmpty();
        assertThat(plan.isDone()).isFalse();
    }

    @Test
    void a_piece_counted_with_chains_gets_the_same_plan() {
        FitQuestion stitches = FitQuestion.of(2, PerSide.of(57, 38, 58, 39), Counting.STITCHES);
        FitQuestion chains = FitQuestion.of(2, PerSide.of(59, 40, 60, 41), Counting.WITH_CHAINS);

        assertThat(stitches.in(Counting.WITH_CHAINS)).isEqualTo(chains);
        assertThat(plan(CHART, chains).changes())
                .isEqualTo(plan(CHART, stitches).changes());
    }

    @Test
    void a_side_shorter_than_the_corner_sections_is_refused_as_too_small() {
        FitQuestion question = FitQuestion.of(2, PerSide.of(57, 6, 57, 5), Counting.STITCHES);

        FitRefusal.TooSmall refusal = (FitRefusal.TooSmall) Fit.answer(CHART, question);

        assertThat(refusal).isEqualTo(new FitRefusal.TooSmall(question, 7, List.of(Side.LEFT, Side.RIGHT)));
        assertThat(refusal.missing(Side.RIGHT)).isEqualTo(2);
    }

    @Test
    void counts_that_are_wanted_but_do_not_close_are_refused_with_the_reason() {
        FitQuestion question =
                FitQuestion.of(2, PerSide.pairs(60, 40), Counting.STITCHES).wanting(PerSide.pairs(60, 40));

        assertThat(Fit.answer(CHART, question))
                .isEqualTo(new FitRefusal.CannotClose(
                        question,
                        FitRefusal.CannotClose.Cause.WANTED,
                        5,
                        new EvenSides.CornersMiss(3, OptionalInt.of(2))));
    }

    @Test
    void wanted_counts_that_the_piece_has_not_are_refused_with_the_counts_beside_them() {
        // Round 2 closes on 7, 12, 17 and so on: a multiple of 5 plus 2.
        FitQuestion question =
                FitQuestion.of(2, PerSide.pairs(58, 38), Counting.STITCHES).wanting(PerSide.of(54, 37, 56, 5));

        assertThat(Fit.answer(CHART, question))
                .isEqualTo(new FitRefusal.WantedOpen(
                        question,
                        List.of(
                                new FitRefusal.WantedOpen.OpenSide(Side.TOP, OptionalInt.of(52), 57),
                                new FitRefusal.WantedOpen.OpenSide(Side.BOTTOM, OptionalInt.of(52), 57),
                                new FitRefusal.WantedOpen.OpenSide(Side.RIGHT, OptionalInt.empty(), 7))));
    }

    @Test
    void in_the_last_round_nothing_can_be_changed_any_more() {
        FitQuestion question = FitQuestion.of(8, PerSide.pairs(64, 67), Counting.STITCHES);

        assertThat(Fit.answer(CHART, question))
                .isEqualTo(new FitRefusal.CannotClose(
                        question,
                        FitRefusal.CannotClose.Cause.NO_ROUND_LEFT,
                        5,
                        new EvenSides.SidesDiffer(Side.LEFT, 3, List.of(3, 1))));
        assertThat(plan(CHART, FitQuestion.of(8, PerSide.all(64), Counting.STITCHES))
                        .isDone())
                .isTrue();
    }

    @Test
    void a_round_that_the_chart_has_not_is_refused() {
        assertThatThrownBy(() -> Fit.answer(CHART, FitQuestion.of(9, PerSide.all(64), Counting.STITCHES)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("expected 0 to 8");
        assertThatThrownBy(() -> FitQuestion.of(-1, PerSide.all(64), Counting.STITCHES))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> FitQuestion.of(0, PerSide.all(1), Counting.WITH_CHAINS))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void more_changes_than_a_side_has_room_for_are_refused() {
        Chart wide = TestCharts.chart(new SideShape(1, 16, 2), 8, 5);
        FitQuestion question = FitQuestion.of(2, PerSide.pairs(11, 39), Counting.STITCHES);

        FitRefusal.NoRoom refusal = (FitRefusal.NoRoom) Fit.answer(wide, question);

        // 11 is 4 more than 7 and 12 fewer than 23. Away from the corners 7 stitches are left: three pairs.
        assertThat(refusal.targets().wanted()).isEqualTo(PerSide.pairs(7, 39));
        assertThat(refusal.sides()).containsExactly(Side.TOP, Side.BOTTOM);
        assertThat(refusal.most(Side.TOP)).isEqualTo(3);
        assertThat(refusal.reliefs()).isEmpty();
        assertThat(Fit.answer(wide, FitQuestion.of(2, PerSide.pairs(10, 39), Counting.STITCHES)))
                .isInstanceOf(FitPlan.class);
    }

    @Test
    void more_than_one_change_in_six_is_warned_of_with_what_would_help() {
        // Tied sides far apart: any count between the two costs the same, and the largest is taken.
        FitPlan plan = plan(CHART, FitQuestion.of(2, PerSide.of(42, 37, 52, 37), Counting.STITCHES));

        assertThat(plan.targets().wanted()).isEqualTo(PerSide.pairs(52, 37));
        assertThat(plan.warnings())
                .containsExactly(new FitWarning.Crowded(
                        Side.TOP,
                        10,
                        42,
                        List.of(
                                new TooManyChangesRemedy.OtherCount(Side.TOP, 47),
                                new TooManyChangesRemedy.Untie(Side.TOP))));
    }

    @Test
    void changes_right_below_long_stitches_are_warned_of_where_one_would_land_across() {
        // Changed in round 4. Round 5 has its long stitches at 8, 13, 18 and so on, up to 48. Two worked into stitch 17
        // of round 3 are stitches 18 and 19 of round 4; over them stand 19 and 20 of round 5. Two worked into 35 are 37
        // and 38; over them stand 38 and 39.
        FitQuestion question =
                FitQuestion.of(3, PerSide.of(49, 49, 49, 52), Counting.STITCHES).with(Ties.NONE);

        FitPlan plan = plan(CHART, question);

        assertThat(plan.change(Side.RIGHT).places()).containsExactly(new SidePlace(3, 17), new SidePlace(3, 35));
        assertThat(plan.warnings())
                .containsExactly(
                        new FitWarning.LandsAcross(4, List.of(new SideStitch(Side.RIGHT, new SidePlace(5, 38)))));
    }

    @Test
    void a_whole_pattern_is_refused_where_its_words_could_not_be_worked_and_else_is_the_plan() {
        ChangeRounds best = ChangeRounds.of(CHART);
        // In round 2 of 8 all is plain before the changes; long stitches begin in round 5.
        FitQuestion plain = FitQuestion.of(2, PerSide.of(57, 38, 58, 39), Counting.STITCHES);
        assertThat(Fit.inWords(CHART, plain)).isEqualTo(Fit.answer(CHART, plain));

        FitQuestion below =
                FitQuestion.of(3, PerSide.of(49, 49, 49, 52), Counting.STITCHES).with(Ties.NONE);
        assertThat(Fit.inWords(CHART, below))
                .isEqualTo(new FitRefusal.NotInWords(
                        below,
                        best,
                        List.of(),
                        Optional.of(new FitWarning.LandsAcross(
                                4, List.of(new SideStitch(Side.RIGHT, new SidePlace(5, 38)))))));

        // Round 5 has long stitches and repeats on 50, where 48 and 53 come out even.
        FitQuestion late = FitQuestion.of(5, PerSide.all(50), Counting.STITCHES);
        assertThat(((FitRefusal.NotInWords) Fit.inWords(CHART, late)).patterned())
                .containsExactly(5);
        // A piece that comes out even, but is wanted larger, has its pattern right up to there.
        FitQuestion larger =
                FitQuestion.of(5, PerSide.all(48), Counting.STITCHES).wanting(PerSide.all(53));
        assertThat(((FitRefusal.NotInWords) Fit.inWords(CHART, larger)).patterned())
                .isEmpty();
        assertThat(Fit.inWords(CHART, FitQuestion.of(5, PerSide.all(48), Counting.STITCHES)))
                .isInstanceOf(FitPlan.class);
    }

    @Test
    void changes_right_below_long_stitches_that_stand_clear_of_them_are_not_warned_of() {
        FitQuestion question =
                FitQuestion.of(3, PerSide.of(49, 49, 49, 48), Counting.STITCHES).with(Ties.NONE);

        FitPlan plan = plan(CHART, question);

        assertThat(plan.change(Side.RIGHT).places()).containsExactly(new SidePlace(3, 24));
        assertThat(plan.warnings()).isEmpty();
    }

    @Test
    void a_change_in_or_after_the_first_round_with_a_long_stitch_comes_too_late() {
        FitQuestion inRound4 = FitQuestion.of(4, PerSide.all(48), Counting.STITCHES);
        FitQuestion inRound3 = FitQuestion.of(3, PerSide.all(46), Counting.STITCHES);
        ChangeRounds rounds = ChangeRounds.of(CHART);

        assertThat(plan(CHART, inRound4).warnings()).contains(new FitWarning.TooLate(5, rounds));
        assertThat(plan(CHART, inRound3).warnings()).doesNotContain(new FitWarning.TooLate(4, rounds));
    }

    @Test
    void no_warning_is_given_where_nothing_is_changed() {
        assertThat(plan(CHART, FitQuestion.of(6, PerSide.all(50), Counting.STITCHES))
                        .warnings())
                .isEmpty();
    }

    @Test
    void ten_thousand_pieces_close_after_their_changes_and_every_change_stands_where_it_may() {
        Random random = new Random(10_000);
        int plans = 0;
        int refused = 0;
        int crowded = 0;
        int across = 0;
        while (plans < 10_000) {
            SideShape shape = new SideShape(random.nextInt(8), 1 + random.nextInt(16), random.nextInt(8));
            Chart chart = TestCharts.random(random, shape, 3 + random.nextInt(4), 0.2);
            FitQuestion question = question(random, chart);
            FitAnswer answer = Fit.answer(chart, question);
            if (answer instanceof FitPlan plan) {
                plans++;
                hold(chart, plan);
                crowded += plan.warnings().stream().anyMatch(w -> w instanceof FitWarning.Crowded) ? 1 : 0;
                across += plan.warnings().stream().anyMatch(w -> w instanceof FitWarning.LandsAcross) ? 1 : 0;
            } else {
                refused++;
            }
        }
        // A check that meets nothing would pass too.
        assertThat(List.of(refused, crowded, across))
                .allSatisfy(met -> assertThat(met).isGreaterThan(300));
    }

    private static FitQuestion question(Random random, Chart chart) {
        Counting counting = random.nextBoolean() ? Counting.STITCHES : Counting.WITH_CHAINS;
        int level = 10 + random.nextInt(100);
        int upright = 10 + random.nextInt(100);
        PerSide<Integer> counts = PerSide.each(side -> (side.isLevel() ? level : upright) + random.nextInt(4));
        return FitQuestion.of(random.nextInt(chart.rounds().size()), counts, counting)
                .with(new Ties(random.nextInt(5) > 0, random.nextInt(5) > 0));
    }

    /** Works each side of the plan stitch by stitch, and the next round on it, without asking the plan for its numbers. */
    private static void hold(Chart chart, FitPlan plan) {
        FitQuestion question = plan.question();
        List<SideStitch> across = new ArrayList<>();
        for (Side side : Side.values()) {
            int counted = question.counting().stitches(question.counts().get(side));
            List<Integer> feet = workedFeet(counted, plan.change(side));
            assertThat(feet).hasSize(plan.targets().wanted().get(side) + 2);
            assertThat(chart.shape(Side.FIRST).closes(plan.changing(), feet.size()))
                    .isTrue();
            assertThat(plan.change(side).places())
                    .allSatisfy(place -> assertThat(place.stitch())
                            .isBetween(3, counted - 1 - plan.change(side).kind().used()));
            across.addAll(across(chart, plan, side, feet));
        }
        if (question.ties().topAndBottom()) {
            assertThat(plan.targets().wanted().top())
                    .isEqualTo(plan.targets().wanted().bottom());
        }
        assertThat(plan.warnings().stream()
                        .filter(warning -> warning instanceof FitWarning.LandsAcross)
                        .flatMap(warning -> ((FitWarning.LandsAcross) warning).longStitches().stream())
                        .toList())
                .isEqualTo(across);
    }

    /** For each stitch of the changed round its foot, 0 for the corner chain; two worked together stand on minus the first. */
    private static List<Integer> workedFeet(int counted, SideChange change) {
        List<Integer> feet = new ArrayList<>(List.of(0));
        int foot = 1;
        for (ChangeBlock block : change.blocks(Counting.STITCHES)) {
            for (int time = 0; time < block.times(); time++) {
                for (int i = 0; i < block.work(); i++) {
                    feet.add(foot++);
                }
                if (block.change().isPresent()) {
                    boolean adds = block.change().get() == CountChange.INCREASE;
                    feet.add(adds ? foot : -foot);
                    if (adds) {
                        feet.add(foot);
                    }
                    foot += adds ? 1 : 2;
                }
            }
        }
        assertThat(foot).isEqualTo(counted + 1);
        feet.add(foot);
        return feet;
    }

    private static List<SideStitch> across(Chart chart, FitPlan plan, Side side, List<Integer> feet) {
        int above = plan.changing() + 1;
        List<SideStitch> across = new ArrayList<>();
        if (above > chart.rounds().size()) {
            return across;
        }
        String row = chart.round(above)
                .side(
                        side,
                        chart.shape(Side.FIRST)
                                .repeats(plan.changing(), feet.size())
                                .orElseThrow())
                .letters();
        for (int p = 2; p < row.length(); p++) {
            int foot = feet.get(p - 2);
            boolean shared = feet.indexOf(foot) != feet.lastIndexOf(foot);
            if (row.charAt(p - 1) == 'l' && (foot < 0 || shared)) {
                across.add(new SideStitch(side, new SidePlace(above, p)));
            }
        }
        return across;
    }

    private static FitPlan plan(Chart chart, FitQuestion question) {
        return (FitPlan) Fit.answer(chart, question);
    }
}
