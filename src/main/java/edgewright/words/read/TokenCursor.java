package edgewright.words.read;

import edgewright.chart.Stitch;
import java.util.List;
import java.util.Optional;

/** A place in the tokens of one round, and what can be asked of it there. */
final class TokenCursor {
    private final List<Token> tokens;
    private final Vocabulary words;
    private final Token end;
    private int at;

    /** @param end a token with no text where the tokens end, for messages */
    TokenCursor(List<Token> tokens, Token end, Vocabulary words) {
        this.tokens = tokens;
        this.end = end;
        this.words = words;
    }

    Vocabulary words() {
        return words;
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

    boolean isSign(String sign) {
        return !atEnd() && peek().text().equals(sign);
    }

    /** Takes the sign if it stands here. */
    boolean takeSign(String sign) {
        if (isSign(sign)) {
            at++;
            return true;
        }
        return false;
    }

    /** Passes over any of these signs. */
    void skip(String signs) {
        while (!atEnd() && peek().kind() == Token.Kind.SIGN && signs.contains(peek().text())) {
            at++;
        }
    }

    boolean is(String key) {
        return words.phrases(key).matches(tokens, at) > 0;
    }

    /** Whether this sign stands here, and a phrase of the reader's words after it. */
    boolean isFollowedBy(String sign, String key) {
        return isSign(sign) && words.phrases(key).matches(tokens, at + 1) > 0;
    }

    /** Takes a phrase of the reader's words if it stands here. */
    boolean take(String key) {
        return take(words.phrases(key));
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

    /** Takes the phrase, or stops at the word that does not go with it. */
    void require(String key, String expected, Object... values) {
        if (!take(key)) {
            at += words.phrases(key).begins(tokens, at);
            throw stop(expected, values);
        }
    }

    void requireSign(String sign, String expected) {
        if (!takeSign(sign)) {
            throw stop(expected);
        }
    }

    boolean isNumber() {
        return !atEnd() && words.number(peek()) >= 0;
    }

    /** Takes a number that is not less than {@code least}. */
    int number(int least, String expected) {
        if (atEnd() || words.number(peek()) < least) {
            throw stop(expected);
        }
        return words.number(next());
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
        for (Stitch stitch : Stitch.values()) {
            if (take(words.together(stitch))) {
                return Optional.of(stitch);
            }
        }
        return Optional.empty();
    }

    Stitch requireStitch() {
        return takeStitch().orElseThrow(() -> {
            int begun = 0;
            for (Stitch stitch : Stitch.values()) {
                begun = Math.max(begun, words.stitch(stitch).begins(tokens, at));
            }
            at += begun;
            return stop("stitch", words.terms(), words.allStitches());
        });
    }

    /** The reason to stop here: what stands here, and what was expected. */
    ReadingStopped stop(String expected, Object... values) {
        return stopAt(peek(), expected, values);
    }

    ReadingStopped stopAt(Token token, String expected, Object... values) {
        return new ReadingStopped(
                new ReadingProblem(token.line(), token.column(), token.text(), words.expected(expected, values)));
    }
}
