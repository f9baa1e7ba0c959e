package edgewright.words.grammar;

import edgewright.texts.Language;
import edgewright.words.terms.Bars;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * Sentences without a count or a round of their own that change the work all the same: 'turn', 'from the wrong side', 'each round
 * twice', 'end with a plain round', 'every fourth stitch', 'all rounds but the last'. No such sentence may pass for prose.
 */
public final class Orders {
    private static final Set<Concept> OFTEN = EnumSet.of(Concept.TWICE, Concept.THRICE, Concept.AGAIN);
    private static final Set<Concept> ROUNDS = EnumSet.of(Concept.ROUND, Concept.ROW);
    private static final Set<Concept> WORKED = Concept.andEdges(
            Concept.ROUND,
            Concept.CORNER,
            Concept.YARN_NAME,
            Concept.SIDE,
            Concept.EACH_SIDE,
            Concept.SHORT,
            Concept.STITCH_NAME);
    private static final Set<Concept> MADE =
            EnumSet.of(Concept.SHORT, Concept.TALL, Concept.STITCH_NAME, Concept.SLIP, Concept.YARN_NAME);
    private static final Set<Concept> PLACES = EnumSet.of(Concept.CORNER, Concept.STITCH, Concept.STITCH_NAME);
    private static final Set<Concept> SIGNS = EnumSet.of(
            Concept.COMMA, Concept.SEMICOLON, Concept.STOP, Concept.COLON, Concept.DASH, Concept.AND, Concept.OPEN);
    private static final int LONGEST_FRAGMENT = 9;

    private final WordSet ifs;
    private final List<String> directions;
    private final WordSet turns;
    private final WordSet verbs;
    private final WordSet puts;
    private final WordSet extra;
    private final WordSet others;
    private final WordSet ordinals;
    private final WordSet care;
    private final WordSet those;
    private final WordSet leads;
    private final WordSet markers;
    private final List<String> wishes;

    public Orders(Language language) {
        ifs = WordSet.of(language, "IF_WORDS");
        directions = Bars.parted(language.messages(Lexicon.BUNDLE).text("DIRECTION_WORDS"));
        turns = WordSet.of(language, "TURN_WORDS");
        verbs = WordSet.of(language, "ORDER_VERBS");
        puts = WordSet.of(language, "PUT_WORDS");
        extra = WordSet.of(language, "EXTRA_WORDS");
        others = WordSet.of(language, "OTHERWISE_WORDS");
        ordinals = WordSet.of(language, "EVERY_ORDINALS");
        care = WordSet.of(language, "CARE_WORDS");
        those = WordSet.of(language, "THAT_WORDS");
        leads = WordSet.of(language, "ORDER_LEADS");
        markers = WordSet.of(language, "MARKER_WORDS");
        wishes = Bars.parted(language.messages(Lexicon.BUNDLE).text("WISH_WORDS"));
    }

    /** The word by which a sentence is an order; empty if it is none. What is said under an 'if' is left to whoever works. */
    public Optional<Lexeme> in(List<Lexeme> sentence) {
        if (sentence.isEmpty() || isWish(sentence)) {
            return Optional.empty();
        }
        for (int i = 0; i < sentence.size(); i++) {
            if (isTurn(sentence, i) || isOther(sentence, i) || isEveryFew(sentence, i)) {
                return Optional.of(sentence.get(i));
            }
        }
        return direction(sentence)
                .or(() -> often(sentence))
                .or(() -> extraRound(sentence))
                .or(() -> put(sentence));
    }

    /** Whether it is left to whoever works: 'if you like'. */
    boolean isWish(List<Lexeme> sentence) {
        return (!sentence.isEmpty() && ifs.has(sentence.get(0))) || says(sentence, wishes);
    }

    /** Whether it holds a word by which something may be told to be worked, or a round that is more than those told. */
    boolean commands(List<Lexeme> sentence) {
        return sentence.stream().anyMatch(word -> verbs.has(word) || puts.has(word) || extra.has(word));
    }

    /** 'Turn', where it begins what is said; 'do not turn' is one word of the lexicon. */
    private boolean isTurn(List<Lexeme> sentence, int at) {
        boolean begins = at == 0 || SIGNS.contains(sentence.get(at - 1).concept());
        Concept after = concept(sentence, at + 1);
        boolean work = after == Concept.END
                || after == Concept.NOISE
                || after == Concept.AFTER
                || after == Concept.IN
                || SIGNS.contains(after)
                || turns.has(sentence.get(at + 1));
        return begins && sentence.get(at).is(Concept.BORDER_OVER) && turns.has(sentence.get(at)) && work;
    }

