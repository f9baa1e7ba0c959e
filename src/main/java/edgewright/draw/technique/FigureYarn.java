package edgewright.draw.technique;

import edgewright.chart.Colour;
import edgewright.draw.paint.ColourMode;
import edgewright.draw.paint.Palette;

/** Whose yarn a strand in a figure is. Figures have yarns of their own, which tell from one another in grey and in black alone. */
enum FigureYarn {
    /** White with an outline. */
    LIGHT(0xffffff, 0xe4e7ea),
    /** Grey with an outline and with lines across. */
    DARK(0x9aa5b1, 0xc9cfd6),
    /** What joins two layers: golden, with a line along it. */
    SEAM(0xf2b632, 0xf7dc9b),
    /** The loop that is spoken of. */
    TAKEN(0x0b6275, 0x0b6275);

    private static final Colour TWIST = new Colour(0x76828f);

    private final int colour;
    private final int ground;

    FigureYarn(int colour, int ground) {
        this.colour = colour;
        this.ground = ground;
    }

    Colour fill(ColourMode mode) {
        return mode == ColourMode.COLOUR
                ? new Colour(colour)
                : this == TAKEN ? Palette.BLACK.ink() : Palette.BLACK.paper();
    }

    /** What is seen between its strands, of the stitches behind. */
    Colour ground(ColourMode mode) {
        return mode == ColourMode.COLOUR ? new Colour(ground) : Palette.BLACK.paper();
    }

    /** The lines across a dark strand, which tell it from a light one where there is black alone. */
    static Colour twist(ColourMode mode) {
        return mode == ColourMode.COLOUR ? TWIST : Palette.BLACK.ink();
    }
}
