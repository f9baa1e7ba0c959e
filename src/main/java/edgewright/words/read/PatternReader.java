package edgewright.words.read;

import edgewright.chart.Counting;
import edgewright.chart.HookHand;
import edgewright.chart.Terms;
import edgewright.texts.Language;
import edgewright.words.page.PatternPart;
import edgewright.words.terms.TradeTerms;
import edgewright.words.tree.BaseRound;
import edgewright.words.tree.Instructions;
import edgewright.words.tree.PatternYarn;
import edgewright.words.tree.StartMarkers;
import edgewright.words.tree.WrittenRound;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;

/**
 * Reads a pattern back into the tree: what the writer writes, and what a designer types by hand in the same conventions.
 *
 * <p>Before the rounds it takes title, designer, terms, yarns, the designer's notes and the base round, and passes over what
 * is for people only. In the rounds it understands every word, or stops and says where; it never guesses. The terms at the
 * head decide what the abbreviations mean; without terms nothing is read.
 *
 * <p>It knows nothing of the writer but the tree, the names of the stitches, and the grammar.
 */
public final class PatternReader {
    private static final Set<PatternPart.Kind> AT_THE_HEAD =
            EnumSet.of(PatternPart.Kind.HEADING, PatternPart.Kind.TERMS);
    private static final Set<PatternPart.Kind> FURTHER_DOWN = EnumSet.of(
            PatternPart.Kind.NEEDS, PatternPart.Kind.NOTES, PatternPart.Kind.ABBREVIATIONS, PatternPart.Kind.SET_UP);

    private final Language language;
    private final Grammar grammar;
    private final SourceText text;
    private final Preamble preamble;
    private final TableReader tables;
    private final List<ReadingProblem> problems = new ArrayList<>();

    private String designer = "";
    private boolean draft;
    private HookHand hand = HookHand.RIGHT;
    private final List<String> notes = new ArrayList<>();
    private final List<PatternYarn> yarns = new ArrayList<>();
    private Optional<Terms> terms = Optional.empty();
    private BaseRound base = BaseRound.UNSTATED;
    private Optional<Counting> counting = Optional.empty();
    /** How many numbers each count has; 0 until one is read. */
    private int sizes;

    private final MarkerReader markers = new MarkerReader();
    /** Where the last sentences on markers begin. */
    private Optional<Token> marked = Optional.empty();

    /** The rounds that could be read; all of them, one after the other, where there is no problem. */
    private final SortedMap<Integer, WrittenRound> rounds = new TreeMap<>();
    /** The number that the next round must have. */
    private int next = 1;

    private final BooleanSupplier cancelled;

    private PatternReader(String text, Language language, BooleanSupplier cancelled) {
        this.language = language;
        this.grammar = Grammar.of(language);
        this.preamble = Preamble.of(language);
        this.tables = new TableReader(grammar);
        this.text = new SourceText(text, language);
        this.cancelled = cancelled;
    }

    /** Reads a whole pattern in this language, or says of each round where it cannot be read. */
    public static ReadingResult read(String text, Language language) {
        return read(text, language, () -> false);
    }

    /**
     * Reads a whole pattern likewise, unless it is no longer wanted.
     *
     * @param cancelled asked before each round; once it answers true the reading ends with a {@link CancellationException}
     */
    public static ReadingResult read(String text, Language language, BooleanSupplier cancelled) {
        return new PatternReader(text, language, cancelled).read();
    }

    private ReadingResult read() {
        for (SourceText.Piece piece : text.pieces()) {
            switch (piece.kind()) {
                case HEADING -> readHeading(piece);
                case NEEDS -> piece.paragraphs().forEach(this::readYarn);
                case DESIGNER_NOTES -> piece.paragraphs().forEach(paragraph -> notes.add(paragraph.words()));
                default -> {} // For people, or read below, when the terms are known.
            }
        }
        readTerms();
        if (terms.isEmpty()) {
            problems.add(0, problem(text.end(), "terms"));
            return new ReadingResult.Refused(problems);
        }
        return readRounds(grammar.in(terms.get()));
    }

