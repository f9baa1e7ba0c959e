package edgewright.words.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

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
        boolean taken = mayStateFewest && takeWithFewest(again);
        if (!taken) {
            fewest = -1;
            taken = takeWithExamples(again);
        }
        return taken
                ? Optional.of(
                        new ShownMultiple(start, of, plus, examplesStart, exampleTokens, examples, fewestStart, fewest))
                : Optional.empty();
    }

    private boolean takeWithFewest(boolean again) {
        return cursor.take("with-fewest", gap -> switch (gap) {
            case "multiple" -> {
                boolean taken = takeWithExamples(again);
                int mark = cursor.mark();
                cursor.skipPartings();
                fewestStart = cursor.peek();
                cursor.reset(mark);
                yield taken;
            }
            case "fewest" -> {
                boolean taken = cursor.takeNumber(0, "count");
                fewest = cursor.number();
                yield taken;
            }
            default -> throw Phrase.unknown(gap);
        });
    }

    private boolean takeWithExamples(boolean again) {
        boolean taken = cursor.take("with-examples", gap -> switch (gap) {
            case "multiple" -> {
                boolean multiple = takeBare(again);
                examplesStart = cursor.peek();
                yield multiple;
            }
            case "examples" -> takeExamples();
            default -> throw Phrase.unknown(gap);
        });
        if (!taken) {
            exampleTokens.clear();
            examples.clear();
        }
        return taken || takeBare(again);
    }

    private boolean takeExamples() {
        exampleTokens.clear();
        examples.clear();
        int mark;
        do {
            Token token = cursor.peek();
            if (!cursor.takeNumber(0, "count")) {
                return false;
            }
            exampleTokens.add(token);
            examples.add(cursor.number());
            mark = cursor.mark();
        } while (cursor.between("examples-next") && cursor.isNumber());
        cursor.reset(mark);
        return true;
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
