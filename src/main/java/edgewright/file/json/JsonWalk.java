package edgewright.file.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import edgewright.file.fault.FileFault;
import edgewright.file.fault.JsonFault;
import edgewright.file.fault.Problem;
import edgewright.file.fault.Problem.Shape;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.function.Consumer;
import java.util.function.IntConsumer;
import java.util.stream.IntStream;

/**
 * Goes once through a JSON text, value by value, without building a tree of it: a hostile text of small values would make
 * one many times as large as the file.
 *
 * <p>The current value is the one that the walk stands on. Whoever is handed it must take it by exactly one of {@link
 * #object}, {@link #list}, {@link #text}, {@link #raw} or {@link #pass}. Lines and columns are counted from 1.
 *
 * <p>Refuses by {@link UnreadableException}: text that is not JSON, a member that stands twice in its object at any level, more than
 * {@value #MOST_LEVELS} levels, numbers of more than {@value #LONGEST_NUMBER} characters, and anything after the end.
 */
public final class JsonWalk {
    /** How deep objects and lists may stand inside each other. A chart itself has 3 levels. */
    static final int MOST_LEVELS = 100;

    /** The most characters of a number. */
    static final int LONGEST_NUMBER = 1_000;

    /** The limits are kept here, where they can be told from other mistakes; those of the library must not come first. */
    private static final JsonFactory JSON = JsonFactory.builder()
            .disable(JsonFactory.Feature.CANONICALIZE_FIELD_NAMES)
            .streamReadConstraints(StreamReadConstraints.builder()
                    .maxNestingDepth(MOST_LEVELS + 1)
                    .maxNumberLength(Integer.MAX_VALUE)
                    .maxNameLength(Integer.MAX_VALUE)
                    .maxStringLength(Integer.MAX_VALUE)
                    .build())
            .build();

    private final String source;
    private final JsonParser parser;
    private final int[] lineStarts;
    /** Names and places counted from 0. Put together only when somebody asks, since names can be long. */
    private final List<Object> path = new ArrayList<>();

    private JsonToken token;
    private int tokenStart;
    private int tokenEnd;
    private int levels;

    /** Stands on the first value of the text. */
    public JsonWalk(String source) {
        this.source = source;
        this.lineStarts = lineStarts(source);
        try {
            this.parser = JSON.createParser(source);
        } catch (IOException e) {
            throw new IllegalStateException("a text in memory can be opened", e);
        }
        advance();
    }

    /**
     * Stands on the object that the text begins with.
     *
     * @throws UnreadableException if it begins with something else, or with nothing
     */
    public static JsonWalk ofObject(String source) {
        OptionalInt start = IntStream.range(0, source.length())
                .filter(place -> !isBlank(source.charAt(place)))
                .findFirst();
        if (start.isEmpty()) {
            throw new UnreadableException(Problem.ofFile(FileFault.Simple.EMPTY));
        }
        if (source.charAt(start.getAsInt()) != '{') {
            String found = JsonMistake.pieceAt(source, start.getAsInt());
            throw new UnreadableException(Problem.ofFile(new JsonFault.NoObject(found)));
        }
        return new JsonWalk(source);
    }

    /** The line of the current value. */
    public int line() {
        return lineOf(tokenStart);
    }

    /** What the current value is; a number is a {@link Shape#NUMBER} whether it is whole or not. */
    public Shape shape() {
        return switch (token) {
            case START_OBJECT -> Shape.OBJECT;
            case START_ARRAY -> Shape.LIST;
            case VALUE_STRING -> Shape.TEXT;
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> Shape.NUMBER;
            case VALUE_TRUE, VALUE_FALSE -> Shape.TRUE_OR_FALSE;
            case VALUE_NULL -> Shape.NULL;
            default -> throw new IllegalStateException("not on a value but on " + token);
        };
    }

    /** The path of the current value, such as {@code rounds[2].repeat}; empty for the first value of the text. */
    public String path() {
        StringBuilder text = new StringBuilder();
        for (Object part : path) {
            if (part instanceof Integer place) {
                text.append('[').append(place.intValue()).append(']');
            } else {
                text.append(text.isEmpty() ? "" : ".").append(part);
            }
        }
        return text.toString();
    }

    /** Visits each member of the current object by its name. */
    public void object(Consumer<String> visitor) {
        Map<String, Integer> lines = new HashMap<>();
        while (advance() != JsonToken.END_OBJECT) {
            String name = currentName();
            path.add(name);
            Integer first = lines.putIfAbsent(name, line());
            if (first != null) {
                throw new UnreadableException(Problem.atMember(new JsonFault.Twice(first), line(), path()));
            }
            advance();
            visitor.accept(name);
            path.remove(path.size() - 1);
        }
    }

