package edgewright.words.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
}
