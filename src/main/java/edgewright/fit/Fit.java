package edgewright.fit;

import edgewright.chart.BorderShape;
import edgewright.chart.Chart;
import edgewright.chart.PerSide;
import edgewright.chart.Side;
import edgewright.chart.SidePlace;
import edgewright.chart.Stitch;
import edgewright.chart.Stitches;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Answers whether and how a piece is made to fit the border of a chart. */
public final class Fit {
    private final Chart chart;
    private final BorderShape border;
    private final FitQuestion question;

    private Fit(Chart chart, FitQuestion question) {
        this.chart = chart;
        this.border = chart.border();
        this.question = question;
    }

    /**
     * The plan for a piece, or why there is none.
     *
     * @throws IllegalArgumentException if the question's round is not in the chart
     */
    public static FitAnswer answer(Chart chart, FitQuestion question) {
        if (question.round() > chart.rounds().size()) {
            throw new IllegalArgumentException("round " + question.round() + ": expected 0 to "
                    + chart.rounds().size() + ", the rounds of the chart");
        }
        return new Fit(chart, question).answer();
    }

    /**
     * The plan for a piece whose whole pattern is to be put into words, or why there is none. Beside what {@link #answer}
     * refuses there is none where the words could not be worked: where the design is worked on sides that do not come out
     * even yet, where the changing round has long stitches or chains, and where a long stitch would drop across a change.
     *
     * @throws IllegalArgumentException if the question's round is not in the chart
     */
    public static FitAnswer inWords(Chart chart, FitQuestion question) {
        FitAnswer answer = answer(chart, question);
        if (!(answer instanceof FitPlan plan) || plan.isDone()) {
            return answer;
        }
        List<Integer> patterned = patterned(chart, plan);
        Optional<FitWarning.LandsAcross> across = plan.warnings().stream()
                .filter(FitWarning.LandsAcross.class::isInstance)
                .map(FitWarning.LandsAcross.class::cast)
                .findFirst();
        return patterned.isEmpty() && across.isEmpty()
                ? plan
                : new FitRefusal.NotInWords(question, plan.rounds(), patterned, across);
    }

    /** The rounds up to the changing round that cannot be worked on the sides as they are. */
    private static List<Integer> patterned(Chart chart, FitPlan plan) {
        int counting = plan.question().round();
        boolean even = chart.border().closes(counting, plan.targets().counted());
        List<Integer> patterned = new ArrayList<>();
        for (int round = 1; round <= counting; round++) {
            if (!even && ChangeRounds.isPatterned(chart.round(round))) {
                patterned.add(round);
            }
        }
        if (!chart.round(plan.changing()).standsInRoundBelow()) {
            patterned.add(plan.changing());
        }
        return patterned;
    }

    private FitAnswer answer() {
        int round = question.round();
        PerSide<Integer> stitches = question.stitches();
        int fewest = border.fewestStitches(round);
        List<Side> shorts = Side.where(side -> stitches.get(side) < fewest);
        if (!shorts.isEmpty()) {
            return new FitRefusal.TooSmall(question, fewest, shorts);
        }
        PerSide<Integer> wanted = question.wantedStitches().orElse(stitches);
        EvenSides closing = EvenSides.of(border, round, wanted);
        if (!(closing instanceof EvenSides.Closes) && !wanted.equals(stitches)) {
            return new FitRefusal.WantedOpen(question, open(wanted));
        }
        if (question.wanted().isPresent() && !(closing instanceof EvenSides.Closes)) {
            return new FitRefusal.CannotClose(
                    question,
                    FitRefusal.CannotClose.Cause.WANTED,
                    border.on(Side.FIRST).w(),
                    closing);
        }
        Targets targets = question.wanted().isPresent()
                ? new Targets(border, round, stitches, wanted)
                : Targets.closest(border, round, stitches, question.ties());
        if (targets.totalChange() > 0 && round == chart.rounds().size()) {
            return new FitRefusal.CannotClose(
                    question,
                    FitRefusal.CannotClose.Cause.NO_ROUND_LEFT,
                    border.on(Side.FIRST).w(),
                    EvenSides.of(border, round, stitches));
        }
        return plan(targets);
    }

    private List<FitRefusal.WantedOpen.OpenSide> open(PerSide<Integer> wanted) {
        int round = question.round();
        return Arrays.stream(Side.values())
                .filter(side -> !border.on(side).closes(round, wanted.get(side)))
                .map(side -> {
                    int count = wanted.get(side);
                    OptionalInt lose = border.on(side).toLose(round, count);
                    return new FitRefusal.WantedOpen.OpenSide(
                            side,
                            lose.isPresent() ? OptionalInt.of(count - lose.getAsInt()) : lose,
                            count + border.on(side).toAdd(round, count));
                })
                .toList();
    }

