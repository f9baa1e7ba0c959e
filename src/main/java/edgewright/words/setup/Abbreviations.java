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
            Concept.CHANGE,
            Concept.BELOW,
            Concept.BACK_ONLY,
            Concept.FRONT_ONLY,
            Concept.OPEN,
            Concept.CLOSE,
            Concept.DASH,
            Concept.STOP,
            Concept.COMMA);

    private static final Set<Concept> FOR_HANDS =
            EnumSet.of(Concept.NUMBER, Concept.CHAIN, Concept.SHORT, Concept.BACK_ONLY);

    /** A word and what it was taken for. */
    public record Entry(Lexeme at, String word, Concept concept, Optional<Stitch> stitch) {}

    private static final int LONGEST_NAME = 5;
    /** What a sentence that only says what a stitch is has no use for. */
    private static final Set<Concept> NEVER_IN_NAMING = EnumSet.of(
            Concept.BACK_ONLY,
            Concept.BOTH_LOOPS,
            Concept.CORNER,
            Concept.SIDE,
            Concept.EACH_SIDE,
            Concept.MULTIPLE,
            Concept.REPEAT,
            Concept.COLON,
            Concept.DASH,
            Concept.NOT_OURS);

    private Lexicon lexicon;
    /** What a short stitch is where nothing is said of its loops, if its own entry says so. */
    private Optional<Stitch> usual = Optional.empty();

    private final WordSet plural;
    private final String ending;
    private final WordSet or;
    private final WordSet means;
    private final WordSet follows;
    private final WordSet those;
    private final WordSet labels;
    private final List<Entry> entries = new ArrayList<>();
    private final List<List<Token>> explained = new ArrayList<>();

    public Abbreviations(Lexicon lexicon, Language language) {
        this.lexicon = lexicon;
        this.plural = WordSet.of(language, "PLURAL_ENDING");
        this.ending = language.messages(Lexicon.BUNDLE).text("PLURAL_ENDING");
        this.or = WordSet.of(language, Concept.OR.name());
        this.means = WordSet.of(language, Concept.DEFINED_AS.name());
        this.labels = WordSet.of(language, "TERM_WORDS_NEAR");
        this.those = WordSet.of(language, "THAT_WORDS");
        this.follows = WordSet.of(language, "MEANS_WORDS");
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
        for (List<Token> part : EntryCuts.parts(line)) {
            List<Token> rest = part;
            while (!rest.isEmpty()) {
                List<Token> sentence = EntryCuts.firstSentence(rest, 0);
                any |= takeEntry(sentence, listed);
                rest = rest.subList(sentence.size(), rest.size());
            }
        }
        return any;
    }

    /** Takes sentences of a paragraph that say what a stitch of the text's own is: 'LT is a tall stitch in the front loop'. */
    public void takeSentences(List<Token> paragraph) {
        List<Token> rest = paragraph;
        while (!rest.isEmpty()) {
            List<Token> sentence = EntryCuts.upToStop(rest);
            takeIs(sentence);
            rest = rest.subList(sentence.size(), rest.size());
        }
    }

    private void takeIs(List<Token> sentence) {
        for (int i = 1; i < Math.min(sentence.size() - 1, LONGEST_NAME); i++) {
            if (follows.has(sentence.get(i).text())) {
                List<Token> word = withoutNoise(sentence.subList(0, i));
                List<Token> meaning = sentence.subList(i + 1, sentence.size());
                Optional<Stitch> stitch = StitchMeaning.of(lexicon.read(meaning));
                boolean own = !word.isEmpty()
                        && !those.has(word.get(0).text())
                        && lexicon.read(word).stream()
                                .allMatch(each -> each.is(Concept.WORD) || each.is(Concept.NUMBER))
                        && lexicon.read(word).get(0).is(Concept.WORD);
                boolean plain =
                        lexicon.read(sentence).stream().noneMatch(each -> NEVER_IN_NAMING.contains(each.concept()));
                if (own && plain && stitch.equals(Optional.of(Stitch.LONG))) {
                    explained.add(sentence);
                    add(word, stitch, Optional.empty(), false);
                }
                return;
            }
        }
    }

    /** The words of a name without 'a' and 'the' before it. */
    private List<Token> withoutNoise(List<Token> word) {
        int from = 0;
        while (from < word.size() && lexicon.read(word.subList(from, from + 1)).isEmpty()) {
            from++;
        }
        return word.subList(from, word.size());
    }

    /**
     * Takes a word in quotation marks whose meaning follows it: '"long" is a tall stitch in the front loop two rounds below'.
     *
     * @param following what stands after it, as far as its paragraph goes
     */
    public void takeQuoted(List<Token> word, List<Token> following) {
        boolean told = following.size() > 1
                && !word.isEmpty()
                && (follows.has(following.get(0).text())
                        || "=:-,".contains(following.get(0).text()));
        if (!told || isKnown(word)) {
            return;
        }
        List<Token> meaning = new ArrayList<>();
        for (Token token : following.subList(1, following.size())) {
            if (token.text().equals(".") || token.text().equals(";")) {
                break;
            }
            meaning.add(token);
        }
        Optional<Stitch> stitch = StitchMeaning.of(lexicon.read(meaning));
        if (stitch.isPresent()) {
            List<Token> part = new ArrayList<>(word);
            part.addAll(meaning);
            explained.add(part);
            add(word, stitch, Optional.empty(), false);
        }
    }

    /** Whether the list of the text, or the trade, knows this word as a stitch already. */
    private boolean isKnown(List<Token> word) {
        List<Lexeme> known = lexicon.read(word);
        return known.size() != 1 || !known.get(0).is(Concept.WORD);
    }

    private boolean takeEntry(List<Token> whole, boolean listed) {
        List<Token> part = withoutLabel(EntryCuts.firstSentence(whole, signAt(whole)));
        int sign = signAt(part);
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
        boolean numbered = stitch.isPresent() && isNumbered(left);
        boolean explains = explains(left, meaning, numbered);
        boolean told = !numbered && lexicon.read(left).stream().anyMatch(word -> word.is(Concept.NUMBER));
        boolean harmless =
                explains || alias.isPresent() || meaning.stream().noneMatch(word -> FOR_HANDS.contains(word.concept()));
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

    /** 'Tr-2': a name that ends in a number, close behind its hyphen. */
    private static boolean isNumbered(List<Token> left) {
        boolean three = left.size() == 3
                && left.get(0).kind() == Token.Kind.WORD
                && left.get(1).text().equals("-")
                && left.get(2).kind() == Token.Kind.NUMBER;
        return three
                && left.get(0).end() == left.get(1).column()
                && left.get(1).end() == left.get(2).column();
    }

    /** Whether the left side may be a name, and the right side says no more than what it is. */
    private boolean explains(List<Token> left, List<Lexeme> meaning, boolean numbered) {
        boolean name =
                lexicon.read(left).stream().allMatch(word -> numbered || MAY_BE_EXPLAINED.contains(word.concept()));
        return name
                && meaning.stream()
                        .noneMatch(word -> word.is(Concept.EACH)
                                || (word.is(Concept.TO) && !leaves(meaning))
                                || word.is(Concept.NOT_OURS)
                                || word.is(Concept.UNLESS));
    }

    /** 'Leaving the stitch behind it', as it is behind every long stitch. */
    private static boolean leaves(List<Lexeme> meaning) {
        return meaning.stream().anyMatch(word -> word.is(Concept.BEHIND));
    }

    /** The entry without a label before it: 'US terms: st = ...'. */
    private List<Token> withoutLabel(List<Token> part) {
        int colon = -1;
        for (int i = 0; i < part.size(); i++) {
            if (part.get(i).text().equals("=")) {
                boolean label =
                        colon > 0 && part.subList(0, colon).stream().anyMatch(token -> labels.has(token.text()));
                return label ? part.subList(colon + 1, part.size()) : part;
            }
            colon = part.get(i).text().equals(":") && colon < 0 ? i : colon;
        }
        return part;
    }

    /** 'Ch 1, miss 1 = one chain over one stitch', which is what it is in every border. */
    private boolean takeChainEntry(List<Token> part, List<Lexeme> meaning) {
        boolean ones = lexicon.read(part).stream().allMatch(word -> !word.is(Concept.NUMBER) || word.number() == 1);
        List<Lexeme> all = lexicon.read(part);
        boolean chain = meaning.stream().anyMatch(word -> word.is(Concept.CHAIN))
                && all.stream().anyMatch(word -> word.is(Concept.MISS))
                && all.stream().noneMatch(word -> word.is(Concept.CORNER));
        if (ones && chain) {
            explained.add(part);
        }
        return ones && chain;
    }

    /** Whether a word stands in an entry of the list. */
    public boolean isExplained(Lexeme word) {
        return explained.stream()
                .flatMap(List::stream)
                .anyMatch(token -> token.line() == word.line() && token.column() == word.column());
    }

    private int signAt(List<Token> part) {
        for (int i = 0; i < part.size(); i++) {
            String text = part.get(i).text();
            boolean spaced = i > 0
                    && i + 1 < part.size()
                    && part.get(i - 1).end() < part.get(i).column()
                    && part.get(i).end() < part.get(i + 1).column();
            if (text.equals("=")
                    || text.equals(":")
                    || (text.equals("-") && spaced)
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
            boolean bracket = "()[]/,".contains(token.text()) || or.has(token.text());
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
            if (stitch.isPresent()
                    && lexicon.read(Token.of(word + ending, 1)).get(0).is(Concept.WORD)) {
                lexicon = lexicon.with(word + ending, concept, stitch);
            }
        }
    }

    private static boolean saysLoop(List<Lexeme> meaning) {
        return meaning.stream().anyMatch(word -> StitchMeaning.LOOPS.contains(word.concept()));
    }

    /** What the meaning is another word for. */
    private static Optional<Concept> alias(List<Lexeme> meaning) {
        List<Lexeme> words = meaning.stream()
                .filter(word -> !word.is(Concept.STOP) && !(word.is(Concept.IN) && saysLoop(meaning)))
                .toList();
        boolean one = words.size() == 1
                && !words.get(0).is(Concept.WORD)
                && !words.get(0).is(Concept.NUMBER)
                && !words.get(0).is(Concept.STITCH_NAME);
        return one ? Optional.of(words.get(0).concept()) : Optional.empty();
    }
}
