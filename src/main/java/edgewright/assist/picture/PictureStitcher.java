package edgewright.assist.picture;

import edgewright.assist.picture.PictureAnswer.LocksClash;
import edgewright.assist.picture.PictureAnswer.Stitched;
import edgewright.chart.Place;
import edgewright.chart.Section;
import edgewright.chart.Stitch;
import edgewright.chart.Stitches;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;

/**
 * Finds the stitches whose fabric comes nearest to a picture.
 *
 * <p>Law: a cell shows the yarn of its own round or, where the stitch above it is long, that of the round above. Long stitches do
 * not touch across fabric columns, so each column is a problem of its own; {@link ColumnSearch} solves it exactly under all rules
 * of {@link edgewright.check.ColumnLaw} whose findings are errors.
 *
 * <p>What {@link #nearest} guarantees, in this order: as few cells as possible miss what they must show; the weight of all misses
 * is the least possible; of all such charts none has fewer long stitches; columns of which the same is asked are worked alike, so
 * a picture that is the same in a mirror, or shifted along the side, comes out so. Where choices are left, loose runs are broken
 * if that costs nothing, but not as many as possible for certain ({@link FreeBreaks}).
 *
 * <p>What {@link #withoutLooseRuns} guarantees: no run of long stitches is longer than the rules allow, counted around the ends
 * of the repeat; and if the answer says so, the same first three at the least cost under that condition. Columns of which the
 * same is asked may differ.
 */
public final class PictureStitcher {
    private PictureStitcher() {}

    /** The stitches that come nearest, whatever runs they make. The time is linear in the cells. */
    public static PictureAnswer nearest(PictureTask task) {
        Columns columns = Columns.of(task, true);
        List<Integer> clashing = columns.solve();
        if (!clashing.isEmpty()) {
            return new LocksClash(clashing);
        }
        new FreeBreaks(columns).run();
        return stitched(task, columns, true);
    }

    /**
     * The stitches that come nearest without a loose run. It looks at a fixed number of possibilities at most; the answer says
     * whether these were enough to be certain.
     *
     * @param cancelled asked again and again; once it answers true the best so far is the answer
     */
    public static PictureAnswer withoutLooseRuns(PictureTask task, BooleanSupplier cancelled) {
        Columns columns = Columns.of(task, false);
        List<Integer> clashing = columns.solve();
        if (!clashing.isEmpty()) {
            return new LocksClash(clashing);
        }
        Optional<Boolean> least = new NoLooseRuns(columns, cancelled).run();
        return least.isEmpty() ? new LocksClash(List.of()) : stitched(task, columns, least.get());
    }

    private static Stitched stitched(PictureTask task, Columns columns, boolean least) {
        List<Stitches> rounds = new ArrayList<>();
        for (int row = 0; row < columns.rounds(); row++) {
            rounds.add(Stitches.of(columns.letters(row)));
        }
        return new Stitched(task.yarns(), rounds, misses(task, rounds), columns.cost(), least);
    }

    private static List<Miss> misses(PictureTask task, List<Stitches> rounds) {
        List<Miss> misses = new ArrayList<>();
        for (int r = 1; r <= rounds.size(); r++) {
            Stitches above = r < rounds.size() ? rounds.get(r) : null;
            for (int place = 1; place <= task.picture().width(); place++) {
                boolean covered = above != null && above.at(place) == Stitch.LONG;
                String shows = task.yarns().get(covered ? r : r - 1);
                Place cell = new Place(r, Section.REPEAT, place);
                Wanted wanted = task.picture().at(cell);
                if (wanted.isMissedBy(shows)) {
                    misses.add(new Miss(cell, wanted.yarn(), shows));
                }
            }
        }
        return misses;
    }
}
