package edgewright.booklet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import edgewright.booklet.ReadBack.Heard;
import edgewright.booklet.choice.BookletOptions;
import edgewright.booklet.choice.BookletParts;
import edgewright.booklet.choice.ChartPaper;
import edgewright.booklet.choice.Edition;
import edgewright.booklet.choice.PrintedTerms;
import edgewright.booklet.choice.PrintingNotice;
import edgewright.chart.Chart;
import edgewright.chart.HookHand;
import edgewright.chart.HookSize;
import edgewright.chart.PatternDetails;
import edgewright.chart.Swatch;
import edgewright.texts.English;
import edgewright.words.write.PatternWriter;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.apache.pdfbox.contentstream.PDFStreamEngine;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSNumber;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationLink;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageDestination;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The editions of a pattern, read back. */
public class EditionsTest {
    static BookletOptions inBothTerms(BookletOptions options) {
        return options.with(options.telling().withTerms(PrintedTerms.BOTH));
    }

    public static BookletOptions on(ChartPaper paper, BookletOptions options) {
        return options.with(options.appearance().withChartPaper(paper));
    }

    private static BookletOptions large(Chart chart) {
        return BookletOptions.of(chart, English.LANGUAGE)
                .withEdition(Edition.LARGE_PRINT)
                .withParts(BookletParts.WITH_WORKBOOK);
    }

    private static String plain(String text) {
        return text.replaceAll("[\\s\\p{Z}]+", " ").strip();
    }

    private static int firstPage(ReadBack read, String heading) {
        return read.heard().stream()
                .filter(heard -> heard.role().equals("H2") && heard.text().equals(heading))
                .mapToInt(Heard::page)
                .findFirst()
                .orElseThrow();
    }

    /**
     * Advice for readers with low vision: 22 to 24 points, no italics, wide margins, and nothing of substance in heads and feet.
     * https://accessiblepatternsindex.com/accessibility-tips and
     * https://snooptiggercrafts.com/2020/09/03/low-vision-pattern-checklist-2/ ; at least 18, better 20 points:
     * https://www.w3.org/WAI/GL/low-vision-a11y-tf/wiki/ACBguidelines
     */
    @Test
    void largePrintKeepsToThePublishedAdvice() throws IOException {
        Chart chart = Published.sample("reed-bank");
        try (ReadBack read = Published.read(chart, large(chart))) {
            Set<String> faces = new TreeSet<>();
            List<String> small = new ArrayList<>();
            List<String> margins = new ArrayList<>();
            int chartFrom = firstPage(read, "Chart");
            int chartTo = firstPage(read, "Stitch counts");
            PageText stripper = new PageText() {
                @Override
                protected void processTextPosition(TextPosition letter) {
                    if (letter.getUnicode().isBlank()) {
                        return;
                    }
                    boolean chartPage = getCurrentPageNo() >= chartFrom && getCurrentPageNo() <= chartTo;
                    faces.add(letter.getFont().getName().replaceAll("^[A-Z]{6}\\+", ""));
                    // As it is printed: the scale of a picture counts too.
                    if (letter.getTextMatrix().getScalingFactorY() < 21.9 && !chartPage) {
                        small.add(getCurrentPageNo() + ": " + letter.getUnicode());
                    }
                    boolean foot = letter.getYDirAdj() > letter.getPageHeight() - 72;
                    if (!chartPage && !foot && letter.getYDirAdj() < 72) {
                        margins.add(getCurrentPageNo() + ": " + letter.getUnicode());
                    }
                    if (!chartPage
                            && (letter.getXDirAdj() < 71.9
                                    || letter.getXDirAdj() + letter.getWidthDirAdj() > letter.getPageWidth() - 71)) {
                        margins.add(getCurrentPageNo() + ": " + letter.getUnicode());
                    }
                    super.processTextPosition(letter);
                }
            };
            String text = stripper.getText(read.document());
            assertThat(faces).containsExactly("AtkinsonHyperlegibleNext-Bold", "AtkinsonHyperlegibleNext-Regular");
            assertThat(small).isEmpty();
            assertThat(margins).isEmpty();
            assertThat(text).contains("page 1 of " + read.document().getNumberOfPages());
            assertThat(firstPage(read, "Rounds")).isLessThan(chartFrom);
            assertThat(read.texts("H2")).contains("About this large print", "Round guide", "Worksheet");
            OffThePage.assertNothing(read.document());
        }
    }

    @Test
    void largePrintLeavesNothingOfTheWordsOut() throws IOException {
        Chart chart = Published.sample("lantern-posts");
        try (ReadBack read = Published.read(chart, large(chart))) {
            String aloud = plain(read.aloud());
            for (int round = 1; round <= chart.rounds().size(); round++) {
                for (String line : PatternWriter.round(
                                chart, round, large(chart).words(false))
                        .steps()) {
                    String[] sentences = plain(line).split("(?<=\\.) ");
                    for (String sentence : sentences) {
                        assertThat(aloud).contains(sentence);
                    }
                }
            }
        }
    }

