package edgewright.proof;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.Side;
import edgewright.chart.Stitch;
import edgewright.texts.English;
import edgewright.words.read.ReadingProblem;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class ProofSentencesTest {
    private static final ProofSentences SAYS = new ProofSentences(English.LANGUAGE);

    @Test
    void a_difference_says_where_it_is_and_both_sides_of_it() {
        assertThat(SAYS.of(stitch(7, Side.BOTTOM, 13)))
                .isEqualTo(
                        "Round 7, bottom edge, stitch 13: the chart has a long stitch, but a back-loop stitch was made.");
        assertThat(SAYS.of(new Difference.Count(7, Side.BOTTOM, 41, 40)))
                .isEqualTo("Round 7, bottom edge: the chart has 41 stitches, but 40 were made.");
        assertThat(SAYS.of(new Difference.OtherYarn(7, "Peat", "Chalk")))
                .isEqualTo("Round 7: the chart has it in Peat, but it was worked in Chalk.");
        assertThat(SAYS.of(new Difference.Rounds(3, 1))).isEqualTo("The chart has 3 rounds, but 1 round was made.");
        assertThat(SAYS.of(new Difference.Count(1201, Side.TOP, 12_010, 1201)))
                .isEqualTo("Round 1201, top edge: the chart has 12,010 stitches, but 1201 were made.");
    }

    @Test
    void a_long_list_of_differences_is_cut_short_and_says_so() {
        List<Difference> many = IntStream.rangeClosed(1, 20)
                .mapToObj(p -> stitch(3, Side.TOP, p))
                .toList();
        assertThat(SAYS.of(new ProofResult.Differs(null, many))).hasSize(13).endsWith("And 8 more differences.");
    }

    @Test
    void another_yarn_showing_because_of_another_stitch_is_not_told_twice() {
        List<Difference> differences =
                List.of(new Difference.OtherShown(new FabricPlace(2, Side.TOP, 4), 3, 2), stitch(3, Side.TOP, 5));
        assertThat(SAYS.of(new ProofResult.Differs(null, differences)))
                .singleElement()
                .asString()
                .startsWith("Round 3");
        assertThat(SAYS.of(new ProofResult.Differs(null, differences.subList(0, 1))))
                .containsExactly(
                        "Round 2, top edge, stitch 4: the yarn of round 3 should show, but that of round 2 does.");
    }

    @Test
    void words_that_were_not_understood_are_told_with_line_and_column() {
        assertThat(SAYS.of(new ProofResult.Unread(List.of(new ReadingProblem(12, 7, "frobs", "a stitch")))))
                .singleElement()
                .asString()
                .contains("line 12", "column 7", "frobs", "a stitch");
    }

    @Test
    void every_difference_has_a_sentence_of_its_own() {
        FabricPlace place = new FabricPlace(3, Side.LEFT, 4);
        List<Difference> all = List.of(
                new Difference.Rounds(3, 1),
                new Difference.OtherYarn(3, "Peat", "Chalk"),
                new Difference.CornerChains(3, 2, 1),
                new Difference.Count(3, Side.LEFT, 9, 8),
                stitch(3, Side.LEFT, 4),
                new Difference.OtherLanding(place, Optional.empty(), Optional.empty()),
                new Difference.OtherShown(place, 3, 2),
                new Difference.BackRounds(3, 1),
                new Difference.BackHeight(3, 2, 1),
                new Difference.BackCornerChains(3, 2, 1),
                new Difference.BackCount(3, Side.LEFT, 9, 8),
                new Difference.Joins(40, 38),
                new Difference.Joins(40, 0));
        assertThat(all.stream().map(Object::getClass).distinct())
                .containsExactlyInAnyOrder(Difference.class.getPermittedSubclasses());
        assertThat(all.stream().map(SAYS::of).distinct())
                .hasSize(all.size())
                .noneMatch(sentence -> sentence.contains("{") || sentence.contains("null"));
    }

    private static Difference stitch(int round, Side side, int stitch) {
        return new Difference.OtherStitch(new FabricPlace(round, side, stitch), Stitch.LONG, Stitch.BACK_LOOP);
    }
}
