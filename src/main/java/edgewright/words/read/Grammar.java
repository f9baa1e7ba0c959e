package edgewright.words.read;

import static edgewright.texts.Arg.arg;

import edgewright.chart.Terms;
import edgewright.texts.Language;
import edgewright.texts.MessageForm;
import edgewright.texts.Messages;
import edgewright.words.page.PatternPart;
import edgewright.words.terms.Bars;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;

/**
 * All that can be said in the rounds of a pattern in one language, but for the words of the trade: the phrases that the writer
 * fills in, with the other spellings and forms that the language lists for readers.
 */
final class Grammar {
    /** In a list of spellings: it may be left out. */
    private static final String LEFT_OUT = "∅";

    /** No longer number is read. */
    private static final int MOST_DIGITS = 9;

    /** The titles of rounds, and the gaps of their numbers. */
    private static final List<String> TITLES = List.of("round-title", "rounds-two", "rounds-more");

    private static final Set<Phrase.Gap> NUMBERS =
            Set.of(new Phrase.Gap("round"), new Phrase.Gap("first"), new Phrase.Gap("last"));

    private final Language language;
    private final Messages written;
    private final Messages spellings;
    private final Messages says;
    private final Map<String, Phrase> taken = new ConcurrentHashMap<>();
    private final Map<String, Spellings> spelled = new ConcurrentHashMap<>();
    private final Map<String, List<String>> separators = new ConcurrentHashMap<>();
    private final Map<String, List<String>> lists = new ConcurrentHashMap<>();
    private final Map<Terms, Vocabulary> vocabularies = new ConcurrentHashMap<>();
    private final Map<PatternPart.Kind, List<String>> headings = new EnumMap<>(PatternPart.Kind.class);
    private final Set<String> soft;
    private final List<String> numbers;

    private Grammar(Language language) {
        this.language = language;
        this.written = language.messages("words/phrases");
        this.spellings = language.messages("words/spellings");
        this.says = language.messages("words/read");
        this.soft = new HashSet<>(listed("soft-signs"));
        this.numbers = listed("number-words");
        EnumSet.complementOf(EnumSet.of(PatternPart.Kind.HEADING))
                .forEach(kind -> headings.put(kind, all("heading-" + kind)));
    }

    /** That of a language, taken apart once. */
    static Grammar of(Language language) {
        return language.kept(Grammar.class, Grammar::new);
    }

    /** With the words of the trade in these terms. */
    Vocabulary in(Terms terms) {
        return vocabularies.computeIfAbsent(terms, each -> new Vocabulary(this, language, each));
    }

    /** The phrase of this key. */
    Phrase phrase(String key) {
        Phrase known = taken.get(key);
        if (known == null) {
            known = new Phrase(
                    forms(key).map(form -> new Phrase.Form(steps(key, form))).toList());
            taken.put(key, known);
        }
        return known;
    }

    /** How the parts of a list are parted, by the key of the message that joins them: what must stand there but soft signs. */
    List<String> separator(String key) {
        List<String> known = separators.get(key);
        return known != null ? known : separators.computeIfAbsent(key, this::separatorOf);
    }

    /** All spellings of a word, the writer's own first. */
    Spellings spelled(String key) {
        Spellings known = spelled.get(key);
        return known != null ? known : spelled.computeIfAbsent(key, each -> Spellings.of(all(each).stream()));
    }

    /** The same as they stand in the resources. */
    List<String> all(String key) {
        List<String> all = new ArrayList<>();
        if (written.has(key)) {
            all.add(written.text(key));
        }
        if (spellings.has(key)) {
            all.addAll(listed(key));
        }
        if (all.isEmpty()) {
            throw new IllegalArgumentException("the language " + language + " has no word " + key);
        }
        return all.stream().map(each -> each.replace(Language.NO_BREAK, ' ')).toList();
    }

    /** All that may stand over a part of a pattern. */
    List<String> heading(PatternPart.Kind kind) {
        return headings.get(kind);
    }

    /** The parts of a message that the reader lists. */
    List<String> listed(String key) {
        List<String> known = lists.get(key);
        return known != null ? known : lists.computeIfAbsent(key, each -> Bars.parted(spellings.text(each)));
    }

    /** The forms of a phrase, as they stand in the resources. */
    Stream<MessageForm> forms(String key) {
        List<MessageForm> forms = new ArrayList<>();
        if (written.has(key)) {
            forms.addAll(written.forms(key));
        } else {
            forms.addAll(spellings.forms(key));
        }
        for (int i = 1; spellings.has("also-" + key + "-" + i); i++) {
            forms.addAll(spellings.forms("also-" + key + "-" + i));
        }
        return forms.stream();
    }

    /** Whether this sign only parts, and may be left out. */
    boolean isSoft(Token token) {
        return token.kind() == Token.Kind.SIGN && soft.contains(token.text());
    }

