package edgewright.fit;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.Chart;
import edgewright.chart.Counting;
import edgewright.chart.PerSide;
import edgewright.chart.Side;
import edgewright.chart.SideShape;
import edgewright.texts.English;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** What a maker reads, in full; the texts below were read by a person. */
class FitSentencesTest {
    private static final Chart CHART = TestCharts.chart(new SideShape(2, 5, 1), 8, 5);
    private static final Chart WIDE = TestCharts.chart(new SideShape(1, 16, 2), 8, 5);

    @Test
    void a_plan_is_told_side_by_side_with_the_way_to_work_it() {
        assertThat(said(CHART, FitQuestion.of(2, PerSide.of(57, 39, 58, 41), Counting.STITCHES)))
                .isEqualTo("""
                        Counted in round 2, stitches only: top 57, left 39, bottom 58, right 41.
                        Top: 57 comes out even, with the repeat 10 times.
                        Left: 39 should be 42, with the repeat 7 times. Add 3: work two into each of stitches 10, 20 and 30.
                        Bottom: 58 should be 57, with the repeat 10 times. Lose 1: work stitches 29 + 30 together.
                        Right: 41 should be 42, with the repeat 7 times. Add 1: work two into stitch 21.
                        Left, in round 3: 1 stitch in the corner chain, (work 9, two in the next) 3 times, work 9; then 1 \
                        stitch in the next corner chain. The side then has 44.
                        Bottom, in round 3: 1 stitch in the corner chain, work 28, the next two together, work 28; then 1 \
                        stitch in the next corner chain. The side then has 59.
                        Right, in round 3: 1 stitch in the corner chain, work 20, two in the next, work 20; then 1 stitch \
                        in the next corner chain. The side then has 44.
                        Top and bottom: the next sizes are 52 and 62.
                        Left and right: the next sizes are 37 and 47.
                        Best for this chart: count in round 2, change in round 3, count again in round 4. These are the \
                        last plain rounds before the first long stitch, in round 5.
                        """);
    }

    @Test
    void a_plan_counted_with_chains_says_so_and_numbers_the_corner_chain_as_the_first_stitch() {
        assertThat(said(CHART, FitQuestion.of(2, PerSide.of(59, 41, 60, 44), Counting.WITH_CHAINS)))
                .isEqualTo("""
                        Counted in round 2, with one corner chain at each end: top 59, left 41, bottom 60, right 44.
                        Top: 59 comes out even, with the repeat 10 times.
                        Left: 41 should be 44, with the repeat 7 times. Add 3: work two into each of stitches 11, 21 and 31.
                        Bottom: 60 should be 59, with the repeat 10 times. Lose 1: work stitches 30 + 31 together.
                        Right: 44 comes out even, with the repeat 7 times.
                        Left, in round 3, from the corner chain to the next corner chain: work 10, two in the next, work 9, \
                        two in the next, work 9, two in the next, work 10. The side then has 46.
                        Bottom, in round 3, from the corner chain to the next corner chain: work 29, the next two together, \
                        work 29. The side then has 61.
                        Top and bottom: the next sizes are 54 and 64.
                        Left and right: the next sizes are 39 and 49.
                        Best for this chart: count in round 2, change in round 3, count again in round 4. These are the \
                        last plain rounds before the first long stitch, in round 5.
                        """);
    }

    @Test
    void a_piece_that_comes_out_even_is_left_alone() {
        FitQuestion question = FitQuestion.of(2, PerSide.of(57, 57, 57, 7), Counting.STITCHES);

        assertThat(said(CHART, question.with(Ties.NONE))).isEqualTo("""
                        Counted in round 2, stitches only: top 57, left 57, bottom 57, right 7.
                        Every side comes out even. Change nothing.
                        Top: 57 comes out even, with the repeat 10 times.
                        Left: 57 comes out even, with the repeat 10 times.
                        Bottom: 57 comes out even, with the repeat 10 times.
                        Right: 7 comes out even, with no repeat.
                        Top and bottom: the next sizes are 52 and 62.
                        Left: the next sizes are 52 and 62.
                        Right: the next size is 12; there is no smaller one.
                        Best for this chart: count in round 2, change in round 3, count again in round 4. These are the \
                        last plain rounds before the first long stitch, in round 5.
                        """);
    }

