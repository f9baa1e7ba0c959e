package edgewright.draw.technique;

import edgewright.chart.Colour;
import edgewright.draw.marks.Drawing;
import edgewright.draw.marks.Mark;
import edgewright.draw.marks.MarkKind;
import edgewright.draw.paint.Area;
import edgewright.draw.paint.ColourMode;
import edgewright.draw.paint.Frame;
import edgewright.draw.paint.Lettering;
import edgewright.draw.paint.Palette;
import edgewright.draw.paint.PenPath;
import edgewright.draw.paint.Shape;
import java.util.ArrayList;
import java.util.List;

/**
 * The sheet that a figure is put together on, from the lowest shape to the topmost. Places are pairs of numbers in stitches:
 * how far along the way of working, and how far away from the piece.
 */
final class FigureBoard {
    /** How wide a strand of yarn is, in stitches. */
    static final double YARN = 0.17;

    /** How far the plies of a cut end stand out, in stitches. */
    private static final double FRAY = 0.2;

    /** Half as wide as a ball of yarn is, in stitches. */
    private static final double BALL = 0.42;

    /** How wide every figure is. */
    static final double WIDTH_MM = 80;

    private static final Colour METAL = Colour.parse("#e9ecef");

    private static final double OUTLINE_MM = 0.3;
    private static final double NUMBER_MM = 4.6;
    private static final double ARROW_MM = 0.75;

    private final double heightMm;
    private final double stitchMm;
    private final Frame frame;
    private final ColourMode mode;
    private final Palette palette;
    private final List<Mark> marks;
    private final List<Mark> signs;

    private FigureBoard(
            double heightMm, double stitchMm, Frame frame, ColourMode mode, List<Mark> marks, List<Mark> signs) {
        this.heightMm = heightMm;
        this.stitchMm = stitchMm;
        this.frame = frame;
        this.mode = mode;
        this.palette = mode == ColourMode.BLACK ? Palette.BLACK : Palette.LIGHT;
        this.marks = marks;
        this.signs = signs;
    }

    /**
     * An empty sheet.
     *
     * @param zeroMm how far under its upper edge the zero lies, halfway across
     * @param stitchMm the width of a stitch
     * @param leftwards whether the work goes to the left, as with the right hand
     */
    static FigureBoard of(double heightMm, double zeroMm, double stitchMm, boolean leftwards, ColourMode mode) {
        Frame frame = new Frame(WIDTH_MM / 2, zeroMm, leftwards ? -stitchMm : stitchMm, 0, 0, -stitchMm);
        return new FigureBoard(heightMm, stitchMm, frame, mode, new ArrayList<>(), new ArrayList<>());
    }

    /**
     * This sheet with places counted from another zero and turned about it.
     *
     * @param degrees by which what leads away from the piece is turned towards the way of working
     */
    FigureBoard turned(double along, double out, double degrees) {
        double c = Math.cos(Math.toRadians(degrees));
        double d = Math.sin(Math.toRadians(degrees));
        Frame f = frame;
        Frame turned = new Frame(
                f.xMm(along, out),
                f.yMm(along, out),
                c * f.alongXMm() - d * f.outXMm(),
                c * f.alongYMm() - d * f.outYMm(),
                d * f.alongXMm() + c * f.outXMm(),
                d * f.alongYMm() + c * f.outYMm());
        return new FigureBoard(heightMm, stitchMm, turned, mode, marks, signs);
    }

    /** The finished figure. */
    Drawing drawing(String title, String description) {
        List<Mark> all = new ArrayList<>();
        all.add(Mark.beside(
                MarkKind.PAPER,
                List.of(new Shape.Fill(PenPath.rectangle(new Area(0, 0, WIDTH_MM, heightMm)), palette.paper()))));
        all.addAll(marks);
        all.addAll(signs);
        return new Drawing(WIDTH_MM, heightMm, title, description, all);
    }

    /** Covers what lies before one place and after another along the way of working, so that rows seem to go on. */
    void cropAcross(double from, double to) {
        coverBeside(frame.xMm(from, 0));
        coverBeside(frame.xMm(to, 0));
    }

    /** Covers what lies farther from the middle than that. */
    private void coverBeside(double xMm) {
        cover(xMm < WIDTH_MM / 2 ? new Area(0, 0, xMm, heightMm) : new Area(xMm, 0, WIDTH_MM - xMm, heightMm));
    }

    /** Covers what lies before one place, and what lies nearer to the piece than another. */
    void cropOutside(double before, double below) {
        coverBeside(frame.xMm(before, below));
        double top = frame.yMm(before, below);
        cover(new Area(0, top, WIDTH_MM, heightMm - top));
    }

    /** Covers what lies nearer to the piece than that. */
    void cropBelow(double out) {
        double top = frame.yMm(0, out);
        cover(new Area(0, top, WIDTH_MM, heightMm - top));
    }

