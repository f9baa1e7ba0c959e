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
            Optional<CornerSentence> found = at(cursor, sentence, from, usual);
            if (found.isPresent()) {
                return found;
            }
        }
        return Optional.empty();
    }

    private static Optional<CornerSentence> at(Cursor cursor, List<Lexeme> sentence, int from, Stitch usual) {
        if (from > 0 && sentence.get(from - 1).is(Concept.NUMBER)) {
            return Optional.empty();
        }
        Lexeme at = cursor.peek();
        Optional<CornerSentence> each = inEach(cursor, sentence, from, usual);
        if (each.isPresent()) {
            return each;
        }
        cursor.reset(from);
        boolean plain = sentence.stream().anyMatch(word -> word.is(Concept.CORNER));
        Optional<Stitch> first = arm(cursor, usual, plain);
        List<Lexeme> firstWords = sentence.subList(from, cursor.mark());
        cursor.skip(BETWEEN_ITEMS);
        Optional<Integer> chains = first.flatMap(arm -> chains(cursor, usual));
        cursor.skip(BETWEEN_ITEMS);
        Optional<Stitch> second = chains.flatMap(many -> arm(cursor, usual, plain));
        if (second.isEmpty()) {
            return Optional.empty();
        }
        requireChain(firstWords, 1);
        requireChain(sentence.subList(from + firstWords.size(), cursor.mark()), chains.orElseThrow());
        Item.Turn turn = new Item.Turn(at, first, chains, second, false);
        return Optional.of(new CornerSentence(turn, Optional.empty(), rest(sentence, from, cursor.mark())));
    }

    /** @param plain whether it need not be said that it goes into the corner */
    private static Optional<Stitch> arm(Cursor cursor, Stitch usual, boolean plain) {
        return step(cursor, usual)
                .filter(Item.Work.class::isInstance)
                .map(Item.Work.class::cast)
                .filter(work -> (plain || work.inCorner())
                        && work.count() == 1
                        && work.stitch().standsInStitchBelow())
                .map(Item.Work::stitch);
    }

    /** '1st ch' for the stitch before the new chains, the last for that after them. */
    private static void requireChain(List<Lexeme> words, int chain) {
        words.stream()
                .filter(word -> word.is(Concept.FIRST) && word.number() > 0 && word.number() != chain)
                .findFirst()
                .ifPresent(word -> {
                    throw Cursor.stop(word, "chainOfArm", chain);
                });
    }

    /** Stops at more than one stitch that is worked into one chain of a corner: sides would not grow by 2. */
    public static void requireArms(List<Lexeme> sentence) {
        for (int from = 0; from < sentence.size(); from++) {
            Cursor cursor = new Cursor(sentence);
            cursor.reset(from);
            Lexeme many = cursor.peek();
            boolean several = cursor.take(Concept.NUMBER) && many.number() > 1;
            if (!several || !new StitchWords().takeName(cursor)) {
                continue;
            }
            boolean stitch = !cursor.peek(-1).is(Concept.CHAIN);
            new StitchWords().takeMore(cursor);
            boolean in = cursor.is(Concept.IN);
            boolean one = CornerPlace.take(cursor).isPresent();
            boolean each = false;
            while (!one && in && (cursor.is(Concept.IN) || cursor.isOne(ALL_OF))) {
                each |= cursor.next().is(Concept.EACH);
            }
            if (stitch && in && (one || (each && cursor.is(Concept.CHAIN)))) {
                throw Cursor.stop(many, "cornerArm", "");
            }
        }
    }

    /** A step; empty if something else begins here. */
    private static Optional<Item> step(Cursor cursor, Stitch usual) {
        try {
            return StepReader.read(cursor, Optional.of(usual));
        } catch (Stopped stopped) {
            return Optional.empty();
        }
    }

    private static Optional<Integer> chains(Cursor cursor, Stitch usual) {
        return step(cursor, usual)
                .filter(Item.Chains.class::isInstance)
                .map(chains -> CornerGroup.chains((Item.Chains) chains));
    }

    /** One stitch in each chain of the corner below, with chains between them or told elsewhere. */
    private static Optional<CornerSentence> inEach(Cursor cursor, List<Lexeme> sentence, int from, Stitch usual) {
        Lexeme at = cursor.peek();
        if (cursor.is(Concept.NUMBER) && cursor.next().number() != 1) {
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
        boolean shortOne = words.name()
                .filter(name -> name.is(Concept.SHORT)
                        || name.stitch().filter(Stitch::standsInStitchBelow).isPresent())
                .isPresent();
        if (!in || !each || !chain || !shortOne) {
            return Optional.empty();
        }
        Stitch stitch = words.stitch(Optional.of(usual));
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
