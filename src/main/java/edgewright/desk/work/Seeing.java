package edgewright.desk.work;

import edgewright.chart.HookHand;
import edgewright.draw.paint.ColourVision;

/**
 * Through which glasses a chart is looked at.
 *
 * @param drawn which part of the border lies on the canvas
 * @param hand whose border it is: that of a left-handed maker is seen in a mirror
 * @param vision how its colours are seen
 */
public record Seeing(Drawn drawn, HookHand hand, ColourVision vision) {
    /** What of the border is drawn. */
    public enum Drawn {
        /** A corner with an arm of two sides. */
        CORNER,
        /** One side from corner to corner, a row a round, as it is worked. */
        SIDE
    }

    /** The corner, right-handed, in full colour. */
    public static final Seeing USUAL = new Seeing(Drawn.CORNER, HookHand.RIGHT, ColourVision.FULL);

    private static final String HAND = "seeing.hand";

    /** With another part of the border. */
    public Seeing withDrawn(Drawn other) {
        return new Seeing(other, hand, vision);
    }

    /** For a maker of that hand. */
    public Seeing withHand(HookHand other) {
        return new Seeing(drawn, other, vision);
    }

    /** With colours seen otherwise. */
    public Seeing withVision(ColourVision other) {
        return new Seeing(drawn, hand, other);
    }

    /** As it was remembered, as far as it was. */
    public static Seeing of(Settings settings) {
        return new Seeing(settings.choice(USUAL.drawn), handOf(settings), settings.choice(USUAL.vision));
    }

    /** Not the hand for which patterns are published, which is another choice. */
    private static HookHand handOf(Settings settings) {
        return settings.kept(HAND).equals(HookHand.LEFT.name()) ? HookHand.LEFT : HookHand.RIGHT;
    }

    /** Remembers it. */
    public void keepIn(Settings settings) {
        settings.choose(drawn);
        settings.choose(vision);
        settings.keep(HAND, hand.name());
    }
}
