package edgewright.cli;

import static edgewright.cli.CommandLineHelper.run;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import edgewright.booklet.PageText;
import edgewright.chart.Chart;
import edgewright.chart.Colour;
import edgewright.chart.SideShape;
import edgewright.chart.Yarn;
import edgewright.cli.CommandLineHelper.Ended;
import edgewright.file.BrokenCharts;
import edgewright.file.ChartFiles;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Published files are read back by PDFBox: https://pdfbox.apache.org. */
class PublishCommandTest {
    @TempDir
    private Path folder;

    @Test
    void thePatternHasAsManyPagesAsItIsSaidToHave() throws IOException {
        Path to = folder.resolve("posts – pattern.pdf");
        Ended ended = run("publish", Charts.sound(folder), "--to", to);
        try (PDDocument pages = Loader.loadPDF(to.toFile())) {
            assertThat(ended).isEqualTo(new Ended(0, "wrote " + to + ": " + pages.getNumberOfPages() + " pages\n", ""));
            assertThat(text(pages)).contains("Lantern Posts").contains("dc blo").doesNotContain("DRAFT");
        }
    }

    @ParameterizedTest
    @CsvSource({"a4, 595.28, 841.89", "A4, 595.28, 841.89", "letter, 612, 792"})
    void itIsPrintedOnThePaperThatWasAskedFor(String paper, float width, float height) throws IOException {
        // ISO 216 A4 is 210 by 297 mm, Letter 8.5 by 11 inches; a point is 1/72 inch. From memory.
        Path to = folder.resolve("posts.pdf");
        run("publish", Charts.sound(folder), "--to", to, "--paper", paper);
        try (PDDocument pages = Loader.loadPDF(to.toFile())) {
            PDRectangle sheet = pages.getPage(0).getMediaBox();
            assertThat(sheet.getWidth()).isCloseTo(width, offset(0.02f));
            assertThat(sheet.getHeight()).isCloseTo(height, offset(0.02f));
        }
    }

    @Test
    void termsAndSizeAreThoseThatWereAskedFor() throws IOException {
        Path to = folder.resolve("posts.pdf");
        // S(0) = A + B + 5m = 5 + 5m: 50 and 30. Round 2 has 4 stitches more.
        run("publish", Charts.sound(folder), "--to", to, "--terms", "US", "--sides", "50,30");
        try (PDDocument pages = Loader.loadPDF(to.toFile())) {
            assertThat(text(pages))
                    .contains("sc blo")
                    .doesNotContain("dc blo")
                    .contains("54")
                    .contains("34");
        }
    }

    @Test
    void twoRunsGiveTheSameBytes() throws IOException {
        Path chart = Charts.sound(folder);
        run("publish", chart, "--to", folder.resolve("one.pdf"), "--repeats", "3,2", "--cell-mm", "6");
        run("publish", chart, "--to", folder.resolve("two.pdf"), "--repeats", "3,2", "--cell-mm", "6");
        assertThat(folder.resolve("one.pdf")).hasSameBinaryContentAs(folder.resolve("two.pdf"));
    }

    @Test
    void aChartOfMoreStitchesThanArePrintedIsRefusedInOneSentence() throws IOException {
        List<Yarn> yarns = List.of(new Yarn("A", "Peat", Colour.parse("#2b2a33")));
        Path chart = folder.resolve("huge.border.json");
        ChartFiles.write(chart, Chart.blank("Huge", new SideShape(6, 2000, 7), 1300, yarns));
        Path to = folder.resolve("huge.pdf");
        // S(1300) without repeats is 13 + 2600, and each of the two arms shows one repeat: 1300 * (2613 + 4000).
        assertThat(run("publish", chart, "--to", to))
                .isEqualTo(new Ended(
                        2,
                        "",
                        "the chart of this pattern would show 8,596,900 stitches;"
                                + " expected at most 400,000, for example with fewer rounds\n"));
        assertThat(to).doesNotExist();
    }

    @Test
    void charactersThatTheFacesLackAreNamed() throws IOException {
        Path chart = folder.resolve("script.border.json");
        Files.writeString(chart, BrokenCharts.sound().replace("Lantern Posts", "Lantern \u7de8\u7269 Posts \u7de8"));
        Ended ended = run("publish", chart, "--to", folder.resolve("script.pdf"));
        assertThat(ended.status()).isZero();
        assertThat(ended.err())
                .isEqualTo(
                        "in the title no typeface of this program has \u7269 (U+7269), \u7de8 (U+7DE8); their numbers"
                                + " stand for them\n");
        assertThat(run("publish", chart, "--to", folder.resolve("script.pdf"), "--pattern-date", "\u6625")
                        .err())
                .endsWith(
                        "in the date of the pattern no typeface of this program has \u6625 (U+6625); its number stands"
                                + " for it\n");
    }

