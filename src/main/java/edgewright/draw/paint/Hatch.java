package edgewright.draw.paint;

import edgewright.chart.Chart;
import edgewright.chart.Colour;
import edgewright.chart.Yarn;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * How the cells of a yarn are hatched where there is no colour: lines and dots that a photocopier keeps, and that go on from
 * cell to cell. A hatch lies on the paper, not on the stitch: it is the same on every side, at every rotation and for either hand,
 * since it stands for a yarn as a letter does.
 */
public enum Hatch {
    /** Nothing. */
    BLANK,
    /** Four dots. */
    DOTS(
            new Stroke(0.25, 0.25, 0.251, 0.25),
            new Stroke(0.75, 0.25, 0.751, 0.25),
            new Stroke(0.25, 0.75, 0.251, 0.75),
            new Stroke(0.75, 0.75, 0.751, 0.75)),
    /** Lines that rise to the right. */
    RISING(
            new Stroke(0, 0.25, 0.25, 0),
            new Stroke(0, 0.75, 0.75, 0),
            new Stroke(0.25, 1, 1, 0.25),
            new Stroke(0.75, 1, 1, 0.75)),
    /** Lines that fall to the right. */
    FALLING(
            new Stroke(0, 0.75, 0.25, 1),
            new Stroke(0, 0.25, 0.75, 1),
            new Stroke(0.25, 0, 1, 0.75),
            new Stroke(0.75, 0, 1, 0.25)),
    /** Level lines. */
    LEVEL(new Stroke(0, 0.2, 1, 0.2), new Stroke(0, 0.5, 1, 0.5), new Stroke(0, 0.8, 1, 0.8)),
    /** Upright lines. */
    UPRIGHT(new Stroke(0.2, 0, 0.2, 1), new Stroke(0.5, 0, 0.5, 1), new Stroke(0.8, 0, 0.8, 1)),
    /** Lines that rise and lines that fall. */
    CROSSED(
            new Stroke(0, 0.25, 0.25, 0),
            new Stroke(0, 0.75, 0.75, 0),
            new Stroke(0.25, 1, 1, 0.25),
            new Stroke(0.75, 1, 1, 0.75),
            new Stroke(0, 0.75, 0.25, 1),
            new Stroke(0, 0.25, 0.75, 1),
            new Stroke(0.25, 0, 1, 0.75),
            new Stroke(0.75, 0, 1, 0.25)),
    /** Level and upright lines. */
    SQUARED(
            new Stroke(0, 0.2, 1, 0.2),
            new Stroke(0, 0.5, 1, 0.5),
            new Stroke(0, 0.8, 1, 0.8),
            new Stroke(0.2, 0, 0.2, 1),
            new Stroke(0.5, 0, 0.5, 1),
            new Stroke(0.8, 0, 0.8, 1));

    /** Those that are easiest to tell apart come first. */
    private static final List<Hatch> CHOSEN = List.of(BLANK, RISING, CROSSED, DOTS, FALLING, LEVEL, SQUARED, UPRIGHT);

    private static final double LINE = 0.05;
    private static final double DOT = 0.17;

    /** A straight line in a cell one wide, from the upper left. */
    private record Stroke(double x1, double y1, double x2, double y2) {}

    @SuppressWarnings("ImmutableEnumChecker") // made by List.of, of records of numbers
    private final List<Stroke> strokes;

    Hatch(Stroke... strokes) {
        this.strokes = List.of(strokes);
    }

    /**
     * The hatch of each yarn that the chart works with, by id: the lightest yarn the lightest hatch, and so on. There are eight
     * hatches; of more yarns some look alike, and their letters tell them apart.
     */
    public static Map<String, Hatch> of(Chart chart) {
        List<Yarn> used = chart.yarns().stream()
                .filter(yarn ->
                        chart.rounds().stream().anyMatch(round -> round.yarn().equals(yarn.id())))
                .sorted(Comparator.comparingDouble((Yarn yarn) -> yarn.colour().luminance())
                        .reversed())
                .toList();
        List<Hatch> hatches = new ArrayList<>(CHOSEN.subList(0, Math.min(used.size(), CHOSEN.size())));
        hatches.sort(Comparator.naturalOrder());
        Map<String, Hatch> byYarn = new HashMap<>();
        for (int i = 0; i < used.size(); i++) {
            byYarn.put(used.get(i).id(), hatches.get(i % hatches.size()));
        }
        return byYarn;
    }

    /** A cell hatched in this way on white. */
    public List<Shape> in(Area cell) {
        Colour ink = Palette.BLACK.ink();
        Shape ground = new Shape.Fill(PenPath.rectangle(cell), Palette.BLACK.paper());
        if (strokes.isEmpty()) {
            return List.of(ground);
        }
        PenPath.Builder path = new PenPath.Builder();
        double c = cell.widthMm();
        for (Stroke stroke : strokes) {
            path.moveTo(cell.xMm() + stroke.x1 * c, cell.yMm() + stroke.y1 * c)
                    .lineTo(cell.xMm() + stroke.x2 * c, cell.yMm() + stroke.y2 * c);
        }
        Shape hatching = this == DOTS
                ? new Shape.Line(path.build(), DOT * c, ink)
                : new Shape.Line(path.build(), LINE * c, ink, Shape.Ends.CUT, List.of());
        return List.of(ground, hatching);
    }
}
