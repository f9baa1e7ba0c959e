package edgewright.proof;

import edgewright.hands.StopSentence;
import edgewright.words.read.ReadingProblem;
import java.text.MessageFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.stream.Stream;

/** Says what a proof has found, in sentences for people. */
public final class ProofSentences {
    /** So many differences are told one by one. */
    private static final int MOST = 12;

    private static final ResourceBundle TEXTS = ResourceBundle.getBundle("edgewright.proof.proof", Locale.ROOT);

    private ProofSentences() {}

    /**
     * What stands against the words, a sentence each, in working order; nothing where they agree. What shows in another yarn
     * only because the stitch above it is another one is not told apart from that stitch.
     */
    public static List<String> of(ProofResult result) {
        if (result instanceof ProofResult.Unread unread) {
            return unread.problems().stream().map(ReadingProblem::sentence).toList();
        }
        if (result instanceof ProofResult.Stopped stopped) {
            return List.of(StopSentence.of(stopped.stop()));
        }
        return result instanceof ProofResult.Differs differs ? of(differs.differences()) : List.of();
    }

    private static List<String> of(List<Difference> differences) {
        boolean onlyShown = differences.stream().allMatch(Difference.OtherShown.class::isInstance);
        List<Difference> told = differences.stream()
                .filter(difference -> onlyShown || !(difference instanceof Difference.OtherShown))
                .toList();
        List<String> sentences = new ArrayList<>();
        told.stream().limit(MOST).forEach(difference -> sentences.add(of(difference)));
        if (told.size() > MOST) {
            sentences.add(text("difference.more", told.size() - MOST));
        }
        return sentences;
    }

    /** The sentence for one difference. */
    public static String of(Difference difference) {
        if (difference instanceof Difference.Rounds rounds) {
            return text("difference.ROUNDS", rounds.expected(), rounds.found());
        }
        if (difference instanceof Difference.OtherYarn yarn) {
            return text("difference.YARN", yarn.round(), yarn.expected(), yarn.found());
        }
        if (difference instanceof Difference.CornerChains corner) {
            return text("difference.CORNER", corner.round(), corner.expected(), corner.found());
        }
        if (difference instanceof Difference.Count count) {
            return text(
                    "difference.COUNT",
                    count.round(),
                    StopSentence.side(count.side()),
                    count.expected(),
                    count.found());
        }
        if (difference instanceof Difference.OtherStitch other) {
            return at(
                    other.place(),
                    "difference.STITCH",
                    StopSentence.stitch(other.expected()),
                    StopSentence.stitch(other.found()));
        }
        if (difference instanceof Difference.OtherLanding landing) {
            return at(landing.place(), "difference.LANDING");
        }
        return difference instanceof Difference.OtherShown shown
                ? at(shown.place(), "difference.SHOWN", shown.expected(), shown.found())
                : ofBack(difference);
    }

    private static String ofBack(Difference difference) {
        if (difference instanceof Difference.BackRounds rounds) {
            return text("difference.BACK_ROUNDS", rounds.expected(), rounds.found());
        }
        if (difference instanceof Difference.BackHeight height) {
            return text("difference.BACK_HEIGHT", height.round(), height.expected(), height.found());
        }
        if (difference instanceof Difference.BackCornerChains corner) {
            return text("difference.BACK_CORNER", corner.round(), corner.expected(), corner.found());
        }
        if (difference instanceof Difference.BackCount count) {
            return text(
                    "difference.BACK_COUNT",
                    count.round(),
                    StopSentence.side(count.side()),
                    count.expected(),
                    count.found());
        }
        Difference.Joins joins = (Difference.Joins) difference;
        return joins.found() == 0
                ? text("difference.NOT_JOINED", joins.expected())
                : text("difference.JOINS", joins.expected(), joins.found());
    }

    private static String at(FabricPlace place, String key, Object... values) {
        Object[] all = Stream.concat(
                        Stream.of(place.round(), StopSentence.side(place.side()), place.stitch()), Stream.of(values))
                .toArray();
        return text(key, all);
    }

    private static String text(String key, Object... values) {
        return new MessageFormat(TEXTS.getString(key), Locale.ROOT).format(values);
    }
}
