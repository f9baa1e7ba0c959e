package edgewright.words.grammar;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Reads what stands between the stitches of a round: yarn taken up or cut, joins, and words to people. */
public final class AsideReader {
    private static final Set<Concept> CLAUSE_ENDS = EnumSet.of(
            Concept.STOP, Concept.SEMICOLON, Concept.COMMA, Concept.OPEN, Concept.CLOSE, Concept.END, Concept.COLON);

    private static final Set<Concept> NEVER_PLAIN =
            EnumSet.of(Concept.CORNER, Concept.STITCH, Concept.YARN_NAME, Concept.EACH_SIDE, Concept.ROUND);
    private static final Set<Concept> BEFORE_YARN = EnumSet.of(Concept.CHANGE, Concept.WITH, Concept.IN, Concept.YARN);

    /** What a number can be of that hands have to follow. */
    private static final Set<Concept> MEASURES = EnumSet.of(
            Concept.STITCH,
            Concept.ROUND,
            Concept.CORNER,
            Concept.SIDE,
            Concept.EACH_SIDE,
            Concept.LAST,
            Concept.NEXT,
            Concept.MORE);

    private static final int LONGEST_LABEL = 4;

    private final Cursor cursor;
    private final BodyNotes notes;
    private final TalkReader talk;

    public AsideReader(Cursor cursor, BodyNotes notes, TalkReader talk) {
        this.cursor = cursor;
        this.notes = notes;
        this.talk = talk;
    }

    /**
     * Takes 'with B', 'join A in any corner', 'change to B'.
     *
     * @param first whether no stitch was told yet
     */
    public boolean takeYarn(boolean first) {
        int mark = cursor.mark();
        boolean begins = cursor.isOne(BEFORE_YARN);
        List<Lexeme> words = new ArrayList<>();
        while (cursor.isOne(BEFORE_YARN) || cursor.is(Concept.TO) || cursor.is(Concept.COLON)) {
            words.add(cursor.next());
        }
        if (!begins || !cursor.is(Concept.YARN_NAME)) {
            cursor.reset(mark);
            return false;
        }
        Lexeme yarn = cursor.next();
        if (first && notes.yarn.isEmpty()) {
            notes.yarn = Optional.of(yarn);
        } else {
            notes.nextYarn = Optional.of(yarn);
        }
        words.add(yarn);
        cursor.take(Concept.YARN);
        int named = words.size();
        takeClause(words);
        if (words.size() > named) {
            notes.aside(LineKind.TECHNIQUE, words);
        }
        takeStartingChain(first);
        return true;
    }

    /** Takes how a round is begun, joined and ended. */
    public boolean takeTechnique() {
        boolean begins = cursor.isOne(EnumSet.of(Concept.BORDER_OVER, Concept.SLIP, Concept.CHANGE));
        if (!begins) {
            return false;
        }
        requireNoOrder();
        boolean over = cursor.is(Concept.BORDER_OVER);
        List<Lexeme> words = new ArrayList<>(List.of(cursor.next()));
        takeClause(words);
        while (over && takePlainClause(words)) {
            over = true;
        }
        notes.aside(LineKind.TECHNIQUE, words);
        takeStartingChain(true);
        return true;
    }

    /** 'And darn in the ends': a clause without a word for hands goes on with what is done when a round is over. */
    private boolean takePlainClause(List<Lexeme> words) {
        int mark = cursor.mark();
        List<Lexeme> clause = new ArrayList<>();
        while (cursor.is(Concept.AND) || cursor.is(Concept.COMMA)) {
            clause.add(cursor.next());
        }
        int signs = clause.size();
        while (!endsClause() && !cursor.isOne(Concept.FOR_HANDS) && !cursor.isOne(NEVER_PLAIN)) {
            clause.add(cursor.next());
        }
        boolean plain = signs > 0 && clause.size() > signs && endsClause();
        if (plain) {
            words.addAll(clause);
        } else {
            cursor.reset(mark);
        }
        return plain;
    }

