package edgewright.desk.work;

import edgewright.chart.Chart;
import edgewright.chart.GridContent.SideStitch;
import edgewright.chart.Motif;
import edgewright.chart.MotifSpot;
import edgewright.chart.Place;
import edgewright.chart.Side;
import edgewright.chart.SidePlace;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What is marked of a border: some rounds, from one fabric column to another in working order, on one side or round one corner.
 * It crosses sections and repeats as it likes.
 *
 * @param side the side on which it begins
 * @param rounds the innermost and the outermost round
 * @param firstColumn the fabric column of that side from which on it is marked; see {@link SidePlace#fabricColumn}
 * @param lastColumn the fabric column up to which it is marked, of the next side if it goes round the corner
 */
public record Selection(Side side, Motif.RoundRun rounds, int firstColumn, int lastColumn, boolean roundCorner) {
    /**
     * From one stitch to another, both included, in any order.
     *
     * @return empty if the two stand on sides that do not meet
     */
    public static Optional<Selection> between(SideStitch one, SideStitch other) {
        if (one.side() == other.side().next()) {
            return between(other, one);
        }
        boolean roundCorner = other.side() == one.side().next();
        if (!roundCorner && other.side() != one.side()) {
            return Optional.empty();
        }
        int first = one.place().fabricColumn();
        int last = other.place().fabricColumn();
        boolean backwards = !roundCorner && last < first;
        return Optional.of(new Selection(
                one.side(),
                new Motif.RoundRun(
                        Math.min(one.place().round(), other.place().round()),
                        Math.max(one.place().round(), other.place().round())),
                backwards ? last : first,
                backwards ? first : last,
                roundCorner));
    }

    /**
     * What a motif covers at a spot.
     *
     * @param repeats how often the repeat is worked on each side
     */
    public static Selection of(Chart chart, Motif motif, MotifSpot spot, int repeats) {
        int last = spot.round() + motif.rounds().size() - 1;
        Motif.RoundRun rounds = new Motif.RoundRun(spot.round(), last);
        if (motif.corner().isEmpty()) {
            return new Selection(spot.side(), rounds, spot.column(), spot.column() + motif.columns() - 1, false);
        }
        int before = motif.corner().getAsInt();
        int after = motif.columns() - 1 - before;
        int end = chart.shape(spot.side()).stitches(last, repeats) - last;
        return new Selection(spot.side(), rounds, end - before + 1, after - last, true);
    }

    /** Where its motif lies. */
    public MotifSpot spot() {
        return new MotifSpot(side, rounds.first(), firstColumn);
    }

    /** Whether this stitch of a side is marked. */
    public boolean contains(SideStitch stitch) {
        int round = stitch.place().round();
        int column = stitch.place().fabricColumn();
        if (round < rounds.first() || round > rounds.last()) {
            return false;
        }
        boolean fromBegin = stitch.side() == side && column >= firstColumn;
        boolean toEnd = stitch.side() == (roundCorner ? side.next() : side) && column <= lastColumn;
        return roundCorner ? fromBegin || toEnd : fromBegin && toEnd;
    }

    /**
     * The marked stitches of a round in working order; none where it has none there.
     *
     * @param repeats how often the repeat is worked on each side
     */
    public List<SideStitch> stitches(Chart chart, int repeats, int round) {
        List<SideStitch> stitches = new ArrayList<>();
        for (Side each : roundCorner ? List.of(side, side.next()) : List.of(side)) {
            int last = chart.shape(each).stitches(round, repeats);
            int from = each == side ? Math.max(1, firstColumn + round) : 1;
            int to = roundCorner && each == side ? last : Math.min(last, lastColumn + round);
            for (int p = from; p <= to; p++) {
                stitches.add(new SideStitch(each, new SidePlace(round, p)));
            }
        }
        return stitches;
    }

    /** The places of the chart that are marked. */
    public Set<Place> places(Chart chart, int repeats) {
        Set<Place> places = new LinkedHashSet<>();
        for (int r = Math.max(1, rounds.first());
                r <= Math.min(rounds.last(), chart.rounds().size());
                r++) {
            for (SideStitch stitch : stitches(chart, repeats, r)) {
                Place place = chart.shape(stitch.side()).placeOf(stitch.place(), repeats);
                if (chart.has(place)) {
                    places.add(place);
                }
            }
        }
        return places;
    }

    /** The marked stitches as a motif. */
    public Motif motif(Chart chart, int repeats) {
        return roundCorner
                ? Motif.roundCorner(chart, side, repeats, rounds, firstColumn, lastColumn)
                : Motif.of(chart, side, repeats, rounds, firstColumn, lastColumn);
    }

    /**
     * The columns on the other side of a corner that lie as far from it as these, or empty if it goes round one itself.
     *
     * @param onwards whether they are carried to the next side, or back to the one before
     */
    public Optional<Selection> carried(Chart chart, int repeats, boolean onwards) {
        if (roundCorner) {
            return Optional.empty();
        }
        Side other = onwards ? side.next() : side.previous();
        // Round 0: a column keeps its number in all rounds.
        int stitches = chart.shape(onwards ? side : other).stitches(0, repeats);
        return Optional.of(new Selection(other, rounds, stitches + 1 - lastColumn, stitches + 1 - firstColumn, false));
    }
}
