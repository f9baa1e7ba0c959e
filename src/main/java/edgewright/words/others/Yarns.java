package edgewright.words.others;

import edgewright.words.grammar.Lexeme;
import edgewright.words.grammar.Lexicon;
import edgewright.words.tree.PatternYarn;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The yarns that a text lists, and what its rounds may call them. */
final class Yarns {
    private static final String ID = "([A-H]|MC|CC[1-9]?|C[1-9]|Y[1-9])";
    private static final String WORD = "(?!(?:and|is|are|or|the|in|with|for|to|of)\\b)\\p{L}+";
    private static final String NAME = "(" + WORD + "(?: \\p{Lu}\\p{L}+){0,3})";
    /** 'A: Peat', 'A = Peat', 'Yarn A - Peat', 'A (Peat)', 'A is Peat', 'A, Peat', 'A Peat'. */
    private static final Pattern ID_FIRST = Pattern.compile("(?<![\\p{L}\\d])(?i:yarn |colou?r |col |shade )?" + ID
            + "(?: *[:=-] *| ?\\(| is (?:the )?|, called |, (?=\\p{Lu}))" + NAME);

    private static final Pattern SPACED = Pattern.compile("(?<![\\p{L}\\d])" + ID + " {1,6}" + NAME);
    private static final Pattern TWO_SPACED = Pattern.compile("(?<!\\p{L})A {1,6}\\p{L}+.*(?<!\\p{L})B {1,6}\\p{L}");
    /** 'Peat (A)', 'Main colour (MC)', 'Peat = A'. */
    private static final Pattern NAME_FIRST =
            Pattern.compile("(?<![\\p{L}\\d])(\\p{Lu}\\p{L}*(?:[ -]\\p{L}+){0,3}?) ?(?:\\((?:(?i:yarn|colou?r) )?|= )"
                    + ID + "(?![\\p{L}\\d])");
    /** 'Yarns: Dusk, Lamp', 'wool in two colours, Slate and Shell', 'Worsted yarn: Wrack, Sand'. */
    private static final Pattern NAMES_ALONE = Pattern.compile(
            "(?i:yarns?|colou?rs?|wool)(?i: for this border)?[:,] *((?:\\p{Lu}\\p{L}+(?:, (?:and )?| and )){1,5}\\p{Lu}\\p{L}+)(?![\\p{L}(])");
    /** A line about yarn, or one that says the terms beside it. */
    private static final Pattern ABOUT_YARN = Pattern.compile(
            "(?i:yarn|colou?r|wool|skein|terms|\\buk\\b)|(?<!\\p{L})A(?: is |  ?| *[:=,-] *)\\p{L}+.*(?<!\\p{L})B(?: is |  ?| *[:=,-] *)\\p{L}");

    private static final String IDS = "ABCDEFGH";

    private final List<PatternYarn> yarns = new ArrayList<>();
    private final boolean listed;

    private Yarns(List<PatternYarn> listed) {
        this.yarns.addAll(listed);
        this.listed = !listed.isEmpty();
    }

    /** The yarns that are named on these lines; the lines on which they are go to {@code on}. */
    static Yarns of(List<Page.Line> lines, List<Integer> on) {
        List<PatternYarn> found = new ArrayList<>();
        for (Page.Line line : lines) {
            int before = found.size();
            if (!ABOUT_YARN.matcher(line.text()).find() && found.isEmpty()) {
                continue;
            }
            if (found.isEmpty()) {
                addNames(found, NAMES_ALONE.matcher(line.text()));
            }
            add(found, NAME_FIRST.matcher(line.text()), 2, 1);
            add(found, ID_FIRST.matcher(line.text()), 1, 2);
            if (TWO_SPACED.matcher(line.text()).find()) {
                add(found, SPACED.matcher(line.text()), 1, 2);
            }
            if (found.size() > before) {
                on.add(line.number());
            }
        }
        return new Yarns(found);
    }

    private static void addNames(List<PatternYarn> found, Matcher matcher) {
        if (matcher.find()) {
            for (String name : matcher.group(1).split(", (?:and )?| and ")) {
                found.add(new PatternYarn(IDS.substring(found.size(), found.size() + 1), name));
            }
        }
    }

    private static void add(List<PatternYarn> found, Matcher matcher, int id, int name) {
        while (matcher.find()) {
            String word = matcher.group(id);
            if (found.stream().noneMatch(yarn -> yarn.id().equals(word))) {
                found.add(new PatternYarn(word, matcher.group(name).strip()));
            }
        }
    }

    /** The lexicon with the names of the yarns; single capital letters if the text lists none. */
    Lexicon in(Lexicon lexicon) {
        Lexicon more = lexicon;
        for (PatternYarn yarn : yarns) {
            more = more.withYarn(yarn.id());
            if (yarn.name().length() > 2) {
                more = more.withYarn(yarn.name());
            }
        }
        if (!listed) {
            for (String id : List.of("A", "B", "C", "D", "E", "F", "G", "H", "MC", "CC")) {
                more = more.withYarn(id);
            }
        }
        return more;
    }

    /** The id of the yarn that is named here; a new one if the text lists none. */
    String id(Lexeme named) {
        Optional<PatternYarn> known = yarns.stream()
                .filter(yarn -> yarn.id().equals(named.text())
                        || yarn.name()
                                .toLowerCase(Locale.ROOT)
                                .equals(named.text().toLowerCase(Locale.ROOT)))
                .findFirst();
        if (known.isPresent()) {
            return known.get().id();
        }
        yarns.add(new PatternYarn(named.text(), ""));
        return named.text();
    }

    /** All of them, once every round is read. */
    List<PatternYarn> all() {
        return List.copyOf(yarns);
    }
}
