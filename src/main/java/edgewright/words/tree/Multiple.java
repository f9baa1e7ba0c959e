package edgewright.words.tree;

import java.util.List;

/**
 * 'A multiple of {@code of} plus {@code plus}': the numbers of stitches that a side may have, corner chains not counted.
 *
 * @param of 1 or more; 1 means any number
 * @param plus 0 to {@code of - 1}
 * @param examples numbers that the pattern names as such; each is a multiple of {@code of} plus {@code plus}
 */
public record Multiple(int of, int plus, List<Integer> examples) {
    public Multiple {
        examples = List.copyOf(examples);
        if (of < 1 || plus < 0 || plus >= of) {
            throw new IllegalArgumentException("a multiple of " + of + " plus " + plus);
        }
        for (int example : examples) {
            if (Math.floorMod(example, of) != plus) {
                throw new IllegalArgumentException(example + " is no multiple of " + of + " plus " + plus);
            }
        }
    }

    /** The multiple that these stitches belong to, with no examples: {@code stitches} mod {@code of} is what is added. */
    public static Multiple containing(int of, int stitches) {
        return new Multiple(of, Math.floorMod(stitches, of), List.of());
    }

    /** This multiple with other examples. */
    public Multiple withExamples(List<Integer> numbers) {
        return new Multiple(of, plus, numbers);
    }

    /** Whether a side may have so many stitches. */
    public boolean has(int stitches) {
        return Math.floorMod(stitches, of) == plus;
    }
}
