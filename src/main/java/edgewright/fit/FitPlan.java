package edgewright.fit;

import edgewright.chart.Counting;
import edgewright.chart.PerSide;
import edgewright.chart.Side;
import edgewright.chart.SideShape;
import java.util.List;
import java.util.Objects;

/**
 * How a piece is made to fit a border: the counts to reach, what to change on each side and where, and in which rounds.
 * Numbers are of stitches, corner chains not counted, unless a way of counting is asked for.
 *
 * @param changes of each side, also where nothing is changed
 * @param rounds the rounds in which the chart's counts are best put right; the question's round may be another
 * @param warnings in the order in which they stand in {@link FitWarning}; empty if the plan is a good one
 */
public record FitPlan(
        FitQuestion question,
        Targets targets,
        PerSide<SideChange> changes,
        ChangeRounds rounds,
        List<FitWarning> warnings)
        implements FitAnswer {
    public FitPlan {
        Objects.requireNonNull(question);
        Objects.requireNonNull(targets);
        Objects.requireNonNull(rounds);
        Objects.requireNonNull(changes);
        warnings = List.copyOf(warnings);
    }

    /** The warnings that stand against working this plan, since the border would not come out as charted. Often none. */
    public List<FitWarning> objections() {
        return warnings.stream().filter(FitWarning::isObjection).toList();
    }

    /** This plan with the sides counted in the other way. */
    public FitPlan in(Counting counting) {
        return new FitPlan(question.in(counting), targets, changes, rounds, warnings);
    }

    /** What is changed on this side. */
    public SideChange change(Side side) {
        return changes.get(side);
    }

    /** Whether every side has the wanted count already. */
    public boolean isDone() {
        return changes.stream().allMatch(change -> change.change() == 0);
    }

    /** The round in which the changes are worked: the one after the counting round. */
    public int changing() {
        return question.round() + 1;
    }

    /** The stitches that each side has in this round: up to the counting round as they are, from the next one on as wanted. */
    public PerSide<Integer> stitches(int round) {
        PerSide<Integer> counting = round <= question.round() ? targets.counted() : targets.wanted();
        return counting.map(stitches -> stitches + SideShape.growth(round - question.round()));
    }

    /** The stitches that each side has when the changing round is done: two more than the target of the counting round. */
    public PerSide<Integer> stitchesAfterwards() {
        return targets.wanted().map(stitches -> stitches + SideShape.GROWTH);
    }
}
