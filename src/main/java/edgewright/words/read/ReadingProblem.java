package edgewright.words.read;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.number;

import edgewright.texts.Language;
import edgewright.texts.Messages;
import java.util.Objects;

/**
 * A place in a text where reading stopped.
 *
 * @param line from 1
 * @param column from 1, in characters
 * @param found the word that stands there; empty at the end of the text
 * @param expected what could have stood there instead, in the language of the text
 */
public record ReadingProblem(int line, int column, String found, String expected) {
    public ReadingProblem {
        Objects.requireNonNull(found);
        Objects.requireNonNull(expected);
        if (line < 1 || column < 1) {
            throw new IllegalArgumentException("no text has a line " + line + ", column " + column);
        }
    }

    /** The problem in one sentence without its full stop; whoever shows it names the file before it. */
    public String sentence(Language language) {
        Messages says = language.messages("words/read");
        return found.isEmpty()
                ? says.text("problem-end", number("line", line), number("column", column), arg("expected", expected))
                : says.text(
                        "problem",
                        number("line", line),
                        number("column", column),
                        arg("found", found),
                        arg("expected", expected));
    }
}
