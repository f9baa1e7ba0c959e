package edgewright.words.others;

import edgewright.texts.Language;
import edgewright.words.grammar.Concept;
import edgewright.words.grammar.Cursor;
import edgewright.words.grammar.Lexeme;
import edgewright.words.grammar.Lexicon;
import edgewright.words.grammar.WordSet;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** Finds yarns that are named where odd and even rounds are told apart: 'odd rounds are dark blue, even rounds pale blue'. */
final class ParityYarnNames {
    private static final int MOST_WORDS = 3;
    private static final Set<Concept> PASSED =
            EnumSet.of(Concept.ROUND, Concept.IN, Concept.WITH, Concept.COLON, Concept.EQUALS, Concept.DASH);

    private final WordSet verbs;

    private ParityYarnNames(Language language) {
        this.verbs = WordSet.of(language, "ROUND_VERBS");
    }

    /** The two names, that of the odd rounds first; none if no line tells both in words of its own. */
    static List<String> in(List<Page.Line> lines, Lexicon lexicon, Language language) {
        ParityYarnNames names = new ParityYarnNames(language);
        for (Page.Line line : lines) {
            List<Lexeme> words = lexicon.read(line.tokens());
            String odd = names.beside(words, Concept.ODD);
            String even = names.beside(words, Concept.EVEN);
            if (!odd.isEmpty() && !even.isEmpty() && !odd.equals(even)) {
                return List.of(odd, even);
            }
        }
        return List.of();
    }

    /** The words that follow, or where none do, those that go before 'for the odd rounds'. */
    private String beside(List<Lexeme> words, Concept parity) {
        Cursor cursor = new Cursor(words);
        while (!cursor.atEnd() && !cursor.is(parity)) {
            cursor.next();
        }
        if (cursor.atEnd()) {
            return "";
        }
        int at = cursor.mark();
        cursor.next();
        while (cursor.isOne(PASSED) || verbs.has(cursor.peek())) {
            cursor.next();
        }
        String after = joined(words, cursor.mark(), 1);
        int before = at - 1;
        while (before >= 0 && words.get(before).is(Concept.IN)) {
            before--;
        }
        return after.isEmpty() && before < at - 1 ? joined(words, before, -1) : after;
    }

    private String joined(List<Lexeme> words, int from, int step) {
        List<String> name = new ArrayList<>();
        for (int i = from; i >= 0 && i < words.size() && name.size() < MOST_WORDS; i += step) {
            if (!words.get(i).is(Concept.WORD)) {
                break;
            }
            name.add(step > 0 ? name.size() : 0, words.get(i).text());
        }
        return String.join(" ", name);
    }
}
