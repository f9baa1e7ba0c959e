package edgewright.file;

import edgewright.file.Problem.Kind;
import java.nio.file.Path;
import java.text.MessageFormat;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Makes one sentence of a problem, from the texts in {@code edgewright/file/problems.properties}. */
public final class ProblemSentences {
    private static final ResourceBundle TEXTS = ResourceBundle.getBundle("edgewright.file.problems", Locale.ROOT);
    private static final Pattern ROUND = Pattern.compile("rounds\\[(\\d+)\\].*");

    /** The longest piece of a file that is quoted in a sentence, in characters. */
    private static final int LONGEST_QUOTE = 40;

    /** The most that are named where there are many to choose from. */
    private static final int MOST_CHOICES = 8;

    private ProblemSentences() {}

    /** File, place and problem in one line: {@code reed.border.json, line 9, rounds[2].repeat (round 3): ...}. */
    public static String of(Path file, Problem problem) {
        String name = printable(file.toString(), Integer.MAX_VALUE);
        if (problem.isOfAnotherKindOfFile()) {
            return filled("notAChart.file", name, what(problem));
        }
        return name + (hasPlace(problem) ? ", " : ": ") + of(problem);
    }

    /** Place and problem in one line. */
    public static String of(Problem problem) {
        if (problem.isOfAnotherKindOfFile()) {
            return filled("notAChart", what(problem));
        }
        String what = what(problem);
        return hasPlace(problem) ? place(problem) + ": " + what : what;
    }

    private static String what(Problem problem) {
        // Paths and the system's own words are told whole; a piece of the file may be of any length.
        int longest =
                problem.kind() == Kind.NO_FOLDER || problem.kind() == Kind.SYSTEM ? Integer.MAX_VALUE : LONGEST_QUOTE;
        Object[] values =
                problem.values().stream().map(value -> shown(value, longest)).toArray();
        return filled(problem.kind().name(), values);
    }

    private static String filled(String key, Object... values) {
        return new MessageFormat(TEXTS.getString(key), Locale.UK).format(values);
    }

    private static boolean hasPlace(Problem problem) {
        return problem.line().isPresent() || problem.member().isPresent();
    }

    private static String place(Problem problem) {
        StringBuilder place = new StringBuilder();
        if (problem.line().isPresent()) {
            place.append(filled("line", problem.line().getAsInt()));
        }
        problem.member().ifPresent(member -> {
            place.append(place.length() == 0 ? "" : ", ").append(printable(member, 2 * LONGEST_QUOTE));
            Matcher round = ROUND.matcher(member);
            if (round.matches()) {
                place.append(' ').append(filled("round", Integer.parseInt(round.group(1)) + 1));
            }
        });
        return place.toString();
    }

    private static Object shown(Object value, int longest) {
        if (value instanceof Problem.Shape shape) {
            return TEXTS.getString("shape." + shape.name());
        }
        if (value instanceof Problem.Token token) {
            return TEXTS.getString("token." + token.name());
        }
        if (value instanceof List<?> choices) {
            return choice(choices.stream().map(one -> shown(one, longest)).toList());
        }
        return value instanceof String text ? printable(text, longest) : value;
    }

    /** {@code A, B or C}; of many only the first. */
    private static String choice(List<?> choices) {
        if (choices.size() > MOST_CHOICES) {
            return choice(choices.subList(0, MOST_CHOICES)) + " …";
        }
        String text = String.valueOf(choices.get(0));
        for (int i = 1; i < choices.size(); i++) {
            text = filled(i == choices.size() - 1 ? "choice.last" : "choice.next", text, choices.get(i));
        }
        return text;
    }

    /**
     * The text as it can stand in one line on any screen: what would break the line, turn the writing direction or steer a
     * terminal becomes a replacement character, and a long text is cut off.
     */
    private static String printable(String text, int longest) {
        StringBuilder line = new StringBuilder();
        int[] characters = text.codePoints().toArray();
        for (int i = 0; i < characters.length && i < longest; i++) {
            line.appendCodePoint(isPrintable(characters[i]) ? characters[i] : '\ufffd');
        }
        return characters.length > longest ? line.append('…').toString() : line.toString();
    }

    private static boolean isPrintable(int character) {
        return switch (Character.getType(character)) {
            case Character.CONTROL,
                    Character.FORMAT,
                    Character.LINE_SEPARATOR,
                    Character.PARAGRAPH_SEPARATOR,
                    Character.SURROGATE,
                    Character.UNASSIGNED -> false;
            default -> true;
        };
    }
}
