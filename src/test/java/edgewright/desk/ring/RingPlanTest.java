package edgewright.desk.ring;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.Chart;
import edgewright.check.Checker;
import edgewright.draw.EnglishStyle;
import edgewright.draw.marks.Emphasis;
import edgewright.draw.paint.Area;
import edgewright.draw.picture.ChartPicture;
import edgewright.draw.picture.CornerPicture;
import edgewright.file.ChartFiles;
import edgewright.file.ReadResult;
import edgewright.testing.RandomCharts;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Findings on the chart of the desk, gathered into rings with one number each. */
class RingPlanTest {
    private static final double CELL_MM = 5;

    @Test
    void rings_and_numbers_never_lie_on_each_other_and_no_number_is_below_9_pixels() {
        RandomCharts charts = new RandomCharts(71);
        int numbered = 0;
        int lines = 0;
        for (int i = 0; i < 40; i++) {
            for (int cellPx : new int[] {4, 9, 18, 40}) {
                RingPlan plan = plan(charts.small(), cellPx);
                assertThat(plan.typeMm() * cellPx / CELL_MM).isGreaterThanOrEqualTo(9 - 1e-9);
                assertThat(overlaps(plan.rings()))
                        .as("chart %d at %d", i, cellPx)
                        .isEmpty();
                numbered += (int) plan.rings().stream()
                        .filter(ring -> ring.plate().isPresent())
                        .count();
                lines += (int) plan.rings().stream()
                        .filter(ring -> ring.leader().isPresent())
                        .count();
            }
        }
        assertThat(List.of(numbered > 500, lines > 20))
                .as("numbers, and lines out to them: %d, %d", numbered, lines)
                .containsExactly(true, true);
    }

    @Test
    void every_ring_of_the_unfinished_sample_has_its_number_where_squares_have_10_pixels() {
        Chart chart = ((ReadResult.Read)
                        ChartFiles.read(Path.of("sample-charts", "first-try-unfinished" + ChartFiles.ENDING)))
                .chart();
        List<Ring> rings = plan(chart, 10).rings();
        assertThat(rings).isNotEmpty().allMatch(ring -> ring.plate().isPresent());
    }

    @Test
    void findings_side_by_side_or_corner_to_corner_are_one_ring() {
        RandomCharts charts = new RandomCharts(72);
        for (int i = 0; i < 40; i++) {
            List<Ring> rings = plan(charts.small(), 18).rings();
            Set<Square> seen = new HashSet<>();
            for (Ring ring : rings) {
                Set<Square> around = new HashSet<>();
                ring.squares().forEach(square -> around.addAll(square.around()));
                assertThat(seen).as("chart %d", i).doesNotContainAnyElementsOf(around);
                seen.addAll(ring.squares());
            }
        }
    }

    private static RingPlan plan(Chart chart, int cellPx) {
        ChartPicture.InParts picture = CornerPicture.onScreen(
                chart, EnglishStyle.SCREEN.withCellMm(CELL_MM).withLabels(false), Emphasis.NONE);
        return RingPlan.of(
                picture.layout(),
                Emphasis.of(Checker.check(chart).findings()),
                cellPx / CELL_MM,
                new Area(0, 0, picture.widthMm(), picture.heightMm()).grown(8 * CELL_MM / cellPx));
    }

    /** What lies on something else: squares of rings, the plates of numbers, and points on the lines out to them. */
    private static List<String> overlaps(List<Ring> rings) {
        List<String> found = new ArrayList<>();
        for (int i = 0; i < rings.size(); i++) {
            Ring one = rings.get(i);
            for (int j = 0; j < rings.size(); j++) {
                Ring other = rings.get(j);
                one.plate().ifPresent(plate -> {
                    // A number may touch its own ring.
                    Area inner = plate.grown(-1e-3);
                    if (other.areas().stream()
                            .anyMatch(area -> area.grown(0.17 * CELL_MM).touches(inner))) {
                        found.add(one.number() + " on ring " + other.number());
                    }
                    if (!one.equals(other)
                            && other.plate().filter(inner::touches).isPresent()) {
                        found.add(one.number() + " on number " + other.number());
                    }
                    if (!one.equals(other)
                            && other.leader()
                                    .filter(line -> crosses(line, inner))
                                    .isPresent()) {
                        found.add("line of " + other.number() + " on number " + one.number());
                    }
                });
                if (!one.equals(other)
                        && other.leader()
                                .filter(line -> one.areas().stream().anyMatch(area -> crosses(line, area)))
                                .isPresent()) {
                    found.add("line of " + other.number() + " on ring " + one.number());
                }
            }
        }
        return found;
    }

    private static boolean crosses(List<Double> line, Area area) {
        return IntStream.rangeClosed(0, 200)
                .anyMatch(step -> area.holds(
                        line.get(0) + (line.get(2) - line.get(0)) * step / 200,
                        line.get(1) + (line.get(3) - line.get(1)) * step / 200));
    }
}
