package edgewright.words.read;

import edgewright.words.tree.Instructions;
import java.util.List;

/** What the reader made of a text. */
public sealed interface ReadingResult {
    /** All of it was understood. */
    record Understood(Instructions pattern) implements ReadingResult {}

    /** Something in it was not understood; nothing was guessed. One or more problems, in the order of the text. */
    record Refused(List<ReadingProblem> problems) implements ReadingResult {
        public Refused {
            problems = List.copyOf(problems);
        }
    }
}
