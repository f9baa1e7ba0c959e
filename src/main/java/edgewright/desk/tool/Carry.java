package edgewright.desk.tool;

import edgewright.chart.Chart;
import edgewright.chart.Edits;
import edgewright.chart.GridContent.SideStitch;
import edgewright.chart.Motif;
import edgewright.chart.MotifSpot;
import edgewright.chart.Place;
import edgewright.chart.Side;
import edgewright.chart.Stitch;
import edgewright.desk.work.Selection;
import edgewright.desk.work.Transaction;
import edgewright.desk.work.Workbench;
import java.util.HashMap;
import java.util.Map;

/**
 * Marked stitches on their way over the chart, from where they are lifted to where they are dropped: one edit, under the
 * mirrors. Carried to the other arm they are turned with it; what goes round a corner goes only out and in.
 */
public final class Carry {
    private final Workbench bench;
    private final Transaction transaction;
    private final Symmetry symmetry;
    private final int repeats;
    private final boolean copied;
    private final Selection from;
    private final Motif motif;
    private MotifSpot spot;
    private Motif.Placed placed;

    /**
     * Lifts what is marked.
     *
     * @param repeats how often the repeat is drawn on each side
     * @param copied whether the marked stitches also stay where they are; else back-loop stitches are left there
     * @param name of the edit, for people
     */
    public Carry(Workbench bench, Selection marked, int repeats, Symmetry symmetry, boolean copied, String name) {
        this.bench = bench;
        this.from = marked;
        this.repeats = repeats;
        this.symmetry = symmetry;
        this.copied = copied;
        motif = marked.motif(bench.chart(), repeats);
        spot = marked.spot();
        placed = motif.placed(bench.chart(), spot, repeats);
        transaction = bench.begin((before, after) -> name);
    }

    /** Whether it can be carried on. */
    public boolean isGoing() {
        return transaction.isGoing();
    }

    /** What it covers where it is now. */
    public Selection covered() {
        return Selection.of(bench.chart(), motif, spot, repeats);
    }

    /** What of it comes onto the chart where it is now, and what does not. */
    public Motif.Placed placed() {
        return placed;
    }

    /**
     * Carries it so that the stitch by which it was taken lies where another one is. The cursor goes there.
     *
     * @param target a stitch that the chart has
     */
    public void to(SideStitch taken, SideStitch target) {
        if (!isGoing()) {
            return;
        }
        MotifSpot begin = from.spot();
        int rounds = target.place().round() - taken.place().round();
        boolean bound = motif.corner().isPresent();
        int columns = bound ? 0 : target.place().fabricColumn() - taken.place().fabricColumn();
        Side side = bound ? begin.side() : turned(begin.side(), taken.side(), target.side());
        spot = new MotifSpot(side, begin.round() + rounds, begin.column() + columns);
        Chart before = transaction.before();
        placed = motif.placed(before, spot, repeats);
        Map<Place, Stitch> stitches = new HashMap<>(symmetry.images(before, placed.stitches()));
        if (!copied) {
            symmetry.images(before, from.places(before, repeats))
                    .forEach(place -> stitches.putIfAbsent(place, Stitch.BACK_LOOP));
        }
        transaction.preview(
                chart -> Edits.setStitches(chart, stitches),
                before.shape(target.side()).placeOf(target.place(), repeats));
    }

    private static Side turned(Side begin, Side taken, Side target) {
        Side side = begin;
        for (Side each = taken; each != target; each = each.next()) {
            side = side.next();
        }
        return side;
    }

    /** Drops it where it is: one edit, or none if nothing has changed. */
    public void drop() {
        transaction.commit();
    }

    /** Puts it back where it was, without a trace. */
    public void leave() {
        transaction.cancel();
    }

    /** Where it was taken from. */
    public Selection from() {
        return from;
    }
}
