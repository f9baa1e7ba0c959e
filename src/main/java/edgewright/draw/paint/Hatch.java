package edgewright.draw.paint;

import edgewright.chart.Chart;
import edgewright.chart.Yarn;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The tone of an area in which a yarn shows, where there is no colour and nothing lies on the area: few, coarse and far apart, so
 * that a printer or a photocopier neither fills them nor beats with them. A hatch lies on the paper, not on the stitch: it is the
 * same on every side, at every rotation and for either hand, and it goes on from cell to cell.
 *
 * <p>Hatches are made in tiles of one or more cells; the lines of a tile are a third of its edge apart or more.
 */
public enum Hatch {
    /** Nothing. */
    BLANK,
    /** Four dots, which are square. */
    DOTS(dot(0.25, 0.25), dot(0.75, 0.25), dot(0.25, 0.75), dot(0.75, 0.75)),
    /** Level lines. */
    LEVEL(level(0.25), level(0.75)),
    /** Upright lines. */
    UPRIGHT(upright(0.25), upright(0.75)),
    /** Lines that rise to the right. */
    RISING(rising(0.25), rising(0.75), rising(1.25), rising(1.75)),
    /** Lines that fall to the right. */
    FALLING(falling(-0.75), falling(-0.25), falling(0.25), falling(0.75)),
    /** Level and upright lines. */
    SQUARED(level(0.25), level(0.75), upright(0.25), upright(0.75)),
    /** Lines that rise and lines that fall. */
    CROSSED(
            rising(0.25),
            rising(0.75),
            rising(1.25),
            rising(1.75),
            falling(-0.75),
            falling(-0.25),
            falling(0.25),
            falling(0.75)),
    /** All black. */
    SOLID(new Spot(List.of(new Point(0, 0), new Point(1, 0), new Point(1, 1), new Point(0, 1))));

    /** Those that are easiest to tell apart come first. */
    private static final List<Hatch> CHOSEN =
            List.of(BLANK, SOLID, RISING, CROSSED, DOTS, FALLING, LEVEL, UPRIGHT, SQUARED);

    /** Black reaches so far beyond its cell that no light line shows between two black cells, in cells. */
    private static final double OVERLAP = 0.02;

    /** A point of a tile one wide, from the upper left. */
    private record Point(double x, double y) {}

    /** A convex patch of ink. */
    private record Spot(List<Point> corners) {
        /** What of it lies on one side of an upright or a level line; empty if hardly anything does. */
        Spot cut(boolean upright, double at, boolean keepLess) {
            List<Point> kept = new ArrayList<>();
            for (int i = 0; i < corners.size(); i++) {
                Point from = corners.get(i);
                Point to = corners.get((i + 1) % corners.size());
                double begin = (upright ? from.x : from.y) - at;
                double end = (upright ? to.x : to.y) - at;
                boolean in = keepLess ? begin <= 0 : begin >= 0;
                if (in) {
                    kept.add(from);
                }
                if (begin * end < 0) {
                    double part = begin / (begin - end);
                    kept.add(new Point(from.x + part * (to.x - from.x), from.y + part * (to.y - from.y)));
                }
            }
            return new Spot(kept.size() < 3 ? List.of() : kept);
        }

        Spot within(double left, double top, double right, double bottom) {
            return cut(true, left, false)
                    .cut(true, right, true)
                    .cut(false, top, false)
                    .cut(false, bottom, true);
        }
    }

    @SuppressWarnings("ImmutableEnumChecker") // made by List.of, of records of numbers
    private final List<Spot> spots;

    Hatch(Spot... spots) {
        this.spots = List.of(spots);
    }

    private static Spot dot(double x, double y) {
        double half = 0.1;
        return new Spot(List.of(
                new Point(x - half, y - half),
                new Point(x + half, y - half),
                new Point(x + half, y + half),
                new Point(x - half, y + half)));
    }

    private static Spot level(double y) {
        double half = 0.05;
        return new Spot(List.of(
                new Point(-1, y - half), new Point(2, y - half), new Point(2, y + half), new Point(-1, y + half)));
    }

    private static Spot upright(double x) {
        return new Spot(level(x).corners().stream()
                .map(point -> new Point(point.y, point.x))
                .toList());
    }

    /** The line on which x and y have this sum. */
    private static Spot rising(double sum) {
        double half = 0.05 * Math.sqrt(2);
        return new Spot(List.of(
                new Point(-1, sum + 1 - half),
                new Point(2, sum - 2 - half),
                new Point(2, sum - 2 + half),
                new Point(-1, sum + 1 + half)));
    }

    /** The line on which y is so much more than x. */
    private static Spot falling(double more) {
        return new Spot(rising(more + 1).corners().stream()
                .map(point -> new Point(1 - point.x, point.y))
                .toList());
    }

    /**
     * The hatch of each yarn that the chart works with, by id: the lightest yarn is blank, the darkest black, and those between are
     * hatched the heavier the darker they are. There are nine hatches; of more yarns some look alike.
     */
    public static Map<String, Hatch> of(Chart chart) {
        List<Yarn> used = YarnSign.fromLightToDark(chart);
        List<Hatch> hatches = new ArrayList<>(CHOSEN.subList(0, Math.min(used.size(), CHOSEN.size())));
        hatches.sort(null);
        Map<String, Hatch> byYarn = new HashMap<>();
        for (int i = 0; i < used.size(); i++) {
            byYarn.put(used.get(i).id(), hatches.get(i * hatches.size() / used.size()));
        }
        return byYarn;
    }

    /** A cell hatched in this way on white, as a tile of its own. */
    public List<Shape> in(Area cell) {
        return in(cell, 0, 0, 1);
    }

    /**
     * A cell hatched in this way on white.
     *
     * @param column of the cell, counted rightwards from anywhere
     * @param row of the cell, counted downwards from anywhere
     * @param tile how many cells a tile of the hatch is wide, 1 or more: the more, the coarser is the hatch
     */
    public List<Shape> in(Area cell, int column, int row, int tile) {
        Shape ground = new Shape.Fill(PenPath.rectangle(cell), Palette.BLACK.paper());
        double c = cell.widthMm();
        if (this == SOLID) {
            return List.of(new Shape.Fill(PenPath.rectangle(cell.grown(OVERLAP * c)), Palette.BLACK.ink()));
        }
        double left = Math.floorMod(column, tile);
        double top = Math.floorMod(row, tile);
        double reach = OVERLAP / tile;
        PenPath.Builder path = new PenPath.Builder();
        boolean any = false;
        for (Spot spot : spots) {
            List<Point> corners = spot.within(
                            left / tile - reach,
                            top / tile - reach,
                            (left + 1) / tile + reach,
                            (top + 1) / tile + reach)
                    .corners();
            for (int i = 0; i < corners.size(); i++) {
                double x = cell.xMm() + (corners.get(i).x * tile - left) * c;
                double y = cell.yMm() + (corners.get(i).y * tile - top) * c;
                path = i == 0 ? path.moveTo(x, y) : path.lineTo(x, y);
            }
            if (!corners.isEmpty()) {
                path.close();
                any = true;
            }
        }
        return any ? List.of(ground, new Shape.Fill(path.build(), Palette.BLACK.ink())) : List.of(ground);
    }
}
