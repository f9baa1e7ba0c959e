package edgewright.words.others;

import edgewright.chart.Terms;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import edgewright.words.grammar.Lexicon;
import edgewright.words.grammar.Token;
import edgewright.words.grammar.WordSet;
import edgewright.words.terms.Bars;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Finds the terms of a text: said in it, or told by a stitch that has that name in one of the two only. */
final class TermsFinder {
    private final Map<Terms, List<List<String>>> names = new EnumMap<>(Terms.class);
    private final List<List<String>> words;
    private final List<List<String>> leads;
    private final List<List<String>> near;
    private final List<List<String>> usOnly;
    private final WordSet not;
    /** The names of terms that are other words in small letters. */
    private final WordSet inCapitals;

    private final List<Integer> saidOn = new ArrayList<>();

    TermsFinder(Language language) {
        Messages lexicon = language.messages(Lexicon.BUNDLE);
        names.put(Terms.UK, phrases(lexicon.text("UK_NAMES")));
        names.put(Terms.US, phrases(lexicon.text("US_NAMES")));
        words = phrases(lexicon.text("TERM_WORDS"));
        near = phrases(lexicon.text("TERM_WORDS_NEAR"));
        leads = phrases(lexicon.text("TERM_LEADS"));
        usOnly = phrases(lexicon.text("US_ONLY"));
        not = WordSet.of(language, "NOT_WORDS");
        inCapitals = WordSet.of(language, "US_IN_CAPITALS");
    }

    private static List<List<String>> phrases(String bars) {
        return Bars.parted(bars).stream()
                .map(phrase -> Token.of(phrase, 1).stream().map(Token::lower).toList())
                .toList();
    }

    /** The numbers of the lines on which the terms are said. */
    List<Integer> saidOn() {
        return saidOn;
    }

    /** The terms; empty if nothing tells, or both are said. */
    Optional<Terms> find(Page page) {
        Optional<Terms> said = Optional.empty();
        boolean both = false;
        boolean sc = false;
        for (Page.Line line : page.lines()) {
            List<Token> tokens = line.tokens();
            for (int i = 0; i < tokens.size(); i++) {
                Optional<Terms> here = saidAt(tokens, i);
                if (here.isPresent()) {
                    saidOn.add(line.number());
                    both |= said.isPresent() && !said.equals(here);
                    said = here;
                }
                sc |= longest(usOnly, tokens, i) > 0;
            }
        }
        if (both) {
            return Optional.empty();
        }
        return said.isPresent() || !sc ? said : Optional.of(Terms.US);
    }

    private Optional<Terms> saidAt(List<Token> tokens, int at) {
        for (Map.Entry<Terms, List<List<String>>> name : names.entrySet()) {
            int length = longest(name.getValue(), tokens, at);
            boolean not = at > 0 && this.not.has(tokens.get(at - 1).lower());
            if (not) {
                continue;
            }
            boolean capital = length > 0
                    && (Character.isUpperCase(tokens.get(at).text().charAt(0))
                            || !inCapitals.has(tokens.get(at).lower()));
            if (capital
                    && (termsWithin(tokens, at + length)
                            || led(tokens, at)
                            || alone(tokens, at, length)
                            || near(tokens, at, length))) {
                return Optional.of(name.getKey());
            }
        }
        return Optional.empty();
    }

    /** A word for terms, at once or behind brackets. */
    private boolean termsWithin(List<Token> tokens, int from) {
        int at = from;
        if (at < tokens.size() && tokens.get(at).text().equals("(")) {
            while (at < tokens.size() && !tokens.get(at).text().equals(")")) {
                at++;
            }
            at++;
        }
        return longest(words, tokens, at) > 0;
    }

    /** 'UK.' as a sentence of its own, or in brackets. */
    private static boolean alone(List<Token> tokens, int at, int length) {
        String before = at == 0 ? "." : tokens.get(at - 1).text();
        String after =
                at + length >= tokens.size() ? "." : tokens.get(at + length).text();
        return (before.equals(".") && after.equals(".")) || (before.equals("(") && after.equals(")"));
    }

    /** A word for terms further off in the same sentence: 'the terms used in this book are those usual in Great Britain'. */
    private boolean near(List<Token> tokens, int at, int length) {
        int from = at;
        while (from > 0 && !tokens.get(from - 1).text().equals(".")) {
            from--;
        }
        for (int i = from; i < tokens.size() && !tokens.get(i).text().equals("."); i++) {
            boolean itself = i >= at && i < at + length;
            if (!itself && longest(near, tokens, i) > 0) {
                return true;
            }
        }
        return false;
    }

    private boolean led(List<Token> tokens, int at) {
        return leads.stream().anyMatch(lead -> at >= lead.size() && stands(lead, tokens, at - lead.size()));
    }

    private static int longest(List<List<String>> phrases, List<Token> tokens, int at) {
        return phrases.stream()
                .filter(phrase -> stands(phrase, tokens, at))
                .mapToInt(List::size)
                .max()
                .orElse(0);
    }

    private static boolean stands(List<String> phrase, List<Token> tokens, int at) {
        if (at < 0 || at + phrase.size() > tokens.size()) {
            return false;
        }
        for (int i = 0; i < phrase.size(); i++) {
            if (!tokens.get(at + i).lower().equals(phrase.get(i))) {
                return false;
            }
        }
        return true;
    }
}
