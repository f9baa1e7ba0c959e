package edgewright.file.fault;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * One reason why a file could not be read as a chart, or not be written, as data. The sentence for it is made by {@link
 * ProblemSentences}.
 *
 * @param fault what is wrong
 * @param line the line of the file, counted from 1; empty where the problem is not in a line
 * @param member the member of the chart as a path, such as {@code rounds[2].repeat}, with list places counted from 0 as is
 *     usual for such paths; empty where it is the whole file
 */
public record Problem(Fault fault, OptionalInt line, Optional<String> member) {

    /** What a value in a chart file can be. */
    public enum Shape {
        OBJECT,
        LIST,
        TEXT,
        NUMBER,
        WHOLE_NUMBER,
        TRUE_OR_FALSE,
        NULL
    }

    /** What can be expected at a place where a text stops being JSON. */
    public enum Token {
        VALUE,
        VALUE_OR_END,
        NAME,
        NAME_OR_END,
        WHOLE_NAME,
        COLON,
        COMMA_OR_BRACE,
        COMMA_OR_BRACKET,
        TEXT_PART,
        TEXT_END
    }

    public Problem {
        Objects.requireNonNull(fault);
        Objects.requireNonNull(line);
        Objects.requireNonNull(member);
    }

    /** Whether the file was never meant as a chart, so that a place in it would be of no use. */
    boolean isOfAnotherKindOfFile() {
        return fault == FileFault.Simple.NOT_TEXT
                || fault instanceof JsonFault.NoObject
                || fault instanceof ChartFault.NotAChart;
    }

    /** A problem of the file as a whole. */
    public static Problem ofFile(Fault fault) {
        return new Problem(fault, OptionalInt.empty(), Optional.empty());
    }

    /** A problem in a line, with nothing to say about a member. */
    public static Problem atLine(Fault fault, int line) {
        return new Problem(fault, OptionalInt.of(line), Optional.empty());
    }

    /** A problem of a member; an empty path stands for the chart itself. */
    public static Problem atMember(Fault fault, int line, String member) {
        Optional<String> path = member.isEmpty() ? Optional.empty() : Optional.of(member);
        return new Problem(fault, OptionalInt.of(line), path);
    }
}
