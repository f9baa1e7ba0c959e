package edgewright.draw.picture;

import edgewright.chart.Chart;
import edgewright.chart.Place;
import edgewright.chart.Stitch;
import edgewright.draw.marks.Drawing;
import edgewright.draw.marks.Mark;
import edgewright.draw.marks.MarkKind;
import edgewright.draw.marks.MarkStyle;
import edgewright.draw.paint.Area;
import edgewright.draw.paint.ColourMode;
import edgewright.draw.paint.Frame;
import edgewright.draw.paint.Palette;
import edgewright.draw.paint.Shape;
import edgewright.draw.paint.YarnSign;
import edgewright.testing.Photocopy;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The squares of a chart on a copy, each read by itself: whichever clean square it is most like, of all that there are with any
 * mark on any yarn.
 */
final class SquaresOnCopy {
    /** How much of a square is looked at, from its middle outwards: lines of the squared paper are left out. */
    private static final double SEEN = 0.43;

    /**
     * What a square says.
     *
     * @param stitch its mark; empty for none
     * @param yarn its hatching or letter
     * @param corner whether the chains of a corner stand in it instead
     */
    private record Said(Optional<Stitch> stitch, YarnSign yarn, boolean corner) {
        @Override
        public String toString() {
            return corner ? "corner" : stitch + " on " + (yarn.hatched() ? "hatching" : yarn.letter());
        }
    }

    private final Chart chart;
    private final MarkStyle style;
    private final CellLayout layout;
    private final boolean[][] copy;
    /** Long stitches whose stems lie over the squares below them. */
    private final List<Stitch> stems;

    private final Map<String, YarnSign> signs;
    private final double dotMm = 25.4 / Photocopy.DPI;

    /** Clean squares, by how the piece lies seen from them. */
    private final Map<String, Map<Said, List<boolean[][]>>> clean = new HashMap<>();

    SquaresOnCopy(Chart chart, PictureStyle style, CellLayout layout, boolean[][] copy) {
        this.chart = chart;
        this.layout = layout;
        this.copy = copy;
        this.signs = YarnSign.of(chart);
        this.style = style.markStyle();
        this.stems = this.style == MarkStyle.SQUARES
                ? List.of()
                : layout.cellsNear(layout.area(), 0).stream()
                        .filter(DrawnCell.OfStitch.class::isInstance)
                        .map(DrawnCell.OfStitch.class::cast)
                        .filter(cell -> cell.round() > 0)
                        .map(cell -> chart.stitch(cell.place()))
                        .filter(Stitch::coversStitchBelow)
                        .distinct()
                        .toList();
    }

    List<String> misread() {
        List<String> lines = new ArrayList<>();
        for (DrawnCell drawn : layout.cellsNear(layout.area(), 0)) {
            if (drawn.round() > 0) {
                Said right = drawnIn(drawn);
                Said read = read(drawn);
                if (!read.equals(right)) {
                    lines.add("round " + drawn.round() + ", " + drawn.cell() + ": drawn " + right + ", read " + read);
                }
            }
        }
        return lines;
    }

    private Said drawnIn(DrawnCell drawn) {
        if (!(drawn instanceof DrawnCell.OfStitch stitch)) {
            return new Said(Optional.empty(), YarnSign.BLANK, true);
        }
        Place place = stitch.place();
        int shown = chart.shownRound(place);
        boolean bare = style == MarkStyle.SQUARES && shown != place.round() && chart.stitch(place) == Stitch.BACK_LOOP;
        return new Said(
                bare ? Optional.empty() : Optional.of(chart.stitch(place)),
                signs.get(chart.round(shown).yarn()),
                false);
    }

    private Said read(DrawnCell drawn) {
        Area area = layout.areaOf(drawn.cell());
        Frame frame = layout.frameOf(drawn.cell(), drawn.side());
        Frame atZero = new Frame(
                frame.zeroXMm() - area.xMm(),
                frame.zeroYMm() - area.yMm(),
                frame.alongXMm(),
                frame.alongYMm(),
                frame.outXMm(),
                frame.outYMm());
        boolean above = layout.isCornerAbove(drawn.side());
        String lies = Math.round(atZero.outXMm()) + " " + Math.round(atZero.outYMm()) + " "
                + Math.round(atZero.alongXMm()) + " " + Math.round(atZero.alongYMm());
        Map<Said, List<boolean[][]>> squares =
                clean.computeIfAbsent(lies, key -> squares(area.widthMm(), atZero, above));
        Said best = null;
        int least = Integer.MAX_VALUE;
        for (Map.Entry<Said, List<boolean[][]>> square : squares.entrySet()) {
            for (boolean[][] between : square.getValue()) {
                int difference = difference(between, area);
                if (difference < least) {
                    least = difference;
                    best = square.getKey();
                }
            }
        }
        return best;
    }

