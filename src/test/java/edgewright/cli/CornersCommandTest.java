package edgewright.cli;

import static edgewright.cli.CommandLineHelper.run;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import edgewright.chart.Chart;
import edgewright.chart.Colour;
import edgewright.chart.Round;
import edgewright.chart.SideShape;
import edgewright.chart.Stitches;
import edgewright.chart.Yarn;
import edgewright.check.Checker;
import edgewright.cli.CommandLineHelper.Ended;
import edgewright.file.ChartFiles;
import edgewright.file.FileProblemException;
import edgewright.file.ReadResult;
import edgewright.testing.RandomCharts;
import edgewright.testing.SampleFiles;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CornersCommandTest {
    @TempDir
    Path folder;

    @Test
    void everySampleHasCornersThatKeepWhatIsPromised() throws IOException {
        List<Path> samples = SampleFiles.sound();
        assertThat(samples).hasSizeGreaterThan(5);
        for (Path sample : samples) {
            assertThat(proposals(sample)).as(sample.toString()).hasSize(6);
        }
    }

    @Test
    void soDoesAnyWorkableChart() throws IOException {
        RandomCharts charts = new RandomCharts(14);
        for (int i = 0; i < 40; i++) {
            Path file = folder.resolve("seeded-" + i + ChartFiles.ENDING);
            ChartFiles.write(file, RandomCharts.workable(i % 4 == 0 ? charts.any() : charts.small()));
            assertThat(proposals(file)).as(file.toString()).isNotEmpty();
        }
    }

    /** Reads back what was written, and holds it to what the help of the command promises. */
    private List<JsonNode> proposals(Path file) throws IOException {
        Path to = folder.resolve("corners-of-" + file.getFileName()).resolve("new");
        Ended ended = run("corners", file, "--to", to, "--json");
        assertThat(ended.err()).isEmpty();
        assertThat(ended.status()).isZero();
        Chart before = chart(file);
        List<JsonNode> proposals = new ArrayList<>();
        new ObjectMapper().readTree(ended.out()).get("proposals").forEach(proposals::add);
        Set<List<Stitches>> corners = new HashSet<>();
        double last = Double.MAX_VALUE;
        for (JsonNode proposal : proposals) {
            Chart after = chart(Path.of(proposal.get("file").asText()));
            assertThat(Checker.check(after).errors()).isEmpty();
            assertThat(after.shape())
                    .isEqualTo(new SideShape(
                            proposal.get("fromCorner").asInt(),
                            before.shape().w(),
                            proposal.get("toCorner").asInt()));
            List<Stitches> sections = new ArrayList<>();
            for (int r = 1; r <= before.rounds().size(); r++) {
                Round round = after.round(r);
                assertThat(round.yarn()).isEqualTo(before.round(r).yarn());
                assertThat(round.repeat())
                        .isEqualTo(before.round(r)
                                .repeat()
                                .rotated(proposal.get("shift").asInt()));
                sections.add(round.fromCorner());
                sections.add(round.toCorner());
            }
            assertThat(corners.add(sections)).isTrue();
            assertThat(proposal.get("score").asDouble()).isLessThanOrEqualTo(last);
            last = proposal.get("score").asDouble();
        }
        try (Stream<Path> written = Files.list(to)) {
            assertThat(written).hasSize(proposals.size());
        }
        return proposals;
    }

    @Test
    void whereAllCornersLookAlikeThereIsOne() throws FileProblemException {
        Path file = folder.resolve("plain.border.json");
        List<Yarn> yarns = List.of(
                new Yarn("A", "Peat", Colour.parse("#2b2a33")), new Yarn("B", "Chalk", Colour.parse("#f2ead8")));
        ChartFiles.write(file, Chart.blank("Plain", new SideShape(2, 6, 3), 5, yarns));
        Ended ended = run("corners", file, "--to", folder);
        assertThat(ended.status()).isZero();
        assertThat(ended.out())
                .startsWith("wrote " + folder.resolve("plain-corner-1.border.json") + ": score ")
                .endsWith("There is no other corner that looks clearly different.\n")
                .hasLineCount(2);
    }

    @Test
    void aChartWithErrorsIsAnsweredWithItsFindings() throws IOException {
        Path to = folder.resolve("corners");
        Ended ended = run("corners", Charts.unworkable(folder), "--to", to);
        assertThat(ended.status()).isEqualTo(1);
        assertThat(ended.err()).contains("no-round-below");
        assertThat(to).doesNotExist();
    }

    @Test
    void aFileIsNoFolder() throws IOException {
        Path file = Files.writeString(folder.resolve("notes.txt"), "tide tables");
        String expected = file + ": this is a file; expected a folder, which is made if there is none\n";
        assertThat(run("corners", Charts.sound(folder), "--to", file)).isEqualTo(new Ended(2, "", expected));
        Path below = file.resolve("corners");
        assertThat(run("corners", Charts.sound(folder), "--to", below))
                .isEqualTo(new Ended(
                        2, "", below + ": this folder cannot be made; expected one that can be written to\n"));
        assertThat(file).hasContent("tide tables");
    }

    @Test
    void whereOneChartCannotBeWrittenNoneIsLeft() throws IOException {
        Path to = Files.createDirectory(folder.resolve("corners"));
        Files.createDirectories(to.resolve("tide-steps-corner-2.border.json").resolve("in the way"));
        Ended refused = run("corners", Path.of("sample-charts/tide-steps.border.json"), "--to", to);
        assertThat(refused.status()).isEqualTo(2);
        assertThat(refused.err()).hasLineCount(1);
        assertThat(to.resolve("tide-steps-corner-1.border.json")).doesNotExist();
    }

    private static Chart chart(Path file) {
        return ((ReadResult.Read) ChartFiles.read(file)).chart();
    }
}
