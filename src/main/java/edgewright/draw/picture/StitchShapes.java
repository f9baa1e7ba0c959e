package edgewright.draw.picture;

import edgewright.chart.Colour;
import edgewright.chart.Stitch;
import edgewright.chart.StitchLoop;
import edgewright.draw.marks.MarkStyle;
import edgewright.draw.paint.Area;
import edgewright.draw.paint.ColourMixing;
import edgewright.draw.paint.ColourMode;
import edgewright.draw.paint.Frame;
import edgewright.draw.paint.Palette;
import edgewright.draw.paint.PenPath;
import edgewright.draw.paint.Shape;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * What each stitch looks like in the layer of what to do, in the frame of its cell.
 *
 * <p>After the open symbols of the trade: an oval is a chain, a cross a plain stitch, a stem with bar and one slash a stitch
 * with one yarn over (here: that covers one stitch); an arc says which loop is taken, bulging up for the back loop and down for the front loop. Source of
 * the signs: from memory; publishers differ, so every chart has its legend.
 */
final class StitchShapes {
    private static final double FINE = 0.045;
    private static final double MEDIUM = 0.065;
    private static final double CASING = 0.09;

    /** Narrower, for a heavy sign keeps its shape on hatching, and the letter of a yarn is near. */
    private static final double PLUMMET_CASING = 0.035;

    /** A stitch that goes down past the square below: a plummet, heavy at its shoulders and long towards the piece. */
    private static final PenPath PLUMMET = new PenPath.Builder()
            .moveTo(0, 0.34)
            .lineTo(0.27, 0.12)
            .lineTo(0, -0.38)
            .lineTo(-0.27, 0.12)
            .close()
            .build();

    private static final Map<Stitch, PenPath> LINES = new EnumMap<>(Stitch.class);

    static {
        for (Stitch stitch : Stitch.values()) {
            LINES.put(stitch, sign(stitch));
        }
    }

    private final Frame frame;
    private final double cellMm;
    private final ColourMode inking;
    private final MarkStyle style;

    StitchShapes(Frame frame, double cellMm, ColourMode inking, MarkStyle style) {
        this.frame = frame;
        this.cellMm = cellMm;
        this.inking = inking;
        this.style = style;
    }

    /**
     * The mark of a stitch.
     *
     * @param yarn what marks in its own yarn are drawn in
     * @param ground what the mark lies on in its own cell
     * @param below how many cells below are there to be drawn on; a long stitch that would reach further is cut off after them
     */
    List<Shape> of(Stitch stitch, Colour yarn, Colour ground, int below) {
        Colour ink = inking.on(ground);
        if (stitch.coversStitchBelow() && style == MarkStyle.SQUARES) {
            return plummet(ink);
        }
        if (stitch.coversStitchBelow()) {
            return below >= stitch.roundsDown() ? longStitch(stitch, yarn) : cutOff(stitch, yarn, below);
        }
        PenPath lines = lines(stitch).through(frame);
        return isGround(stitch)
                ? apart(line(lines, inking == ColourMode.COLOUR ? FINE : MEDIUM, inking.softly(ground)))
                : apart(line(lines, MEDIUM, ink));
    }

    /** Whether it is the stitch that most of a fabric is, which must not shout. */
    private static boolean isGround(Stitch stitch) {
        return stitch.standsInStitchBelow() && !stitch.takes(StitchLoop.FRONT);
    }

    /** The sign as it follows from what a stitch is. */
    private static PenPath sign(Stitch stitch) {
        if (stitch.coversStitchBelow()) {
            return stem(stitch, foot(stitch).orElseThrow(), stitch.roundsDown());
        }
        if (!stitch.standsInStitchBelow()) {
            return PenPath.oval(0, 0, 0.28, 0.16);
        }
        return isGround(stitch) ? arc(0.2, -0.3, 0.15) : cross(0.2);
    }

    /** A stem with its bar, and a slash for each stitch that it covers as far as that is shown. */
    private static PenPath stem(Stitch stitch, double end, int shownBelow) {
        PenPath.Builder stem = new PenPath.Builder()
                .moveTo(0, 0.2)
                .lineTo(0, end)
                .moveTo(-0.22, 0.2)
                .lineTo(0.22, 0.2);
        for (int covered = 1; covered < stitch.roundsDown() && covered <= shownBelow; covered++) {
            double higher = 0.4 * (covered - 1);
            stem.moveTo(-0.17, -0.6 - higher).lineTo(0.17, -0.38 - higher);
        }
        return stem.build();
    }

    /** The lines of a stitch's sign in a cell one unit wide; see {@link #foot} for what is filled. */
    static PenPath lines(Stitch stitch) {
        return LINES.get(stitch);
    }

