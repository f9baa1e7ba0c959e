package edgewright.booklet;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.booklet.choice.BookletOptions;
import edgewright.booklet.choice.ChartPaper;
import edgewright.booklet.choice.Edition;
import edgewright.booklet.choice.Paper;
import edgewright.booklet.choice.PrintingNotice;
import edgewright.chart.Back;
import edgewright.chart.Chart;
import edgewright.chart.HookHand;
import edgewright.chart.HookSize;
import edgewright.chart.OwnMatter;
import edgewright.chart.OwnSection;
import edgewright.chart.PatternDetails;
import edgewright.chart.PerSide;
import edgewright.chart.Start;
import edgewright.chart.Swatch;
import edgewright.chart.Terms;
import edgewright.chart.Yarn;
import edgewright.draw.picture.UnprintedText;
import edgewright.texts.English;
import java.io.ByteArrayInputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.FieldSource;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;
import org.verapdf.pdfa.results.ValidationResult;

/**
 * Published patterns against the standards that they claim to keep, as the validator of the veraPDF consortium judges them:
 * PDF/A-2 (ISO 19005-2), levels B and A, and PDF/UA-1 (ISO 14289-1). https://verapdf.org
 */
public class BookletStandardsTest {
    @SuppressWarnings("UnusedVariable") // read by @FieldSource
    private static final List<String> SAMPLES =
            List.of("reed-bank", "mooring-rope", "sluice-gate", "first-try-unfinished");

    /** Enough for stitches of all kinds, and for titles of one round and of several. */
    private static final int ROUNDS = 8;

    /** Level A asks for all that level B asks for, and for tags. */
    public static final List<PDFAFlavour> STANDARDS = List.of(PDFAFlavour.PDFA_2_A, PDFAFlavour.PDFUA_1);

    /** All standards are judged in one walk through the file: the walk takes the time, the judging of what it finds does not. */
    public static void assertKeeps(List<PDFAFlavour> standards, byte[] pattern) throws Exception {
        VeraGreenfieldFoundryProvider.initialise();
        try (PDFAParser parser =
                        Foundries.defaultInstance().createParser(new ByteArrayInputStream(pattern), standards.get(0));
                PDFAValidator validator = Foundries.defaultInstance().createValidator(standards)) {
            List<ValidationResult> results = validator.validateAll(parser);
            assertThat(results.stream().map(ValidationResult::getPDFAFlavour))
                    .containsExactlyInAnyOrderElementsOf(standards);
            for (ValidationResult result : results) {
                List<String> broken = result.getTestAssertions().stream()
                        .filter(assertion -> assertion.getStatus() != TestAssertion.Status.PASSED)
                        .map(assertion -> assertion.getRuleId().getClause() + ": " + assertion.getMessage())
                        .distinct()
                        .toList();
                assertThat(broken).as(result.getPDFAFlavour().toString()).isEmpty();
                assertThat(result.isCompliant())
                        .as(result.getPDFAFlavour().toString())
                        .isTrue();
                assertThat(result.getTotalAssertions())
                        .as(result.getPDFAFlavour().toString())
                        .isPositive();
            }
        }
    }

    /**
     * A chart of which only the first rounds are left. What a standard asks for is kept or broken by every kind of thing on
     * the pages, not by how many of them there are; and the picture on the cover alone takes longer to judge than all the rest.
     * Whole samples are judged here, and with {@code -Dedgewright.exhaustive} in every edition.
     */
    static Chart beginning(Chart chart) {
        return chart.withRounds(
                chart.rounds().subList(0, Math.min(ROUNDS, chart.rounds().size())));
    }

    @ParameterizedTest
    @FieldSource("SAMPLES")
    void aPatternKeepsTheStandardsThatItClaims(String sample) throws Exception {
        Chart chart = Published.sample(sample);
        assertKeeps(
                STANDARDS,
                Published.bytes(
                        chart, BookletOptions.of(chart, English.LANGUAGE).withDraft(true)));
    }

    @Test
    void aPatternKeepsLevelBToo() throws Exception {
        Chart chart = beginning(Published.sample("reed-bank"));
        assertKeeps(
                List.of(PDFAFlavour.PDFA_2_B),
                Published.bytes(
                        chart, BookletOptions.of(chart, English.LANGUAGE).withDraft(true)));
    }

    @Test
    void aPatternOnLetterInUSTermsForOneSizeKeepsThemToo() throws Exception {
        Chart chart = beginning(Published.sample("lantern-posts"));
        assertKeeps(
                STANDARDS,
                Published.bytes(
                        chart,
                        BookletOptions.of(chart, English.LANGUAGE)
                                .withPaper(Paper.LETTER)
                                .withTerms(Terms.US)
                                .withRepeats(PerSide.pairs(3, 2))
                                .withCellMm(7)));
    }

