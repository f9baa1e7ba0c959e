package edgewright.testing;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.Chart;
import edgewright.chart.Place;
import edgewright.chart.Round;
import edgewright.chart.Stitch;
import edgewright.check.Finding;
import edgewright.check.FindingPlace;
import edgewright.check.Sketch;
import edgewright.check.Verdict;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * Charts in tests, written down as {@link Sketch} says, with everything that is to be found marked in its place:
 *
 * <pre>
 * assertFound("""
 *         3 A bbl|bb|bbb
 *               ^ covered-loop
 *         2 B  bl|bb|bb
 *         1 A   b|bb|b
 *         """);
 * </pre>
 *
 * <p>Stitches with the same findings share a line of marks; a stitch that breaks two rules is marked with both names, the first
 * as in the list of findings. What is about a round or a section stands under it ({@code ! low-contrast}, {@code ! toCorner
 * ragged-section}), what is about a side above all rounds ({@code ! TOP unclosed-side}).
 */
public final class Sketches {
    private Sketches() {}

    /** The sketched chart; marks are left out. */
    public static Chart chart(String sketch) {
        return Sketch.read(sketch).chart();
    }

    /** Checks the sketched chart: it must have the findings that are marked and no others. */
    public static void assertFound(String sketch) {
        assertThat(marked(Sketch.read(sketch).verdict())).isEqualTo(roundsAndMarks(sketch));
    }

    /** A chart in the notation of sketches, the rounds alone, with all findings marked. */
    public static String marked(Verdict verdict) {
        List<String> lines = new ArrayList<>();
        for (Finding finding : verdict.findings()) {
            if (finding.place() instanceof FindingPlace.OfSide of) {
                lines.add("! " + of.side() + " " + finding.rule());
            }
        }
        Layout layout = new Layout(verdict.chart());
        for (int round = verdict.chart().rounds().size(); round >= 1; round--) {
            lines.add(layout.line(round));
            lines.addAll(layout.marks(round, verdict.findings()));
        }
        return String.join("\n", lines) + "\n";
    }

    /** A chart in the notation of sketches, the rounds alone. */
    public static String rounds(Chart chart) {
        Layout layout = new Layout(chart);
        StringBuilder text = new StringBuilder();
        for (int round = chart.rounds().size(); round >= 1; round--) {
            text.append(layout.line(round)).append('\n');
        }
        return text.toString();
    }

    private static String roundsAndMarks(String sketch) {
        return sketch.lines()
                .filter(line -> line.matches(" *\\d+ +\\w+ +[" + Stitch.LETTERS + "]*\\|.*| *[!^].*"))
                .map(line -> line + "\n")
                .collect(Collectors.joining());
    }

    /** How a chart is laid out: fabric columns stand under each other. */
    private static final class Layout {
        private final Chart chart;
        private final int numberWidth;
        private final int yarnWidth;
        private final int fromWidth;

        Layout(Chart chart) {
            this.chart = chart;
            numberWidth = String.valueOf(chart.rounds().size()).length();
            yarnWidth = chart.rounds().stream()
                    .mapToInt(round -> round.yarn().length())
                    .max()
                    .orElseThrow();
            fromWidth = chart.rounds().stream()
                    .mapToInt(round -> round.fromCorner().length())
                    .max()
                    .orElseThrow();
        }

        String line(int number) {
            Round round = chart.round(number);
            return String.format(
                    "%" + numberWidth + "d %-" + yarnWidth + "s %" + fromWidth + "s|%s|%s",
                    number,
                    round.yarn(),
                    round.fromCorner(),
                    round.repeat(),
                    round.toCorner());
        }

        /** The lines of marks under a round. */
        List<String> marks(int round, List<Finding> findings) {
            List<String> lines = new ArrayList<>();
            Map<Place, List<String>> rulesAt = new TreeMap<>();
            for (Finding finding : findings) {
                if (finding.place().inRound().orElse(0) == round) {
                    finding.place()
                            .oneStitch()
                            .ifPresentOrElse(
                                    stitch -> rulesAt.computeIfAbsent(stitch, any -> new ArrayList<>())
                                            .add(finding.rule()),
                                    () -> lines.add("! " + section(finding.place()) + finding.rule()));
                }
            }
            Map<String, Set<Integer>> columns = new LinkedHashMap<>();
            rulesAt.forEach((place, rules) -> columns.computeIfAbsent(String.join(", ", rules), any -> new TreeSet<>())
                    .add(column(place)));
            columns.forEach((rules, at) -> lines.add(carets(at) + " " + rules));
            return lines;
        }

        private static String section(FindingPlace place) {
            return place instanceof FindingPlace.OfSection of ? of.section().member() + " " : "";
        }

        private int column(Place place) {
            Round round = chart.round(place.round());
            int start = numberWidth
                    + 1
                    + yarnWidth
                    + 1
                    + fromWidth
                    - round.fromCorner().length();
            int before = switch (place.section()) {
                case FROM_CORNER -> 0;
                case REPEAT -> round.fromCorner().length() + 1;
                case TO_CORNER ->
                    round.fromCorner().length() + 1 + round.repeat().length() + 1;
            };
            return start + before + place.place() - 1;
        }

        private static String carets(Set<Integer> columns) {
            StringBuilder line = new StringBuilder();
            for (int column : columns) {
                line.append(" ".repeat(column - line.length())).append('^');
            }
            return line.toString();
        }
    }
}
