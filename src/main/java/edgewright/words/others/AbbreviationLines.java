package edgewright.words.others;

import edgewright.words.grammar.Cursor;
import edgewright.words.grammar.Lexicon;
import edgewright.words.grammar.RoundTitle;
import edgewright.words.grammar.Token;
import edgewright.words.setup.Abbreviations;
import edgewright.words.setup.Part;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Finds the lines on which a text can explain its words: those of its list, each with the lines that go on with it, and others. */
final class AbbreviationLines {
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

    /** Hands over each such line, joined with those that go on with it. */
    void each(Abbreviations taker) {
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
                if (begins(line)) {
                    List<Token> paragraph = new ArrayList<>(tokens);
                    paragraph.addAll(after(line));
                    taker.takeSentences(paragraph);
                }
                line.quoted().forEach(word -> taker.takeQuoted(word, following(line, word)));
            }
        }
        if (!entry.isEmpty()) {
            taker.take(entry, true);
        }
    }

    private List<Token> following(Page.Line line, List<Token> word) {
        int end = word.get(word.size() - 1).end();
        List<Token> following = new ArrayList<>(
                line.tokens().stream().filter(token -> token.column() >= end).toList());
        following.addAll(after(line));
        return following;
    }

    /** The words on the lines after this one, as far as its paragraph goes. */
    private List<Token> after(Page.Line line) {
        List<Token> after = new ArrayList<>();
        for (Page.Line next : page.lines().subList(line.number(), page.lines().size())) {
            if (next.isBlank() || next.listed() || beginsRound(next)) {
                break;
            }
            after.addAll(next.tokens());
        }
        return after;
    }

    /** Whether a paragraph begins with this line. */
    private boolean begins(Page.Line line) {
        return line.number() == 1
                || line.listed()
                || line.number() - 1 == titleLine
                || page.lines().get(line.number() - 2).isBlank();
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
