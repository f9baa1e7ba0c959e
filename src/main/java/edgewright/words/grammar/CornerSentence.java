package edgewright.words.grammar;

import edgewright.chart.Stitch;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Finds, anywhere in a sentence, what is worked at a corner: '1 st in the first ch, 2 ch, 1 st in the second ch', '1 st in each of
 * the two chains with 2 ch between'.
 *
 * @param turn its chains are empty where the sentence does not tell them
 * @param chainsBelow how many chains the corner below is said to have
 * @param rest what stands before it and after it
 */
public record CornerSentence(Item.Turn turn, Optional<Lexeme> chainsBelow, List<List<Lexeme>> rest) {
    private static final Set<Concept> BETWEEN_ITEMS =
            EnumSet.of(Concept.COMMA, Concept.AND, Concept.SEMICOLON, Concept.COLON, Concept.WORD);
    private static final Set<Concept> ALL_OF =
            EnumSet.of(Concept.EACH, Concept.OF, Concept.CORNER, Concept.NUMBER, Concept.SAME, Concept.WORD);

    /** What is told of a corner; empty if nothing is. */
    public static Optional<CornerSentence> find(List<Lexeme> sentence, Stitch usual) {
        for (int from = 0; from < sentence.size(); from++) {
            Cursor cursor = new Cursor(sentence);
            cursor.reset(from);
            try {
                Optional<CornerSentence> found = at(cursor, sentence, from, usual);
                if (found.isPresent()) {
                    return found;
                }
            } catch (Stopped stopped) {
                // Something else begins here.
                continue;
            }
        }
        return Optional.empty();
    }

    private static Optional<CornerSentence> at(Cursor cursor, List<Lexeme> sentence, int from, Stitch usual) {
        Lexeme at = cursor.peek();
        Optional<CornerSentence> each = inEach(cursor, sentence, from, usual);
        if (each.isPresent()) {
            return each;
        }
        cursor.reset(from);
        boolean plain = sentence.stream().anyMatch(word -> word.is(Concept.CORNER));
        Optional<Stitch> first = arm(cursor, usual, plain);
        cursor.skip(BETWEEN_ITEMS);
        Optional<Integer> chains = first.flatMap(arm -> chains(cursor, usual));
        cursor.skip(BETWEEN_ITEMS);
        Optional<Stitch> second = chains.flatMap(many -> arm(cursor, usual, plain));
        if (second.isEmpty()) {
            return Optional.empty();
        }
        Item.Turn turn = new Item.Turn(at, first, chains, second, false);
        return Optional.of(new CornerSentence(turn, Optional.empty(), rest(sentence, from, cursor.mark())));
    }

    /** @param plain whether it need not be said that it goes into the corner */
    private static Optional<Stitch> arm(Cursor cursor, Stitch usual, boolean plain) {
        return StepReader.read(cursor, Optional.of(usual))
                .filter(Item.Work.class::isInstance)
                .map(Item.Work.class::cast)
                .filter(work -> (plain || work.inCorner())
                        && work.count() == 1
                        && work.stitch().standsInStitchBelow())
                .map(Item.Work::stitch);
    }

    private static Optional<Integer> chains(Cursor cursor, Stitch usual) {
        return StepReader.read(cursor, Optional.of(usual))
                .filter(Item.Chains.class::isInstance)
                .map(chains -> CornerGroup.chains((Item.Chains) chains));
    }

    /** One stitch in each chain of the corner below, with chains between them or told elsewhere. */
    private static Optional<CornerSentence> inEach(Cursor cursor, List<Lexeme> sentence, int from, Stitch usual) {
        Lexeme at = cursor.peek();
        if (cursor.is(Concept.NUMBER) && cursor.number() != 1) {
            return Optional.empty();
        }
        StitchWords words = new StitchWords();
        if (!words.takeName(cursor)) {
            return Optional.empty();
        }
        words.takeMore(cursor);
        boolean in = cursor.take(Concept.IN);
        Optional<Lexeme> below = Optional.empty();
        boolean each = false;
        while (cursor.isOne(ALL_OF)) {
            each |= cursor.is(Concept.EACH);
            below = cursor.is(Concept.NUMBER) ? Optional.of(cursor.peek()) : below;
            cursor.next();
        }
        boolean chain = cursor.take(Concept.CHAIN);
        Stitch stitch = words.stitch(Optional.of(usual));
        if (!in || !each || !chain || !stitch.standsInStitchBelow()) {
            return Optional.empty();
        }
        int end = cursor.mark();
        Optional<Integer> chains = between(cursor, usual);
        if (chains.isEmpty()) {
            cursor.reset(end);
        }
        Item.Turn turn = new Item.Turn(at, Optional.of(stitch), chains, Optional.of(stitch), false);
        return Optional.of(new CornerSentence(turn, below, rest(sentence, from, cursor.mark())));
    }

    /** 'Of the corner, with 2 ch between them.' */
    private static Optional<Integer> between(Cursor cursor, Stitch usual) {
        cursor.skip(EnumSet.of(
                Concept.COMMA, Concept.AND, Concept.WITH, Concept.OF, Concept.CORNER, Concept.ROUND, Concept.BELOW));
        Optional<Integer> chains = chains(cursor, usual);
        boolean told = chains.isPresent() && cursor.take(Concept.BETWEEN);
        if (told) {
            cursor.take(Concept.WORD);
        }
        return told ? chains : Optional.empty();
    }

    private static List<List<Lexeme>> rest(List<Lexeme> sentence, int from, int to) {
        List<List<Lexeme>> rest = new ArrayList<>();
        rest.add(List.copyOf(sentence.subList(0, from)));
        rest.add(List.copyOf(sentence.subList(to, sentence.size())));
        rest.removeIf(List::isEmpty);
        return rest;
    }
}
