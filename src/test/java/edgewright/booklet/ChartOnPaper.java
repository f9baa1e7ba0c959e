package edgewright.booklet;

import edgewright.booklet.PaintedPage.Lettered;
import edgewright.booklet.PaintedPage.Painted;
import edgewright.booklet.PaintedPage.Part;
import edgewright.booklet.PaintedPage.Path;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * A chart as a person with a ruler reads it off a printed sheet: the squared paper first, then what lies in each square, then
 * the number and the yarn's letter at the end of each round. Signs are known by their geometry alone, as the legend shows
 * them; nothing here is shared with what draws.
 */
public final class ChartOnPaper {
    /** What can be seen in or from a square. */
    public enum Sign {
        GROUND,
        HATCHING,
        BACK_LOOP,
        PLAIN,
        CHAIN,
        /** Stem, bar and slash of a long stitch. */
        LONG,
        /** The ball where a long stitch lands; counted in the square of its bar. */
        LONG_FOOT,
        /** The sign of a long stitch that lies in its own square. */
        LONG_IN_SQUARE,
        /** What is seen of a long stitch whose foot is beyond the edge of the sheet. */
        LONG_CUT_OFF,
        /** One chain of a corner. */
        CORNER_CHAIN,
        BASE_STITCH,
        MISSING,
        /** The number of a round, in its corner. */
        NUMBER
    }

    /**
     * A sign in a square.
     *
     * @param column counted from 0 at the left edge of the squared paper
     * @param row counted from 0 at its upper edge
     * @param detail the colour of grounds and long stitches, the strokes of a hatching or the letter that stands
     *     for it, the text of a number; whether it is the
     *     wider stroke under a sign
     * @param pieceLies where the piece lies, seen from the square: {@code down}, {@code right} ...; {@code level} or {@code
     *     upright} for a sign that does not tell more; empty for one that tells nothing
     */
    public record Seen(Sign sign, int column, int row, String detail, String pieceLies) {}

    private static final double PLAY = 0.02;
    private static final NavigableSet<Integer> EMPTY = Collections.emptyNavigableSet();

    /** A rectangle with rounded corners. */
    private static final String PLATE = "mlclclclch";

    private final Rectangle2D window;
    private final boolean part;
    private final double leftPt;
    private final double topPt;
    private final double cellPt;
    private final int columns;
    private final int rows;
    private final List<Seen> seen = new ArrayList<>();
    private final List<String> unknown = new ArrayList<>();

    /** The filled squares of each row. */
    private final Map<Integer, NavigableSet<Integer>> grounds = new HashMap<>();

    private final EndLabels rowLabels = new EndLabels();
    private final EndLabels columnLabels = new EndLabels();
    private Path before;
    private boolean marksBegan;

    private ChartOnPaper(PaintedPage.Window window, boolean part) {
        this.window = window.bounds();
        this.part = part;
        TreeSet<Double> xs = new TreeSet<>();
        TreeSet<Double> ys = new TreeSet<>();
        rules(window).forEach(line -> {
            if (line.getWidth() < line.getHeight()) {
                xs.add(rounded(line.getCenterX()));
            } else {
                ys.add(rounded(line.getCenterY()));
            }
        });
        leftPt = xs.first();
        topPt = ys.first();
        columns = spaces(xs);
        rows = spaces(ys);
        cellPt = (xs.last() - leftPt) / columns;
        requireSquares(xs, leftPt);
        requireSquares(ys, topPt);
        window.painted().forEach(this::read);
    }

    /** Whether a picture is drawn on squared paper: it has a filled square with lines of the paper at its edges. */
    public static boolean isChart(PaintedPage.Window window) {
        Set<Double> xs = new HashSet<>();
        Set<Double> ys = new HashSet<>();
        rules(window)
                .forEach(line -> (line.getWidth() < line.getHeight() ? xs : ys)
                        .add(rounded(line.getWidth() < line.getHeight() ? line.getCenterX() : line.getCenterY())));
        return !xs.isEmpty()
                && window.painted().stream()
                        .filter(painted -> painted instanceof Path path && path.filled())
                        .flatMap(painted -> ((Path) painted).parts().stream())
                        .map(Part::bounds)
                        .anyMatch(square -> xs.contains(rounded(square.getMinX()))
                                && xs.contains(rounded(square.getMaxX()))
                                && ys.contains(rounded(square.getMinY()))
                                && ys.contains(rounded(square.getMaxY())));
    }

