package edgewright.booklet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.offset;

import edgewright.booklet.ReadBack.Heard;
import edgewright.booklet.choice.BookletOptions;
import edgewright.booklet.choice.BookletParts;
import edgewright.booklet.choice.Paper;
import edgewright.booklet.choice.Progress;
import edgewright.booklet.parts.CountsPages;
import edgewright.chart.Chart;
import edgewright.chart.Counting;
import edgewright.chart.PerSide;
import edgewright.chart.Side;
import edgewright.chart.SideShape;
import edgewright.chart.Terms;
import edgewright.chart.Yarn;
import edgewright.check.Checker;
import edgewright.check.Finding;
import edgewright.check.FindingSentences;
import edgewright.file.FileProblemException;
import edgewright.proof.SizeProofs;
import edgewright.texts.English;
import edgewright.words.page.PatternPart;
import edgewright.words.page.TextBlock;
import edgewright.words.page.TextBlockPrinter;
import edgewright.words.write.PatternWriter;
import edgewright.words.write.RoundsLayout;
import edgewright.words.write.WordingOptions;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdfparser.PDFStreamParser;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.FieldSource;

/** A published pattern, read back. */
class BookletTest {
    @SuppressWarnings("UnusedVariable") // read by @FieldSource
    private static final List<String> SAMPLES = Published.SAMPLES;

    @TempDir
    private Path folder;

    private static BookletOptions options(Chart chart) {
        return BookletOptions.of(chart, English.LANGUAGE).withDraft(true);
    }

    /** Blanks of any kind are one blank, as they are to whoever listens. */
    private static String plain(String text) {
        return text.replaceAll("[\\s\\p{Z}]+", " ").strip();
    }

    /** The sentences of a part of the written pattern, as they are said one after the other. */
    private static List<String> sentences(PatternPart part) {
        List<String> sentences = new ArrayList<>();
        TextBlockPrinter printer = new TextBlockPrinter() {
            @Override
            public void prose(TextBlock.Prose prose) {
                sentences.add(prose.text());
            }

            @Override
            public void entry(TextBlock.Entry entry) {
                sentences.add(entry.word() + " " + entry.text());
            }

            @Override
            public void round(TextBlock.RoundWords round) {
                sentences.add(round.name());
                sentences.addAll(round.steps());
            }

            @Override
            public void rounds(TextBlock.RoundsTable table) {
                sentences.addAll(table.columns());
                table.rows().forEach(row -> sentences.addAll(row.cells()));
            }

            @Override
            public void counts(TextBlock.CountsTable table) {
                sentences.add(table.caption());
                sentences.addAll(table.columns());
                table.rows().forEach(sentences::addAll);
            }

            @Override
            public void technique(TextBlock.Technique technique) {
                sentences.add(technique.told().title());
                sentences.addAll(technique.told().steps());
            }
        };
        part.blocks().forEach(block -> block.printOn(printer));
        return sentences;
    }

    @ParameterizedTest
    @FieldSource("SAMPLES")
    void allTheWordsAreHeardInTheirOrder(String sample) throws IOException {
        Chart chart = Published.sample(sample);
        heardInTheirOrder(chart, options(chart).withRepeats(PerSide.pairs(5, 4)));
    }

    @ParameterizedTest
    @FieldSource("SAMPLES")
    void theRoundsOfATableAreHeardRowByRow(String sample) throws IOException {
        Chart chart = Published.sample(sample);
        BookletOptions options = options(chart).withRepeats(PerSide.pairs(5, 4));
        heardInTheirOrder(chart, options.with(options.telling().withLayout(RoundsLayout.TABLE)));
    }

