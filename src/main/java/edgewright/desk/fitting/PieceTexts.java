package edgewright.desk.fitting;

import edgewright.chart.Counting;
import edgewright.chart.Side;
import edgewright.desk.work.DeskTexts;

/** The short texts about a piece that several of its parts show. */
public final class PieceTexts {
    private PieceTexts() {}

    /** A round of the front by its number; 0 is the base round. */
    public static String round(int round) {
        return round == 0 ? DeskTexts.of("piece.round.base") : DeskTexts.of("piece.round.front", round);
    }

    /** A round where there is little room. */
    public static String round(Piece.CountedIn in) {
        if (in.back()) {
            return DeskTexts.of("piece.round.back", in.round());
        }
        return in.round() == 0 ? DeskTexts.of("piece.round.base.short") : round(in.round());
    }

    /** In what the sides are given: stitches in a way of counting, centimetres or rows. */
    public static String unit(Piece piece, Side side) {
        return switch (piece.way()) {
            case COUNTED -> DeskTexts.of("counting." + piece.counting().name());
            case MEASURED -> DeskTexts.of("piece.unit.cm");
            case ROWS -> DeskTexts.of(side.isLevel() ? "piece.unit.stitches" : "piece.unit.rows");
        };
    }

    /** The way of counting of the counts that are answered with: picking up is always in stitches. */
    static Counting answered(Piece piece) {
        return piece.way() == Piece.Way.COUNTED ? piece.counting() : Counting.STITCHES;
    }

    /** What is to be done on a side, in two words. */
    public static String change(int change) {
        return change == 0
                ? DeskTexts.of("piece.change.none")
                : DeskTexts.of(change > 0 ? "piece.change.add" : "piece.change.lose", Math.abs(change));
    }
}
