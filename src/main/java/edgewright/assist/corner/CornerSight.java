package edgewright.assist.corner;

import edgewright.assist.symmetry.Tile;

/**
 * What the eye sees of a corner, as numbers.
 *
 * @param mirrored of the pairs of cells that lie opposite in the diagonal, not farther from it than the repeat is wide, the part
 *     that shows one yarn; 0 to 1
 * @param runningOn the part of the cells after the corner that show what the tile would show there if it ran on past the corner
 * @param broken how many neighbours of their own yarn the cells of both arms have lost, against the same cells of the endless tile
 * @param crumbs the cells that show their yarn alone and do not in the tile, corner chains included
 * @param cut the cells of motifs of which the diagonal cuts a part off, as far as they still show their yarn
 * @param rounds how many rounds there are
 */
record CornerSight(double mirrored, double runningOn, int broken, int crumbs, int cut, int rounds) {

    static CornerSight of(Arms arms, Motifs motifs) {
        Tile tile = arms.tile();
        long pairs = 0;
        long mirrored = 0;
        long runningOn = 0;
        int broken = 0;
        int crumbs = 0;
        int cut = 0;
        for (int r = 1; r <= tile.rounds(); r++) {
            crumbs += arms.joined(Arms.FROM, r, 0, tile.yarn(r)) == 0 ? 1 : 0;
            int compared = Math.min(tile.width(), arms.reach(r));
            for (int away = 1; away <= compared; away++) {
                int shown = arms.shown(Arms.FROM, r, away);
                pairs++;
                mirrored += shown == arms.shown(Arms.TO, r, away) ? 1 : 0;
                runningOn += shown == tile.shown(r, arms.cut().runOn(r, away)) ? 1 : 0;
            }
            for (int arm = Arms.FROM; arm <= Arms.TO; arm++) {
                for (int away = 1; away < arms.reach(r); away++) {
                    int shown = arms.shown(arm, r, away);
                    int column = arms.column(arm, r, away);
                    int joined = arms.joined(arm, r, away, shown);
                    int inTile = tile.joined(r, column);
                    cut += shown == tile.shown(r, column) && motifs.isCut(arms, arm, r, away) ? 1 : 0;
                    broken += Math.max(0, inTile - joined);
                    crumbs += joined == 0 && inTile > 0 ? 1 : 0;
                }
            }
        }
        return new CornerSight(
                (double) mirrored / pairs, (double) runningOn / pairs, broken, crumbs, cut, tile.rounds());
    }

    /** The score without what only a whole chart tells; see {@link CornerProposals}. */
    double score() {
        return 100 * Math.max(mirrored, runningOn) - (10.0 * broken + 10.0 * crumbs + 3.0 * cut) / rounds;
    }
}
