package edgewright.words.terms;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.Chart;
import edgewright.chart.Stitch;
import edgewright.chart.Terms;
import edgewright.texts.English;
import edgewright.words.SeededCharts;
import edgewright.words.TestCharts;
import edgewright.words.page.PatternPart;
import edgewright.words.page.PlainText;
import edgewright.words.page.TextBlock;
import edgewright.words.write.PatternWriter;
import edgewright.words.write.WordingOptions;
import java.util.Comparator;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The names of the stitches against published tables of UK and US terms. */
class TradeTermsTest {
    /**
     * UK to US. https://cdn.shopify.com/s/files/1/1218/2756/files/Crochet_hook_yarn_and_stitch_conversions_metres_PDF_2.pdf
     * and https://cdn.shopify.com/s/files/1/0659/6837/3974/files/Crochet_Terms_Translation_Chart.pdf (stitches); tension and
     * miss from memory.
     */
    private static final Map<String, String> UK_TO_US = Map.of(
            "dc", "sc",
            "tr", "dc",
            "double crochet", "single crochet",
            "treble", "double crochet",
            "tension", "gauge",
            "miss", "skip",
            "missed", "skipped",
            "UK", "US");

    /** Everyday words where US terms are used: from memory. */
    private static final Map<String, String> SPELLED = Map.of(
            "anticlockwise", "counterclockwise",
            "greys", "grays",
            "brackets", "parentheses",
            "ball band", "yarn label",
            "towards", "toward");

    /** Words that belong to one of the two only, by the same tables. */
    private static final Pattern ONLY_US = Pattern.compile("\\b(sc|single|gauge|skip\\w*|US)\\b");

    private static final Pattern ONLY_UK = Pattern.compile("\\b(tr|treble|tension|miss\\w*|UK)\\b");

    /**
     * dc and sc, tr and dc, ch: the tables above. That the long stitch is called 'drop tr' in UK terms, and that 'blo' follows the
     * stitch: common practice, no source.
     */
    @ParameterizedTest
    @CsvSource({"PLAIN, dc, sc", "BACK_LOOP, dc blo, sc blo", "LONG, drop tr, drop dc", "CHAIN, ch, ch"})
    void everyStitchHasItsNameInBothTerms(Stitch stitch, String uk, String us) {
        assertThat(TradeTerms.of(English.LANGUAGE, Terms.UK).abbreviation(stitch))
                .isEqualTo(uk);
        assertThat(TradeTerms.of(English.LANGUAGE, Terms.US).abbreviation(stitch))
                .isEqualTo(us);
    }

    @Test
    void aWholePatternTranslatedByThePublishedTableIsThePatternInTheOtherTerms() {
        for (long seed = 0; seed < 300; seed++) {
            Chart chart = new SeededCharts(seed).any();
            WordingOptions uk = WordingOptions.of(chart, English.LANGUAGE).withTerms(Terms.UK);
            assertThat(words(chart, uk.withTerms(Terms.US))).isEqualTo(translated(words(chart, uk)));
        }
    }

    @Test
    void noPatternMixesTheTerms() {
        for (long seed = 0; seed < 300; seed++) {
            Chart chart = new SeededCharts(seed).any().withTitle("").withDesigner("");
            WordingOptions uk = WordingOptions.of(chart, English.LANGUAGE).withTerms(Terms.UK);
            assertThat(words(chart, uk)).doesNotContainPattern(ONLY_US);
            assertThat(words(chart, uk.withTerms(Terms.US))).doesNotContainPattern(ONLY_UK);
        }
    }

    @Test
    void theTermsStandAtTheHeadOfEveryPattern() {
        for (Terms terms : Terms.values()) {
            Chart chart = TestCharts.TIDE_LADDER;
            PatternPart second = PatternWriter.write(
                            chart, WordingOptions.of(chart, English.LANGUAGE).withTerms(terms))
                    .parts()
                    .get(1);
            assertThat(second.kind()).isEqualTo(PatternPart.Kind.TERMS);
            assertThat(((TextBlock.Prose) second.blocks().get(0)).text()).startsWith(terms + " terms.");
        }
    }

    /**
     * All the words of a pattern with single blanks between them, however the lines were broken, but for what a yarn or a hook is
     * called here and there, and for which of two measures comes first.
     */
    private static String words(Chart chart, WordingOptions options) {
        return PlainText.of(PatternWriter.write(chart, options))
                .replaceAll("\\s+", " ")
                .replaceAll("\\((US|UK)[^)]*\\)", "")
                .replaceAll("([\\d,]+) yd or ([\\d,]+) m\\b", "$2 m or $1 yd")
                .replaceAll("(\\S+) yd \\((\\S+) m\\)", "$2 m ($1 yd)")
                .replaceAll("((\\S+ by )?\\S+) in \\(([^)]+) cm\\)", "$3 cm ($1 in)");
    }

    private static String translated(String words) {
        return replaced(replaced(words, UK_TO_US), SPELLED);
    }

    private static String replaced(String words, Map<String, String> by) {
        String keys = by.keySet().stream()
                .sorted(Comparator.comparingInt(String::length).reversed())
                .collect(Collectors.joining("|"));
        return Pattern.compile("\\b(" + keys + ")\\b").matcher(words).replaceAll(found -> by.get(found.group()));
    }
}
