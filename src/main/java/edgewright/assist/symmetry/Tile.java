package edgewright.assist.symmetry;

import edgewright.chart.Chart;
import edgewright.chart.Stitch;
import java.util.List;

/**
 * The repeat of a chart as a tile that goes on without an end along the side: rounds from 1, columns any whole number, column 0
 * being the first of the repeat.
 */
public final class Tile {
    private final int rounds;
    private final int width;
    /** By round and column; index 0 of the rounds is unused. */
    private final Stitch[][] stitches;

    /** The yarn of each round, as the place of its id in {@link #ids}. */
    private final int[] yarns;

    private final List<String> ids;
    private final int[][] shown;
    private final int[][] joined;

    /** The tile of a chart that is not ragged. */
    public Tile(Chart chart) {
        this.rounds = chart.rounds().size();
        this.width = chart.shape().w();
        this.ids = chart.rounds().stream().map(round -> round.yarn()).distinct().toList();
        this.stitches = new Stitch[rounds + 1][width];
        this.yarns = new int[rounds + 1];
        for (int r = 1; r <= rounds; r++) {
            yarns[r] = ids.indexOf(chart.round(r).yarn());
            for (int i = 0; i < width; i++) {
                stitches[r][i] = chart.round(r).repeat().at(i + 1);
            }
        }
        this.shown = new int[rounds + 1][width];
        this.joined = new int[rounds + 1][width];
        for (int r = 1; r <= rounds; r++) {
            for (int i = 0; i < width; i++) {
                boolean covered = r < rounds && stitches[r + 1][i].coversStitchBelow();
                shown[r][i] = yarns[covered ? r + 1 : r];
            }
        }
        for (int r = 1; r <= rounds; r++) {
            for (int i = 0; i < width; i++) {
                joined[r][i] = joinedAt(r, i);
            }
        }
    }

    private int joinedAt(int r, int i) {
        int yarn = shown[r][i];
        int sum = shown[r][Math.floorMod(i - 1, width)] == yarn ? 1 : 0;
        sum += shown[r][Math.floorMod(i + 1, width)] == yarn ? 1 : 0;
        sum += r > 1 && shown[r - 1][i] == yarn ? 1 : 0;
        return sum + (r < rounds && shown[r + 1][i] == yarn ? 1 : 0);
    }

    /** How many rounds it has. */
    public int rounds() {
        return rounds;
    }

    /** How many columns it has before it comes again. */
    public int width() {
        return width;
    }

    /** The number of a round's yarn. */
    public int yarn(int round) {
        return yarns[round];
    }

    /** The id of the yarn with this number. */
    public String id(int yarn) {
        return ids.get(yarn);
    }

    /** The stitch in a round and column. */
    public Stitch stitch(int round, int column) {
        return stitches[round][Math.floorMod(column, width)];
    }

    /** The number of the yarn that shows in a cell. */
    public int shown(int round, int column) {
        return shown[round][Math.floorMod(column, width)];
    }

    /** With how many of its four neighbours, over its edges, a cell shows the same yarn. */
    public int joined(int round, int column) {
        return joined[round][Math.floorMod(column, width)];
    }

    /** How many cells of one repeat show their yarn alone: none of their four neighbours shows it. */
    public int crumbs() {
        int crumbs = 0;
        for (int r = 1; r <= rounds; r++) {
            for (int i = 0; i < width; i++) {
                crumbs += joined[r][i] == 0 ? 1 : 0;
            }
        }
        return crumbs;
    }

    /** Whether it is the same in a mirror: there is a column, or a seam of two, on both sides of which it shows the same. */
    public boolean isMirrored() {
        for (int axis = 0; axis < width; axis++) {
            boolean same = true;
            for (int r = 1; r <= rounds && same; r++) {
                for (int i = 0; i < width && same; i++) {
                    same = shown(r, i) == shown(r, axis - i);
                }
            }
            if (same) {
                return true;
            }
        }
        return false;
    }
}
