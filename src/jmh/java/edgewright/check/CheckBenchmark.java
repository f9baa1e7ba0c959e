package edgewright.check;

import edgewright.chart.Chart;
import edgewright.chart.Colour;
import edgewright.chart.Edits;
import edgewright.chart.Place;
import edgewright.chart.Round;
import edgewright.chart.Section;
import edgewright.chart.Side;
import edgewright.chart.SideShape;
import edgewright.chart.Stitch;
import edgewright.chart.Stitches;
import edgewright.chart.Yarn;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * How long a check takes beside copying the same cells, a byte each; and a recheck after one edit beside a full check. The
 * chart is as large as they come: 400 rounds, w = 200, A = B = 40. Every third stitch is long where it can be, so no
 * round can be passed over.
 *
 * <p>Read the ratios {@code fullCheck / copyCells} and {@code recheckOneEdit / fullCheck}; times are the machine's.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 8, time = 1)
@Fork(2)
public class CheckBenchmark {
    private static final int ROUNDS = 400;

    private Chart chart;
    private Chart edited;
    private Verdict verdict;
    private byte[] cells;
    private byte[] copy;

    /** Makes the chart, once with and once without a long stitch in its middle. */
    @Setup
    public void makeChart() {
        chart = workable(new SideShape(40, 200, 40));
        Place middle = new Place(ROUNDS / 2, Section.REPEAT, 100);
        edited = Edits.setStitches(chart, List.of(middle), other(chart.stitch(middle)));
        verdict = Checker.check(chart);
        if (!verdict.findings().isEmpty()) {
            throw new IllegalStateException("the chart is to be workable, but " + verdict);
        }
        int size = chart.rounds().stream()
                .mapToInt(round -> round.side(Side.FIRST, 1).length())
                .sum();
        cells = new byte[size];
        copy = new byte[size];
    }

    /** The yardstick. */
    @Benchmark
    public byte[] copyCells() {
        System.arraycopy(cells, 0, copy, 0, cells.length);
        return copy;
    }

    /** Every round of the chart is judged. */
    @Benchmark
    public Verdict fullCheck() {
        return Checker.check(chart);
    }

    /** One stitch has changed. */
    @Benchmark
    public Verdict recheckOneEdit() {
        return Checker.recheck(verdict, edited);
    }

    private static Stitch other(Stitch stitch) {
        return stitch == Stitch.LONG ? Stitch.BACK_LOOP : Stitch.LONG;
    }

    private static Chart workable(SideShape shape) {
        List<Yarn> yarns = List.of(
                new Yarn("A", "Peat", Colour.parse("#2b2a33")), new Yarn("B", "Chalk", Colour.parse("#f2ead8")));
        Random random = new Random(400);
        Chart chart = Chart.blank("Large", shape, ROUNDS, yarns);
        for (int r = 1; r <= ROUNDS; r++) {
            Round round = chart.round(r);
            for (Section section : Section.values()) {
                StringBuilder letters = new StringBuilder();
                for (int i = round.section(section).length(); i > 0; i--) {
                    letters.append(random.nextInt(3) == 0 ? 'l' : 'b');
                }
                round = round.with(section, Stitches.of(letters));
            }
            chart = withoutFindings(chart.withRound(r, round));
        }
        return chart;
    }

    private static Chart withoutFindings(Chart chart) {
        Verdict verdict = Checker.check(chart);
        List<Place> places = verdict.findings().stream()
                .map(finding -> finding.place().oneStitch().orElseThrow())
                .toList();
        return Edits.setStitches(chart, places, Stitch.BACK_LOOP);
    }
}
