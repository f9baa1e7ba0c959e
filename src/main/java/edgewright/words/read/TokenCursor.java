package edgewright.words.read;

import edgewright.chart.Counting;
import edgewright.chart.Stitch;
import java.util.List;
import java.util.Optional;

/**
 * A place in the tokens of one round, and what can be asked of it there.
 *
 * <p>What is looked for and is not there is noted as missed. Where nothing that was looked for goes on further than some place,
 * reading stops there ({@link #stopped}).
 */
final class TokenCursor {
    private final List<Token> tokens;
    private final Grammar grammar;
    private final Vocabulary words;
    private final Token end;
    private final Counted counted;
    private int at;
    private int number;
    private int furthest = -1;
    private Expectation missed = Expectation.of("item");

    /** @param end a token with no text where the tokens end, for messages */
    TokenCursor(List<Token> tokens, Token end, Vocabulary words) {
        this(tokens, end, words, Counted.UNSAID);
    }

    /** @param counted what was said before of all counts */
    TokenCursor(List<Token> tokens, Token end, Vocabulary words, Counted counted) {
        this.counted = counted;
        this.tokens = tokens;
        this.end = end;
        this.words = words;
        this.grammar = words.grammar();
    }

    /**
     * What a pattern has said of all its counts.
     *
     * @param counting how a side is counted, until something else is said
     * @param sizes how many numbers each count has; 0 if nobody knows yet
     */
    record Counted(Counting counting, int sizes) {
        /** Nothing was said: corner chains are not counted. */
        static final Counted UNSAID = new Counted(Counting.STITCHES, 0);
    }

    /** What was said before of all counts. */
    Counted counted() {
        return counted;
    }

    Vocabulary words() {
        return words;
    }

    Grammar grammar() {
        return grammar;
    }

    boolean atEnd() {
        return at == tokens.size();
    }

    /** The next token; one with no text at the end. */
    Token peek() {
        return atEnd() ? end : tokens.get(at);
    }

    Token next() {
        Token token = peek();
        at = Math.min(at + 1, tokens.size());
        return token;
    }

    /** Whether the next token stands on a line of its own, after the line of the one before it. */
    boolean atLineStart() {
        return at == 0 || peek().line() > tokens.get(at - 1).line();
    }

    int mark() {
        return at;
    }

    void reset(int mark) {
        at = mark;
    }

    /** Whether the next token is one of these signs. */
    boolean isSign(List<String> signs) {
        return !atEnd() && peek().kind() == Token.Kind.SIGN && signs.contains(peek().text());
    }

    /** Whether one of these signs is the last that was taken. */
    boolean isAfter(List<String> signs) {
        return at > 0 && signs.contains(tokens.get(at - 1).text());
    }

    /** Whether a word that is no number was taken since this mark. */
    boolean hasTakenWord(int mark) {
        return tokens.subList(mark, at).stream()
                .anyMatch(token -> token.kind() == Token.Kind.WORD && grammar.number(token) < 0);
    }

    /** Passes over any of these signs. */
    void skip(List<String> signs) {
        while (isSign(signs)) {
            at++;
        }
    }

    /** Passes over signs that only part. */
    void skipPartings() {
        while (!atEnd() && grammar.isSoft(tokens.get(at))) {
            at++;
        }
    }

    /** Passes over what parts two members of a list; whether it was there. */
    boolean between(String list) {
        int mark = at;
        skipPartings();
        for (String word : grammar.separator(list)) {
            if (atEnd() || !peek().is(word)) {
                at = mark;
                return false;
            }
            at++;
        }
        skipPartings();
        return true;
    }

    /** Takes a phrase without gaps if it stands here. */
    boolean take(String key) {
        return take(key, Phrase.NONE);
    }

    /** Takes a phrase if it stands here, its gaps one after the other. */
    boolean take(String key, Phrase.Gaps gaps) {
        int start = at;
        for (Phrase.Form form : grammar.phrase(key).forms()) {
            if (takes(form, gaps)) {
                return true;
            }
            at = start;
        }
        return false;
    }

    /** Likewise where it is no matter if something is missing: what stands there may go on otherwise. */
    boolean takeOptional(String key, Phrase.Gaps gaps) {
        int before = furthest;
        Expectation missedBefore = missed;
        boolean taken = take(key, gaps);
        if (!taken) {
            furthest = before;
            missed = missedBefore;
        }
        return taken;
    }

