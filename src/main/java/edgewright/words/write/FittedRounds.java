package edgewright.words.write;

import edgewright.chart.Chart;
import edgewright.chart.PerSide;
import edgewright.chart.Round;
import edgewright.chart.Side;
import edgewright.chart.Stitch;
import edgewright.fit.CountChange;
import edgewright.fit.FitPlan;
import edgewright.fit.SideChange;
import edgewright.words.tree.BaseRound;
import edgewright.words.tree.ChangingStep;
import edgewright.words.tree.Instructions;
import edgewright.words.tree.SideSize;
import edgewright.words.tree.WrittenRound;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalInt;

/**
 * Says the rounds of a chart for a piece whose counts are put right on the way: up to the counting round on the sides as they
 * are, then the changing round with words for each side, then as for any piece of that size.
 */
final class FittedRounds {
    private final Chart chart;
    private final FitPlan plan;

    FittedRounds(Chart chart, FitPlan plan) {
        this.chart = chart;
        this.plan = plan;
    }

    /** The whole pattern. */
    Instructions pattern(WordingOptions options) {
        Instructions fitting = Composer.compose(chart, options);
        List<WrittenRound> rounds = fitting.rounds().stream().map(this::fitted).toList();
        BaseRound base =
                new BaseRound(actual(0), OptionalInt.empty(), fitting.base().cornerChains());
        return frame(fitting.withRounds(List.of())).withBase(base).withRounds(rounds);
    }

    /**
     * A pattern without rounds as it is for this piece: its markers stand in the changing round, above which nothing is added or
     * lost any more.
     */
    Instructions frame(Instructions fitting) {
        boolean isLast = plan.changing() == chart.rounds().size();
        return fitting.withMarkers(
                fitting.markers().filter(markers -> !isLast).map(markers -> markers.in(plan.changing())));
    }

    /** One round alone. */
    WrittenRound round(int number, WordingOptions options) {
        return fitted(Composer.round(chart, number, options));
    }

    /** @param fitting the round of a piece that has the right counts */
    private WrittenRound fitted(WrittenRound fitting) {
        int past = fitting.number() - plan.question().round();
        if (past <= 0) {
            return asItIs(fitting);
        }
        return past == 1 ? changing(fitting) : fitting;
    }

    /** The changing round; it is begun at a corner. */
    private WrittenRound changing(WrittenRound fitting) {
        Round round = chart.round(plan.changing());
        if (!round.standsInRoundBelow()) {
            throw new IllegalArgumentException("round " + plan.changing() + " is no plain round");
        }
        return new WrittenRound.PuttingRight(
                fitting.number(), fitting.yarn(), fitting.side(), PerSide.each(this::sideWork), fitting.cornerChains());
    }

    /** A round before the changing round; it is begun at a corner. */
    private WrittenRound asItIs(WrittenRound round) {
        return new WrittenRound.AtCorner(
                round.number(),
                round.yarn(),
                actual(round.number()),
                GroupedSide.of(chart.round(round.number()), List.of(repeatsBefore())),
                round.cornerChains());
    }

    /** The stitches that the sides have as they are, up to the counting round. */
    private SideSize actual(int round) {
        return SideSize.of(plan.stitches(round));
    }

    /** How often the repeat fits on the sides as they are. */
    private PerSide<Integer> repeatsBefore() {
        int round = plan.question().round();
        int fewest = chart.shape().fewestStitches(round);
        return plan.targets()
                .counted()
                .map(stitches -> Math.max(0, stitches - fewest) / chart.shape().w());
    }

    private List<ChangingStep> sideWork(Side side) {
        SideChange change = plan.change(side);
        String row = chart.round(plan.changing())
                .side(side, plan.targets().repeats().get(side))
                .letters();
        List<Integer> gaps = change.gaps();
        List<List<ChangingStep>> stretches = new ArrayList<>();
        int made = 0;
        for (int i = 0; i < change.changes(); i++) {
            // The stitch in the corner chain comes before the first gap.
            int plain = gaps.get(i) + (i == 0 ? 1 : 0);
            List<ChangingStep> stretch = plain(row.substring(made, made + plain));
            made += plain;
            stretch.add(changed(
                    change.kind(), row.substring(made, made + change.kind().made())));
            made += change.kind().made();
            stretches.add(stretch);
        }
        List<ChangingStep> work = together(stretches);
        work.addAll(plain(row.substring(made)));
        return work;
    }

    private static List<ChangingStep> plain(String letters) {
        List<ChangingStep> plain = new ArrayList<>();
        GroupedSide.runs(letters).forEach(run -> plain.add(new ChangingStep.Work(run)));
        return plain;
    }

    private static ChangingStep changed(CountChange kind, String letters) {
        Stitch first = Stitch.ofLetter(letters.charAt(0)).orElseThrow();
        return kind == CountChange.DECREASE
                ? new ChangingStep.Together(first)
                : new ChangingStep.TwoInOne(
                        first, Stitch.ofLetter(letters.charAt(1)).orElseThrow());
    }

    /** Equal stretches one after the other are said once. */
    private static List<ChangingStep> together(List<List<ChangingStep>> stretches) {
        List<ChangingStep> work = new ArrayList<>();
        int i = 0;
        while (i < stretches.size()) {
            int times = 1;
            while (i + times < stretches.size() && stretches.get(i + times).equals(stretches.get(i))) {
                times++;
            }
            work.addAll(
                    times == 1
                            ? stretches.get(i)
                            : Collections.singletonList(new ChangingStep.Times(stretches.get(i), times)));
            i += times;
        }
        return work;
    }
}
