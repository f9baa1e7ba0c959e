package edgewright.words.others;

import edgewright.words.grammar.Cursor;
import edgewright.words.grammar.Lexicon;
import edgewright.words.grammar.RoundTitle;
import edgewright.words.grammar.Token;
import edgewright.words.setup.Part;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Finds the lines on which a text can explain its words: those of its list, each with the lines that go on with it, and others. */
final class AbbreviationLines {
    /** Takes a line, joined with those that go on with it. */
    interface Taker {
        boolean take(List<Token> line, boolean listed);
    }

    private final Page page;
    private final Parts parts;
    private final Lexicon lexicon;
    private final int titleLine;

    AbbreviationLines(Page page, Parts parts, Lexicon lexicon, int titleLine) {
        this.page = page;
        this.parts = parts;
        this.lexicon = lexicon;
        this.titleLine = titleLine;
    }

    /** Hands over each such line. */
    void each(Taker taker) {
        boolean listed = false;
        List<Token> entry = new ArrayList<>();
        for (Page.Line line : page.lines()) {
            Optional<Part> heading = parts.headed(line.text());
            Optional<Part> label = parts.labelled(line.text());
            boolean round = beginsRound(line);
            boolean sameList = listed && heading.isEmpty() && label.isEmpty() && !round && !line.hashes();
            boolean goesOn = !entry.isEmpty() && !line.isBlank() && sameList && !hasSign(line);
            if (!goesOn && !entry.isEmpty()) {
                taker.take(entry, true);
                entry = new ArrayList<>();
            }
            if (heading.isPresent() || round || line.hashes() || label.isPresent()) {
                listed = heading.or(() -> label).equals(Optional.of(Part.ABBREVIATIONS));
            }
            if (line.isBlank() || line.number() == titleLine || round || heading.isPresent()) {
                continue;
            }
            List<Token> tokens = label.isPresent() ? afterColon(line.tokens()) : line.tokens();
            if (listed) {
                entry.addAll(tokens);
            } else {
                taker.take(tokens, false);
            }
        }
        if (!entry.isEmpty()) {
            taker.take(entry, true);
        }
    }

    private boolean beginsRound(Page.Line line) {
        return RoundTitle.begins(new Cursor(lexicon.read(line.tokens())));
    }

    private static boolean hasSign(Page.Line line) {
        return line.text().contains("=")
                || line.text().contains(":")
                || line.text().contains(" - ");
    }

    private static List<Token> afterColon(List<Token> tokens) {
        for (int i = 0; i < tokens.size(); i++) {
            if (tokens.get(i).text().equals(":")) {
                return tokens.subList(i + 1, tokens.size());
            }
        }
        return tokens;
    }
}
