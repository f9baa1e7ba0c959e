package edgewright.check;

import edgewright.chart.BorderShape;
import edgewright.chart.Chart;
import edgewright.chart.Place;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** The remedies that more than one rule offers, each with its variants, the best first; see {@link Rule#remedies}. */
final class Remedies {
    /** A long stitch that is moved further than that is another pattern, and to try all rounds of a large chart takes minutes. */
    private static final int FARTHEST_MOVE = 24;

    private Remedies() {}

    /**
     * The long stitch becomes a back-loop stitch. Where that leaves a row of long stitches that begins beside it and is still too
     * long, which would be a finding at another place, the row is broken up too.
     */
    static Stream<RemedyEdit> takeOut(Verdict verdict, Place stitch) {
        return Stream.concat(
                Stream.of(new RemedyEdit.TakeOut(stitch)),
                Stream.of(stitch)
                        .map(out -> new RemedyEdit.TakeOutOfRun(out, breaksBeside(verdict.chart(), out)))
                        .filter(edit -> !edit.breaks().isEmpty()));
    }

    private static Set<Place> breaksBeside(Chart chart, Place stitch) {
        int number = stitch.round();
        int looseRun = chart.rules().looseRun();
        Set<Place> before = LongRun.longerThan(looseRun, chart.round(number), number).stream()
                .map(LongRun::first)
                .collect(Collectors.toSet());
        Chart without = new RemedyEdit.TakeOut(stitch).applyTo(chart);
        return LongRun.longerThan(looseRun, without.round(number), number).stream()
                .filter(run -> !before.contains(run.first()))
                .flatMap(run -> LooseRun.breaks(without, run).stream())
                .collect(Collectors.toSet());
    }

    /** The chain becomes a back-loop stitch. */
    static Stream<RemedyEdit> fillIn(Place chain) {
        return Stream.of(new RemedyEdit.FillIn(chain));
    }

    /** The stitch directly below becomes a back-loop stitch. */
    static Stream<RemedyEdit> backLoopBelow(Verdict verdict, Place stitch) {
        return inColumn(verdict.chart().border(), stitch, stitch.round() - 1).stream()
                .map(RemedyEdit.BackLoopBelow::new);
    }

    /** The stitch that a long stitch lands on becomes a back-loop stitch. */
    static Stream<RemedyEdit> backLoopAtLanding(Verdict verdict, Place stitch) {
        return inColumn(verdict.chart().border(), stitch, landingRound(verdict.chart(), stitch)).stream()
                .map(RemedyEdit.BackLoopAtLanding::new);
    }

    /** The number of the round into which a stitch of a chart is worked. */
    static int landingRound(Chart chart, Place stitch) {
        return stitch.round() - chart.stitch(stitch).roundsDown();
    }

    /** Long stitches may land on long stitches in this chart. */
    static Stream<RemedyEdit> allowStacking() {
        return Stream.of(new RemedyEdit.AllowStacking());
    }

    /** Long stitches may land in corner chains in this chart. */
    static Stream<RemedyEdit> allowCornerChains() {
        return Stream.of(new RemedyEdit.AllowCornerChains());
    }

    /**
     * The long stitch goes to another round of its fabric column, at most {@link #FARTHEST_MOVE} away: the nearest in which it
     * can be worked and lands on its own yarn, or on the base round. Of two that are as near, the outer one. It takes the place of a back-loop or plain stitch
     * and leaves a back-loop stitch behind.
     */
    static Stream<RemedyEdit> move(Verdict verdict, Place stitch) {
        Chart chart = verdict.chart();
        int last = chart.rounds().size();
        int deep = chart.stitch(stitch).roundsDown();
        return IntStream.rangeClosed(1, Math.min(FARTHEST_MOVE, last - 1))
                .flatMap(distance -> IntStream.of(stitch.round() + distance, stitch.round() - distance))
                .filter(round -> round >= deep && round <= last && landsOnOwnYarn(chart, round, deep))
                .boxed()
                .flatMap(round -> inColumn(chart.border(), stitch, round).stream())
                .filter(target -> chart.stitch(target).standsInStitchBelow())
                .map(target -> new RemedyEdit.Move(stitch, target));
    }

    /** The place in the same fabric column and section in another round; empty where the side is not so long there. */
    static Optional<Place> inColumn(BorderShape border, Place place, int round) {
        int there = place.section().placeAbove(place.place(), round - place.round());
        return there < 1 || there > border.length(place.section(), round)
                ? Optional.empty()
                : Optional.of(new Place(round, place.section(), there));
    }

    private static boolean landsOnOwnYarn(Chart chart, int round, int deep) {
        return round == deep
                || chart.round(round).yarn().equals(chart.round(round - deep).yarn());
    }
}
