package edgewright.check;

import edgewright.chart.Chart;
import edgewright.chart.Edits;
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
 * {@link LongRun} says what a run is. One flag a run, at its first stitch.
 */
final class LooseRun implements Rule {
    @Override
    public String id() {
        return "loose-run";
    }

    @Override
    public Severity severity() {
        return Severity.WARNING;
    }

    /** The flags of a round of a chart that is not ragged, in working order. */
    List<Violation> flags(Round round, int number, int looseRun) {
        return LongRun.longerThan(looseRun, round, number).stream()
                .map(run -> Violation.at(this, run.first(), run.length(), looseRun))
                .toList();
    }

    @Override
    public List<Stream<Remedy>> remedies(Verdict verdict, Violation flag) {
        Chart chart = verdict.chart();
        int looseRun = chart.rules().looseRun();
        int number = flag.place().round();
        Optional<LongRun> run = LongRun.longerThan(looseRun, chart.round(number), number).stream()
                .filter(candidate -> candidate.first().equals(flag.place()))
                .findFirst();
        return run.map(found -> List.of(breakUp(chart, found), allow(found))).orElse(List.of());
    }

    private static Stream<Remedy> breakUp(Chart chart, LongRun run) {
        Set<Place> breaks = breaks(chart, run);
        return Stream.of(new Remedy(
                "break-run", List.of(breaks.size()), edited -> Edits.setStitches(edited, breaks, Stitch.BACK_LOOP)));
    }

    private static Stream<Remedy> allow(LongRun run) {
        return run.length().stream()
                .mapToObj(length -> new Remedy(
                        "allow-run",
                        List.of(length),
                        edited -> edited.withRules(edited.rules().withLooseRun(length))));
    }

    /** Where back-loop stitches leave no run too long among these stitches: few of them, the pieces about as long. */
    private static Set<Place> breaks(Chart chart, LongRun run) {
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
