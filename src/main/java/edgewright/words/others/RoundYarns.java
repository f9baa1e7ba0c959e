package edgewright.words.others;

import edgewright.words.grammar.AsideReader;
import edgewright.words.grammar.BodyNotes;
import edgewright.words.grammar.Concept;
import edgewright.words.grammar.Cursor;
import edgewright.words.grammar.Lexeme;
import edgewright.words.grammar.RoundTitle;
import edgewright.words.grammar.TalkReader;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;

/** Reads the yarns that stand between the title of a round and its first stitch. */
final class RoundYarns {
    private RoundYarns() {}

    /** The yarns that are named behind the title. */
    static List<Lexeme> take(Cursor cursor, RoundTitle title, BodyNotes notes, TalkReader talk) {
        AsideReader asides = new AsideReader(cursor, notes, talk);
        cursor.skip(EnumSet.of(Concept.COLON, Concept.STOP, Concept.COMMA, Concept.DASH));
        List<Lexeme> yarns = takeByNumber(cursor, title.numbers());
        boolean more = true;
        while (more) {
            more = takeRoundsInYarn(cursor, yarns) || takeNamed(cursor, yarns);
            if (!more && asides.takeYarn(true)) {
                yarns.add(notes.yarn.orElseThrow());
                more = true;
            }
            if (more) {
                cursor.skip(Concept.PARTING);
            }
        }
        return yarns;
    }

    /** 'Round 1 in A and round 2 in B', in the order of the title. */
    private static List<Lexeme> takeByNumber(Cursor cursor, List<Lexeme> numbers) {
        int mark = cursor.mark();
        List<Lexeme> yarns = new ArrayList<>();
        for (Lexeme number : numbers) {
            boolean round =
                    cursor.are(Concept.ROUND, Concept.NUMBER) && cursor.peek(1).number() == number.number();
            cursor.takeAll(Concept.ROUND, Concept.NUMBER);
            cursor.skip(EnumSet.of(Concept.IN, Concept.WITH, Concept.YARN));
            if (!round || !cursor.is(Concept.YARN_NAME)) {
                cursor.reset(mark);
                return new ArrayList<>();
            }
            yarns.add(cursor.next());
            cursor.skip(Concept.PARTING);
        }
        return yarns;
    }

    /** '1 round A': one yarn after the other under one title. */
    private static boolean takeRoundsInYarn(Cursor cursor, List<Lexeme> yarns) {
        int in = cursor.peek(2).is(Concept.IN) || cursor.peek(2).is(Concept.WITH) ? 3 : 2;
        if (!cursor.are(Concept.NUMBER, Concept.ROUND) || !cursor.peek(in).is(Concept.YARN_NAME)) {
            return false;
        }
        int many = cursor.number();
        if (many < 1 || many > RoundsReader.MOST_ROUNDS) {
            throw Cursor.stop(cursor.peek(-1), "number", "");
        }
        for (int i = 1; i < in; i++) {
            cursor.next();
        }
        Lexeme yarn = cursor.next();
        for (int i = 0; i < many; i++) {
            yarns.add(yarn);
        }
        return true;
    }

    /** 'A', 'A yarn', 'A again.' */
    private static boolean takeNamed(Cursor cursor, List<Lexeme> yarns) {
        if (!cursor.is(Concept.YARN_NAME)) {
            return false;
        }
        yarns.add(cursor.next());
        cursor.take(Concept.YARN);
        takeAgain(cursor);
        return true;
    }

    /** 'A again.' */
    private static void takeAgain(Cursor cursor) {
        boolean ends = cursor.peek(1).is(Concept.STOP)
                || cursor.peek(1).is(Concept.COLON)
                || cursor.peek(1).is(Concept.COMMA);
        if (cursor.is(Concept.AGAIN) && ends) {
            cursor.next();
        }
    }

    /** The yarn of the round in this place of its title, from 0: one for each, or one for all. */
    static Optional<Lexeme> told(List<Lexeme> yarns, int index, int rounds) {
        return yarns.size() > 1 && yarns.size() == rounds
                ? Optional.of(yarns.get(index))
                : yarns.stream().findFirst();
    }
}
