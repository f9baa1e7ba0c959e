package edgewright.words;

import java.util.List;

/** What the reader made of a text. */
public sealed interface Reading {
    /** All of it was understood. */
    record Understood(Pattern pattern) implements Reading {}

    /** Something in it was not understood; nothing was guessed. One or more problems, in the order of the text. */
    record Refused(List<ReadingProblem> problems) implements Reading {
        public Refused {
            problems = List.copyOf(problems);
        }
    }
}
