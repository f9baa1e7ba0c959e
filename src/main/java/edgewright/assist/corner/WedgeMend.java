package edgewright.assist.corner;

import edgewright.assist.picture.PictureAnswer.Stitched;
import edgewright.assist.picture.PictureStitcher;
import edgewright.assist.picture.PictureTask;
import edgewright.assist.picture.Wanted;
import edgewright.assist.picture.WantedPicture;
import edgewright.assist.symmetry.Tile;
import edgewright.chart.Chart;
import edgewright.chart.Place;
import edgewright.chart.Rules;
import edgewright.chart.Section;
import edgewright.chart.Stitch;
import java.util.HashMap;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * Mends the wedge of a corner, which is both corner sections: of every fabric column the stitches that cost least, by the very
 * programme that makes stitches of a picture. A cell that shows another yarn than the tile carried on would costs 3; a neighbour
 * of its own yarn that it has lost at the corner costs 2, standing alone 4; taking from a corner chain the one neighbour of its
 * yarn 3. Motifs that the diagonal cuts can be cleared away in the same manner. What the neighbours show is what they showed before, so it is done twice, and only kept while the corner looks better.
 */
final class WedgeMend {
    private static final int OTHER_YARN = 3;
    private static final int LOST_NEIGHBOUR = 2;
    private static final int ALONE = 4;
    private static final int CORNER_CHAIN = 3;
    private static final int PASSES = 2;

    private static final int CLEARED = 5;
    private static final int KEPT = 2;

    private final Rules rules;
    private final Motifs motifs;

    /** What a cell is to show. */
    private interface Wish {
        Wanted of(int arm, int round, int away);
    }

    WedgeMend(Rules rules, Motifs motifs) {
        this.rules = rules;
        this.motifs = motifs;
    }

    /** The corner without the motifs that the diagonal cuts: their cells show another yarn where they can. */
    Arms cleared(Arms arms) {
        return worked(arms, (arm, r, away) -> {
            int shown = arms.shown(arm, r, away);
            if (!motifs.isCut(arms, arm, r, away)) {
                return Wanted.of(arms.tile().id(shown)).withWeight(KEPT);
            }
            int own = arms.tile().yarn(r);
            int above = r < arms.tile().rounds() ? arms.tile().yarn(r + 1) : own;
            return Wanted.of(arms.tile().id(own == shown ? above : own)).withWeight(CLEARED);
        });
    }

    /** The corner, mended if that makes it better. */
    Arms mended(Arms arms) {
        Arms best = arms;
        double score = CornerSight.of(arms, motifs).score();
        for (int pass = 0; pass < PASSES; pass++) {
            Arms before = best;
            Arms next = worked(before, (arm, r, away) -> wanted(before, arm, r, away));
            double better = CornerSight.of(next, motifs).score();
            if (better <= score) {
                return best;
            }
            best = next;
            score = better;
        }
        return best;
    }

    private Arms worked(Arms arms, Wish wish) {
        Stitch[][][] mended = new Stitch[2][arms.tile().rounds() + 1][];
        for (int arm = Arms.FROM; arm <= Arms.TO; arm++) {
            int columns = arms.sectionLength(arm, arms.tile().rounds());
            Stitched answer = columns > Chart.MOST_STITCHES ? null : stitched(arms, arm, columns, wish);
            for (int r = 1; r <= arms.tile().rounds(); r++) {
                Stitch[] row = new Stitch[arms.reach(r) + 1];
                for (int away = 1; away < row.length; away++) {
                    int column = arms.sectionLength(arm, r) - away + 1;
                    row[away] = answer == null || column < 1
                            ? arms.stitch(arm, r, away)
                            : answer.rounds().get(r - 1).at(column);
                }
                mended[arm][r] = row;
            }
        }
        return arms.with(mended);
    }

    /** The columns of an arm as a picture; the first is the one beside the repeat, the last stands in the last round alone. */
    private Stitched stitched(Arms arms, int arm, int columns, Wish wish) {
        int rounds = arms.tile().rounds();
        Map<Place, Stitch> locked = new HashMap<>();
        Wanted[][] wanted = new Wanted[rounds + 1][columns + 1];
        for (int r = 1; r <= rounds; r++) {
            for (int column = 1; column <= columns; column++) {
                int away = arms.sectionLength(arm, r) - column + 1;
                Place place = new Place(r, Section.REPEAT, column);
                wanted[r][column] = away < 1 ? Wanted.NEVER_MIND : wish.of(arm, r, away);
                Stitch lock = away < 1 ? Stitch.BACK_LOOP : lock(arms.stitch(arm, r, away), away);
                if (lock != null) {
                    locked.put(place, lock);
                }
            }
        }
        PictureTask task = new PictureTask(
                WantedPicture.of(rounds, columns, place -> wanted[place.round()][place.place()]),
                IntStream.rangeClosed(1, rounds)
                        .mapToObj(r -> arms.tile().id(arms.tile().yarn(r)))
                        .toList(),
                rules,
                locked);
        return PictureStitcher.nearest(task) instanceof Stitched answer ? answer : null;
    }

    /** The stitch that must stay, or null: what is neither back-loop nor long, and what stands at a corner chain. */
    private Stitch lock(Stitch stitch, int away) {
        boolean free = stitch == Stitch.BACK_LOOP || stitch == Stitch.LONG;
        boolean atChain = away == 1 || (away == 2 && !rules.landOnCornerChain());
        return free && !atChain ? null : stitch;
    }

    private Wanted wanted(Arms arms, int arm, int r, int away) {
        Tile tile = arms.tile();
        int own = tile.yarn(r);
        int above = r < tile.rounds() ? tile.yarn(r + 1) : own;
        int difference = cost(arms, arm, r, away, above) - cost(arms, arm, r, away, own);
        if (own == above || difference == 0) {
            return Wanted.NEVER_MIND;
        }
        return Wanted.of(tile.id(difference > 0 ? own : above)).withWeight(Math.abs(difference));
    }

    private static int cost(Arms arms, int arm, int r, int away, int yarn) {
        int column = arms.column(arm, r, away);
        boolean carried = arms.tile().shown(r, column) == yarn;
        int joined = arms.joined(arm, r, away, yarn);
        int inTile = arms.tile().joined(r, column);
        int cost = carried ? LOST_NEIGHBOUR * Math.max(0, inTile - joined) : OTHER_YARN;
        cost += joined == 0 && (inTile > 0 || !carried) ? ALONE : 0;
        return cost + (away == 1 && isAlone(arms, arm, r, yarn) ? CORNER_CHAIN : 0);
    }

    /** Whether one of the corner chains beside the cell has no neighbour of its yarn if the cell is not of it. */
    private static boolean isAlone(Arms arms, int arm, int r, int yarn) {
        for (int chain = Math.max(1, r - 1); chain <= r; chain++) {
            int chains = arms.tile().yarn(chain);
            int now = arms.joined(arm, chain, 0, chains) - (arms.shown(arm, r, 1) == chains ? 1 : 0);
            if (yarn != chains && now == 0) {
                return true;
            }
        }
        return false;
    }
}