    /** One chain to begin with, which is no stitch. */
    private void takeStartingChain(boolean first) {
        int mark = cursor.mark();
        cursor.skip(EnumSet.of(Concept.COMMA, Concept.AND, Concept.SEMICOLON));
        boolean one = (cursor.are(Concept.NUMBER, Concept.CHAIN)
                        && cursor.peek().number() == 1)
                || (cursor.are(Concept.CHAIN, Concept.NUMBER) && cursor.peek(1).number() == 1);
        int after = cursor.mark() + 2;
        if (first && one) {
            cursor.next();
            cursor.next();
            if (endsClause()) {
                takeNoStitch();
                return;
            }
        }
        cursor.reset(one ? Math.min(mark, after) : mark);
    }

    /** '(does not count as a st)' after the chain that a round begins with. */
    private void takeNoStitch() {
        int mark = cursor.mark();
        cursor.take(Concept.OPEN);
        if (cursor.take(Concept.WITHOUT_CORNERS)) {
            cursor.skip(EnumSet.of(Concept.AS, Concept.STITCH, Concept.COUNTED));
            cursor.take(Concept.CLOSE);
        } else {
            cursor.reset(mark);
        }
    }

    private boolean endsClause() {
        return cursor.atEnd() || cursor.isOne(CLAUSE_ENDS) || cursor.is(Concept.AND);
    }

    /** Whether a new line begins with a label of its own, such as 'Side:'. */
    private boolean beginsLabel() {
        if (cursor.peek(-1).line() == cursor.peek().line()) {
            return false;
        }
        for (int i = 1; i <= LONGEST_LABEL; i++) {
            if (cursor.peek(i).is(Concept.COLON)) {
                return cursor.peek(i).line() == cursor.peek().line();
            }
        }
        return false;
    }

    /** The rest of a clause in which yarn is handled; numbers stand there only for a corner or the starting chain. */
    private void takeClause(List<Lexeme> words) {
        while (!endsClause() && !beginsLabel()) {
            int mark = cursor.mark();
            Optional<CornerPlace> corner = CornerPlace.take(cursor);
            if (corner.isPresent()) {
                corner.get().chains().ifPresent(notes.chainsBelow::add);
                words.add(corner.get().at());
            } else {
                cursor.reset(mark);
                boolean harmless = !cursor.isOne(Concept.FOR_HANDS)
                        || cursor.isOne(EnumSet.of(
                                Concept.SLIP, Concept.SHORT, Concept.STITCH_NAME, Concept.BACK_ONLY, Concept.CHANGE))
                        || (cursor.is(Concept.CHAIN) && !cursor.peek(1).is(Concept.NUMBER));
                if (!harmless) {
                    throw cursor.stop("endOfJoin");
                }
                words.add(cursor.next());
            }
        }
    }

    /**
     * Takes words to people: a sentence with a word in it that is none of the trade, or at the very beginning a clause.
     * Neither may say anything to hands.
     */
    boolean takeProse(boolean first) {
        Lexeme before = cursor.peek(-1);
        boolean sentence = before.is(Concept.STOP)
                || before.is(Concept.END)
                || before.line() < cursor.peek().line();
        return takeLastWords()
                || (sentence
                        && (takeTalk()
                                || takeProse(EnumSet.of(Concept.STOP, Concept.OPEN, Concept.CLOSE), Concept.CORNER)))
                || (first && cursor.is(Concept.WORD) && takeProse(CLAUSE_ENDS, Concept.END));
    }

    /** 'And you are done, my love': the end of a sentence that is to people alone. */
    private boolean takeLastWords() {
        boolean begins = cursor.peek(-1).is(Concept.AND) || cursor.peek(-1).is(Concept.COMMA);
        List<Lexeme> words = new ArrayList<>();
        while (cursor.peek(words.size()).is(Concept.WORD)
                || (cursor.peek(words.size()).is(Concept.COMMA) && !words.isEmpty())) {
            words.add(cursor.peek(words.size()));
        }
        Concept after = cursor.peek(words.size()).concept();
        boolean ends = after == Concept.STOP || after == Concept.END;
        if (!begins || !ends || !talk.isToPeople(words)) {
            return false;
        }
        words.forEach(word -> cursor.next());
        notes.aside(LineKind.PROSE, words);
        return true;
    }

