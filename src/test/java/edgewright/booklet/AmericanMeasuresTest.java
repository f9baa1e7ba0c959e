package edgewright.booklet;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.booklet.choice.BookletOptions;
import edgewright.booklet.choice.BookletPart;
import edgewright.booklet.choice.BookletParts;
import edgewright.booklet.choice.Edition;
import edgewright.booklet.choice.PrintedTerms;
import edgewright.booklet.choice.Progress;
import edgewright.booklet.page.ColumnSlice;
import edgewright.booklet.page.ColumnSlice.Piece;
import edgewright.booklet.page.PageItem;
import edgewright.booklet.page.PageLayout;
import edgewright.booklet.page.StructureRole;
import edgewright.booklet.page.Tag;
import edgewright.booklet.page.TextSetter;
import edgewright.booklet.page.TextStyles;
import edgewright.booklet.page.YarnChips;
import edgewright.booklet.press.PrintedFile;
import edgewright.booklet.sheets.MarksReadBackTest;
import edgewright.chart.Chart;
import edgewright.chart.Terms;
import edgewright.check.Checker;
import edgewright.texts.English;
import edgewright.texts.Language;
import edgewright.words.write.WordingOptions;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Makers who work in American terms measure in inches and buy by the yard. Common practice, no source. */
class AmericanMeasuresTest {
    private static final Pattern METRIC = Pattern.compile("\\d\\s(cm|m)\\b");

    /** Heads of columns of lengths. */
    private static final Pattern METRIC_HEAD = Pattern.compile(".*, (cm|m)|Metres.*|Meters.*");

    private static final Pattern AMERICAN_HEAD = Pattern.compile(".*, (in|yd)|Yards.*");

    @ParameterizedTest
    @EnumSource(WordsFormat.class)
    void inchesAndYardsLeadInFilesOfWordsAndNoCentimetreOrMetreStandsAlone(WordsFormat format) throws IOException {
        for (String sample : MarksReadBackTest.samples().toList()) {
            String words = words(sample, Terms.US, format);
            assertThat(words).as(sample).contains(" in (", " yd or ");
            assertThat(alone(words)).as(sample).isEmpty();
            assertThat(alone(words(sample, Terms.UK, format))).as(sample).isNotEmpty();
        }
    }

    @ParameterizedTest
    @MethodSource("edgewright.booklet.sheets.MarksReadBackTest#samples")
    void inchesAndYardsLeadInEveryPartThatIsPrinted(String sample) throws IOException {
        List<ColumnSlice> american = printed(Published.sample(sample), PrintedTerms.US);
        assertThat(alone(text(american))).isEmpty();
        assertThat(heads(american)).isNotEmpty();
        assertThat(ledByNone(heads(american), METRIC_HEAD, AMERICAN_HEAD)).isEmpty();
    }

    @Test
    void centimetresAndMetresLeadInUkTermsAndInBoth() throws IOException {
        Chart chart = Published.sample("reed-bank");
        for (PrintedTerms terms : List.of(PrintedTerms.UK, PrintedTerms.BOTH)) {
            List<ColumnSlice> strips = printed(chart, terms);
            assertThat(alone(text(strips))).isNotEmpty();
            assertThat(heads(strips)).isNotEmpty();
            assertThat(ledByNone(heads(strips), AMERICAN_HEAD, METRIC_HEAD)).isEmpty();
        }
    }

    /** Heads of this kind that no head of the other kind leads; a wide table goes on in another. */
    private static List<String> ledByNone(List<String> heads, Pattern led, Pattern leading) {
        List<String> found = new ArrayList<>();
        int leads = 0;
        for (String head : heads) {
            leads += leading.matcher(head).matches() ? 1 : 0;
            leads -= led.matcher(head).matches() ? 1 : 0;
            if (leads < 0) {
                found.add(head);
                leads = 0;
            }
        }
        return found;
    }

    /** Every part that there is, as it is set. */
    private static List<ColumnSlice> printed(Chart chart, PrintedTerms terms) throws IOException {
        BookletOptions plain = BookletOptions.of(chart, English.LANGUAGE).withDraft(true);
        BookletOptions options =
                plain.with(plain.telling().withTerms(terms)).withParts(BookletParts.of(BookletPart.values()));
        PageLayout sheet = PageLayout.of(options.paper(), Edition.STANDARD);
        try (PrintedFile file = new PrintedFile("en")) {
            TextSetter setter = new TextSetter(
                    sheet,
                    TextStyles.of(file.typefaces(), sheet),
                    new YarnChips(chart, sheet, options.edition()),
                    options.language());
            return new PatternPages(setter, chart, options, Checker.check(chart), Progress.NONE).strips();
        }
    }

    private static String text(List<ColumnSlice> strips) {
        StringBuilder text = new StringBuilder();
        for (ColumnSlice strip : strips) {
            strip.pieces().forEach(piece -> text.append(words(piece)));
        }
        return plain(text.toString());
    }

    /** The heads of columns of lengths, in their order. */
    private static List<String> heads(List<ColumnSlice> strips) {
        Map<Tag, StringBuilder> cells = new LinkedHashMap<>();
        for (ColumnSlice strip : strips) {
            for (Piece piece : strip.pieces()) {
                piece.tag()
                        .filter(tag -> tag.role() == StructureRole.HEADER_CELL)
                        .ifPresent(tag -> cells.computeIfAbsent(tag, cell -> new StringBuilder())
                                .append(words(piece)));
            }
        }
        return cells.values().stream()
                .map(text -> plain(text.toString()))
                .filter(head -> METRIC_HEAD.matcher(head).matches()
                        || AMERICAN_HEAD.matcher(head).matches())
                .toList();
    }

    private static String words(Piece piece) {
        StringBuilder text = new StringBuilder();
        piece.inks().forEach(ink -> {
            if (ink instanceof PageItem.Words words) {
                text.append(words.text()).append(' ');
            }
        });
        return text.toString();
    }

    private static String plain(String text) {
        return text.replace(Language.NO_BREAK, ' ').replaceAll("\\s+", " ").strip();
    }

    /** Measures that no other leads. */
    private static List<String> alone(String words) {
        String left =
                words.replaceAll("in \\([^)]* cm\\)", "").replaceAll("yd (or [\\d,.]+ m\\b|\\([\\d,.]+ m\\))", "");
        return METRIC.matcher(left).results().map(found -> found.group()).toList();
    }

    private static String words(String sample, Terms terms, WordsFormat format) {
        Chart chart = Published.sample(sample);
        WordingOptions options = WordingOptions.of(chart, English.LANGUAGE)
                .withTerms(terms)
                .withTechniques(true)
                .asDraft();
        return plain(format.write(chart, options, English.LANGUAGE).replaceAll("<[^>]*>", " "));
    }
}
