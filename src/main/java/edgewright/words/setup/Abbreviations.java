package edgewright.words.setup;

import edgewright.chart.Stitch;
import edgewright.texts.Language;
import edgewright.words.grammar.Concept;
import edgewright.words.grammar.Lexeme;
import edgewright.words.grammar.Lexicon;
import edgewright.words.grammar.Token;
import edgewright.words.grammar.WordSet;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Reads the list of abbreviations: words that the text explains itself. What a word means there goes before what it means
 * elsewhere.
 */
public final class Abbreviations {
    private static final Set<Concept> MAY_BE_EXPLAINED = EnumSet.of(
            Concept.WORD,
            Concept.SHORT,
            Concept.TALL,
            Concept.STITCH_NAME,
            Concept.OTHER_STITCH,
            Concept.UNCLEAR_NAME,
            Concept.STITCH,
            Concept.BACK_ONLY,
            Concept.FRONT_ONLY,
            Concept.OPEN,
            Concept.CLOSE,
            Concept.DASH,
            Concept.STOP,
            Concept.COMMA);

    /** A word and what it was taken for. */
    public record Entry(Lexeme at, String word, Concept concept, Optional<Stitch> stitch) {}

    private Lexicon lexicon;
    /** What a short stitch is where nothing is said of its loops, if its own entry says so. */
    private Optional<Stitch> usual = Optional.empty();

    private final WordSet plural;
    private final WordSet or;
    private final WordSet means;
    private final List<Entry> entries = new ArrayList<>();
    private final List<List<Token>> explained = new ArrayList<>();

    public Abbreviations(Lexicon lexicon, Language language) {
        this.lexicon = lexicon;
        this.plural = WordSet.of(language, "PLURAL_ENDING");
        this.or = WordSet.of(language, Concept.OR.name());
        this.means = WordSet.of(language, Concept.DEFINED_AS.name());
    }

    /** The lexicon with all words that were explained. */
    public Lexicon lexicon() {
        return lexicon;
    }

    public Optional<Stitch> usual() {
        return usual;
    }

    public List<Entry> entries() {
        return entries;
    }

    /**
     * Takes the words that are explained on a line.
     *
     * @param listed whether the line stands in a list of abbreviations; elsewhere only words that mean a stitch are taken
     * @return whether there was one
     */
    public boolean take(List<Token> line, boolean listed) {
        boolean any = false;
        for (List<Token> part : parts(line)) {
            List<Token> rest = part;
            while (!rest.isEmpty()) {
                List<Token> sentence = firstSentence(rest, 0);
                any |= takeEntry(sentence, listed);
                rest = rest.subList(sentence.size(), rest.size());
            }
        }
        return any;
    }

    /** The entries of a line: parted by semicolons, or by commas and full stops where an equals sign comes after them. */
    private static List<List<Token>> parts(List<Token> line) {
        long equals = line.stream().filter(token -> token.text().equals("=")).count();
        List<List<Token>> parts = new ArrayList<>(List.of(new ArrayList<>()));
        for (int i = 0; i < line.size(); i++) {
            String sign = line.get(i).text();
            boolean begun = parts.get(parts.size() - 1).stream()
                    .anyMatch(token -> token.text().equals("="));
            boolean soft = (sign.equals(",") || sign.equals(".")) && begun && equals > 1 && equalsComes(line, i);
            if (sign.equals(";") || soft) {
                parts.add(new ArrayList<>());
            } else {
                parts.get(parts.size() - 1).add(line.get(i));
            }
        }
        return parts;
    }

    private static boolean equalsComes(List<Token> line, int from) {
        for (int i = from + 1; i < Math.min(line.size(), from + 6); i++) {
            if (line.get(i).text().equals("=")) {
                return true;
            }
            if (line.get(i).text().equals(",")) {
                return false;
            }
        }
        return false;
    }

    private boolean takeEntry(List<Token> whole, boolean listed) {
        List<Token> part = firstSentence(whole, signAt(whole, listed));
        int sign = signAt(part, listed);
        if (sign <= 0 || sign > 8 || sign == part.size() - 1) {
            return false;
        }
        List<Token> left = part.subList(0, sign);
        List<Lexeme> meaning = lexicon.read(part.subList(sign + 1, part.size()));
        if (meaning.isEmpty()) {
            return false;
        }
        List<List<Token>> words = words(left);
        Optional<Stitch> stitch = StitchMeaning.of(meaning);
        Optional<Concept> alias = alias(meaning);
        boolean explains = lexicon.read(left).stream().allMatch(word -> MAY_BE_EXPLAINED.contains(word.concept()))
                && meaning.stream()
                        .noneMatch(word -> word.is(Concept.EACH)
                                || word.is(Concept.TO)
                                || word.is(Concept.NOT_OURS)
                                || word.is(Concept.UNLESS));
        boolean told = lexicon.read(left).stream().anyMatch(word -> word.is(Concept.NUMBER));
        boolean forHands = meaning.stream()
                .anyMatch(word -> word.is(Concept.NUMBER)
                        || word.is(Concept.CHAIN)
                        || word.is(Concept.SHORT)
                        || word.is(Concept.BACK_ONLY));
        boolean harmless = explains || alias.isPresent() || !forHands;
        if (told || (!listed && (stitch.isEmpty() || !explains)) || (listed && stitch.isEmpty() && !harmless)) {
            return told && takeChainEntry(part, meaning);
        }
        explained.add(part);
        boolean tellsOther = stitch.isEmpty()
                && meaning.stream()
                        .anyMatch(word -> word.is(Concept.BELOW) || StitchMeaning.LOOPS.contains(word.concept()))
                && alias.isEmpty();
        words.forEach(word -> add(word, stitch, alias, tellsOther));
        return true;
    }

