package edgewright.cli;

import edgewright.chart.Chart;
import edgewright.chart.PerSide;
import edgewright.check.Checker;
import edgewright.check.Verdict;
import java.util.Optional;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Option;

/** The size of the piece: stitches in the base round, or how often the repeat is worked, or nothing for every size. */
final class SizeOption {
    @ArgGroup(exclusive = true)
    private Size size;

    /** Either of the two ways to state it. */
    static final class Size {
        @Option(names = "--sides", paramLabel = "N,N,N,N", converter = PerSideConverter.class)
        private PerSide sides;

        @Option(names = "--repeats", paramLabel = "N,N,N,N", converter = PerSideConverter.class)
        private PerSide repeats;
    }

    /** Judges the chart for this size. */
    Verdict check(Chart chart) {
        return baseStitches(chart).map(sides -> Checker.check(chart, sides)).orElseGet(() -> Checker.check(chart));
    }

    /** How often the repeat is worked on each side; empty for every size, and for sides that do not all close. */
    Optional<PerSide> repeats(Chart chart) {
        return baseStitches(chart)
                .filter(sides ->
                        sides.stream().allMatch(stitches -> chart.shape().closes(0, stitches)))
                .map(sides ->
                        sides.map(stitches -> chart.shape().repeats(0, stitches).orElseThrow()));
    }

    /** The stitches of each side as they were stated; empty if they were not, or in repeats. */
    Optional<PerSide> sides() {
        return Optional.ofNullable(size).map(stated -> stated.sides);
    }

    private Optional<PerSide> baseStitches(Chart chart) {
        if (size == null) {
            return Optional.empty();
        }
        return Optional.of(
                size.sides != null
                        ? size.sides
                        : size.repeats.map(m -> chart.shape().stitches(0, m)));
    }
}
