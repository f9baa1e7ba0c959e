package edgewright.words.tree;

import java.util.List;

/**
 * What stands after the asterisk: runs that are worked as often as they fit before the last stitches of the side, which may
 * be none, once or more often.
 *
 * @param runs at least one
 * @param lastStitches how many stitches of the side are said to be left for what follows the group; 0 if it goes on to the
 *     corner. As the words state it: it need not be what follows, and a maker finds out
 */
public record Group(List<Run> runs, int lastStitches) {
    public Group {
        runs = List.copyOf(runs);
        if (runs.isEmpty() || lastStitches < 0) {
            throw new IllegalArgumentException("a group of " + runs + " to the last " + lastStitches);
        }
    }
}