    /** What stands in the words of the terms: the base round, the rounds and the back layer. */
    private ReadingResult readRounds(Vocabulary words) {
        text.pieces().forEach(piece -> readBase(piece, words));
        if (problems.isEmpty() && markers.isOneSided()) {
            problems.add(problem(marked.orElseThrow(), "bothMarkers"));
        }
        YarnReader yarnReader = new YarnReader(grammar, yarns);
        for (SourceText.Piece piece : text.pieces()) {
            if (piece.kind() == PatternPart.Kind.ROUNDS) {
                readRounds(piece, words, yarnReader);
            }
        }
        BackReader back = new BackReader();
        text.pieces().forEach(piece -> readBack(piece, words, back));
        if (rounds.isEmpty() && problems.isEmpty()) {
            problems.add(problem(text.end(), "firstRound"));
        }
        if (!problems.isEmpty()) {
            return new ReadingResult.Refused(problems);
        }
        return new ReadingResult.Understood(new Instructions(
                text.title(),
                designer,
                notes,
                draft,
                terms.get(),
                counting.orElse(Counting.STITCHES),
                hand,
                yarnReader.yarns(),
                base,
                markers.markers(),
                List.copyOf(rounds.values()),
                back.back()));
    }

    private void readHeading(SourceText.Piece piece) {
        boolean second = true;
        for (SourceText.Paragraph paragraph : piece.paragraphs()) {
            Optional<String> by = preamble.designer(paragraph.words(), second);
            designer = by.orElse(designer);
            draft |= preamble.draft(paragraph.words());
            hand = preamble.leftHand(paragraph.words()) ? HookHand.LEFT : hand;
            if (by.isEmpty()) {
                readYarn(paragraph);
            }
            second = false;
        }
    }

    /** The terms stand at the head. Only where they do not, they may stand further down, but before the rounds. */
    private void readTerms() {
        for (Set<PatternPart.Kind> where : List.of(AT_THE_HEAD, FURTHER_DOWN)) {
            if (terms.isEmpty()) {
                text.pieces().stream()
                        .filter(piece -> where.contains(piece.kind()))
                        .flatMap(piece -> piece.lines().stream())
                        .forEach(this::readTerms);
            }
        }
    }

    private void readYarn(SourceText.Paragraph paragraph) {
        preamble.yarn(paragraph.words()).ifPresent(yarn -> {
            if (yarns.stream().anyMatch(other -> other.id().equals(yarn.id()))) {
                problems.add(problem(paragraph.tokens().get(1), "otherYarn"));
            } else {
                yarns.add(yarn);
            }
        });
    }

    private void readTerms(SourceText.Line line) {
        if (preamble.designer(line.words(), false).isPresent()) {
            return;
        }
        for (Preamble.Named named : preamble.terms(line.text().replace(Language.NO_BREAK, ' '))) {
            if (terms.isEmpty()) {
                terms = Optional.of(named.terms());
            } else if (terms.get() != named.terms()) {
                String before = TradeTerms.of(language, terms.get()).name();
                String here = line.text().substring(named.column() - 1).split("\\P{L}", 2)[0];
                problems.add(new ReadingProblem(
                        line.number(),
                        line.column(named.column() - 1),
                        here,
                        grammar.text(Expectation.of("sameTerms", before))));
            }
        }
    }

    private void readBase(SourceText.Piece piece, Vocabulary words) {
        if (piece.kind() != PatternPart.Kind.SET_UP && piece.kind() != PatternPart.Kind.HEADING) {
            return;
        }
        for (SourceText.Paragraph block : piece.blocks()) {
            readMarkers(block, words);
            List<Token> tokens = fromBaseRound(block);
            if (tokens.isEmpty()) {
                continue;
            }
            try {
                RoundReader.ReadBase read = new RoundReader(
                                new TokenCursor(tokens, after(tokens), words), RoundReader.Known.NOTHING)
                        .base();
                base = read.round();
                counting = counting.or(read::counting);
                sizes = base.side().counts().size();
            } catch (ReadingStopped stopped) {
                problems.add(stopped.problem());
            }
        }
    }

    /** What is said of a marker begins its line, and goes on to the next marker or a blank line. */
    private void readMarkers(SourceText.Paragraph block, Vocabulary words) {
        List<List<Token>> sentences = new ArrayList<>();
        for (SourceText.Line line : block.lines()) {
            if (MarkerReader.begins(grammar, line.tokens())) {
                sentences.add(new ArrayList<>());
            }
            if (!sentences.isEmpty()) {
                sentences.get(sentences.size() - 1).addAll(line.tokens());
            }
        }
        for (List<Token> sentence : sentences) {
            try {
                markers.read(new TokenCursor(sentence, after(sentence), words));
            } catch (ReadingStopped stopped) {
                problems.add(stopped.problem());
            }
        }
        marked = sentences.isEmpty() ? marked : Optional.of(sentences.get(0).get(0));
    }

