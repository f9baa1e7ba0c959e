package edgewright.hands;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.count;
import static edgewright.texts.Arg.number;

import edgewright.chart.Side;
import edgewright.chart.Stitch;
import edgewright.hands.Stop.Reason;
import edgewright.texts.Language;
import edgewright.texts.Messages;

/** Says of a stop, in one sentence, where it is, what was to be made or counted there, and why hands cannot go on. */
public final class StopSentences {
    private final Messages says;

    /** The sentences in that language. */
    public StopSentences(Language language) {
        this.says = language.messages("hands");
    }

    /** The sentence for this stop. */
    public String of(Stop stop) {
        return says.text(
                "stop-" + stop.reason(),
                arg("place", place(stop)),
                arg("wanted", stop.wanted().map(this::stitch).orElse("")),
                number("joinStitch", stop.expected()),
                count("expected", stop.expected()),
                count("found", stop.found()));
    }

    /** A stitch with its article, by the name that it has in any terms. */
    public String stitch(Stitch stitch) {
        return says.text("stitch-" + stitch);
    }

    /** The side's name: top, left, bottom or right. */
    public String side(Side side) {
        return says.text("side-" + side);
    }

    private String place(Stop stop) {
        String side = side(stop.side());
        switch (stop.reason()) {
            case BACK_COUNT_NOT_MET, BACK_MULTIPLE_NOT_MET, BACK_NOT_AS_FRONT -> {
                return stop.round() == 0
                        ? says.text("place-backBase", arg("side", side))
                        : says.text("place-back", number("round", stop.round()), arg("side", side));
            }
            case CORNERS_DIFFER, LAYERS_DIFFER -> {
                return says.text("place-joining", arg("side", side));
            }
            default -> {}
        }
        if (stop.round() == 0) {
            return says.text("place-base", arg("side", side));
        }
        boolean aboutTheWholeSide = stop.reason() == Reason.COUNT_NOT_MET || stop.reason() == Reason.MULTIPLE_NOT_MET;
        return aboutTheWholeSide
                ? says.text("place-side", number("round", stop.round()), arg("side", side))
                : says.text(
                        "place-stitch",
                        number("round", stop.round()),
                        arg("side", side),
                        number("stitch", stop.stitch()));
    }
}
