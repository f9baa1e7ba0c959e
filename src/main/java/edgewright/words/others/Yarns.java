package edgewright.words.others;

import edgewright.texts.Language;
import edgewright.words.grammar.Cursor;
import edgewright.words.grammar.Lexeme;
import edgewright.words.grammar.Lexicon;
import edgewright.words.grammar.RoundTitle;
import edgewright.words.tree.PatternYarn;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The yarns that a text lists, and what its rounds may call them. */
final class Yarns {
    private static final String IDS = "ABCDEFGH";
    /** A letter in brackets that begins no sentence of the round. */
    private static final Pattern LETTER = Pattern.compile("^[^:.]{0,40}\\(([A-H])\\)");

    private final List<PatternYarn> yarns = new ArrayList<>();
    private final boolean listed;
    /** Whether their ids are ours, since titles only name them. */
    private final boolean fromTitles;

    private Yarns(List<PatternYarn> listed, boolean fromTitles) {
        this.fromTitles = fromTitles && !listed.isEmpty();
        this.yarns.addAll(listed);
        this.listed = !listed.isEmpty();
    }

    /** The yarns that are named on these lines; the lines on which they are go to {@code on}. */
    static Yarns of(List<Page.Line> lines, List<Integer> on, Language language) {
        YarnPatterns patterns = YarnPatterns.of(language);
        List<PatternYarn> found = new ArrayList<>();
        for (Page.Line line : lines) {
            int before = found.size();
            if (!patterns.about().matcher(line.text()).find() && found.isEmpty()) {
                continue;
            }
            if (found.isEmpty()) {
                addNames(found, patterns, line.text());
            }
            add(found, patterns.role().matcher(line.text()), 1, 2);
            add(found, patterns.nameFirst().matcher(line.text()), 2, 1);
            add(found, patterns.idFirst().matcher(line.text()), 1, 2);
            if (patterns.twoSpaced().matcher(line.text()).find()) {
                add(found, patterns.spaced().matcher(line.text()), 1, 2);
            }
            if (found.size() > before) {
                on.add(line.number());
            }
        }
        return new Yarns(found, false);
    }

    private static void addNames(List<PatternYarn> found, YarnPatterns patterns, String line) {
        Matcher matcher = patterns.namesAlone().matcher(line);
        if (matcher.find()) {
            for (String name : patterns.between().split(matcher.group(1))) {
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
            if (!fromTitles) {
                more = more.withYarn(yarn.id());
            }
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

    /** These yarns, or if the text lists none, those that the titles of its rounds name. */
    Yarns orNamedIn(Page page, Lexicon lexicon, Language language) {
        if (listed) {
            return this;
        }
        List<PatternYarn> found = numbered(page, lexicon, language);
        if (!found.isEmpty()) {
            return new Yarns(found, true);
        }
        List<String> parity = ParityYarnNames.in(page.lines(), lexicon, language);
        for (String name : parity.isEmpty() ? TitleYarnNames.in(page, lexicon, language) : parity) {
            found.add(new PatternYarn(IDS.substring(found.size(), found.size() + 1), name));
        }
        return new Yarns(found, true);
    }

    /** The lexicon with the letters that titles of rounds hold in brackets, beside those that were listed. */
    static Lexicon lettersOfTitles(Page page, Lexicon lexicon) {
        Lexicon more = lexicon;
        for (Page.Line line : page.lines()) {
            Matcher matcher = LETTER.matcher(line.text());
            if (RoundTitle.begins(new Cursor(lexicon.read(line.tokens()))) && matcher.find()) {
                more = more.withYarn(matcher.group(1));
            }
        }
        return more;
    }

    /** 'Yarn 1' and 'Yarn 2', where titles of rounds name them so. */
    private static List<PatternYarn> numbered(Page page, Lexicon lexicon, Language language) {
        Pattern pattern = YarnPatterns.of(language).numbered();
        List<PatternYarn> found = new ArrayList<>();
        for (Page.Line line : page.lines()) {
            Matcher matcher = pattern.matcher(line.text());
            boolean title = RoundTitle.begins(new Cursor(lexicon.read(line.tokens())));
            while (title && matcher.find()) {
                String name = matcher.group();
                if (found.size() < IDS.length()
                        && found.stream().noneMatch(yarn -> yarn.name().equals(name))) {
                    found.add(new PatternYarn(IDS.substring(found.size(), found.size() + 1), name));
                }
            }
        }
        return found;
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
