package edgewright.words.write;

import edgewright.words.tree.Run;
import edgewright.words.tree.SideStep;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** A period of more than one stitch, worked over and over, which may be begun wherever no run is cut. */
final class TurningGroup {
    private final int size;
    /** The runs of the period twice over, begun where the stitch changes. */
    private final List<Run> runs;

    private final Bracketing brackets;
    /** Which of the runs begins at a place of the period; places are counted from 0. */
    private final Map<Integer, Integer> beginnings = new HashMap<>();

    private final Map<Integer, Integer> costs = new HashMap<>();

    /** @param period as letters, of two stitches at least; not the same shorter letters over and over */
    TurningGroup(String period) {
        int begin = 0;
        while (period.charAt(begin) == period.charAt(Math.floorMod(begin - 1, period.length()))) {
            begin++;
        }
        List<Run> once = GroupedSide.runs(period.substring(begin) + period.substring(0, begin));
        size = once.size();
        runs = new ArrayList<>(once);
        runs.addAll(once);
        brackets = new Bracketing(runs);
        int place = begin;
        for (int run = 0; run < size; run++) {
            beginnings.put(place % period.length(), run);
            place += once.get(run).count();
        }
    }

    /** Whether a group that begins at this place of the period, counted from 0, cuts no run. */
    boolean canBeginAt(int place) {
        return beginnings.containsKey(place);
    }

    /** The least cost of the group when it begins at such a place. */
    int cost(int place) {
        int start = beginnings.get(place);
        return costs.computeIfAbsent(start, run -> brackets.costs(run, run + size)[size]);
    }

    /** The group from such a place. */
    List<SideStep> steps(int place) {
        int start = beginnings.get(place);
        return brackets.steps(start, start + size);
    }
}
