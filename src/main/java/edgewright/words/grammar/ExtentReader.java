package edgewright.words.grammar;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;

/** Reads how far something is worked: 'to corner', 'to last 5 sts', 'until 5 sts remain', 'around'. */
final class ExtentReader {
    private static final Set<Concept> LEFT_OVER =
            EnumSet.of(Concept.REMAIN, Concept.LEFT, Concept.BEFORE, Concept.OF, Concept.FROM);

    private ExtentReader() {}

    /** The extent that stands here; empty, and nothing taken, if none does. */
    static Optional<Extent> take(Cursor cursor) {
        int mark = cursor.mark();
        Lexeme at = cursor.peek();
        if (cursor.take(Concept.AROUND)) {
            return Optional.of(new Extent(at, Extent.Kind.AROUND, 0));
        }
        if (cursor.take(Concept.ACROSS)) {
            int after = cursor.mark();
            if (cursor.take(Concept.TO) && CornerPlace.take(cursor).isEmpty()) {
                cursor.reset(after);
                return toStitches(cursor, at);
            }
            return Optional.of(new Extent(at, Extent.Kind.CORNER, 0));
        }
        cursor.take(Concept.TO);
        boolean said = cursor.mark() > mark;
        if (said && CornerPlace.take(cursor).isPresent()) {
            return Optional.of(new Extent(at, Extent.Kind.CORNER, 0));
        }
        cursor.reset(mark);
        Optional<Extent> stitches = toStitches(cursor, at);
        if (stitches.isEmpty()) {
            cursor.reset(mark);
        }
        return stitches;
    }

    private static Optional<Extent> toStitches(Cursor cursor, Lexeme at) {
        if (!cursor.take(Concept.TO)) {
            return Optional.empty();
        }
        cursor.take(Concept.IN);
        if (cursor.take(Concept.LAST)) {
            int last = cursor.is(Concept.NUMBER) ? cursor.number() : 1;
            boolean number = cursor.peek(-1).is(Concept.NUMBER);
            boolean ends = cursor.atEnd()
                    || cursor.is(Concept.COMMA)
                    || cursor.is(Concept.SEMICOLON)
                    || cursor.is(Concept.STOP);
            if (!cursor.take(Concept.STITCH) && !(number && ends)) {
                throw cursor.stop("sts");
            }
            takeBeforeCorner(cursor);
            return Optional.of(new Extent(at, Extent.Kind.LAST, last));
        }
        if (cursor.are(Concept.NUMBER, Concept.STITCH)
                && LEFT_OVER.contains(cursor.peek(2).concept())) {
            int last = cursor.number();
            cursor.next();
            cursor.take(Concept.REMAIN);
            cursor.take(Concept.LEFT);
            takeBeforeCorner(cursor);
            return Optional.of(new Extent(at, Extent.Kind.LAST, last));
        }
        return Optional.empty();
    }

    private static void takeBeforeCorner(Cursor cursor) {
        int mark = cursor.mark();
        cursor.skip(EnumSet.of(
                Concept.BEFORE, Concept.IN, Concept.OF, Concept.FROM, Concept.EACH, Concept.NEXT, Concept.SIDE));
        if (cursor.mark() == mark) {
            return;
        }
        if (!cursor.peek(-1).is(Concept.SIDE) && CornerPlace.take(cursor).isEmpty()) {
            cursor.reset(mark);
        }
    }
}
