package edgewright.check;

import edgewright.chart.Chart;
import edgewright.chart.Place;
import edgewright.chart.Round;
import edgewright.chart.Stitch;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * More long stitches side by side than the chart's {@code looseRun}: the stitches that they skip hang loose behind them.
 * {@link LongRun} says what a run is. One breach a run, at its first stitch.
 */
final class LooseRun implements Rule<Violation.LooseRun> {
    @Override
    public String id() {
        return "loose-run";
    }

    @Override
    public Severity severity() {
        return Severity.WARNING;
    }

    /** The breaches of a round of a chart that is not ragged, in working order. */
    List<RuleBreach<?>> breaches(Round round, int number, int looseRun) {
        List<RuleBreach<?>> breaches = new ArrayList<>();
        for (LongRun run : LongRun.longerThan(looseRun, round, number)) {
            breaches.add(new RuleBreach<>(this, new Violation.LooseRun(run.first(), run.length(), looseRun)));
        }
        return breaches;
    }

    @Override
    public List<Stream<RemedyEdit>> remedies(Verdict verdict, Violation.LooseRun loose) {
        Chart chart = verdict.chart();
        int number = loose.stitch().round();
        Optional<LongRun> run = LongRun.longerThan(loose.allowed(), chart.round(number), number).stream()
                .filter(candidate -> candidate.first().equals(loose.stitch()))
                .findFirst();
        return List.of(
                run.stream().map(found -> new RemedyEdit.BreakRun(breaks(chart, found))),
                loose.length().stream().mapToObj(RemedyEdit.AllowRun::new));
    }

    /** Where back-loop stitches leave no run too long among these stitches: few of them, the pieces about as long. */
    static Set<Place> breaks(Chart chart, LongRun run) {
        int looseRun = chart.rules().looseRun();
        int number = run.first().round();
        Set<Place> breaks = new TreeSet<>();
        Round round = chart.round(number);
        Optional<LongRun> left = Optional.of(run);
        while (left.isPresent()) {
            Place next = nextBreak(left.get(), looseRun);
            breaks.add(next);
            round = round.with(next.section(), round.section(next.section()).with(next.place(), Stitch.BACK_LOOP));
            left = LongRun.longerThan(looseRun, round, number).stream()
                    .filter(other -> run.stitches().contains(other.first()))
                    .findFirst();
        }
        return breaks;
    }

    private static Place nextBreak(LongRun run, int looseRun) {
        List<Place> stitches = new ArrayList<>(run.stitches());
        int length = run.length().orElse(stitches.size());
        int pieces = Math.max(2, (length + looseRun + 1) / (looseRun + 1));
        return stitches.get(Math.min((length - pieces + 1) / pieces, stitches.size() - 1));
    }
}
