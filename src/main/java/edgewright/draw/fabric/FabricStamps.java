package edgewright.draw.fabric;

import edgewright.chart.Colour;
import edgewright.chart.GridCell;
import edgewright.chart.Stitch;
import edgewright.draw.paint.Area;
import edgewright.draw.paint.ColourMixing;
import edgewright.draw.paint.Frame;
import edgewright.draw.paint.PenPath;
import edgewright.draw.paint.Shape;
import edgewright.draw.paint.Stamp;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The stitches of worked fabric, each kind made once for each yarn, way to lie and side of the piece, and printed wherever it
 * comes. Cells must be drawn from the inside out, for a long stitch lies over the stitch that it covers.
 */
public final class FabricStamps {
    private final Detail detail;
    private final Colour depth;
    private final Map<Key, Stamp> stamps = new ConcurrentHashMap<>();

    /** @param turned the frame of the cell, its zero at the zero of the paper */
    private record Key(Object form, LoopsOnTop loops, Colour colour, Frame turned, Hand hand) {}

    /** @param yarns the colours of all yarns of the border: what is deep between two stitches has something of them all */
    public FabricStamps(Detail detail, List<Colour> yarns) {
        this.detail = detail;
        this.depth = ColourMixing.shade(ColourMixing.average(yarns), 0.62);
    }

    /** What is deep between all stitches; it belongs under them too, for two edges that meet let the ground through. */
    public Colour depth() {
        return depth;
    }

    /**
     * A stitch.
     *
     * @param frame of its cell, one wide
     */
    public Shape stitch(Stitch stitch, LoopsOnTop loops, Colour yarn, Frame frame, GridCell cell) {
        Hand hand = Hand.at(cell.x(), cell.y());
        Key key = new Key(stitch, loops, yarn, turned(frame), hand);
        return print(stamps.computeIfAbsent(key, this::stitch), frame);
    }

    private Stamp stitch(Key key) {
        Tones tones = Tones.of(key.colour(), 0.03 * key.hand().off(0));
        YarnBrush brush = new YarnBrush(tones, key.turned(), detail);
        List<Shape> shapes = new ArrayList<>();
        double from = ((Stitch) key.form()).coversStitchBelow() ? -0.55 : -0.5;
        double to = key.loops() == LoopsOnTop.EDGE ? 0.3 : 0.5;
        shapes.add(ground(hollow(tones), key.turned(), Area.between(-0.5, from, 0.5, to)));
        StitchStrands strands = new StitchStrands(key.hand());
        strands.body((Stitch) key.form(), key.loops()).forEach(brush::strand);
        strands.loops((Stitch) key.form(), key.loops()).forEach(brush::raised);
        shapes.addAll(brush.shapes());
        return new Stamp(shapes);
    }

    /**
     * The chains of a corner.
     *
     * @param chains how many
     * @param frame of its cell, one wide, as the side has it that ends in the corner
     */
    public Shape corner(int chains, LoopsOnTop loops, Colour yarn, Frame frame, GridCell cell) {
        Key key = new Key(chains, loops, yarn, turned(frame), Hand.at(cell.x(), cell.y()));
        return print(stamps.computeIfAbsent(key, this::corner), frame);
    }

    private Stamp corner(Key key) {
        Tones tones = Tones.of(key.colour(), 0.03 * key.hand().off(0));
        YarnBrush brush = new YarnBrush(tones, key.turned(), detail);
        List<Shape> shapes = new ArrayList<>();
        double to = key.loops() == LoopsOnTop.EDGE ? 0.28 : 0.5;
        shapes.add(ground(hollow(tones), key.turned(), Area.between(-0.5, -0.5, to, to)));
        StitchStrands strands = new StitchStrands(key.hand());
        strands.underCorner().forEach(brush::strand);
        strands.corner((Integer) key.form(), key.loops()).forEach(brush::raised);
        shapes.addAll(brush.shapes());
        return new Stamp(shapes);
    }

    /** A stitch that is covered: what is seen beside the long stitch before it. */
    public Shape covered(Colour shown, Frame frame) {
        return ground(hollow(Tones.of(shown, 0)), frame, Area.between(-0.5, -0.5, 0.5, 0.5));
    }

    private Colour hollow(Tones tones) {
        return ColourMixing.mix(tones.hollow(), depth, 0.8);
    }

    private static Shape ground(Colour colour, Frame frame, Area area) {
        Area onPaper = PenPath.rectangle(area).through(frame).bounds();
        return new Shape.Fill(PenPath.rectangle(onPaper), colour);
    }

    private static Frame turned(Frame frame) {
        return new Frame(0, 0, frame.alongXMm(), frame.alongYMm(), frame.outXMm(), frame.outYMm());
    }

    private static Shape print(Stamp stamp, Frame frame) {
        return new Shape.Stamped(stamp, frame.zeroXMm(), frame.zeroYMm());
    }
}
