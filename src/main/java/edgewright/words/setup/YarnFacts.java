package edgewright.words.setup;

import edgewright.words.grammar.Concept;
import edgewright.words.grammar.Cursor;
import edgewright.words.grammar.Lexeme;
import edgewright.words.grammar.RoundTitle;
import edgewright.words.grammar.WordSet;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * Reads which rounds are in which yarn where that is told once: 'Round 1 is in A, round 2 in B, and so on; rounds 8 and 9 are in
 * C', 'colour A for round 1, B for round 2, then A, B, A, B all the way'.
 */
final class YarnFacts {
    private static final Set<Concept> BETWEEN = EnumSet.of(
            Concept.IN,
            Concept.WITH,
            Concept.YARN,
            Concept.COMMA,
            Concept.AND,
            Concept.SEMICOLON,
            Concept.STOP,
            Concept.COLON,
            Concept.ALTERNATE);

    private final Facts facts;
    private final WordSet soOn;
    private final WordSet verbs;

    YarnFacts(Facts facts, SetUpWords words) {
        this.facts = facts;
        this.soOn = words.soOn();
        this.verbs = words.verbs();
    }

    /** Whether the sentence says this and nothing else to hands. */
    boolean take(List<Lexeme> sentence) {
        boolean named = Clause.has(sentence, Concept.YARN_NAME) && Clause.has(sentence, Concept.ROUND);
        if (!named || Clause.has(sentence, Concept.ODD) || !Clause.has(sentence, Concept.NUMBER)) {
            return false;
        }
        Cursor cursor = new Cursor(sentence);
        Map<Integer, Lexeme> told = new TreeMap<>();
        List<Lexeme> inTurn = new ArrayList<>();
        boolean on = false;
        int end = 0;
        while (!cursor.atEnd()) {
            cursor.skip(BETWEEN);
            if (cursor.atEnd()) {
                break;
            }
            boolean pair = takePair(cursor, told);
            if (!pair && cursor.is(Concept.YARN_NAME)) {
                inTurn.add(cursor.next());
            } else if (!pair && cursor.is(Concept.TO) && takeEnd(cursor)) {
                on = true;
                end = cursor.peek(-1).number();
            } else if (!pair && cursor.isOne(Concept.FOR_HANDS)) {
                return false;
            } else if (!pair) {
                on |= soOn.has(cursor.next());
            }
        }
        return isEnd(told, end) && keep(told, inTurn, on);
    }

    /** 'Until round 7', which is no more than where the next that is told begins. */
    private static boolean takeEnd(Cursor cursor) {
        boolean there = cursor.are(Concept.TO, Concept.ROUND, Concept.NUMBER);
        for (int i = 0; there && i < 3; i++) {
            cursor.next();
        }
        return there;
    }

    /** Where what goes on in turn ends, the next that is told begins. */
    private static boolean isEnd(Map<Integer, Lexeme> told, int end) {
        int turn = 1;
        while (told.containsKey(turn)) {
            turn++;
        }
        int first = turn;
        int next = told.keySet().stream()
                .filter(round -> round > first)
                .findFirst()
                .orElse(end + 1);
        return end == 0 || next == end + 1;
    }

    /** 'Round 1 is in A', 'rounds 8 and 9 in C', 'A for round 1'. */
    private boolean takePair(Cursor cursor, Map<Integer, Lexeme> told) {
        int mark = cursor.mark();
        List<Lexeme> rounds = new ArrayList<>();
        boolean first = cursor.is(Concept.YARN_NAME);
        Lexeme yarn = first ? cursor.next() : null;
        cursor.skip(EnumSet.of(Concept.IN));
        if (cursor.are(Concept.ROUND, Concept.NUMBER)) {
            cursor.next();
            RoundTitle.takeNumbers(cursor, rounds);
        }
        if (!rounds.isEmpty() && !first) {
            while (verbs.has(cursor.peek())
                    || cursor.is(Concept.IN)
                    || cursor.is(Concept.YARN)
                    || cursor.is(Concept.COLON)) {
                cursor.next();
            }
            yarn = cursor.is(Concept.YARN_NAME) ? cursor.next() : null;
        }
        if (rounds.isEmpty() || yarn == null) {
            cursor.reset(mark);
            return false;
        }
        for (Lexeme round : rounds) {
            told.put(round.number(), yarn);
        }
        return true;
    }

    /** The yarns that are told go on in turn if the sentence says so, from the first round on without a gap. */
    private boolean keep(Map<Integer, Lexeme> told, List<Lexeme> inTurn, boolean on) {
        if (told.isEmpty()) {
            return false;
        }
        List<Lexeme> turn = new ArrayList<>();
        while (told.containsKey(turn.size() + 1)) {
            turn.add(told.get(turn.size() + 1));
        }
        boolean goesOn = on || !inTurn.isEmpty();
        for (int i = 0; i < inTurn.size(); i++) {
            if (turn.isEmpty()
                    || !inTurn.get(i).text().equals(turn.get(i % turn.size()).text())) {
                return false;
            }
        }
        if (goesOn && turn.size() > 1) {
            facts.yarnsInTurn = List.copyOf(turn);
        } else if (goesOn) {
            return false;
        }
        facts.yarnsOfRounds.putAll(told);
        return true;
    }
}
