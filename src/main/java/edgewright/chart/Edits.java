package edgewright.chart;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;
import java.util.function.UnaryOperator;

/**
 * The edits of a chart, each from chart to chart. A round that an edit does not change stays the very same object.
 *
 * <p>Rounds and places count from 1. Every edit refuses a place, a round or a size that the chart does not have or cannot
 * take with an {@link IllegalArgumentException}, and so leaves no half-done chart behind.
 */
public final class Edits {
    private Edits() {}

    /** Works one stitch at all these places. */
    public static Chart setStitches(Chart chart, Collection<Place> places, Stitch stitch) {
        List<Round> rounds = new ArrayList<>(chart.rounds());
        for (Place place : places) {
            if (!chart.has(place)) {
                throw new IllegalArgumentException("the chart has no stitch at " + place);
            }
            Round round = rounds.get(place.round() - 1);
            Stitches changed = round.section(place.section()).with(place.place(), stitch);
            rounds.set(place.round() - 1, round.with(place.section(), changed));
        }
        return chart.withRounds(rounds);
    }

    /** Works the stitch that goes with each place. */
    public static Chart setStitches(Chart chart, Map<Place, Stitch> stitches) {
        Chart changed = chart;
        for (Stitch stitch : Stitch.values()) {
            List<Place> places = stitches.entrySet().stream()
                    .filter(e -> e.getValue() == stitch)
                    .map(Map.Entry::getKey)
                    .toList();
            changed = setStitches(changed, places, stitch);
        }
        return changed;
    }

    /** Works a round in another yarn of the chart. */
    public static Chart changeYarn(Chart chart, int round, String yarn) {
        return chart.withRound(round, chart.round(round).withYarn(yarn));
    }

    /** Replaces the yarn of that id by another, whose id may be new; its rounds are then worked in it. */
    public static Chart replaceYarn(Chart chart, String id, Yarn yarn) {
        List<Yarn> yarns = chart.yarns().stream()
                .map(old -> old.id().equals(id) ? yarn : old)
                .toList();
        List<Round> rounds = chart.rounds().stream()
                .map(round -> round.yarn().equals(id) ? round.withYarn(yarn.id()) : round)
                .toList();
        return new Chart(chart.heading(), chart.corner(), chart.rules(), yarns, rounds, chart.making(), chart.extras());
    }

    /**
     * Puts new back-loop rounds in, the first of which becomes round {@code at}. The rounds from there on move out, and each of
     * their stitches stays in its own fabric column: they get a back-loop stitch more at both corners for each new round.
     *
     * @param at 1 to the number of rounds plus 1
     * @param yarns the yarn of each new round, from the inside out
     */
    public static Chart insertRounds(Chart chart, int at, List<String> yarns) {
        if (at < 1 || at > chart.rounds().size() + 1) {
            throw new IllegalArgumentException("no round can be put in as round " + at);
        }
        SideShape shape = chart.shape();
        List<Round> rounds = new ArrayList<>(chart.rounds().subList(0, at - 1));
        for (int i = 0; i < yarns.size(); i++) {
            rounds.add(blankRound(shape, at + i, yarns.get(i)));
        }
        for (Round round : chart.rounds().subList(at - 1, chart.rounds().size())) {
            rounds.add(movedOut(round, yarns.size()));
        }
        return chart.withRounds(rounds);
    }

    /**
     * Takes rounds out. The rounds outside them move in, and each of their stitches stays in its own fabric column; the
     * outermost stitches at both corners, for which there is no room there, go.
     *
     * @param first the first round to go, from 1
     * @param last the last round to go
     */
    public static Chart deleteRounds(Chart chart, int first, int last) {
        requireRounds(chart, first, last);
        int gone = last - first + 1;
        if (gone == chart.rounds().size()) {
            throw new IllegalArgumentException("a chart has at least one round");
        }
        List<Round> rounds = new ArrayList<>(chart.rounds().subList(0, first - 1));
        for (int r = last + 1; r <= chart.rounds().size(); r++) {
            rounds.add(movedOut(chart, r, r - gone));
        }
        return chart.withRounds(rounds);
    }

