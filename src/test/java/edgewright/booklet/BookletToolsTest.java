package edgewright.booklet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import edgewright.booklet.choice.BookletOptions;
import edgewright.chart.Chart;
import edgewright.texts.English;
import edgewright.words.page.PatternPart;
import edgewright.words.page.TextBlock;
import edgewright.words.write.PatternWriter;
import edgewright.words.write.WordingOptions;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Published patterns as other people's programs read them: poppler (https://poppler.freedesktop.org) and qpdf
 * (https://qpdf.sourceforge.io). Where a program is not installed its test is skipped and says so.
 */
class BookletToolsTest {
    @TempDir
    private Path folder;

    private String run(String... command) throws IOException, InterruptedException {
        Path out = folder.resolve("out.txt");
        Process process;
        try {
            process = new ProcessBuilder(command)
                    .redirectErrorStream(true)
                    .redirectOutput(out.toFile())
                    .start();
        } catch (IOException missing) {
            assumeTrue(false, "SKIPPED: " + command[0] + " is not installed");
            throw missing;
        }
        int status = process.waitFor();
        String said = Files.readString(out, StandardCharsets.UTF_8);
        assertThat(status).as("%s: %s", command[0], said).isZero();
        return said;
    }

    private Path published(Chart chart) throws IOException {
        Path file = folder.resolve("pattern.pdf");
        Files.write(file, Published.bytes(chart, BookletOptions.of(chart, English.LANGUAGE)));
        return file;
    }

    @Test
    void qpdfFindsNoFaultInTheFile() throws Exception {
        assertThat(run(
                        "qpdf",
                        "--check",
                        published(Published.sample("lantern-posts")).toString()))
                .contains("No syntax or stream encoding errors found")
                .doesNotContain("WARNING");
    }

    @Test
    void popplerFindsATaggedFileWithTitleAndEmbeddedFaces() throws Exception {
        Path file = published(Published.sample("reed-bank"));
        assertThat(run("pdfinfo", file.toString()))
                .containsPattern("Title: +Reed Bank\\R")
                .containsPattern("Author: +Saltmarsh Studio\\R")
                .containsPattern("Tagged: +yes\\R");
        List<String> fonts = run("pdffonts", file.toString()).lines().skip(2).toList();
        // Columns: name, type, encoding, emb, sub, uni, object.
        assertThat(fonts).isNotEmpty().allMatch(line -> line.matches(".* yes +yes +yes +\\d+ +0 *"));
    }

    @Test
    void popplerReadsTheRoundsInTheirOrder() throws Exception {
        Chart chart = Published.sample("reed-bank");
        Path file = published(chart);
        String text = run("pdftotext", "-enc", "UTF-8", file.toString(), "-").replaceAll("[\\s\\p{Z}]+", " ");
        Matcher rounds = Pattern.compile("Rounds? (\\d+)(?: to (\\d+))? \\((?:Peat|Chalk)(?:\\)|, )")
                .matcher(text);
        List<Integer> numbers = rounds.results()
                .flatMap(match -> IntStream.rangeClosed(
                                Integer.parseInt(match.group(1)),
                                Integer.parseInt(match.group(match.group(2) == null ? 1 : 2)))
                        .boxed())
                .toList();
        assertThat(numbers)
                .isEqualTo(
                        IntStream.rangeClosed(1, chart.rounds().size()).boxed().toList());
        for (PatternPart part : PatternWriter.write(chart, WordingOptions.of(chart, English.LANGUAGE))
                .parts()) {
            for (TextBlock block : part.blocks()) {
                if (block instanceof TextBlock.RoundWords words) {
                    String last = words.steps().get(words.steps().size() - 1);
                    assertThat(text).contains(last.replaceAll("[\\s\\p{Z}]+", " "));
                }
            }
        }
    }
}