    /** 'Ch 1, miss 1 = one chain over one stitch', which is what it is in every border. */
    private boolean takeChainEntry(List<Token> part, List<Lexeme> meaning) {
        boolean ones = lexicon.read(part).stream().allMatch(word -> !word.is(Concept.NUMBER) || word.number() == 1);
        boolean chain = meaning.stream().anyMatch(word -> word.is(Concept.CHAIN));
        if (ones && chain) {
            explained.add(part);
        }
        return ones && chain;
    }

    /** The entry up to the end of its sentence. */
    private static List<Token> firstSentence(List<Token> part, int sign) {
        for (int i = Math.max(0, sign); i + 1 < part.size(); i++) {
            Token next = part.get(i + 1);
            boolean ends = part.get(i).text().equals(".")
                    && (next.line() != part.get(i).line()
                            || next.column() > part.get(i).end())
                    && Character.isUpperCase(next.text().charAt(0));
            if (ends) {
                return part.subList(0, i + 1);
            }
        }
        return part;
    }

    /** Whether a word stands in an entry of the list. */
    public boolean isExplained(Lexeme word) {
        return explained.stream()
                .flatMap(List::stream)
                .anyMatch(token -> token.line() == word.line() && token.column() == word.column());
    }

    private int signAt(List<Token> part, boolean listed) {
        for (int i = 0; i < part.size(); i++) {
            String text = part.get(i).text();
            boolean spaced = i > 0
                    && i + 1 < part.size()
                    && part.get(i - 1).end() < part.get(i).column()
                    && part.get(i).end() < part.get(i + 1).column();
            if (text.equals("=")
                    || text.equals(":")
                    || (text.equals("-") && spaced && listed)
                    || means.has(part.get(i).text())) {
                return i;
            }
        }
        return -1;
    }

    /** The word before a sign, and another in brackets after it. */
    private List<List<Token>> words(List<Token> left) {
        List<List<Token>> words = new ArrayList<>(List.of(new ArrayList<>()));
        for (Token token : left) {
            boolean bracket = "()[]/".contains(token.text()) || or.has(token.text());
            // 'st(s)' is one word with its plural.
            if (bracket) {
                words.add(new ArrayList<>());
            } else {
                words.get(words.size() - 1).add(token);
            }
        }
        words.removeIf(List::isEmpty);
        words.removeIf(word -> word.size() == 1 && plural.has(word.get(0).text()));
        return words;
    }

    /** @param tellsOther whether what is told of loops or rounds below makes no stitch of a border */
    private void add(List<Token> tokens, Optional<Stitch> stitch, Optional<Concept> alias, boolean tellsOther) {
        StringBuilder word = new StringBuilder();
        for (Token token : tokens) {
            word.append(word.isEmpty() ? "" : " ").append(token.text());
        }
        List<Lexeme> known = lexicon.read(tokens);
        Token first = tokens.get(0);
        Lexeme at = new Lexeme(Concept.WORD, word.toString(), 0, stitch, first.line(), first.column(), first.end());
        boolean isKnown = known.size() == 1
                && !known.get(0).is(Concept.WORD)
                && !known.get(0).is(Concept.YARN_NAME);
        Concept concept = stitch.isPresent()
                ? Concept.STITCH_NAME
                : alias.orElse(isKnown && !tellsOther ? known.get(0).concept() : Concept.UNCLEAR_NAME);
        entries.add(new Entry(at, word.toString(), concept, stitch));
        boolean ofShort =
                isKnown && known.get(0).is(Concept.SHORT) && stitch.isPresent() && stitch.get() != Stitch.LONG;
        if (ofShort) {
            usual = stitch;
            return;
        }
        boolean needless = isKnown && !tellsOther && stitch.isEmpty() && alias.isEmpty();
        if (!needless && !known.isEmpty()) {
            lexicon = lexicon.with(word.toString(), concept, stitch);
        }
    }

    /** What the meaning is another word for. */
    private static Optional<Concept> alias(List<Lexeme> meaning) {
        List<Lexeme> words =
                meaning.stream().filter(word -> !word.is(Concept.STOP)).toList();
        boolean one = words.size() == 1
                && !words.get(0).is(Concept.WORD)
                && !words.get(0).is(Concept.NUMBER)
                && !words.get(0).is(Concept.STITCH_NAME);
        return one ? Optional.of(words.get(0).concept()) : Optional.empty();
    }
}