    private static void heardInTheirOrder(Chart chart, BookletOptions options) throws IOException {
        boolean draft = Checker.check(chart).hasErrors();
        List<PatternPart> parts = new ArrayList<>(PatternWriter.write(
                        chart,
                        new WordingOptions(
                                        English.LANGUAGE, options.terms(), options.counting(), options.repeats(), draft)
                                .withLayout(options.telling().layout())
                                .withTechniques(true))
                .parts());
        parts.removeIf(part -> part.kind() == PatternPart.Kind.HEADING);
        // On paper the sentence on terms stands over the abbreviations, and the table of counts before what is done at
        // the end.
        parts.sort(Comparator.comparing(part -> switch (part.kind()) {
            case TERMS -> PatternPart.Kind.ABBREVIATIONS;
            case COUNTS -> PatternPart.Kind.TECHNIQUES;
            default -> part.kind();
        }));
        try (ReadBack read = Published.read(chart, options)) {
            String aloud = plain(read.aloud());
            int at = 0;
            for (PatternPart part : parts) {
                for (String sentence : sentences(part)) {
                    int found = aloud.indexOf(plain(sentence), at);
                    assertThat(found)
                            .as("'%s' after '%s'", sentence, part.heading())
                            .isNotNegative();
                    at = found + 1;
                }
            }
        }
    }

    @ParameterizedTest
    @EnumSource(Terms.class)
    void theTermsStandAtTheHeadOfEveryPage(Terms terms) throws IOException {
        Chart chart = Published.sample("reed-bank");
        try (ReadBack read = Published.read(chart, options(chart).withTerms(terms))) {
            for (int page = 1; page <= read.document().getNumberOfPages(); page++) {
                PageText stripper = new PageText();
                stripper.setSortByPosition(true);
                stripper.setStartPage(page);
                stripper.setEndPage(page);
                String text = stripper.getText(read.document());
                assertThat(text.lines().findFirst().orElseThrow()).endsWith(terms + " terms");
                assertThat(text)
                        .contains("page " + page + " of " + read.document().getNumberOfPages());
            }
            assertThat(read.document().getDocumentCatalog().getLanguage())
                    .isEqualTo(terms == Terms.UK ? "en-GB" : "en-US");
        }
    }

    @Test
    void usTermsAreUsedThroughout() throws IOException {
        Chart chart = Published.sample("reed-bank");
        try (ReadBack read = Published.read(chart, options(chart).withTerms(Terms.US))) {
            assertThat(read.aloud())
                    .contains("1 sc blo")
                    .doesNotContain("dc blo")
                    .doesNotContain("drop tr");
        }
    }

    @Test
    void everyFaceIsEmbeddedAndItsWordsCanBeCopied() throws IOException {
        Chart chart = Published.sample("lantern-posts");
        try (ReadBack read = Published.read(chart, options(chart))) {
            Set<String> names = new TreeSet<>();
            for (PDPage page : read.document().getPages()) {
                for (COSName name : page.getResources().getFontNames()) {
                    PDFont font = page.getResources().getFont(name);
                    assertThat(font.isEmbedded()).as(font.getName()).isTrue();
                    assertThat(font.getCOSObject().containsKey(COSName.TO_UNICODE))
                            .as(font.getName())
                            .isTrue();
                    names.add(font.getName().replaceAll("^[A-Z]{6}\\+", ""));
                }
            }
            assertThat(names).containsExactly("AtkinsonHyperlegibleNext-Bold", "AtkinsonHyperlegibleNext-Regular");
        }
    }

    @Test
    void headingsAreNestedAndTheOutlineAndTheContentsNameTheSameParts() throws IOException {
        Chart chart = Published.sample("reed-bank");
        BookletOptions all = options(chart).withParts(BookletParts.WITH_WORKBOOK);
        try (ReadBack read = Published.read(chart, all)) {
            assertThat(read.texts("H1")).containsExactly("Reed Bank");
            List<String> parts = read.texts("H2");
            assertThat(parts)
                    .containsExactly(
                            "Contents",
                            "What you need",
                            "From the designer",
                            "Notes",
                            "Abbreviations",
                            "Set-up",
                            "Joining and closing a round",
                            "Chart",
                            "Rounds",
                            "Techniques",
                            "Stitch counts",
                            "Finishing",
                            "How the words were proved",
                            "Round guide",
                            "Worksheet",
                            "Sizes",
                            "How much yarn");
            List<String> outline = new ArrayList<>();
            for (PDOutlineItem item :
                    read.document().getDocumentCatalog().getDocumentOutline().children()) {
                outline.add(item.getTitle());
            }
            assertThat(outline).isEqualTo(parts);
            List<String> contents = new ArrayList<>();
            for (String part : parts.subList(1, parts.size())) {
                int page = read.heard().stream()
                        .filter(h -> h.role().equals("H2") && h.text().equals(part))
                        .mapToInt(Heard::page)
                        .findFirst()
                        .orElseThrow();
                contents.add(part + " " + page);
            }
            assertThat(read.texts("Link").subList(0, contents.size())).isEqualTo(contents);
            assertThat(read.document().getPage(1).getAnnotations()).hasSameSizeAs(contents);
            assertThat(read.texts("H3")).contains("Rounds 1 to 4 (Peat, Chalk in turn)", "Round 21 (Peat)");
        }
    }

