package edgewright.words.tree;

import edgewright.chart.Stitch;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** One step along a side: a run of one stitch, or some steps in brackets that are worked a number of times. */
public sealed interface SideStep permits Run, Bracket {
    /** How many stitches it makes; the largest int if they are more than that. */
    int stitches();

    /** The runs as they stand in the words: those in brackets once. */
    Stream<Run> runs();

    /** The stitch that it makes at this place, counted from 1 to {@link #stitches()}. */
    Stitch stitchAt(int place);

    /** How many stitches these steps make together; the largest int if they are more than that. */
    static int stitches(List<? extends SideStep> steps) {
        long stitches = 0;
        for (SideStep step : steps) {
            stitches = Math.min(Integer.MAX_VALUE, stitches + step.stitches());
        }
        return (int) stitches;
    }

    /** The stitch that these steps make at this place, counted from 1 to their number of stitches. */
    static Stitch stitchAt(List<? extends SideStep> steps, int place) {
        int left = place;
        for (SideStep step : steps) {
            if (left <= step.stitches()) {
                return step.stitchAt(left);
            }
            left -= step.stitches();
        }
        throw new IndexOutOfBoundsException("place " + place + " of " + steps);
    }

    /**
     * These steps without brackets: every run as often as it is worked. Runs of one stitch that meet stay apart.
     *
     * <p>Words by others can ask for more runs than a machine holds; hands works the steps themselves.
     */
    static List<Run> workedOut(List<? extends SideStep> steps) {
        List<Run> runs = new ArrayList<>();
        for (SideStep step : steps) {
            if (step instanceof Bracket bracket) {
                List<Run> once = workedOut(bracket.steps());
                for (int i = 0; i < bracket.times(); i++) {
                    runs.addAll(once);
                }
            } else {
                runs.add((Run) step);
            }
        }
        return runs;
    }
}
