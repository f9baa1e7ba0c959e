package edgewright.draw.picture;

import edgewright.chart.Chart;
import edgewright.chart.Colour;
import edgewright.chart.HookHand;
import edgewright.chart.Stitch;
import edgewright.chart.Yarn;
import edgewright.draw.marks.MarkKind;
import edgewright.draw.marks.MarkStyle;
import edgewright.draw.paint.Area;
import edgewright.draw.paint.ColourMode;
import edgewright.draw.paint.Frame;
import edgewright.draw.paint.Palette;
import edgewright.draw.paint.PenPath;
import edgewright.draw.paint.Shape;
import java.util.ArrayList;
import java.util.List;

/** The squares that a legend shows, each as it is drawn in the chart above the piece, with its upper left corner at a point. */
final class LegendSamples {
    private static final double DOT = 0.14;
    private static final double WAY = 0.06;

    /** From the tip of the sign down to the dot on the loop where the stitch lands, in cells out from the middle of its square. */
    private static final double WAY_FROM = -0.46;

    private static final double LANDS = -1.58;

    private final Chart chart;
    private final PictureStyle style;
    private final double c;

    LegendSamples(Chart chart, PictureStyle style) {
        this.chart = chart;
        this.style = style;
        this.c = style.cellMm();
    }

    /**
     * A stitch above the squares that it reaches over.
     *
     * @param ontoCorner whether the lowest of these is that of a corner
     */
    List<Shape> stitch(Stitch stitch, boolean ontoCorner, double x, double y) {
        int down = stitch.coversStitchBelow() ? stitch.roundsDown() : 0;
        Yarn yarn = yarnOf(stitch);
        Colour ground = style.ground(yarn.colour());
        List<Shape> shapes = new ArrayList<>();
        for (int i = 0; i <= down; i++) {
            shapes.addAll(cell(new Area(x, y + i * c, c, c), ground));
        }
        if (ontoCorner) {
            shapes.addAll(chains(new Area(x, y + down * c, c, c), ground));
        }
        shapes.addAll(signs(x, y).of(stitch, style.inking().yarn(yarn.colour()), ground, stitch.roundsDown()));
        if (down > 0 && style.markStyle() == MarkStyle.SQUARES) {
            shapes.addAll(landing(style, new Area(x, y, c, c), ground, ground));
        }
        return shapes;
    }

    /**
     * What no chart shows: a dotted line from the sign of a long stitch to a dot where it lands.
     *
     * @param square the square of the sign
     * @param over the ground of the square between
     * @param at the ground of the square where it lands
     */
    static List<Shape> landing(PictureStyle style, Area square, Colour over, Colour at) {
        double c = square.widthMm();
        Frame frame = Frame.of(0, square.middleXMm(), square.middleYMm(), c);
        PenPath way = PenPath.line(0, WAY_FROM, 0, LANDS + DOT).through(frame);
        Shape dot = new Shape.Fill(
                PenPath.circle(0, LANDS, DOT).through(frame), style.inking().on(at));
        List<Shape> shapes = new ArrayList<>();
        if (style.inking() == ColourMode.BLACK) {
            Colour paper = Palette.BLACK.paper();
            shapes.add(SquaredPaper.solid(way, 3.5 * WAY * c, paper));
            shapes.add(new Shape.Fill(PenPath.circle(0, LANDS, 1.6 * DOT).through(frame), paper));
        }
        shapes.add(new Shape.Line(
                way, WAY * c, style.inking().on(over), Shape.Ends.CUT, List.of(1.5 * WAY * c, 1.5 * WAY * c)));
        shapes.add(dot);
        return shapes;
    }

    Yarn yarnOf(Stitch stitch) {
        return chart.rounds().stream()
                .filter(round -> round.has(stitch::equals))
                .findFirst()
                .flatMap(round -> chart.yarn(round.yarn()))
                .orElseThrow();
    }

    List<Shape> corner(double x, double y) {
        Area area = new Area(x, y, c, c);
        Colour ground = style.ground(chart.yarnOf(1).colour());
        List<Shape> shapes = new ArrayList<>(cell(area, ground));
        shapes.addAll(chains(area, ground));
        return shapes;
    }

    private List<Shape> chains(Area area, Colour ground) {
        return StitchShapes.cornerChains(
                area, true, chart.corner().chains(), style.inking().on(ground));
    }

    List<Shape> base(double x, double y) {
        Colour ground = style.ground(style.palette().base());
        List<Shape> shapes = new ArrayList<>(cell(new Area(x, y, c, c), ground));
        shapes.addAll(signs(x, y).base(ground, style.palette()));
        return shapes;
    }

    /** The square of a stitch that a long stitch covers. */
    List<Shape> bare(double x, double y) {
        return cell(new Area(x, y, c, c), style.ground(yarnOf(Stitch.LONG).colour()));
    }

    List<Shape> missing(double x, double y) {
        return signs(x, y).missing(style.palette());
    }

    /** A corner of squared paper with one heavier line upright in its middle. */
    List<Shape> line(MarkKind kind, double x, double y) {
        Palette palette = style.palette();
        List<Shape> shapes = new ArrayList<>();
        for (double at : new double[] {0, 1}) {
            shapes.add(SquaredPaper.solid(
                    PenPath.line(x, y + at * c, x + c, y + at * c), SquaredPaper.GRID * c, palette.grid()));
            shapes.add(SquaredPaper.solid(
                    PenPath.line(x + at * c, y, x + at * c, y + c), SquaredPaper.GRID * c, palette.grid()));
        }
        double length = kind == MarkKind.TENTH_LINE ? SquaredPaper.TENTH_LENGTH : 1;
        PenPath path = PenPath.line(x + 0.5 * c, y, x + 0.5 * c, y + length * c);
        shapes.addAll(SquaredPaper.shapes(kind, path, c, palette));
        return shapes;
    }

    /** A square with the line round an area of one yarn. */
    List<Shape> areaLine(double x, double y) {
        Area area = new Area(x, y, c, c);
        return List.of(
                new Shape.Fill(PenPath.rectangle(area), style.palette().paper()),
                new Shape.Line(
                        PenPath.rectangle(area),
                        CellMarks.AREA_EDGE * c,
                        style.palette().ink()));
    }

    List<Shape> cell(Area area, Colour ground) {
        return List.of(new Shape.Fill(PenPath.rectangle(area), ground), edge(area));
    }

    Shape edge(Area area) {
        double width = style.inking() == ColourMode.COLOUR ? 0.022 : 0.04;
        return new Shape.Line(
                PenPath.rectangle(area), width * c, style.palette().tenth(), Shape.Ends.CUT, List.of());
    }

    private StitchShapes signs(double x, double y) {
        Frame frame = Frame.of(0, x + c / 2, y + c / 2, c);
        return new StitchShapes(
                style.hand() == HookHand.LEFT ? frame.mirrored() : frame, c, style.inking(), style.markStyle());
    }
}
