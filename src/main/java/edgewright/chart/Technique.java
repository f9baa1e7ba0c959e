package edgewright.chart;

import java.util.Objects;

/**
 * How a round is begun and closed, where a designer may choose.
 *
 * @param join how the yarn is joined
 * @param close how the last stitch is joined to the first
 */
public record Technique(Join join, Close close, Extras extras) {
    /** How the yarn is joined. */
    public enum Join {
        /** With one chain, which is no stitch. */
        CHAIN,
        /** With a slip stitch and one chain, neither of which is a stitch. */
        SLIP,
        /** With a standing stitch: the first stitch itself, begun with the loop on the hook. */
        STANDING
    }

    /** How the last stitch is joined to the first. */
    public enum Close {
        /** With a needle, by a loop that looks like a stitch. */
        INVISIBLE,
        /** With a slip stitch. */
        SLIP
    }

    /** What holds unless a designer chooses otherwise. */
    public static final Technique DEFAULT = new Technique(Join.CHAIN, Close.INVISIBLE);

    public Technique {
        Objects.requireNonNull(join);
        Objects.requireNonNull(close);
        Objects.requireNonNull(extras);
    }

    /** A technique with no unknown members. */
    public Technique(Join join, Close close) {
        this(join, close, Extras.NONE);
    }
}
