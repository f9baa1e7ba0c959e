package edgewright.file.fault;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.number;

import edgewright.texts.Language;
import edgewright.texts.Messages;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Makes one sentence of a problem: the file, the place in it, and what is wrong there. */
public final class ProblemSentences {
    private static final Pattern ROUND = Pattern.compile("rounds\\[(\\d+)\\].*");

    private final Messages says;
    private final Fault.Cases<String> faults;

    /** The sentences in that language. */
    public ProblemSentences(Language language) {
        this.says = language.messages("file");
        this.faults = new FaultSentences(language);
    }

    /** File, place and problem in one line: {@code reed.border.json, line 9, rounds[2].repeat (round 3): ...}. */
    public String of(Path file, Problem problem) {
        String name = PrintableText.of(file.toString());
        if (problem.isOfAnotherKindOfFile()) {
            return says.text("notAChartIn", arg("file", name), arg("problem", what(problem)));
        }
        return name + (hasPlace(problem) ? ", " : ": ") + of(problem);
    }

    /** Place and problem in one line. */
    public String of(Problem problem) {
        if (problem.isOfAnotherKindOfFile()) {
            return says.text("notAChartHere", arg("problem", what(problem)));
        }
        return hasPlace(problem) ? place(problem) + ": " + what(problem) : what(problem);
    }

    private String what(Problem problem) {
        return problem.fault().among(faults);
    }

    private static boolean hasPlace(Problem problem) {
        return problem.line().isPresent() || problem.member().isPresent();
    }

    private String place(Problem problem) {
        StringBuilder place = new StringBuilder();
        if (problem.line().isPresent()) {
            place.append(says.text("line", number("line", problem.line().getAsInt())));
        }
        problem.member().ifPresent(member -> {
            place.append(place.length() == 0 ? "" : ", ")
                    .append(PrintableText.shortened(member, 2 * FaultSentences.LONGEST_QUOTE));
            Matcher round = ROUND.matcher(member);
            if (round.matches()) {
                place.append(' ')
                        .append(says.text("roundOfMember", number("round", Integer.parseInt(round.group(1)) + 1)));
            }
        });
        return place.toString();
    }
}