    @Test
    void picturesHaveWordsThatStandForThem() throws IOException {
        Chart chart = Published.sample("lantern-posts");
        try (ReadBack read = Published.read(chart, options(chart))) {
            List<String> pictures = read.texts("Figure");
            assertThat(pictures).hasSizeGreaterThan(3).allMatch(words -> words.length() > 20);
            assertThat(pictures.get(0)).contains("Lantern Posts");
        }
    }

    @Test
    void theCountsOfAPatternForAnySizeAreThoseOfTheGeometryForEachExample() throws IOException {
        Chart chart = Published.sample("tide-steps");
        for (Counting counting : Counting.values()) {
            BookletOptions bare = options(chart).withParts(BookletParts.USUAL);
            try (ReadBack read = Published.read(chart, bare.withCounting(counting))) {
                List<String> cells = read.texts("TD");
                List<Integer> repeats = CountsPages.repeats(chart);
                List<String> expected = new ArrayList<>();
                for (int round = 0; round <= chart.rounds().size(); round++) {
                    expected.add(round == 0 ? "base" : chart.yarnOf(round).id());
                    for (int m : repeats) {
                        // S(r) = A + B + 2r + m * w, and 2 more if a corner chain is counted at each end.
                        int stitches = chart.shape(Side.FIRST).a()
                                + chart.shape(Side.FIRST).b()
                                + 2 * round
                                + m * chart.shape(Side.FIRST).w();
                        expected.add(Integer.toString(stitches + (counting == Counting.STITCHES ? 0 : 2)));
                    }
                }
                assertThat(cells).isEqualTo(expected);
                assertThat(read.aloud())
                        .contains(
                                counting == Counting.STITCHES
                                        ? "corner chains are not counted"
                                        : "with one corner chain counted at each end");
            }
        }
    }

    @Test
    void aFinishedPatternSaysForWhichSizesItsWordsWereWorkedBack() throws IOException {
        Chart chart = Published.sample("tide-steps");
        PerSide<Integer> repeats = PerSide.pairs(3, 2);
        int top = chart.shape(Side.FIRST).stitches(0, 3);
        int left = chart.shape(Side.FIRST).stitches(0, 2);
        try (ReadBack read = Published.read(chart, options(chart).withRepeats(repeats))) {
            assertThat(read.texts("P"))
                    .anyMatch(said -> said.endsWith(
                            "agreed with the chart on a base round of " + top + " stitches at the top, " + left
                                    + " at the left, " + top + " at the bottom and " + left
                                    + " at the right, corner chains not counted."));
        }
        Chart flawed = Published.sample("first-try-unfinished");
        try (ReadBack read = Published.read(flawed, options(flawed).withDraft(true))) {
            assertThat(read.texts("H2")).doesNotContain("How the words were proved");
        }
    }

    @Test
    void theSameChartGivesTheSameBytes() {
        Chart chart = Published.sample("lantern-posts");
        assertThat(Published.fresh(chart, options(chart))).isEqualTo(Published.fresh(chart, options(chart)));
        assertThat(Published.bytes(chart, options(chart)))
                .isNotEqualTo(Published.bytes(chart.withTitle("Lantern Posts II"), options(chart)));
    }

