package edgewright.check;

import edgewright.chart.Chart;
import edgewright.chart.Footing;
import edgewright.chart.Place;
import edgewright.chart.SideShape;
import edgewright.chart.Stitch;

/**
 * What lies under a stitch in its fabric column, as far as a rule about one stitch can ask: what it stands on, and what is under
 * that. It names no place, so it can be made without a chart.
 */
public sealed interface Underlay {
    /**
     * The base round: the stitch is in round 1.
     *
     * @param atCorner whether it stands on a corner chain there, as the first or last stitch of a side
     */
    record BaseRound(boolean atCorner) implements Underlay {}

    /** A corner chain of a charted round, and nothing of this side under that: the first or last stitch of a side past round 1. */
    record CornerChain() implements Underlay {}

    /**
     * A stitch of a charted round.
     *
     * @param below the stitch directly below
     * @param ownYarnBelow whether that is worked in the yarn of the stitch that stands on it
     * @param lower what is two rounds below
     */
    record OnStitch(Stitch below, boolean ownYarnBelow, Lower lower) implements Underlay {}

    /** What is two rounds below a stitch. */
    sealed interface Lower {}

    /**
     * The base round, which has no yarn in the chart: the stitch is in round 2.
     *
     * @param inCornerChain whether it is a corner chain of the base round, as under the second or last but one of a side
     */
    record LowerBaseRound(boolean inCornerChain) implements Lower {}

    /** A corner chain of a charted round: under the second stitch of a side or the last but one. */
    record LowerCornerChain(boolean ownYarn) implements Lower {}

    /** A stitch of a charted round. */
    record LowerStitch(Stitch stitch, boolean ownYarn) implements Lower {}

    /**
     * What lies under a stitch of a chart.
     *
     * @throws IllegalArgumentException if the place is beyond its section; the chart must not be ragged
     */
    static Underlay of(Chart chart, Place place) {
        SideShape shape = chart.shape();
        Footing footing = shape.footing(place);
        if (place.round() == 1) {
            return new BaseRound(footing instanceof Footing.OnCornerChain);
        }
        if (footing instanceof Footing.OnStitch on) {
            return new OnStitch(
                    chart.stitch(on.place()),
                    isSameYarn(chart, place.round(), place.round() - 1),
                    lower(chart, place.round(), shape.footing(on.place())));
        }
        return new CornerChain();
    }

    private static Lower lower(Chart chart, int round, Footing footing) {
        if (round == 2) {
            return new LowerBaseRound(footing instanceof Footing.OnCornerChain);
        }
        boolean ownYarn = isSameYarn(chart, round, round - 2);
        return footing instanceof Footing.OnStitch on
                ? new LowerStitch(chart.stitch(on.place()), ownYarn)
                : new LowerCornerChain(ownYarn);
    }

    private static boolean isSameYarn(Chart chart, int round, int other) {
        return chart.round(round).yarn().equals(chart.round(other).yarn());
    }
}