    private boolean takes(Phrase.Form form, Phrase.Gaps gaps) {
        for (Phrase.Step step : form.steps()) {
            if (step instanceof Phrase.Gap gap) {
                if (!gaps.take(gap.name())) {
                    return false;
                }
            } else if (step instanceof Phrase.Spelled spelled) {
                if (!takes(spelled)) {
                    return false;
                }
            } else if (step instanceof Phrase.Literal literal) {
                if (atEnd() || !peek().is(literal.text())) {
                    return miss(literal.expected());
                }
                at++;
            } else {
                skipPartings();
            }
        }
        return true;
    }

    private boolean takes(Phrase.Spelled spelled) {
        int length = spelled.spellings().matches(tokens, at);
        if (length > 0 || spelled.spellings().optional()) {
            at += length;
            return true;
        }
        at += spelled.spellings().begins(tokens, at);
        return miss(spelled.expected());
    }

    /** Whether the first word of this phrase stands here, so that nothing else can be meant. */
    boolean opens(String key) {
        Phrase.Step first = grammar.phrase(key).forms().get(0).steps().get(0);
        return first instanceof Phrase.Literal literal
                ? !atEnd() && peek().is(literal.text())
                : first instanceof Phrase.Spelled spelled && spelled.spellings().matches(tokens, at) > 0;
    }

    /** Whether this word stands here. */
    boolean is(String word) {
        return grammar.spelled(word).matches(tokens, at) > 0;
    }

    /** Takes this word if it stands here. */
    boolean takeWord(String word) {
        return take(grammar.spelled(word));
    }

    boolean take(Spellings phrases) {
        int length = phrases.matches(tokens, at);
        at += length;
        return length > 0;
    }

    /** Takes these words if they stand here, capital letters and all. */
    boolean takeExactly(String text) {
        List<String> wanted = Token.of(text, 1).stream().map(Token::text).toList();
        int last = Math.min(at + wanted.size(), tokens.size());
        boolean is = tokens.subList(at, last).stream().map(Token::text).toList().equals(wanted);
        at = is ? last : at;
        return is;
    }

    boolean isNumber() {
        return !atEnd() && grammar.number(peek()) >= 0;
    }

    /** Takes a number; one that is less than {@code least} is refused. {@link #number} tells which it was. */
    boolean takeNumber(int least, String expected) {
        if (!isNumber()) {
            return miss(expected);
        }
        if (grammar.number(peek()) < least) {
            throw stop(expected);
        }
        number = grammar.number(next());
        return true;
    }

    /** The number that was taken last. */
    int number() {
        return number;
    }

    /** Takes a stitch in the terms of the pattern if one stands here: the longest name wins. */
    Optional<Stitch> takeStitch() {
        Stitch best = null;
        int longest = 0;
        for (Stitch stitch : Stitch.values()) {
            int length = words.stitch(stitch).matches(tokens, at);
            if (length > longest) {
                longest = length;
                best = stitch;
            }
        }
        at += longest;
        return Optional.ofNullable(best);
    }

    /** Takes two stitches worked together if they stand here; answers with which. */
    Optional<Stitch> takeTogether() {
        for (Stitch stitch : Stitch.inStitchBelow()) {
            if (take(words.together(stitch))) {
                return Optional.of(stitch);
            }
        }
        return Optional.empty();
    }

    /** Notes that a stitch is missing, at the first word that belongs to none. */
    boolean missStitch() {
        int mark = at;
        int begun = 0;
        for (Stitch stitch : Stitch.values()) {
            begun = Math.max(begun, words.stitch(stitch).begins(tokens, at));
        }
        at += begun;
        miss(words.anyStitch());
        at = mark;
        return false;
    }

    boolean miss(String expected) {
        return miss(Expectation.of(expected));
    }

    /** Notes what is missing here. Of several things at one place the last is told. */
    boolean miss(Expectation expected) {
        if (at >= furthest) {
            furthest = at;
            missed = expected;
        }
        return false;
    }

    /** Whether something was begun at this place and did not go on. */
    boolean hasMissedAfter(int mark) {
        return furthest > mark;
    }

    /** The reason to stop: what is missing furthest on. */
    ReadingStopped stopped() {
        at = Math.max(furthest, 0);
        return stopAt(peek(), missed);
    }

    /** The reason to stop here: what stands here cannot be right. */
    ReadingStopped stop(String expected) {
        return stopAt(peek(), Expectation.of(expected));
    }

    ReadingStopped stopAt(Token token, Expectation expected) {
        return new ReadingStopped(
                new ReadingProblem(token.line(), token.column(), token.text(), grammar.text(expected)));
    }
}