    private static Stream<Rectangle2D> rules(PaintedPage.Window window) {
        return window.painted().stream()
                .filter(painted -> painted instanceof Path path && isRule(path))
                .map(painted -> ((Path) painted).parts().get(0).bounds());
    }

    public static ChartOnPaper read(PaintedPage.Window window) {
        return new ChartOnPaper(window, false);
    }

    /** One sheet of a picture that is cut anywhere: what is partly out of sight is read too. */
    public static ChartOnPaper readPart(PaintedPage.Window window) {
        return new ChartOnPaper(window, true);
    }

    /** How far right of the left edge of its window the squared paper begins, in squares; less than 0 if it is cut there. */
    public double columnsFromEdge() {
        return (leftPt - window.getMinX()) / cellPt;
    }

    /** How far under the upper edge of its window the squared paper begins, in squares. */
    public double rowsFromEdge() {
        return (topPt - window.getMinY()) / cellPt;
    }

    /** Whether a square of the squared paper can be seen whole. */
    public boolean isSeenWhole(int column, int row) {
        return window.contains(leftPt + column * cellPt, topPt + row * cellPt, cellPt, cellPt);
    }

    public List<Seen> seen() {
        return seen;
    }

    /** What could not be read. */
    public List<String> unknown() {
        return unknown;
    }

    /** What stands at the ends of the rows. */
    public EndLabels rowLabels() {
        return rowLabels;
    }

    /** What stands at the ends of the columns. */
    public EndLabels columnLabels() {
        return columnLabels;
    }

    /** One straight level or upright stroke with cut ends. */
    private static boolean isRule(Path path) {
        if (path.filled() || path.dashed() || !path.cut() || path.parts().size() != 1) {
            return false;
        }
        Part part = path.parts().get(0);
        Rectangle2D bounds = part.bounds();
        return part.steps().equals("ml") && Math.min(bounds.getWidth(), bounds.getHeight()) < 0.01;
    }

    private static double rounded(double pt) {
        return Math.rint(pt * 50) / 50;
    }

    /** How many squares lie between the first line and the last. */
    private static int spaces(NavigableSet<Double> lines) {
        double step = Double.MAX_VALUE;
        for (double line : lines) {
            Double next = lines.higher(line + 0.1);
            step = next == null ? step : Math.min(step, next - line);
        }
        return (int) Math.round((lines.last() - lines.first()) / step);
    }

    private void requireSquares(Set<Double> lines, double first) {
        for (double line : lines) {
            double at = (line - first) / cellPt;
            if (Math.abs(at - Math.rint(at)) > PLAY) {
                unknown.add("a line of the squared paper at " + at);
            }
        }
    }

    private void read(Painted painted) {
        if (painted instanceof Lettered lettered) {
            read(lettered);
        } else if (painted instanceof Path path) {
            if (path.hidden() && !part && !isFrame(path)) {
                unknown.add("partly out of sight: " + path);
            } else {
                read(path);
            }
            before = path;
        }
    }

    private void read(Path path) {
        boolean known = path.filled() ? readFill(path) : isRule(path) || readStroke(path);
        if (!known && touchesSquares(path)) {
            unknown.add(path.toString());
        }
    }

    private boolean isFrame(Path path) {
        return path.filled() && path.parts().get(0).bounds().getWidth() > cellPt * (columns + 0.5);
    }

    private boolean touchesSquares(Path path) {
        Rectangle2D squares = new Rectangle2D.Double(leftPt, topPt, columns * cellPt, rows * cellPt);
        return path.parts().stream().anyMatch(part -> squares.contains(at(part.bounds())));
    }

