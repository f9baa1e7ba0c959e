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

    /** A blank between two steps; a bracket as {@code (l b)3}. */
    public static String spaced(List<? extends SideStep> steps) {
        return steps.stream().map(SideWords::step).collect(Collectors.joining(" "));
    }

    private static String step(SideStep step) {
        return step instanceof Bracket bracket
                ? "(" + spaced(bracket.steps()) + ")" + bracket.times()
                : String.valueOf(step.stitchAt(1).letter()).repeat(step.stitches());
    }
}
