package edgewright.desk.fitting;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.count;
import static edgewright.texts.Arg.number;

import edgewright.chart.Chart;
import edgewright.chart.Counting;
import edgewright.chart.PerSide;
import edgewright.chart.Side;
import edgewright.fit.BackLayer;
import edgewright.fit.BackSentences;
import edgewright.fit.CountChange;
import edgewright.fit.FinishedSize;
import edgewright.fit.Fit;
import edgewright.fit.FitAnswer;
import edgewright.fit.FitPlan;
import edgewright.fit.FitQuestion;
import edgewright.fit.FitRefusal;
import edgewright.fit.FitSentences;
import edgewright.fit.SideChange;
import edgewright.fit.Targets;
import edgewright.texts.Messages;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** A piece whose sides were counted in a round that is on it, in a round of the front or of the back layer. */
final class CountedPiece {
    private final FitSentences fits;
    private final Messages says;
    private final Piece piece;
    private final Chart chart;
    private final Counting counting;
    private final PerSide<Integer> counts;
    private final int round;
    private final Optional<BackSentences> back;

    CountedPiece(Piece piece, PerSide<Integer> counts) {
        this.piece = piece;
        this.fits = new FitSentences(piece.language());
        says = piece.says();
        this.counts = counts;
        chart = piece.chart();
        counting = piece.counting();
        Piece.CountedIn in = piece.countedIn();
        BackLayer layer = new BackLayer(chart.border(), chart.rounds().size());
        round = in.back() ? layer.round(in.round()).frontRound() : in.round();
        back = in.back() ? Optional.of(new BackSentences(piece.language(), layer, in.round())) : Optional.empty();
    }

    PieceOutcome outcome() {
        if (back.isPresent()) {
            return behindTheFront();
        }
        return answered(question());
    }

    /** A back layer is put right to the counts of the front, whatever is nearest, or the layers could not be joined. */
    private PieceOutcome behindTheFront() {
        if (piece.frontCounts().isBlank()) {
            return PieceOutcome.saying(
                    PieceOutcome.Mood.ASKING,
                    says.text("piece-ask-front"),
                    List.of(says.text("piece-ask-front-text")),
                    List.of());
        }
        PerSide<Integer> front;
        try {
            front = PerSide.parse(piece.frontCounts());
        } catch (IllegalArgumentException e) {
            return PieceOutcome.saying(
                    PieceOutcome.Mood.MISTAKE,
                    says.text("piece-mistake"),
                    List.of(says.text("piece-front-unread")),
                    List.of());
        }
        BackLayer layer = new BackLayer(chart.border(), chart.rounds().size());
        return layer.repeats(piece.frontRound(), front, counting)
                .map(repeats -> answered(layer.question(piece.countedIn().round(), counts, counting, repeats)))
                .orElseGet(() -> PieceOutcome.saying(
                        PieceOutcome.Mood.NO,
                        says.text("piece-front-open"),
                        List.of(says.text(
                                "piece-front-open-text", arg("where", PieceTexts.round(piece, piece.frontRound())))),
                        List.of()));
    }

    private PieceOutcome answered(FitQuestion question) {
        FitAnswer answer = Fit.answer(chart, question);
        return answer instanceof FitPlan plan ? planned(plan) : refused((FitRefusal) answer);
    }

    /** What is asked about a round of the front. */
    FitQuestion question() {
        FitQuestion question = FitQuestion.of(round, counts, counting).with(piece.ties());
        if (piece.isNearest()) {
            return question;
        }
        Targets nearest = Targets.closest(chart.border(), round, question.stitches(), piece.ties());
        return question.wanting(PieceAnswers.wanted(piece, nearest).map(counting::shown));
    }

