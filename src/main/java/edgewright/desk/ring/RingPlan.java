package edgewright.desk.ring;

import edgewright.chart.GridCell;
import edgewright.chart.Place;
import edgewright.check.Severity;
import edgewright.draw.marks.Emphasis;
import edgewright.draw.paint.Area;
import edgewright.draw.paint.Palette;
import edgewright.draw.paint.Shape;
import edgewright.draw.picture.CellLayout;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * The rings of a drawn chart at one size, and where their numbers stand. No ring and no number lies on another, nor a number on
 * its ring; a number for which there is no room at all is left out, since it stands in the list too.
 */
public final class RingPlan {
    private final List<Ring> rings;
    private final double typeMm;

    private RingPlan(List<Ring> rings, double typeMm) {
        this.rings = rings;
        this.typeMm = typeMm;
    }

    /**
     * The plan of what is to be looked at.
     *
     * @param pxPerMm how large a millimetre of the sheet is on the screen; numbers are never smaller than 9 pixels
     * @param within where numbers may stand on the sheet
     */
    public static RingPlan of(CellLayout layout, Emphasis emphasis, double pxPerMm, Area within) {
        double typeMm = RingShapes.typeMm(layout.cellMm(), pxPerMm);
        return new RingPlan(new NumberRoom(within, typeMm).place(gathered(layout, emphasis)), typeMm);
    }

    /** In the order of their numbers. */
    public List<Ring> rings() {
        return rings;
    }

    /** The size of the numbers. */
    public double typeMm() {
        return typeMm;
    }

    /** What of the rings is painted in an area. */
    public Stream<Shape> shapesIn(Area area, Palette palette) {
        return rings.stream()
                .filter(ring -> ring.bounds().touches(area))
                .flatMap(ring -> RingShapes.of(ring, typeMm, palette).stream());
    }

    /** Where rings are painted otherwise than in an earlier plan of squares that lie in the same way. */
    public List<Area> damageSince(RingPlan before) {
        Set<Ring> now = new HashSet<>(rings);
        Set<Ring> then = new HashSet<>(before.rings);
        return Stream.concat(
                        rings.stream().filter(ring -> !then.contains(ring)),
                        before.rings.stream().filter(ring -> !now.contains(ring)))
                .map(Ring::bounds)
                .toList();
    }

    private static List<Ring> gathered(CellLayout layout, Emphasis emphasis) {
        Map<Square, List<Emphasis.Flag>> flagged = new LinkedHashMap<>();
        Map<Square, Area> areas = new LinkedHashMap<>();
        for (Map.Entry<Place, List<Emphasis.Flag>> each : emphasis.byStitch().entrySet()) {
            for (GridCell cell : layout.cellsOf(each.getKey())) {
                Square square = new Square(layout.columnOf(cell), layout.rowOf(cell));
                flagged.put(square, each.getValue());
                areas.put(square, layout.areaOf(cell));
            }
        }
        List<Ring> rings = new ArrayList<>();
        Set<Square> gathered = new HashSet<>();
        flagged.keySet().stream()
                .sorted(Comparator.<Square>comparingInt(
                                square -> flagged.get(square).get(0).number())
                        .thenComparingInt(Square::row)
                        .thenComparingInt(Square::column))
                .filter(square -> !gathered.contains(square))
                .forEach(square -> {
                    Set<Square> group = from(square, flagged.keySet());
                    gathered.addAll(group);
                    rings.add(ring(group, flagged, areas));
                });
        return rings;
    }

    /** The squares that hang together with one. */
    private static Set<Square> from(Square first, Set<Square> all) {
        Set<Square> group = new LinkedHashSet<>(Set.of(first));
        Deque<Square> open = new ArrayDeque<>(group);
        while (!open.isEmpty()) {
            for (Square next : open.remove().around()) {
                if (all.contains(next) && group.add(next)) {
                    open.add(next);
                }
            }
        }
        return group;
    }

    private static Ring ring(Set<Square> group, Map<Square, List<Emphasis.Flag>> flagged, Map<Square, Area> areas) {
        List<Emphasis.Flag> flags = group.stream()
                .flatMap(square -> flagged.get(square).stream())
                .distinct()
                .sorted(Comparator.comparingInt(Emphasis.Flag::number))
                .toList();
        boolean isError = flags.stream().anyMatch(flag -> flag.severity() == Severity.ERROR);
        return Ring.bare(group, group.stream().map(areas::get).toList(), number(flags), isError);
    }

    /** The number; of two both, of more in a row the first and the last, of any other the first and how many more. */
    private static String number(List<Emphasis.Flag> flags) {
        int first = flags.get(0).number();
        int last = flags.get(flags.size() - 1).number();
        if (flags.size() == 1) {
            return Integer.toString(first);
        }
        if (flags.size() > 2 && last - first == flags.size() - 1) {
            return first + "\u2013" + last;
        }
        return flags.size() == 2 ? first + "," + last : first + "+" + (flags.size() - 1);
    }
}
