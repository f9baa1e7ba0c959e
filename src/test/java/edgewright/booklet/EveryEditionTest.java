package edgewright.booklet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import edgewright.booklet.choice.BookletOptions;
import edgewright.booklet.choice.ChartKind;
import edgewright.booklet.choice.ChartPaper;
import edgewright.booklet.choice.Edition;
import edgewright.booklet.choice.Paper;
import edgewright.booklet.choice.PrintChoice;
import edgewright.booklet.choice.PrintedTerms;
import edgewright.booklet.choice.WordingChoice;
import edgewright.booklet.sheets.MarksReadBackTest;
import edgewright.chart.Chart;
import edgewright.chart.HookHand;
import edgewright.draw.marks.MarkStyle;
import edgewright.texts.English;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Editions of samples, each a new file: held to PDF/A-2a and PDF/UA-1 by veraPDF, to the syntax of PDF by qpdf
 * (https://qpdf.sourceforge.io) where that is installed, and read back mark by mark.
 *
 * <p>A build takes another edition of each sample, and veraPDF its first rounds. {@code -Dedgewright.exhaustive=2} takes every edition for either hand on
 * every paper for the chart, with the terms and the paper of the rest in turn; 3 takes all that can be chosen.
 */
class EveryEditionTest {
    @TempDir
    private Path folder;

    private static final int EXHAUSTIVE = Integer.getInteger("edgewright.exhaustive", 1);
    private static final ChartKind[] KINDS = ChartKind.values();
    private static final MarkStyle[] MARKS = MarkStyle.values();

    private static Stream<Arguments> editions() throws IOException {
        List<Arguments> chosen = new ArrayList<>();
        List<String> samples = MarksReadBackTest.samples().toList();
        for (int i = 0; i < samples.size(); i++) {
            List<BookletOptions> all = editions(Published.sample(samples.get(i)));
            for (int j = 0; j < all.size(); j++) {
                int inGroup = Paper.values().length * PrintedTerms.values().length;
                boolean inTurn = j / inGroup % inGroup == j % inGroup;
                // The step has no divisor in common with their number, so samples come to all corners of the list.
                boolean one = j == i * 31 % all.size();
                if (EXHAUSTIVE >= 3 || (EXHAUSTIVE == 2 && inTurn) || (EXHAUSTIVE == 1 && one)) {
                    BookletOptions options = all.get(j);
                    chosen.add(arguments(samples.get(i), options.appearance(), options.telling()));
                }
            }
        }
        return chosen.stream();
    }

    /** All that can be chosen: for each edition, hand and paper of the chart every paper of the rest and all terms; pictures and marks in turn. */
    private static List<BookletOptions> editions(Chart chart) {
        List<BookletOptions> all = new ArrayList<>();
        BookletOptions plain = BookletOptions.of(chart, English.LANGUAGE).withDraft(true);
        for (Edition edition : Edition.values()) {
            for (HookHand hand : HookHand.values()) {
                for (ChartPaper chartPaper : ChartPaper.values()) {
                    for (Paper paper : Paper.values()) {
                        for (PrintedTerms terms : PrintedTerms.values()) {
                            int number = all.size();
                            PrintChoice appearance = plain.appearance()
                                    .withChart(KINDS[number % KINDS.length])
                                    .withMarks(MARKS[number / KINDS.length % MARKS.length])
                                    .withEdition(edition)
                                    .withPaper(paper)
                                    .withChartPaper(chartPaper);
                            all.add(plain.with(appearance)
                                    .with(plain.telling().withTerms(terms).withHand(hand)));
                        }
                    }
                }
            }
        }
        return all;
    }

    @ParameterizedTest
    @MethodSource("editions")
    void anEditionKeepsTheStandardsAndEveryMark(String sample, PrintChoice appearance, WordingChoice telling)
            throws Exception {
        Chart chart = Published.sample(sample);
        BookletOptions options = BookletOptions.of(chart, English.LANGUAGE)
                .withDraft(true)
                .with(appearance)
                .with(telling);
        byte[] file = Published.fresh(chart, options);
        MarksReadBackTest.assertProved(chart, options, file);
        BookletStandardsTest.assertKeeps(
                BookletStandardsTest.STANDARDS,
                EXHAUSTIVE > 1 ? file : Published.fresh(BookletStandardsTest.beginning(chart), options));
        assertSoundForQpdf(file);
    }

    /** Comes last, since without the program the rest of the test was done and this was not, and the report is to say so. */
    private void assertSoundForQpdf(byte[] file) throws IOException, InterruptedException {
        Path pattern = Files.write(folder.resolve("pattern.pdf"), file);
        Path said = folder.resolve("said.txt");
        Process process;
        try {
            process = new ProcessBuilder("qpdf", "--check", pattern.toString())
                    .redirectErrorStream(true)
                    .redirectOutput(said.toFile())
                    .start();
        } catch (IOException missing) {
            assumeTrue(false, "SKIPPED: qpdf is not installed; all else was judged");
            throw missing;
        }
        assertThat(process.waitFor())
                .as(Files.readString(said, StandardCharsets.UTF_8))
                .isZero();
    }
}
