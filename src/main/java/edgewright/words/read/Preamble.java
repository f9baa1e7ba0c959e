package edgewright.words.read;

import edgewright.chart.Terms;
import edgewright.words.terms.Phrasebook;
import edgewright.words.tree.PatternYarn;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.stream.Collectors;

/** The lines before the rounds that say something a tree holds. All others there are for people. */
final class Preamble {
    static final Preamble INSTANCE = new Preamble();

    /** Named apart, because a pattern here is one of crochet. */
    private static java.util.regex.Pattern regex(String text) {
        int flags = java.util.regex.Pattern.CASE_INSENSITIVE | java.util.regex.Pattern.UNICODE_CASE;
        return java.util.regex.Pattern.compile(text, flags);
    }

    private final Phrasebook texts = Phrasebook.ofReader();
    private final java.util.regex.Pattern yarn = regex("(?:" + any("yarn") + ") ([\\p{L}\\p{Nd}]+) ?[:=](.*)");
    private final java.util.regex.Pattern designer = regex("(?:" + any("designer") + "),? (.+)");
    private final java.util.regex.Pattern designerShort = regex("(?:" + any("designer.short") + ") (.+)");
    private final java.util.regex.Pattern leftHand = regex("(?:" + any("leftHand") + ")\\b.*");
    private final java.util.regex.Pattern piece = regex("(?:" + any("piece") + ")\\b.*");
    private final java.util.regex.Pattern draft = regex("(?:" + any("draft") + ")\\b.*");
    private final java.util.regex.Pattern terms;

    private Preamble() {
        String uk = "(" + any("terms.UK") + ")";
        String us = "(" + any("terms.US") + ")";
        String word = "(?:" + any("terms.word") + ")";
        String either = "(?:" + uk + "|" + us + ")";
        terms = regex("(?<![\\p{L}\\p{N}])(?:" + either + "(?: (?:" + any("terms.between") + "))? " + word + "|" + word
                + " ?[:=-] ?" + either + ")(?![\\p{L}\\p{N}])");
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
        return yarn.matcher(words)
                .results()
                .filter(found -> found.start() == 0 && found.end() == words.length())
                .findFirst()
                .map(found -> new PatternYarn(found.group(1), found.group(2).strip()));
    }

    /** @param second whether this is the line after the title, where the word 'by' will do */
    Optional<String> designer(String words, boolean second) {
        var matcher = designer.matcher(words);
        if (matcher.matches()) {
            return Optional.of(matcher.group(1));
        }
        var shorter = designerShort.matcher(words);
        return second && shorter.matches() ? Optional.of(shorter.group(1)) : Optional.empty();
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

    private String any(String key) {
        return texts.words(key).stream().map(java.util.regex.Pattern::quote).collect(Collectors.joining("|"));
    }
}
