package edgewright.booklet.parts;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.booklet.Published;
import edgewright.chart.Chart;
import edgewright.chart.Counting;
import edgewright.texts.English;
import java.util.List;
import org.junit.jupiter.api.Test;

class CountsPagesTest {
    /** One stitch before the repeat, two after it, eight in the repeat: a side of the base round counts 3 and a multiple of 8. */
    private static final Chart TIDE_STEPS = Published.sample("tide-steps");

    /**
     * By hand: the counts of such a side that come nearest to 40, 60, 80, 120, 160 and 200 stitches are 43, 59, 83, 123, 163 and
     * 203; the words give 5 and 8 repeats as their examples, so 67 stands for 59.
     */
    @Test
    void the_sides_of_the_table_go_from_a_cushion_to_a_bed_and_take_in_the_examples_of_the_words() {
        assertThat(counts(Counting.STITCHES, 0)).containsExactly("43", "67", "83", "123", "163", "203");
        assertThat(counts(Counting.WITH_CHAINS, 0)).containsExactly("45", "69", "85", "125", "165", "205");
        assertThat(counts(Counting.STITCHES, 17)).containsExactly("77", "101", "117", "157", "197", "237");
    }

    private static List<String> counts(Counting counting, int round) {
        return CountsPages.repeats(TIDE_STEPS).stream()
                .map(m -> CountsPages.example(TIDE_STEPS, counting, English.LANGUAGE, round, m))
                .toList();
    }
}