    /** What is said of the base round begins its line, and goes on to a marker or a blank line. */
    private List<Token> fromBaseRound(SourceText.Paragraph block) {
        List<Token> tokens = new ArrayList<>();
        for (SourceText.Line line : block.lines()) {
            if (MarkerReader.begins(grammar, line.tokens())) {
                break;
            }
            if (!tokens.isEmpty() || grammar.spelled("base-word").matches(line.tokens(), 0) > 0) {
                tokens.addAll(line.tokens());
            }
        }
        return tokens;
    }

    private void readRounds(SourceText.Piece piece, Vocabulary words, YarnReader yarnReader) {
        if (tables.isTable(piece)) {
            readTable(piece, words, yarnReader);
            return;
        }
        List<Token> open = new ArrayList<>();
        for (SourceText.Line line : piece.lines()) {
            List<Token> tokens = line.tokens();
            if (text.beginsRound(tokens)) {
                readRound(open, words, yarnReader);
                open.clear();
            }
            open.addAll(tokens);
        }
        readRound(open, words, yarnReader);
    }

    private void readRound(List<Token> tokens, Vocabulary words, YarnReader yarnReader) {
        if (tokens.isEmpty()) {
            return;
        }
        TokenCursor cursor = cursor(tokens, words);
        read(() -> {
            TitleReader.Title title = new TitleReader(cursor, yarnReader).read(next);
            Optional<RoundCells> cells =
                    title.rounds() == 1 ? tables.listed(tokens, cursor.mark()) : Optional.<RoundCells>empty();
            return cells.map(each -> row(words).said(each, next, title.yarns().get(0)))
                    .orElseGet(() -> new RoundReader(cursor, known()).worked(title, Optional.empty()));
        });
        // A round that is missing is one problem, not one in every round after it.
        int begun = grammar.roundBegun(tokens);
        next = (begun > 0 ? begun : next) + 1;
    }

    private void readTable(SourceText.Piece piece, Vocabulary words, YarnReader yarnReader) {
        List<RoundCells> rows;
        try {
            rows = tables.rows(piece);
        } catch (ReadingStopped stopped) {
            problems.add(stopped.problem());
            return;
        }
        for (RoundCells each : rows) {
            read(() -> row(words).row(each, next, yarnReader));
            int begun = grammar.number(each.number().start());
            next = (begun > 0 ? begun : next) + 1;
        }
    }

    /** Reads a round or some, and keeps them or why they cannot be read. */
    private void read(Supplier<RoundReader.ReadRounds> reading) {
        if (cancelled.getAsBoolean()) {
            throw new CancellationException();
        }
        try {
            RoundReader.ReadRounds read = reading.get();
            counting = counting.or(read::counting);
            for (WrittenRound round : read.rounds()) {
                sizes = Math.max(sizes, round.side().counts().size());
                rounds.put(round.number(), round);
            }
        } catch (ReadingStopped stopped) {
            problems.add(stopped.problem());
        }
    }

    private RowReader row(Vocabulary words) {
        return new RowReader(cell -> new TokenCursor(cell.tokens(), cell.end(), words, counted()), known());
    }

    private RoundReader.Known known() {
        return new RoundReader.Known(base.cornerChains(), above(), rounds);
    }

    /** What is said of markers; where it cannot be understood, something in its place, so that it is one problem and not many. */
    private Optional<StartMarkers> above() {
        return markers.markers().or(() -> marked.map(token -> MarkerReader.SOME));
    }

    private void readBack(SourceText.Piece piece, Vocabulary words, BackReader reader) {
        if (piece.kind() != PatternPart.Kind.BACK) {
            return;
        }
        for (SourceText.Paragraph block : piece.blocks()) {
            try {
                reader.read(cursor(block.tokens(), words));
                counting = counting.or(reader::counting);
            } catch (ReadingStopped stopped) {
                problems.add(stopped.problem());
            }
        }
    }

    /** At the beginning of these tokens, with all that was said of counts before. */
    private TokenCursor cursor(List<Token> tokens, Vocabulary words) {
        return new TokenCursor(tokens, after(tokens), words, counted());
    }

    private TokenCursor.Counted counted() {
        return new TokenCursor.Counted(counting.orElse(Counting.STITCHES), sizes);
    }

    /** Where these tokens end. */
    private static Token after(List<Token> tokens) {
        Token last = tokens.get(tokens.size() - 1);
        return new Token(
                Token.Kind.SIGN, "", last.line(), last.column() + last.text().length());
    }

    private ReadingProblem problem(Token token, String expected) {
        return new ReadingProblem(token.line(), token.column(), token.text(), grammar.text(Expectation.of(expected)));
    }
}
