package edgewright.check;

import edgewright.chart.BorderShape;
import edgewright.chart.Chart;
import edgewright.chart.Footing;
import edgewright.chart.Place;
import edgewright.chart.Stitch;
import java.util.ArrayList;
import java.util.List;

/**
 * What lies under a stitch in its fabric column, as far as a rule about one stitch can ask: layer by layer, as deep as a stitch can
 * be worked. It names no place, so it can be made without a chart.
 *
 * @param layers the first element is what the stitch stands on, the next what is under that. There are {@link Stitch#DEEPEST} of
 *     them, or fewer where one of them is no stitch: that is the last
 */
public record Underlay(List<Layer> layers) {
    public Underlay {
        layers = List.copyOf(layers);
        int stitches =
                (int) layers.stream().takeWhile(OfStitch.class::isInstance).count();
        if (layers.size() != Math.min(stitches + 1, Stitch.DEEPEST)) {
            throw new IllegalArgumentException("not what can lie under a stitch: " + layers);
        }
    }

    /** What lies some rounds below a stitch in its column. */
    public sealed interface Layer {}

    /**
     * A stitch of a charted round.
     *
     * @param ownYarn whether its round is worked in the yarn of the stitch that is asked about
     */
    public record OfStitch(Stitch stitch, boolean ownYarn) implements Layer {}

    /** A corner chain of a charted round, and nothing of this side under that. */
    public record OfCornerChain(boolean ownYarn) implements Layer {}

    /**
     * The base round, which has no yarn in the chart.
     *
     * @param atCorner whether it is a corner chain of the base round, as under the first or last stitch of a side in round 1
     */
    public record OfBaseRound(boolean atCorner) implements Layer {}

    /** What the stitch stands on. */
    public Layer below() {
        return layers.get(0);
    }

    /**
     * What lies under a stitch of a chart.
     *
     * @throws IllegalArgumentException if the place is beyond its section; the chart must not be ragged
     */
    static Underlay of(Chart chart, Place place) {
        BorderShape border = chart.border();
        List<Layer> layers = new ArrayList<>();
        Footing footing = border.footing(place);
        for (int round = place.round() - 1; round > 0; round--) {
            boolean ownYarn =
                    chart.round(place.round()).yarn().equals(chart.round(round).yarn());
            if (!(footing instanceof Footing.OnStitch on)) {
                layers.add(new OfCornerChain(ownYarn));
                return new Underlay(layers);
            }
            layers.add(new OfStitch(chart.stitch(on.place()), ownYarn));
            if (layers.size() == Stitch.DEEPEST) {
                return new Underlay(layers);
            }
            footing = border.footing(on.place());
        }
        layers.add(new OfBaseRound(footing instanceof Footing.OnCornerChain));
        return new Underlay(layers);
    }
}
