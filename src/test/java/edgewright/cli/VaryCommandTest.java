package edgewright.cli;

import static edgewright.cli.CommandLineHelper.run;
import static org.assertj.core.api.Assertions.assertThat;

import edgewright.assist.symmetry.Tile;
import edgewright.chart.Chart;
import edgewright.chart.Colour;
import edgewright.chart.Round;
import edgewright.chart.SideShape;
import edgewright.chart.Stitch;
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
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class VaryCommandTest {
    @TempDir
    Path folder;

    @Test
    void everySampleHasAWallOfVariationsThatKeepTheConditions() throws IOException {
        List<Path> samples = SampleFiles.sound();
        assertThat(samples).hasSizeGreaterThan(5);
        for (Path sample : samples) {
            assertThat(variations(sample, 24)).as(sample.toString()).hasSize(24);
        }
    }

    @Test
    void variationsOfAnyWorkableChartKeepTheConditions() throws IOException {
        RandomCharts charts = new RandomCharts(6);
        int found = 0;
        for (int i = 0; i < 40; i++) {
            Path file = folder.resolve("seeded-" + i + ChartFiles.ENDING);
            ChartFiles.write(file, RandomCharts.workable(i % 4 == 0 ? charts.any() : charts.small()));
            found += variations(file, 3).size();
        }
        assertThat(found).isPositive();
    }

    /** Reads back what was written, and holds it to what the help of the command promises. */
    private List<Path> variations(Path file, int wanted) throws IOException {
        Path to = folder.resolve("of-" + file.getFileName());
        Ended ended = run("vary", file, "--to", to, "--count", wanted, "--seed", "3");
        assertThat(ended.err()).isEmpty();
        assertThat(ended.status()).isZero();
        List<Path> written;
        try (Stream<Path> files = Files.list(to)) {
            written = files.sorted().toList();
        }
        Chart before = chart(file);
        Set<List<Stitches>> repeats = new HashSet<>(Set.of(repeats(before)));
        for (Path path : written) {
            Chart after = chart(path);
            assertThat(Checker.check(after).errors()).isEmpty();
            assertThat(Checker.check(after).findings())
                    .hasSizeLessThanOrEqualTo(Checker.check(before).findings().size());
            assertThat(after.shape()).isEqualTo(before.shape());
            assertThat(corners(after)).isEqualTo(corners(before));
            assertThat(repeats.add(repeats(after))).isTrue();
            assertThat(new Tile(after).crumbs()).isLessThanOrEqualTo(new Tile(before).crumbs());
            assertThat(!new Tile(before).isMirrored() || new Tile(after).isMirrored())
                    .isTrue();
            int longs = longs(before);
            if (longs > 0) {
                assertThat(longs(after)).isBetween(longs - Math.max(3, longs / 4), longs + Math.max(3, longs / 4));
            }
        }
        return written;
    }

    @Test
    void theSameSeedMakesTheSameFilesAndAnotherMakesOthers() throws IOException {
        Path sample = Path.of("sample-charts/heron-walk.border.json");
        run("vary", sample, "--to", folder.resolve("one"), "--count", "4", "--seed", "9");
        run("vary", sample, "--to", folder.resolve("two"), "--count", "4", "--seed", "9");
        run("vary", sample, "--to", folder.resolve("three"), "--count", "4", "--seed", "10");
        for (int i = 1; i <= 4; i++) {
            String name = "heron-walk-variation-" + i + ".border.json";
            assertThat(folder.resolve("two").resolve(name))
                    .hasSameBinaryContentAs(folder.resolve("one").resolve(name));
        }
        String last = "heron-walk-variation-4.border.json";
        assertThat(Files.readString(folder.resolve("three").resolve(last)))
                .isNotEqualTo(Files.readString(folder.resolve("one").resolve(last)));
    }

    @Test
    void whereChanceFindsFewerThatIsSaid() throws FileProblemException {
        Path file = folder.resolve("plain.border.json");
        List<Yarn> yarns = List.of(new Yarn("A", "Peat", Colour.parse("#2b2a33")));
        ChartFiles.write(file, Chart.blank("Plain", new SideShape(2, 1, 3), 2, yarns));
        assertThat(run("vary", file, "--to", folder.resolve("none")))
                .isEqualTo(
                        new Ended(0, "Chance found no chart that keeps all conditions, where 12 were wanted.\n", ""));
    }

    @Test
    void aChartWithErrorsIsAnsweredWithItsFindings() throws IOException {
        Path to = folder.resolve("variations");
        Ended ended = run("vary", Charts.unworkable(folder), "--to", to);
        assertThat(ended.status()).isEqualTo(1);
        assertThat(ended.err()).contains("no-round-below");
        assertThat(to).doesNotExist();
    }

    private static int longs(Chart chart) {
        return chart.rounds().stream()
                .mapToInt(round -> round.repeat().count(Stitch.LONG))
                .sum();
    }

    private static List<Stitches> repeats(Chart chart) {
        return chart.rounds().stream().map(Round::repeat).toList();
    }

    private static List<Stitches> corners(Chart chart) {
        return chart.rounds().stream()
                .flatMap(round -> Stream.of(round.fromCorner(), round.toCorner()))
                .toList();
    }

    private static Chart chart(Path file) {
        return ((ReadResult.Read) ChartFiles.read(file)).chart();
    }
}
