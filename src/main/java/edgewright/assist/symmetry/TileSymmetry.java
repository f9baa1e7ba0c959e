package edgewright.assist.symmetry;

import edgewright.chart.Chart;
import edgewright.chart.Place;
import edgewright.chart.Section;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * The symmetry of what a repeat shows. Rounds at either end of the chart that show one yarn throughout are a frame and left out; a
 * chart of such rounds alone is looked at whole.
 *
 * @param group the greatest group that it has
 * @param period after how many stitches it shows the same again; it divides the repeat
 * @param nearest the greater group that the fewest cells keep it from, of several the greatest; empty if there is none
 */
public record TileSymmetry(FriezeGroup group, int period, Optional<Breach> nearest) {

    /**
     * What keeps a tile from a group.
     *
     * @param cells the fewest places of the first period that would have to show another yarn, in working order
     */
    public record Breach(FriezeGroup group, List<Place> cells) {
        public Breach {
            cells = List.copyOf(cells);
        }
    }

    /** The symmetry of a chart that is not ragged. */
    public static TileSymmetry of(Chart chart) {
        return new Search(new Tile(chart)).symmetry();
    }

    /** A cell: rounds from 0 within the band, columns from 0 within the period. */
    private record Cell(int row, int column) {}

    /** Looks at one band. */
    private static final class Search {
        private final Tile tile;
        private final int first;
        private final int height;
        private final int period;

        Search(Tile tile) {
            this.tile = tile;
            int low = 1;
            int high = tile.rounds();
            while (low < high && isPlain(low)) {
                low++;
            }
            while (high > low && isPlain(high)) {
                high--;
            }
            boolean allPlain = low == high && isPlain(low);
            this.first = allPlain ? 1 : low;
            this.height = allPlain ? tile.rounds() : high - low + 1;
            this.period = shortestPeriod();
        }

        private boolean isPlain(int round) {
            for (int i = 1; i < tile.width(); i++) {
                if (tile.shown(round, i) != tile.shown(round, 0)) {
                    return false;
                }
            }
            return true;
        }

        private int shortestPeriod() {
            for (int step = 1; step < tile.width(); step++) {
                boolean same = tile.width() % step == 0;
                for (int row = 0; row < height && same; row++) {
                    for (int i = 0; i < tile.width() && same; i++) {
                        same = shown(row, i) == shown(row, i + step);
                    }
                }
                if (same) {
                    return step;
                }
            }
            return tile.width();
        }

        private int shown(int row, int column) {
            return tile.shown(first + row, column);
        }

        TileSymmetry symmetry() {
            FriezeGroup group = FriezeGroup.P1;
            // Each group stands behind those that it contains.
            for (FriezeGroup other : FriezeGroup.values()) {
                if (breach(other).map(breach -> breach.cells().isEmpty()).orElse(false)) {
                    group = other;
                }
            }
            Optional<Breach> nearest = Optional.empty();
            for (FriezeGroup other : group.greater()) {
                Optional<Breach> breach = breach(other);
                if (breach.isPresent()
                        && (nearest.isEmpty()
                                || breach.get().cells().size()
                                        <= nearest.get().cells().size())) {
                    nearest = breach;
                }
            }
            return new TileSymmetry(group, period, nearest);
        }

        /** The least that keeps the band from a group; empty if it cannot have it, since half its period is no stitch. */
        private Optional<Breach> breach(FriezeGroup group) {
            if (group.hasGlide() && period % 2 != 0) {
                return Optional.empty();
            }
            boolean hasAxis = group.hasMirrorAcross() || group.hasHalfTurn();
            Set<Cell> least = null;
            for (int axis = 0; axis < (hasAxis ? period : 1); axis++) {
                Set<Cell> wrong = wrong(group, axis);
                least = least == null || wrong.size() < least.size() ? wrong : least;
            }
            Set<Place> places = new TreeSet<>();
            for (Cell cell : least) {
                places.add(new Place(first + cell.row(), Section.REPEAT, cell.column() + 1));
            }
            return Optional.of(new Breach(group, List.copyOf(places)));
        }

        /** Of the cells that must be alike, those that are not as most of them are; of two as many, the ones farther in stay. */
        private Set<Cell> wrong(FriezeGroup group, int axis) {
            Set<Cell> wrong = new LinkedHashSet<>();
            Set<Cell> seen = new LinkedHashSet<>();
            for (int row = 0; row < height; row++) {
                for (int column = 0; column < period; column++) {
                    Cell cell = new Cell(row, column);
                    if (!seen.contains(cell)) {
                        Set<Cell> alike = alike(group, axis, cell);
                        seen.addAll(alike);
                        wrong.addAll(minority(alike));
                    }
                }
            }
            return wrong;
        }

        private Set<Cell> alike(FriezeGroup group, int axis, Cell cell) {
            int across = Math.floorMod(axis - cell.column(), period);
            int turned = height - 1 - cell.row();
            int half = group.hasGlide() ? period / 2 : 0;
            Set<Cell> alike = new LinkedHashSet<>(List.of(cell));
            if (group.hasMirrorAcross()) {
                alike.add(new Cell(cell.row(), across));
            }
            if (group.hasHalfTurn()) {
                alike.add(new Cell(turned, (across + half) % period));
            }
            if (group.hasMirrorAlong() || group.hasGlide()) {
                alike.add(new Cell(turned, (cell.column() + half) % period));
            }
            return alike;
        }

        private List<Cell> minority(Set<Cell> alike) {
            Map<Integer, Integer> counts = new HashMap<>();
            int most = -1;
            for (Cell cell : alike) {
                counts.merge(shown(cell.row(), cell.column()), 1, Integer::sum);
            }
            for (Cell cell : alike) {
                int yarn = shown(cell.row(), cell.column());
                most = most < 0 || counts.get(yarn) > counts.get(most) ? yarn : most;
            }
            List<Cell> minority = new ArrayList<>();
            for (Cell cell : alike) {
                if (shown(cell.row(), cell.column()) != most) {
                    minority.add(cell);
                }
            }
            return minority;
        }
    }
}