    private static Point2D at(Rectangle2D bounds) {
        return new Point2D.Double(bounds.getCenterX(), bounds.getCenterY());
    }

    private boolean readFill(Path path) {
        for (Part part : path.parts()) {
            Rectangle2D b = part.bounds();
            double width = b.getWidth() / cellPt;
            double height = b.getHeight() / cellPt;
            switch (part.steps()) {
                case "mlllh" -> {
                    if (isFrame(path)) {
                        return true;
                    }
                    boolean square = is(width, 1) && is(height, 1);
                    if (square ? !add(Sign.GROUND, at(b), path.colour(), "") : !plummet(part, "")) {
                        return false;
                    }
                }
                case "mcccch" -> {
                    if (!ball(path, b, width)) {
                        return false;
                    }
                }
                case PLATE -> {}
                default -> {
                    return false;
                }
            }
        }
        return true;
    }

    /** A dot of the base round, or the foot of a long stitch, 1.55 squares under the middle of its own. */
    private boolean ball(Path path, Rectangle2D bounds, double diameter) {
        if (is(diameter, 0.12)) {
            return add(Sign.BASE_STITCH, at(bounds), "", "");
        }
        if (is(diameter, 0.18) || is(diameter, 0.26)) {
            for (Direction piece : Direction.values()) {
                Point2D own = piece.step(at(bounds), -1.55 * cellPt);
                if (isMiddle(own)) {
                    return add(Sign.LONG_FOOT, own, is(diameter, 0.26) ? "edge" : path.colour(), piece.word());
                }
            }
        }
        return false;
    }

    private boolean readStroke(Path path) {
        List<Part> parts = path.parts();
        double pen = path.widthPt() / cellPt;
        return switch (parts.stream().map(Part::steps).reduce("", String::concat)) {
            case "mc" -> arc(parts.get(0), pen);
            case "mlllh" -> plummet(parts.get(0), "edge");
            case "mcccch" -> oval(path, parts.get(0), pen);
            case "mlml" -> path.cut() ? hatching(path) : crossOrStump(path, pen);
            case "mlmlml" -> path.cut() ? hatching(path) : longStitch(path, pen);
            case PLATE -> !path.dashed() || add(Sign.MISSING, at(parts.get(0).bounds()), "dashed", "");
            case "mlll", "mlclmll" -> true; // the bracket of a repeat; the way of working
            case "ml" ->
                isRepeatLine(path, parts.get(0))
                        || add(Sign.MISSING, at(parts.get(0).bounds()), "bar", "");
            default -> hatching(path);
        };
    }

    /** A dashed line along the edges of squares; a sheet may show only one square of it. */
    private boolean isRepeatLine(Path path, Part part) {
        Rectangle2D b = part.bounds();
        return path.dashed()
                && path.cut()
                && Math.max(b.getWidth(), b.getHeight()) > 0.9 * cellPt
                && Math.min(b.getWidth(), b.getHeight()) < 0.01;
    }

    /** An arc over the middle, its ends 0.3 out from it, that bulges away from the piece. */
    private boolean arc(Part part, double pen) {
        Point2D from = part.points().get(0);
        Point2D to = part.points().get(3);
        Point2D foot = between(from, to);
        Point2D handles = between(part.points().get(1), part.points().get(2));
        Direction outwards = Direction.of(foot, handles);
        Point2D own = outwards.step(foot, 0.3 * cellPt);
        return is(from.distance(to) / cellPt, 0.4)
                && is(foot.distance(handles) / cellPt, 0.2)
                && add(
                        Sign.BACK_LOOP,
                        own,
                        pen > 0.1 ? "edge" : "",
                        outwards.opposite().word());
    }

