package edgewright.cli;

import edgewright.chart.Chart;
import edgewright.chart.PerSide;
import edgewright.check.Checker;
import edgewright.check.Verdict;
import edgewright.fit.PatternSize;
import java.util.Optional;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Option;

/** The size of the piece: stitches in the base round, or how often the repeat is worked, or nothing for every size. */
final class SizeOption {
    @ArgGroup(exclusive = true)
    private Size size = new Size();

    /** Either of the two ways to state it, or neither. */
    static class Size {
        @Option(names = "--sides", paramLabel = "N,N,N,N", converter = PerSideConverter.class)
        private PerSide<Integer> sides;

        @Option(names = "--repeats", paramLabel = "N,N,N,N", converter = PerSideConverter.class)
        private PerSide<Integer> repeats;

        /** Whether a size was stated. */
        boolean isStated() {
            return sides != null || repeats != null;
        }

        /** The stitches of each side as they were stated; null if they were not, or in repeats. */
        PerSide<Integer> sides() {
            return sides;
        }

        /** The stitches of each side of the base round; empty for every size. */
        Optional<PerSide<Integer>> baseStitches(Chart chart) {
            if (sides == null && repeats == null) {
                return Optional.empty();
            }
            return Optional.of(sides != null ? sides : chart.border().stitches(0, repeats));
        }

        /** Judges the chart for this size. */
        Verdict check(Chart chart) {
            return baseStitches(chart).map(base -> Checker.check(chart, base)).orElseGet(() -> Checker.check(chart));
        }

        /** How often the repeat is worked on each side; empty for every size, and for sides that do not all close. */
        Optional<PerSide<Integer>> repeats(Chart chart) {
            return baseStitches(chart).flatMap(base -> chart.border().repeats(0, base));
        }
    }

    /** Judges the chart for this size. */
    Verdict check(Chart chart) {
        return size.check(chart);
    }

    /** The size that was stated; any for sides that do not all close. */
    PatternSize size(Chart chart) {
        return PatternSize.of(size.repeats(chart));
    }
}
