package edgewright.assist.picture;

import edgewright.chart.Rules;
import edgewright.chart.Stitch;
import edgewright.check.ColumnLaw;
import edgewright.check.Severity;
import edgewright.check.Underlay;
import java.util.ArrayList;
import java.util.List;

/**
 * Which stitch may stand on which two below it, away from corners: what {@link ColumnLaw} says without an error, as a table of
 * bits. A set of stitches is a bit set by their ordinals.
 */
final class ColumnSteps {
    private static final Stitch[] STITCHES = Stitch.values();
    private static final int KINDS = STITCHES.length;

    /** By round (1, 2, or 3 and above), by the stitch below, by the stitch two below. */
    private final int[] mayStand = new int[3 * KINDS * KINDS];

    ColumnSteps(Rules rules) {
        for (int round = 1; round <= 3; round++) {
            for (Stitch below : STITCHES) {
                for (Stitch lower : STITCHES) {
                    Underlay under = under(round, below, lower);
                    int bits = 0;
                    for (Stitch stitch : STITCHES) {
                        boolean may = ColumnLaw.broken(stitch, under, rules).stream()
                                .noneMatch(rule -> rule.severity() == Severity.ERROR);
                        bits |= may ? bit(stitch) : 0;
                    }
                    mayStand[index(round, below.ordinal(), lower.ordinal())] = bits;
                }
            }
        }
    }

    /** Yarns decide warnings alone, so any will do here. */
    private static Underlay under(int round, Stitch below, Stitch lower) {
        List<Underlay.Layer> layers = new ArrayList<>();
        for (Stitch stitch : List.of(below, lower).subList(0, Math.min(2, round - 1))) {
            layers.add(new Underlay.OfStitch(stitch, layers.size() == 1));
        }
        if (layers.size() < Stitch.DEEPEST) {
            layers.add(new Underlay.OfBaseRound(false));
        }
        return new Underlay(layers);
    }

    static int bit(Stitch stitch) {
        return 1 << stitch.ordinal();
    }

    /**
     * The stitches that may stand in a round.
     *
     * @param below the ordinal of the stitch below; of no account in round 1
     * @param lower the ordinal of the stitch two below; of no account in rounds 1 and 2
     */
    int mayStand(int round, int below, int lower) {
        return mayStand[index(round, below, lower)];
    }

    private static int index(int round, int below, int lower) {
        return (Math.min(round, 3) - 1) * KINDS * KINDS + below * KINDS + lower;
    }
}
