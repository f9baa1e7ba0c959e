package edgewright.words.grammar;

import edgewright.texts.Language;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Knows sentences to people that use words of the trade and yet ask nothing of hands: what to do after a mistake, questions, a
 * look at the work, and what is said about rounds.
 */
public final class TalkReader {
    private static final Set<Concept> NEVER_IN_LOOK = EnumSet.of(
            Concept.NUMBER,
            Concept.NUMBER_EACH,
            Concept.SHORT,
            Concept.BACK_ONLY,
            Concept.BOTH_LOOPS,
            Concept.REPEAT,
            Concept.MISS,
            Concept.NOT_OURS,
            Concept.CHANGE,
            Concept.ALTERNATE,
            Concept.AS,
            Concept.UNLESS,
            Concept.MULTIPLE,
            Concept.STAR,
            Concept.TWO_STARS);
    private static final Set<Concept> NEVER_OF_ROUNDS =
            Concept.andEdges(Concept.YARN_NAME, Concept.ALIKE, Concept.SAME);
    private static final Set<Concept> NEVER_IN_PASSING =
            EnumSet.of(Concept.AGAIN, Concept.MORE, Concept.CORNER, Concept.EACH_SIDE, Concept.MULTIPLE);
    private static final int FEWEST_PLAIN = 2;
    private static final Set<Concept> PARTS_NUMBERS = EnumSet.of(Concept.COMMA, Concept.AND, Concept.DASH, Concept.TO);

    private final WordSet ifs;
    private final WordSet mistakes;
    private final WordSet looks;
    private final WordSet thats;
    private final WordSet verbs;
    private final WordSet people;
    private final WordSet questions;
    private final WordSet grown;
    private final WordSet since;
    private final Orders orders;

    public TalkReader(Language language) {
        ifs = WordSet.of(language, "IF_WORDS");
        mistakes = WordSet.of(language, "MISTAKE_WORDS");
        looks = WordSet.of(language, "LOOK_WORDS");
        thats = WordSet.of(language, "THAT_WORDS");
        verbs = WordSet.of(language, "ROUND_VERBS");
        people = WordSet.of(language, "PEOPLE_WORDS");
        questions = WordSet.of(language, "QUESTION_SIGN");
        grown = WordSet.of(language, "GROWN_WORDS");
        since = WordSet.of(language, "SINCE_WORDS");
        orders = new Orders(language);
    }

    /**
     * A sentence to people.
     *
     * @param rounds the numbers of the rounds that it is about; each must have its words elsewhere
     * @param growth what it says of how much a side has grown
     */
    public record Talk(List<Lexeme> rounds, Optional<BodyNotes.Growth> growth) {
        public Talk {
            rounds = List.copyOf(rounds);
        }
    }

    /** The word by which a sentence without a count or a round of its own changes the work; empty if it does not. */
    public Optional<Lexeme> order(List<Lexeme> sentence) {
        return orders.in(sentence);
    }

    /** Whether a sentence leaves what it tells to whoever works. */
    public boolean isWish(List<Lexeme> sentence) {
        return orders.isWish(sentence);
    }

    /** Whether a sentence tells to put something into a stitch or a corner. */
    public boolean isPut(List<Lexeme> sentence) {
        return orders.put(sentence).isPresent();
    }

    /** What this sentence is if it is one to people; empty if hands may have to follow it. */
    public Optional<Talk> of(List<Lexeme> sentence) {
        if (order(sentence).isPresent()) {
            return Optional.empty();
        }
        boolean mistake = ifs.has(sentence.get(0)) && mistakes.anyIn(sentence);
        if (mistake || isQuestion(sentence) || isLook(sentence)) {
            return Optional.of(new Talk(List.of(), Optional.empty()));
        }
        return growth(sentence).or(() -> aboutRounds(sentence)).or(() -> inPassing(sentence));
    }

    /** Whether somebody is spoken to, or speaks of themselves. */
    boolean isToPeople(List<Lexeme> words) {
        return people.anyIn(words);
    }

    private boolean isQuestion(List<Lexeme> sentence) {
        return questions.has(sentence.get(sentence.size() - 1))
                && sentence.stream().noneMatch(word -> word.is(Concept.NUMBER));
    }

