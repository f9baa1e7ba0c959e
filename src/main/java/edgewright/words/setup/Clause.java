package edgewright.words.setup;

import edgewright.words.grammar.Concept;
import edgewright.words.grammar.Lexeme;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** Looks into the words of a clause, wherever in it they stand. */
final class Clause {
    /** Words for sides, one or several. */
    static final Set<Concept> SIDES = Concept.andEdges(Concept.EACH_SIDE, Concept.THREE_MORE_SIDES, Concept.SIDE);

    /** What parts one thing that is said from the next. */
    static final Set<Concept> PARTING = EnumSet.of(
            Concept.SEMICOLON,
            Concept.COMMA,
            Concept.DASH,
            Concept.OPEN,
            Concept.CLOSE,
            Concept.STOP,
            Concept.COLON,
            Concept.AND);

    private Clause() {}

    static boolean has(List<Lexeme> clause, Concept concept) {
        return clause.stream().anyMatch(word -> word.is(concept));
    }

    static boolean hasOne(List<Lexeme> clause, Set<Concept> concepts) {
        return clause.stream().anyMatch(word -> concepts.contains(word.concept()));
    }

    /** Whether all that it says to hands is of these kinds. */
    static boolean saysOnly(List<Lexeme> clause, Set<Concept> concepts) {
        return clause.stream()
                .map(Lexeme::concept)
                .filter(Concept.FOR_HANDS::contains)
                .allMatch(concepts::contains);
    }

    /** Whether no sign and no 'and' parts it any further. */
    static boolean isSimple(List<Lexeme> clause) {
        return split(clause, PARTING).size() == 1;
    }

    /** Where the first of this kind stands, from 0; below 0 if none does. */
    static int find(List<Lexeme> clause, Concept concept) {
        for (int i = 0; i < clause.size(); i++) {
            if (clause.get(i).is(concept)) {
                return i;
            }
        }
        return -1;
    }

    static List<Lexeme> numbers(List<Lexeme> clause) {
        return clause.stream().filter(word -> word.is(Concept.NUMBER)).toList();
    }

    /** Its parts between these signs; a hyphen within a word parts nothing. */
    static List<List<Lexeme>> split(List<Lexeme> clause, Set<Concept> signs) {
        List<List<Lexeme>> parts = new ArrayList<>(List.of(new ArrayList<>()));
        for (Lexeme word : clause) {
            if (signs.contains(word.concept()) && !isHyphen(clause, word)) {
                parts.add(new ArrayList<>());
            } else {
                parts.get(parts.size() - 1).add(word);
            }
        }
        parts.removeIf(List::isEmpty);
        return parts;
    }

    private static boolean isHyphen(List<Lexeme> clause, Lexeme word) {
        int at = clause.indexOf(word);
        return word.is(Concept.DASH) && at > 0 && clause.get(at - 1).end() == word.column();
    }
}
