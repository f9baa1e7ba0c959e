package edgewright.words.read;

import java.util.ArrayList;
import java.util.List;

/**
 * One round of a table as it stands in the text, cut into cells.
 *
 * @param cells the number of the round, its yarn, and what is said in the columns after it; five or six, or where words run
 *     across the row three or four
 */
record RoundCells(List<Cell> cells) {
    /** The columns of a table without counts, and of one with them. */
    static final int COLUMNS = 5;

    static final int WITH_COUNTS = 6;

    /** Where the work begins, and how many columns it has. */
    static final int WORK = 2;

    static final int WORK_COLUMNS = 3;

    RoundCells {
        cells = List.copyOf(cells);
    }

    /**
     * What stands in a cell.
     *
     * @param end a token with no text where it ends, for messages
     */
    record Cell(List<Token> tokens, Token end) {
        Cell {
            tokens = List.copyOf(tokens);
        }

        Cell and(Cell more) {
            List<Token> both = new ArrayList<>(tokens);
            both.addAll(more.tokens);
            return new Cell(both, more.tokens.isEmpty() ? end : more.end);
        }

        /** Where it begins, or would begin. */
        Token start() {
            return tokens.isEmpty() ? end : tokens.get(0);
        }
    }

    /** These cells with those of the line below, which goes on. */
    RoundCells and(RoundCells below) {
        List<Cell> both = new ArrayList<>();
        for (int i = 0; i < cells.size(); i++) {
            both.add(cells.get(i).and(below.cells.get(i)));
        }
        return new RoundCells(both);
    }

    Cell number() {
        return cells.get(0);
    }

    Cell yarn() {
        return cells.get(1);
    }

    /** Whether words run across the columns of the work: in one cell for three, or in the first of three. */
    boolean runsAcross() {
        return cells.size() < COLUMNS
                || (cells.get(WORK + 1).tokens().isEmpty()
                        && cells.get(WORK + 2).tokens().isEmpty());
    }

    /** The words across, or what is worked from the corner. */
    Cell first() {
        return cells.get(WORK);
    }

    Cell repeat() {
        return cells.get(WORK + 1);
    }

    Cell toCorner() {
        return cells.get(WORK + 2);
    }

    /** What is said of the counts, where the table has a column for them. */
    List<Cell> counts() {
        int at = cells.size() < COLUMNS ? WORK + 1 : COLUMNS;
        return cells.subList(Math.min(at, cells.size()), cells.size());
    }
}
