package edgewright.desk.fitting;

import edgewright.chart.PerSide;
import edgewright.chart.Side;
import edgewright.chart.SideShape;
import edgewright.chart.Swatch;
import edgewright.fit.FinishedSize;
import edgewright.fit.GuideSentences;
import edgewright.fit.Targets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Makes of a piece what comes of it. */
final class PieceAnswers {
    private PieceAnswers() {}

    /** What comes of this piece under its chart. */
    static PieceOutcome of(Piece piece) {
        if (!piece.chart().raggedSections().isEmpty()) {
            return PieceOutcome.saying(
                    PieceOutcome.Mood.NO,
                    piece.says().text("piece-ragged"),
                    List.of(piece.says().text("piece-ragged-text")),
                    List.of());
        }
        PieceNumbers numbers = PieceNumbers.of(piece);
        if (!numbers.mistakes().isEmpty()) {
            return PieceOutcome.saying(
                    PieceOutcome.Mood.MISTAKE,
                    piece.says().text("piece-mistake"),
                    List.copyOf(numbers.mistakes().values()),
                    List.copyOf(numbers.mistakes().keySet()));
        }
        if (!numbers.isWhole()) {
            return PieceOutcome.saying(
                    PieceOutcome.Mood.ASKING,
                    piece.says()
                            .text(
                                    numbers.values().isEmpty()
                                            ? "piece-ask"
                                            : numbers.missing().contains(Side.TOP)
                                                    ? "piece-ask-level"
                                                    : "piece-ask-upright"),
                    List.of(piece.says().text("piece-how-" + piece.way().name())),
                    List.of());
        }
        return piece.way() == Piece.Way.COUNTED
                ? new CountedPiece(piece, numbers.counts()).outcome()
                : new BarePiece(piece, numbers).outcome();
    }

    /** The nearest targets, or those with so many repeats more or fewer as the piece asks for. */
    static PerSide<Integer> wanted(Piece piece, Targets nearest) {
        return PerSide.each(side -> wanted(piece, nearest, side));
    }

    private static int wanted(Piece piece, Targets nearest, Side side) {
        SideShape shape = piece.chart().shape(side);
        int stitches = nearest.wanted().get(side) + piece.steps(side) * shape.w();
        return Math.max(shape.fewestStitches(nearest.round()), stitches);
    }

    /** The number of stitches as a part of the way along a side. */
    static double along(double stitch, int stitches) {
        return stitches == 0 ? 0 : Math.max(0, Math.min(1, stitch / stitches));
    }

    /** The size by the swatch, and whether that is only a guess; without a swatch, that there is none. */
    static List<String> sized(Piece piece, Function<Swatch, FinishedSize> size) {
        Optional<Swatch> swatch = PieceNumbers.swatch(piece);
        if (swatch.isEmpty()) {
            return List.of(piece.says().text("piece-swatch-none"));
        }
        List<String> said = new ArrayList<>(new GuideSentences(piece.language()).of(size.apply(swatch.get())));
        if (piece.chart().making().swatch().isEmpty() && swatch.get().equals(Piece.GUESS)) {
            said.add(piece.says().text("piece-swatch-guess"));
        }
        return said;
    }
}
