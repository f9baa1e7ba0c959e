package edgewright.assist.corner;

import edgewright.assist.symmetry.Tile;
import edgewright.chart.Stitch;
import java.util.Arrays;

/**
 * The two arms of a corner as stitches, by round and by how far from the corner chain they stand: 1 is the first or last stitch of
 * a side, 0 the corner chain itself. In an arm a fabric column goes up by one round and away by one cell.
 *
 * <p>Each round is known up to {@link #reach}: the corner section and a little of the repeat, so that what meets there is seen.
 */
final class Arms {
    /** So many cells of the repeat are looked at beside a corner section. */
    private static final int MARGIN = 2;

    static final int FROM = 0;
    static final int TO = 1;

    private final Tile tile;
    private final Cut cut;
    private final Stitch[][][] stitches;

    /** The number of the yarn that shows, by arm, round and cell. */
    private final int[][][] shown;

    private Arms(Tile tile, Cut cut, Stitch[][][] stitches) {
        this.tile = tile;
        this.cut = cut;
        this.stitches = stitches;
        this.shown = new int[2][tile.rounds() + 1][];
        for (int arm = FROM; arm <= TO; arm++) {
            for (int r = tile.rounds(); r >= 1; r--) {
                shown[arm][r] = shownRow(arm, r);
            }
        }
    }

    private int[] shownRow(int arm, int r) {
        int[] row = new int[reach(r) + 1];
        Arrays.fill(row, tile.yarn(r));
        if (r < tile.rounds()) {
            Stitch[] above = stitches[arm][r + 1];
            int covering = tile.yarn(r + 1);
            for (int away = 1; away < row.length; away++) {
                row[away] = above[away + 1].coversStitchBelow() ? covering : row[away];
            }
        }
        return row;
    }

    /** The tile cut at the diagonal. What has nothing to stand or land on there becomes a back-loop stitch. */
    static Arms of(Tile tile, Cut cut, boolean landOnCornerChain) {
        Stitch[][][] stitches = new Stitch[2][tile.rounds() + 1][];
        for (int arm = FROM; arm <= TO; arm++) {
            for (int r = 1; r <= tile.rounds(); r++) {
                Stitch[] row = new Stitch[reach(cut, r) + 1];
                for (int away = 1; away < row.length; away++) {
                    row[away] = tile.stitch(r, column(cut, arm, r, away));
                }
                row[1] = row[1].standsInStitchBelow() ? row[1] : Stitch.BACK_LOOP;
                row[2] = row[2].coversStitchBelow() && !landOnCornerChain ? Stitch.BACK_LOOP : row[2];
                stitches[arm][r] = row;
            }
        }
        return new Arms(tile, cut, stitches);
    }

    /** The same with other stitches in the corner sections. */
    Arms with(Stitch[][][] other) {
        return new Arms(tile, cut, other);
    }

    Tile tile() {
        return tile;
    }

    Cut cut() {
        return cut;
    }

    /** How many cells from the corner chain a round is known. */
    int reach(int round) {
        return reach(cut, round);
    }

    private static int reach(Cut cut, int round) {
        return Math.max(cut.a(), cut.b()) + round + MARGIN;
    }

    /** How many stitches of an arm in a round belong to its corner section. */
    int sectionLength(int arm, int round) {
        return (arm == FROM ? cut.a() : cut.b()) + round;
    }

    /** The column of the tile that was carried to a cell. */
    int column(int arm, int round, int away) {
        return column(cut, arm, round, away);
    }

    private static int column(Cut cut, int arm, int round, int away) {
        return arm == FROM ? cut.fromColumn(round, away) : cut.toColumn(round, away);
    }

    Stitch stitch(int arm, int round, int away) {
        return stitches[arm][round][away];
    }

    /** The number of the yarn that shows in a cell; the corner chain shows that of its round. */
    int shown(int arm, int round, int away) {
        return shown[arm][round][away];
    }

    /** With how many of its four neighbours a cell shows the same yarn, if it shows this one itself; corner chains have but two rings. */
    int joined(int arm, int round, int away, int yarn) {
        if (away == 0) {
            return joinedCorner(round, yarn);
        }
        int sum = shown(arm, round, away - 1) == yarn ? 1 : 0;
        sum += away == reach(round) || shown(arm, round, away + 1) == yarn ? 1 : 0;
        sum += round > 1 && shown(arm, round - 1, away - 1) == yarn ? 1 : 0;
        return sum + (round < tile.rounds() && shown(arm, round + 1, away + 1) == yarn ? 1 : 0);
    }

    private int joinedCorner(int round, int yarn) {
        int sum = 0;
        for (int arm = FROM; arm <= TO; arm++) {
            sum += shown(arm, round, 1) == yarn ? 1 : 0;
            sum += round < tile.rounds() && shown(arm, round + 1, 1) == yarn ? 1 : 0;
        }
        return sum;
    }

    /** The letters of a corner section in working order. */
    String section(int arm, int round) {
        StringBuilder letters = new StringBuilder();
        for (int away = 1; away <= sectionLength(arm, round); away++) {
            letters.append(stitches[arm][round][away].letter());
        }
        return arm == FROM ? letters.toString() : letters.reverse().toString();
    }
}
