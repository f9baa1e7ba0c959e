package edgewright.assist.corner;

import edgewright.assist.symmetry.Tile;
import edgewright.chart.Chart;
import edgewright.chart.Round;
import edgewright.chart.Stitches;
import edgewright.check.Checker;
import edgewright.check.Finding;
import edgewright.check.Verdict;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.BooleanSupplier;

/**
 * Corners for the repeat of a chart. The tile is carried on to the diagonal in every way: as it runs, for every pair of columns at
 * which the diagonals can cut it; and so that one arm is the mirror image of the other, for every column in which it turns back and
 * every cut. What cannot be worked is dropped, the wedge of the best is mended ({@link WedgeMend}) or cleared of motifs that are cut, and those that look clearly
 * different are the answer, best first.
 *
 * <p>What is maximised is the score of one corner, worked out from what the fabric shows and not from its stitches: 100 times the
 * part of the cells in which both arms agree, less 10 for each line that is broken, 10 for each crumb and 3 for each cell of a motif that is cut, all per round, less 5
 * for each loose run that the chart has more than the one it came from. Arms agree in a cell if it shows the yarn of the cell
 * opposite in the diagonal or, counted apart, if it shows what the tile would show there if it ran on past the corner; the better
 * of the two counts, over cells not farther from the diagonal than the repeat is wide. A line is broken where a cell has fewer
 * neighbours of its yarn than the same cell has in the endless tile. A crumb is a cell that has none, and has some in the tile. A motif
 * is of another yarn than the ground, joined over edges and no wider than the repeat; it is cut if a part of it would lie past the
 * diagonal.
 *
 * <p>A is at most one more than w, and so is B. If there are more ways than can be looked at in a second or so, they are taken in
 * equal steps, and corners of more than 300,000 cells are not mended. Where there are enough, one in
 * four has arms that are no mirror images. Two corners are clearly different if more than one in twelve of the cells that are compared shows another yarn.
 */
public final class CornerProposals {
    /** In cells looked at. */
    private static final long MOST_LOOKED_AT = 6_000_000;

    private static final long MOST_MENDED = 30_000;
    private static final long LARGEST_MENDED = 300_000;
    private static final double LOOSE_RUN = 5;
    private static final int DIFFERENT = 12;
    private static final int SPARE = 4;
    private static final int UNMIRRORED = 4;

    private final Chart chart;
    private final Tile tile;
    private final Motifs motifs;
    private final BooleanSupplier cancelled;
    private final long looseRuns;

    /** A corner with its score. */
    private record Scored(Arms arms, double score, boolean mirrored) {
        static Scored of(Arms arms, Motifs motifs) {
            CornerSight sight = CornerSight.of(arms, motifs);
            return new Scored(arms, sight.score(), sight.mirrored() == 1);
        }
    }

    private CornerProposals(Chart chart, BooleanSupplier cancelled) {
        this.chart = chart;
        this.tile = new Tile(chart);
        this.motifs = new Motifs(tile);
        this.cancelled = cancelled;
        this.looseRuns = looseRuns(Checker.check(chart));
    }

    /**
     * The best corners.
     *
     * @param chart without errors
     * @param most how many are wanted; there are fewer if so many clearly different ones do not exist
     * @param cancelled asked again and again; once it answers true the best so far is the answer
     */
    public static List<CornerProposal> of(Chart chart, int most, BooleanSupplier cancelled) {
        if (Checker.check(chart).hasErrors()) {
            throw new IllegalArgumentException("corners are not worked out for a border with errors");
        }
        return new CornerProposals(chart, cancelled).best(most);
    }

    private List<CornerProposal> best(int most) {
        List<Scored> found = new ArrayList<>(scored(cuts()));
        found.sort(Comparator.comparingDouble(Scored::score).reversed());
        mendBest(found);
        found.sort(Comparator.comparingDouble(Scored::score).reversed());
        // A loose run lowers the score, so some more than wanted are looked at before the best are told.
        Picks picks = new Picks();
        picks.take(found, most + SPARE, most - most / UNMIRRORED);
        picks.take(found, most + SPARE, most + SPARE);
        picks.proposals.sort(Comparator.comparingDouble(CornerProposal::score).reversed());
        return List.copyOf(picks.proposals.subList(0, Math.min(most, picks.proposals.size())));
    }

    /** What is picked, best first: no two that look alike. */
    private final class Picks {
        private final List<CornerProposal> proposals = new ArrayList<>();
        private final List<Arms> taken = new ArrayList<>();
        private final Set<List<Stitches>> sections = new HashSet<>();
        private int mirrored;

