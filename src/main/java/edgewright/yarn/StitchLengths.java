package edgewright.yarn;

import edgewright.chart.HookSize;
import edgewright.chart.PatternDetails;
import edgewright.chart.YarnUse;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * How much yarn a stitch of each kind takes, in centimetres: measured by the designer, and estimated where it was not.
 *
 * <p>An estimate goes out from what the designer measured of the back-loop or the plain stitch. Where neither was measured it
 * goes out from a published measurement: {@value #PUBLISHED_CM} cm for a plain stitch with a hook of {@value #PUBLISHED_HOOK_MM}
 * mm (20 stitches took 44 inches: http://crochetpatterns09.blogspot.com/2013/09/several-tips-for-finding-yardage-on.html), taken
 * in proportion to the hook if the chart names one; the proportion is ours.
 *
 * <p>From there on the shares are these. A back-loop stitch takes as much as a plain one: ours. A tall one takes twice as much:
 * it measured 1.92 times as much in a strip, and about twice as much by area, in https://www.windchilde.com/bluedepth/tag/crochet/.
 * No published share of a long stitch was found; twice as much, as for a tall one, is ours. A chain takes two thirds: between
 * the 0.47 and 0.85 that follow from the same page, with and without the foundation of its strips. A slip stitch as much as a
 * chain: ours.
 */
public final class StitchLengths {
    /** What a plain stitch took in the published measurement. */
    public static final double PUBLISHED_CM = 5.6;

    /** The hook of the published measurement. */
    public static final double PUBLISHED_HOOK_MM = 5.5;

    private final Map<YarnStitch, Double> cm = new EnumMap<>(YarnStitch.class);
    private final Set<YarnStitch> estimated = EnumSet.noneOf(YarnStitch.class);

    private StitchLengths() {}

    /** The lengths for a border that is made so. */
    public static StitchLengths of(PatternDetails making) {
        YarnUse use = making.use().orElse(YarnUse.NONE);
        StitchLengths lengths = new StitchLengths();
        double plain = plainCm(making, use);
        for (YarnStitch stitch : YarnStitch.values()) {
            OptionalDouble measured = measured(use, stitch);
            if (measured.isEmpty()) {
                lengths.estimated.add(stitch);
            }
            lengths.cm.put(
                    stitch, measured.isPresent() ? measured.getAsDouble() / YarnUse.STITCHES : plain * stitch.share());
        }
        return lengths;
    }

    /** The length that one stitch of this kind takes. */
    public double cm(YarnStitch stitch) {
        return cm.get(stitch);
    }

    /** Whether this kind was not measured. */
    public boolean isEstimate(YarnStitch stitch) {
        return estimated.contains(stitch);
    }

    private static double plainCm(PatternDetails making, YarnUse use) {
        if (use.backLoop().isPresent()) {
            return use.backLoop().getAsDouble() / YarnUse.STITCHES;
        }
        if (use.plain().isPresent()) {
            return use.plain().getAsDouble() / YarnUse.STITCHES;
        }
        return PUBLISHED_CM * making.hook().map(HookSize::mm).orElse(PUBLISHED_HOOK_MM) / PUBLISHED_HOOK_MM;
    }

    private static OptionalDouble measured(YarnUse use, YarnStitch stitch) {
        return stitch.charted().map(use::of).orElseGet(() -> stitch == YarnStitch.TALL ? use.tall() : use.slip());
    }
}
