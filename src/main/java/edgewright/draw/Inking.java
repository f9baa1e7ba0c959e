package edgewright.draw;

import edgewright.chart.Colour;

/** Whether a picture is printed in the colours of its yarns or in black alone. */
public enum Inking {
    /** Each yarn in its own colour. */
    COLOUR {
        @Override
        Colour yarn(Colour colour) {
            return colour;
        }

        @Override
        Colour on(Colour ground) {
            return Inks.on(ground);
        }

        @Override
        Colour softly(Colour ground) {
            return Inks.mix(ground, Inks.on(ground), 0.5);
        }

        @Override
        Colour outline(Colour yarn) {
            return Inks.mix(yarn, Inks.on(yarn), 0.85);
        }
    },
    /**
     * Black on white, with neither colours nor greys: what a photocopier keeps. What shows of a yarn is hatched, see {@link
     * Hatch}, and every mark has a white edge that parts it from the hatching.
     */
    BLACK {
        @Override
        Colour yarn(Colour colour) {
            return Palette.BLACK.ink();
        }

        @Override
        Colour on(Colour ground) {
            return Palette.BLACK.ink();
        }

        @Override
        Colour softly(Colour ground) {
            return Palette.BLACK.ink();
        }

        @Override
        Colour outline(Colour yarn) {
            return Palette.BLACK.paper();
        }
    };

    /** What a mark in this yarn is drawn in. */
    abstract Colour yarn(Colour colour);

    /** What is drawn on this ground. */
    abstract Colour on(Colour ground);

    /** What is drawn on this ground and stands back. */
    abstract Colour softly(Colour ground);

    /** The edge of a mark in this yarn. */
    abstract Colour outline(Colour yarn);
}
