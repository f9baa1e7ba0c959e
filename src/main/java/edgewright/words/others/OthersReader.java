package edgewright.words.others;

import edgewright.chart.PerSide;
import edgewright.chart.Terms;
import edgewright.texts.Language;
import edgewright.words.grammar.Concept;
import edgewright.words.grammar.Cursor;
import edgewright.words.grammar.Lexeme;
import edgewright.words.grammar.Lexicon;
import edgewright.words.grammar.LineKind;
import edgewright.words.grammar.Remark;
import edgewright.words.grammar.RoundTitle;
import edgewright.words.grammar.TalkReader;
import edgewright.words.grammar.WordSet;
import edgewright.words.setup.Abbreviations;
import edgewright.words.setup.Facts;
import edgewright.words.tree.Instructions;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Reads pattern texts that other people wrote, in what published conventions allow, and accounts for every line of them.
 *
 * <p>Nothing is guessed: what can be understood in two ways is asked, what is not understood is refused with its place, and
 * what is stated and does not come out is a finding at its place.
 */
public final class OthersReader {
    private static final int MOST_CHARACTERS = 1_000_000;

    private final Language language;
    private final Page page;
    private final Account.Builder account;
    private final List<Remark> remarks = new ArrayList<>();
    private final Facts facts = new Facts();
    private String title = "";
    private String designer = "";

    private OthersReader(String text, Language language) {
        this.language = language;
        this.page = new Page(text.length() > MOST_CHARACTERS ? text.substring(0, MOST_CHARACTERS) : text, language);
        this.account = new Account.Builder(page);
        if (text.length() > MOST_CHARACTERS) {
            remarks.add(new Remark(Remark.Kind.REFUSED, page.lines().size(), 1, "", "shorterText", ""));
        }
    }

    /** Whether the program knows how others write in this language. */
    public static boolean reads(Language language) {
        return language.tag().equals("en");
    }

    /**
     * Reads a text.
     *
     * @param terms the answer to the question which terms it is in; empty if nobody has asked yet. What the text says itself
     *     goes before it
     * @param sides the stitches of each side in the base round, where whoever asks knows them; a text that tells them itself
     *     is held to what it tells
     */
    public static OthersReading read(
            String text, Language language, Optional<Terms> terms, Optional<PerSide<Integer>> sides) {
        return new OthersReader(text, language).read(terms, sides);
    }

    private OthersReading read(Optional<Terms> answer, Optional<PerSide<Integer>> sides) {
        TermsFinder finder = new TermsFinder(language);
        Optional<Terms> terms = finder.find(page).or(() -> answer);
        if (terms.isEmpty()) {
            return askTerms();
        }
        int titleLine = takeTitle();
        Lexicon words = Lexicon.of(language, terms);
        List<Integer> yarnLines = new ArrayList<>();
        Yarns yarns = Yarns.of(linesBeforeRounds(words), yarnLines, language).orNamedIn(page, words, language);
        Abbreviations abbreviations = abbreviations(Yarns.lettersOfTitles(page, yarns.in(words)), titleLine);
        Lexicon lexicon = abbreviations.lexicon();
        abbreviations.usual().ifPresent(stitch -> facts.usual = stitch);
        List<Chunk> chunks = new Chunks(page, new Parts(language), lexicon, account, language).cut(titleLine);
        finder.saidOn().forEach(line -> account.atLeast(line, LineKind.TERMS));
        RoundsReader rounds = new RoundsReader(lexicon, facts, account, remarks, new TalkReader(language));
        ChunkReader reader = new ChunkReader(abbreviations, facts, account, remarks, rounds, language);
        reader.yarns(yarnLines);
        reader.read(chunks);
        rounds.close();
        if (rounds.rounds().isEmpty() && remarks.isEmpty()) {
            int last = page.lines().size();
            remarks.add(new Remark(Remark.Kind.REFUSED, last, 1, "", "firstRound", ""));
        }
        PatternBuilder builder = new PatternBuilder(facts, yarns, sides, remarks);
        if (remarks.isEmpty()) {
            builder.build(rounds.rounds());
        }
        boolean understood =
                remarks.stream().allMatch(remark -> remark.kind() == Remark.Kind.FINDING) && builder.isBuilt();
        Optional<Instructions> pattern =
                understood ? Optional.of(builder.tree(title, designer, terms.get())) : Optional.empty();
        return reading(pattern, builder.bases());
    }

    private List<Page.Line> linesBeforeRounds(Lexicon words) {
        List<Page.Line> before = new ArrayList<>();
        for (Page.Line line : page.lines()) {
            if (RoundTitle.begins(new Cursor(words.read(line.tokens())))) {
                break;
            }
            before.add(line);
        }
        return before;
    }

    private OthersReading reading(Optional<Instructions> pattern, List<PerSide<Integer>> bases) {
        remarks.forEach(remark -> {
            if (remark.kind() != Remark.Kind.FINDING) {
                account.set(remark.line(), LineKind.REFUSED);
            }
        });
        remarks.sort(Comparator.comparingInt(Remark::line).thenComparingInt(Remark::column));
        return new OthersReading(account.build(), remarks, pattern, bases);
    }

    /** Asks at the first stitch whose name means different things in the two terms. */
    private OthersReading askTerms() {
        Lexicon uk = Lexicon.of(language, Optional.of(Terms.UK));
        for (Page.Line line : page.lines()) {
            for (Lexeme word : uk.read(line.tokens())) {
                if (word.is(Concept.SHORT) || word.is(Concept.TALL) || word.is(Concept.STITCH_NAME)) {
                    remarks.add(Remark.of(Remark.Kind.QUESTION, word, "terms", word.text()));
                    return reading(Optional.empty(), List.of());
                }
            }
        }
        remarks.add(new Remark(Remark.Kind.REFUSED, page.lines().size(), 1, "", "firstRound", ""));
        return reading(Optional.empty(), List.of());
    }

    /** The first line that says anything is the title, unless it says more than that; the line after it may name the designer. */
    private int takeTitle() {
        for (Page.Line line : page.lines()) {
            if (!line.isBlank() && !line.isRule()) {
                boolean more = line.text().contains(":")
                        || line.text().contains("=")
                        || RoundTitle.begins(new Cursor(
                                Lexicon.of(language, Optional.empty()).read(line.tokens())));
                if (more && !line.hashes()) {
                    return 0;
                }
                title = line.text().strip().replaceAll("\\s+", " ");
                takeDesigner(line.number());
                return line.number();
            }
        }
        return 0;
    }

    private void takeDesigner(int titleLine) {
        for (Page.Line line :
                page.lines().subList(titleLine, Math.min(page.lines().size(), titleLine + 4))) {
            String words = line.text().strip();
            String by = words.replaceFirst("(?i)^(?:" + WordSet.alternatives(language, "BY_DESIGNER") + "):? +", "");
            if (!by.equals(words) && by.length() < 80) {
                designer = by;
                account.atLeast(line.number(), LineKind.TITLE);
                return;
            }
        }
    }

    private Abbreviations abbreviations(Lexicon words, int titleLine) {
        Abbreviations abbreviations = new Abbreviations(words, language);
        new AbbreviationLines(page, new Parts(language), words, titleLine).each(abbreviations);
        return abbreviations;
    }
}