    /** Visits each value of the current list by its place counted from 0, and says how many there were. */
    public int list(IntConsumer visitor) {
        int place = 0;
        while (advance() != JsonToken.END_ARRAY) {
            path.add(place);
            visitor.accept(place);
            path.remove(path.size() - 1);
            place++;
        }
        return place;
    }

    /** The current text without its escapes, or a number, true, false or null as it is written. */
    public String text() {
        try {
            return parser.getText();
        } catch (IOException e) {
            throw new IllegalStateException("a text in memory can be read", e);
        }
    }

    /** The current value as it is written, whatever it is. */
    public String raw() {
        int start = tokenStart;
        pass();
        return source.substring(start, tokenEnd);
    }

    /** Goes over the current value, which is held to the same rules as all others. */
    public void pass() {
        if (token == JsonToken.START_OBJECT) {
            object(name -> pass());
        } else if (token == JsonToken.START_ARRAY) {
            list(place -> pass());
        }
    }

    /** Makes sure that nothing comes after the first value but blanks. */
    public void end() {
        int next = tokenEnd;
        while (next < source.length() && isBlank(source.charAt(next))) {
            next++;
        }
        if (next < source.length()) {
            throw new UnreadableException(Problem.atLine(
                    new JsonFault.MoreAfterEnd(columnOf(next), JsonMistake.pieceAt(source, next)), lineOf(next)));
        }
    }

    /** Whether the character may stand before a JSON text and mean nothing. */
    public static boolean isBlank(char c) {
        return c == ' ' || c == '\t' || c == '\n' || c == '\r';
    }

    private JsonToken advance() {
        JsonToken before = token;
        boolean inObject = parser.getParsingContext().inObject();
        try {
            token = parser.nextToken();
            parser.finishToken();
        } catch (IOException e) {
            // The library's own words are for programmers. What is wrong follows from where it stopped.
            throw new UnreadableException(mistake(before, inObject));
        }
        if (token == null) {
            throw new UnreadableException(mistake(before, inObject));
        }
        tokenStart = (int) parser.currentTokenLocation().getCharOffset();
        tokenEnd = (int) parser.currentLocation().getCharOffset();
        checkLimits();
        return token;
    }

    private void checkLimits() {
        if (token.isStructStart()) {
            levels++;
            if (levels > MOST_LEVELS) {
                throw new UnreadableException(Problem.atLine(new JsonFault.TooDeep(MOST_LEVELS), line()));
            }
        } else if (token.isStructEnd()) {
            levels--;
        } else if (token.isNumeric() && tokenEnd - tokenStart > LONGEST_NUMBER) {
            throw new UnreadableException(Problem.atLine(new JsonFault.LongNumber(LONGEST_NUMBER), line()));
        }
    }

    private Problem mistake(JsonToken before, boolean inObject) {
        JsonMistake mistake = JsonMistake.after(source, tokenEnd, before, inObject);
        int line = lineOf(mistake.offset());
        return mistake.atEnd()
                ? Problem.atLine(new JsonFault.EndsEarly(mistake.expected()), line)
                : Problem.atLine(
                        new JsonFault.NotJson(columnOf(mistake.offset()), mistake.found(source), mistake.expected()),
                        line);
    }

    private String currentName() {
        try {
            return parser.currentName();
        } catch (IOException e) {
            throw new IllegalStateException("a text in memory can be read", e);
        }
    }

    private int lineOf(int offset) {
        int found = Arrays.binarySearch(lineStarts, offset);
        return found >= 0 ? found + 1 : -found - 1;
    }

    private int columnOf(int offset) {
        return source.codePointCount(lineStarts[lineOf(offset) - 1], offset) + 1;
    }

    private static int[] lineStarts(String source) {
        IntStream afterEnds = IntStream.rangeClosed(1, source.length()).filter(i -> isLineEnd(source, i - 1));
        return IntStream.concat(IntStream.of(0), afterEnds).toArray();
    }

    /** Whether a line ends with this character: a line feed, or a carriage return that no line feed follows. */
    private static boolean isLineEnd(String source, int i) {
        char c = source.charAt(i);
        return c == '\n' || (c == '\r' && (i + 1 == source.length() || source.charAt(i + 1) != '\n'));
    }
}
