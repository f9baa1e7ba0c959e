package edgewright.words.setup;

import edgewright.texts.Language;
import edgewright.words.grammar.Concept;
import edgewright.words.grammar.Lexeme;
import edgewright.words.grammar.WordSet;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;

/** 'The border is 8 rounds deep and about 5 cm wide': how many rounds there must be in all. */
final class DepthFacts {
    private final Facts facts;
    private final SetUpWords words;
    private final WordSet depth;

    DepthFacts(Facts facts, SetUpWords words, Language language) {
        this.facts = facts;
        this.words = words;
        this.depth = WordSet.of(language, "DEPTH_WORDS");
    }

    /** Whether its numbers are one of rounds, which is kept to be checked, and else measures. */
    boolean take(List<Lexeme> sentence) {
        List<Lexeme> rounds = new ArrayList<>();
        boolean deep = false;
        for (int i = 0; i < sentence.size(); i++) {
            Lexeme word = sentence.get(i);
            Lexeme next = i + 1 < sentence.size() ? sentence.get(i + 1) : word;
            if (word.is(Concept.NUMBER) && next.is(Concept.ROUND)) {
                rounds.add(word);
                deep |= i + 2 < sentence.size() && depth.has(sentence.get(i + 2));
            } else if (word.is(Concept.NUMBER) && !words.measures().has(next)) {
                return false;
            }
        }
        boolean only = Clause.saysOnly(sentence, EnumSet.of(Concept.NUMBER))
                && !Clause.hasOne(sentence, Clause.SIDES)
                && !Clause.hasOne(sentence, EnumSet.of(Concept.YARN_NAME, Concept.CORNER, Concept.STITCH));
        if (rounds.size() != 1 || !deep || !only) {
            return false;
        }
        facts.depths.add(rounds.get(0));
        return true;
    }
}
