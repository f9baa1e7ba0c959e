package edgewright.desk.fitting;

import static edgewright.texts.Arg.count;

import edgewright.chart.Chart;
import edgewright.chart.PerSide;
import edgewright.chart.Side;
import edgewright.chart.Swatch;
import edgewright.fit.Edge;
import edgewright.fit.FinishedSize;
import edgewright.fit.FitRefusal;
import edgewright.fit.FitSentences;
import edgewright.fit.GuideSentences;
import edgewright.fit.PickUp;
import edgewright.fit.PickUpAnswer;
import edgewright.fit.PickUpPlan;
import edgewright.fit.Ratio;
import edgewright.fit.Targets;
import edgewright.texts.Messages;
import java.util.List;
import java.util.Optional;

/** A piece with no round on it yet: how many stitches to pick up along each edge, and how to spread them. */
final class BarePiece {
    private static final double MM_IN_A_CM = 10;

    private final GuideSentences sentences;
    private final Messages says;
    private final Piece piece;
    private final Chart chart;
    private final PieceNumbers numbers;

    BarePiece(Piece piece, PieceNumbers numbers) {
        this.piece = piece;
        this.sentences = new GuideSentences(piece.language());
        says = piece.says();
        this.numbers = numbers;
        chart = piece.chart();
    }

    PieceOutcome outcome() {
        Optional<Swatch> swatch = PieceNumbers.swatch(piece);
        Optional<Ratio> ratio = PieceNumbers.ratio(piece);
        if (piece.way() == Piece.Way.MEASURED && swatch.isEmpty()) {
            return mistake(says.text("piece-swatch-needed"));
        }
        if (piece.way() == Piece.Way.ROWS && ratio.isEmpty()) {
            return mistake(says.text("piece-ratio-needed"));
        }
        PerSide<Edge> edges = PerSide.each(side -> edge(side, swatch, ratio));
        PickUpAnswer answer = PickUpPlan.of(chart.border(), edges, piece.ties());
        if (answer instanceof FitRefusal.TooSmall small) {
            return PieceOutcome.saying(
                    PieceOutcome.Mood.NO,
                    says.text("piece-tooSmall"),
                    new FitSentences(piece.language()).of(small),
                    small.sides());
        }
        return planned(((PickUpPlan) answer).targets(), edges);
    }

    private PieceOutcome mistake(String sentence) {
        return PieceOutcome.saying(PieceOutcome.Mood.MISTAKE, says.text("piece-mistake"), List.of(sentence), List.of());
    }

    private Edge edge(Side side, Optional<Swatch> swatch, Optional<Ratio> ratio) {
        double number = numbers.values().get(side);
        if (piece.way() == Piece.Way.MEASURED) {
            return new Edge.OfLength(number * MM_IN_A_CM, swatch.orElseThrow());
        }
        return side.isLevel() ? new Edge.OfStitches((int) number) : new Edge.OfRows((int) number, ratio.orElseThrow());
    }

    private PieceOutcome planned(Targets nearest, PerSide<Edge> edges) {
        Targets targets =
                new Targets(nearest.border(), nearest.round(), nearest.counted(), PieceAnswers.wanted(piece, nearest));
        return new PieceOutcome(
                PieceOutcome.Mood.CHANGES,
                says.text("piece-pickUp", count("stitches", PerSide.sum(targets.wanted()))),
                List.of(says.text("piece-pickUp-text")),
                List.of(),
                piece.hand().workingOrder().stream()
                        .map(side -> of(targets, side, edges.get(side)))
                        .toList(),
                List.of(),
                PieceAnswers.sized(piece, swatch -> size(targets, swatch)),
                List.of(),
                Optional.of(targets));
    }

    private PieceOutcome.OfSide of(Targets targets, Side side, Edge edge) {
        PickUp pickUp = new PickUp(side, edge, targets.wanted().get(side));
        return new PieceOutcome.OfSide(
                side,
                targets.wanted().get(side),
                targets.change(side),
                targets.repeats().get(side),
                targets.smaller(side),
                targets.larger(side),
                pickUp.quarters().stream()
                        .limit(3)
                        .map(mark -> new PieceOutcome.Mark(
                                PieceOutcome.Mark.Kind.QUARTER, mark.quarter() / 4.0, String.valueOf(mark.stitches())))
                        .toList(),
                sentences.of(pickUp));
    }

    private FinishedSize size(Targets targets, Swatch swatch) {
        int rounds = chart.rounds().size();
        if (piece.way() == Piece.Way.ROWS) {
            return FinishedSize.onStitches(targets.wanted(), rounds, swatch);
        }
        double across = mean(Side.TOP, Side.BOTTOM) * MM_IN_A_CM;
        double down = mean(Side.LEFT, Side.RIGHT) * MM_IN_A_CM;
        // The base round is worked round what was measured, so it is one more.
        return FinishedSize.around(across, down, rounds + 1, swatch);
    }

    private double mean(Side one, Side other) {
        return (numbers.values().get(one) + numbers.values().get(other)) / 2;
    }
}