    /** 'All rounds but the last', 'the sides are mirrored'. */
    private boolean isOther(List<Lexeme> sentence, int at) {
        if (!sentence.get(at).is(Concept.NOT_OURS)) {
            return false;
        }
        if (others.has(sentence.get(at))) {
            return has(sentence, WORKED) || has(sentence, EnumSet.of(Concept.YARN));
        }
        int next = at + 1;
        while (concept(sentence, next) == Concept.NOISE || concept(sentence, next) == Concept.IN) {
            next++;
        }
        return EnumSet.of(Concept.LAST, Concept.FIRST).contains(concept(sentence, next));
    }

    /** 'Every fourth stitch', 'every other round in B'. */
    private boolean isEveryFew(List<Lexeme> sentence, int at) {
        boolean few = sentence.get(at).is(Concept.EACH)
                && at + 2 < sentence.size()
                && ordinals.has(sentence.get(at + 1))
                && sentence.stream().noneMatch(markers::has);
        Concept what = few ? concept(sentence, at + 2) : Concept.END;
        return what == Concept.STITCH || (what == Concept.ROUND && has(sentence, EnumSet.of(Concept.YARN_NAME)));
    }

    /** 'From the wrong side', said of rounds or of the work. */
    private Optional<Lexeme> direction(List<Lexeme> sentence) {
        boolean work = has(sentence, EnumSet.of(Concept.ROUND, Concept.EACH_SIDE))
                || concept(sentence, 0) == Concept.FROM
                || sentence.stream().anyMatch(verbs::has);
        return says(sentence, directions) && work && concept(sentence, 0) != Concept.BORDER_OVER
                ? Optional.of(sentence.get(0))
                : Optional.empty();
    }

    /** 'Work each round twice', 'do that again'. */
    private Optional<Lexeme> often(List<Lexeme> sentence) {
        int first = first(sentence);
        // 'Work' is left out by the lexicon: 'each round twice' is what remains of it.
        boolean orders = first < sentence.size()
                && (verbs.has(sentence.get(first)) || sentence.get(first).is(Concept.EACH));
        boolean what = has(sentence, ROUNDS) || sentence.stream().anyMatch(those::has);
        return sentence.stream()
                .filter(word -> orders && what && OFTEN.contains(word.concept()))
                .findFirst();
    }

    /** 'End with a plain round in A', 'now a plain round', 'start with the last round'. */
    private Optional<Lexeme> extraRound(List<Lexeme> sentence) {
        int first = first(sentence);
        Optional<Lexeme> round = sentence.stream()
                .filter(word -> ROUNDS.contains(word.concept()))
                .findFirst();
        if (round.isEmpty() || first >= sentence.size() || sentence.stream().anyMatch(care::has)) {
            return Optional.empty();
        }
        int at = sentence.indexOf(round.get());
        boolean of = concept(sentence, at + 1) == Concept.OF;
        boolean fragment =
                sentence.size() <= LONGEST_FRAGMENT && (extra.has(sentence.get(first)) || (of && at == first));
        boolean orders = verbs.has(sentence.get(first))
                && (of
                        || sentence.stream().anyMatch(extra::has)
                        || has(sentence, MADE)
                        || (at > 0 && concept(sentence, at - 1) == Concept.LAST));
        return fragment || orders ? round : Optional.empty();
    }

    /** 'Put a long stitch over every post', 'never put anything in the corner'. */
    Optional<Lexeme> put(List<Lexeme> sentence) {
        int first = first(sentence);
        if (first < sentence.size() && sentence.get(first).is(Concept.WITHOUT_CORNERS)) {
            first++;
        }
        boolean puts = first < sentence.size()
                && (this.puts.has(sentence.get(first))
                        || (extra.has(sentence.get(first)) && concept(sentence, first + 1) == Concept.STITCH));
        boolean plain = sentence.stream().anyMatch(extra::has)
                && has(sentence, EnumSet.of(Concept.STITCH))
                && has(sentence, EnumSet.of(Concept.FIRST, Concept.LAST));
        return (puts || plain) && has(sentence, PLACES) && sentence.stream().noneMatch(care::has)
                ? Optional.of(sentence.get(Math.min(first, sentence.size() - 1)))
                : Optional.empty();
    }

    /** Where a sentence begins behind 'now', 'then' and the like. */
    private int first(List<Lexeme> sentence) {
        int first = 0;
        while (first < sentence.size()
                && (leads.has(sentence.get(first))
                        || SIGNS.contains(sentence.get(first).concept()))) {
            first++;
        }
        return first;
    }

    private static boolean says(List<Lexeme> sentence, List<String> phrases) {
        StringBuilder text = new StringBuilder(" ");
        sentence.forEach(
                word -> text.append(word.text().toLowerCase(Locale.ROOT)).append(' '));
        return phrases.stream().anyMatch(words -> text.indexOf(" " + words + " ") >= 0);
    }

    private static Concept concept(List<Lexeme> sentence, int at) {
        return at < sentence.size() ? sentence.get(at).concept() : Concept.END;
    }

    private static boolean has(List<Lexeme> sentence, Set<Concept> concepts) {
        return sentence.stream().anyMatch(word -> concepts.contains(word.concept()));
    }
}
