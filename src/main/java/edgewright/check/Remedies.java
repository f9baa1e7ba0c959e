package edgewright.check;

import edgewright.chart.Chart;
import edgewright.chart.Edits;
import edgewright.chart.Place;
import edgewright.chart.Section;
import edgewright.chart.SideShape;
import edgewright.chart.Stitch;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** The remedies that more than one rule offers, each with its variants, the best first; see {@link Rule#remedies}. */
final class Remedies {
    private Remedies() {}

    /** The long stitch becomes a back-loop stitch. */
    static Stream<Remedy> takeOut(Place place) {
        return Stream.of(backLoop("take-out", place, List.of()));
    }

    /** The chain becomes a back-loop stitch. */
    static Stream<Remedy> fillIn(Place place) {
        return Stream.of(backLoop("fill-in", place, List.of()));
    }

    /** The stitch directly below becomes a back-loop stitch. */
    static Stream<Remedy> backLoopBelow(Verdict verdict, Place place) {
        return backLoopIn(verdict, "back-loop-below", place, place.round() - 1);
    }

    /** The stitch two rounds below becomes a back-loop stitch. */
    static Stream<Remedy> backLoopTwoBelow(Verdict verdict, Place place) {
        return backLoopIn(verdict, "back-loop-two-below", place, place.round() - 2);
    }

    /** Long stitches may land on long stitches in this chart. */
    static Stream<Remedy> allowStacking() {
        return Stream.of(new Remedy(
                "allow-stacking",
                List.of(),
                chart -> chart.withRules(chart.rules().withStackLongStitches(true))));
    }

    /** Long stitches may land in corner chains in this chart. */
    static Stream<Remedy> allowCornerChains() {
        return Stream.of(new Remedy(
                "allow-corner-chains",
                List.of(),
                chart -> chart.withRules(chart.rules().withLandOnCornerChain(true))));
    }

    /**
     * The long stitch goes to another round of its fabric column: the nearest in which it can be worked and lands on its own
     * yarn, or on the base round. Of two that are as near, the outer one. It takes the place of a back-loop or plain stitch
     * and leaves a back-loop stitch behind.
     */
    static Stream<Remedy> move(Verdict verdict, Place place) {
        Chart chart = verdict.chart();
        int last = chart.rounds().size();
        return IntStream.range(1, last)
                .flatMap(distance -> IntStream.of(place.round() + distance, place.round() - distance))
                .filter(round -> round >= 2 && round <= last && landsOnOwnYarn(chart, round))
                .boxed()
                .flatMap(round -> inColumn(chart.shape(), place, round).stream())
                .filter(target -> canGive(chart.stitch(target)))
                .map(target -> new Remedy(
                        "move",
                        List.of(target.round()),
                        edited -> Edits.setStitches(edited, Map.of(place, Stitch.BACK_LOOP, target, Stitch.LONG))));
    }

    /** The place in the same fabric column and section in another round; empty where the side is not so long there. */
    static Optional<Place> inColumn(SideShape shape, Place place, int round) {
        int shift = place.section() == Section.FROM_CORNER ? round - place.round() : 0;
        int there = place.place() + shift;
        return there < 1 || there > shape.length(place.section(), round)
                ? Optional.empty()
                : Optional.of(new Place(round, place.section(), there));
    }

    private static boolean landsOnOwnYarn(Chart chart, int round) {
        return round == 2
                || chart.round(round).yarn().equals(chart.round(round - 2).yarn());
    }

    private static boolean canGive(Stitch stitch) {
        return stitch == Stitch.BACK_LOOP || stitch == Stitch.PLAIN;
    }

    private static Stream<Remedy> backLoopIn(Verdict verdict, String id, Place place, int round) {
        return inColumn(verdict.chart().shape(), place, round).stream()
                .map(below -> backLoop(id, below, List.of(round)));
    }

    private static Remedy backLoop(String id, Place place, List<Object> values) {
        return new Remedy(id, values, chart -> Edits.setStitches(chart, List.of(place), Stitch.BACK_LOOP));
    }
}