    private void cover(Area area) {
        add(List.of(new Shape.Fill(PenPath.rectangle(area), palette.paper())));
    }

    /** This sheet with places counted from another zero. */
    FigureBoard at(double along, double out) {
        return turned(along, out, 0);
    }

    /**
     * A strand through these places.
     *
     * @param places pairs of numbers with a blank in each pair, parted by commas
     */
    void strand(FigureYarn yarn, String places) {
        thick(yarn, YARN, Curves.places(places));
    }

    /** A strand through these places, pairs of numbers. */
    void strand(FigureYarn yarn, double... places) {
        thick(yarn, YARN, places);
    }

    /** A strand of another width, in stitches. */
    void thick(FigureYarn yarn, double width, double... places) {
        yarn(yarn, width, Curves.through(places, false));
    }

    /** A strand that comes back to where it began; places as in {@link #strand(FigureYarn, String)}. */
    void ring(FigureYarn yarn, double width, String places) {
        yarn(yarn, width, Curves.through(Curves.places(places), true));
    }

    /** A strand that ends where the yarn was cut, its plies apart; places as in {@link #strand(FigureYarn, String)}. */
    void tail(FigureYarn yarn, String text) {
        double[] places = Curves.places(text);
        int n = places.length;
        double[] before = Curves.before(places);
        double along = places[n - 2] - before[0];
        double out = places[n - 1] - before[1];
        double length = Math.hypot(along, out) / FRAY;
        for (double turn : new double[] {-0.6, 0, 0.6}) {
            thick(
                    yarn,
                    YARN / 3,
                    places[n - 2],
                    places[n - 1],
                    places[n - 2] + (along - turn * out) / length,
                    places[n - 1] + (out + turn * along) / length);
        }
        strand(yarn, places);
    }

    /** A ball of yarn, from which what is being worked comes. */
    void ball(FigureYarn yarn, double along, double out) {
        PenPath outline = circle(along, out, BALL);
        add(List.of(
                new Shape.Fill(outline, yarn.fill(mode)), new Shape.Line(outline, OUTLINE_MM * 1.2, palette.ink())));
        for (double wind : new double[] {-0.55, -0.1, 0.35}) {
            double[] arc = {
                along - 0.8 * BALL,
                out + (wind + 0.1) * BALL,
                along,
                out + (wind + 0.45) * BALL,
                along + 0.85 * BALL,
                out + wind * 0.6 * BALL
            };
            add(List.of(new Shape.Line(Curves.through(arc, false).through(frame), OUTLINE_MM, palette.ink())));
        }
    }

    private PenPath circle(double along, double out, double radius) {
        return PenPath.circle(frame.xMm(along, out), frame.yMm(along, out), radius * stitchMm);
    }

    private void yarn(FigureYarn yarn, double width, PenPath path) {
        PenPath onPaper = path.through(frame);
        double w = width * stitchMm;
        List<Shape> shapes = new ArrayList<>();
        shapes.add(new Shape.Line(onPaper, w + 2 * OUTLINE_MM, palette.ink()));
        shapes.add(new Shape.Line(onPaper, w, yarn.fill(mode)));
        if (yarn == FigureYarn.DARK) {
            shapes.add(new Shape.Line(
                    onPaper, w * 0.98, FigureYarn.twist(mode), Shape.Ends.CUT, List.of(0.14 * w + 0.06, 0.42 * w)));
        }
        if (yarn == FigureYarn.SEAM) {
            shapes.add(new Shape.Line(onPaper, 0.14 * w, palette.ink()));
        }
        add(shapes);
    }

    /** A strand that is yet to come, in dashes; places as pairs of numbers. */
    void toCome(double... places) {
        PenPath onPaper = Curves.through(places, false).through(frame);
        add(List.of(
                new Shape.Line(onPaper, 1.5, palette.paper()),
                new Shape.Line(onPaper, 0.55, palette.accent(), Shape.Ends.CUT, List.of(1.1, 0.7))));
    }

    /** A ground behind strands, in a shade of their yarn. */
    void ground(FigureYarn yarn, double fromAlong, double fromOut, double toAlong, double toOut) {
        ground(
                yarn,
                new PenPath.Builder()
                        .moveTo(fromAlong, fromOut)
                        .lineTo(toAlong, fromOut)
                        .lineTo(toAlong, toOut)
                        .lineTo(fromAlong, toOut)
                        .close()
                        .build());
    }

    void ground(FigureYarn yarn, PenPath area) {
        add(List.of(new Shape.Fill(area.through(frame), yarn.ground(mode))));
    }

