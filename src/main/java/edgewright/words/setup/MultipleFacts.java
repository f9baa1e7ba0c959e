package edgewright.words.setup;

import edgewright.words.grammar.Concept;
import edgewright.words.grammar.Cursor;
import edgewright.words.grammar.Lexeme;
import edgewright.words.grammar.Remark;
import edgewright.words.grammar.Stopped;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Reads the multiple of the base round: 'a multiple of 8 plus 3', '8n + 3', 'eights plus three', 'an odd number'. */
final class MultipleFacts {
    private static final Set<Concept> BEFORE_PLUS = EnumSet.of(
            Concept.STITCH,
            Concept.WORD,
            Concept.COMMA,
            Concept.TIMES,
            Concept.ANY_NUMBER,
            Concept.WITH,
            Concept.AND,
            Concept.IN);
    private static final Set<Concept> SAYS_MORE =
            EnumSet.of(Concept.NUMBER, Concept.CHAIN, Concept.ALTERNATE, Concept.NUMBER_EACH);
    private static final Set<Concept> PARTS =
            EnumSet.of(Concept.SEMICOLON, Concept.COMMA, Concept.OPEN, Concept.CLOSE, Concept.STOP, Concept.COLON);

    private final Facts facts;
    private final SetUpWords words;

    MultipleFacts(Facts facts, SetUpWords words) {
        this.facts = facts;
        this.words = words;
    }

    /** What follows the multiple of a sentence, clause by clause, as far as it says more; empty if it tells no multiple. */
    Optional<List<List<Lexeme>>> take(List<Lexeme> sentence) {
        Cursor cursor = new Cursor(sentence);
        boolean ofSides = Clause.hasOne(sentence, Clause.SIDES)
                || Clause.hasOne(sentence, EnumSet.of(Concept.PLUS, Concept.STITCH, Concept.BASE_ROUND));
        while (!cursor.atEnd() && !(isMultiple(cursor) && (ofSides || !cursor.is(Concept.NUMBER_EACH)))) {
            cursor.next();
        }
        if (cursor.atEnd()) {
            return takeOdd(sentence);
        }
        cursor.take(Concept.MULTIPLE);
        cursor.skip(EnumSet.of(Concept.OF, Concept.COLON));
        Lexeme of = cursor.peek();
        int each = of.is(Concept.NUMBER_EACH) ? cursor.next().number() : cursor.number();
        if (each < 1) {
            throw Cursor.stop(of, "number", "");
        }
        while (cursor.isOne(BEFORE_PLUS) || (cursor.isOne(Clause.SIDES) && plusComes(cursor))) {
            cursor.next();
        }
        boolean over = cursor.is(Concept.NUMBER) && words.over().has(cursor.peek(1));
        int plus = cursor.take(Concept.PLUS) || over ? cursor.number() : 0;
        Optional<List<Lexeme>> shown = example(sentence, of, each, plus);
        if (shown.isPresent()) {
            facts.base.add(BaseFacts.base(shown.get().get(0), shown.get().get(0).number()));
        }
        tell(new Facts.SaidMultiple(of, each, plus, List.of()));
        return Optional.of(rest(sentence, cursor.mark()));
    }

    /** A multiple that is told again is the same one. */
    private void tell(Facts.SaidMultiple said) {
        boolean other = facts.multiple
                .filter(before -> before.of() != said.of() || before.plus() != said.plus())
                .isPresent();
        if (other) {
            throw new Stopped(Remark.of(Remark.Kind.FINDING, said.at(), "multipleAsBefore", facts.multiple
                    .get()
                    .of()));
        }
        facts.multiple = Optional.of(said);
    }

    /** '37 is 5 sevens plus 2': a side of the example, told as what it is made of. */
    private static Optional<List<Lexeme>> example(List<Lexeme> sentence, Lexeme of, int each, int plus) {
        List<Lexeme> before = Clause.numbers(sentence.subList(0, sentence.indexOf(of)));
        if (before.size() != 2 || !of.is(Concept.NUMBER_EACH)) {
            return Optional.empty();
        }
        long made = (long) before.get(1).number() * each + plus;
        if (made != before.get(0).number()) {
            throw new Stopped(Remark.of(Remark.Kind.FINDING, before.get(0), "stitches", made));
        }
        return Optional.of(before);
    }

    private static boolean plusComes(Cursor cursor) {
        for (int i = 1; i < 5; i++) {
            if (cursor.peek(i).is(Concept.PLUS)) {
                return true;
            }
        }
        return false;
    }

    private boolean isMultiple(Cursor cursor) {
        Lexeme here = cursor.peek();
        Lexeme after = cursor.peek(1);
        boolean marked = words.multiples().has(after) && after.column() == here.end();
        boolean times = after.is(Concept.TIMES) && cursor.peek(2).is(Concept.ANY_NUMBER);
        boolean stitches = after.is(Concept.STITCH)
                && cursor.peek(2).is(Concept.TIMES)
                && cursor.peek(3).is(Concept.ANY_NUMBER);
        return here.is(Concept.MULTIPLE)
                || here.is(Concept.NUMBER_EACH)
                || (here.is(Concept.NUMBER) && (marked || times || stitches));
    }

    private Optional<List<List<Lexeme>>> takeOdd(List<Lexeme> sentence) {
        int at = Clause.find(sentence, Concept.ODD);
        if (at < 0 || !Clause.hasOne(sentence, Clause.SIDES)) {
            return Optional.empty();
        }
        facts.multiple = Optional.of(new Facts.SaidMultiple(sentence.get(at), 2, 1, List.of()));
        return Optional.of(rest(sentence, at + 1));
    }

    private static List<List<Lexeme>> rest(List<Lexeme> sentence, int from) {
        return Clause.split(sentence.subList(from, sentence.size()), PARTS).stream()
                .filter(clause -> Clause.hasOne(clause, SAYS_MORE))
                .toList();
    }
}
