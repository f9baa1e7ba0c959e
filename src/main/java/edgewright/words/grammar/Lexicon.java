package edgewright.words.grammar;

import edgewright.chart.Stitch;
import edgewright.chart.Terms;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import edgewright.words.terms.Bars;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/** The words that are understood, by what they are for: those of the trade, and those that the text itself explains. */
public final class Lexicon {
    /** The bundle with the words that are the same in all terms. */
    private static final Set<Concept> PARTS_ORDINALS = EnumSet.of(Concept.AND, Concept.COMMA, Concept.TO, Concept.DASH);

    public static final String BUNDLE = "words/others-lexicon";

    /** @param tokens in small letters, unless the case matters */
    private record Entry(
            List<String> tokens, boolean caseMatters, Concept concept, int number, Optional<Stitch> stitch) {
        boolean stands(List<Token> all, int at) {
            if (at + tokens.size() > all.size()) {
                return false;
            }
            for (int i = 0; i < tokens.size(); i++) {
                Token token = all.get(at + i);
                String text = caseMatters ? token.text() : token.lower();
                if (!text.equals(tokens.get(i))) {
                    return false;
                }
            }
            return true;
        }
    }

    /** 'rnds.' and the like. */
    private static final int LONGEST_SHORTENED = 4;

    /** By the first token in small letters; the longest first, of two alike the one that was added later. */
    private final Map<String, List<Entry>> entries;

    private final WordSet ordinals;
    private final List<String> ordinalWords;
    private final Pattern shortened;

    private Lexicon(Map<String, List<Entry>> entries, WordSet ordinals, List<String> ordinalWords, Pattern shortened) {
        this.entries = entries;
        this.ordinals = ordinals;
        this.ordinalWords = ordinalWords;
        this.shortened = shortened;
    }

    /** The words that mean the same in all terms, and those of these terms if they are known. */
    public static Lexicon of(Language language, Optional<Terms> terms) {
        Messages words = language.messages(BUNDLE);
        Pattern shortened = Pattern.compile(
                "[^" + words.text("VOWELS") + "]+|" + WordSet.alternatives(language, "SHORTENED_WITH_VOWELS"));
        Lexicon lexicon = new Lexicon(
                new HashMap<>(),
                WordSet.of(language, "ORDINAL_ENDINGS"),
                Bars.parted(words.text("ORDINALS")),
                shortened);
        for (Concept concept : Concept.values()) {
            if (words.has(concept.name())) {
                lexicon.addAll(words, concept.name(), concept, Optional.empty());
            }
        }
        List<String> numbers = Bars.parted(words.text("NUMBERS"));
        for (int i = 0; i < numbers.size(); i++) {
            lexicon.add(numbers.get(i), false, Concept.NUMBER, i + 1, Optional.empty());
        }
        List<String> each = Bars.parted(words.text("NUMBERS_EACH"));
        for (int i = 0; i < each.size(); i++) {
            lexicon.add(each.get(i), false, Concept.NUMBER_EACH, i + 2, Optional.empty());
        }
        lexicon.addTens(Bars.parted(words.text("TENS")), numbers);
        terms.ifPresent(known -> lexicon.addDialect(language, known));
        return lexicon;
    }

    /** 'Forty', 'forty-one', 'forty one'. */
    private void addTens(List<String> tens, List<String> ones) {
        for (int i = 0; i < tens.size(); i++) {
            int number = (i + 2) * 10;
            add(tens.get(i), false, Concept.NUMBER, number, Optional.empty());
            for (int one = 1; one < 10; one++) {
                for (String between : List.of("-", " ")) {
                    add(
                            tens.get(i) + between + ones.get(one - 1),
                            false,
                            Concept.NUMBER,
                            number + one,
                            Optional.empty());
                }
            }
        }
    }

    /** Whether somebody wrote down for this language how others write. */
    static Messages dialect(Language language, Terms terms) {
        return language.messages(terms.name().toLowerCase(Locale.ROOT) + "/others");
    }

    private void addDialect(Language language, Terms terms) {
        Messages words = dialect(language, terms);
        for (Concept concept :
                List.of(Concept.SHORT, Concept.TALL, Concept.CHAIN, Concept.SLIP, Concept.OTHER_STITCH)) {
            addAll(words, concept.name(), concept, Optional.empty());
        }
        addAll(words, "BACK_LOOP_STITCH", Concept.STITCH_NAME, Optional.of(Stitch.BACK_LOOP));
        addAll(words, "LONG_STITCH", Concept.STITCH_NAME, Optional.of(Stitch.LONG));
    }

