package edgewright.desk.fitting;

import edgewright.chart.PerSide;
import edgewright.fit.BackLayer;
import edgewright.fit.Fit;
import edgewright.fit.FitAnswer;
import edgewright.fit.FitPlan;
import edgewright.fit.FitSentences;
import edgewright.fit.PatternSize;
import java.util.List;
import java.util.Optional;

/**
 * For which piece a pattern is that is written for this one alone.
 *
 * @param size empty while the counts do not come out, or where what has to be done has no words in a pattern
 * @param why sentences that say why there are no words although the counts come out; none otherwise
 */
public record PieceWords(Optional<PatternSize> size, List<String> why) {
    private static final PieceWords NONE = new PieceWords(Optional.empty(), List.of());

    public PieceWords {
        why = List.copyOf(why);
    }

    /**
     * Of a piece counted in a round of the front the pattern says how its counts are put right. One that is still bare, or whose
     * back layer was counted, is of a size that closes from its base round on.
     */
    static PieceWords of(Piece piece) {
        PieceOutcome outcome = piece.outcome();
        boolean comesOut = outcome.mood() == PieceOutcome.Mood.FITS || outcome.mood() == PieceOutcome.Mood.CHANGES;
        if (!comesOut || outcome.targets().isEmpty()) {
            return NONE;
        }
        if (piece.way() == Piece.Way.COUNTED && !piece.countedIn().back()) {
            FitAnswer answer = Fit.inWords(
                    piece.chart(),
                    new CountedPiece(piece, PieceNumbers.of(piece).counts()).question());
            return answer instanceof FitPlan plan
                    ? of(new PatternSize.OfPiece(plan))
                    : new PieceWords(Optional.empty(), new FitSentences(piece.language()).of(answer));
        }
        PerSide<Integer> repeats = piece.countedIn().back() && piece.way() == Piece.Way.COUNTED
                ? new BackLayer(piece.chart().border(), piece.chart().rounds().size())
                        .repeats(piece.frontRound(), PerSide.parse(piece.frontCounts()), piece.counting())
                        .orElseThrow()
                : outcome.targets().get().repeats();
        return of(new PatternSize.OfRepeats(repeats));
    }

    private static PieceWords of(PatternSize size) {
        return new PieceWords(Optional.of(size), List.of());
    }
}
