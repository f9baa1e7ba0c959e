package edgewright.words.read;

import edgewright.words.read.RoundCells.Cell;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Cuts the rounds of a pattern into cells where they stand in a table: in columns parted by bars, as plain text and Markdown
 * have them, or, where there is no room for columns, as a list under the heads of the columns.
 */
final class TableReader {
    private static final String BAR = "|";
    private static final List<String> COLUMNS =
            List.of("column-round", "column-yarn", "column-from", "column-repeat", "column-to", "column-counts");

    private final Grammar grammar;

    TableReader(Grammar grammar) {
        this.grammar = grammar;
    }

    /** Whether these lines are rounds in columns: the first of them has a bar and names no round. */
    boolean isTable(SourceText.Piece piece) {
        Optional<SourceText.Line> first =
                piece.lines().stream().filter(line -> !line.isBlank()).findFirst();
        return first.map(SourceText.Line::tokens)
                .filter(tokens -> grammar.roundBegun(tokens) < 0)
                .filter(tokens -> tokens.stream().anyMatch(token -> token.is(BAR)))
                .isPresent();
    }

    /** The rows of a table, from the first round on; what is no row of this table stops the reading. */
    List<RoundCells> rows(SourceText.Piece piece) {
        List<SourceText.Line> lines =
                piece.lines().stream().filter(line -> !line.isBlank()).toList();
        int rule = 0;
        while (rule < lines.size() && !isRule(lines.get(rule))) {
            rule++;
        }
        if (rule == lines.size() || rule == 0) {
            throw noTable(lines.get(0).tokens().get(0));
        }
        int columns = head(lines.subList(0, rule));
        List<RoundCells> rows = new ArrayList<>();
        for (SourceText.Line line : lines.subList(rule + 1, lines.size())) {
            RoundCells cells = cells(line);
            boolean fits =
                    cells.cells().size() == columns || cells.cells().size() == columns - RoundCells.WORK_COLUMNS + 1;
            RoundCells above = rows.isEmpty() ? null : rows.get(rows.size() - 1);
            boolean goesOn = cells.number().tokens().isEmpty();
            if (!fits) {
                throw stop(
                        line.tokens().get(0), Expectation.of("cells", columns, columns - RoundCells.WORK_COLUMNS + 1));
            }
            if (goesOn
                    && (above == null || above.cells().size() != cells.cells().size())) {
                throw stop(cells.number().end(), Expectation.of("rowNumber", rows.size() + 1));
            }
            if (goesOn) {
                rows.set(rows.size() - 1, above.and(cells));
            } else {
                rows.add(cells);
            }
        }
        return rows;
    }

    /** How many columns there are; their heads may go over several lines. */
    private int head(List<SourceText.Line> lines) {
        RoundCells head = cells(lines.get(0));
        for (SourceText.Line line : lines.subList(1, lines.size())) {
            RoundCells below = cells(line);
            if (below.cells().size() != head.cells().size()) {
                throw noTable(line.tokens().get(0));
            }
            head = head.and(below);
        }
        int columns = head.cells().size();
        for (int i = 0; i < columns && i < COLUMNS.size(); i++) {
            Cell cell = head.cells().get(i);
            int length = grammar.spelled(COLUMNS.get(i)).matches(cell.tokens(), 0);
            if (length == 0 || length < cell.tokens().size()) {
                throw noTable(cell.start());
            }
        }
        if (columns != RoundCells.COLUMNS && columns != RoundCells.WITH_COUNTS) {
            throw noTable(lines.get(0).tokens().get(0));
        }
        return columns;
    }

    private static boolean isRule(SourceText.Line line) {
        return line.text().contains("-")
                && line.tokens().stream()
                        .allMatch(token -> List.of("-", BAR, ":", "+").contains(token.text()));
    }

    /** A line cut at its bars; those of Markdown at both ends part nothing. */
    private static RoundCells cells(SourceText.Line line) {
        List<Cell> cells = new ArrayList<>();
        List<Token> open = new ArrayList<>();
        List<Token> tokens = line.tokens();
        boolean framed = tokens.get(0).is(BAR) && tokens.get(tokens.size() - 1).is(BAR) && line.isMarkdown();
        for (Token token : framed ? tokens.subList(1, tokens.size()) : tokens) {
            if (token.is(BAR)) {
                cells.add(new Cell(open, endAt(token.line(), token.column())));
                open.clear();
            } else {
                open.add(token);
            }
        }
        if (!framed) {
            cells.add(new Cell(open, endAt(line.number(), line.text().length() + 1)));
        }
        return new RoundCells(cells);
    }

    /**
     * A round that is told as a list: its title, then lines under the heads of the columns; empty if it is told otherwise.
     *
     * @param title how many of these tokens name the round and its yarn
     */
    Optional<RoundCells> listed(List<Token> tokens, int title) {
        List<List<Token>> columns = new ArrayList<>();
        COLUMNS.forEach(column -> columns.add(new ArrayList<>()));
        List<Token> words = new ArrayList<>();
        boolean listed = false;
        int column = -1;
        for (int i = title; i < tokens.size(); ) {
            boolean atLineStart =
                    i > 0 && tokens.get(i).line() > tokens.get(i - 1).line();
            int next = atLineStart ? columnAt(tokens, i, words.isEmpty()) : -1;
            if (next > column) {
                listed = true;
                column = next;
                i += grammar.spelled(COLUMNS.get(next)).matches(tokens, i) + 1;
            } else {
                (column < 0 ? words : columns.get(column)).add(tokens.get(i));
                i++;
            }
        }
        boolean isRow = listed && (!words.isEmpty() || column > RoundCells.WORK);
        return isRow ? Optional.of(cells(tokens, words, columns)) : Optional.empty();
    }

    private static RoundCells cells(List<Token> tokens, List<Token> words, List<List<Token>> columns) {
        Token last = tokens.get(tokens.size() - 1);
        Token end = endAt(last.line(), last.column() + last.text().length());
        Cell none = new Cell(List.of(), end);
        Stream<List<Token>> work =
                words.isEmpty() ? columns.subList(RoundCells.WORK, RoundCells.COLUMNS).stream() : Stream.of(words);
        Stream<List<Token>> counts =
                columns.subList(RoundCells.COLUMNS, columns.size()).stream().filter(each -> !each.isEmpty());
        Stream<Cell> said = Stream.concat(work, counts).map(each -> new Cell(each, end));
        return new RoundCells(Stream.concat(Stream.of(none, none), said).toList());
    }

    /** Which column's head and sign stand here; negative if none. What is worked from the corner comes before all words. */
    private int columnAt(List<Token> tokens, int at, boolean orFirst) {
        for (int column = orFirst ? RoundCells.WORK : RoundCells.WORK + 1; column < COLUMNS.size(); column++) {
            int length = grammar.spelled(COLUMNS.get(column)).matches(tokens, at);
            boolean parted = length > 0
                    && at + length < tokens.size()
                    && grammar.listed("entry-signs")
                            .contains(tokens.get(at + length).text());
            if (parted) {
                return column;
            }
        }
        return -1;
    }

    private static Token endAt(int line, int column) {
        return new Token(Token.Kind.SIGN, "", line, column);
    }

    private ReadingStopped noTable(Token token) {
        return stop(
                token,
                Expectation.of(
                        "columns",
                        grammar.commas(COLUMNS.stream()
                                .map(column -> grammar.all(column).get(0))
                                .toList())));
    }

    private ReadingStopped stop(Token token, Expectation expected) {
        return new ReadingStopped(
                new ReadingProblem(token.line(), token.column(), token.text(), grammar.text(expected)));
    }
}
