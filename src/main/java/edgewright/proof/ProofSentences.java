package edgewright.proof;

import edgewright.chart.Stitch;
import edgewright.hands.StopSentence;
import edgewright.proof.Difference.Kind;
import edgewright.words.read.ReadingProblem;
import java.text.MessageFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;

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
        boolean onlyShown = differences.stream().allMatch(difference -> difference.kind() == Kind.SHOWN);
        List<Difference> told = differences.stream()
                .filter(difference -> onlyShown || difference.kind() != Kind.SHOWN)
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
        return text(
                "difference." + difference.kind(),
                difference.round(),
                StopSentence.side(difference.side()),
                difference.stitch(),
                value(difference.kind(), difference.expected()),
                value(difference.kind(), difference.found()));
    }

    private static Object value(Kind kind, String value) {
        return switch (kind) {
            case STITCH -> StopSentence.stitch(Stitch.ofLetter(value.charAt(0)).orElseThrow());
            case ROUNDS, CORNER, COUNT, SHOWN, BACK_ROUNDS, BACK_HEIGHT, BACK_COUNT, JOINS -> Integer.valueOf(value);
            case YARN, LANDING -> value;
        };
    }

    private static String text(String key, Object... values) {
        return new MessageFormat(TEXTS.getString(key), Locale.ROOT).format(values);
    }
}
