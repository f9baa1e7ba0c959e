package edgewright.words.read;

import edgewright.words.read.RoundCells.Cell;
import edgewright.words.tree.Group;
import edgewright.words.tree.SideInstructions;
import edgewright.words.tree.SideSize;
import edgewright.words.tree.SideStep;
import edgewright.words.tree.WrittenRound;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Reads one round of a table, cell by cell. */
final class RowReader {
    private final Function<Cell, TokenCursor> cursors;
    private final RoundReader.Known known;

    /**
     * @param cursors places a cursor at the beginning of a cell
     * @param known what the pattern has said before
     */
    RowReader(Function<Cell, TokenCursor> cursors, RoundReader.Known known) {
        this.cursors = cursors;
        this.known = known;
    }

    /** The round of a row. */
    RoundReader.ReadRounds row(RoundCells row, int number, YarnReader yarns) {
        TokenCursor cursor = cursors.apply(row.number());
        boolean isThis = cursor.isNumber() && cursor.grammar().number(cursor.peek()) == number;
        if (!isThis) {
            throw cursor.stopAt(cursor.peek(), Expectation.of("rowNumber", number));
        }
        cursor.next();
        requireEnd(cursor);
        cursor = cursors.apply(row.yarn());
        String yarn = yarns.takeAlone(cursor);
        requireEnd(cursor);
        return said(row, number, yarn);
    }

    /** The round whose number and yarn have been read. */
    RoundReader.ReadRounds said(RoundCells row, int number, String yarn) {
        Optional<SizeReader.Said> size = row.counts().stream().findFirst().flatMap(this::counts);
        return row.runsAcross()
                ? new RoundReader(cursors.apply(row.first()), known)
                        .worked(new TitleReader.Title(number, List.of(yarn)), size)
                : alike(row, number, yarn, size);
    }

    private Optional<SizeReader.Said> counts(Cell cell) {
        TokenCursor cursor = cursors.apply(cell);
        if (isNone(cursor)) {
            return Optional.empty();
        }
        Optional<SizeReader.Said> said = new SizeReader(cursor, false).read();
        if (said.isEmpty()) {
            throw cursor.hasMissedAfter(0) ? cursor.stopped() : cursor.stop("cellCounts");
        }
        cursor.skipPartings();
        requireEnd(cursor);
        return said;
    }

    private RoundReader.ReadRounds alike(RoundCells row, int number, String yarn, Optional<SizeReader.Said> size) {
        List<SideStep> before = steps(row.first());
        Optional<Group> group = group(row.repeat());
        List<SideStep> after = new ArrayList<>();
        int chains = toCorner(row.toCorner(), after);
        if (group.isEmpty() && !after.isEmpty()) {
            throw cursors.apply(row.toCorner()).stop("cellNone");
        }
        if (group.isEmpty() && before.isEmpty()) {
            throw cursors.apply(row.first()).stop("work");
        }
        return new RoundReader.ReadRounds(
                List.of(new WrittenRound.AtCorner(
                        number,
                        yarn,
                        size.map(SizeReader.Said::size).orElse(SideSize.unstated()),
                        group.map(each -> SideInstructions.of(before, each, after))
                                .orElseGet(() -> SideInstructions.of(before)),
                        chains)),
                size.map(SizeReader.Said::counting));
    }

    private List<SideStep> steps(Cell cell) {
        List<SideStep> steps = new ArrayList<>();
        TokenCursor cursor = cursors.apply(cell);
        if (!isNone(cursor)) {
            if (!new WorkReader(cursor).takeSteps(steps)) {
                throw notWorked(cursor, "cellWork");
            }
            requireEnd(cursor);
        }
        return steps;
    }

    private Optional<Group> group(Cell cell) {
        TokenCursor cursor = cursors.apply(cell);
        if (isNone(cursor)) {
            return Optional.empty();
        }
        Optional<Group> group = new StretchReader(cursor, new WorkReader(cursor)).takeRepeat();
        if (group.isEmpty()) {
            throw notWorked(cursor, "cellRepeat");
        }
        requireEnd(cursor);
        return group;
    }

    /** Takes the last steps; answers with the chains of the corner after them. */
    private int toCorner(Cell cell, List<SideStep> steps) {
        TokenCursor cursor = cursors.apply(cell);
        WorkReader work = new WorkReader(cursor, known.chains());
        boolean none = isNone(cursor);
        boolean worked = !none && work.takeSteps(steps);
        if (worked) {
            cursor.between("clauses-next");
        }
        if (!none && work.takeCornerAlone()) {
            requireEnd(cursor);
            return work.chains();
        }
        if (!none && !worked) {
            throw notWorked(cursor, "cellWork");
        }
        requireEnd(cursor);
        return known.chains().orElseThrow(() -> cursor.stop("cellCorner"));
    }

    /** What is missing furthest on; where nothing was begun, what the cell may say. */
    private static ReadingStopped notWorked(TokenCursor cursor, String expected) {
        return cursor.hasMissedAfter(0) ? cursor.stopped() : cursor.stop(expected);
    }

    private static boolean isNone(TokenCursor cursor) {
        int mark = cursor.mark();
        boolean none = cursor.takeWord("none-cell") && cursor.atEnd();
        if (!none) {
            cursor.reset(mark);
        }
        return none;
    }

    private static void requireEnd(TokenCursor cursor) {
        cursor.skipPartings();
        if (!cursor.atEnd()) {
            cursor.miss("cellEnd");
            throw cursor.stopped();
        }
    }
}