    /**
     * Which round begins with these words: its number, that of the last where there are some, 0 if that is too long, negative if
     * none begins.
     */
    int roundBegun(List<Token> tokens) {
        for (String title : TITLES) {
            for (Phrase.Form form : phrase(title).forms()) {
                int begun = roundBegun(form, tokens);
                if (begun >= 0) {
                    return begun;
                }
            }
        }
        return -1;
    }

    /** Likewise in this form; all that stands before the gap of its yarns must be there. */
    private int roundBegun(Phrase.Form form, List<Token> tokens) {
        int at = 0;
        int number = -1;
        for (Phrase.Step step : form.steps()) {
            if (step instanceof Phrase.Gap gap) {
                boolean isNumber = at < tokens.size()
                        && (tokens.get(at).kind() == Token.Kind.NUMBER || number(tokens.get(at)) > 0);
                if (!NUMBERS.contains(gap)) {
                    return number;
                }
                if (!isNumber) {
                    return -1;
                }
                number = Math.max(0, number(tokens.get(at)));
                at++;
            } else {
                int taken = length(step, tokens, at);
                if (taken < 0) {
                    return -1;
                }
                at += taken;
            }
        }
        return number;
    }

    /** How many tokens this step takes; negative if it does not stand there. */
    private int length(Phrase.Step step, List<Token> tokens, int at) {
        if (step instanceof Phrase.Spelled spelled) {
            int length = spelled.spellings().matches(tokens, at);
            return length > 0 || spelled.spellings().optional() ? length : -1;
        }
        if (step instanceof Phrase.Literal literal) {
            return at < tokens.size() && tokens.get(at).is(literal.text()) ? 1 : -1;
        }
        int soft = 0;
        while (at + soft < tokens.size() && isSoft(tokens.get(at + soft))) {
            soft++;
        }
        return soft;
    }

    /** The number that a token stands for: digits, or one of the first numbers in words. Negative if none, or too long. */
    int number(Token token) {
        if (token.kind() == Token.Kind.NUMBER) {
            String digits = token.text();
            int noughts = 0;
            while (noughts < digits.length() - 1 && digits.charAt(noughts) == '0') {
                noughts++;
            }
            return digits.length() - noughts > MOST_DIGITS
                    ? -1
                    : Integer.parseInt(digits, noughts, digits.length(), 10);
        }
        if (token.kind() == Token.Kind.SIGN) {
            return -1;
        }
        int place = numbers.indexOf(token.lower());
        return place < 0 ? -1 : place + 1;
    }

    /** What stands before the fraction of a number. */
    String decimalSign() {
        return language.decimalSign();
    }

    /** The text of what was expected. */
    String text(Expectation expected) {
        return says.text("expected-" + expected.what(), arg("value", expected.value()), arg("other", expected.other()));
    }

    /** A list of things that could stand at a place. */
    String commas(List<String> parts) {
        return language.commas(parts);
    }

    /** The name of a yarn that has none. */
    String yarnById(String id) {
        return written.text("yarn-id", arg("id", id)).replace(Language.NO_BREAK, ' ');
    }

    /** What an edge is called. */
    String edge(Enum<?> side) {
        return written.text("edge-" + side);
    }

    private List<Phrase.Step> steps(String key, MessageForm form) {
        List<Phrase.Step> steps = new ArrayList<>();
        for (MessageForm.Part part : form.parts()) {
            if (part instanceof MessageForm.Part.Value value) {
                steps.add(new Phrase.Gap(value.name()));
            } else if (part instanceof MessageForm.Part.Other other) {
                Spellings words = spelled(other.key());
                steps.add(new Phrase.Spelled(words, expectation(other.key(), key, words.first())));
            } else if (part instanceof MessageForm.Part.Words words) {
                Token.of(words.text(), 1).forEach(token -> steps.add(step(key, token)));
            }
        }
        return steps;
    }

    private Phrase.Step step(String key, Token token) {
        return isSoft(token)
                ? Phrase.Parting.ANY
                : new Phrase.Literal(token.lower(), expectation(key, key, token.text()));
    }

    /** What is said where a part of a phrase is missing: a text of its own, or of the phrase, or else what is missing. */
    private Expectation expectation(String part, String phrase, String missing) {
        for (String key : List.of(part, phrase)) {
            if (says.has("expected-" + key)) {
                return Expectation.of(key);
            }
        }
        return Expectation.of("sign", missing);
    }

    private List<String> separatorOf(String key) {
        List<MessageForm.Part> parts = written.forms(key).get(0).parts();
        boolean isList = parts.size() == 3
                && parts.get(0).equals(new MessageForm.Part.Value("list"))
                && parts.get(1) instanceof MessageForm.Part.Words
                && parts.get(2).equals(new MessageForm.Part.Value("next"));
        if (!isList) {
            throw new IllegalArgumentException("the language " + language + ": " + key + " does not join a list");
        }
        return Token.of(((MessageForm.Part.Words) parts.get(1)).text(), 1).stream()
                .filter(token -> !isSoft(token))
                .map(Token::lower)
                .toList();
    }

    static boolean mayBeLeftOut(String spelling) {
        return spelling.equals(LEFT_OUT);
    }
}
