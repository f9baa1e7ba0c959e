package edgewright.assist.corner;

import edgewright.assist.symmetry.Tile;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The motifs of a tile: cells of one yarn that hang together over their edges and are no wider than a repeat. Rounds that show one
 * yarn throughout belong to none; nor does the ground, which is the yarn of most cells, nor a line that runs on.
 */
final class Motifs {
    private final Tile tile;
    /** By round and column of the tile; null where there is no motif. */
    private final Motif[][] motifs;

    /** A cell of the endless tile. */
    private record Cell(int round, int column) {}

    /**
     * One copy of a motif.
     *
     * @param columns where the copy has each cell of the tile
     * @param leastSum the least sum of round and column, and {@code leastDifference} of round less column: what tells which of its
     *     cells comes nearest to a diagonal, since a column goes away from it by one cell a round
     */
    private record Motif(List<Cell> cells, Map<Cell, Integer> columns, int leastSum, int leastDifference) {}

    Motifs(Tile tile) {
        this.tile = tile;
        this.motifs = new Motif[tile.rounds() + 1][tile.width()];
        int ground = ground();
        boolean[][] seen = new boolean[tile.rounds() + 1][tile.width()];
        for (int r = 1; r <= tile.rounds(); r++) {
            for (int i = 0; i < tile.width(); i++) {
                if (!seen[r][i] && !isPlain(r) && tile.shown(r, i) != ground) {
                    Optional<Motif> motif = motif(new Cell(r, i), seen);
                    motif.ifPresent(found ->
                            found.cells().forEach(cell -> motifs[cell.round()][inTile(cell.column())] = found));
                }
            }
        }
    }

    /** The yarn of most cells, rounds of one yarn aside. */
    private int ground() {
        Map<Integer, Integer> cells = new HashMap<>();
        int ground = tile.yarn(1);
        for (int r = 1; r <= tile.rounds(); r++) {
            for (int i = 0; i < tile.width() && !isPlain(r); i++) {
                int yarn = tile.shown(r, i);
                cells.merge(yarn, 1, Integer::sum);
                ground = cells.get(yarn) > cells.getOrDefault(ground, 0) ? yarn : ground;
            }
        }
        return ground;
    }

    private boolean isPlain(int round) {
        for (int i = 1; i < tile.width(); i++) {
            if (tile.shown(round, i) != tile.shown(round, 0)) {
                return false;
            }
        }
        return true;
    }

    private int inTile(int column) {
        return Math.floorMod(column, tile.width());
    }

    /** Empty if it meets its own copy in the next tile, or is wider than a tile. */
    private Optional<Motif> motif(Cell start, boolean[][] seen) {
        List<Cell> cells = new ArrayList<>();
        Map<Cell, Integer> columns = new HashMap<>();
        Deque<Cell> open = new ArrayDeque<>(List.of(start));
        boolean ends = true;
        while (!open.isEmpty()) {
            Cell cell = open.remove();
            Integer known = columns.putIfAbsent(new Cell(cell.round(), inTile(cell.column())), cell.column());
            if (known != null) {
                ends &= known == cell.column();
                continue;
            }
            cells.add(cell);
            seen[cell.round()][inTile(cell.column())] = true;
            joined(cell).forEach(open::add);
        }
        return ends ? narrow(cells, columns) : Optional.empty();
    }

    /** The neighbours of a cell that show its yarn. */
    private List<Cell> joined(Cell cell) {
        List<Cell> around = List.of(
                new Cell(cell.round(), cell.column() - 1),
                new Cell(cell.round(), cell.column() + 1),
                new Cell(cell.round() - 1, cell.column()),
                new Cell(cell.round() + 1, cell.column()));
        return around.stream()
                .filter(next -> next.round() >= 1 && next.round() <= tile.rounds())
                .filter(next -> !isPlain(next.round()) && isJoined(cell, next))
                .toList();
    }

    private Optional<Motif> narrow(List<Cell> cells, Map<Cell, Integer> columns) {
        int first = cells.stream().mapToInt(Cell::column).min().orElseThrow();
        int last = cells.stream().mapToInt(Cell::column).max().orElseThrow();
        if (last - first >= tile.width()) {
            return Optional.empty();
        }
        int sum = cells.stream()
                .mapToInt(cell -> cell.round() + cell.column())
                .min()
                .orElseThrow();
        int difference = cells.stream()
                .mapToInt(cell -> cell.round() - cell.column())
                .min()
                .orElseThrow();
        return Optional.of(new Motif(cells, columns, sum, difference));
    }

    private boolean isJoined(Cell one, Cell two) {
        return tile.shown(one.round(), one.column()) == tile.shown(two.round(), two.column());
    }

    /** Whether a cell of an arm belongs to a motif of which the diagonal cuts a part off. */
    boolean isCut(Arms arms, int arm, int round, int away) {
        int column = arms.column(arm, round, away);
        Motif motif = motifs[round][inTile(column)];
        if (motif == null) {
            return false;
        }
        int moved = column - motif.columns().get(new Cell(round, inTile(column)));
        int direction = arms.cut().direction(arm, round, away);
        int nearest = direction > 0 ? motif.leastSum() + moved : motif.leastDifference() - moved;
        return away - round - direction * column + nearest < 1;
    }
}