    /** 'Look at your work', 'that is where the long stitches will go'. */
    private boolean isLook(List<Lexeme> sentence) {
        boolean that = sentence.size() > 2
                && thats.has(sentence.get(0))
                && verbs.has(sentence.get(1))
                && sentence.stream().noneMatch(word -> NEVER_OF_ROUNDS.contains(word.concept()));
        return (that || looks.has(sentence.get(0)))
                && sentence.stream().noneMatch(word -> NEVER_IN_LOOK.contains(word.concept()));
    }

    /** 'Each side has grown by 8 stitches since Round 2, so there is room for one more wave.' */
    private Optional<Talk> growth(List<Lexeme> sentence) {
        int at = 0;
        while (at < sentence.size() && !since.has(sentence.get(at))) {
            at++;
        }
        Cursor cursor = new Cursor(sentence);
        cursor.reset(Math.min(at + 1, sentence.size()));
        List<Lexeme> before = sentence.subList(0, Math.min(at, sentence.size()));
        List<Lexeme> by =
                before.stream().filter(word -> word.is(Concept.NUMBER)).toList();
        boolean told = grown.anyIn(before)
                && by.size() == 1
                && before.stream().anyMatch(word -> word.is(Concept.STITCH))
                && before.stream().anyMatch(word -> word.is(Concept.EACH_SIDE))
                && cursor.are(Concept.ROUND, Concept.NUMBER);
        if (!told) {
            return Optional.empty();
        }
        Lexeme round = cursor.peek(1);
        List<Lexeme> after = sentence.subList(at + 3, sentence.size());
        boolean rest = after.stream()
                .allMatch(word -> !Concept.FOR_HANDS.contains(word.concept())
                        || (word.is(Concept.NUMBER)
                                && !Character.isDigit(word.text().charAt(0))));
        return rest
                ? Optional.of(new Talk(List.of(round), Optional.of(new BodyNotes.Growth(by.get(0), round))))
                : Optional.empty();
    }

    /** 'Round 5 looks odd until round 6 is done': all its numbers are those of rounds. */
    private Optional<Talk> aboutRounds(List<Lexeme> sentence) {
        Cursor cursor = new Cursor(sentence);
        if (!cursor.are(Concept.ROUND, Concept.NUMBER)) {
            return Optional.empty();
        }
        List<Lexeme> rounds = new ArrayList<>();
        takeRounds(cursor, rounds);
        if (!verbs.has(cursor.peek())) {
            return Optional.empty();
        }
        while (!cursor.atEnd()) {
            if (cursor.are(Concept.ROUND, Concept.NUMBER)) {
                takeRounds(cursor, rounds);
            } else if (cursor.isOne(Concept.FOR_HANDS) || cursor.isOne(NEVER_OF_ROUNDS)) {
                return Optional.empty();
            } else {
                cursor.next();
            }
        }
        return Optional.of(new Talk(rounds, Optional.empty()));
    }

    /** 'In round 5 the long stitches appear', 'take care with the next round': rounds are named, and nothing is to be worked. */
    private Optional<Talk> inPassing(List<Lexeme> sentence) {
        Cursor cursor = new Cursor(sentence);
        if (cursor.are(Concept.ROUND, Concept.NUMBER) || orders.commands(sentence)) {
            return Optional.empty();
        }
        boolean title = cursor.is(Concept.NEXT_ROUND) && !verbs.has(cursor.peek(1));
        List<Lexeme> rounds = new ArrayList<>();
        boolean named = false;
        int plain = 0;
        while (!cursor.atEnd()) {
            if (cursor.are(Concept.ROUND, Concept.NUMBER)) {
                takeRounds(cursor, rounds);
                named = true;
            } else if (cursor.is(Concept.NEXT_ROUND)) {
                cursor.next();
                named = true;
            } else if (cursor.isOne(Concept.FOR_HANDS)
                    || cursor.isOne(NEVER_OF_ROUNDS)
                    || cursor.isOne(NEVER_IN_PASSING)) {
                return Optional.empty();
            } else {
                plain += cursor.next().is(Concept.WORD) ? 1 : 0;
            }
        }
        return named && !title && plain >= FEWEST_PLAIN
                ? Optional.of(new Talk(rounds, Optional.empty()))
                : Optional.empty();
    }

    private static void takeRounds(Cursor cursor, List<Lexeme> rounds) {
        cursor.next();
        rounds.add(cursor.next());
        while (true) {
            int mark = cursor.mark();
            cursor.skip(PARTS_NUMBERS);
            if (cursor.mark() == mark || !cursor.is(Concept.NUMBER)) {
                cursor.reset(mark);
                return;
            }
            rounds.add(cursor.next());
        }
    }
}
