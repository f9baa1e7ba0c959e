package edgewright.words.grammar;

import edgewright.chart.Counting;
import edgewright.chart.Side;
import edgewright.words.grammar.StatedCount.Of;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Reads stated counts in the forms that patterns have for them. */
public final class CountReader {
    private static final Set<Concept> CORNER_WORDS =
            EnumSet.of(Concept.CORNER, Concept.CHAIN, Concept.DASH, Concept.SPACE, Concept.EACH, Concept.COUNTED);
    private static final Set<Concept> PASSED =
            EnumSet.of(Concept.IN, Concept.OF, Concept.SIDE, Concept.ALIKE, Concept.EACH);

    private final Cursor cursor;
    private final boolean needsUnit;
    private final List<Integer> values = new ArrayList<>();
    private final Set<Side> sides = EnumSet.noneOf(Side.class);
    private Of of = Of.UNSAID;
    private Optional<Counting> counting = Optional.empty();
    private Optional<StatedCount.Corners> corners = Optional.empty();
    private Optional<Lexeme> afterRound = Optional.empty();
    private boolean between;
    private boolean unit;

    private CountReader(Cursor cursor, boolean needsUnit) {
        this.cursor = cursor;
        this.needsUnit = needsUnit;
    }

    /**
     * The counts that stand here up to the end of their brackets or sentence; empty, and the cursor where it was, if something
     * else stands here.
     *
     * @param needsUnit whether a number alone is not enough to be a count
     */
    public static List<StatedCount> read(Cursor cursor, boolean needsUnit) {
        List<StatedCount> counts = new ArrayList<>();
        int mark = cursor.mark();
        cursor.skip(EnumSet.of(Concept.EQUALS, Concept.DASH, Concept.STITCH_COUNT, Concept.COLON, Concept.GIVES));
        while (true) {
            int before = cursor.mark();
            Optional<StatedCount> count = new CountReader(cursor, needsUnit).count();
            if (count.isEmpty()) {
                cursor.reset(counts.isEmpty() ? mark : before);
                return counts;
            }
            counts.add(count.get());
            cursor.skip(EnumSet.of(Concept.COMMA, Concept.SEMICOLON, Concept.AND, Concept.SLASH));
        }
    }

    private Optional<StatedCount> count() {
        takeSides();
        cursor.skip(EnumSet.of(Concept.COLON, Concept.EQUALS, Concept.SIDE, Concept.GIVES, Concept.EACH_SIDE));
        cursor.take(Concept.TOTAL);
        of = cursor.peek(-1).is(Concept.TOTAL) ? Of.ROUND : of;
        cursor.take(Concept.COLON);
        if (!cursor.is(Concept.NUMBER)) {
            return Optional.empty();
        }
        Lexeme at = cursor.peek();
        takeNumbers();
        takeQualifiers();
        boolean enough = unit || (!needsUnit && endsHere());
        return enough && of != null
                ? Optional.of(new StatedCount(at, of, sides, values, counting, corners, afterRound, between))
                : Optional.empty();
    }

    private boolean endsHere() {
        return cursor.atEnd()
                || cursor.is(Concept.CLOSE)
                || cursor.is(Concept.STOP)
                || cursor.is(Concept.SEMICOLON)
                || cursor.is(Concept.COMMA);
    }

    private void takeNumbers() {
        values.add(cursor.number());
        if (cursor.is(Concept.OPEN) && cursor.peek(1).is(Concept.NUMBER) && endsInNumbers()) {
            cursor.next();
            do {
                values.add(cursor.number());
            } while (cursor.take(Concept.COMMA) || cursor.take(Concept.SLASH) || cursor.take(Concept.SEMICOLON));
            if (!cursor.take(Concept.CLOSE)) {
                of = null;
            }
            return;
        }
        int mark = cursor.mark();
        while (cursor.take(Concept.COMMA) || cursor.take(Concept.SLASH) || cursor.take(Concept.AND)) {
            boolean another = cursor.is(Concept.NUMBER)
                    && !cursor.peek(1).is(Concept.CORNER)
                    && !cursor.peek(1).is(Concept.CHAIN);
            if (!another) {
                break;
            }
            values.add(cursor.number());
            mark = cursor.mark();
        }
        cursor.reset(mark);
        if (values.size() > 1) {
            of = values.size() == 2 ? Of.TWO_LENGTHS : values.size() == 4 ? Of.FOUR_LENGTHS : Of.ROUNDS;
        }
    }

