package edgewright.draw.paint;

import edgewright.chart.Colour;
import java.util.List;
import java.util.function.ToIntFunction;

/** Colours made from colours. */
public final class ColourMixing {
    private static final Colour DARK = Colour.parse("#15181c");
    private static final Colour LIGHT = Colour.parse("#ffffff");

    /** The luminance whose contrast with black and with white is the same: (L + 0.05)^2 = 0.05 * 1.05. */
    private static final double MIDDLE_LUMINANCE = 0.179;

    private ColourMixing() {}

    /** Nearly black or white, whichever stands out better on this ground. */
    public static Colour on(Colour ground) {
        return ground.luminance() > MIDDLE_LUMINANCE ? DARK : LIGHT;
    }

    /** A part of the way from one colour to another, channel by channel. */
    public static Colour mix(Colour from, Colour to, double part) {
        int red = mix(from.red(), to.red(), part);
        int green = mix(from.green(), to.green(), part);
        int blue = mix(from.blue(), to.blue(), part);
        return new Colour(red << 16 | green << 8 | blue);
    }

    /** A darker shade; 0 is the colour itself, 1 black. */
    public static Colour shade(Colour colour, double part) {
        return mix(colour, new Colour(0), part);
    }

    /** The middle of some colours, channel by channel. */
    public static Colour average(List<Colour> colours) {
        int red = average(colours, Colour::red);
        int green = average(colours, Colour::green);
        int blue = average(colours, Colour::blue);
        return new Colour(red << 16 | green << 8 | blue);
    }

    private static int average(List<Colour> colours, ToIntFunction<Colour> channel) {
        return (int) Math.round(colours.stream().mapToInt(channel).average().orElseThrow());
    }

    private static int mix(int from, int to, double part) {
        return (int) Math.round(from + (to - from) * part);
    }
}
