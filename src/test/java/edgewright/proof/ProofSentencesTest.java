package edgewright.proof;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.proof.Difference.Kind;
import edgewright.words.read.ReadingProblem;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class ProofSentencesTest {
    @Test
    void a_difference_says_where_it_is_and_both_sides_of_it() {
        assertThat(ProofSentences.of(new Difference(Kind.STITCH, 7, 2, 13, "l", "b")))
                .isEqualTo(
                        "Round 7, bottom side, stitch 13: the chart has a long stitch, but a back-loop stitch was made.");
        assertThat(ProofSentences.of(new Difference(Kind.COUNT, 7, 2, 0, "41", "40")))
                .isEqualTo("Round 7, bottom side: the chart has 41 stitches, but 40 were made.");
        assertThat(ProofSentences.of(new Difference(Kind.YARN, 7, 0, 0, "Peat", "Chalk")))
                .isEqualTo("Round 7: the chart has it in Peat, but it was worked in Chalk.");
        assertThat(ProofSentences.of(new Difference(Kind.ROUNDS, 1, 0, 0, "3", "1")))
                .isEqualTo("The chart has 3 rounds, but 1 round came off the hook.");
    }

    @Test
    void a_long_list_of_differences_is_cut_short_and_says_so() {
        List<Difference> many = IntStream.rangeClosed(1, 20)
                .mapToObj(p -> new Difference(Kind.STITCH, 3, 0, p, "l", "b"))
                .toList();
        assertThat(ProofSentences.of(new ProofResult.Differs(null, many)))
                .hasSize(13)
                .endsWith("And 8 more differences.");
    }

    @Test
    void another_yarn_showing_because_of_another_stitch_is_not_told_twice() {
        List<Difference> differences =
                List.of(new Difference(Kind.SHOWN, 2, 0, 4, "3", "2"), new Difference(Kind.STITCH, 3, 0, 5, "l", "b"));
        assertThat(ProofSentences.of(new ProofResult.Differs(null, differences)))
                .singleElement()
                .asString()
                .startsWith("Round 3");
        assertThat(ProofSentences.of(new ProofResult.Differs(null, differences.subList(0, 1))))
                .containsExactly(
                        "Round 2, top side, stitch 4: the yarn of round 3 should show, but that of round 2 does.");
    }

    @Test
    void words_that_were_not_understood_are_told_with_line_and_column() {
        assertThat(ProofSentences.of(new ProofResult.Unread(List.of(new ReadingProblem(12, 7, "frobs", "a stitch")))))
                .singleElement()
                .asString()
                .contains("line 12", "column 7", "frobs", "a stitch");
    }

    @Test
    void no_text_is_left_over() {
        Set<String> used = new TreeSet<>(Set.of("difference.more"));
        for (Kind kind : Kind.values()) {
            used.add("difference." + kind);
        }
        assertThat(new TreeSet<>(ResourceBundle.getBundle("edgewright.proof.proof", Locale.ROOT)
                        .keySet()))
                .isEqualTo(used);
    }
}
