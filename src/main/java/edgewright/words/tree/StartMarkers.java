package edgewright.words.tree;

import java.util.Objects;

/**
 * The markers above which rounds are started: one for all of them, or one for rounds 1, 3, 5 and so on and one for the others.
 *
 * <p>Stitches stand straight above each other. From round to round the stitch above a marker is one further from the corner
 * just turned, so its number is one higher.
 *
 * @param round the round in which the markers are put; 0 for the base round. The rounds up to it begin at a corner
 * @param odd that for rounds of an odd number
 * @param even that for rounds of an even number; equal to the other if there is but one marker
 */
public record StartMarkers(int round, StartMarker odd, StartMarker even) {
    public StartMarkers {
        Objects.requireNonNull(odd);
        Objects.requireNonNull(even);
        if (round < 0) {
            throw new IllegalArgumentException("a marker in round " + round);
        }
    }

    /** Whether one marker is for all rounds. */
    public boolean isOne() {
        return odd.equals(even);
    }

    /** The marker above which a round of this number starts. */
    public StartMarker of(int number) {
        return number % 2 == 0 ? even : odd;
    }

    /**
     * The stitch of the round below in which a round of this number is joined if it starts right above its marker, counted as
     * the marker's own stitch is.
     */
    public int joins(int number) {
        return of(number).stitch() + number - 1 - round;
    }

    /** Markers in the stitches of a later round that stand above these. */
    public StartMarkers in(int later) {
        int up = later - round;
        return new StartMarkers(
                later,
                new StartMarker(odd.side(), odd.stitch() + up),
                new StartMarker(even.side(), even.stitch() + up));
    }
}
