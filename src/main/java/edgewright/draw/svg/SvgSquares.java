package edgewright.draw.svg;

import edgewright.draw.paint.Area;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Filled squares of one colour as one path: those that stand side by side or above one another in a run are one rectangle.
 * They do not overlap.
 */
final class SvgSquares {
    /** As far as two edges that touch can come apart by rounding. */
    private static final long ROUNDING = 1;

    /** Lengths in micrometres. */
    private record Square(long x, long y, long width, long height) {
        static Square of(Area area) {
            long x = SvgNumbers.micrometres(area.xMm());
            long y = SvgNumbers.micrometres(area.yMm());
            return new Square(
                    x, y, SvgNumbers.micrometres(area.rightMm()) - x, SvgNumbers.micrometres(area.bottomMm()) - y);
        }

        boolean continuesToTheRight(Square left) {
            return y == left.y && height == left.height && Math.abs(left.x + left.width - x) <= ROUNDING;
        }

        boolean continuesDown(Square above) {
            return x == above.x && width == above.width && Math.abs(above.y + above.height - y) <= ROUNDING;
        }

        SvgPart part() {
            String right = SvgNumbers.of(width);
            String back = SvgNumbers.of(-width);
            return new SvgPart(x, y, "h" + right + "v" + SvgNumbers.of(height) + "h" + back + "z", 0, 0);
        }
    }

    private SvgSquares() {}

    /** The parts of the path, in reading order across, then those of the columns. Each square lies in the longer of its runs. */
    static List<SvgPart> parts(List<Area> areas) {
        List<Square> squares = areas.stream().map(Square::of).toList();
        Map<Square, Integer> across = new HashMap<>();
        rows(squares).forEach(run -> run.forEach(square -> across.put(square, run.size())));
        Set<Square> upright = new HashSet<>();
        for (List<Square> run : columns(squares)) {
            run.stream().filter(square -> run.size() > across.get(square)).forEach(upright::add);
        }
        List<List<Square>> runs = new ArrayList<>(rows(
                squares.stream().filter(square -> !upright.contains(square)).toList()));
        runs.addAll(columns(squares.stream().filter(upright::contains).toList()));
        return runs.stream().map(SvgSquares::outline).toList();
    }

    private static SvgPart outline(List<Square> run) {
        Square first = run.get(0);
        Square last = run.get(run.size() - 1);
        return new Square(first.x, first.y, last.x + last.width - first.x, last.y + last.height - first.y).part();
    }

    private static List<List<Square>> rows(List<Square> squares) {
        Comparator<Square> order = Comparator.comparingLong(Square::y).thenComparingLong(Square::x);
        return runs(squares.stream().sorted(order).toList(), (one, next) -> next.continuesToTheRight(one));
    }

    private static List<List<Square>> columns(List<Square> squares) {
        Comparator<Square> order = Comparator.comparingLong(Square::x).thenComparingLong(Square::y);
        return runs(squares.stream().sorted(order).toList(), (one, next) -> next.continuesDown(one));
    }

    /** Whether a square goes on where the one before it ends. */
    private interface GoesOn {
        boolean from(Square one, Square next);
    }

    private static List<List<Square>> runs(List<Square> sorted, GoesOn goesOn) {
        List<List<Square>> runs = new ArrayList<>();
        Square before = null;
        for (Square square : sorted) {
            if (before == null || !goesOn.from(before, square)) {
                runs.add(new ArrayList<>());
            }
            runs.get(runs.size() - 1).add(square);
            before = square;
        }
        return runs;
    }
}
