package edgewright.yarn;

import edgewright.chart.Stitch;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/** The kinds of stitch that a border is worked in, as far as they take yarn of their own amount. */
public enum YarnStitch {
    /** Worked into the back loop only. */
    BACK_LOOP(Stitch.BACK_LOOP, 1),
    /** Worked through both loops. */
    PLAIN(Stitch.PLAIN, 1),
    /** Dropped into the round two below. */
    LONG(Stitch.LONG, 2),
    /** A chain, inside a side or at a corner. */
    CHAIN(Stitch.CHAIN, 2.0 / 3),
    /** The tall stitch of a back layer. */
    TALL(null, 2),
    /** The stitch that joins two layers. */
    SLIP(null, 2.0 / 3);

    private static final Map<Stitch, YarnStitch> OF_CHART = new EnumMap<>(Stitch.class);

    static {
        for (YarnStitch kind : values()) {
            kind.charted.ifPresent(stitch -> OF_CHART.put(stitch, kind));
        }
    }

    private final Optional<Stitch> charted;
    private final double share;

    YarnStitch(Stitch charted, double share) {
        this.charted = Optional.ofNullable(charted);
        this.share = share;
    }

    /** The stitch of a chart that is of this kind; empty for what only other layers are worked in. */
    Optional<Stitch> charted() {
        return charted;
    }

    /** How much of a plain stitch's yarn a stitch of this kind is taken to need; {@link StitchLengths} says on what grounds. */
    double share() {
        return share;
    }

    /** The kind of a charted stitch. */
    public static YarnStitch of(Stitch stitch) {
        return OF_CHART.get(stitch);
    }
}