    private boolean oval(Path path, Part part, double pen) {
        Rectangle2D b = part.bounds();
        double width = b.getWidth() / cellPt;
        double height = b.getHeight() / cellPt;
        if (is(width, 0.2) && is(height, 0.15)) {
            return inSquare(Sign.CORNER_CHAIN, at(b), "", "");
        }
        boolean level = is(width, 0.56) && is(height, 0.32);
        boolean upright = is(width, 0.32) && is(height, 0.56);
        if (level || upright) {
            return add(Sign.CHAIN, at(b), pen > 0.1 ? "edge" : "", level ? "level" : "upright");
        }
        // A ring round a flagged stitch, with the paper's colour under it.
        return is(width, 1.12) && is(height, 1.12) && (path.cut() || pen > 0.15);
    }

    /** Four corners: one 0.34 out from the middle, two shoulders, and a point that is far from them towards the piece. */
    private boolean plummet(Part part, String detail) {
        List<Point2D> corners = part.points();
        Point2D top = corners.get(0);
        Point2D tip = corners.get(2);
        Point2D shoulders = between(corners.get(1), corners.get(3));
        Direction piece = Direction.of(top, tip);
        return is(top.distance(tip) / cellPt, 0.72)
                && is(corners.get(1).distance(corners.get(3)) / cellPt, 0.54)
                && is(top.distance(shoulders) / cellPt, 0.22)
                && add(Sign.LONG_IN_SQUARE, piece.step(top, 0.34 * cellPt), detail, piece.word());
    }

    /** Two strokes that cross in their middles, or a bar at the end of a stem. */
    private boolean crossOrStump(Path path, double pen) {
        Point2D[] ends = ends(path);
        Point2D first = between(ends[0], ends[1]);
        Point2D second = between(ends[2], ends[3]);
        boolean cross = is(first.distance(second) / cellPt, 0)
                && is(ends[0].distance(ends[1]) / cellPt, 0.4)
                && is(ends[2].distance(ends[3]) / cellPt, 0.4)
                && isRightAngle(ends);
        return cross ? add(Sign.PLAIN, first, pen > 0.1 ? "edge" : "", "") : stem(path, pen, Sign.LONG_CUT_OFF);
    }

    private boolean longStitch(Path path, double pen) {
        Point2D[] ends = ends(path);
        boolean whole = is(ends[0].distance(ends[1]) / cellPt, 1.75);
        Point2D slash = between(ends[4], ends[5]);
        Direction piece = Direction.of(ends[0], ends[1]);
        return is(ends[0].distance(slash) / cellPt, 0.69)
                && Direction.of(ends[0], slash) == piece
                && stem(path, pen, whole ? Sign.LONG : Sign.LONG_CUT_OFF);
    }

    /** A stem that begins 0.2 out from the middle of its own square with a bar across, and goes towards the piece. */
    private boolean stem(Path path, double pen, Sign sign) {
        Point2D[] ends = ends(path);
        Point2D bar = between(ends[2], ends[3]);
        Direction piece = Direction.of(ends[0], ends[1]);
        return is(bar.distance(ends[0]) / cellPt, 0)
                && is(ends[2].distance(ends[3]) / cellPt, 0.44)
                && isRightAngle(ends)
                && ends[0].distance(ends[1]) / cellPt > 0.5
                && add(sign, piece.step(bar, 0.2 * cellPt), pen > 0.12 ? "edge" : path.colour(), piece.word());
    }

    private static boolean isRightAngle(Point2D[] ends) {
        double dot = (ends[1].getX() - ends[0].getX()) * (ends[3].getX() - ends[2].getX())
                + (ends[1].getY() - ends[0].getY()) * (ends[3].getY() - ends[2].getY());
        return Math.abs(dot) < 0.02;
    }

    private static Point2D[] ends(Path path) {
        return path.parts().stream().flatMap(part -> part.points().stream()).toArray(Point2D[]::new);
    }

