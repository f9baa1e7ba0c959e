package edgewright.words.others;

import edgewright.words.grammar.BodyNotes;
import edgewright.words.grammar.Item;
import edgewright.words.grammar.Lexeme;
import java.util.List;
import java.util.Optional;

/**
 * One round as its words say it.
 *
 * @param at where its title stands
 * @param number from 1
 * @param yarn the yarn that is named with it
 * @param items empty if it is worked as another round
 * @param as the number of the round that it is worked as, and where that stands
 */
record RoundWords(
        Lexeme at, int number, Optional<Lexeme> yarn, List<Item> items, Optional<Lexeme> as, BodyNotes notes) {
    RoundWords {
        items = List.copyOf(items);
    }
}