    /** Every colour that a page fills or draws with. */
    private static final class Colours extends PDFStreamEngine {
        private final Set<List<Float>> used = new java.util.HashSet<>();

        @Override
        protected void processOperator(Operator operator, List<COSBase> operands) throws IOException {
            if (Set.of("rg", "RG", "g", "G", "sc", "SC", "scn", "SCN").contains(operator.getName())) {
                List<Float> colour = new ArrayList<>();
                operands.stream()
                        .filter(COSNumber.class::isInstance)
                        .forEach(number -> colour.add(((COSNumber) number).floatValue()));
                used.add(colour);
            }
            super.processOperator(operator, operands);
        }
    }

    @Test
    void blackAndWhiteKnowsNoOtherColours() throws IOException {
        Chart chart = Published.sample("lantern-posts");
        BookletOptions options = BookletOptions.of(chart, English.LANGUAGE).withEdition(Edition.BLACK_AND_WHITE);
        try (ReadBack read = Published.read(chart, options)) {
            Colours colours = new Colours();
            for (PDPage page : read.document().getPages()) {
                colours.processPage(page);
            }
            assertThat(colours.used).containsExactlyInAnyOrder(List.of(0f, 0f, 0f), List.of(1f, 1f, 1f));
            assertThat(read.aloud()).contains("A hatched square shows the darkest yarn");
        }
    }

    @Test
    void bothTermsStandInOneFileEachInItsLanguage() throws IOException {
        Chart chart = Published.sample("reed-bank");
        BookletOptions options =
                inBothTerms(BookletOptions.of(chart, English.LANGUAGE)).withParts(BookletParts.USUAL);
        try (ReadBack read = Published.read(chart, options)) {
            assertThat(read.texts("H2"))
                    .containsExactly(
                            "What you need",
                            "From the designer",
                            "Notes",
                            "Abbreviations",
                            "Set-up",
                            "UK terms",
                            "Notes, UK terms",
                            "Abbreviations, UK terms",
                            "Set-up, UK terms",
                            "US terms",
                            "Notes, US terms",
                            "Abbreviations, US terms",
                            "Set-up, US terms",
                            "Joining and closing a round",
                            "Chart",
                            "Rounds, UK terms",
                            "Rounds, US terms",
                            "Techniques",
                            "Stitch counts",
                            "Finishing",
                            "How the words were proved");
            String aloud = plain(read.aloud());
            String uk = aloud.substring(
                    aloud.indexOf(" UK terms. In other terms the same abbreviation"),
                    aloud.indexOf(" US terms. In other"));
            int rounds = aloud.indexOf("Rounds, UK terms");
            String us =
                    aloud.substring(aloud.indexOf(" US terms. In other"), aloud.indexOf("One square is one stitch"));
            int usRounds = aloud.indexOf("Rounds, US terms");
            assertThat(uk + aloud.substring(rounds, usRounds))
                    .contains("1 dc blo")
                    .doesNotContain("sc blo");
            String usLater = aloud.substring(usRounds, aloud.indexOf("Techniques", usRounds))
                    + aloud.substring(aloud.indexOf("Stitch counts", usRounds));
            assertThat(us + usLater).contains("1 sc blo").doesNotContain("dc blo", "drop tr");
            assertThat(heardTwice(read)).isEmpty();
            List<String> languages = new ArrayList<>();
            languages(read.document().getDocumentCatalog().getStructureTreeRoot(), languages);
            assertThat(languages).containsExactly("en-GB", "en-US", "en-GB", "en-US");
        }
    }

    /** Paragraphs and entries that stand more than once. */
    private static List<String> heardTwice(ReadBack read) {
        Set<String> once = new TreeSet<>();
        return read.heard().stream()
                // The cover says some of it before.
                .dropWhile(heard -> !heard.role().equals("H2"))
                .filter(heard -> heard.role().matches("P|LBody"))
                .map(heard -> plain(heard.text()))
                // A count stands alone beside many rounds.
                .filter(text -> text.length() > 30 && !once.add(text))
                .toList();
    }

    private static void languages(PDStructureNode node, List<String> languages) {
        for (Object kid : node.getKids()) {
            if (kid instanceof PDStructureElement element) {
                if (element.getLanguage() != null) {
                    languages.add(element.getLanguage());
                }
                languages(element, languages);
            }
        }
    }

    @Test
    void aLeftHandedMakerGoesRoundClockwise() throws IOException {
        Chart chart = Published.sample("tide-steps");
        try (ReadBack read =
                Published.read(chart, BookletOptions.of(chart, English.LANGUAGE).withHand(HookHand.LEFT))) {
            assertThat(plain(read.aloud()))
                    .contains("you travel clockwise, and the chart is mirrored")
                    .contains("top, right, bottom, left")
                    .doesNotContain("top, left, bottom, right");
        }
    }