    @Test
    void aChartThatCannotBeWorkedIsNotPublished() throws IOException {
        Path chart = Charts.unworkable(folder);
        Path to = folder.resolve("posts.pdf");
        assertThat(run("publish", chart, "--to", to))
                .isEqualTo(new Ended(1, "", run("check", chart).out()));
        assertThat(to).doesNotExist();
    }

    @Test
    void aDraftSaysSoAndListsItsFindings() throws IOException {
        assertThat(draft(Charts.unworkable(folder))).contains("DRAFT").contains("no loop to reach for");
    }

    @ParameterizedTest
    @CsvSource({
        "guide,                  false, true,  true",
        "worksheet,              true,  false, true",
        "yarn,                   true,  true,  false",
        "'worksheet,guide,yarn', false, false, false"
    })
    void partsCanBeLeftOut(String leftOut, boolean guide, boolean worksheet, boolean yarn) throws IOException {
        Path to = folder.resolve("bare.pdf");
        assertThat(run("publish", Charts.sound(folder), "--to", to, "--workbook", "appendix", "--leave-out", leftOut)
                        .status())
                .isZero();
        try (PDDocument pages = Loader.loadPDF(to.toFile())) {
            assertThat(text(pages).contains("One block for each round")).isEqualTo(guide);
            assertThat(text(pages).contains("Count again in")).isEqualTo(worksheet);
            assertThat(text(pages).contains("What each round takes")).isEqualTo(yarn);
        }
    }

    @Test
    void thePartsThatWereChosenStandInTheirOrder() throws IOException {
        Path to = folder.resolve("short.pdf");
        run("publish", Charts.sound(folder), "--to", to, "--parts", "words,finishing,chart");
        try (PDDocument pages = Loader.loadPDF(to.toFile())) {
            assertThat(headings(pages)).containsExactly("Joining and closing a round", "Rounds", "Finishing", "Chart");
        }
    }

    @Test
    void eachRoundByItselfIsAskedForAsSuch() throws IOException {
        Path chart = Path.of("sample-charts/mooring-rope.border.json");
        Path alike = folder.resolve("alike.pdf");
        Path each = folder.resolve("each.pdf");
        run("publish", chart, "--to", alike, "--parts", "words");
        run("publish", chart, "--to", each, "--parts", "words", "--each-round");
        try (PDDocument together = Loader.loadPDF(alike.toFile());
                PDDocument apart = Loader.loadPDF(each.toFile())) {
            assertThat(text(together)).contains("Rounds 1 to 3", "(Tar, Hemp, Tar)", "as round 4");
            assertThat(text(apart)).contains("Round 1 (Tar)", "Round 3 (Tar)").doesNotContain("Rounds 1", "as round");
        }
    }

    @Test
    void theWorkbookIsASecondFileOfWhatThePatternLeavesOut() throws IOException {
        Path to = folder.resolve("posts.pdf");
        Path workbook = folder.resolve("posts-workbook.pdf");
        Ended ended = run("publish", Charts.sound(folder), "--to", to, "--workbook", workbook);
        try (PDDocument pattern = Loader.loadPDF(to.toFile());
                PDDocument second = Loader.loadPDF(workbook.toFile())) {
            assertThat(ended.out())
                    .isEqualTo("wrote " + to + ": " + pattern.getNumberOfPages() + " pages\nwrote " + workbook + ": "
                            + second.getNumberOfPages() + " pages\n");
            assertThat(headings(pattern)).doesNotContain("Contents", "Round guide", "Worksheet");
            assertThat(headings(second)).containsExactly("Round guide", "Worksheet", "Sizes", "How much yarn");
            assertThat(text(second)).startsWith("UK terms").contains("Lantern Posts: workbook");
        }
    }

