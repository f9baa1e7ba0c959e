package edgewright.words.read;

import edgewright.chart.Counting;
import edgewright.words.tree.Multiple;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/**
 * A multiple as it was said in one way of counting, and where its parts were said.
 *
 * @param of 0 where only what is added was said again
 * @param fewest negative if it was not said
 */
record ShownMultiple(
        Token start,
        int of,
        int plus,
        Token examplesStart,
        List<Token> exampleTokens,
        List<Integer> examples,
        Token fewestStart,
        int fewest) {

    /** The whole of it, where only what is added was said again. */
    ShownMultiple after(int before) {
        return of > 0
                ? this
                : new ShownMultiple(start, before, plus, examplesStart, exampleTokens, examples, fewestStart, fewest);
    }

    /** The multiple in stitches, corner chains not counted. */
    Multiple in(Counting way, TokenCursor cursor) {
        int rest = Math.floorMod(way.stitches(plus), of);
        List<Integer> stitches = new ArrayList<>();
        for (int i = 0; i < examples.size(); i++) {
            int example = way.stitches(examples.get(i));
            if (example < 0 || Math.floorMod(example, of) != rest) {
                throw cursor.stopAt(exampleTokens.get(i), example(way, of, rest));
            }
            stitches.add(example);
        }
        return new Multiple(of, rest, stitches);
    }

    /** The fewest stitches of a side, corner chains not counted. */
    OptionalInt fewest(Counting way) {
        return fewest < 0 ? OptionalInt.empty() : OptionalInt.of(way.stitches(fewest));
    }

    /** Refuses what is said a second time if it is not the same. */
    void requireSame(Multiple first, Multiple second, OptionalInt firstFewest, Counting way, TokenCursor cursor) {
        if (second.of() != first.of() || second.plus() != first.plus()) {
            throw cursor.stopAt(start, example(way, first.of(), first.plus()));
        }
        boolean oneHasNone = first.examples().isEmpty() || second.examples().isEmpty();
        if (!oneHasNone && !first.examples().equals(second.examples())) {
            List<String> shown = first.examples().stream()
                    .map(way::shown)
                    .map(String::valueOf)
                    .toList();
            throw cursor.stopAt(
                    examplesStart, Expectation.of("otherWay", cursor.grammar().commas(shown)));
        }
        OptionalInt secondFewest = fewest(way);
        if (firstFewest.isPresent() && secondFewest.isPresent() && !firstFewest.equals(secondFewest)) {
            throw cursor.stopAt(fewestStart, Expectation.of("otherWay", way.shown(firstFewest.getAsInt())));
        }
    }

    private static Expectation example(Counting way, int of, int plus) {
        return new Expectation("example", String.valueOf(of), String.valueOf(Math.floorMod(way.shown(plus), of)));
    }
}
