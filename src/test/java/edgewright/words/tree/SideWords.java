package edgewright.words.tree;

import java.util.List;
import java.util.stream.Collectors;

/** Steps as letters, to compare them with a chart. */
public final class SideWords {
    private SideWords() {}

    /** What is worked, brackets as often as they say. */
    public static String letters(List<? extends SideStep> steps) {
        return spaced(SideStep.workedOut(steps)).replace(" ", "");
    }

    /** A blank between two steps; a bracket as {@code (l b)3}, one that holds brackets as {@code [(l b)3 l]2}. */
    public static String spaced(List<? extends SideStep> steps) {
        return steps.stream().map(SideWords::step).collect(Collectors.joining(" "));
    }

    private static String step(SideStep step) {
        if (step instanceof Bracket bracket) {
            boolean nested = bracket.steps().stream().anyMatch(Bracket.class::isInstance);
            return (nested ? "[%s]%d" : "(%s)%d").formatted(spaced(bracket.steps()), bracket.times());
        }
        return String.valueOf(step.stitchAt(1).letter()).repeat(step.stitches());
    }
}
