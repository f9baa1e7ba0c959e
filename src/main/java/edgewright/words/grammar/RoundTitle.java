package edgewright.words.grammar;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Reads the title of a round or of several: 'Round 3 (A):', 'Rnds 1-4 (A, B, A, B)', 'R4 and 6, in B', 'Next round'.
 *
 * @param numbers the rounds, in the order of the text
 * @param yarns those named with them: none, one for all, one for each, or two and more in turn
 */
public record RoundTitle(Lexeme at, List<Lexeme> numbers, List<Lexeme> yarns, boolean inTurn) {
    private static final int MOST = 2000;
    private static final Set<Concept> BEFORE_YARN = EnumSet.of(
            Concept.IN,
            Concept.WITH,
            Concept.YARN,
            Concept.COMMA,
            Concept.DASH,
            Concept.AND,
            Concept.SLASH,
            Concept.CHANGE,
            Concept.EACH);

    /** Whether a title ends in a colon among these words, so that words of the round may stand behind it. */
    public static boolean hasColon(List<Lexeme> words) {
        return words.stream().anyMatch(word -> word.is(Concept.COLON));
    }

    /** Whether the title of a round begins here. */
    public static boolean begins(Cursor cursor) {
        return cursor.is(Concept.NEXT_ROUND) || cursor.are(Concept.ROUND, Concept.NUMBER);
    }

    /**
     * The title that stands here, with its colon.
     *
     * @param next the number of the next round
     * @param notes takes up what else the title says
     */
    public static RoundTitle take(Cursor cursor, int next, BodyNotes notes, TalkReader talk) {
        Lexeme at = cursor.next();
        List<Lexeme> numbers = new ArrayList<>();
        if (at.is(Concept.NEXT_ROUND)) {
            numbers.add(numbered(at, next));
        } else {
            takeNumbers(cursor, numbers);
        }
        TitleYarns yarns = new TitleYarns(cursor, new AsideReader(cursor, notes, talk), notes);
        yarns.take();
        if (cursor.is(Concept.COLON)
                || cursor.is(Concept.STOP)
                || cursor.is(Concept.DASH)
                || cursor.is(Concept.EQUALS)) {
            cursor.next();
        }
        return new RoundTitle(at, List.copyOf(numbers), yarns.named(), yarns.inTurn());
    }

    /** The numbers of rounds that stand here, single or as ranges. */
    public static void takeNumbers(Cursor cursor, List<Lexeme> numbers) {
        Lexeme first = cursor.peek();
        int from = cursor.number();
        numbers.add(numbered(first, from));
        while (true) {
            int mark = cursor.mark();
            boolean range = cursor.take(Concept.DASH) || cursor.take(Concept.TO) || cursor.take(Concept.SLASH);
            boolean list =
                    !range && (cursor.take(Concept.COMMA) || cursor.take(Concept.AND) || cursor.take(Concept.PLUS));
            cursor.take(Concept.AND);
            cursor.take(Concept.ROUND);
            boolean number = cursor.is(Concept.NUMBER) && isRound(cursor.peek(1));
            if ((!range && !list) || !number) {
                cursor.reset(mark);
                return;
            }
            Lexeme last = cursor.peek();
            int to = cursor.number();
            if (range && (to <= from || to - from > MOST)) {
                throw Cursor.stop(last, "laterRound", from);
            }
            for (int n = range ? from + 1 : to; n <= to; n++) {
                numbers.add(numbered(last, n));
            }
            from = to;
        }
    }

    private static boolean isRound(Lexeme after) {
        return !Concept.STITCHES.contains(after.concept())
                && !EnumSet.of(Concept.STITCH, Concept.TIMES, Concept.BACK_ONLY, Concept.MORE, Concept.ROUND)
                        .contains(after.concept());
    }

    private static Lexeme numbered(Lexeme at, int number) {
        return new Lexeme(Concept.NUMBER, at.text(), number, Optional.empty(), at.line(), at.column(), at.end());
    }

    /** The yarn of the round that is told in this place of the list, from 0. */
    public Optional<Lexeme> yarn(int index) {
        if (yarns.isEmpty()) {
            return Optional.empty();
        }
        boolean fits = yarns.size() == 1 || yarns.size() == numbers.size() || (inTurn && yarns.size() > 1);
        if (!fits) {
            throw Cursor.stop(yarns.get(yarns.size() - 1), "yarnForEach", numbers.size());
        }
        return Optional.of(yarns.get(index % yarns.size()));
    }

    /** The part of a title after its numbers. */
    private static final class TitleYarns {
        private final Cursor cursor;
        private final AsideReader asides;
        private final BodyNotes notes;
        private final List<Lexeme> named = new ArrayList<>();
        private boolean inTurn;

        TitleYarns(Cursor cursor, AsideReader asides, BodyNotes notes) {
            this.cursor = cursor;
            this.asides = asides;
            this.notes = notes;
        }

        List<Lexeme> named() {
            return List.copyOf(named);
        }

        boolean inTurn() {
            return inTurn;
        }

        void take() {
            boolean more = true;
            while (more) {
                int mark = cursor.mark();
                cursor.skip(BEFORE_YARN);
                boolean is = cursor.is(Concept.WORD) && cursor.peek(1).is(Concept.YARN_NAME);
                if (is) {
                    cursor.next();
                }
                inTurn |= cursor.take(Concept.ALTERNATE);
                cursor.skip(BEFORE_YARN);
                more = takeYarn() || takeCount() || takeBrackets() || cursor.take(Concept.ALTERNATE);
                inTurn |= cursor.peek(-1).is(Concept.ALTERNATE);
                if (!more) {
                    cursor.reset(mark);
                }
            }
        }

        private boolean takeYarn() {
            boolean yarn = cursor.is(Concept.YARN_NAME);
            if (yarn) {
                named.add(cursor.next());
                if (cursor.is(Concept.AGAIN) && cursor.peek(1).is(Concept.COLON)) {
                    cursor.next();
                }
            }
            return yarn;
        }

        private boolean takeCount() {
            if (!cursor.is(Concept.NUMBER)
                    || Concept.STITCHES.contains(cursor.peek(1).concept())) {
                return false;
            }
            int mark = cursor.mark();
            List<StatedCount> counts = CountReader.read(cursor, true);
            boolean ends = cursor.is(Concept.COLON) || cursor.is(Concept.CLOSE) || cursor.atEnd();
            if (counts.isEmpty() || !ends) {
                cursor.reset(mark);
                return false;
            }
            notes.counts.addAll(counts);
            return true;
        }

        private boolean takeBrackets() {
            if (!cursor.is(Concept.OPEN)) {
                return false;
            }
            int mark = cursor.mark();
            cursor.next();
            if (asides.takeProseInTitle()) {
                return true;
            }
            List<StatedCount> counts = CountReader.read(cursor, false);
            if (!counts.isEmpty() && cursor.take(Concept.CLOSE)) {
                notes.counts.addAll(counts);
                return true;
            }
            cursor.reset(mark + 1);
            take();
            if (named.isEmpty() || !cursor.take(Concept.CLOSE)) {
                cursor.reset(mark);
                return false;
            }
            return true;
        }
    }
}
