package edgewright.words.grammar;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** Reads the counts that stand between the words of a round or in brackets. */
final class BodyCounts {
    /** What makes sure that a count follows. */
    private static final Set<Concept> SURE = EnumSet.of(Concept.EQUALS, Concept.STITCH_COUNT, Concept.GIVES);

    private static final Set<Concept> BEGIN =
            Concept.andEdges(Concept.NUMBER, Concept.EQUALS, Concept.TOTAL, Concept.STITCH_COUNT, Concept.GIVES);
    private static final Set<Concept> END = EnumSet.of(Concept.STOP, Concept.CLOSE, Concept.SEMICOLON);

    private final Cursor cursor;
    private final BodyNotes notes;
    private final RepeatReader repeats;

    BodyCounts(Cursor cursor, BodyNotes notes, RepeatReader repeats) {
        this.cursor = cursor;
        this.notes = notes;
        this.repeats = repeats;
    }

    /**
     * Takes counts that stand here without brackets.
     *
     * @param first whether no stitch was told yet
     */
    boolean take(boolean first) {
        if (!cursor.isOne(BEGIN)) {
            return false;
        }
        boolean sure = cursor.isOne(SURE) || cursor.peek(-1).is(Concept.EQUALS) || isBehindDash();
        boolean stitch = cursor.is(Concept.NUMBER)
                && Concept.STITCHES.contains(cursor.peek(1).concept());
        if (stitch && !sure) {
            return false;
        }
        int mark = cursor.mark();
        List<StatedCount> counts = CountReader.read(cursor, !sure);
        boolean ends = cursor.atEnd()
                || cursor.isOne(END)
                || cursor.peek(-1).is(Concept.STITCH)
                || (!counts.isEmpty() && first);
        if (counts.isEmpty() || !ends) {
            cursor.reset(mark);
            if (sure) {
                throw cursor.stop("count");
            }
            return false;
        }
        notes.counts.addAll(counts);
        return true;
    }

    /** '... in each st - 49': the last number of the words, behind a dash. */
    private boolean isBehindDash() {
        boolean ends = cursor.peek(1).is(Concept.END)
                || (cursor.peek(1).is(Concept.STOP) && cursor.peek(2).is(Concept.END));
        return cursor.is(Concept.NUMBER) && cursor.peek(-1).is(Concept.DASH) && ends;
    }

    /** Takes counts and the bracket that closes after them. */
    boolean takeInBrackets() {
        int mark = cursor.mark();
        List<StatedCount> counts = CountReader.read(cursor, false);
        if (!counts.isEmpty() && cursor.take(Concept.CLOSE) && !repeats.timesFollow()) {
            notes.counts.addAll(counts);
            return true;
        }
        cursor.reset(mark);
        return false;
    }
}