    @ParameterizedTest
    @EnumSource(Paper.class)
    void everyPageHasTheSizeOfItsPaper(Paper paper) throws IOException {
        Chart chart = Published.sample("tide-steps");
        try (ReadBack read = Published.read(chart, options(chart).withPaper(paper))) {
            for (PDPage page : read.document().getPages()) {
                // A4 is 210 by 297 mm (ISO 216), Letter 8.5 by 11 inches; 72 points to the inch.
                float width = paper == Paper.A4 ? 595.28f : 612f;
                float height = paper == Paper.A4 ? 841.89f : 792f;
                assertThat(page.getMediaBox().getWidth()).isCloseTo(width, offset(0.01f));
                assertThat(page.getMediaBox().getHeight()).isCloseTo(height, offset(0.01f));
            }
        }
    }

    @Test
    void aChartThatCannotBeWorkedIsRefusedAndNothingIsWritten() throws IOException {
        Chart chart = Published.sample("first-try-unfinished");
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        PublishOutcome outcome = Booklet.publish(chart, BookletOptions.of(chart, English.LANGUAGE), out, Progress.NONE);
        assertThat(outcome).isEqualTo(new PublishOutcome.Refused(Checker.check(chart)));
        assertThat(out.size()).isZero();
    }

    @Test
    void aDraftSaysSoOnEveryPageAndListsItsFindings() throws IOException {
        Chart chart = Published.sample("first-try-unfinished");
        try (ReadBack read = Published.read(chart, options(chart))) {
            for (int page = 1; page <= read.document().getNumberOfPages(); page++) {
                PageText stripper = new PageText();
                stripper.setStartPage(page);
                stripper.setEndPage(page);
                assertThat(stripper.getText(read.document())).contains("DRAFT");
            }
            String aloud = plain(read.aloud());
            for (Finding finding : Checker.check(chart).findings()) {
                assertThat(aloud).contains(plain(new FindingSentences(English.LANGUAGE).of(finding)));
            }
        }
    }

    @Test
    void aChartWithoutErrorsIsNoDraftEvenIfADraftWouldDo() throws IOException {
        Chart chart = Published.sample("reed-bank");
        try (ReadBack read = Published.read(chart, options(chart))) {
            assertThat(new PageText().getText(read.document())).doesNotContain("DRAFT");
        }
    }

    @Test
    void chipsAndNamesAreThoseOfTheYarnsThatAreWorkedWith() throws IOException {
        Chart chart = Published.sample("tide-steps");
        Chart more = WordsFormatTest.withAYarnTooMany(chart);
        BookletOptions options = BookletOptions.of(chart, English.LANGUAGE);
        assertThat(colours(more, options)).isEqualTo(colours(chart, options));
        try (PDDocument document = Loader.loadPDF(Published.bytes(more, options))) {
            assertThat(new PageText().getText(document)).doesNotContain(WordsFormatTest.TOO_MANY.name());
        }
    }

    /** Every colour that the pages fill with, page by page in the order of painting. */
    private static List<String> colours(Chart chart, BookletOptions options) throws IOException {
        List<String> colours = new ArrayList<>();
        try (PDDocument document = Loader.loadPDF(Published.bytes(chart, options))) {
            for (PDPage page : document.getPages()) {
                List<Object> tokens = new PDFStreamParser(page).parse();
                for (int i = 3; i < tokens.size(); i++) {
                    if (tokens.get(i) instanceof Operator operator
                            && operator.getName().equals("rg")) {
                        colours.add(tokens.subList(i - 3, i).toString());
                    }
                }
            }
        }
        assertThat(colours).isNotEmpty();
        return colours;
    }

    @Test
    void aLongTitleNeitherBreaksThePagesNorRunsOffThem() throws IOException {
        String words = "The long border of the salt marsh with all its reeds and creeks and lanterns and ";
        String oneWord = "Saltmarsh".repeat(60);
        for (String title : Stream.of(
                        words.repeat(2), words.repeat(40), oneWord, "\u6f6e\u306e\u6d5c \u00c6\u0142", " ")
                .toList()) {
            Chart chart = Published.sample("tide-steps").withTitle(title).withDesigner(title);
            try (ReadBack read = Published.read(chart, options(chart))) {
                assertThat(read.document().getNumberOfPages()).isBetween(6, 8);
                assertThat(read.texts("H1")).hasSize(1);
                OffThePage.assertNothing(read.document());
            }
        }
    }

