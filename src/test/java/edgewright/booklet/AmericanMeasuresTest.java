package edgewright.booklet;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.Chart;
import edgewright.chart.Terms;
import edgewright.texts.English;
import edgewright.texts.Language;
import edgewright.words.page.PlainText;
import edgewright.words.write.PatternWriter;
import edgewright.words.write.WordingOptions;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Makers who work in American terms measure in inches and buy by the yard. Common practice, no source. */
class AmericanMeasuresTest {
    private static final Pattern METRIC = Pattern.compile("\\d\\s(cm|m)\\b");

    @ParameterizedTest
    @MethodSource("edgewright.booklet.sheets.MarksReadBackTest#samples")
    void inchesAndYardsLeadAndNoCentimetreOrMetreStandsAlone(String sample) {
        String words = words(sample, Terms.US);
        assertThat(words).contains(" in (", " yd or ");
        assertThat(alone(words)).isEmpty();
        assertThat(alone(words(sample, Terms.UK))).isNotEmpty();
    }

    /** Measures that no other leads. */
    private static List<String> alone(String words) {
        String left = words.replaceAll("in \\([^)]* cm\\)", "").replaceAll("yd or [\\d,]+ m\\b", "");
        return METRIC.matcher(left).results().map(found -> found.group()).toList();
    }

    private static String words(String sample, Terms terms) {
        Chart chart = Published.sample(sample);
        WordingOptions options = WordingOptions.of(chart, English.LANGUAGE)
                .withTerms(terms)
                .withTechniques(true)
                .asDraft();
        return PlainText.of(PatternWriter.write(chart, options))
                .replace(Language.NO_BREAK, ' ')
                .replaceAll("\\s+", " ");
    }
}