    @Test
    void aPatternWithStartsBackLayerAndSwatchKeepsThemToo() throws Exception {
        Chart chart = beginning(Published.sample("tide-steps"));
        assertKeeps(
                STANDARDS,
                Published.bytes(
                        chart.withMaking(new PatternDetails(
                                Optional.of(Start.DEFAULT),
                                Optional.of(Back.DEFAULT),
                                Optional.of(HookSize.ofMm(5)),
                                Optional.of(new Swatch(16, 18.5)),
                                Optional.empty(),
                                OptionalInt.empty(),
                                "")),
                        BookletOptions.of(chart, English.LANGUAGE)));
    }

    @Test
    void largePrintForTheLeftHandInBothTermsKeepsThemToo() throws Exception {
        Chart chart = beginning(Published.sample("reed-bank"));
        assertKeeps(
                STANDARDS,
                Published.bytes(
                        chart,
                        EditionsTest.inBothTerms(BookletOptions.of(chart, English.LANGUAGE))
                                .withEdition(Edition.LARGE_PRINT)
                                .withHand(HookHand.LEFT)));
    }

    @Test
    void blackAndWhiteAsAPosterKeepsThemToo() throws Exception {
        Chart chart = beginning(Published.sample("mooring-rope"));
        assertKeeps(
                STANDARDS,
                Published.bytes(
                        chart,
                        EditionsTest.on(ChartPaper.POSTER, BookletOptions.of(chart, English.LANGUAGE))
                                .withEdition(Edition.BLACK_AND_WHITE)));
    }

    @Test
    void aPatternWithItsChartOnA3AndAnImprintKeepsThemToo() throws Exception {
        Chart chart = beginning(Published.sample("lantern-posts"));
        assertKeeps(
                STANDARDS,
                Published.bytes(
                        chart,
                        EditionsTest.on(ChartPaper.A3, BookletOptions.of(chart, English.LANGUAGE))
                                .with(new PrintingNotice("2", "May 2026"))));
    }

    @Test
    void aPatternWithoutTitleAndDesignerAndWithMarkupInItsNotesKeepsThemToo() throws Exception {
        Chart chart = beginning(Published.sample("tide-steps"))
                .withTitle("")
                .withDesigner("<Saltmarsh> & \"Studio\" ]]>")
                .withNotes("Work < & > as it stands.");
        assertKeeps(STANDARDS, Published.bytes(chart, BookletOptions.of(chart, English.LANGUAGE)));
    }

    /** The names of things on the coast, as our own words for them: from memory. */
    private static Chart inGreekAndCyrillic() {
        Chart chart = beginning(Published.sample("reed-bank"));
        List<String> names = List.of("Αρμύρα, βαθύ γαλάζιο", "Камыш, светло-жёлтый", "Φύκια", "Ил и песок");
        List<Yarn> yarns = new ArrayList<>();
        for (Yarn yarn : chart.yarns()) {
            yarns.add(new Yarn(
                    yarn.id(),
                    names.get(yarns.size()),
                    yarn.colour(),
                    yarn.ball(),
                    yarn.metresInHand(),
                    yarn.extras()));
        }
        PatternDetails making = chart.making();
        return chart.withTitle("Καλαμιώνας στην παλίρροια – Камышовый берег")
                .withDesigner("Ξένια Ψαρά и Щукина Юлия")
                .withNotes("Πλύνε το δείγμα. Ґудзики й ленты не нужны.")
                .withYarns(yarns)
                .withMaking(new PatternDetails(
                        making.start(),
                        making.back(),
                        making.hook(),
                        making.swatch(),
                        making.use(),
                        making.yarnWeight(),
                        "Με λίγη εξάλλου υπομονή · для терпеливых"));
    }

    @Test
    void lettersThatNoFaceHasAreNamedFromTheDesignersOwnSectionsToo() {
        Chart chart = Published.sample("reed-bank")
                .withOwn(OwnMatter.NONE.withSections(List.of(new OwnSection("Care", "Wash it\n\ncold: 中."))));
        assertThat(Booklet.unprinted(chart, BookletOptions.of(chart, English.LANGUAGE)))
                .containsExactlyElementsOf(
                        UnprintedText.of(UnprintedText.Where.SECTIONS, "中").toList());
    }

    @ParameterizedTest
    @EnumSource
    void aPatternWithNamesInGreekAndCyrillicKeepsThemTooAndComesOutTheSameTwice(Edition edition) throws Exception {
        Chart chart = inGreekAndCyrillic();
        BookletOptions options = BookletOptions.of(chart, English.LANGUAGE).withEdition(edition);
        assertThat(Booklet.unprinted(chart, options)).isEmpty();
        byte[] pattern = Published.bytes(chart, options);
        assertKeeps(STANDARDS, pattern);
        assertThat(Published.fresh(chart, options)).isEqualTo(pattern);
        try (ReadBack read = new ReadBack(pattern)) {
            assertThat(read.aloud())
                    .contains(
                            chart.title(), chart.designer(), chart.notes(), "Αρμύρα, βαθύ γαλάζιο", "Με λίγη εξάλλου");
        }
    }
}