    /** A bracket under what belongs together. */
    void bracket(double from, double to, double out) {
        double foot = out + 0.12;
        PenPath path = new PenPath.Builder()
                .moveTo(from, foot)
                .lineTo(from, out)
                .lineTo(to, out)
                .lineTo(to, foot)
                .build();
        signs.add(Mark.beside(
                MarkKind.STEP,
                List.of(new Shape.Line(path.through(frame), 0.4, palette.ink(), Shape.Ends.CUT, List.of()))));
    }

    /** A hook or a needle; see {@link Tools}. */
    void tool(PenPath outline) {
        PenPath onPaper = outline.through(frame);
        add(List.of(
                new Shape.Fill(onPaper, mode == ColourMode.COLOUR ? METAL : palette.paper()),
                new Shape.Line(onPaper, OUTLINE_MM * 1.2, palette.ink())));
    }

    /** A thing in the colour of a yarn; see {@link Tools}. */
    void filled(FigureYarn yarn, PenPath outline) {
        PenPath onPaper = outline.through(frame);
        add(List.of(new Shape.Fill(onPaper, yarn.fill(mode)), new Shape.Line(onPaper, OUTLINE_MM, palette.ink())));
    }

    /** The number of the step that something belongs to. */
    void number(int number, double along, double out) {
        double x = frame.xMm(along, out);
        double y = frame.yMm(along, out);
        double r = NUMBER_MM / 2;
        double size = NUMBER_MM * 0.86;
        signs.add(Mark.beside(
                MarkKind.STEP,
                List.of(
                        new Shape.Fill(PenPath.circle(x, y, r + 0.35), palette.paper()),
                        new Shape.Fill(PenPath.circle(x, y, r), palette.ink()),
                        new Shape.Text(
                                Integer.toString(number),
                                x,
                                y + Lettering.CAPITAL * size / 2,
                                size,
                                Shape.Weight.BOLD,
                                Shape.Anchor.MIDDLE,
                                0,
                                palette.paper()))));
    }

    /** How many are worked in one place, which is no step. */
    void count(int times, double along, double out) {
        String text = times + "\u00d7";
        double x = frame.xMm(along, out);
        double y = frame.yMm(along, out);
        double size = NUMBER_MM * 0.95;
        double width = Lettering.widthMm(text, Shape.Weight.BOLD, size) + 1.6;
        signs.add(Mark.beside(
                MarkKind.STEP,
                List.of(
                        new Shape.Fill(
                                PenPath.rectangle(new Area(x - width / 2, y - size / 2, width, size)), palette.paper()),
                        new Shape.Text(
                                text,
                                x,
                                y + Lettering.CAPITAL * size / 2,
                                size,
                                Shape.Weight.BOLD,
                                Shape.Anchor.MIDDLE,
                                0,
                                palette.ink()))));
    }

    /** A line from a number to what it speaks of and where nothing is done; its end is a dot, for it is no way to go. */
    void pointer(double fromAlong, double fromOut, double along, double out) {
        PenPath path = PenPath.line(fromAlong, fromOut, along, out).through(frame);
        double x = frame.xMm(along, out);
        double y = frame.yMm(along, out);
        signs.add(Mark.beside(
                MarkKind.STEP,
                List.of(
                        new Shape.Line(path, 1.3, palette.paper()),
                        new Shape.Fill(PenPath.circle(x, y, 1.2), palette.paper()),
                        new Shape.Line(path, 0.5, palette.ink()),
                        new Shape.Fill(PenPath.circle(x, y, 0.85), palette.ink()))));
    }

    /** A curved arrow through these places, its head at the last. */
    void arrow(double... places) {
        PenPath path = Curves.through(places, false).through(frame);
        int n = places.length;
        double x = frame.xMm(places[n - 2], places[n - 1]);
        double y = frame.yMm(places[n - 2], places[n - 1]);
        double[] back = Curves.before(places);
        double bx = x - frame.xMm(back[0], back[1]);
        double by = y - frame.yMm(back[0], back[1]);
        double length = Math.hypot(bx, by);
        double ux = bx / length;
        double uy = by / length;
        PenPath head = new PenPath.Builder()
                .moveTo(x + ux * 1.2, y + uy * 1.2)
                .lineTo(x - ux * 2.2 - uy * 1.7, y - uy * 2.2 + ux * 1.7)
                .lineTo(x - ux * 2.2 + uy * 1.7, y - uy * 2.2 - ux * 1.7)
                .close()
                .build();
        Colour ink = palette.accent();
        signs.add(Mark.beside(
                MarkKind.STEP,
                List.of(
                        new Shape.Line(path, ARROW_MM + 0.9, palette.paper()),
                        new Shape.Line(head, 0.9, palette.paper()),
                        new Shape.Line(path, ARROW_MM, ink),
                        new Shape.Fill(head, ink))));
    }

    private void add(List<Shape> shapes) {
        marks.add(Mark.beside(MarkKind.TECHNIQUE, shapes));
    }
}