    private void addAll(Messages words, String key, Concept concept, Optional<Stitch> stitch) {
        Bars.parted(words.text(key).replace(Language.NO_BREAK, ' '))
                .forEach(word -> add(word, false, concept, 0, stitch));
    }

    /** This lexicon with a word of the text's own, which goes before others of the same length. */
    public Lexicon with(String word, Concept concept, Optional<Stitch> stitch) {
        return with(word, false, concept, stitch);
    }

    /** The same with a name of a yarn; one of a single letter or two counts only in capital letters. */
    public Lexicon withYarn(String name) {
        return with(name, name.length() <= 3, Concept.YARN_NAME, Optional.empty());
    }

    private Lexicon with(String word, boolean caseMatters, Concept concept, Optional<Stitch> stitch) {
        Map<String, List<Entry>> copy = new HashMap<>();
        entries.forEach((first, list) -> copy.put(first, new ArrayList<>(list)));
        Lexicon more = new Lexicon(copy, ordinals, ordinalWords, shortened);
        more.add(word, caseMatters, concept, 0, stitch);
        return more;
    }

    private void add(String words, boolean caseMatters, Concept concept, int number, Optional<Stitch> stitch) {
        List<String> tokens = Token.of(words, 1).stream()
                .map(token -> caseMatters ? token.text() : token.lower())
                .toList();
        if (tokens.isEmpty()) {
            return;
        }
        List<Entry> list = entries.computeIfAbsent(tokens.get(0).toLowerCase(Locale.ROOT), first -> new ArrayList<>());
        list.add(0, new Entry(tokens, caseMatters, concept, number, stitch));
        list.sort(
                Comparator.comparingInt((Entry entry) -> entry.tokens().size()).reversed());
    }

    /** The tokens as what they are for; words that say nothing to the hook are left out. */
    public List<Lexeme> read(List<Token> tokens) {
        List<Lexeme> lexemes = new ArrayList<>();
        int i = 0;
        while (i < tokens.size()) {
            int listed = ordinalRounds(tokens, i, lexemes);
            if (listed > 0) {
                i += listed;
                continue;
            }
            if (ordinalRound(tokens, i, lexemes)) {
                i += isOrdinal(tokens, i) ? 3 : 2;
                continue;
            }
            if (isOrdinal(tokens, i)) {
                lexemes.add(place(tokens.get(i)));
                i += 2;
                continue;
            }
            Optional<Entry> entry = longest(tokens, i);
            int length = entry.map(found -> found.tokens().size()).orElse(1);
            Token first = tokens.get(i);
            Token last = tokens.get(i + length - 1);
            Concept concept = entry.map(Entry::concept).orElseGet(() -> concept(first));
            int number = entry.map(Entry::number).orElse(0);
            if (concept != Concept.NOISE && !first.text().equals("'") && !isDotOfAbbreviation(tokens, i)) {
                lexemes.add(new Lexeme(
                        concept,
                        text(tokens.subList(i, i + length)),
                        first.kind() == Token.Kind.NUMBER && length == 1 ? value(first.text()) : number,
                        entry.flatMap(Entry::stitch),
                        first.line(),
                        first.column(),
                        last.line() == first.line() ? last.end() : first.end()));
            }
            i += length;
        }
        return lexemes;
    }

    /** '1st', '2nd': one place. */
    private static Lexeme place(Token ordinal) {
        return new Lexeme(
                Concept.FIRST,
                ordinal.text(),
                value(ordinal.text()),
                Optional.empty(),
                ordinal.line(),
                ordinal.column(),
                ordinal.end());
    }

    /** '1st and 2nd rounds', '3rd to 6th rounds' as 'rounds 1 and 2': how many tokens; 0 if something else stands here. */
    private int ordinalRounds(List<Token> tokens, int at, List<Lexeme> lexemes) {
        List<Lexeme> found = new ArrayList<>();
        int i = at;
        while (isOrdinal(tokens, i)) {
            Lexeme place = place(tokens.get(i));
            found.add(new Lexeme(
                    Concept.NUMBER,
                    place.text(),
                    place.number(),
                    Optional.empty(),
                    place.line(),
                    place.column(),
                    place.end()));
            i += 2;
            if (i < tokens.size() && isRound(tokens, i) && found.size() > 1) {
                Token round = tokens.get(i);
                lexemes.add(new Lexeme(
                        Concept.ROUND, round.text(), 0, Optional.empty(), round.line(), round.column(), round.end()));
                lexemes.addAll(found);
                return i + 1 - at;
            }
            while (i < tokens.size()
                    && PARTS_ORDINALS.contains(read(tokens.subList(i, i + 1)).stream()
                            .map(Lexeme::concept)
                            .findFirst()
                            .orElse(Concept.END))) {
                found.addAll(read(tokens.subList(i, i + 1)));
                i++;
            }
        }
        return 0;
    }