    @Test
    void theChartIsHeardAsItsRoundsInTheirOrder() throws IOException {
        Chart chart = Published.sample("tide-steps");
        BookletOptions options = BookletOptions.of(chart, English.LANGUAGE);
        try (ReadBack read = Published.read(chart, options)) {
            String heard = read.texts("Figure").stream()
                    .filter(words -> words.startsWith("Chart of one corner"))
                    .map(EditionsTest::plain)
                    .findFirst()
                    .orElseThrow();
            int at = 0;
            for (int round = 1; round <= chart.rounds().size(); round++) {
                for (String line :
                        PatternWriter.round(chart, round, options.words(false)).lines()) {
                    int found = heard.indexOf(plain(line), at);
                    assertThat(found).as(line).isGreaterThan(at);
                    at = found;
                }
            }
        }
    }

    @Test
    void chartAndWordsLeadToEachOther() throws IOException {
        Chart chart = Published.sample("reed-bank");
        try (ReadBack read = Published.read(chart, BookletOptions.of(chart, English.LANGUAGE))) {
            int chartPage = firstPage(read, "Chart");
            int words = firstPage(read, "Rounds");
            assertThat(leadsTo(read, chartPage)).containsExactly(words);
            assertThat(leadsTo(read, words)).containsExactly(chartPage);
        }
    }

    private static List<Integer> leadsTo(ReadBack read, int page) throws IOException {
        List<Integer> pages = new ArrayList<>();
        for (var annotation : read.document().getPage(page - 1).getAnnotations()) {
            PDPageDestination to = (PDPageDestination) ((PDAnnotationLink) annotation).getDestination();
            pages.add(read.document().getPages().indexOf(to.getPage()) + 1);
        }
        return pages;
    }

    @Test
    void onlyTheChartIsOnA3() throws IOException {
        // ISO 216: A3 is 297 by 420 mm; a point is 1/72 inch.
        Chart chart = Published.sample("lantern-posts");
        try (ReadBack read = Published.read(chart, on(ChartPaper.A3, BookletOptions.of(chart, English.LANGUAGE)))) {
            List<Float> longer = new ArrayList<>();
            for (PDPage page : read.document().getPages()) {
                PDRectangle box = page.getMediaBox();
                float longSide = Math.max(box.getWidth(), box.getHeight());
                if (longSide > 850) {
                    longer.add(longSide);
                    assertThat(Math.min(box.getWidth(), box.getHeight())).isCloseTo(841.89f, offset(0.01f));
                }
            }
            assertThat(longer).isNotEmpty().allSatisfy(side -> assertThat(side).isCloseTo(1190.55f, offset(0.01f)));
            assertThat(longer.size()).isLessThan(read.document().getNumberOfPages() / 2);
            OffThePage.assertNothing(read.document());
        }
    }

    @Test
    void theFirstPageBearsWhatThePublisherSaysAndTheClockDoesNot() throws IOException {
        Chart plain = Published.sample("tide-steps");
        Chart chart = plain.withMaking(PatternDetails.NONE
                .withSkill("For makers who have worked in rounds before.")
                .withHook(Optional.of(HookSize.ofMm(4.5)))
                .withSwatch(Optional.of(new Swatch(16, 18.5))));
        BookletOptions options = BookletOptions.of(chart, English.LANGUAGE).with(new PrintingNotice(" 2 ", "May 2026"));
        try (ReadBack read = Published.read(chart, options)) {
            assertThat(plain(read.aloud()))
                    .contains("Skill For makers who have worked in rounds before.")
                    .contains("Version 2")
                    .contains("Date May 2026")
                    .contains("Hook 4.5 mm")
                    .contains("Tension 16 stitches, 18.5 rounds to 10 cm (4 in)");
        }
        Chart unsaid = plain.withMaking(edgewright.chart.PatternDetails.NONE);
        try (ReadBack read = Published.read(unsaid, BookletOptions.of(unsaid, English.LANGUAGE))) {
            assertThat(read.texts("Lbl")).doesNotContain("Version", "Date", "Skill", "Hook", "Tension");
        }
    }

    @ParameterizedTest
    @EnumSource
    void longTitlesAndSixtyFourYarnsBreakNoEdition(Edition edition) throws IOException {
        String title = "The long border of the salt marsh with all its reeds and creeks and lanterns";
        Chart chart = BookletTest.ofSixtyFourYarns().withTitle(title).withDesigner("Saltmarsh".repeat(40));
        BookletOptions options =
                inBothTerms(BookletOptions.of(chart, English.LANGUAGE)).withEdition(edition);
        try (ReadBack read = Published.read(chart, options)) {
            String aloud = plain(read.aloud());
            chart.yarns().forEach(yarn -> assertThat(aloud).contains(yarn.name()));
            OffThePage.assertNothing(read.document());
        }
    }
}
