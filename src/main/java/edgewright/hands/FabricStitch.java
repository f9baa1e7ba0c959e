package edgewright.hands;

import edgewright.chart.Side;
import edgewright.chart.Stitch;
import java.util.Optional;

/**
 * Something that has been made: a stitch of a side, a chain inside a side, a stitch of the base round, or one arm of the
 * chains in a corner.
 *
 * <p>It knows what it stands over, what the hook went into, which of its own loops are still free, and which long stitch lies
 * in front of it. It knows nothing of columns or counts: where things are follows only from what was worked after what.
 *
 * <p>A corner's chains are two arms here, one for the side that ends there and one for the side that begins there. With one
 * chain both are the same chain, which takes a stitch from either side.
 */
public final class FabricStitch {
    /** What kind of thing it is. */
    public enum Kind {
        /** A stitch of the base round, which was on the piece before the border. */
        BASE,
        /** An arm of the chains of a corner. */
        CORNER,
        /** A stitch or chain of a side, worked as the words say. */
        WORKED,
        /** A stitch of the back layer of a double border. */
        BACK
    }

    private final Kind kind;
    /** Null for the base round, for corners and in a back layer. */
    private final Stitch stitch;

    private final int round;
    private final Side side;
    private final int number;
    private final FabricStitch below;
    private final FabricStitch into;
    private FabricStitch inFront;
    private boolean uneven;
    private boolean frontFree = true;
    private boolean backFree = true;

    private FabricStitch(
            Kind kind, Stitch stitch, int round, Side side, int number, FabricStitch below, FabricStitch into) {
        this.kind = kind;
        this.stitch = stitch;
        this.round = round;
        this.side = side;
        this.number = number;
        this.below = below;
        this.into = into;
    }

    static FabricStitch base(Side side, int number) {
        return new FabricStitch(Kind.BASE, null, 0, side, number, null, null);
    }

    static FabricStitch corner(int round, Side side, int number) {
        return new FabricStitch(Kind.CORNER, null, round, side, number, null, null);
    }

    static FabricStitch ofBack(int round, Side side, int number) {
        return new FabricStitch(Kind.BACK, null, round, side, number, null, null);
    }

    static FabricStitch worked(Stitch stitch, int round, Side side, int number, FabricStitch below, FabricStitch into) {
        return new FabricStitch(Kind.WORKED, stitch, round, side, number, below, into);
    }

    /** What kind of thing it is. */
    public Kind kind() {
        return kind;
    }

    /** Which stitch it is; empty for the base round, for corners and in a back layer. */
    public Optional<Stitch> stitch() {
        return Optional.ofNullable(stitch);
    }

    /** The round it was made in; 0 is the base round. */
    public int round() {
        return round;
    }

    /** The side it belongs to. An arm of a corner belongs to the side whose stitch it takes. */
    public Side side() {
        return side;
    }

    /** Which stitch of its side and round it is, from 1. A corner is 0 before the side, and one more than the last after it. */
    public int number() {
        return number;
    }

    /** What it was worked over: for a back-loop or plain stitch what it was worked into, else what it skipped. */
    public Optional<FabricStitch> below() {
        return Optional.ofNullable(below);
    }

    /** What the hook went into; empty for a chain, the base round and corners. */
    public Optional<FabricStitch> into() {
        return Optional.ofNullable(into);
    }

    /** The long stitch that lies before it and covers it. */
    public Optional<FabricStitch> inFront() {
        return Optional.ofNullable(inFront);
    }

    /** Whether it shares what it stands on with its neighbour, or stands on two: stitches were added or lost here. */
    public boolean isUneven() {
        return uneven;
    }

    void makeUneven() {
        uneven = true;
    }

    boolean is(Stitch other) {
        return stitch == other;
    }

    boolean isFree(Loop loop) {
        return loop == Loop.FRONT ? frontFree : backFree;
    }

    /** Takes a loop for a stitch worked into it. */
    void take(Loop loop) {
        if (loop == Loop.FRONT) {
            frontFree = false;
        } else {
            backFree = false;
        }
    }

    void coverWith(FabricStitch longStitch) {
        inFront = longStitch;
    }
}
