package edgewright.words.tree;

import java.util.List;

/**
 * What stands after the asterisk: steps that are worked as often as they fit before the last stitches of the side, which may
 * be none, once or more often.
 *
 * @param steps at least one
 * @param lastStitches how many stitches of the side are said to be left for what follows the group; 0 if it goes on to the
 *     corner. As the words state it: it need not be what follows, and a maker finds out
 */
public record Group(List<SideStep> steps, int lastStitches) {
    public Group {
        steps = List.copyOf(steps);
        if (steps.isEmpty() || lastStitches < 0) {
            throw new IllegalArgumentException("a group of " + steps + " to the last " + lastStitches);
        }
    }

    /** How many stitches the group has, worked once; the largest int if they are more than that. */
    public int stitches() {
        return SideStep.stitches(steps);
    }
}
