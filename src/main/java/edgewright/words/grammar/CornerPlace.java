package edgewright.words.grammar;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;

/**
 * Reads the place that is a corner of the round below: 'corner', 'next corner space', 'corner ch-2 sp'.
 *
 * @param each whether every corner is meant
 * @param chains the chains that the corner below is said to have
 */
record CornerPlace(Lexeme at, boolean each, Optional<Lexeme> chains) {
    private static final Set<Concept> WHICH = EnumSet.of(
            Concept.NEXT,
            Concept.SAME,
            Concept.EACH,
            Concept.ANY,
            Concept.FIRST,
            Concept.LAST,
            Concept.ALIKE,
            Concept.OF);

    /** The corner that stands here; empty, and nothing taken, if another thing does. */
    static Optional<CornerPlace> take(Cursor cursor) {
        int mark = cursor.mark();
        Lexeme at = cursor.peek();
        cursor.skip(EnumSet.of(Concept.IN));
        boolean each = false;
        while (cursor.isOne(WHICH)) {
            each |= cursor.next().is(Concept.EACH);
        }
        boolean corner = false;
        Optional<Lexeme> chains = Optional.empty();
        boolean more = true;
        while (more) {
            if (cursor.is(Concept.CORNER) || cursor.is(Concept.SPACE)) {
                corner = true;
                cursor.next();
            } else if (cursor.are(Concept.CHAIN, Concept.DASH, Concept.NUMBER)) {
                chains = Optional.of(cursor.peek(2));
                cursor.takeAll(Concept.CHAIN, Concept.DASH, Concept.NUMBER);
            } else if (cursor.are(Concept.NUMBER, Concept.DASH, Concept.CHAIN)) {
                chains = Optional.of(cursor.peek());
                cursor.takeAll(Concept.NUMBER, Concept.DASH, Concept.CHAIN);
            } else if (cursor.are(Concept.CHAIN, Concept.NUMBER, Concept.SPACE)) {
                chains = Optional.of(cursor.peek(1));
                cursor.takeAll(Concept.CHAIN, Concept.NUMBER);
            } else if (cursor.are(Concept.NUMBER, Concept.CHAIN, Concept.SPACE)) {
                chains = Optional.of(cursor.peek());
                cursor.takeAll(Concept.NUMBER, Concept.CHAIN);
            } else {
                more = (cursor.are(Concept.CHAIN, Concept.SPACE)
                        || cursor.are(Concept.CHAIN, Concept.DASH, Concept.SPACE)
                        || (corner
                                && cursor.is(Concept.CHAIN)
                                && !cursor.peek(1).is(Concept.NUMBER)));
                if (more) {
                    cursor.next();
                    cursor.take(Concept.DASH);
                }
            }
        }
        if (!corner) {
            cursor.reset(mark);
            return Optional.empty();
        }
        takeBelow(cursor);
        return Optional.of(new CornerPlace(at, each, chains));
    }

    private static void takeBelow(Cursor cursor) {
        int mark = cursor.mark();
        cursor.skip(EnumSet.of(Concept.OF, Concept.IN));
        if (!cursor.takeAll(Concept.ROUND, Concept.BELOW) && !cursor.takeAll(Concept.BASE_ROUND)) {
            cursor.reset(mark);
        }
    }
}
