package edgewright.desk.picture;

import edgewright.chart.BorderGrid;
import edgewright.chart.GridCell;
import edgewright.chart.GridContent.SideStitch;
import edgewright.chart.Place;
import edgewright.chart.Section;
import edgewright.chart.Side;
import edgewright.chart.SidePlace;
import edgewright.draw.picture.CellLayout;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.IntStream;

/**
 * What is to be read beside the rows of a chart, or over its columns: the rounds that lie there level, and of the sides that
 * cross them the stitches of one round, counted from a drawn corner.
 *
 * @param rounds the round of each row or column that is one; the base round is 0
 * @param stitches the number of the stitch in each other row or column: from the corner just turned where that is drawn, before
 *     the next corner back from it
 * @param repeats where the repeat is drawn: its first row or column in working order, and its last one
 */
public record RulerPlan(
        SortedMap<Integer, Integer> rounds, SortedMap<Integer, Integer> stitches, Map<Integer, Integer> repeats) {
    /**
     * The plan of a layout.
     *
     * @param down whether of its rows, and not of its columns
     * @param counted the round whose stitches are counted
     */
    public static RulerPlan of(CellLayout layout, boolean down, int counted) {
        SortedMap<Integer, Integer> rounds = new TreeMap<>();
        SortedMap<Integer, Integer> stitches = new TreeMap<>();
        SortedMap<Integer, Integer> repeats = new TreeMap<>();
        for (Side side : Side.values()) {
            Optional<GridCell> any = anyCell(layout, side);
            if (any.isEmpty()) {
                continue;
            }
            boolean level = isLevel(layout, side);
            if (level == down) {
                for (int round = 0; round <= layout.rounds(); round++) {
                    rounds.put(at(layout, layout.grid().cellOf(side, new SidePlace(round, 1)), down), round);
                }
            } else {
                addStitches(layout, side, down, counted, stitches);
                addRepeats(layout, side, down, repeats);
            }
        }
        // In the corner lie rounds of one arm over stitches of the other; the rounds are read there.
        stitches.keySet().removeAll(rounds.keySet());
        return new RulerPlan(rounds, stitches, repeats);
    }

    private static int at(CellLayout layout, GridCell cell, boolean down) {
        return down ? layout.rowOf(cell) : layout.columnOf(cell);
    }

    private static Optional<GridCell> anyCell(CellLayout layout, Side side) {
        int stitches = stitches(layout.grid(), side, layout.rounds());
        return IntStream.of(1, stitches)
                .mapToObj(stitch -> layout.grid().cellOf(side, new SidePlace(layout.rounds(), stitch)))
                .filter(cell -> layout.contentOf(cell).isPresent())
                .findFirst();
    }

    private static boolean isLevel(CellLayout layout, Side side) {
        return layout.rowOf(layout.grid().cellOf(side, new SidePlace(1, 1)))
                == layout.rowOf(layout.grid().cellOf(side, new SidePlace(1, 2)));
    }

    private static int stitches(BorderGrid grid, Side side, int round) {
        return grid.border().on(side).stitches(round, grid.repeats().get(side));
    }

    private static void addStitches(
            CellLayout layout, Side side, boolean down, int round, Map<Integer, Integer> stitches) {
        int all = stitches(layout.grid(), side, round);
        boolean fromStart = layout.contentOf(layout.grid().cornerCell(side.previous(), round))
                .isPresent();
        boolean toEnd = layout.contentOf(layout.grid().cornerCell(side, round)).isPresent();
        int back = layout.grid().border().on(side).length(Section.TO_CORNER, round);
        for (int stitch = 1; stitch <= all; stitch++) {
            GridCell cell = layout.grid().cellOf(side, new SidePlace(round, stitch));
            if (layout.contentOf(cell).isPresent()) {
                boolean isBack = toEnd && (!fromStart || stitch > all - back);
                stitches.put(at(layout, cell, down), isBack ? all + 1 - stitch : stitch);
            }
        }
    }

    private static void addRepeats(CellLayout layout, Side side, boolean down, Map<Integer, Integer> repeats) {
        int w = layout.grid().border().on(side).w();
        for (int times = 1; times <= layout.grid().repeats().get(side); times++) {
            GridCell first = layout.cellOf(side, new Place(layout.rounds(), Section.REPEAT, 1), times);
            GridCell last = layout.cellOf(side, new Place(layout.rounds(), Section.REPEAT, w), times);
            repeats.put(at(layout, first, down), at(layout, last, down));
        }
    }

    /** The row or column in which a cell is met; the ruler points there. */
    public static int of(CellLayout layout, GridCell cell, boolean down) {
        return at(layout, cell, down);
    }

    /** The round of a cell. */
    public static int roundOf(CellLayout layout, GridCell cell) {
        return layout.grid().contentOf(cell) instanceof SideStitch stitch
                ? stitch.place().round()
                : 1;
    }

    /**
     * Every how many numbers one is written: 1, 2 or 5 or ten times as many, so that none comes too near to the next.
     *
     * @param cellPx from number to number
     * @param labelPx what a number needs
     */
    public static int step(double cellPx, double labelPx) {
        for (int ten = 1; ; ten *= 10) {
            for (int step : new int[] {ten, 2 * ten, 5 * ten}) {
                if (step * cellPx >= labelPx) {
                    return step;
                }
            }
        }
    }
}