    /** Clean squares, each as it lies on the dots and between them. */
    private Map<Said, List<boolean[][]>> squares(double cellMm, Frame frame, boolean above) {
        Map<Said, List<boolean[][]>> squares = new HashMap<>();
        for (double right = 0; right < 1; right += 0.5) {
            for (double down = 0; down < 1; down += 0.5) {
                Frame between = new Frame(
                        frame.zeroXMm() + right * dotMm,
                        frame.zeroYMm() + down * dotMm,
                        frame.alongXMm(),
                        frame.alongYMm(),
                        frame.outXMm(),
                        frame.outYMm());
                squaresAt(new Area(right * dotMm, down * dotMm, cellMm, cellMm), between, above)
                        .forEach((said, dots) -> squares.computeIfAbsent(said, key -> new ArrayList<>())
                                .addAll(dots));
            }
        }
        return squares;
    }

    private Map<Said, List<boolean[][]>> squaresAt(Area square, Frame frame, boolean above) {
        StitchShapes marks = shapes(frame, square);
        Map<Said, List<boolean[][]>> squares = new HashMap<>();
        List<List<Shape>> over = over(frame, square);
        for (YarnSign sign : signs.values()) {
            List<Shape> ground = sign.in(square, frame);
            squares.put(new Said(Optional.empty(), sign, false), dots(square, ground, over));
            for (Stitch stitch : Stitch.values()) {
                List<Shape> shapes = new ArrayList<>(ground);
                shapes.addAll(marks.of(stitch, Palette.BLACK.ink(), Palette.BLACK.paper(), stitch.roundsDown()));
                squares.put(new Said(Optional.of(stitch), sign, false), dots(square, shapes, over));
            }
        }
        List<Shape> chains = new ArrayList<>(YarnSign.BLANK.in(square));
        chains.addAll(StitchShapes.cornerChains(square, above, chart.corner().chains(), Palette.BLACK.ink()));
        squares.put(new Said(Optional.empty(), YarnSign.BLANK, true), dots(square, chains, overCorner(square)));
        return squares;
    }

    private StitchShapes shapes(Frame frame, Area square) {
        return new StitchShapes(frame, square.widthMm(), ColourMode.BLACK, style);
    }

    /** Nothing, or what a long stitch that stands further out has in this square: its stem, or its foot. */
    private List<List<Shape>> over(Frame frame, Area square) {
        List<List<Shape>> over = new ArrayList<>(List.of(List.of()));
        for (Stitch stitch : stems) {
            for (int down = 1; down <= stitch.roundsDown(); down++) {
                Frame further = new Frame(
                        frame.xMm(0, down),
                        frame.yMm(0, down),
                        frame.alongXMm(),
                        frame.alongYMm(),
                        frame.outXMm(),
                        frame.outYMm());
                over.add(shapes(further, square)
                        .of(stitch, Palette.BLACK.ink(), Palette.BLACK.paper(), stitch.roundsDown()));
            }
        }
        return over;
    }

    /** In the chains of a corner long stitches of both its sides may have their feet. */
    private List<List<Shape>> overCorner(Area square) {
        List<List<Shape>> over = new ArrayList<>(List.of(List.of()));
        for (int quarters = 0; quarters < 4; quarters++) {
            Frame frame = Frame.of(quarters, square.middleXMm(), square.middleYMm(), square.widthMm());
            for (List<Shape> before : List.copyOf(over)) {
                over(frame, square).stream().filter(shapes -> !shapes.isEmpty()).forEach(shapes -> {
                    List<Shape> both = new ArrayList<>(before);
                    both.addAll(shapes);
                    over.add(both);
                });
            }
        }
        return over;
    }

    /** The square with each of these over it. */
    private static List<boolean[][]> dots(Area square, List<Shape> shapes, List<List<Shape>> over) {
        List<boolean[][]> dots = new ArrayList<>();
        for (List<Shape> each : over) {
            List<Shape> all = new ArrayList<>(shapes);
            all.addAll(each);
            dots.add(dots(square, all));
        }
        return dots;
    }

    private static boolean[][] dots(Area square, List<Shape> shapes) {
        return Photocopy.printed(new Drawing(
                square.widthMm(),
                square.heightMm(),
                "square",
                "square",
                List.of(Mark.beside(MarkKind.LEGEND, shapes))));
    }

    /** In how many dots a square of the copy differs from a clean one, laid on it as well as can be. */
    private int difference(boolean[][] square, Area area) {
        int left = (int) Math.round(area.xMm() / dotMm);
        int top = (int) Math.round(area.yMm() / dotMm);
        int least = Integer.MAX_VALUE;
        for (int down = -1; down <= 1; down++) {
            for (int right = -1; right <= 1; right++) {
                least = Math.min(least, differenceAt(square, left + right, top + down, least));
            }
        }
        return least;
    }

    private int differenceAt(boolean[][] square, int left, int top, int most) {
        int first = (int) Math.round((0.5 - SEEN) * square.length);
        int end = square.length - first;
        int difference = 0;
        for (int y = first; y < end && difference < most; y++) {
            for (int x = first; x < end; x++) {
                difference += copy[top + y][left + x] == square[y][x] ? 0 : 1;
            }
        }
        return difference;
    }
}
