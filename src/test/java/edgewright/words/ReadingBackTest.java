package edgewright.words;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.Chart;
import org.junit.jupiter.api.Test;

/** What the writer writes the reader reads back, for charts from seeds, all sizes, terms and corners. */
class ReadingBackTest {
    private static final int CASES = 4_000;

    @Test
    void theTreeOfAnyWorkableChartIsReadBackFromItsWords() {
        for (long seed = 0; seed < CASES; seed++) {
            SeededCharts seeded = new SeededCharts(seed);
            Chart chart = seeded.workable();
            Pattern tree = PatternWriter.tree(chart, seeded.options());
            String text = PlainText.of(PatternWriter.write(tree));
            assertThat(PatternReader.read(text)).as("seed %d%n%s", seed, text).isEqualTo(new Reading.Understood(tree));
        }
    }

    @Test
    void theTreeOfAnyChartAtAllIsReadBackFromItsWords() {
        for (long seed = 0; seed < CASES; seed++) {
            SeededCharts seeded = new SeededCharts(seed);
            Pattern tree = PatternWriter.tree(seeded.any(), seeded.options());
            String text = PlainText.of(PatternWriter.write(tree));
            assertThat(PatternReader.read(text)).as("seed %d%n%s", seed, text).isEqualTo(new Reading.Understood(tree));
        }
    }

    @Test
    void textThatIsReadAndWrittenAgainStaysTheSame() {
        for (long seed = 0; seed < CASES; seed++) {
            SeededCharts seeded = new SeededCharts(seed);
            String text = PlainText.of(PatternWriter.write(seeded.workable(), seeded.options()));
            Reading.Understood read = (Reading.Understood) PatternReader.read(text);
            assertThat(PlainText.of(PatternWriter.write(read.pattern())))
                    .as("seed %d", seed)
                    .isEqualTo(text);
        }
    }
}