    @Test
    void sixtyFourYarnsWithLongNamesFit() throws IOException {
        Chart chart = ofSixtyFourYarns();
        try (ReadBack read = Published.read(chart, options(chart))) {
            String aloud = plain(read.aloud());
            chart.yarns().forEach(yarn -> assertThat(aloud).contains(yarn.name()));
            OffThePage.assertNothing(read.document());
        }
    }

    /** A round in each of as many yarns as a chart may have, with long names. */
    static Chart ofSixtyFourYarns() {
        List<Yarn> yarns = new ArrayList<>();
        for (int i = 0; i < Chart.MOST_YARNS; i++) {
            yarns.add(new Yarn(
                    "Y" + i,
                    "Deep winter peat from the far bank " + i,
                    Published.sample("tide-steps").yarns().get(0).colour()));
        }
        return Chart.blank("Tide Steps", new SideShape(2, 5, 1), Chart.MOST_YARNS, yarns);
    }

    @Test
    void whoeverAsksToStopGetsNothing() throws IOException {
        Chart chart = Published.sample("reed-bank");
        Path file = folder.resolve("pattern.pdf");
        List<Integer> asked = new ArrayList<>();
        PublishOutcome outcome = Booklet.publish(chart, options(chart), file, (done, pages) -> {
            if (pages > 0) {
                asked.add(done);
            }
            return done < 3;
        });
        assertThat(outcome).isEqualTo(new PublishOutcome.Cancelled());
        assertThat(asked).containsExactly(0, 1, 2, 3);
        assertThat(folder).isEmptyDirectory();
    }

    @Test
    void whileWordsAreWorkedBackItIsAskedBeforeEachRound() throws IOException {
        Chart chart = Published.sample("reed-bank");
        AtomicInteger asked = new AtomicInteger();
        Booklet.publish(chart, options(chart), OutputStream.nullOutputStream(), (done, pages) -> {
            if (pages == 0) {
                asked.incrementAndGet();
            }
            return true;
        });
        assertThat(asked.get()).isGreaterThan(chart.rounds().size() * SizeProofs.USUAL.size());
    }

    @Test
    void whoeverAsksToStopIsHeardAtOnceWheneverThatIs() throws IOException {
        Chart chart = Published.sample("mooring-rope");
        Path file = folder.resolve("pattern.pdf");
        for (int answers = 0; answers < 400; answers += 7) {
            int last = answers;
            AtomicInteger asked = new AtomicInteger();
            PublishOutcome outcome =
                    Booklet.publish(chart, options(chart), file, (done, pages) -> asked.getAndIncrement() < last);
            assertThat(outcome).isEqualTo(new PublishOutcome.Cancelled());
            assertThat(asked.get()).isEqualTo(last + 1);
            assertThat(folder).isEmptyDirectory();
        }
    }

    @Test
    void aFileIsReplacedWholeAndNothingIsLeftBesideIt() throws IOException {
        Chart chart = Published.sample("reed-bank");
        Path file = folder.resolve("pattern.pdf");
        Files.writeString(file, "an older pattern");
        assertThat(Booklet.publish(chart, options(chart), file, Progress.NONE))
                .isInstanceOf(PublishOutcome.Published.class);
        assertThat(file).hasBinaryContent(Published.bytes(chart, options(chart)));
        assertThat(folder).isDirectoryContaining(file::equals);
        try (Stream<Path> files = Files.list(folder)) {
            assertThat(files).containsExactly(file);
        }
    }

    @Test
    void aFolderIsNotReplacedByAPattern() throws IOException {
        Chart chart = Published.sample("tide-steps");
        assertThatThrownBy(() -> Booklet.publish(chart, options(chart), folder, Progress.NONE))
                .isInstanceOf(FileProblemException.class);
        assertThat(folder).isEmptyDirectory();
    }
}