    /** Straight strokes inside one square, or dots, which are strokes of hardly any length. */
    private boolean hatching(Path path) {
        Rectangle2D all = path.parts().get(0).bounds();
        for (Part part : path.parts()) {
            if (!part.steps().equals("ml")) {
                return false;
            }
            all.add(part.bounds());
        }
        int column = (int) Math.floor((all.getCenterX() - leftPt) / cellPt);
        int row = (int) Math.floor((all.getCenterY() - topPt) / cellPt);
        StringBuilder strokes = new StringBuilder();
        for (Point2D end : ends(path)) {
            double x = (end.getX() - leftPt) / cellPt - column;
            double y = (end.getY() - topPt) / cellPt - row;
            if (x < -PLAY || x > 1 + PLAY || y < -PLAY || y > 1 + PLAY) {
                return false;
            }
            strokes.append(Math.round(x * 20))
                    .append(',')
                    .append(Math.round(y * 20))
                    .append(' ');
        }
        return add(Sign.HATCHING, middle(column, row), strokes.toString().strip(), "");
    }

    private void read(Lettered text) {
        Point2D middle = between(text.from(), text.to());
        boolean onPlate = before != null
                && before.parts().get(0).steps().equals(PLATE)
                && before.parts().get(0).bounds().contains(middle);
        boolean letter = onPlate && !before.filled();
        if (onPlate && before.filled()) {
            return; // A finding's number: its plate has no outline, that of a yarn's letter has.
        }
        double x = (middle.getX() - leftPt) / cellPt;
        double y = (middle.getY() - topPt) / cellPt;
        boolean across = x > 0 && x < columns;
        boolean down = y > 0 && y < rows;
        NavigableSet<Integer> filled = grounds.getOrDefault((int) Math.floor(y), EMPTY);
        if (part && across && down && filled.isEmpty()) {
            return; // It labels a row that is on another sheet.
        }
        if (across && down && !filled.isEmpty() && !filled.contains((int) x)) {
            // Beside a row that ends before the squared paper does.
            boolean before = x < filled.first();
            rowLabels.add((int) y, before, before ? filled.first() - x : x - filled.last(), text.text(), letter);
        } else if (across && down) {
            if (!is(x - Math.floor(x), 0.5)) {
                inSquare(Sign.HATCHING, middle, "letter " + text.text(), "");
            } else if (text.text().matches("\\d+")) {
                inSquare(Sign.NUMBER, middle, text.text(), "");
            }
        } else if (down) {
            rowLabels.add((int) y, x < 0, x < 0 ? -x : x - columns, text.text(), letter);
        } else if (across) {
            columnLabels.add((int) x, y < 0, y < 0 ? -y : y - rows, text.text(), letter);
        }
    }

    /** Adds a sign with its middle in the middle of a square. */
    private boolean add(Sign sign, Point2D middle, String detail, String pieceLies) {
        return isMiddle(middle) && inSquare(sign, middle, detail, pieceLies);
    }

    private boolean inSquare(Sign sign, Point2D at, String detail, String pieceLies) {
        int column = (int) Math.floor((at.getX() - leftPt) / cellPt);
        int row = (int) Math.floor((at.getY() - topPt) / cellPt);
        boolean isGround = sign == Sign.GROUND || sign == Sign.HATCHING;
        if (isGround && marksBegan) {
            unknown.add("a square is filled over what lies in it: column " + column + ", row " + row);
        }
        marksBegan |= !isGround;
        if (sign == Sign.GROUND) {
            grounds.computeIfAbsent(row, each -> new TreeSet<>()).add(column);
        }
        seen.add(new Seen(sign, column, row, detail, pieceLies));
        return true;
    }

    private Point2D middle(int column, int row) {
        return new Point2D.Double(leftPt + (column + 0.5) * cellPt, topPt + (row + 0.5) * cellPt);
    }

    private boolean isMiddle(Point2D point) {
        double x = (point.getX() - leftPt) / cellPt;
        double y = (point.getY() - topPt) / cellPt;
        return is(x - Math.floor(x), 0.5) && is(y - Math.floor(y), 0.5);
    }

    private static boolean is(double measured, double expected) {
        return Math.abs(measured - expected) < PLAY;
    }

    private static Point2D between(Point2D a, Point2D b) {
        return new Point2D.Double((a.getX() + b.getX()) / 2, (a.getY() + b.getY()) / 2);
    }
}
