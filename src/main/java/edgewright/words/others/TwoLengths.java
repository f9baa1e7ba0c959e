package edgewright.words.others;

import edgewright.chart.Side;
import edgewright.words.grammar.Concept;
import edgewright.words.grammar.Cursor;
import edgewright.words.grammar.Lexeme;
import edgewright.words.grammar.SideNames;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Takes apart the words of a round that tell two lengths in one: 'rep from * 8 more times on the long sides and 5 on the short'. */
final class TwoLengths {
    private static final Set<Concept> TIMES = EnumSet.of(Concept.MORE, Concept.TIMES);

    /** A number of times with the sides that it is for; each list as it stands. */
    private record ForSides(List<Lexeme> times, List<Lexeme> sides) {}

    private TwoLengths() {}

    /** The same words told for one pair of sides and then for the other, if they tell both in one; else as they are. */
    static List<Lexeme> apart(List<Lexeme> words) {
        Cursor cursor = new Cursor(words);
        while (!cursor.atEnd()) {
            int from = cursor.mark();
            Optional<ForSides> first = forSides(cursor);
            boolean and = first.isPresent() && cursor.takeOne(EnumSet.of(Concept.AND, Concept.COMMA));
            Optional<ForSides> second = and ? forSides(cursor) : Optional.empty();
            if (second.isPresent()) {
                List<Lexeme> before = words.subList(0, from);
                List<Lexeme> after = words.subList(cursor.mark(), words.size());
                List<Lexeme> all = told(first.get(), before, after);
                all.addAll(told(second.get(), before, after));
                return all;
            }
            cursor.reset(from);
            cursor.next();
        }
        return words;
    }

    private static List<Lexeme> told(ForSides one, List<Lexeme> before, List<Lexeme> after) {
        Lexeme last = one.sides().get(one.sides().size() - 1);
        List<Lexeme> told = new ArrayList<>(one.sides());
        told.add(new Lexeme(Concept.COLON, ":", 0, Optional.empty(), last.line(), last.column(), last.end()));
        told.addAll(before);
        told.addAll(one.times());
        told.addAll(after);
        return told;
    }

    private static Optional<ForSides> forSides(Cursor cursor) {
        List<Lexeme> times = new ArrayList<>();
        if (!cursor.is(Concept.NUMBER)) {
            return Optional.empty();
        }
        times.add(cursor.next());
        while (cursor.isOne(TIMES)) {
            times.add(cursor.next());
        }
        if (times.size() == 1 || !cursor.take(Concept.IN)) {
            return Optional.empty();
        }
        List<Lexeme> sides = new ArrayList<>();
        int mark = cursor.mark();
        Set<Side> named = SideNames.take(cursor);
        int end = cursor.mark();
        cursor.reset(mark);
        while (cursor.mark() < end) {
            sides.add(cursor.next());
        }
        return named.isEmpty() ? Optional.empty() : Optional.of(new ForSides(times, sides));
    }
}
