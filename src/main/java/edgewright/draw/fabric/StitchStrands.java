package edgewright.draw.fabric;

import edgewright.chart.Stitch;
import edgewright.draw.paint.PenPath;
import java.util.ArrayList;
import java.util.List;

/**
 * How the yarn of each stitch lies, as strands from the lowest to the topmost, in a cell one wide (see {@link Strand}).
 *
 * <p>Right side facing. A stitch worked in the round stands a little askew: its top lies behind its foot, seen the way of
 * working. Its two loops on top are a V that lies down, closed where the stitch before it ends, open the way of working; of
 * the V only the leg towards the maker is seen once a back-loop stitch stands in the other. Source: common practice, no source.
 */
final class StitchStrands {
    private static final double LEG = 0.43;
    private static final double LOOP = 0.42;

    /** Where a stitch comes out behind the free front loop that it stands behind. */
    private static final double FOOT = -0.42;

    private final Hand hand;

    StitchStrands(Hand hand) {
        this.hand = hand;
    }

    /** What is seen between the legs: the yarn at the back, which runs level from stitch to stitch. */
    Strand behind() {
        double out = -0.08 + 0.05 * hand.off(7);
        return Strand.of(0.6, -0.6, out - 0.04, -0.2, out + 0.04, 0.2, out + 0.04, 0.6, out - 0.04);
    }

    /** What stands up: the two legs of a post, together at the foot and apart at the top. */
    List<Strand> body(Stitch stitch, LoopsOnTop loops) {
        double top = loops == LoopsOnTop.NONE ? 0.52 : 0.36;
        double lean = 0.02 + 0.06 * hand.off(1);
        double sway = 0.03 * hand.off(4);
        double thick = LEG * (1 + 0.09 * hand.off(5));
        return switch (stitch) {
            case BACK_LOOP, PLAIN ->
                List.of(
                        Strand.of(thick, 0.06 + sway, FOOT, 0.12 + sway, -0.2, 0.28 - lean, 0, 0.31 - lean, top)
                                .thick(thick * 0.85, thick, thick * 1.05),
                        Strand.of(thick, sway, FOOT, -0.1 + sway, -0.2, -0.25 - lean, -0.05, -0.28 - lean, top)
                                .thick(thick * 0.85, thick, thick * 1.05));
            case LONG ->
                List.of(
                        Strand.of(thick, 0.08, -1.6, 0.2, -1.25, 0.27 + sway, -0.9, 0.24 - lean, -0.35)
                                .thick(thick * 0.9, thick * 1.05, thick),
                        Strand.of(thick, -0.04, -1.6, -0.17, -1.25, -0.27 + sway, -0.9, -0.25 - lean, -0.35)
                                .thick(thick * 0.9, thick * 1.05, thick),
                        Strand.of(thick, 0.02, -0.6, 0.1, -0.34, 0.28 - lean, 0, 0.31 - lean, top),
                        Strand.of(thick, 0.34, -0.94, 0.16, -0.52, -0.25 - lean, -0.2, -0.28 - lean, top));
            case CHAIN -> List.of();
        };
    }

    /** What lies on top. */
    List<Strand> loops(Stitch stitch, LoopsOnTop loops) {
        if (stitch == Stitch.CHAIN) {
            return chains(1, Strand.of(LOOP, -0.55, 0.02, -0.2, 0.02, 0.2, 0.02, 0.55, 0.02), 0.15);
        }
        double lift = 0.04 * hand.off(2);
        double tilt = 0.05 * hand.off(3);
        return switch (loops) {
            case FRONT -> List.of(front(0.37 + lift, tilt));
            case BOTH, EDGE ->
                List.of(
                        Strand.of(0.24, -0.58, 0.34, -0.2, 0.42 + lift, 0.2, 0.46 + lift, 0.58, 0.36),
                        Strand.of(0.27, -0.58, 0.34, -0.2, 0.18 + lift, 0.2, 0.12 + tilt, 0.58, 0.2));
            case NONE -> List.of();
        };
    }

    /** The bar of a free front loop, a little lower where it comes out of the stitch before it. */
    private Strand front(double out, double tilt) {
        double thick = LOOP * (1 + 0.1 * hand.off(6));
        return Strand.of(thick, -0.58, out - 0.14 - tilt, -0.34, out + 0.06, 0.1, out + 0.14, 0.57, out + 0.06 + tilt)
                .thick(thick * 0.6, thick * 1.05, thick * 0.75);
    }

    /**
     * The chains of a corner, from the side that ends in it round to the next: links that each part into two strands, with the open
     * hole of the corner towards the piece.
     */
    List<Strand> corner(int chains) {
        return chains(chains, aroundCorner(), chains == 1 ? 0.17 : 0.19);
    }

    /** What is dark within each chain of a corner, between its two strands. */
    List<Strand> withinCorner(int chains) {
        List<Strand> within = new ArrayList<>();
        for (int i = 0; i < chains; i++) {
            within.add(aroundCorner()
                    .along((i + 0.1) / chains, (i + 0.95) / chains, 0, 0, 0)
                    .thick(0.08, 0.2, 0.12));
        }
        return within;
    }

    private Strand aroundCorner() {
        double sway = 0.03 * hand.off(2);
        return Strand.of(LOOP, -0.6, 0.22, 0.02 + sway, 0.4, 0.4, 0.02 + sway, 0.22, -0.6);
    }

    /** The open hole that the chains of a corner leave towards the piece. */
    static PenPath hole(Detail detail) {
        return PenPath.circle(-0.26, -0.26, detail == Detail.SIMPLE ? 0.16 : 0.23);
    }

    /** Chains along a curve: each a link of two strands that part on the way and come together in the next. */
    private static List<Strand> chains(int count, Strand way, double apart) {
        List<Strand> strands = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double from = Math.max(0, (i - 0.12) / count);
            double to = Math.min(1, (i + 1.12) / count);
            strands.add(way.along(from, to, 0.03, apart, 0.07).thick(0.19, 0.2, 0.19));
            strands.add(way.along(from, to, -0.03, -apart, -0.07).thick(0.19, 0.2, 0.19));
        }
        return strands;
    }
}
