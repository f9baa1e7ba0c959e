package edgewright.words.others;

import edgewright.words.grammar.BodyNotes;
import edgewright.words.grammar.BodyReader;
import edgewright.words.grammar.Cursor;
import edgewright.words.grammar.Lexeme;
import edgewright.words.grammar.Stopped;
import edgewright.words.grammar.TalkReader;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Keeps the words of rounds as they stand, to look at them again once it is known which round is the last. */
final class RoundBodies {
    private final Map<Integer, List<Lexeme>> bodies = new HashMap<>();

    void put(int round, List<Lexeme> words) {
        bodies.put(round, words);
    }

    /** Stops at the first stitch of a round of whose loops its own words say nothing. */
    void requireLoops(int round, TalkReader talk) throws Stopped {
        List<Lexeme> words = bodies.getOrDefault(round, List.of());
        new BodyReader(new Cursor(words), new BodyNotes(), Optional.empty(), talk).read();
    }
}
