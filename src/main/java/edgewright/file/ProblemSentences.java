package edgewright.file;

import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Makes one sentence of a problem: the file, the place in it, and what is wrong there. */
public final class ProblemSentences {
    private static final Fault.Cases<String> FAULTS = new FaultSentences();
    private static final Pattern ROUND = Pattern.compile("rounds\\[(\\d+)\\].*");

    private ProblemSentences() {}

    /** File, place and problem in one line: {@code reed.border.json, line 9, rounds[2].repeat (round 3): ...}. */
    public static String of(Path file, Problem problem) {
        String name = PrintableText.of(file.toString());
        if (problem.isOfAnotherKindOfFile()) {
            return FaultSentences.filled("notAChart.file", name, what(problem));
        }
        return name + (hasPlace(problem) ? ", " : ": ") + of(problem);
    }

    /** Place and problem in one line. */
    public static String of(Problem problem) {
        if (problem.isOfAnotherKindOfFile()) {
            return FaultSentences.filled("notAChart", what(problem));
        }
        return hasPlace(problem) ? place(problem) + ": " + what(problem) : what(problem);
    }

    private static String what(Problem problem) {
        return problem.fault().among(FAULTS);
    }

    private static boolean hasPlace(Problem problem) {
        return problem.line().isPresent() || problem.member().isPresent();
    }

    private static String place(Problem problem) {
        StringBuilder place = new StringBuilder();
        if (problem.line().isPresent()) {
            place.append(FaultSentences.filled("line", problem.line().getAsInt()));
        }
        problem.member().ifPresent(member -> {
            place.append(place.length() == 0 ? "" : ", ")
                    .append(PrintableText.shortened(member, 2 * FaultSentences.LONGEST_QUOTE));
            Matcher round = ROUND.matcher(member);
            if (round.matches()) {
                place.append(' ').append(FaultSentences.filled("round", Integer.parseInt(round.group(1)) + 1));
            }
        });
        return place.toString();
    }
}