    @Test
    void a_piece_that_is_too_small_is_told_what_it_lacks() {
        assertThat(said(CHART, FitQuestion.of(2, PerSide.of(59, 6, 59, 5), Counting.WITH_CHAINS)))
                .isEqualTo("""
                        The piece is too small for this border. In round 2 a side must have at least 9, with one corner \
                        chain at each end.
                        Left: 6, which is 3 too few.
                        Right: 5, which is 4 too few.
                        Pick up more stitches in the base round, or choose a border with shorter corners.
                        """);
    }

    @Test
    void corners_that_cannot_be_shorter_are_not_to_be_made_shorter() {
        Chart chart = TestCharts.chart(new SideShape(1, 5, 0), 8, 5);
        PerSide<Integer> counts = PerSide.all(26);

        assertThat(said(chart, FitQuestion.of(2, counts, Counting.STITCHES).wanting(counts)))
                .contains("only with corner sections that together have 1 stitch more.\n");
    }

    @Test
    void counts_that_all_sides_miss_alike_are_refused_with_the_corners_that_would_do() {
        // Round 2 has 3 + 1 + 4 = 8 stitches and whole repeats of 5: 59 and 39 are one more than 58 and 38.
        Chart chart = TestCharts.chart(new SideShape(3, 5, 1), 8, 5);
        PerSide<Integer> counts = PerSide.pairs(59, 39);

        assertThat(said(chart, FitQuestion.of(2, counts, Counting.STITCHES).wanting(counts)))
                .isEqualTo("""
                        Counted in round 2, stitches only: top 59, left 39, bottom 59, right 39.
                        The border cannot come out even in round 2 on the counts that are asked for: top 59, left 39, \
                        bottom 59, right 39.
                        Every side is out by the same number: the design would come out even only \
                        with corner sections that together have 1 stitch more or 4 fewer.
                        Let a few stitches be added or lost.
                        """);
    }

    @Test
    void sides_that_no_corners_bring_together_are_refused_with_the_repeats_that_would_do() {
        assertThat(said(CHART, FitQuestion.of(8, PerSide.pairs(64, 70), Counting.STITCHES)))
                .isEqualTo("""
                        Counted in round 8, stitches only: top 64, left 70, bottom 64, right 70.
                        The border does not come out even, and round 8 is its \
                        last: there is no round left to change the counts in.
                        Left and top differ by 6, which is not a multiple of the repeat of 5: whatever the corners, one of the two \
                        is always out. Only a repeat of 6, 3, 2 or 1 stitches could come out even on all sides of this piece.
                        Pull the border back to its last plain rounds and put the counts right there.
                        """);
    }

    @Test
    void too_many_changes_for_one_round_are_refused() {
        assertThat(said(WIDE, FitQuestion.of(2, PerSide.pairs(11, 39), Counting.STITCHES)))
                .isEqualTo("""
                        Counted in round 2, stitches only: top 11, left 39, bottom 11, right 39.
                        There are too many changes for one round.
                        Top: 4 to lose of 11 stitches, but away from the corners there is room for only 3.
                        Bottom: 4 to lose of 11 stitches, but away from the corners there is room for only 3.
                        Choose another size, or work the base round again with more suitable counts.
                        """);
    }

    @Test
    void a_warning_of_the_edge_stands_at_the_end_with_what_would_help_and_one_of_the_design_at_the_start() {
        String said = said(CHART, FitQuestion.of(3, PerSide.of(54, 35, 64, 34), Counting.STITCHES));

        assertThat(said.lines().skip(said.lines().count() - 1).toList())
                .containsExactly(
                        "Top: 10 changes in 54 stitches are more than one in six. The edge will ruffle. It would "
                                + "help to aim at 59 for top and bottom. It would help to let top and bottom have different "
                                + "counts.");
        assertThat(said.lines().limit(2).toList())
                .containsExactly(
                        "After changes in round 4 these long stitches would drop to where two stitches share a "
                                + "foot or one stands on two: top, round 5, stitches 8, 13, 38 and 43. Change in an "
                                + "earlier round, or choose other places.",
                        "Counted in round 3, stitches only: top 54, left 35, bottom 64, right 34.");
    }

