package edgewright.draw.paint;

import edgewright.chart.Colour;

/** Whether a picture is printed in the colours of its yarns or in black alone. */
public enum ColourMode {
    /** Each yarn in its own colour. */
    COLOUR {
        @Override
        public Colour yarn(Colour colour) {
            return colour;
        }

        @Override
        public Colour on(Colour ground) {
            return ColourMixing.on(ground);
        }

        @Override
        public Colour softly(Colour ground) {
            return ColourMixing.mix(ground, ColourMixing.on(ground), 0.5);
        }

        @Override
        public Colour outline(Colour yarn) {
            return ColourMixing.mix(yarn, ColourMixing.on(yarn), 0.85);
        }
    },
    /**
     * Black on white, with neither colours nor greys: what a photocopier keeps. What shows of a yarn is hatched, see {@link
     * Hatch}, and every mark has a white edge that parts it from the hatching.
     */
    BLACK {
        @Override
        public Colour yarn(Colour colour) {
            return Palette.BLACK.ink();
        }

        @Override
        public Colour on(Colour ground) {
            return Palette.BLACK.ink();
        }

        @Override
        public Colour softly(Colour ground) {
            return Palette.BLACK.ink();
        }

        @Override
        public Colour outline(Colour yarn) {
            return Palette.BLACK.paper();
        }
    };

    /** What a mark in this yarn is drawn in. */
    public abstract Colour yarn(Colour colour);

    /** What is drawn on this ground. */
    public abstract Colour on(Colour ground);

    /** What is drawn on this ground and stands back. */
    public abstract Colour softly(Colour ground);

    /** The edge of a mark in this yarn. */
    public abstract Colour outline(Colour yarn);
}