    private FitAnswer plan(Targets targets) {
        List<Side> full = Side.where(side -> Math.abs(targets.change(side))
                > SideChange.most(targets.counted().get(side), targets.change(side)));
        if (!full.isEmpty()) {
            List<TooManyChangesRemedy> reliefs = full.stream()
                    .flatMap(side -> reliefs(targets, side).stream())
                    .distinct()
                    .toList();
            return new FitRefusal.NoRoom(question, targets, full, reliefs);
        }
        PerSide<SideChange> changes = PerSide.each(
                side -> new SideChange(side, targets.round(), targets.counted().get(side), targets.change(side)));
        ChangeRounds rounds = ChangeRounds.of(chart);
        return new FitPlan(question, targets, changes, rounds, warnings(targets, changes, rounds));
    }

    private List<FitWarning> warnings(Targets targets, PerSide<SideChange> changes, ChangeRounds rounds) {
        if (targets.totalChange() == 0) {
            return List.of();
        }
        List<FitWarning> warnings = new ArrayList<>();
        int changing = question.round() + 1;
        if (rounds.firstLong().isPresent() && changing >= rounds.firstLong().getAsInt()) {
            warnings.add(new FitWarning.TooLate(changing, rounds));
        }
        List<SideStitch> across = changes.stream()
                .flatMap(change -> across(change, targets.repeats().get(change.side())).stream())
                .toList();
        if (!across.isEmpty()) {
            warnings.add(new FitWarning.LandsAcross(changing, across));
        }
        for (SideChange change : changes.stream().toList()) {
            if (change.isCrowded()) {
                warnings.add(new FitWarning.Crowded(
                        change.side(), change.change(), change.stitches(), reliefs(targets, change.side())));
            }
        }
        return warnings;
    }

    /** The long stitches that stand above the uneven stitches of the changing round and would land under them. */
    private List<SideStitch> across(SideChange change, int repeats) {
        // The uneven stitches are those of the round after the changing one.
        return IntStream.range(1, Stitch.DEEPEST)
                .filter(up -> change.round() + 1 + up <= chart.rounds().size())
                .boxed()
                .flatMap(up -> across(change, up, repeats))
                .toList();
    }

    private Stream<SideStitch> across(SideChange change, int up, int repeats) {
        int above = change.round() + 1 + up;
        Stitches row = chart.round(above).side(change.side(), repeats);
        return change.unevenStitches().stream()
                .map(uneven -> new SidePlace(above, uneven.stitch() + up))
                // A ragged round may end before its place; whatever stands there has a finding of its own.
                .filter(place ->
                        place.stitch() <= row.length() && row.at(place.stitch()).covers(up))
                .map(place -> new SideStitch(change.side(), place));
    }

    /** Other counts, or an untied pair, with which this side and the one tied to it need no more than one change in six. */
    private List<TooManyChangesRemedy> reliefs(Targets targets, Side side) {
        List<TooManyChangesRemedy> reliefs = new ArrayList<>();
        Ties ties = question.tiesThatHold();
        List<Side> group = ties.group(side);
        int[] counts = group.stream().mapToInt(targets.counted()::get).toArray();
        int least = IntStream.of(counts).min().orElseThrow();
        int width = border.on(side).w();
        int most = targets.larger(side);
        IntStream.iterate(most, wanted -> wanted - width)
                .takeWhile(wanted -> wanted >= Math.max(least - width, border.fewestStitches(targets.round())))
                .filter(wanted -> IntStream.of(counts).noneMatch(count -> SideChange.isCrowded(count, wanted - count)))
                .boxed()
                .min((one, other) -> Integer.compare(
                        IntStream.of(counts).map(count -> Math.abs(one - count)).sum(),
                        IntStream.of(counts)
                                .map(count -> Math.abs(other - count))
                                .sum()))
                .ifPresent(wanted -> reliefs.add(new TooManyChangesRemedy.OtherCount(side, wanted)));
        if (group.size() > 1) {
            Targets untied = Targets.closest(border, targets.round(), targets.counted(), ties.without(side));
            if (group.stream()
                    .noneMatch(one -> SideChange.isCrowded(targets.counted().get(one), untied.change(one)))) {
                reliefs.add(new TooManyChangesRemedy.Untie(side));
            }
        }
        return reliefs;
    }
}
