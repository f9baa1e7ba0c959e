package edgewright.words.grammar;

import edgewright.chart.Counting;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Reads whether corner chains are counted with a side. */
public final class CountingWords {
    private static final Set<Concept> CORNER_WORDS = EnumSet.of(
            Concept.CORNER,
            Concept.CHAIN,
            Concept.DASH,
            Concept.SPACE,
            Concept.EACH,
            Concept.IN,
            Concept.SIDE,
            Concept.OR,
            Concept.AND);

    private CountingWords() {}

    /** What is said here of the way of counting; empty, and nothing taken, if nothing is. */
    public static Optional<Counting> take(Cursor cursor) {
        return take(cursor, new ArrayList<>());
    }

    /** @param chains takes up the chains that a corner is said to have */
    static Optional<Counting> take(Cursor cursor, List<Lexeme> chains) {
        int mark = cursor.mark();
        cursor.take(Concept.COUNTED);
        cursor.take(Concept.WITH);
        boolean with = cursor.take(Concept.WITH_CORNERS);
        if (cursor.take(Concept.ONE_CHAIN_EACH_END)) {
            return Optional.of(Counting.WITH_CHAINS);
        }
        boolean without = !with && cursor.take(Concept.WITHOUT_CORNERS);
        if (with && cursor.is(Concept.NUMBER) && cursor.peek().number() == 1) {
            cursor.next();
        }
        boolean corner = takeCorner(cursor, chains);
        if (!with && !without && corner) {
            without = cursor.take(Concept.WITHOUT_CORNERS);
        }
        if (corner && without) {
            return Optional.of(Counting.STITCHES);
        }
        if (corner && with) {
            // 'end' and the like may follow: which end is clear.
            cursor.skip(EnumSet.of(Concept.IN, Concept.EACH, Concept.SIDE, Concept.AROUND));
            return Optional.of(Counting.WITH_CHAINS);
        }
        cursor.reset(mark);
        return Optional.empty();
    }

    private static boolean takeCorner(Cursor cursor, List<Lexeme> chains) {
        boolean corner = false;
        while (cursor.isOne(CORNER_WORDS)
                || (cursor.is(Concept.NUMBER)
                        && (cursor.peek(-1).is(Concept.DASH) || cursor.peek(1).is(Concept.DASH)))) {
            corner |= cursor.is(Concept.CORNER) || cursor.is(Concept.SPACE) || cursor.is(Concept.CHAIN);
            if (cursor.is(Concept.NUMBER)) {
                chains.add(cursor.peek());
            }
            cursor.next();
        }
        return corner;
    }
}
