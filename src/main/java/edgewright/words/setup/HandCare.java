package edgewright.words.setup;

import edgewright.texts.Language;
import edgewright.words.grammar.Concept;
import edgewright.words.grammar.Lexeme;
import edgewright.words.grammar.TalkReader;
import edgewright.words.grammar.WordSet;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * Sentences that name stitches and yet leave every stitch where it is: how loosely they are worked, how a round is joined, what the
 * signs of a repeat mean, how the edge of the piece is picked up along its rows.
 */
final class HandCare {
    private static final Set<Concept> OF_CARE =
            EnumSet.of(Concept.SHORT, Concept.TALL, Concept.STITCH_NAME, Concept.CHAIN, Concept.AS);
    private static final Set<Concept> OF_JOIN = EnumSet.of(
            Concept.SHORT, Concept.STITCH_NAME, Concept.SLIP, Concept.CHANGE, Concept.AS, Concept.NEXT_ROUND);
    private static final Set<Concept> OF_SIGNS =
            EnumSet.of(Concept.STAR, Concept.TWO_STARS, Concept.REPEAT, Concept.TIMES, Concept.AS, Concept.AGAIN);
    private static final Set<Concept> OF_ROWS = EnumSet.of(Concept.SHORT, Concept.NUMBER, Concept.CHANGE, Concept.AS);
    private static final Set<Concept> PLACES = EnumSet.of(
            Concept.BACK_ONLY, Concept.FRONT_ONLY, Concept.BOTH_LOOPS, Concept.YARN_NAME, Concept.ODD, Concept.EVEN);
    private static final Set<Concept> ENDS_OF_REPEAT =
            EnumSet.of(Concept.LAST, Concept.AROUND, Concept.ACROSS, Concept.CORNER, Concept.NUMBER);

    private final WordSet care;
    private final WordSet joins;
    private final WordSet signs;
    private final WordSet rowEnds;

    private final TalkReader talk;

    HandCare(Language language, TalkReader talk) {
        this.talk = talk;
        care = WordSet.of(language, "CARE_WORDS");
        joins = WordSet.of(language, "JOIN_WORDS");
        signs = WordSet.of(language, "SIGN_WORDS");
        rowEnds = WordSet.of(language, "ROW_END_WORDS");
    }

    /** Whether a sentence is one of these and no more. */
    boolean is(List<Lexeme> sentence) {
        return isCare(sentence) || isJoin(sentence) || explainsSigns(sentence) || isOfRows(sentence);
    }

    /** 'Finish with a round of slip stitches if you like', once the rounds have been told. */
    boolean isWish(List<Lexeme> sentence, Part part) {
        return (part == Part.FINISHING || part == Part.ROUNDS)
                && talk.isWish(sentence)
                && Clause.saysOnly(sentence, OF_JOIN)
                && !Clause.hasOne(sentence, PLACES);
    }

    /** 'Work the long stitches loosely.' */
    private boolean isCare(List<Lexeme> sentence) {
        return care.anyIn(sentence)
                && Clause.saysOnly(sentence, OF_CARE)
                && !Clause.hasOne(sentence, Clause.SIDES)
                && !Clause.hasOne(sentence, PLACES);
    }

    /** 'Join each round with a slip stitch to the first stitch', 'begin with a standing dc'. */
    private boolean isJoin(List<Lexeme> sentence) {
        boolean begins = sentence.get(0).is(Concept.SLIP)
                || sentence.get(0).is(Concept.BORDER_OVER)
                || joins.has(sentence.get(0));
        boolean standing = Clause.has(sentence, Concept.STANDING) && Clause.has(sentence, Concept.SHORT);
        boolean ended = Clause.has(sentence, Concept.SLIP) && joins.anyIn(sentence);
        boolean order =
                sentence.get(0).is(Concept.BORDER_OVER) && talk.order(sentence).isPresent();
        return (begins || standing || ended)
                && !order
                && !Clause.hasOne(sentence, EnumSet.of(Concept.AROUND, Concept.ACROSS))
                && Clause.saysOnly(sentence, OF_JOIN)
                && !Clause.hasOne(sentence, Clause.SIDES)
                && !Clause.hasOne(sentence, PLACES);
    }

    /** '* marks where a repeat begins', 'work what stands in square brackets the number of times given'. */
    private boolean explainsSigns(List<Lexeme> sentence) {
        return signs.anyIn(sentence)
                && Clause.hasOne(sentence, OF_SIGNS)
                && Clause.saysOnly(sentence, OF_SIGNS)
                && !Clause.hasOne(sentence, ENDS_OF_REPEAT)
                && !Clause.hasOne(sentence, Clause.SIDES)
                && !Clause.hasOne(sentence, PLACES);
    }

    /** 'Along row ends 3 for every 4 rows', which makes the edge that the base round is worked on. */
    private boolean isOfRows(List<Lexeme> sentence) {
        boolean rows = false;
        for (int i = 0; i < sentence.size(); i++) {
            boolean ends = i + 1 < sentence.size() && rowEnds.has(sentence.get(i + 1));
            boolean every = i > 1
                    && sentence.get(i - 1).is(Concept.NUMBER)
                    && sentence.get(i - 2).is(Concept.EACH);
            rows |= sentence.get(i).is(Concept.ROW) && (ends || every);
        }
        return rows
                && Clause.saysOnly(sentence, OF_ROWS)
                && !Clause.hasOne(sentence, EnumSet.of(Concept.ROUND, Concept.CORNER, Concept.MULTIPLE))
                && !Clause.hasOne(sentence, PLACES);
    }
}
