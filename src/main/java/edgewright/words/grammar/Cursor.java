package edgewright.words.grammar;

import java.util.List;
import java.util.Optional;
import java.util.Set;

/** A place in a row of lexemes that are being read, and what stands there. */
public final class Cursor {
    private final List<Lexeme> lexemes;
    private final Lexeme end;
    private int at;

    public Cursor(List<Lexeme> lexemes) {
        this.lexemes = lexemes;
        Lexeme last = lexemes.isEmpty() ? null : lexemes.get(lexemes.size() - 1);
        this.end = last == null
                ? new Lexeme(Concept.END, "", 0, Optional.empty(), 1, 1, 1)
                : new Lexeme(Concept.END, "", 0, Optional.empty(), last.line(), last.end(), last.end());
    }

    public Lexeme peek() {
        return peek(0);
    }

    /** What stands so many lexemes further on; before the first and after the last stands the end. */
    public Lexeme peek(int further) {
        int index = at + further;
        return index >= 0 && index < lexemes.size() ? lexemes.get(index) : end;
    }

    public boolean is(Concept concept) {
        return peek().is(concept);
    }

    public boolean isOne(Set<Concept> concepts) {
        return concepts.contains(peek().concept());
    }

    /** Whether these stand here one after the other. */
    public boolean are(Concept... concepts) {
        for (int i = 0; i < concepts.length; i++) {
            if (!peek(i).is(concepts[i])) {
                return false;
            }
        }
        return true;
    }

    public boolean atEnd() {
        return at >= lexemes.size();
    }

    public Lexeme next() {
        Lexeme here = peek();
        at = Math.min(at + 1, lexemes.size());
        return here;
    }

    public boolean take(Concept concept) {
        boolean there = is(concept);
        if (there) {
            next();
        }
        return there;
    }

    public boolean takeOne(Set<Concept> concepts) {
        boolean there = isOne(concepts);
        if (there) {
            next();
        }
        return there;
    }

    /** Takes these if all of them stand here one after the other; else nothing. */
    public boolean takeAll(Concept... concepts) {
        boolean there = are(concepts);
        at += there ? concepts.length : 0;
        return there;
    }

    public void skip(Set<Concept> concepts) {
        while (!atEnd() && isOne(concepts)) {
            next();
        }
    }

    public int mark() {
        return at;
    }

    public void reset(int mark) {
        at = mark;
    }

    /** The number that stands here; stops if there is none, or one that no border has. */
    public int number() {
        if (!is(Concept.NUMBER) || peek().number() >= Lexeme.TOO_LARGE) {
            throw stop("number");
        }
        return next().number();
    }

    public Stopped stop(String expected) {
        return stop(peek(), expected, "");
    }

    public Stopped stop(String expected, Object value) {
        return stop(peek(), expected, value);
    }

    public static Stopped stop(Lexeme at, String expected, Object value) {
        return new Stopped(Remark.of(Remark.Kind.REFUSED, at, expected, value));
    }
}