        /** Picks until there are so many, or so many of them with both arms mirror images. */
        void take(List<Scored> found, int most, int mostMirrored) {
            for (Scored scored : found) {
                boolean isMirrored = scored.mirrored();
                if (proposals.size() < most
                        && (!isMirrored || mirrored < mostMirrored)
                        && taken.stream().allMatch(other -> isDifferent(scored.arms(), other))
                        && take(scored)) {
                    mirrored += isMirrored ? 1 : 0;
                }
            }
        }

        private boolean take(Scored scored) {
            Chart made = made(scored.arms());
            Verdict verdict = Checker.check(made);
            if (verdict.hasErrors() || !sections.add(sections(made))) {
                return false;
            }
            double less = LOOSE_RUN * Math.max(0, looseRuns(verdict) - looseRuns);
            Cut cut = scored.arms().cut();
            double score = Math.round(100 * (scored.score() - less)) / 100.0;
            taken.add(scored.arms());
            return proposals.add(new CornerProposal(made, cut.kind(), cut.shift(), score));
        }
    }

    private List<Scored> scored(List<Cut> cuts) {
        List<Scored> scored = new ArrayList<>();
        for (Cut cut : cuts) {
            if (cancelled.getAsBoolean() && !scored.isEmpty()) {
                break;
            }
            Arms arms = Arms.of(tile, cut, chart.rules().landOnCornerChain());
            scored.add(Scored.of(arms, motifs));
        }
        return scored;
    }

    /** Mends the best, as many as there is time for, and adds each of them without the motifs that are cut. */
    private void mendBest(List<Scored> found) {
        WedgeMend mend = new WedgeMend(chart.rules(), motifs);
        List<Scored> cleared = new ArrayList<>();
        long left = MOST_MENDED;
        for (int i = 0; i < found.size() && left > 0 && !cancelled.getAsBoolean(); i++) {
            Arms arms = found.get(i).arms();
            if (cells(arms.cut()) > LARGEST_MENDED) {
                break;
            }
            found.set(i, Scored.of(mend.mended(arms), motifs));
            cleared.add(Scored.of(mend.cleared(arms), motifs));
            left -= cells(arms.cut());
        }
        found.addAll(cleared);
    }

    private List<Cut> cuts() {
        int w = tile.width();
        int step = 1;
        while (ways(w, step) * cells(new Cut(CornerKind.TURNING, w / 2, w / 2, 0)) > MOST_LOOKED_AT && step < w) {
            step++;
        }
        List<Cut> cuts = new ArrayList<>();
        for (int sum = 0; sum < w; sum += step) {
            for (int shift = 0; shift < w; shift += step) {
                cuts.add(new Cut(CornerKind.TURNING, (sum + 1) / 2, sum / 2, shift));
            }
        }
        for (int section = 0; section < w; section += step) {
            for (int shift = 0; shift < w; shift += step) {
                for (int odd = 0; odd <= 1; odd++) {
                    cuts.add(new Cut(CornerKind.MIRROR_FROM, section, section + odd, shift));
                    cuts.add(new Cut(CornerKind.MIRROR_TO, section + odd, section, shift));
                }
            }
        }
        return cuts;
    }

    private static long ways(int w, int step) {
        long steps = (w + step - 1L) / step;
        return 5 * steps * steps;
    }

    private long cells(Cut cut) {
        return (long) tile.rounds() * (cut.a() + cut.b() + tile.rounds() + 4);
    }

    private boolean isDifferent(Arms one, Arms two) {
        long compared = 0;
        long different = 0;
        for (int r = 1; r <= tile.rounds(); r++) {
            int reach = Math.min(tile.width(), Math.min(one.reach(r), two.reach(r)));
            for (int arm = Arms.FROM; arm <= Arms.TO; arm++) {
                for (int away = 1; away <= reach; away++) {
                    compared++;
                    different += one.shown(arm, r, away) == two.shown(arm, r, away) ? 0 : 1;
                }
            }
        }
        return different * DIFFERENT > compared;
    }

    private Chart made(Arms arms) {
        List<Round> rounds = new ArrayList<>();
        for (int r = 1; r <= tile.rounds(); r++) {
            Round round = chart.round(r);
            rounds.add(new Round(
                    round.yarn(),
                    Stitches.of(arms.section(Arms.FROM, r)),
                    round.repeat().rotated(arms.cut().shift()),
                    Stitches.of(arms.section(Arms.TO, r)),
                    round.extras()));
        }
        return chart.withRounds(rounds);
    }

    private static List<Stitches> sections(Chart made) {
        List<Stitches> sections = new ArrayList<>();
        for (Round round : made.rounds()) {
            sections.add(round.fromCorner());
            sections.add(round.toCorner());
        }
        return sections;
    }

    private static long looseRuns(Verdict verdict) {
        return verdict.findings().stream()
                .map(Finding::rule)
                .filter("loose-run"::equals)
                .count();
    }
}