    private PieceOutcome planned(FitPlan plan) {
        long changes = plan.targets().totalChange();
        List<String> warnings = back.map(layer -> layer.warnings(plan))
                .orElseGet(() -> plan.warnings().stream()
                        .map(warning -> fits.of(warning, plan.question()))
                        .toList());
        return new PieceOutcome(
                plan.isDone() ? PieceOutcome.Mood.FITS : PieceOutcome.Mood.CHANGES,
                plan.isDone() ? says.text("piece-fits") : says.text("piece-changes", count("changes", changes)),
                plan.isDone() ? List.of(says.text("piece-fits-text")) : List.of(),
                warnings,
                piece.hand().workingOrder().stream().map(side -> of(plan, side)).toList(),
                rounds(plan),
                size(plan.targets()),
                List.of(),
                Optional.of(plan.targets()));
    }

    private PieceOutcome refused(FitRefusal refusal) {
        List<String> sentences = fits.of(refusal);
        if (refusal instanceof FitRefusal.NoRoom full) {
            return new PieceOutcome(
                    PieceOutcome.Mood.NO,
                    says.text("piece-noRoom"),
                    // The first two sentences say the counts and the headline again.
                    sentences.subList(2, sentences.size()),
                    List.of(),
                    piece.hand().workingOrder().stream()
                            .map(side -> of(full.targets(), side, List.of(), List.of()))
                            .toList(),
                    List.of(),
                    List.of(),
                    full.sides(),
                    Optional.of(full.targets()));
        }
        if (refusal instanceof FitRefusal.TooSmall small) {
            return PieceOutcome.saying(PieceOutcome.Mood.NO, says.text("piece-tooSmall"), sentences, small.sides());
        }
        return PieceOutcome.saying(
                PieceOutcome.Mood.NO,
                says.text("piece-cannotClose"),
                sentences.subList(1, sentences.size()),
                List.of());
    }

    private PieceOutcome.OfSide of(FitPlan plan, Side side) {
        SideChange change = plan.change(side);
        List<String> words = back.map(layer -> layer.of(plan, side))
                .orElseGet(() -> change.change() == 0
                        ? List.of(fits.of(plan, side))
                        : List.of(fits.of(plan, side), fits.way(plan, side)));
        return of(plan.targets(), side, marks(change), words);
    }

    private PieceOutcome.OfSide of(Targets targets, Side side, List<PieceOutcome.Mark> marks, List<String> words) {
        OptionalInt smaller = targets.smaller(side);
        return new PieceOutcome.OfSide(
                side,
                counting.shown(targets.wanted().get(side)),
                targets.change(side),
                targets.repeats().get(side),
                smaller.isPresent() ? OptionalInt.of(counting.shown(smaller.getAsInt())) : smaller,
                counting.shown(targets.larger(side)),
                marks,
                words);
    }

    private List<PieceOutcome.Mark> marks(SideChange change) {
        List<Integer> numbers = change.numbers(counting);
        List<PieceOutcome.Mark> marks = new ArrayList<>();
        boolean more = change.kind() == CountChange.INCREASE;
        for (int i = 0; i < numbers.size(); i++) {
            // A decrease lies between its two stitches.
            double middle = change.places().get(i).stitch() - (more ? 0.5 : 0);
            marks.add(new PieceOutcome.Mark(
                    more ? PieceOutcome.Mark.Kind.INCREASE : PieceOutcome.Mark.Kind.DECREASE,
                    PieceAnswers.along(middle, change.stitches()),
                    String.valueOf(numbers.get(i))));
        }
        return marks;
    }

    private List<String> rounds(FitPlan plan) {
        if (back.isPresent()) {
            String matches = says.text(
                    "piece-rounds-back", number("back", piece.countedIn().round()), number("round", round));
            return plan.isDone()
                    ? List.of(matches)
                    : List.of(matches, back.get().changing());
        }
        List<String> said = new ArrayList<>();
        said.add(fits.of(plan.rounds()));
        boolean elsewhere = plan.rounds().counting().orElse(-1) != round;
        if (elsewhere && !plan.isDone()) {
            said.add(says.text(
                    "piece-rounds-here",
                    arg("where", PieceTexts.round(piece, round)),
                    number("round", plan.changing())));
        }
        return said;
    }

    private List<String> size(Targets targets) {
        PerSide<Integer> base = chart.border().stitches(0, targets.repeats());
        return PieceAnswers.sized(
                piece, swatch -> FinishedSize.onStitches(base, chart.rounds().size(), swatch));
    }
}
