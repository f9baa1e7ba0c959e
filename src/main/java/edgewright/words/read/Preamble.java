package edgewright.words.read;

import edgewright.chart.Terms;
import edgewright.texts.Language;
import edgewright.texts.MessageForm;
import edgewright.words.tree.PatternYarn;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** The lines before the rounds that say something a tree holds. All others there are for people. */
final class Preamble {
    private static final String ID = "(?<id>[\\p{L}\\p{Nd}]+)";

    private final Grammar grammar;
    private final Pattern yarn;
    private final Pattern designer;
    private final Pattern designerShort;
    private final Pattern leftHand;
    private final Pattern piece;
    private final Pattern draft;
    private final Pattern terms;

    private Preamble(Language language) {
        grammar = Grammar.of(language);
        String yarnWord = phrase("yarn-entry", gap -> ID);
        yarn = regex(phrase("entry", gap -> gap.equals("word") ? yarnWord : "(?<name>.*)"));
        designer = regex(phrase("designer", gap -> "(?<designer>.+)"));
        designerShort = regex("(?:" + any(grammar.listed("designer-short")) + ") (?<designer>.+)");
        leftHand = regex("(?:" + any(grammar.all("left-word")) + ")\\b.*");
        piece = regex("(?:" + any(grammar.all("piece-word")) + ")\\b.*");
        draft = regex("(?:" + any(grammar.all("draft-word")) + ")\\b.*");
        String uk = "(" + any(grammar.listed("terms-UK")) + ")";
        String us = "(" + any(grammar.listed("terms-US")) + ")";
        String word = "(?:" + any(grammar.listed("terms-word")) + ")";
        String either = "(?:" + uk + "|" + us + ")";
        terms = regex("(?<![\\p{L}\\p{N}])(?:" + either + "(?: (?:" + any(grammar.listed("terms-between")) + "))? "
                + word + "|" + word + " ?[:=-] ?" + either + ")(?![\\p{L}\\p{N}])");
    }

    /** That of a language, made once. */
    static Preamble of(Language language) {
        return language.kept(Preamble.class, Preamble::new);
    }

    private static Pattern regex(String text) {
        return Pattern.compile(text, Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
    }

    private static String any(List<String> words) {
        return words.stream().map(Pattern::quote).collect(Collectors.joining("|"));
    }

    /** A phrase of one line as an expression, with another for each of its gaps. */
    private String phrase(String key, UnaryOperator<String> gaps) {
        StringBuilder regex = new StringBuilder();
        for (MessageForm.Part part :
                grammar.forms(key).findFirst().orElseThrow().parts()) {
            if (part instanceof MessageForm.Part.Value value) {
                regex.append(gaps.apply(value.name()));
            } else if (part instanceof MessageForm.Part.Other other) {
                regex.append("(?:").append(any(grammar.all(other.key()))).append(')');
            } else if (part instanceof MessageForm.Part.Words words) {
                regex.append(between(Token.of(words.text(), 1)));
            }
        }
        return regex.toString();
    }

    /** What stands between words and gaps: a blank, with a sign that parts or without, or the signs that must stand there. */
    private String between(List<Token> tokens) {
        if (tokens.isEmpty()) {
            return "(?:" + any(grammar.listed("soft-signs")) + ")? ";
        }
        return tokens.stream()
                .map(token -> grammar.listed("entry-signs").contains(token.text())
                        ? " ?(?:" + any(grammar.listed("entry-signs")) + ")"
                        : " ?" + Pattern.quote(token.text()))
                .collect(Collectors.joining("", "", " ?"));
    }

    /** Whether a line says something else than a title does. */
    boolean says(String words) {
        return yarn(words).isPresent()
                || designer.matcher(words).matches()
                || draft.matcher(words).matches()
                || piece.matcher(words).matches()
                || leftHand.matcher(words).matches()
                || terms.matcher(words).find();
    }

    Optional<PatternYarn> yarn(String words) {
        Matcher found = yarn.matcher(words);
        return found.matches()
                ? Optional.of(
                        new PatternYarn(found.group("id"), found.group("name").strip()))
                : Optional.empty();
    }

    /** @param second whether this is the line after the title, where the word 'by' will do */
    Optional<String> designer(String words, boolean second) {
        Matcher whole = designer.matcher(words);
        if (whole.matches()) {
            return Optional.of(whole.group("designer"));
        }
        Matcher shorter = designerShort.matcher(words);
        return second && shorter.matches() ? Optional.of(shorter.group("designer")) : Optional.empty();
    }

    boolean draft(String words) {
        return draft.matcher(words).matches();
    }

    boolean leftHand(String words) {
        return leftHand.matcher(words).matches();
    }

    /** Terms that a line names, and where. */
    record Named(Terms terms, int column) {}

    /** All terms that these words name, from left to right; columns count from 1. */
    List<Named> terms(String words) {
        List<Named> named = new ArrayList<>();
        for (MatchResult found : terms.matcher(words).results().toList()) {
            boolean uk = found.group(1) != null || found.group(3) != null;
            named.add(new Named(uk ? Terms.UK : Terms.US, found.start() + 1));
        }
        return named;
    }
}
