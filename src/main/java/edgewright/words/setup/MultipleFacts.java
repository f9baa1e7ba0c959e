package edgewright.words.setup;

import edgewright.words.grammar.Concept;
import edgewright.words.grammar.Cursor;
import edgewright.words.grammar.Lexeme;
import edgewright.words.grammar.Remark;
import edgewright.words.grammar.Stopped;
import java.util.ArrayList;
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
            Concept.EACH,
            Concept.CLOSE,
            Concept.REPEAT,
            Concept.IN);
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
        int begins = cursor.mark();
        cursor.take(Concept.MULTIPLE);
        cursor.skip(EnumSet.of(Concept.OF, Concept.COLON, Concept.STITCH, Concept.WORD, Concept.IN));
        Lexeme of = cursor.peek();
        int each = of.is(Concept.NUMBER_EACH) ? cursor.next().number() : cursor.number();
        if (each < 1) {
            throw Cursor.stop(of, "number", "");
        }
        while (cursor.isOne(BEFORE_PLUS) || (cursor.isOne(Clause.SIDES) && plusComes(cursor))) {
            cursor.next();
        }
        boolean over = cursor.is(Concept.NUMBER)
                && (words.over().has(cursor.peek(1))
                        || cursor.peek(1).is(Concept.MORE)
                        || cursor.are(Concept.NUMBER, Concept.STITCH, Concept.MORE));
        int plus = cursor.take(Concept.PLUS) || over ? cursor.number() : 0;
        Optional<List<Lexeme>> shown = example(sentence, of, each, plus);
        if (shown.isPresent()) {
            facts.base.add(BaseFacts.base(shown.get().get(0), shown.get().get(0).number()));
        }
        tell(new Facts.SaidMultiple(of, each, plus, List.of()));
        return Optional.of(rest(sentence, begins, cursor.mark()));
    }

    /** A multiple that is told again is the same one. */
    private void tell(Facts.SaidMultiple said) {
        boolean other = facts.multiple
                .filter(before -> before.of() != said.of() || before.plus() != said.plus())
                .isPresent();
        if (other) {
            throw new Stopped(Remark.of(
                    Remark.Kind.FINDING,
                    said.at(),
                    "multipleAsBefore",
                    facts.multiple.get().of()));
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
        for (int i = 1; i < 7; i++) {
            if (cursor.peek(i).is(Concept.PLUS)) {
                return true;
            }
        }
        return false;
    }

    private boolean overComes(Cursor cursor) {
        for (int i = 2; i < 10; i++) {
            if (cursor.peek(i).is(Concept.NUMBER)
                    && (words.over().has(cursor.peek(i + 1))
                            || cursor.peek(i + 1).is(Concept.MORE))) {
                return true;
            }
        }
        return false;
    }

    private boolean isMultiple(Cursor cursor) {
        Lexeme here = cursor.peek();
        Lexeme after = cursor.peek(1);
        Lexeme symbol = after.is(Concept.TIMES) ? cursor.peek(2) : after;
        boolean close = after.column() == here.end() || cursor.peek(2).is(Concept.PLUS) || after.is(Concept.TIMES);
        boolean marked = words.multiples().has(symbol) && close;
        boolean times = after.is(Concept.TIMES) && cursor.peek(2).is(Concept.ANY_NUMBER);
        boolean stitches = after.is(Concept.STITCH)
                && cursor.peek(2).is(Concept.TIMES)
                && cursor.peek(3).is(Concept.ANY_NUMBER);
        boolean andMore =
                cursor.are(Concept.NUMBER, Concept.STITCH, Concept.AND, Concept.NUMBER, Concept.STITCH, Concept.MORE);
        boolean perFigure = after.is(Concept.STITCH)
                && (cursor.are(Concept.NUMBER, Concept.STITCH, Concept.IN, Concept.EACH)
                        || cursor.are(Concept.NUMBER, Concept.STITCH, Concept.EACH))
                && (overComes(cursor) || plusComes(cursor));
        return here.is(Concept.MULTIPLE)
                || perFigure
                || andMore
                || here.is(Concept.NUMBER_EACH)
                || (here.is(Concept.NUMBER) && (marked || times || stitches));
    }

    private Optional<List<List<Lexeme>>> takeOdd(List<Lexeme> sentence) {
        int at = Clause.find(sentence, Concept.ODD);
        if (at < 0 || !Clause.hasOne(sentence, Clause.SIDES)) {
            return Optional.empty();
        }
        facts.multiple = Optional.of(new Facts.SaidMultiple(sentence.get(at), 2, 1, List.of()));
        return Optional.of(rest(sentence, at, at + 1));
    }

    /** 'Between the 2-ch corner spaces': perhaps without the stitches that go into the corners; what is stated tells. */
    private boolean takeBetween(List<Lexeme> clause) {
        int between = Clause.find(clause, Concept.BETWEEN);
        if (between < 0
                || !Clause.has(clause, Concept.CORNER)
                || Clause.numbers(clause).size() > 1) {
            return false;
        }
        facts.baseBetween = true;
        facts.baseChains.addAll(Clause.numbers(clause));
        return true;
    }

    /** What stands before the clause of the multiple, and all that follows its numbers. */
    private List<List<Lexeme>> rest(List<Lexeme> sentence, int begins, int ends) {
        int from = begins;
        while (from > 0 && !Clause.PARTING.contains(sentence.get(from - 1).concept())) {
            from--;
        }
        List<List<Lexeme>> rest = new ArrayList<>(List.of(sentence.subList(0, from)));
        rest.addAll(Clause.split(sentence.subList(ends, sentence.size()), PARTS));
        rest.removeIf(clause -> takeBetween(clause) || !Clause.hasOne(clause, Concept.FOR_HANDS));
        return rest;
    }
}