    @Test
    void changes_after_the_design_has_begun_are_said_to_be_too_late_before_all_else() {
        String said = said(CHART, FitQuestion.of(6, PerSide.all(56), Counting.STITCHES));

        assertThat(said.lines().limit(1).toList())
                .containsExactly("Changes in round 7 come too late: the first long stitches are in round"
                        + " 5, and until the counts are right the design does not come out even.");
    }

    @Test
    void the_rounds_are_told_also_where_the_changed_round_or_the_base_round_must_do() {
        SideShape shape = new SideShape(2, 5, 1);
        FitSentences sentences = new FitSentences(English.LANGUAGE);

        assertThat(sentences.of(ChangeRounds.of(TestCharts.chart(shape, 5, 2))))
                .isEqualTo("Have the counts right when the base round is done: no plain round"
                        + " is left in which to change them before the design begins.");
        assertThat(sentences.of(new ChangeRounds(OptionalInt.of(5), OptionalInt.of(0), 1, OptionalInt.empty())))
                .isEqualTo(
                        "Best for this chart: count in the base round, change in round 1, and count that round again."
                                + " These are the last plain rounds before the first long stitch, in round 5.");
        assertThat(sentences.of(ChangeRounds.of(TestCharts.chart(shape, 5, 99))))
                .isEqualTo("Best for this chart: count in round 3, change in round 4, count again in round 5.");
    }

    @Test
    void wanted_counts_below_the_corner_sections_are_refused_with_the_fewest() {
        FitQuestion question =
                FitQuestion.of(2, PerSide.pairs(57, 37), Counting.WITH_CHAINS).wanting(PerSide.pairs(59, 7));

        assertThat(said(CHART, question)).isEqualTo("""
                        Counted in round 2, with one corner chain at each end: top 57, left 37, bottom 57, right 37.
                        Left and right: 7 does not come out even; the smallest count that does is 9.
                        """);
    }

    @Test
    void too_many_to_add_are_refused_with_the_other_size_that_would_do() {
        // The top is 60 stitches shorter than the bottom; the two are tied, and the count that adds most is taken.
        FitQuestion question = FitQuestion.of(2, PerSide.of(52, 42, 112, 42), Counting.STITCHES);

        assertThat(said(CHART, question)).isEqualTo("""
                        Counted in round 2, stitches only: top 52, left 42, bottom 112, right 42.
                        There are too many changes for one round.
                        Top: 60 to add to 52 stitches, but away from the corners there is room for only 48.
                        Choose another size, or work the base round again with more suitable counts. It would help to \
                        let top and bottom have different counts.
                        """);
    }

    @Test
    void one_side_can_be_asked_for_alone_and_changes_side_by_side_leave_nothing_to_work_between() {
        FitPlan plan = (FitPlan) Fit.answer(
                WIDE,
                FitQuestion.of(2, PerSide.of(10, 39, 39, 39), Counting.STITCHES).with(Ties.NONE));
        FitSentences sentences = new FitSentences(English.LANGUAGE);

        assertThat(sentences.way(plan, Side.TOP))
                .isEqualTo("Top, in round 3: 1 stitch in the corner chain, work 2, the next two together,"
                        + " the next two together, the next two together, work 2; then 1 stitch in the next corner chain."
                        + " The side then has 9.");
        assertThat(sentences.sizes(plan, Side.TOP)).isEqualTo("Top: the next size is 23; there is no smaller one.");
    }

    private static String said(Chart chart, FitQuestion question) {
        return String.join("\n", new FitSentences(English.LANGUAGE).of(Fit.answer(chart, question))) + "\n";
    }

    @Test
    void noTextNamesAStitchWhoseNameDependsOnTheTerms() throws IOException {
        assertThat(Files.readString(Path.of("src/main/resources/edgewright/language/en/fit.ftl")))
                .doesNotContainPattern("(?i)\\b(dc|sc|hdc|htr|tr|dtr|blo|flo|ch)\\b");
    }
}
