package edgewright.words;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.Chart;
import edgewright.texts.Language;
import edgewright.texts.Languages;
import edgewright.words.page.MarkdownText;
import edgewright.words.page.PatternText;
import edgewright.words.page.PlainText;
import edgewright.words.page.TermsVersion;
import edgewright.words.read.PatternReader;
import edgewright.words.read.ReadingResult;
import edgewright.words.tree.Instructions;
import edgewright.words.write.PatternWriter;
import edgewright.words.write.RoundsLayout;
import edgewright.words.write.WordingOptions;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What the writer writes the reader reads back, for charts from seeds, all sizes, terms, languages and corners. */
class ReadingBackTest {
    private static final int CASES = 4_000;

    @Test
    void theTreeOfAnyWorkableChartIsReadBackFromItsWords() {
        for (long seed = 0; seed < CASES; seed++) {
            Language language = Languages.of(seed);
            SeededCharts seeded = new SeededCharts(seed);
            Chart chart = seeded.workable();
            Instructions tree = PatternWriter.tree(chart, seeded.options().withLanguage(language));
            String text = PlainText.of(PatternWriter.write(tree, language));
            assertThat(PatternReader.read(text, language))
                    .as("seed %d%n%s", seed, text)
                    .isEqualTo(new ReadingResult.Understood(tree));
        }
    }

    @Test
    void theTreeOfAnyChartAtAllIsReadBackFromItsWords() {
        for (long seed = 0; seed < CASES; seed++) {
            Language language = Languages.of(seed);
            SeededCharts seeded = new SeededCharts(seed);
            Instructions tree =
                    PatternWriter.tree(seeded.any(), seeded.options().withLanguage(language));
            String text = PlainText.of(PatternWriter.write(tree, language));
            assertThat(PatternReader.read(text, language))
                    .as("seed %d%n%s", seed, text)
                    .isEqualTo(new ReadingResult.Understood(tree));
        }
    }

    @Test
    void theTreeOfAnyChartIsReadBackFromATableOfPlainText() {
        for (long seed = 0; seed < CASES; seed++) {
            Instructions tree = tree(seed);
            Language language = Languages.of(seed);
            String text = PlainText.of(PatternWriter.write(tree, language, RoundsLayout.TABLE));
            assertThat(PatternReader.read(text, language))
                    .as("seed %d%n%s", seed, text)
                    .isEqualTo(new ReadingResult.Understood(tree));
        }
    }

    @Test
    void theTreeOfAnyChartIsReadBackFromMarkdownInEitherLayout() {
        for (long seed = 0; seed < CASES; seed++) {
            Instructions tree = tree(seed);
            Language language = Languages.of(seed);
            RoundsLayout layout = RoundsLayout.values()[(int) (seed / 3 % 2)];
            PatternText words = PatternWriter.write(tree, language, layout);
            String text = MarkdownText.of(List.of(new TermsVersion(language, tree.terms(), words)));
            assertThat(PatternReader.read(text, language))
                    .as("seed %d%n%s", seed, text)
                    .isEqualTo(new ReadingResult.Understood(tree));
        }
    }

    /** Workable and unworkable in turn. */
    private static Instructions tree(long seed) {
        SeededCharts seeded = new SeededCharts(seed);
        Chart chart = seed % 4 < 2 ? seeded.workable() : seeded.any();
        return PatternWriter.tree(chart, seeded.options().withLanguage(Languages.of(seed)));
    }

    @Test
    void textThatIsReadAndWrittenAgainStaysTheSame() {
        for (long seed = 0; seed < CASES; seed++) {
            Language language = Languages.of(seed);
            SeededCharts seeded = new SeededCharts(seed);
            Chart chart = seeded.workable();
            WordingOptions options = seeded.options().withLanguage(language);
            Instructions tree = PatternWriter.tree(chart, options);
            // Hook, tension and width are the chart's and not the tree's; whoever reads the words passes them over.
            ReadingResult.Understood read = (ReadingResult.Understood)
                    PatternReader.read(PlainText.of(PatternWriter.write(chart, options)), language);
            assertThat(read.pattern()).as("seed %d", seed).isEqualTo(tree);
            assertThat(PlainText.of(PatternWriter.write(read.pattern(), language)))
                    .as("seed %d", seed)
                    .isEqualTo(PlainText.of(PatternWriter.write(tree, language)));
        }
    }
}