    /** Whether the brackets that open here hold numbers alone. */
    private boolean endsInNumbers() {
        int i = 1;
        while (cursor.peek(i).is(Concept.NUMBER)
                || cursor.peek(i).is(Concept.COMMA)
                || cursor.peek(i).is(Concept.SLASH)
                || cursor.peek(i).is(Concept.SEMICOLON)) {
            i++;
        }
        return cursor.peek(i).is(Concept.CLOSE);
    }

    private void takeQualifiers() {
        boolean more = true;
        while (more) {
            more = takeUnit() || takeAfterRound() || takeBetween() || takeWhat() || takeCounting() || takeCorners();
        }
    }

    private boolean takeUnit() {
        boolean there = cursor.take(Concept.STITCH);
        unit |= there;
        return there;
    }

    /** 'After round 4', 'at the end of round 4'. */
    private boolean takeAfterRound() {
        int mark = cursor.mark();
        if (cursor.take(Concept.AFTER) && cursor.are(Concept.ROUND, Concept.NUMBER)) {
            cursor.next();
            afterRound = Optional.of(cursor.next());
            return true;
        }
        cursor.reset(mark);
        return false;
    }

    /** 'Between the corners.' */
    private boolean takeBetween() {
        boolean there = unit && cursor.takeAll(Concept.BETWEEN, Concept.CORNER);
        between |= there;
        return there;
    }

    private boolean takeWhat() {
        int mark = cursor.mark();
        cursor.skip(PASSED);
        cursor.take(Concept.SLASH);
        if (cursor.peek(-1).is(Concept.SLASH) && cursor.take(Concept.SIDE)) {
            of = of == Of.UNSAID ? Of.SIDE : of;
        } else if (cursor.take(Concept.EACH_SIDE) || cursor.takeAll(Concept.EACH, Concept.SIDE)) {
            of = of == Of.UNSAID ? Of.SIDE : of;
        } else if (cursor.take(Concept.TOTAL) || cursor.take(Concept.AROUND)) {
            of = of == Of.UNSAID ? Of.ROUND : null;
        } else if (sides.isEmpty() && !cursor.peek(-1).is(Concept.COMMA) && takeSides()) {
            of = of == Of.UNSAID ? Of.SIDE : of;
        } else {
            boolean passed = cursor.peek(-1).is(Concept.SIDE) && cursor.mark() > mark;
            cursor.reset(passed ? cursor.mark() : mark);
            return passed;
        }
        unit = true;
        cursor.skip(EnumSet.of(Concept.SIDE, Concept.ALIKE));
        return true;
    }

    /** Takes the names of sides, if they stand here. */
    private boolean takeSides() {
        Set<Side> named = SideNames.take(cursor);
        sides.addAll(named);
        of = named.isEmpty() ? of : Of.SIDE;
        return !named.isEmpty();
    }

    private boolean takeCounting() {
        int mark = cursor.mark();
        cursor.skip(EnumSet.of(Concept.COMMA, Concept.SEMICOLON, Concept.OPEN));
        List<Lexeme> chains = new ArrayList<>();
        Optional<Counting> said = CountingWords.take(cursor, chains);
        if (said.isEmpty()) {
            cursor.reset(mark);
            return false;
        }
        counting = said;
        if (corners.isEmpty() && !chains.isEmpty()) {
            Lexeme at = chains.get(0);
            corners = Optional.of(new StatedCount.Corners(at, 4, at.number()));
        }
        return true;
    }

    /** Corners that are named beside the count, as in '45 sts, 4 corners'. */
    private boolean takeCorners() {
        int mark = cursor.mark();
        cursor.skip(EnumSet.of(Concept.COMMA, Concept.PLUS, Concept.AND, Concept.SEMICOLON));
        boolean hyphened = cursor.are(Concept.NUMBER, Concept.DASH, Concept.CHAIN);
        if (!hyphened && (cursor.is(Concept.NUMBER) || cursor.is(Concept.EACH))) {
            Lexeme many = cursor.next();
            boolean corner = false;
            int chains = 0;
            while (cursor.isOne(CORNER_WORDS) || (cursor.is(Concept.NUMBER) && nextToChain())) {
                corner |= cursor.is(Concept.CORNER) || cursor.is(Concept.SPACE);
                chains = cursor.is(Concept.NUMBER) ? cursor.peek().number() : chains;
                cursor.next();
            }
            if (corner) {
                corners =
                        Optional.of(new StatedCount.Corners(many, many.is(Concept.NUMBER) ? many.number() : 4, chains));
                return true;
            }
        }
        cursor.reset(mark);
        return false;
    }

    private boolean nextToChain() {
        return cursor.peek(-1).is(Concept.DASH)
                || cursor.peek(-1).is(Concept.CHAIN)
                || cursor.peek(1).is(Concept.DASH)
                || cursor.peek(1).is(Concept.CHAIN);
    }
}
