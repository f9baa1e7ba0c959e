package edgewright.words.technique;

import edgewright.chart.Corner;
import edgewright.chart.Stitch;
import edgewright.chart.StitchLoop;
import edgewright.chart.Technique;
import java.util.Objects;

/**
 * One technique as a pattern uses it. What does not matter for a kind is left as in {@link #of(Kind)}, so that two that look the
 * same are equal.
 *
 * @param join how the yarn of a round is joined
 * @param chains the chains of a corner
 * @param ends where the round begins and ends
 * @param stitch the stitch that is worked
 */
public record ShownTechnique(Kind kind, Technique.Join join, int chains, Ends ends, Stitch stitch) {
    /** What is shown, in the order in which a maker meets it. */
    public enum Kind {
        /** A base round along a row of stitches. */
        ALONG_STITCHES,
        /** A base round along the ends of rows. */
        ROW_ENDS,
        /** How a round begins at a corner. */
        START_AT_CORNER,
        /** How a round begins above its marker. */
        START_ABOVE_MARKER,
        /** A back-loop stitch. */
        BACK_LOOP,
        /** A long stitch. */
        LONG,
        /** The stitches and chains of a corner. */
        CORNER,
        /** Two stitches made out of one. */
        TWO_IN_ONE,
        /** Two stitches worked as one. */
        TWO_TOGETHER,
        /** How a round is closed with a needle. */
        INVISIBLE_JOIN,
        /** How a round is closed with a slip stitch. */
        SLIP_JOIN,
        /** How the back layer is joined to the front. */
        LAYERS
    }

    /** Where a round begins and ends. */
    public enum Ends {
        /** It begins with the first stitch after a corner and ends with the chains of that corner. */
        CORNER,
        /** It begins and ends along a side. */
        SIDE
    }

    public ShownTechnique {
        Objects.requireNonNull(kind);
        Objects.requireNonNull(join);
        Objects.requireNonNull(ends);
        Objects.requireNonNull(stitch);
        Corner.requireChains(chains);
    }

    /** In the usual way: a back-loop stitch, two chains in a corner, along a side. */
    public static ShownTechnique of(Kind kind) {
        return new ShownTechnique(kind, Technique.DEFAULT.join(), Corner.DEFAULT.chains(), Ends.SIDE, Stitch.BACK_LOOP);
    }

    /** With this way of joining. */
    public ShownTechnique with(Technique.Join other) {
        return new ShownTechnique(kind, other, chains, ends, stitch);
    }

    /** In a round that begins and ends there. */
    public ShownTechnique with(Ends other) {
        return new ShownTechnique(kind, join, chains, other, stitch);
    }

    /** With this stitch. */
    public ShownTechnique with(Stitch other) {
        return new ShownTechnique(kind, join, chains, ends, other);
    }

    /** With so many chains in a corner. */
    public ShownTechnique withChains(int number) {
        return new ShownTechnique(kind, join, number, ends, stitch);
    }

    /** Whether the stitch goes through both loops of the one below, not through the back loop alone. */
    public boolean takesBothLoops() {
        return stitch.takes(StitchLoop.FRONT) && stitch.takes(StitchLoop.BACK);
    }
}