    @Test
    void ofTheWorkbookOnlyThePartsThatWereNamedArePrinted() throws IOException {
        Path to = folder.resolve("posts.pdf");
        Path workbook = folder.resolve("posts-workbook.pdf");
        run("publish", Charts.sound(folder), "--to", to, "--parts", "cover,sizes,words", "--workbook", workbook);
        try (PDDocument pattern = Loader.loadPDF(to.toFile());
                PDDocument second = Loader.loadPDF(workbook.toFile())) {
            assertThat(headings(pattern)).containsExactly("Joining and closing a round", "Rounds");
            assertThat(headings(second)).containsExactly("Sizes");
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--parts facts,chart,facts | --parts: facts is there twice, expected each part once",
                "--parts facts,cover | --parts: cover comes after facts, expected it first",
                "--parts guide --workbook w.pdf | --parts: no part is left for the file of --to, expected at least one"
                        + " that is not of the workbook",
                "--workbook w.pdf --leave-out guide,worksheet,sizes,yarn | --workbook: no part is left for its file,"
                        + " expected at least one of guide, worksheet, sizes, yarn",
            })
    void partsThatMakeNoFileAreRefused(String options, String said) throws IOException {
        Path to = folder.resolve("posts.pdf");
        List<Object> arguments = new ArrayList<>(List.of("publish", Charts.sound(folder), "--to", to));
        arguments.addAll(List.of(options.split(" ")));
        assertThat(run(arguments.toArray())).isEqualTo(new Ended(2, "", said + "\n"));
        assertThat(to).doesNotExist();
    }

    @Test
    void theWorkbookIsNotWrittenOverThePattern() throws IOException {
        Path to = folder.resolve("posts.pdf");
        assertThat(run("publish", Charts.sound(folder), "--to", to, "--workbook", to))
                .isEqualTo(
                        new Ended(2, "", to + ": both files have this name, expected another name for the workbook\n"));
        assertThat(to).doesNotExist();
    }

    private static List<String> headings(PDDocument pages) {
        List<String> headings = new ArrayList<>();
        pages.getDocumentCatalog().getDocumentOutline().children().forEach(item -> headings.add(item.getTitle()));
        return headings;
    }

    @Test
    void aDraftOfARaggedChartIsPublished() throws IOException {
        assertThat(draft(Charts.ragged(folder))).contains("DRAFT").contains("This section has 3 stitches");
    }

    @Test
    void aDraftForSidesThatDoNotCloseSaysSo() throws IOException {
        assertThat(draft(Charts.sound(folder), "--sides", "16,20"))
                .contains("DRAFT")
                .contains("does not come out even");
    }

    @ParameterizedTest
    @ValueSource(strings = {"pattern.svg", "pattern", "pattern.border.json", "pdf"})
    void aPatternIsPdf(String name) throws IOException {
        Path to = folder.resolve(name);
        refused(run("publish", Charts.sound(folder), "--to", to), "expected a file whose name ends in .pdf");
        assertThat(to).doesNotExist();
    }

    @Test
    void theChartIsNotPublishedOverItself() throws IOException {
        Path chart = Files.writeString(folder.resolve("chart.pdf"), BrokenCharts.sound());
        refused(run("publish", chart, "--to", chart), "this is the chart itself");
        assertThat(chart).hasContent(BrokenCharts.sound());
    }

    @Test
    void whatCannotBeWrittenLeavesTheOldFileAlone() throws IOException {
        Path chart = Charts.sound(folder);
        Path inTheWay = Files.createDirectory(folder.resolve("folder.pdf"));
        refused(run("publish", chart, "--to", inTheWay), "this is a folder");
        refused(run("publish", chart, "--to", folder.resolve("no/posts.pdf")), "there is no folder");
        Path old = Files.writeString(folder.resolve("old.pdf"), "old");
        refused(run("publish", folder.resolve("none.border.json"), "--to", old), "there is no such file");
        assertThat(old).hasContent("old");
    }

    @ParameterizedTest
    @CsvSource({"--cell-mm, 3.9", "--cell-mm, 21", "--paper, a5", "--terms, FR"})
    void whatMakesNoSenseIsRefused(String option, String value) throws IOException {
        Path to = folder.resolve("posts.pdf");
        refused(
                run("publish", Charts.sound(folder), "--to", to, option, value),
                option + ": found '" + value + "', expected ");
        assertThat(to).doesNotExist();
    }

    private String draft(Path chart, Object... more) throws IOException {
        Path to = folder.resolve("draft.pdf");
        Object[] words = Stream.concat(Stream.of("publish", chart, "--to", to, "--draft"), Stream.of(more))
                .toArray();
        assertThat(run(words).status()).isZero();
        try (PDDocument pages = Loader.loadPDF(to.toFile())) {
            // Lines are broken where the page wants it.
            return text(pages).replaceAll("\\s+", " ");
        }
    }

    private static String text(PDDocument pages) throws IOException {
        return new PageText().getText(pages);
    }

    private static void refused(Ended ended, String why) {
        assertThat(ended.status()).isEqualTo(2);
        assertThat(ended.out()).isEmpty();
        assertThat(ended.err().lines()).singleElement().asString().contains(why);
    }
}
