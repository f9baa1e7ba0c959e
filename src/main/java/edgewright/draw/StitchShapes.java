package edgewright.draw;

import edgewright.chart.Colour;
import edgewright.chart.Stitch;
import java.util.ArrayList;
import java.util.List;

/**
 * What each stitch looks like in the layer of what to do, in the frame of its cell.
 *
 * <p>After the open symbols of the trade: an oval is a chain, a cross a plain stitch, a stem with bar and one slash a stitch
 * with one yarn over; an arc says which loop is taken, bulging up for the back loop and down for the front loop. Source of
 * the signs: from memory; publishers differ, so every chart has its legend.
 */
final class StitchShapes {
    private static final double FINE = 0.05;
    private static final double MEDIUM = 0.075;

    private final Frame frame;
    private final double cellMm;

    StitchShapes(Frame frame, double cellMm) {
        this.frame = frame;
        this.cellMm = cellMm;
    }

    /**
     * The mark of a stitch.
     *
     * @param yarn the colour of its own yarn
     * @param ground what the mark lies on in its own cell
     */
    List<Shape> of(Stitch stitch, Colour yarn, Colour ground) {
        Colour ink = Inks.on(ground);
        return switch (stitch) {
            case BACK_LOOP -> List.of(line(arc(0.26, -0.28, 0.2), FINE, Inks.mix(ground, ink, 0.6)));
            case PLAIN -> List.of(line(cross(0.2), MEDIUM, ink));
            case CHAIN -> List.of(line(oval(0, 0, 0.3, 0.17, 0), MEDIUM, ink));
            case LONG -> longStitch(yarn);
        };
    }

    /** The chains of a corner, from the end of the incoming side round to the start of the outgoing one. */
    List<Shape> cornerChains(int chains, Colour ground) {
        Colour ink = Inks.on(ground);
        List<Shape> shapes = new ArrayList<>();
        double step = chains == 3 ? 30 : 40;
        for (int i = 0; i < chains; i++) {
            double degrees = 45 + (i - (chains - 1) / 2.0) * step;
            double t = Math.toRadians(degrees);
            double along = -0.5 + 0.76 * Math.sin(t);
            double out = -0.5 + 0.76 * Math.cos(t);
            shapes.add(line(oval(along, out, 0.17, 0.1, -t), FINE, ink));
        }
        return shapes;
    }

    /** A stitch of the base round. */
    List<Shape> base(Colour ground, Palette palette) {
        PenPath dot = PenPath.circle(0, 0, 0.06).through(frame);
        return List.of(new Shape.Fill(dot, Inks.mix(ground, palette.quietInk(), 0.7)));
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

    /** A stem with bar and slash, and an arc at its foot for the front loop it is dropped into. */
    private List<Shape> longStitch(Colour yarn) {
        PenPath path = new PenPath.Builder()
                .moveTo(0, 0.3)
                .lineTo(0, -1.74)
                .moveTo(-0.26, 0.3)
                .lineTo(0.26, 0.3)
                .moveTo(-0.22, -0.66)
                .lineTo(0.22, -0.42)
                .moveTo(-0.2, -1.6)
                .curveTo(-0.12, -1.78, 0.12, -1.78, 0.2, -1.6)
                .build()
                .through(frame);
        return List.of(line(path, 0.25, Inks.on(yarn)), line(path, 0.12, yarn));
    }

    private PenPath arc(double half, double foot, double rise) {
        return new PenPath.Builder()
                .moveTo(-half, foot)
                .curveTo(-half * 0.6, foot + rise * 1.33, half * 0.6, foot + rise * 1.33, half, foot)
                .build()
                .through(frame);
    }

    private PenPath cross(double arm) {
        return new PenPath.Builder()
                .moveTo(-arm, 0)
                .lineTo(arm, 0)
                .moveTo(0, -arm)
                .lineTo(0, arm)
                .build()
                .through(frame);
    }

    private PenPath oval(double along, double out, double half, double halfAcross, double radians) {
        double cos = Math.cos(radians);
        double sin = Math.sin(radians);
        Frame turned = new Frame(along, out, cos, sin, -sin, cos);
        return PenPath.oval(0, 0, half, halfAcross).through(turned).through(frame);
    }

    private Shape line(PenPath path, double width, Colour colour) {
        return new Shape.Line(path, width * cellMm, colour);
    }
}
