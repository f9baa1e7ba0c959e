package edgewright.words.read;

import edgewright.chart.Counting;
import edgewright.words.tree.Multiple;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.BooleanSupplier;

/** Reads a multiple, with its examples and the fewest stitches. */
final class MultipleReader {
    private final TokenCursor cursor;
    private final boolean mayStateFewest;

    private int of;
    private int plus;
    private Token examplesStart;
    private final List<Token> exampleTokens = new ArrayList<>();
    private final List<Integer> examples = new ArrayList<>();
    private Token fewestStart;
    private int fewest = -1;

    MultipleReader(TokenCursor cursor, boolean mayStateFewest) {
        this.cursor = cursor;
        this.mayStateFewest = mayStateFewest;
        this.examplesStart = cursor.peek();
        this.fewestStart = cursor.peek();
    }

    /** @param again whether a multiple was said before, so that what is added suffices */
    Optional<ShownMultiple> take(boolean again) {
        Token start = cursor.peek();
        BooleanSupplier bare = () -> takeBare(again);
        boolean taken = takeExamples(() -> takeFewest(bare))
                || takeFewest(() -> takeExamples(bare))
                || takeFewest(bare)
                || takeExamples(bare)
                || takeBare(again);
        return taken
                ? Optional.of(
                        new ShownMultiple(start, of, plus, examplesStart, exampleTokens, examples, fewestStart, fewest))
                : Optional.empty();
    }

    /** @param multiple takes what the fewest stitches are said of */
    private boolean takeFewest(BooleanSupplier multiple) {
        boolean taken = mayStateFewest
                && cursor.take("with-fewest", gap -> switch (gap) {
                    case "multiple" -> {
                        boolean before = multiple.getAsBoolean();
                        int mark = cursor.mark();
                        cursor.skipPartings();
                        fewestStart = cursor.peek();
                        cursor.reset(mark);
                        yield before;
                    }
                    case "fewest" -> {
                        boolean number = cursor.takeNumber(0, "count");
                        fewest = cursor.number();
                        yield number;
                    }
                    default -> throw Phrase.unknown(gap);
                });
        fewest = taken ? fewest : -1;
        return taken;
    }

    /** @param multiple takes what the examples are of */
    private boolean takeExamples(BooleanSupplier multiple) {
        boolean taken = cursor.take("with-examples", gap -> switch (gap) {
            case "multiple" -> {
                boolean before = multiple.getAsBoolean();
                examplesStart = cursor.peek();
                yield before;
            }
            case "examples" -> takeExamples();
            default -> throw Phrase.unknown(gap);
        });
        if (!taken) {
            exampleTokens.clear();
            examples.clear();
        }
        return taken;
    }

    /** As counts of so many sizes, or one after the other. */
    private boolean takeExamples() {
        SizesReader sizes = new SizesReader(cursor);
        int mark = cursor.mark();
        boolean taken = sizes.take() && sizes.numbers().size() > 1;
        if (!taken) {
            cursor.reset(mark);
            taken = sizes.takeListed();
            cursor.takeWord("sts-word");
        }
        exampleTokens.clear();
        examples.clear();
        exampleTokens.addAll(sizes.tokens());
        examples.addAll(sizes.numbers());
        return taken;
    }

    private boolean takeBare(boolean again) {
        of = 1;
        plus = 0;
        if (cursor.take("multiple-any") || cursor.take("multiple-plus", this::takeNumber)) {
            return true;
        }
        plus = 0;
        if (cursor.take("multiple", this::takeNumber)) {
            return true;
        }
        of = 0;
        return again && cursor.take("plus", this::takeNumber);
    }

    private boolean takeNumber(String gap) {
        switch (gap) {
            case "of" -> {
                boolean taken = cursor.takeNumber(1, "number");
                of = cursor.number();
                return taken;
            }
            case "plus" -> {
                boolean taken = cursor.takeNumber(0, "count");
                plus = cursor.number();
                return taken;
            }
            default -> throw Phrase.unknown(gap);
        }
    }

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
                    : new ShownMultiple(
                            start, before, plus, examplesStart, exampleTokens, examples, fewestStart, fewest);
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
                        examplesStart,
                        Expectation.of("otherWay", cursor.grammar().commas(shown)));
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
}
