package edgewright.words.tree;

import edgewright.chart.Stitch;
import java.util.List;
import java.util.stream.Stream;

/**
 * Steps in brackets, worked one after the other and then over again. The trade has two kinds of bracket, so brackets stand in
 * brackets once, and no deeper.
 *
 * @param steps at least one; a bracket among them holds runs only
 * @param times how often they are worked, the first time counted; 2 or more
 */
public record Bracket(List<SideStep> steps, int times) implements SideStep {
    public Bracket {
        steps = List.copyOf(steps);
        boolean tooDeep = steps.stream()
                .anyMatch(step ->
                        step instanceof Bracket inner && inner.steps().stream().anyMatch(Bracket.class::isInstance));
        if (steps.isEmpty() || times < 2 || tooDeep) {
            throw new IllegalArgumentException("a bracket of " + steps + ", " + times + " times");
        }
    }

    @Override
    public int stitches() {
        return (int) Math.min(Integer.MAX_VALUE, (long) SideStep.stitches(steps) * times);
    }

    @Override
    public Stream<Run> runs() {
        return steps.stream().flatMap(SideStep::runs);
    }

    @Override
    public Stitch stitchAt(int place) {
        return SideStep.stitchAt(steps, (place - 1) % SideStep.stitches(steps) + 1);
    }
}
