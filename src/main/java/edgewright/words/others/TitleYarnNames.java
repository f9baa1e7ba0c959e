package edgewright.words.others;

import edgewright.texts.Language;
import edgewright.words.grammar.Concept;
import edgewright.words.grammar.Cursor;
import edgewright.words.grammar.Lexeme;
import edgewright.words.grammar.Lexicon;
import edgewright.words.grammar.RoundTitle;
import edgewright.words.grammar.Stopped;
import edgewright.words.grammar.WordSet;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/**
 * Finds yarns that no list names, from the titles of the rounds: a word stands where a yarn does in title after title, and at
 * least one of these words is told to be a yarn ('with the grey yarn'), is a colour, or stands in a sentence about yarn; or every
 * title has one.
 */
final class TitleYarnNames {
    private static final int MOST_WORDS = 3;
    private static final int MOST_YARNS = 8;
    private static final int FEWEST_TITLES = 4;
    private static final Set<Concept> LEADS =
            EnumSet.of(Concept.WITH, Concept.CHANGE, Concept.YARN, Concept.IN, Concept.TO);
    private static final Set<Concept> SIGNS =
            EnumSet.of(Concept.OPEN, Concept.COMMA, Concept.DASH, Concept.COLON, Concept.STOP, Concept.SEMICOLON);
    private static final Set<Concept> ENDS = EnumSet.of(
            Concept.CLOSE,
            Concept.COLON,
            Concept.COMMA,
            Concept.DASH,
            Concept.STOP,
            Concept.SEMICOLON,
            Concept.END,
            Concept.AND,
            Concept.SLASH);

    private final Lexicon lexicon;
    private final WordSet colours;
    private final YarnPatterns patterns;
    /** How often each stands in a title, in the order of the text. */
    private final Map<String, Integer> found = new LinkedHashMap<>();

    private boolean told;
    private int titles;

    private TitleYarnNames(Lexicon lexicon, Language language) {
        this.lexicon = lexicon;
        this.colours = WordSet.of(language, "COLOUR_NAMES");
        this.patterns = YarnPatterns.of(language);
    }

    /** The names in the order of the text; empty if titles name no yarn in words of their own, or it cannot be known that they do. */
    static List<String> in(Page page, Lexicon lexicon, Language language) {
        TitleYarnNames names = new TitleYarnNames(lexicon, language);
        for (Page.Line line : page.lines()) {
            names.look(line);
        }
        for (Page.Line line : page.lines()) {
            names.told |= names.patterns.about().matcher(line.text()).find() && names.stands(line.text());
        }
        int all = names.found.values().stream().mapToInt(Integer::intValue).sum();
        boolean everywhere = names.titles >= FEWEST_TITLES
                && all == names.titles
                && names.found.values().stream().allMatch(times -> times >= 2);
        boolean sure = (names.told || everywhere)
                && names.found.size() >= 2
                && names.found.size() <= MOST_YARNS
                && 2 * all >= names.titles
                && all > names.found.size();
        return sure ? List.copyOf(names.found.keySet()) : List.of();
    }

    /** Whether two of them stand in a line of words. */
    private boolean stands(String line) {
        String words = line.toLowerCase(Locale.ROOT);
        return found.keySet().stream()
                        .filter(name ->
                                words.matches(".*(?<!\\p{L})\\Q" + name.toLowerCase(Locale.ROOT) + "\\E(?!\\p{L}).*"))
                        .count()
                >= 2;
    }

    private void look(Page.Line line) {
        Cursor cursor = new Cursor(lexicon.read(line.tokens()));
        if (!RoundTitle.begins(cursor)) {
            return;
        }
        titles++;
        cursor.next();
        if (cursor.is(Concept.NUMBER)) {
            try {
                RoundTitle.takeNumbers(cursor, new ArrayList<>());
            } catch (Stopped stopped) {
                // Whoever reads the round says what is wrong with its number.
                return;
            }
        }
        boolean led = false;
        while (cursor.isOne(LEADS) || cursor.isOne(SIGNS)) {
            led |= cursor.next().is(Concept.YARN) || cursor.peek(-1).is(Concept.WITH);
        }
        take(cursor, led);
    }

    private void take(Cursor cursor, boolean led) {
        StringBuilder name = new StringBuilder();
        int words = 0;
        while (cursor.is(Concept.WORD) && words < MOST_WORDS) {
            Lexeme word = cursor.next();
            name.append(name.isEmpty() ? "" : " ").append(word.text());
            words++;
        }
        if (words > 0 && cursor.is(Concept.NUMBER) && cursor.peek().number() == 1) {
            // 'The dark one.'
            name.append(" ").append(cursor.next().text());
        }
        boolean yarn = cursor.take(Concept.YARN);
        cursor.take(Concept.AGAIN);
        if (words == 0 || !cursor.isOne(ENDS)) {
            return;
        }
        found.merge(name.toString(), 1, Integer::sum);
        told |= led || yarn || colours.has(name.toString().split(" ", -1)[0]);
    }
}
