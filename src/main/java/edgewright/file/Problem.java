package edgewright.file;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * One reason why a file could not be read as a chart, or not be written, as data. The sentence for it is made by {@link
 * ProblemSentences}.
 *
 * @param line the line of the file, counted from 1; empty where the problem is not in a line
 * @param member the member of the chart as a path, such as {@code rounds[2].repeat}, with list places counted from 0 as is
 *     usual for such paths; empty where it is the whole file
 * @param values what the sentence needs, in the order that the kind states: texts, whole numbers, lists of texts to choose
 *     from, {@link Shape}s and {@link Token}s
 */
public record Problem(Kind kind, OptionalInt line, Optional<String> member, List<Object> values) {

    /** What can be wrong, each with the values that go with it. */
    public enum Kind {
        /** There is no such file. */
        NOT_FOUND,
        /** A folder stands where a file was expected. */
        IS_A_FOLDER,
        /** The system does not allow to read it. */
        NOT_READABLE,
        /** The system does not allow to write it. */
        NOT_WRITABLE,
        /** The system makes no file of this name. */
        NOT_CREATED,
        /** The folder that the file is to be written into is not there: its path. */
        NO_FOLDER,
        /** Neither a file nor a folder, so it cannot be replaced. */
        NOT_A_FILE,
        /** The system failed: its own words. */
        SYSTEM,
        /** More bytes than a chart file may have: the most it may have. */
        TOO_LARGE,
        /** Nothing in the file but blanks. */
        EMPTY,
        /** Bytes that are not UTF-8. */
        NOT_UTF8,
        /** Bytes that are not UTF-8, in a file that does not begin as a chart does. */
        NOT_TEXT,
        /** The text does not begin as a chart does: what stands there. */
        NO_OBJECT,
        /** The text ends before it is complete: what was expected. */
        ENDS_EARLY,
        /** Not JSON: the column, counted from 1, what stands there, what was expected. */
        NOT_JSON,
        /** Something follows after the end of the chart: the column, counted from 1, what stands there. */
        MORE_AFTER_END,
        /** A member stands twice in one place: the line of the first. */
        TWICE,
        /** Objects and lists too deep inside each other: the most levels. */
        TOO_DEEP,
        /** A number with too many digits: the most characters. */
        LONG_NUMBER,
        /** The file does not say that it is a chart: the value expected of {@code format}. */
        NOT_A_CHART,
        /** A version that this program does not know yet: the version, the newest that it knows. */
        NEWER_VERSION,
        /** A version that never was: as written, the version expected. */
        NO_SUCH_VERSION,
        /** A member that every chart has is not there: what was expected in it. */
        MISSING,
        /** The wrong type of value: the shape found, the shape expected. */
        WRONG_SHAPE,
        /** A number that is not whole or not in its range: as written, the least, the most. */
        NOT_IN_RANGE,
        /** A measure not in its range: as written, the least, the most. */
        NOT_A_MEASURE,
        /** A text that is none of those allowed: the text, those allowed. */
        NO_SUCH_CHOICE,
        /** Not a colour: the text. */
        NOT_A_COLOUR,
        /** Not an id for a yarn: the text, the most characters. */
        NOT_AN_ID,
        /** Two yarns with one id: the id. */
        SAME_ID,
        /** A round names a yarn that is not there: the id, those that are there. */
        NO_SUCH_YARN,
        /** A letter that no stitch has: the letter, its place in the section counted from 1, the letters that there are. */
        NO_SUCH_STITCH,
        /** A start column past the first repeat: the column, the last. */
        NO_SUCH_COLUMN,
        /** Too few or too many yarns, rounds or stitches: how many, the least, the most. */
        WRONG_NUMBER
    }

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
        Objects.requireNonNull(kind);
        Objects.requireNonNull(line);
        Objects.requireNonNull(member);
        values = List.copyOf(values);
    }

    /** Whether the file was never meant as a chart, so that a place in it would be of no use. */
    boolean isOfAnotherKindOfFile() {
        return kind == Kind.NOT_TEXT || kind == Kind.NO_OBJECT || kind == Kind.NOT_A_CHART;
    }

    /** A problem of the file as a whole. */
    public static Problem ofFile(Kind kind, Object... values) {
        return new Problem(kind, OptionalInt.empty(), Optional.empty(), List.of(values));
    }

    /** A problem in a line, with nothing to say about a member. */
    public static Problem atLine(Kind kind, int line, Object... values) {
        return new Problem(kind, OptionalInt.of(line), Optional.empty(), List.of(values));
    }

    /** A problem of a member; an empty path stands for the chart itself. */
    public static Problem atMember(Kind kind, int line, String member, Object... values) {
        Optional<String> path = member.isEmpty() ? Optional.empty() : Optional.of(member);
        return new Problem(kind, OptionalInt.of(line), path, List.of(values));
    }
}
