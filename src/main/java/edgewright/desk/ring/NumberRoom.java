package edgewright.desk.ring;

import edgewright.draw.paint.Area;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Finds room for numbers, one ring after the other: at a corner of the ring, or else further away with a line out to it, where
 * neither lies on another ring, number or line.
 */
final class NumberRoom {
    private static final int WAYS = 16;
    private static final int STEPS = 14;
    /** With more rings than that the chart is full of them, and to look further for room would take too long. */
    private static final int MOST_WITH_LINES = 400;

    /** What is taken, by parts of the sheet, so that few are looked at. */
    private final Map<List<Integer>, List<Area>> taken = new HashMap<>();

    private final Area within;
    private final double typeMm;
    private final double partMm;

    NumberRoom(Area within, double typeMm) {
        this.within = within;
        this.typeMm = typeMm;
        partMm = 6 * typeMm;
    }

    /** The rings with their numbers, as far as there is room. */
    List<Ring> place(List<Ring> rings) {
        for (Ring ring : rings) {
            ring.areas().forEach(area -> take(area.grown(RingShapes.REACH * area.widthMm() - 1e-6)));
        }
        List<Ring> placed = new ArrayList<>();
        for (Ring ring : rings) {
            Optional<Ring> near = near(ring);
            placed.add(near.or(() -> rings.size() > MOST_WITH_LINES ? Optional.empty() : further(ring))
                    .orElse(ring));
        }
        return placed;
    }

    /** At the upper right, if there is room; else at the upper left, the lower right or the lower left. */
    private Optional<Ring> near(Ring ring) {
        Area size = RingShapes.plate(ring.number(), typeMm);
        for (int down = -1; down <= 1; down += 2) {
            for (int right = 1; right >= -1; right -= 2) {
                Area corner = outermost(ring, right, down);
                double out = RingShapes.REACH * corner.widthMm();
                double x = (right > 0 ? corner.rightMm() + out : corner.xMm() - out) + right * size.widthMm() / 2;
                double y = (down > 0 ? corner.bottomMm() + out : corner.yMm() - out) + down * size.heightMm() / 2;
                Area plate = size.moved(x, y);
                if (isFree(plate)) {
                    take(plate);
                    return Optional.of(ring.withPlate(plate));
                }
            }
        }
        return Optional.empty();
    }

    private static Area outermost(Ring ring, int right, int down) {
        Area best = ring.areas().get(0);
        for (Area area : ring.areas()) {
            double lower = down * (area.yMm() - best.yMm());
            if (lower > 1e-6 || (lower > -1e-6 && right * (area.xMm() - best.xMm()) > 0)) {
                best = area;
            }
        }
        return best;
    }

    private Optional<Ring> further(Ring ring) {
        Area size = RingShapes.plate(ring.number(), typeMm);
        Area from = outermost(ring, 1, -1);
        double edge = (0.5 + RingShapes.REACH) * from.widthMm();
        for (int step = 1; step <= STEPS; step++) {
            for (int way = 0; way < WAYS; way++) {
                double angle = Math.PI * (2 * way + 1) / WAYS;
                double far = edge + size.widthMm() / 2 + step * typeMm;
                double x = from.middleXMm() + Math.sin(angle) * far;
                double y = from.middleYMm() - Math.cos(angle) * far;
                // A line that starts at the corner of a square leaves the ring later than one that starts at its side.
                double out = edge / Math.max(Math.abs(Math.sin(angle)), Math.abs(Math.cos(angle)));
                double startX = from.middleXMm() + Math.sin(angle) * out;
                double startY = from.middleYMm() - Math.cos(angle) * out;
                Area plate = size.moved(x, y);
                List<Area> line = line(startX, startY, x, y, plate);
                if (isFree(plate) && line.stream().allMatch(this::isFree)) {
                    take(plate);
                    line.forEach(this::take);
                    return Optional.of(ring.withPlate(plate, List.of(startX, startY, x, y)));
                }
            }
        }
        return Optional.empty();
    }

    /** What a line takes up outside the plate, dot by dot. */
    private List<Area> line(double x1, double y1, double x2, double y2, Area plate) {
        List<Area> dots = new ArrayList<>();
        double dot = 0.3 * typeMm;
        int count = (int) Math.ceil(Math.hypot(x2 - x1, y2 - y1) / dot);
        for (int i = 1; i < count; i++) {
            double x = x1 + (x2 - x1) * i / count;
            double y = y1 + (y2 - y1) * i / count;
            Area at = new Area(x - dot / 4, y - dot / 4, dot / 2, dot / 2);
            if (!plate.touches(at)) {
                dots.add(at);
            }
        }
        return dots;
    }

    private boolean isFree(Area area) {
        return within.holds(area)
                && parts(area).stream()
                        .flatMap(part -> taken.getOrDefault(part, List.of()).stream())
                        .noneMatch(area::touches);
    }

    private void take(Area area) {
        parts(area)
                .forEach(part ->
                        taken.computeIfAbsent(part, each -> new ArrayList<>()).add(area));
    }

    private List<List<Integer>> parts(Area area) {
        List<List<Integer>> parts = new ArrayList<>();
        for (int x = part(area.xMm()); x <= part(area.rightMm()); x++) {
            for (int y = part(area.yMm()); y <= part(area.bottomMm()); y++) {
                parts.add(List.of(x, y));
            }
        }
        return parts;
    }

    private int part(double mm) {
        return (int) Math.floor(mm / partMm);
    }
}