    /** 'Third round', '3rd round' as 'round 3'. */
    private boolean ordinalRound(List<Token> tokens, int at, List<Lexeme> lexemes) {
        boolean digits = isOrdinal(tokens, at);
        Token first = tokens.get(at);
        int number = digits ? value(first.text()) : ordinalWords.indexOf(first.lower()) + 1;
        int next = at + (digits ? 2 : 1);
        if (number < 1 || next >= tokens.size() || !isRound(tokens, next)) {
            return false;
        }
        Token round = tokens.get(next);
        lexemes.add(new Lexeme(
                Concept.ROUND, round.text(), 0, Optional.empty(), round.line(), round.column(), round.end()));
        Token last = digits ? tokens.get(at + 1) : first;
        String text = digits ? first.text() + last.text() : first.text();
        lexemes.add(
                new Lexeme(Concept.NUMBER, text, number, Optional.empty(), first.line(), first.column(), last.end()));
        return true;
    }

    /** A round that is named alone: 'round below' and 'round 3' say something else. */
    private boolean isRound(List<Token> tokens, int at) {
        boolean round = longest(tokens, at)
                .filter(entry -> entry.concept() == Concept.ROUND)
                .isPresent();
        return round && (at + 1 == tokens.size() || tokens.get(at + 1).kind() != Token.Kind.NUMBER);
    }

    /** '1st' as one place: the number and the letters close behind it. */
    public boolean isOrdinal(List<Token> tokens, int at) {
        return at + 1 < tokens.size()
                && tokens.get(at).kind() == Token.Kind.NUMBER
                && tokens.get(at).text().length() <= 3
                && ordinals.has(tokens.get(at + 1).lower())
                && !(isStitch(tokens.get(at + 1)) && !tokens.get(at).text().endsWith("1"))
                && tokens.get(at).line() == tokens.get(at + 1).line()
                && tokens.get(at).end() == tokens.get(at + 1).column();
    }

    /** The ending of 'first' is the short word for a stitch as well. */
    private boolean isStitch(Token token) {
        return longest(List.of(token), 0)
                .filter(entry -> entry.concept() == Concept.STITCH)
                .isPresent();
    }

    /** A full stop that ends a shortened word and not a sentence: it stands close behind it, and small letters or a sign follow. */
    private boolean isDotOfAbbreviation(List<Token> tokens, int at) {
        if (at == 0 || !tokens.get(at).text().equals(".")) {
            return false;
        }
        Token before = tokens.get(at - 1);
        boolean close = before.kind() == Token.Kind.WORD
                && before.text().equals(before.lower())
                && before.text().length() <= LONGEST_SHORTENED
                && shortened.matcher(before.text()).matches()
                && before.line() == tokens.get(at).line()
                && before.end() == tokens.get(at).column();
        if (!close || at + 1 == tokens.size()) {
            return false;
        }
        String after = tokens.get(at + 1).text();
        return Character.isLowerCase(after.charAt(0)) || ",;:)]".contains(after);
    }

    private Optional<Entry> longest(List<Token> tokens, int at) {
        return entries.getOrDefault(tokens.get(at).lower(), List.of()).stream()
                .filter(entry -> entry.stands(tokens, at))
                .findFirst();
    }

    private static String text(List<Token> tokens) {
        StringBuilder text = new StringBuilder();
        Token before = null;
        for (Token token : tokens) {
            boolean apart = before != null && (before.line() != token.line() || before.end() != token.column());
            text.append(apart ? " " : "").append(token.text());
            before = token;
        }
        return text.toString();
    }

    private static int value(String digits) {
        return digits.length() > 6 ? Lexeme.TOO_LARGE : Integer.parseInt(digits);
    }

    private static Concept concept(Token token) {
        return switch (token.kind()) {
            case NUMBER -> Concept.NUMBER;
            case WORD -> Concept.WORD;
            case SIGN -> sign(token.text());
        };
    }

    private static Concept sign(String sign) {
        return switch (sign) {
            case "*" -> Concept.STAR;
            case "**" -> Concept.TWO_STARS;
            case "(", "[", "{" -> Concept.OPEN;
            case ")", "]", "}" -> Concept.CLOSE;
            case "," -> Concept.COMMA;
            case ";" -> Concept.SEMICOLON;
            case ":" -> Concept.COLON;
            case ".", "!", "?" -> Concept.STOP;
            case "-" -> Concept.DASH;
            case "=" -> Concept.EQUALS;
            case "/" -> Concept.SLASH;
            default -> Concept.OTHER_SIGN;
        };
    }
}
