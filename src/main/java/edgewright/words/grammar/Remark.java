package edgewright.words.grammar;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.number;

import edgewright.texts.Language;
import edgewright.texts.Messages;
import java.util.Objects;

/**
 * Something to say about one place of a text.
 *
 * @param line from 1
 * @param column from 1
 * @param found what stands there; empty if the text, or what was being read, ends there
 * @param what the key of what is said
 * @param value what that text names, or empty
 */
public record Remark(Kind kind, int line, int column, String found, String what, String value) {
    /** Why it is said. */
    public enum Kind {
        /** It was not understood, or not in this place. */
        REFUSED,
        /** It can be understood in two ways, and whoever has the text must say which. */
        QUESTION,
        /** It is stated, and it does not come out. */
        FINDING
    }

    public Remark {
        Objects.requireNonNull(found);
        Objects.requireNonNull(what);
        Objects.requireNonNull(value);
        if (line < 1 || column < 1) {
            throw new IllegalArgumentException("no text has a line " + line + ", column " + column);
        }
    }

    public static Remark of(Kind kind, Lexeme at, String what, Object value) {
        return new Remark(kind, at.line(), at.column(), at.text(), what, String.valueOf(value));
    }

    /** The remark in one sentence without its full stop; whoever shows it names the file before it. */
    public String sentence(Language language) {
        Messages says = language.messages("words/others");
        String said = says.text("expected-" + what, arg("value", value));
        String key = found.isEmpty() ? "END" : kind.name();
        return says.text(
                "remark-" + key,
                number("line", line),
                number("column", column),
                arg("found", found),
                arg("expected", said));
    }
}
