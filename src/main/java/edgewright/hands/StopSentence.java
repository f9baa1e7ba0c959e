package edgewright.hands;

import edgewright.chart.Side;
import edgewright.chart.Stitch;
import edgewright.hands.Stop.Reason;
import java.text.MessageFormat;
import java.util.Locale;
import java.util.ResourceBundle;

/** Says of a stop, in one sentence, where it is, what was to be made or counted there, and why hands cannot go on. */
public final class StopSentence {
    private static final ResourceBundle TEXTS = ResourceBundle.getBundle("edgewright.hands.stops", Locale.ROOT);

    private StopSentence() {}

    /** The sentence for this stop. */
    public static String of(Stop stop) {
        String wanted = stop.wanted().map(StopSentence::stitch).orElse("");
        return text("stop." + stop.reason(), place(stop), wanted, stop.expected(), stop.found());
    }

    /** A stitch with its article, by the name that it has in any terms. */
    public static String stitch(Stitch stitch) {
        return text("stitch." + stitch);
    }

    /** The side's name: top, left, bottom or right. */
    public static String side(Side side) {
        return text("side." + side);
    }

    private static String place(Stop stop) {
        String side = side(stop.side());
        switch (stop.reason()) {
            case BACK_COUNT_NOT_MET, BACK_MULTIPLE_NOT_MET, BACK_NOT_AS_FRONT -> {
                return stop.round() == 0 ? text("place.backBase", side) : text("place.back", stop.round(), side);
            }
            case CORNERS_DIFFER, LAYERS_DIFFER -> {
                return text("place.joining", side);
            }
            default -> {}
        }
        if (stop.round() == 0) {
            return text("place.base", side);
        }
        boolean aboutTheWholeSide = stop.reason() == Reason.COUNT_NOT_MET || stop.reason() == Reason.MULTIPLE_NOT_MET;
        return aboutTheWholeSide
                ? text("place.side", stop.round(), side)
                : text("place.stitch", stop.round(), side, stop.stitch());
    }

    private static String text(String key, Object... values) {
        return new MessageFormat(TEXTS.getString(key), Locale.ROOT).format(values);
    }
}
