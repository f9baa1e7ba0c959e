package edgewright.words.others;

import edgewright.words.grammar.Concept;
import edgewright.words.grammar.Lexeme;
import edgewright.words.grammar.Token;
import edgewright.words.setup.Part;
import java.util.ArrayList;
import java.util.List;

/**
 * Lines that go together: a round with all its lines, or a paragraph.
 *
 * @param part in which they stand
 * @param rounds whether they begin with a round, or with rounds to be repeated
 */
record Chunk(Part part, boolean rounds, List<List<Token>> lines) {
    List<Token> tokens() {
        return lines.stream().flatMap(List::stream).toList();
    }

    int firstLine() {
        return lines.get(0).get(0).line();
    }

    /** The sentences of its words: they end at a full stop that no letter or digit follows at once. */
    static List<List<Lexeme>> sentences(List<Lexeme> words) {
        List<List<Lexeme>> sentences = new ArrayList<>(List.of(new ArrayList<>()));
        int open = 0;
        for (int i = 0; i < words.size(); i++) {
            Lexeme word = words.get(i);
            open += word.is(Concept.OPEN) ? 1 : word.is(Concept.CLOSE) && open > 0 ? -1 : 0;
            boolean joined = i + 1 < words.size()
                    && words.get(i + 1).line() == word.line()
                    && words.get(i + 1).column() == word.end();
            boolean ends = (word.is(Concept.STOP) && !joined)
                    || word.text().equals("!")
                    || word.text().equals("?");
            if (ends && open == 0) {
                sentences.add(new ArrayList<>());
            } else {
                sentences.get(sentences.size() - 1).add(word);
            }
        }
        sentences.removeIf(List::isEmpty);
        return sentences;
    }
}
