package edgewright.draw.fabric;

import edgewright.chart.Colour;
import edgewright.draw.paint.ColourMixing;

/**
 * The tones of one yarn in light from above.
 *
 * @param hollow between the stitches, where no light comes
 * @param edge where a strand turns away
 * @param shade the side of a strand that lies in shadow
 * @param body the yarn as it is in the chart
 * @param light the side of a strand towards the light
 * @param shine the ridge of a strand
 * @param groove between two plies
 */
record Tones(Colour hollow, Colour edge, Colour shade, Colour body, Colour light, Colour shine, Colour groove) {
    private static final Colour WHITE = new Colour(0xffffff);

    /** The luminance from which on a yarn counts as light; half as much, and it counts as dark. */
    private static final double LIGHT = 0.4;

    /**
     * The tones of a yarn. A dark yarn shows its form by what shines, a light one by its shadows.
     *
     * @param lighter how much lighter than usual this stitch lies, as a part of the way to white; less than 0 for darker
     */
    static Tones of(Colour yarn, double lighter) {
        double lightness = Math.min(1, yarn.luminance() / LIGHT);
        Colour body = lighter < 0 ? ColourMixing.shade(yarn, -lighter) : ColourMixing.mix(yarn, WHITE, lighter);
        return new Tones(
                ColourMixing.shade(body, 0.6 - 0.26 * lightness),
                ColourMixing.shade(body, 0.5 - 0.22 * lightness),
                ColourMixing.shade(body, 0.28 - 0.13 * lightness),
                body,
                ColourMixing.mix(body, WHITE, 0.11 + 0.14 * lightness),
                ColourMixing.mix(body, WHITE, 0.24 + 0.26 * lightness),
                ColourMixing.shade(body, 0.34 - 0.14 * lightness));
    }
}