    /**
     * How far out of its cell a stitch has the ball that says where it lands, on the upper edge of that stitch; empty for a stitch
     * without one.
     */
    static OptionalDouble foot(Stitch stitch) {
        return stitch.coversStitchBelow() ? OptionalDouble.of(0.45 - stitch.roundsDown()) : OptionalDouble.empty();
    }

    /**
     * The chains of a corner, side by side and level however the picture is rotated, in the half of the cell that is away from the
     * piece: there long stitches land in them. In the other half is room for the number of the round.
     *
     * @param above whether the upper half of the cell is away from the piece
     */
    static List<Shape> cornerChains(Area cell, boolean above, int chains, Colour ink) {
        double c = cell.widthMm();
        double y = above ? cell.yMm() + 0.35 * c : cell.bottomMm() - 0.35 * c;
        List<Shape> shapes = new ArrayList<>();
        for (int i = 0; i < chains; i++) {
            double x = cell.middleXMm() + (i - (chains - 1) / 2.0) * 0.25 * c;
            PenPath oval = PenPath.oval(x, y, 0.1 * c, 0.075 * c);
            shapes.add(new Shape.Line(oval, 0.04 * c, ink));
        }
        return shapes;
    }

    /** A stitch of the base round. */
    List<Shape> base(Colour ground, Palette palette) {
        PenPath dot = PenPath.circle(0, 0, 0.06).through(frame);
        return List.of(new Shape.Fill(
                dot, inking == ColourMode.BLACK ? palette.ink() : ColourMixing.mix(ground, palette.quietInk(), 0.7)));
    }

    /** A cell that should hold a stitch and has none. */
    List<Shape> missing(Palette palette) {
        PenPath square =
                PenPath.rounded(new Area(-0.36, -0.36, 0.72, 0.72), 0.1).through(frame);
        double dash = 0.12 * cellMm;
        return List.of(
                new Shape.Line(square, MEDIUM * cellMm, palette.error(), Shape.Ends.CUT, List.of(dash, dash)),
                line(PenPath.line(-0.14, 0, 0.14, 0).through(frame), MEDIUM, palette.error()));
    }

    /**
     * A stem with bar and slash, and a ball where it lands. In its own yarn, with an outline for where it lies on that yarn.
     */
    private List<Shape> longStitch(Stitch stitch, Colour yarn) {
        PenPath stem = lines(stitch).through(frame);
        double foot = foot(stitch).orElseThrow();
        Colour outline = outline(yarn);
        return List.of(
                line(stem, 0.165, outline),
                new Shape.Fill(PenPath.circle(0, foot, 0.13).through(frame), outline),
                line(stem, 0.085, yarn),
                new Shape.Fill(PenPath.circle(0, foot, 0.09).through(frame), yarn));
    }

    /** A long stitch as far as the edge of what is drawn: without its foot, and without its slashes if those are beyond. */
    private List<Shape> cutOff(Stitch stitch, Colour yarn, int below) {
        PenPath path = stem(stitch, -0.4 - below, below).through(frame);
        return List.of(line(path, 0.165, outline(yarn)), line(path, 0.085, yarn));
    }

    /** The sign of a long stitch in its own square, parted from the hatching on which it may lie. */
    private List<Shape> plummet(Colour ink) {
        PenPath path = PLUMMET.through(frame);
        Shape sign = new Shape.Fill(path, ink);
        return inking == ColourMode.COLOUR
                ? List.of(sign)
                : List.of(line(path, 2 * PLUMMET_CASING, Palette.BLACK.paper()), sign);
    }

    private Colour outline(Colour yarn) {
        return inking.outline(yarn);
    }

    /** A line that is parted from the hatching on which it may lie. */
    private List<Shape> apart(Shape.Line line) {
        if (inking == ColourMode.COLOUR) {
            return List.of(line);
        }
        double width = line.widthMm() + 2 * CASING * cellMm;
        return List.of(new Shape.Line(line.path(), width, Palette.BLACK.paper()), line);
    }

    private static PenPath arc(double half, double foot, double rise) {
        return new PenPath.Builder()
                .moveTo(-half, foot)
                .curveTo(-half * 0.6, foot + rise * 1.33, half * 0.6, foot + rise * 1.33, half, foot)
                .build();
    }

    private static PenPath cross(double arm) {
        return new PenPath.Builder()
                .moveTo(-arm, 0)
                .lineTo(arm, 0)
                .moveTo(0, -arm)
                .lineTo(0, arm)
                .build();
    }

    private Shape.Line line(PenPath path, double width, Colour colour) {
        return new Shape.Line(path, width * cellMm, colour);
    }
}
