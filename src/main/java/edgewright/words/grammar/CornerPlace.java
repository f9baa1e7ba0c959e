package edgewright.words.grammar;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;

/**
 * Reads the place that is a corner of the round below: 'corner', 'next corner space', 'corner ch-2 sp', 'the first ch of the
 * corner'.
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
    private static final Set<Concept> ONE_CHAIN = EnumSet.of(Concept.FIRST, Concept.LAST, Concept.SAME);

    /** The corner that stands here; empty, and nothing taken, if another thing does. */
    static Optional<CornerPlace> take(Cursor cursor) {
        int mark = cursor.mark();
        Lexeme at = cursor.peek();
        cursor.skip(EnumSet.of(Concept.IN));
        boolean each = false;
        boolean one = false;
        while (cursor.isOne(WHICH)) {
            one |= cursor.isOne(ONE_CHAIN) && at.is(Concept.IN);
            each |= cursor.next().is(Concept.EACH);
        }
        if (one && isChainAlone(cursor)) {
            cursor.next();
            takeOfCorner(cursor);
            return Optional.of(new CornerPlace(at, false, Optional.empty()));
        }
        CornerWords words = new CornerWords(cursor);
        words.take();
        if (!words.corner) {
            cursor.reset(mark);
            return Optional.empty();
        }
        takeBelow(cursor);
        return Optional.of(new CornerPlace(at, each, words.chains));
    }

    /** A chain of the round below, not one to be worked. */
    private static boolean isChainAlone(Cursor cursor) {
        Lexeme after = cursor.peek(1);
        boolean number = after.is(Concept.NUMBER)
                || (after.is(Concept.DASH) && after.column() == cursor.peek().end());
        return cursor.is(Concept.CHAIN) && !number && !after.is(Concept.SPACE);
    }

    /** 'Of the corner', 'of the next side'. */
    private static void takeOfCorner(Cursor cursor) {
        int mark = cursor.mark();
        if (cursor.take(Concept.OF) || cursor.is(Concept.IN)) {
            cursor.skip(EnumSet.of(Concept.IN));
            cursor.skip(WHICH);
            if (cursor.take(Concept.CORNER)) {
                takeBelow(cursor);
                return;
            }
        }
        cursor.reset(mark);
    }

    private static void takeBelow(Cursor cursor) {
        int mark = cursor.mark();
        cursor.skip(EnumSet.of(Concept.OF, Concept.IN));
        if (!cursor.takeAll(Concept.ROUND, Concept.BELOW) && !cursor.takeAll(Concept.BASE_ROUND)) {
            cursor.reset(mark);
        }
    }

    /** The words for the corner itself, in whichever order: corner, space, chains with their number. */
    private static final class CornerWords {
        private final Cursor cursor;
        private boolean corner;
        private Optional<Lexeme> chains = Optional.empty();

        CornerWords(Cursor cursor) {
            this.cursor = cursor;
        }

        void take() {
            boolean more = true;
            while (more) {
                more = takeCorner() || takeNumbered() || takeChain();
            }
        }

        private boolean takeCorner() {
            boolean there = cursor.take(Concept.CORNER) || cursor.take(Concept.SPACE);
            corner |= there;
            return there;
        }

        /** 'ch-2', '2-ch', and before a space without the hyphen too. */
        private boolean takeNumbered() {
            return takeNumbered(2, Concept.CHAIN, Concept.DASH, Concept.NUMBER)
                    || takeNumbered(0, Concept.NUMBER, Concept.DASH, Concept.CHAIN)
                    || (cursor.peek(2).is(Concept.SPACE)
                            && (takeNumbered(1, Concept.CHAIN, Concept.NUMBER)
                                    || takeNumbered(0, Concept.NUMBER, Concept.CHAIN)));
        }

        private boolean takeNumbered(int number, Concept... words) {
            Lexeme said = cursor.peek(number);
            boolean there = cursor.takeAll(words);
            chains = there ? Optional.of(said) : chains;
            return there;
        }

        private boolean takeChain() {
            boolean chain = cursor.are(Concept.CHAIN, Concept.SPACE)
                    || cursor.are(Concept.CHAIN, Concept.DASH, Concept.SPACE)
                    || (corner && cursor.is(Concept.CHAIN) && !cursor.peek(1).is(Concept.NUMBER));
            if (chain) {
                cursor.next();
                cursor.take(Concept.DASH);
            }
            return chain;
        }
    }
}