    /**
     * Moves rounds to another place in the order of the rounds. Every stitch of every round stays in its own fabric column.
     *
     * @param to the number that the round {@code first} gets: 1 to the number of rounds less those moved, plus 1
     */
    public static Chart moveRounds(Chart chart, int first, int last, int to) {
        requireRounds(chart, first, last);
        int moved = last - first + 1;
        if (to < 1 || to > chart.rounds().size() - moved + 1) {
            throw new IllegalArgumentException("rounds " + first + " to " + last + " cannot become round " + to);
        }
        List<Integer> order = new ArrayList<>();
        for (int r = 1; r <= chart.rounds().size(); r++) {
            order.add(r);
        }
        List<Integer> block = order.subList(first - 1, last);
        List<Integer> moving = List.copyOf(block);
        block.clear();
        order.addAll(to - 1, moving);
        return ordered(chart, order);
    }

    /** Works rounds a second time, directly outside themselves, every stitch in the same fabric column. */
    public static Chart duplicateRounds(Chart chart, int first, int last) {
        requireRounds(chart, first, last);
        List<Integer> order = new ArrayList<>();
        for (int r = 1; r <= last; r++) {
            order.add(r);
        }
        for (int r = first; r <= chart.rounds().size(); r++) {
            order.add(r);
        }
        return ordered(chart, order);
    }

    /**
     * Puts a column of back-loop stitches into a section. It is given by the place it will have in the outermost round, where
     * every column is found; the columns from there on move on by one. In rounds that the column does not reach, the section
     * grows at the corner, so that the corner sections keep their shape.
     */
    public static Chart insertColumn(Chart chart, Section section, int placeInLastRound) {
        requireEven(chart);
        int last = chart.rounds().size();
        if (placeInLastRound < 1 || placeInLastRound > chart.border().length(section, last) + 1) {
            throw new IllegalArgumentException(
                    "no column can be put in at " + section.member() + " " + placeInLastRound);
        }
        return eachSection(chart, section, (r, stitches) -> {
            int place = columnInRound(section, placeInLastRound, last, r);
            return stitches.inserted(Math.max(1, Math.min(place, stitches.length() + 1)), Stitch.BACK_LOOP);
        });
    }

    /**
     * Takes a column out of a section, given as for {@link #insertColumn}. In rounds that the column does not reach, the
     * section loses its stitch at the corner.
     *
     * @throws IllegalArgumentException also if nothing would be left of the section in round 1
     */
    public static Chart deleteColumn(Chart chart, Section section, int placeInLastRound) {
        requireEven(chart);
        int last = chart.rounds().size();
        if (placeInLastRound < 1 || placeInLastRound > chart.border().length(section, last)) {
            throw new IllegalArgumentException("the chart has no column " + section.member() + " " + placeInLastRound);
        }
        return eachSection(chart, section, (r, stitches) -> {
            int place = columnInRound(section, placeInLastRound, last, r);
            return stitches.deleted(Math.max(1, Math.min(place, stitches.length())));
        });
    }

    /** Makes the repeat w stitches wide: cut off at its end, or made longer there with back-loop stitches. */
    public static Chart changeRepeatWidth(Chart chart, int w) {
        requireWidth("the repeat", w, 1);
        return eachSection(chart, Section.REPEAT, (r, stitches) -> stitches.resized(w));
    }

    /** Makes the part from the corner A + r stitches long. It grows and shrinks beside the repeat: the corner stays as it is. */
    public static Chart changeFromCorner(Chart chart, int a) {
        requireWidth("A", a, 0);
        return eachSection(chart, Section.FROM_CORNER, (r, stitches) -> stitches.resized(a + r));
    }

    /** Makes the part to the corner B + r stitches long. It grows and shrinks beside the repeat: the corner stays as it is. */
    public static Chart changeToCorner(Chart chart, int b) {
        requireWidth("B", b, 0);
        return eachSection(
                chart,
                Section.TO_CORNER,
                (r, stitches) -> stitches.reversed().resized(b + r).reversed());
    }

    /** Moves every stitch of the repeat on by k columns, round its ends; a negative k moves back. */
    public static Chart shiftRepeat(Chart chart, int k) {
        return eachSection(chart, Section.REPEAT, (r, stitches) -> stitches.rotated(k));
    }

    /** Turns the side round: what was worked last is worked first. A and B change places. */
    public static Chart reverse(Chart chart) {
        return eachRound(
                chart,
                round -> new Round(
                        round.yarn(),
                        round.toCorner().reversed(),
                        round.repeat().reversed(),
                        round.fromCorner().reversed(),
                        round.extras()));
    }

