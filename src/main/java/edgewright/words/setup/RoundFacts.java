package edgewright.words.setup;

import edgewright.chart.Stitch;
import edgewright.words.grammar.Concept;
import edgewright.words.grammar.Lexeme;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** Reads what a clause says of all rounds: their loops, their yarns in turn, that sides are alike and how they grow. */
final class RoundFacts {
    private static final Set<Concept> OF_LOOPS =
            EnumSet.of(Concept.BACK_ONLY, Concept.BOTH_LOOPS, Concept.UNLESS, Concept.SHORT, Concept.CHAIN);
    private static final Set<Concept> EXCEPTIONS = EnumSet.of(Concept.NOT_OURS, Concept.UNLESS);

    private final Facts facts;
    private final SetUpWords words;

    RoundFacts(Facts facts, SetUpWords words) {
        this.facts = facts;
        this.words = words;
    }

    /** 'All four sides are alike.' */
    boolean takeAlike(List<Lexeme> clause) {
        boolean sides = Clause.hasOne(clause, EnumSet.of(Concept.EACH_SIDE, Concept.THREE_MORE_SIDES, Concept.SIDE));
        boolean alike = Clause.hasOne(clause, EnumSet.of(Concept.ALIKE, Concept.REPEAT, Concept.SAME));
        boolean four = Clause.numbers(clause).stream().allMatch(word -> word.number() == 4);
        return sides
                && alike
                && four
                && Clause.saysOnly(clause, EnumSet.of(Concept.REPEAT, Concept.AS, Concept.NUMBER));
    }

    /** 'All st are worked in the back loop only unless stated otherwise', 'st: back loop only, always'. */
    boolean takeUsual(List<Lexeme> clause) {
        boolean back = Clause.has(clause, Concept.BACK_ONLY);
        boolean both = Clause.has(clause, Concept.BOTH_LOOPS);
        int at = Clause.find(clause, Concept.SHORT);
        boolean excepted = back
                && both
                && Clause.hasOne(clause, EXCEPTIONS)
                && Clause.find(clause, Concept.BACK_ONLY) < Clause.find(clause, Concept.BOTH_LOOPS);
        if (excepted && at >= 0) {
            facts.usual = Stitch.BACK_LOOP;
            return true;
        }
        boolean named =
                at >= 0 && !(at + 1 < clause.size() && clause.get(at + 1).is(Concept.BACK_ONLY));
        boolean chain = Clause.has(clause, Concept.CHAIN) && !Clause.has(clause, Concept.CORNER);
        boolean butLast = isUntilLastRound(clause);
        boolean until = Clause.has(clause, Concept.TO) && !butLast;
        if (back == both
                || Clause.has(clause, Concept.BASE_ROUND)
                || !Clause.saysOnly(clause, OF_LOOPS)
                || until
                || chain
                || !(named || Clause.has(clause, Concept.UNLESS))) {
            return false;
        }
        facts.usual = back ? Stitch.BACK_LOOP : Stitch.PLAIN;
        facts.loopsOfLast |= butLast;
        return true;
    }

    /** 'Until the last round': of that one it says nothing, so its own words must. */
    private static boolean isUntilLastRound(List<Lexeme> clause) {
        int to = Clause.find(clause, Concept.TO);
        return to >= 0
                && to + 3 == clause.size()
                && clause.get(to + 1).is(Concept.LAST)
                && clause.get(to + 2).is(Concept.ROUND);
    }

    /** 'Rounds are worked in A and B in turn', 'odd rounds A, even rounds B'. */
    boolean takeYarnsInTurn(List<Lexeme> clause) {
        List<Lexeme> named =
                clause.stream().filter(word -> word.is(Concept.YARN_NAME)).toList();
        boolean parity = Clause.has(clause, Concept.ODD) && Clause.has(clause, Concept.EVEN);
        boolean turn = Clause.has(clause, Concept.ALTERNATE);
        if ((!parity && !turn)
                || named.size() < 2
                || !Clause.saysOnly(clause, EnumSet.of(Concept.ALTERNATE, Concept.CHANGE))) {
            return false;
        }
        List<Lexeme> inTurn = new ArrayList<>(named.subList(0, 2));
        if (parity && Clause.find(clause, Concept.EVEN) < Clause.find(clause, Concept.ODD)) {
            inTurn = List.of(named.get(1), named.get(0));
        }
        if (named.size() == 3 && turn) {
            inTurn = List.of(
                    named.get(2), named.get(2).text().equals(named.get(0).text()) ? named.get(1) : named.get(0));
        } else if (named.size() > 2) {
            return false;
        }
        facts.yarnsInTurn = List.copyOf(inTurn);
        return true;
    }

    /** 'Each side grows by 2 sts in every round', which is true of every border. */
    boolean takeGrowth(List<Lexeme> clause) {
        List<Lexeme> numbers = Clause.numbers(clause);
        boolean grows = words.growth().anyIn(clause)
                || (Clause.has(clause, Concept.MORE) && Clause.has(clause, Concept.STITCH));
        return grows
                && numbers.size() == 1
                && numbers.get(0).number() == 2
                && Clause.hasOne(clause, Clause.SIDES)
                && Clause.has(clause, Concept.ROUND)
                && !Clause.hasOne(clause, Concept.STITCHES);
    }
}
