package edgewright.words.setup;

import edgewright.words.grammar.Concept;
import edgewright.words.grammar.Lexeme;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Tells whether a sentence outside the rounds says something to hands, so that it cannot be prose. */
final class ForHands {
    /** Words that are used in any sentence; only beside a stitch do they say something to hands. */
    private static final Set<Concept> SOFT = EnumSet.of(
            Concept.AS,
            Concept.ALTERNATE,
            Concept.NOT_OURS,
            Concept.CHANGE,
            Concept.ONCE,
            Concept.TWICE,
            Concept.REPEAT,
            Concept.UNLESS,
            Concept.MISS);

    private static final Set<Concept> MILD = EnumSet.of(Concept.AS, Concept.CHANGE, Concept.ONCE);
    private static final Set<Concept> MEASURED =
            EnumSet.of(Concept.STITCH, Concept.ROUND, Concept.ROW, Concept.CORNER, Concept.CHAIN, Concept.TIMES);
    private static final Set<Concept> MADE =
            EnumSet.of(Concept.SHORT, Concept.TALL, Concept.STITCH_NAME, Concept.UNCLEAR_NAME);
    private static final Set<Concept> PLACES =
            EnumSet.of(Concept.BACK_ONLY, Concept.FRONT_ONLY, Concept.BOTH_LOOPS, Concept.CORNER);
    /** Parts in which stitches and numbers are talked of without being worked. */
    private static final Set<Part> FREE =
            EnumSet.of(Part.TENSION, Part.MATERIALS, Part.SIZE, Part.FINISHING, Part.PRACTICE);

    private ForHands() {}

    /** The first word of a sentence for which it cannot be prose; empty if it can. */
    static Optional<Lexeme> in(List<Lexeme> sentence, Part part) {
        if (sentence.get(0).is(Concept.TO) && Clause.has(sentence, Concept.ROUND)) {
            return Optional.of(sentence.get(0));
        }
        if (isFree(sentence, part) || namesAlone(sentence) || numbersOfNothing(sentence)) {
            return Optional.empty();
        }
        return sentence.stream()
                .filter(word -> Concept.FOR_HANDS.contains(word.concept()))
                .findFirst();
    }

    private static boolean isFree(List<Lexeme> sentence, Part part) {
        boolean round = Clause.has(sentence, Concept.ROUND) && Clause.has(sentence, Concept.NUMBER);
        boolean instructs = Clause.hasOne(sentence, MADE)
                && (Clause.hasOne(sentence, Clause.SIDES) || Clause.hasOne(sentence, PLACES));
        return part == Part.TENSION || (FREE.contains(part) && !round && !instructs);
    }

    private static boolean isMeasured(List<Lexeme> sentence) {
        return Clause.hasOne(sentence, MEASURED) || Clause.hasOne(sentence, Clause.SIDES);
    }

    /** It names the short stitch in passing, or uses a word of the trade as anybody does. */
    private static boolean namesAlone(List<Lexeme> sentence) {
        List<Concept> said = sentence.stream()
                .map(Lexeme::concept)
                .filter(Concept.FOR_HANDS::contains)
                .toList();
        long words = sentence.stream().filter(word -> word.is(Concept.WORD)).count();
        boolean names = said.equals(List.of(Concept.SHORT)) && words > 4 && !isMeasured(sentence);
        return names || MILD.containsAll(said);
    }

    /** Its numbers are of nothing that is counted on a border. */
    private static boolean numbersOfNothing(List<Lexeme> sentence) {
        boolean onlyNumbers = sentence.stream()
                .filter(word -> Concept.FOR_HANDS.contains(word.concept()) && !SOFT.contains(word.concept()))
                .allMatch(word -> word.is(Concept.NUMBER));
        boolean digits = Clause.numbers(sentence).stream()
                .anyMatch(word -> Character.isDigit(word.text().charAt(0)));
        boolean sides = Clause.hasOne(sentence, Clause.SIDES) || Clause.has(sentence, Concept.MULTIPLE);
        return onlyNumbers && (!isMeasured(sentence) || (!digits && !sides));
    }
}
