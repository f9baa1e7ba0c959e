package edgewright.proof;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.count;
import static edgewright.texts.Arg.number;

import edgewright.hands.StopSentences;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import java.util.ArrayList;
import java.util.List;

/** Says what a proof has found, in sentences for people. */
public final class ProofSentences {
    /** So many differences are told one by one. */
    private static final int MOST = 12;

    private final Messages says;
    private final StopSentences stops;
    private final Language language;

    /** The sentences in that language. */
    public ProofSentences(Language language) {
        this.language = language;
        this.says = language.messages("proof");
        this.stops = new StopSentences(language);
    }

    /**
     * What stands against the words, a sentence each, in working order; nothing where they agree. What shows in another yarn
     * only because the stitch above it is another one is not told apart from that stitch.
     */
    public List<String> of(ProofResult result) {
        if (result instanceof ProofResult.Unread unread) {
            return unread.problems().stream()
                    .map(problem -> problem.sentence(language))
                    .toList();
        }
        if (result instanceof ProofResult.Stopped stopped) {
            return List.of(stops.of(stopped.stop()));
        }
        if (result instanceof ProofResult.TooLarge large) {
            return List.of(
                    says.text("too-large", count("stitches", large.stitches()), count("most", Prover.MOST_STITCHES)));
        }
        return result instanceof ProofResult.Differs differs ? of(differs.differences()) : List.of();
    }

    private List<String> of(List<Difference> differences) {
        boolean onlyShown = differences.stream().allMatch(Difference.OtherShown.class::isInstance);
        List<Difference> told = differences.stream()
                .filter(difference -> onlyShown || !(difference instanceof Difference.OtherShown))
                .toList();
        List<String> sentences = new ArrayList<>();
        told.stream().limit(MOST).forEach(difference -> sentences.add(of(difference)));
        if (told.size() > MOST) {
            sentences.add(says.text("difference-more", count("more", told.size() - MOST)));
        }
        return sentences;
    }

    /** The sentence for one difference. */
    public String of(Difference difference) {
        if (difference instanceof Difference.Rounds rounds) {
            return says.text("difference-ROUNDS", count("expected", rounds.expected()), count("found", rounds.found()));
        }
        if (difference instanceof Difference.OtherYarn yarn) {
            return says.text(
                    "difference-YARN",
                    number("round", yarn.round()),
                    arg("expectedYarn", yarn.expected()),
                    arg("foundYarn", yarn.found()));
        }
        if (difference instanceof Difference.CornerChains corner) {
            return says.text(
                    "difference-CORNER",
                    number("round", corner.round()),
                    count("expected", corner.expected()),
                    count("found", corner.found()));
        }
        if (difference instanceof Difference.Count sides) {
            return says.text(
                    "difference-COUNT",
                    number("round", sides.round()),
                    arg("side", stops.side(sides.side())),
                    count("expected", sides.expected()),
                    count("found", sides.found()));
        }
        return ofStitch(difference);
    }

    private String ofStitch(Difference difference) {
        if (difference instanceof Difference.OtherStitch other) {
            return says.text(
                    "difference-STITCH",
                    number("round", other.place().round()),
                    arg("side", stops.side(other.place().side())),
                    number("stitch", other.place().stitch()),
                    arg("expectedStitch", stops.stitch(other.expected())),
                    arg("foundStitch", stops.stitch(other.found())));
        }
        if (difference instanceof Difference.OtherLanding landing) {
            return says.text(
                    "difference-LANDING",
                    number("round", landing.place().round()),
                    arg("side", stops.side(landing.place().side())),
                    number("stitch", landing.place().stitch()));
        }
        return difference instanceof Difference.OtherShown shown
                ? says.text(
                        "difference-SHOWN",
                        number("round", shown.place().round()),
                        arg("side", stops.side(shown.place().side())),
                        number("stitch", shown.place().stitch()),
                        number("expectedRound", shown.expected()),
                        number("foundRound", shown.found()))
                : ofBack(difference);
    }

    private String ofBack(Difference difference) {
        if (difference instanceof Difference.BackRounds rounds) {
            return says.text(
                    "difference-BACK_ROUNDS", count("expected", rounds.expected()), count("found", rounds.found()));
        }
        if (difference instanceof Difference.BackHeight height) {
            return says.text(
                    "difference-BACK_HEIGHT",
                    number("round", height.round()),
                    count("expected", height.expected()),
                    count("found", height.found()));
        }
        if (difference instanceof Difference.BackCornerChains corner) {
            return says.text(
                    "difference-BACK_CORNER",
                    number("round", corner.round()),
                    count("expected", corner.expected()),
                    count("found", corner.found()));
        }
        if (difference instanceof Difference.BackCount sides) {
            return says.text(
                    "difference-BACK_COUNT",
                    number("round", sides.round()),
                    arg("side", stops.side(sides.side())),
                    count("expected", sides.expected()),
                    count("found", sides.found()));
        }
        Difference.Joins joins = (Difference.Joins) difference;
        return joins.found() == 0
                ? says.text("difference-NOT_JOINED", count("expected", joins.expected()))
                : says.text("difference-JOINS", count("expected", joins.expected()), count("found", joins.found()));
    }
}
