package edgewright.draw.fabric;

import edgewright.chart.Stitch;
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
    private static final double LEG = 0.48;
    private static final double LOOP = 0.35;

    private final Hand hand;

    StitchStrands(Hand hand) {
        this.hand = hand;
    }

    /** What stands up: the legs of a post. */
    List<Strand> body(Stitch stitch, LoopsOnTop loops) {
        double top = loops == LoopsOnTop.NONE ? 0.46 : 0.26;
        double lean = 0.03 + 0.045 * hand.off(1);
        return switch (stitch) {
            case BACK_LOOP, PLAIN ->
                List.of(
                        Strand.of(LEG, 0.17, -0.5, 0.2, -0.3, 0.27 - lean, -0.1, 0.28 - lean, top)
                                .thick(LEG * 0.85, LEG, LEG),
                        Strand.of(LEG, -0.08, -0.5, -0.1, -0.3, -0.24 - lean, -0.12, -0.25 - lean, top)
                                .thick(LEG * 0.85, LEG, LEG));
            case LONG ->
                List.of(
                        Strand.of(LEG, 0.15, -1.5, 0.2, -1.2, 0.26, -0.9, 0.25 - lean, -0.4),
                        Strand.of(LEG, -0.1, -1.5, -0.14, -1.2, -0.26, -0.9, -0.23 - lean, -0.4),
                        Strand.of(LEG, 0.06, -0.5, 0.2, -0.3, 0.27, -0.1, 0.28 - lean, top),
                        Strand.of(LEG + 0.02, 0.38, -0.84, 0.14, -0.46, -0.22, -0.3, -0.25 - lean, top));
            case CHAIN -> List.of();
        };
    }

    /** What lies on top. */
    List<Strand> loops(Stitch stitch, LoopsOnTop loops) {
        if (stitch == Stitch.CHAIN) {
            return chains(1, Strand.of(LOOP, -0.5, 0.02, -0.2, 0.02, 0.2, 0.02, 0.5, 0.02));
        }
        double lift = 0.035 * hand.off(2);
        double tilt = 0.035 * hand.off(3);
        return switch (loops) {
            case FRONT -> List.of(front(0.29 + lift, tilt));
            case BOTH, EDGE ->
                List.of(
                        Strand.of(0.24, -0.5, 0.32, -0.2, 0.4, 0.2, 0.44, 0.5, 0.36),
                        Strand.of(0.27, -0.5, 0.32 + lift, -0.2, 0.18, 0.2, 0.12 + tilt, 0.5, 0.18));
            case NONE -> List.of();
        };
    }

    private static Strand front(double out, double tilt) {
        return Strand.of(LOOP, -0.5, out + 0.07 + tilt, -0.2, out + 0.02, 0.2, out - 0.1, 0.5, out - 0.09 - tilt)
                .thick(LOOP * 0.9, LOOP, LOOP);
    }

    /** What is seen within a corner: the stitches at its arms, which lean into the chains below. */
    List<Strand> underCorner() {
        double sway = 0.03 * hand.off(1);
        return List.of(
                Strand.of(0.4, -0.46, -0.4, -0.36, -0.24, -0.32, -0.1, -0.24 + sway, 0.3),
                Strand.of(0.4, -0.4, -0.46, -0.24, -0.36, -0.1, -0.32, 0.3, -0.24 + sway));
    }

    /** The chains of a corner, from the side that ends in it round to the next. */
    List<Strand> corner(int chains, LoopsOnTop loops) {
        double sway = 0.03 * hand.off(2);
        Strand way = Strand.of(LOOP, -0.5, 0.28, 0.12 + sway, 0.33, 0.33, 0.12 + sway, 0.28, -0.5);
        if (loops == LoopsOnTop.EDGE) {
            return chains(chains, way);
        }
        List<Strand> strands = new ArrayList<>();
        for (int i = 0; i < chains; i++) {
            strands.add(way.along((double) i / chains, (i + 1.0) / chains, -0.03, 0.03)
                    .thick(0.38, 0.42, 0.4));
        }
        return strands;
    }

    /** Chains along a curve: each two strands that part the way of working. */
    private static List<Strand> chains(int count, Strand way) {
        List<Strand> strands = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double from = (double) i / count;
            double to = (i + 1.0) / count;
            strands.add(way.along(from, to, 0.02, 0.13).thick(0.2, 0.25, 0.22));
            strands.add(way.along(from, to, -0.02, -0.13).thick(0.2, 0.25, 0.22));
        }
        return strands;
    }
}
