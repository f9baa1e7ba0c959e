package edgewright.words.tree;

import java.util.Objects;

/**
 * A yarn that a pattern asks for.
 *
 * @param id what the rounds of the tree call it; unique in a pattern
 * @param name what the designer calls it, on one line; may be empty
 */
public record PatternYarn(String id, String name) {
    public PatternYarn {
        Objects.requireNonNull(name);
        if (id.isEmpty() || !id.codePoints().allMatch(Character::isLetterOrDigit)) {
            throw new IllegalArgumentException("'" + id + "': expected a yarn id of letters or digits");
        }
    }
}
