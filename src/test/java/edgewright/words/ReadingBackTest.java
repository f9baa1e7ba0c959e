package edgewright.words;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.Chart;
import edgewright.chart.PerSide;
import edgewright.chart.Side;
import edgewright.texts.Language;
import edgewright.texts.Languages;
import edgewright.words.page.MarkdownText;
import edgewright.words.page.PatternText;
import edgewright.words.page.PlainText;
import edgewright.words.page.TermsVersion;
import edgewright.words.read.PatternReader;
import edgewright.words.read.ReadingResult;
import edgewright.words.tree.Instructions;
import edgewright.words.tree.SideInstructions;
import edgewright.words.tree.WrittenRound;
import edgewright.words.write.PatternWriter;
import edgewright.words.write.RoundsLayout;
import edgewright.words.write.WordingOptions;
import java.util.ArrayList;
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
            Instructions tree = PatternWriter.tree(chart, options(seeded, seed));
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
            Instructions tree = PatternWriter.tree(seeded.any(), options(seeded, seed));
            String text = PlainText.of(PatternWriter.write(tree, language));
            assertThat(PatternReader.read(text, language))
                    .as("seed %d%n%s", seed, text)
                    .isEqualTo(new ReadingResult.Understood(tree));
        }
    }

    @Test
    void theTreeOfAnyChartIsReadBackFromATableOfPlainText() {
        for (long seed = 0; seed < CASES; seed++) {
            Instructions tree = tree(seed, RoundsLayout.TABLE);
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
            Language language = Languages.of(seed);
            RoundsLayout layout = RoundsLayout.values()[(int) (seed / 3 % 2)];
            Instructions tree = tree(seed, layout);
            PatternText words = PatternWriter.write(tree, language, layout);
            String text = MarkdownText.of(List.of(new TermsVersion(language, tree.terms(), words)));
            assertThat(PatternReader.read(text, language))
                    .as("seed %d%n%s", seed, text)
                    .isEqualTo(new ReadingResult.Understood(tree));
        }
    }

    @Test
    void roundsThatAreWorkedAlikeAreReadBackAsSuch() {
        int together = 0;
        int referred = 0;
        int started = 0;
        for (long seed = 0; seed < CASES; seed++) {
            Language language = Languages.of(seed);
            SeededCharts seeded = new SeededCharts(seed);
            Chart chart = SeededCharts.withAlikeRounds(seeded.any(), seed);
            WordingOptions options = seeded.options().withLanguage(language);
            Instructions tree = PatternWriter.tree(chart, options);
            String text = PlainText.of(PatternWriter.write(tree, language));
            assertThat(PatternReader.read(text, language))
                    .as("seed %d%n%s", seed, text)
                    .isEqualTo(new ReadingResult.Understood(tree));
            assertThat(tree.withEachRoundInFull()).isEqualTo(PatternWriter.tree(chart, options.withEachRound(true)));
            for (WrittenRound round : tree.rounds()) {
                if (round instanceof WrittenRound.AsRound again) {
                    boolean next = tree.rounds().subList(again.as().number(), again.number()).stream()
                            .allMatch(WrittenRound.AsRound.class::isInstance);
                    together += next ? 1 : 0;
                    referred += next ? 0 : 1;
                    started += again.start().isPresent() ? 1 : 0;
                }
            }
        }
        assertThat(together).isGreaterThan(1_000);
        assertThat(referred).isGreaterThan(30);
        assertThat(started).isGreaterThan(100);
    }

    @Test
    void roundsWhoseSidesAreToldApartAreReadBack() {
        for (long seed = 0; seed < CASES; seed++) {
            Language language = Languages.of(seed);
            RoundsLayout layout = RoundsLayout.values()[(int) (seed / 3 % 2)];
            Instructions tree = apart(tree(seed, RoundsLayout.TABLE));
            String text = PlainText.of(PatternWriter.write(tree, language, layout));
            assertThat(PatternReader.read(text, language))
                    .as("seed %d%n%s", seed, text)
                    .isEqualTo(new ReadingResult.Understood(tree));
        }
    }

    /** The rounds that begin at a corner, with other words along the left: those of the round before. */
    private static Instructions apart(Instructions tree) {
        List<WrittenRound> rounds = new ArrayList<>();
        for (WrittenRound round : tree.rounds()) {
            SideInstructions left =
                    tree.rounds().get(Math.max(0, round.number() - 2)).stretch();
            rounds.add(
                    round instanceof WrittenRound.AtCorner here
                            ? new WrittenRound.EachSide(
                                    here.number(),
                                    here.yarn(),
                                    here.side(),
                                    PerSide.all(here.stretch()).with(Side.LEFT, left),
                                    here.cornerChains())
                            : round);
        }
        return tree.withRounds(rounds);
    }

    /** Workable and unworkable in turn. */
    private static Instructions tree(long seed, RoundsLayout layout) {
        SeededCharts seeded = new SeededCharts(seed);
        Chart chart = seed % 4 < 2 ? seeded.workable() : seeded.any();
        return PatternWriter.tree(chart, options(seeded, seed).withLayout(layout));
    }

    /** Options for a chart of this seed, in one language after the other; every third pattern tells each round by itself. */
    private static WordingOptions options(SeededCharts seeded, long seed) {
        return seeded.options().withLanguage(Languages.of(seed)).withEachRound(seed % 3 == 0);
    }

    @Test
    void textThatIsReadAndWrittenAgainStaysTheSame() {
        for (long seed = 0; seed < CASES; seed++) {
            Language language = Languages.of(seed);
            SeededCharts seeded = new SeededCharts(seed);
            Chart chart = seeded.workable();
            WordingOptions options = options(seeded, seed);
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
