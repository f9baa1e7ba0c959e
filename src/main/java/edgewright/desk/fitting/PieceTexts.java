package edgewright.desk.fitting;

import static edgewright.texts.Arg.count;
import static edgewright.texts.Arg.number;

import edgewright.chart.Counting;
import edgewright.chart.Side;
import edgewright.texts.Messages;

/** The short texts about a piece that several of its parts show. */
public final class PieceTexts {
    private PieceTexts() {}

    /** The side at the beginning of a sentence. */
    public static String sideName(Piece piece, Side side) {
        return piece.says().text("piece-side-" + side.name());
    }

    /** A round of the front by its number; 0 is the base round. */
    public static String round(Piece piece, int round) {
        return round == 0
                ? piece.says().text("piece-round-base")
                : piece.says().text("piece-round-front", number("round", round));
    }

    /** A round where there is little room. */
    public static String round(Piece piece, Piece.CountedIn in) {
        if (in.back()) {
            return piece.says().text("piece-round-back", number("round", in.round()));
        }
        return in.round() == 0 ? piece.says().text("piece-round-base-short") : round(piece, in.round());
    }

    /** In what the sides are given: stitches in a way of counting, centimetres or rows. */
    public static String unit(Piece piece, Side side) {
        return switch (piece.way()) {
            case COUNTED -> counting(piece);
            case MEASURED -> piece.says().text("piece-unit-cm");
            case ROWS -> piece.says().text(side.isLevel() ? "piece-unit-stitches" : "piece-unit-rows");
        };
    }

    /** How the stitches of a side are counted. */
    static String counting(Piece piece) {
        Messages common = piece.language().messages("desk/common");
        return common.text("counting-" + piece.counting().name());
    }

    /** The way of counting of the counts that are answered with: picking up is always in stitches. */
    static Counting answered(Piece piece) {
        return piece.way() == Piece.Way.COUNTED ? piece.counting() : Counting.STITCHES;
    }

    /** What is to be done on a side, in two words. */
    public static String change(Piece piece, int change) {
        return change == 0
                ? piece.says().text("piece-change-none")
                : piece.says()
                        .text(
                                change > 0 ? "piece-change-add" : "piece-change-lose",
                                count("stitches", Math.abs(change)));
    }
}