    /**
     * Gives every ragged section the length of its round: cut off at the corner, or made longer there with back-loop stitches.
     * The columns beside the repeat stay where they are.
     */
    public static Chart evenOut(Chart chart) {
        BorderShape border = chart.border();
        Chart even = chart;
        for (Chart.RaggedSection ragged : chart.raggedSections()) {
            Round round = even.round(ragged.round());
            Stitches stitches = round.section(ragged.section());
            Stitches mended = evened(border, ragged, stitches);
            even = even.withRound(ragged.round(), round.with(ragged.section(), mended));
        }
        return even;
    }

    /** One ragged section at its right length; see {@link #evenOut(Chart)}. */
    public static Chart evenOut(Chart chart, int round, Section section) {
        for (Chart.RaggedSection ragged : chart.raggedSections()) {
            if (ragged.round() == round && ragged.section() == section) {
                Stitches mended =
                        evened(chart.border(), ragged, chart.round(round).section(section));
                return chart.withRound(round, chart.round(round).with(section, mended));
            }
        }
        return chart;
    }

    /** A round of back-loop stitches for that round number. */
    static Round blankRound(SideShape shape, int number, String yarn) {
        return new Round(
                yarn,
                Stitches.backLoops(shape.length(Section.FROM_CORNER, number)),
                Stitches.backLoops(shape.w()),
                Stitches.backLoops(shape.length(Section.TO_CORNER, number)));
    }

    private static Stitches evened(BorderShape border, Chart.RaggedSection ragged, Stitches stitches) {
        int length = border.length(ragged.section(), ragged.round());
        return ragged.section() == Section.FROM_CORNER
                ? stitches.reversed().resized(length).reversed()
                : stitches.resized(length);
    }

    /** The rounds in a new order, given by their old numbers; every stitch stays in its fabric column. */
    private static Chart ordered(Chart chart, List<Integer> oldNumbers) {
        List<Round> rounds = new ArrayList<>();
        for (int i = 0; i < oldNumbers.size(); i++) {
            int old = oldNumbers.get(i);
            rounds.add(movedOut(chart, old, i + 1));
        }
        return chart.withRounds(rounds);
    }

    /**
     * A round under another number, every stitch in its fabric column. Round 1 gives the chart its shape, so a ragged round is
     * evened out before it becomes the first.
     */
    private static Round movedOut(Chart chart, int old, int number) {
        Chart even = chart;
        for (Section section : Section.values()) {
            even = number == 1 ? evenOut(even, old, section) : even;
        }
        return movedOut(even.round(old), number - old);
    }

    /** A round that goes that many rounds out (or in, if negative), every stitch in its fabric column. */
    private static Round movedOut(Round round, int by) {
        if (by == 0) {
            return round;
        }
        Stitches from = round.fromCorner();
        Stitches to = round.toCorner();
        return round.with(
                        Section.FROM_CORNER,
                        from.reversed().resized(Math.max(0, from.length() + by)).reversed())
                .with(Section.TO_CORNER, to.resized(Math.max(0, to.length() + by)));
    }

    /** The place that a column, given by its place in the last round, has in another round; below 1 if it is not there. */
    private static int columnInRound(Section section, int placeInLastRound, int last, int round) {
        return section == Section.FROM_CORNER ? placeInLastRound - (last - round) : placeInLastRound;
    }

    private static Chart eachSection(Chart chart, Section section, BiFunction<Integer, Stitches, Stitches> change) {
        List<Round> rounds = new ArrayList<>();
        for (int r = 1; r <= chart.rounds().size(); r++) {
            Round round = chart.round(r);
            rounds.add(round.with(section, change.apply(r, round.section(section))));
        }
        return chart.withRounds(rounds);
    }

    private static Chart eachRound(Chart chart, UnaryOperator<Round> change) {
        return chart.withRounds(chart.rounds().stream().map(change).toList());
    }

    private static void requireRounds(Chart chart, int first, int last) {
        if (first < 1 || last < first || last > chart.rounds().size()) {
            throw new IllegalArgumentException("the chart has no rounds " + first + " to " + last);
        }
    }

    private static void requireWidth(String what, int width, int least) {
        if (width < least || width > Chart.MOST_STITCHES) {
            throw new IllegalArgumentException(what + " cannot be " + width + " stitches wide");
        }
    }

    private static void requireEven(Chart chart) {
        if (!chart.raggedSections().isEmpty()) {
            throw new IllegalArgumentException(
                    "columns can be moved only when every section has the length of its round");
        }
    }
}
