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
    /** How far the ground of a stitch lies from its cell away from the piece: the loop below lies in front of the foot. */
    private static final double RAISED = 0.1;

    /** How far grounds lie over one another where stitches drift apart. */
    private static final double SEAM = 0.05;

    /** How far the stitches along the edge of a piece reach into it, so that it ends where they do. */
    private static final double INTO_PIECE = 0.25;

    private final Detail detail;
    private final boolean drifts;
    private final double floor;
    private final double intoPiece;
    private final Colour depth;
    private final Map<Key, Stamp> stamps = new ConcurrentHashMap<>();

    /** @param turned the frame of the cell, its zero at the zero of the paper */
    private record Key(Object form, LoopsOnTop loops, Colour colour, Frame turned, Hand hand) {}

    private FabricStamps(Detail detail, Colour depth, boolean drifts, double floor, double intoPiece) {
        this.detail = detail;
        this.depth = depth;
        this.drifts = drifts && detail != Detail.SIMPLE;
        this.floor = floor;
        this.intoPiece = this.drifts ? intoPiece : 0;
    }

    /**
     * The stitches of a border.
     *
     * @param yarns the colours of all its yarns: what is deep between two stitches has something of them all
     * @param drifts whether rows and columns are a little uneven, as by hand; small stitches never are
     */
    public static FabricStamps ofBorder(Detail detail, List<Colour> yarns, boolean drifts) {
        Colour depth = ColourMixing.shade(ColourMixing.average(yarns), 0.62);
        return new FabricStamps(detail, depth, drifts, RAISED - 0.5 - SEAM, 0);
    }

    /** The stitches along the edge of a piece in one colour; {@code drifts} as for the border. */
    public static FabricStamps ofPiece(Detail detail, Colour colour, boolean drifts) {
        return new FabricStamps(detail, ColourMixing.shade(colour, 0.62), drifts, -0.5, INTO_PIECE);
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
        return print(stamps.computeIfAbsent(key, this::stitch), frame, cell);
    }

    private Stamp stitch(Key key) {
        Tones tones = Tones.of(key.colour(), 0.05 * key.hand().off(0));
        YarnBrush brush = new YarnBrush(tones, key.turned(), detail);
        List<Shape> shapes = new ArrayList<>();
        double to = key.loops() == LoopsOnTop.EDGE ? 0.3 : 0.5 + RAISED;
        shapes.addAll(edgeOfPiece(key));
        shapes.add(ground(hollow(tones), key.turned(), Area.between(-0.5 - SEAM, floor, 0.5, to)));
        StitchStrands strands = new StitchStrands(key.hand());
        if (key.form() != Stitch.CHAIN) {
            brush.deep(strands.behind());
        }
        boolean over = ((Stitch) key.form()).coversStitchBelow();
        strands.body((Stitch) key.form(), key.loops()).forEach(over ? brush::raised : brush::strand);
        strands.loops((Stitch) key.form(), key.loops()).forEach(brush::raised);
        shapes.addAll(brush.shapes());
        return new Stamp(shapes);
    }

    /** A piece ends where the stitches along its edge lie. */
    private List<Shape> edgeOfPiece(Key key) {
        return intoPiece == 0
                ? List.of()
                : List.of(ground(key.colour(), key.turned(), Area.between(-0.5, floor - intoPiece, 0.5, 0)));
    }

    /**
     * The chains of a corner.
     *
     * @param chains how many
     * @param frame of its cell, one wide, as the side has it that ends in the corner
     */
    public Shape corner(int chains, LoopsOnTop loops, Colour yarn, Frame frame, GridCell cell) {
        Key key = new Key(chains, loops, yarn, turned(frame), Hand.at(cell.x(), cell.y()));
        return print(stamps.computeIfAbsent(key, this::corner), frame, cell);
    }

    private Stamp corner(Key key) {
        Tones tones = Tones.of(key.colour(), 0.05 * key.hand().off(0));
        YarnBrush brush = new YarnBrush(tones, key.turned(), detail);
        List<Shape> shapes = new ArrayList<>();
        double to = key.loops() == LoopsOnTop.EDGE ? 0.28 : 0.5;
        shapes.addAll(edgeOfPiece(key));
        shapes.add(ground(hollow(tones), key.turned(), Area.between(floor, floor, to, to)));
        shapes.add(new Shape.Fill(StitchStrands.hole(detail).through(key.turned()), ColourMixing.shade(depth, 0.35)));
        StitchStrands strands = new StitchStrands(key.hand());
        strands.withinCorner((Integer) key.form()).forEach(brush::dark);
        strands.corner((Integer) key.form()).forEach(brush::raised);
        shapes.addAll(brush.shapes());
        return new Stamp(shapes);
    }

    /** A stitch that is covered: what is seen beside the long stitch before it. */
    public Shape covered(Colour shown, Frame frame, GridCell cell) {
        Frame at = drifted(frame, cell);
        return ground(hollow(Tones.of(shown, 0)), at, Area.between(-0.5 - SEAM, floor, 0.5, 0.5 + RAISED));
    }

    private Colour hollow(Tones tones) {
        return ColourMixing.mix(tones.hollow(), depth, 0.12);
    }

    private static Shape ground(Colour colour, Frame frame, Area area) {
        Area onPaper = PenPath.rectangle(area).through(frame).bounds();
        return new Shape.Fill(PenPath.rectangle(onPaper), colour);
    }

    private static Frame turned(Frame frame) {
        return new Frame(0, 0, frame.alongXMm(), frame.alongYMm(), frame.outXMm(), frame.outYMm());
    }

    private Shape print(Stamp stamp, Frame frame, GridCell cell) {
        Frame at = drifted(frame, cell);
        return new Shape.Stamped(stamp, at.zeroXMm(), at.zeroYMm());
    }

    /** The frame of a cell where the hand has laid it; for a left-handed maker as in a mirror. */
    private Frame drifted(Frame frame, GridCell cell) {
        if (!drifts) {
            return frame;
        }
        double[] drift = Hand.drift(cell.x(), cell.y());
        double cellMm = Math.hypot(frame.alongXMm(), frame.alongYMm());
        boolean mirrored = frame.alongXMm() * frame.outYMm() < frame.alongYMm() * frame.outXMm();
        return new Frame(
                frame.zeroXMm() + (mirrored ? -cellMm : cellMm) * drift[0],
                frame.zeroYMm() + cellMm * drift[1],
                frame.alongXMm(),
                frame.alongYMm(),
                frame.outXMm(),
                frame.outYMm());
    }
}