    /** The words from here to the end of the sentence. */
    private List<Lexeme> sentence() {
        List<Lexeme> sentence = new ArrayList<>();
        while (!cursor.peek(sentence.size()).is(Concept.END)
                && (sentence.isEmpty() || !sentence.get(sentence.size() - 1).is(Concept.STOP))) {
            sentence.add(cursor.peek(sentence.size()));
        }
        return sentence;
    }

    /** What changes the work is no aside. */
    private void requireNoOrder() {
        talk.order(sentence()).ifPresent(order -> {
            throw Cursor.stop(order, "item", "");
        });
    }

    /** Takes a sentence that uses words of the trade and yet is one to people. */
    private boolean takeTalk() {
        List<Lexeme> sentence = sentence();
        Optional<TalkReader.Talk> said = talk.of(sentence);
        if (said.isEmpty()) {
            return false;
        }
        sentence.forEach(word -> cursor.next());
        notes.mentioned.addAll(said.get().rounds());
        said.get().growth().ifPresent(notes.growths::add);
        notes.aside(LineKind.PROSE, sentence);
        return true;
    }

    private boolean takeProse(Set<Concept> ends, Concept never) {
        int mark = cursor.mark();
        List<Lexeme> words = new ArrayList<>();
        while (!cursor.atEnd() && !cursor.isOne(ends)) {
            if ((cursor.isOne(Concept.FOR_HANDS) && !cursor.is(Concept.NUMBER)) || cursor.is(never)) {
                cursor.reset(mark);
                return false;
            }
            words.add(cursor.next());
        }
        boolean numbers = words.stream().anyMatch(word -> word.is(Concept.NUMBER));
        long plain = words.stream().filter(word -> word.is(Concept.WORD)).count();
        boolean counted = words.stream().anyMatch(word -> MEASURES.contains(word.concept()));
        if (numbers && (never != Concept.CORNER || counted || plain < 2)) {
            cursor.reset(mark);
            return false;
        }
        boolean prose = words.stream().anyMatch(word -> word.is(Concept.WORD) || word.is(Concept.OTHER_SIGN));
        if (!prose || (plain < 2 && words.size() < 3)) {
            cursor.reset(mark);
            return false;
        }
        talk.order(words).ifPresent(order -> {
            throw Cursor.stop(order, "item", "");
        });
        notes.aside(LineKind.PROSE, words);
        return true;
    }

    /** Takes brackets that hold nothing for hands. */
    boolean takeProseInBrackets() {
        return takeProseInBrackets(List.of());
    }

    /** The same in a title, where brackets hold yarns as well; those are left to others. */
    boolean takeProseInTitle() {
        return takeProseInBrackets(List.of(Concept.YARN_NAME, Concept.YARN, Concept.IN, Concept.WITH));
    }

    private boolean takeProseInBrackets(List<Concept> others) {
        int mark = cursor.mark();
        boolean named = cursor.peek(-2).is(Concept.YARN_NAME);
        List<Lexeme> words = new ArrayList<>();
        while (!cursor.atEnd() && !cursor.is(Concept.CLOSE)) {
            boolean forHands = cursor.isOne(Concept.FOR_HANDS) || cursor.is(Concept.OPEN) || cursor.is(Concept.CORNER);
            if (forHands || others.contains(cursor.peek().concept())) {
                cursor.reset(mark);
                return false;
            }
            words.add(cursor.next());
        }
        // One capital letter is a yarn, whether it was listed or not, unless it stands behind the name of one.
        if (!named && words.size() == 1 && words.get(0).text().matches("\\p{Lu}")) {
            throw Cursor.stop(words.get(0), "yarnOfRound", "");
        }
        cursor.take(Concept.CLOSE);
        notes.aside(LineKind.PROSE, words);
        return true;
    }
}
