package edgewright.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** A chart whose sections have the wrong length can be edited like any other. */
class RaggedEditsTest {
    private static final List<Yarn> YARNS =
            List.of(new Yarn("A", "Peat", Colour.parse("#2b2a33")), new Yarn("B", "Chalk", Colour.parse("#f2ead8")));

    @Test
    void a_ragged_round_that_becomes_the_first_is_evened_out_so_that_the_side_keeps_its_shape() {
        Chart chart = chart(round("bb", "bbbb", "b"), round("", "lp", "bbp"), round("bbbb", "bbbb", "bbb"));
        assertThat(Edits.deleteRounds(chart, 1, 1).rounds())
                .containsExactly(round("bb", "lpbb", "b"), round("bbb", "bbbb", "bb"));
        assertThat(Edits.moveRounds(chart, 2, 2, 1).rounds())
                .containsExactly(round("bb", "lpbb", "b"), round("bbb", "bbbb", "bb"), round("bbbb", "bbbb", "bbb"));
    }

    @Test
    void every_edit_of_rounds_and_of_sections_can_be_made_on_a_ragged_chart() {
        Random random = new Random(10);
        for (int i = 0; i < 4_000; i++) {
            Chart chart = random(random);
            SideShape shape = chart.shape(Side.FIRST);
            int last = chart.rounds().size();
            int first = 1 + random.nextInt(last);
            int end = first + random.nextInt(last - first + 1);
            int to = 1 + random.nextInt(last - (end - first));
            if (end - first + 1 < last) {
                assertThat(Edits.deleteRounds(chart, first, end).shape()).isEqualTo(shape);
            }
            assertThat(Edits.moveRounds(chart, first, end, to).shape()).isEqualTo(shape);
            assertThat(Edits.duplicateRounds(chart, first, end).shape()).isEqualTo(shape);
            assertThat(Edits.insertRounds(chart, first, List.of("A", "B")).shape())
                    .isEqualTo(shape);
            assertThat(Edits.changeRepeatWidth(chart, 5).shape().w()).isEqualTo(5);
            assertThat(Edits.changeFromCorner(chart, 3).shape().a()).isEqualTo(3);
            assertThat(Edits.changeToCorner(chart, 3).shape().b()).isEqualTo(3);
            assertThat(Edits.shiftRepeat(chart, 1 - random.nextInt(4)).shape()).isEqualTo(shape);
            assertThat(Edits.reverse(Edits.reverse(chart))).isEqualTo(chart);
            assertThat(Edits.evenOut(chart).raggedSections()).isEmpty();
        }
    }

    private static Chart random(Random random) {
        SideShape shape = new SideShape(random.nextInt(3), 1 + random.nextInt(4), random.nextInt(3));
        List<Round> rounds = new ArrayList<>();
        rounds.add(Edits.blankRound(shape, 1, "A"));
        IntStream.rangeClosed(2, 1 + random.nextInt(5))
                .forEach(r -> rounds.add(round(letters(random), letters(random), letters(random))));
        return chart(rounds.toArray(Round[]::new));
    }

    private static String letters(Random random) {
        return Stitch.LETTERS.repeat(3).substring(0, random.nextInt(12));
    }

    private static Round round(String from, String repeat, String to) {
        return new Round("A", Stitches.of(from), Stitches.of(repeat), Stitches.of(to));
    }

    private static Chart chart(Round... rounds) {
        return new Chart(Heading.of("Reed Bank"), YARNS, List.of(rounds));
    }
}
