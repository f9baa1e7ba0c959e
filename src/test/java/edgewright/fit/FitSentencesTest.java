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
    private static final Chart CHART = TestCharts.chart(new SideShape(1, 4, 2), 8, 5);
    private static final Chart WIDE = TestCharts.chart(new SideShape(1, 16, 2), 8, 5);

    @Test
    void a_plan_is_told_side_by_side_with_the_way_to_work_it() {
        assertThat(said(CHART, FitQuestion.of(2, PerSide.of(47, 36, 48, 38), Counting.STITCHES)))
                .isEqualTo("""
                        Counted in round 2, stitches only: top 47, left 36, bottom 48, right 38.
                        Top: 47 comes out even, with the repeat 10 times.
                        Left: 36 should be 39, with the repeat 8 times. Add 3: work two into each of stitches 9, 18 and 27.
                        Bottom: 48 should be 47, with the repeat 10 times. Lose 1: work stitches 24 + 25 together.
                        Right: 38 should be 39, with the repeat 8 times. Add 1: work two into stitch 19.
                        Left, in round 3: 1 stitch in the corner chain, (work 8, two in the next) 3 times, work 9; then 1 \
                        stitch in the next corner chain. The side then has 41.
                        Bottom, in round 3: 1 stitch in the corner chain, work 23, the next two together, work 23; then 1 \
                        stitch in the next corner chain. The side then has 49.
                        Right, in round 3: 1 stitch in the corner chain, work 18, two in the next, work 19; then 1 stitch \
                        in the next corner chain. The side then has 41.
                        Top and bottom: the next sizes are 43 and 51.
                        Left and right: the next sizes are 35 and 43.
                        Best for this chart: count in round 2, change in round 3, count again in round 4. These are the \
                        last plain rounds before the first long stitch, in round 5.
                        """);
    }

    @Test
    void a_plan_counted_with_chains_says_so_and_numbers_the_corner_chain_as_the_first_stitch() {
        assertThat(said(CHART, FitQuestion.of(2, PerSide.of(49, 38, 50, 41), Counting.WITH_CHAINS)))
                .isEqualTo("""
                        Counted in round 2, with one corner chain at each end: top 49, left 38, bottom 50, right 41.
                        Top: 49 comes out even, with the repeat 10 times.
                        Left: 38 should be 41, with the repeat 8 times. Add 3: work two into each of stitches 10, 19 and 28.
                        Bottom: 50 should be 49, with the repeat 10 times. Lose 1: work stitches 25 + 26 together.
                        Right: 41 comes out even, with the repeat 8 times.
                        Left, in round 3, from the corner chain to the next corner chain: work 9, two in the next, work 8, \
                        two in the next, work 8, two in the next, work 10. The side then has 43.
                        Bottom, in round 3, from the corner chain to the next corner chain: work 24, the next two together, \
                        work 24. The side then has 51.
                        Top and bottom: the next sizes are 45 and 53.
                        Left and right: the next sizes are 37 and 45.
                        Best for this chart: count in round 2, change in round 3, count again in round 4. These are the \
                        last plain rounds before the first long stitch, in round 5.
                        """);
    }

    @Test
    void a_piece_that_comes_out_even_is_left_alone() {
        FitQuestion question = FitQuestion.of(2, PerSide.of(47, 47, 47, 7), Counting.STITCHES);

        assertThat(said(CHART, question.with(Ties.NONE))).isEqualTo("""
                        Counted in round 2, stitches only: top 47, left 47, bottom 47, right 7.
                        Every side comes out even. Change nothing.
                        Top: 47 comes out even, with the repeat 10 times.
                        Left: 47 comes out even, with the repeat 10 times.
                        Bottom: 47 comes out even, with the repeat 10 times.
                        Right: 7 comes out even, with no repeat.
                        Top and bottom: the next sizes are 43 and 51.
                        Left: the next sizes are 43 and 51.
                        Right: the next size is 11; there is no smaller one.
                        Best for this chart: count in round 2, change in round 3, count again in round 4. These are the \
                        last plain rounds before the first long stitch, in round 5.
                        """);
    }

    @Test
    void a_piece_that_is_too_small_is_told_what_it_lacks() {
        assertThat(said(CHART, FitQuestion.of(2, PerSide.of(47, 6, 47, 5), Counting.WITH_CHAINS)))
                .isEqualTo("""
                        The piece is too small for this border. In round 2 a side must have at least 9, with one corner \
                        chain at each end.
                        Left: 6, which is 3 too few.
                        Right: 5, which is 4 too few.
                        Pick up more stitches in the base round, or choose a border with shorter corners.
                        """);
    }

    @Test
    void counts_that_all_sides_miss_alike_are_refused_with_the_corners_that_would_do() {
        PerSide<Integer> counts = PerSide.of(48, 36, 48, 36);

        assertThat(said(CHART, FitQuestion.of(2, counts, Counting.STITCHES).wanting(counts)))
                .isEqualTo("""
                        Counted in round 2, stitches only: top 48, left 36, bottom 48, right 36.
                        The border cannot come out even in round 2 on the counts that are asked for: top 48, left 36, \
                        bottom 48, right 36.
                        Every side is out by the same number: the design would come out even only \
                        with corner sections that together have 1 stitch more or 3 fewer.
                        Let a few stitches be added or lost.
                        """);
    }

    @Test
    void sides_that_no_corners_bring_together_are_refused_with_the_repeats_that_would_do() {
        assertThat(said(CHART, FitQuestion.of(8, PerSide.of(59, 65, 59, 65), Counting.STITCHES)))
                .isEqualTo("""
                        Counted in round 8, stitches only: top 59, left 65, bottom 59, right 65.
                        The border does not come out even, and round 8 is its \
                        last: there is no round left to change the counts in.
                        Left and top differ by 6, which is not a multiple of the repeat of 4: whatever the corners, one of the two \
                        is always out. Only a repeat of 6, 3, 2 or 1 stitches could come out even on all sides of this piece.
                        Pull the border back to its last plain rounds and put the counts right there.
                        """);
    }

    @Test
    void too_many_changes_for_one_round_are_refused() {
        assertThat(said(WIDE, FitQuestion.of(2, PerSide.of(11, 39, 11, 39), Counting.STITCHES)))
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
        String said = said(CHART, FitQuestion.of(3, PerSide.of(45, 35, 57, 33), Counting.STITCHES));

        assertThat(said.lines().skip(said.lines().count() - 1).toList())
                .containsExactly(
                        "Top: 12 changes in 45 stitches are more than one in six. The edge will ruffle. It would "
                                + "help to aim at 49 for top and bottom. It would help to let top and bottom have different "
                                + "counts.");
        assertThat(said.lines().limit(2).toList())
                .containsExactly(
                        "After changes in round 4 these long stitches would drop to where two stitches share a "
                                + "foot or one stands on two: top, round 5, stitches 11, 15, 19, 23, 47 and 51. Change in an "
                                + "earlier round, or choose other places.",
                        "Counted in round 3, stitches only: top 45, left 35, bottom 57, right 33.");
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
        SideShape shape = new SideShape(1, 4, 2);
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
        FitQuestion question = FitQuestion.of(2, PerSide.of(47, 35, 47, 35), Counting.WITH_CHAINS)
                .wanting(PerSide.of(49, 7, 49, 7));

        assertThat(said(CHART, question)).isEqualTo("""
                        Counted in round 2, with one corner chain at each end: top 47, left 35, bottom 47, right 35.
                        Left and right: 7 does not come out even; the smallest count that does is 9.
                        """);
    }

    @Test
    void too_many_to_add_are_refused_with_the_other_size_that_would_do() {
        // The top is 60 stitches shorter than the bottom; the two are tied, and the count that adds most is taken.
        FitQuestion question = FitQuestion.of(2, PerSide.of(51, 39, 111, 39), Counting.STITCHES);

        assertThat(said(CHART, question)).isEqualTo("""
                        Counted in round 2, stitches only: top 51, left 39, bottom 111, right 39.
                        There are too many changes for one round.
                        Top: 60 to add to 51 stitches, but away from the corners there is room for only 47.
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
