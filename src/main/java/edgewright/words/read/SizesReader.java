package edgewright.words.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Reads a number of stitches for each size: one alone, or the first and the others in brackets. */
final class SizesReader {
    private final TokenCursor cursor;
    private Optional<Figure> first = Optional.empty();
    private final List<Figure> others = new ArrayList<>();

    /** A number, and where it stands. */
    private record Figure(int value, Token token) {}

    SizesReader(TokenCursor cursor) {
        this.cursor = cursor;
    }

    /** Takes 'so many stitches'; whether they stood here. */
    boolean take() {
        return cursor.takeOptional("sts-each", this::takeEach) || cursor.take("sts", this::takeEach);
    }

    /** Takes numbers one after the other, as older patterns list examples of a multiple. */
    boolean takeListed() {
        first = takeNumber();
        others.clear();
        takeMore();
        return first.isPresent();
    }

    private boolean takeEach(String gap) {
        switch (gap) {
            case "sizes" -> {
                return cursor.take("sizes", this::takeSizes);
            }
            case "sts" -> {
                others.clear();
                first = takeNumber();
                return first.isPresent();
            }
            default -> throw Phrase.unknown(gap);
        }
    }

    private boolean takeSizes(String gap) {
        switch (gap) {
            case "first" -> {
                first = takeNumber();
                return first.isPresent();
            }
            case "others" -> {
                others.clear();
                takeNumber().ifPresent(others::add);
                if (!others.isEmpty()) {
                    takeMore();
                }
                return !others.isEmpty();
            }
            default -> throw Phrase.unknown(gap);
        }
    }

    private void takeMore() {
        int mark = cursor.mark();
        while (cursor.between("others-next") && cursor.isNumber()) {
            takeNumber().ifPresent(others::add);
            mark = cursor.mark();
        }
        cursor.reset(mark);
    }

    private Optional<Figure> takeNumber() {
        Token token = cursor.peek();
        return cursor.takeNumber(0, "count") ? Optional.of(new Figure(cursor.number(), token)) : Optional.empty();
    }

    /** The numbers that were taken last, one for each size. */
    List<Integer> numbers() {
        return taken().map(Figure::value).toList();
    }

    /** Where they stand. */
    List<Token> tokens() {
        return taken().map(Figure::token).toList();
    }

    private Stream<Figure> taken() {
        return Stream.concat(first.stream(), others.stream());
    }
}
