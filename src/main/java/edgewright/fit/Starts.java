package edgewright.fit;

import edgewright.chart.Chart;
import edgewright.chart.PerSide;
import edgewright.chart.Side;
import edgewright.chart.SidePlace;
import edgewright.chart.SideShape;
import edgewright.chart.Start;
import edgewright.chart.Stitches;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Finds the stitches in which the rounds of a chart are started.
 *
 * <p>The starts keep to one fabric column, so that the joins lie above each other. A start is then one stitch further from
 * the corner in every round, counting the stitch in the corner chain as the first. Where that stitch is long, the start moves
 * on to the next one that is not; over a chain there is nothing to join in, so it moves on there too. Source: common
 * practice, no source; of the chain, our own.
 *
 * <p>A chart with ragged sections is refused with an {@link IllegalArgumentException}.
 */
public final class Starts {
    /** So many repeats show everything that a side of any size can show near its first repeat. */
    private static final int MANY_REPEATS = 3;

    private Starts() {}

    /**
     * The column from which starts move on by the fewest stitches, all rounds taken together; of several the one nearest to the
     * middle of the first repeat, and of two as near the first. It lies in the first repeat, so that a round's words can begin
     * with the rest of a repeat.
     */
    public static int bestColumn(Chart chart) {
        SideShape shape = whole(chart);
        List<Stitches> sides = sides(chart, MANY_REPEATS);
        return IntStream.rangeClosed(shape.a() + 1, shape.a() + shape.w())
                .boxed()
                .min(Comparator.comparingInt((Integer column) -> moves(sides, column, shape.w()))
                        .thenComparingInt(column -> Math.abs(2 * (column - shape.a()) - shape.w() - 1)))
                .orElseThrow();
    }

    /**
     * The starts of all rounds, on sides with enough repeats for a start that moves on past the end of the first one.
     *
     * @throws IllegalArgumentException if the plan's column lies past the first repeat
     */
    public static List<RoundStart> of(Chart chart, Start plan) {
        return of(chart, plan, PerSide.all(MANY_REPEATS));
    }

    /**
     * The starts of all rounds on a piece with so many repeats a side. On a side too short for the column they are at the
     * last stitch of the base round or the column over it.
     *
     * @throws IllegalArgumentException if the plan's column lies past the first repeat
     */
    public static List<RoundStart> of(Chart chart, Start plan, PerSide<Integer> repeats) {
        whole(chart);
        int column = plan.column().orElseGet(() -> bestColumn(chart));
        if (column > chart.border().lastStart()) {
            throw new IllegalArgumentException("start column " + column + ": expected 1 to "
                    + chart.border().lastStart());
        }
        return IntStream.rangeClosed(1, chart.rounds().size())
                .mapToObj(round -> start(chart, column, round, plan, repeats))
                .toList();
    }

    private static RoundStart start(Chart chart, int column, int round, Start sides, PerSide<Integer> repeats) {
        Side on = sides.of(round);
        SideShape shape = chart.shape(on);
        int m = repeats.get(on);
        int inColumn = Math.min(column, shape.stitches(0, m)) + round;
        Stitches side = chart.round(round).side(on, m);
        int moves = movesOn(side, inColumn, shape.w());
        boolean free = moves >= 0;
        SidePlace stitch = new SidePlace(round, inColumn + Math.max(0, moves));
        return new RoundStart(round, on, stitch, shape.placeOf(stitch, m), Math.max(0, moves), free);
    }

    private static int moves(List<Stitches> sides, int column, int repeat) {
        int moves = 0;
        for (int i = 0; i < sides.size(); i++) {
            int on = movesOn(sides.get(i), column + i + 1, repeat);
            moves += on < 0 ? repeat : on;
        }
        return moves;
    }

    /** How far on the next free stitch is, no more than so many; -1 if there is none. */
    private static int movesOn(Stitches side, int stitch, int most) {
        return IntStream.rangeClosed(0, Math.min(most, side.length() - stitch))
                .filter(moves -> isFree(side, stitch + moves))
                .findFirst()
                .orElse(-1);
    }

    private static boolean isFree(Stitches side, int stitch) {
        return side.at(stitch).standsInStitchBelow();
    }

    private static List<Stitches> sides(Chart chart, int repeats) {
        return chart.rounds().stream()
                .map(round -> round.side(Side.FIRST, repeats))
                .toList();
    }

    private static SideShape whole(Chart chart) {
        if (!chart.raggedSections().isEmpty()) {
            throw new IllegalArgumentException("the chart has sections of the wrong length");
        }
        return chart.shape();
    }
}
