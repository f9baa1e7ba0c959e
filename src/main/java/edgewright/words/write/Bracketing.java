package edgewright.words.write;

import edgewright.words.tree.Bracket;
import edgewright.words.tree.Run;
import edgewright.words.tree.SideStep;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The least that a reader must take in to work stretches of one row of runs: 2 for a run (how many, and of what), 3 for
 * brackets (the two signs, and how often). Brackets hold whole runs, or whole runs and brackets; no deeper.
 *
 * <p>A shortest path over the row: from one run to the next, or over a block that is the same runs at least twice. Blocks are
 * found by comparing the row with itself, shifted by each length; what a block costs inside is a shortest path too. A row of
 * more than {@value #MOST_RUNS} runs goes without brackets, since the search grows with the square of their number.
 */
final class Bracketing {
    /** The most runs in which brackets are looked for. */
    static final int MOST_RUNS = 600;

    private static final int RUN = 2;
    private static final int BRACKET = 3;
    private static final int DEEPEST = 2;

    private final List<Run> runs;
    /** What is the same over and over, by the run where it begins. */
    private final List<List<Block>> blocks = new ArrayList<>();

    /**
     * Runs that follow each other again at once.
     *
     * @param length of the runs that are the same, once
     * @param most how often they follow each other here; 2 or more
     * @param nested the least cost of the runs once, with brackets among them or none
     */
    private record Block(int length, int most, int nested) {
        int cost(int level) {
            return BRACKET + (level == DEEPEST ? nested : RUN * length);
        }
    }

    /** @param runs no two of one stitch side by side, so that a bracket never parts a run */
    Bracketing(List<Run> runs) {
        this.runs = List.copyOf(runs);
        for (int i = 0; i < runs.size(); i++) {
            blocks.add(new ArrayList<>());
        }
        if (runs.size() <= MOST_RUNS) {
            findBlocks();
        }
    }

    private void findBlocks() {
        int size = runs.size();
        for (int length = 2; length <= size / 2; length++) {
            int same = 0;
            for (int start = size - length - 1; start >= 0; start--) {
                same = runs.get(start).equals(runs.get(start + length)) ? same + 1 : 0;
                if (same >= length) {
                    blocks.get(start).add(new Block(length, 1 + same / length, RUN * length));
                }
            }
        }
        for (int start = 0; start < size; start++) {
            List<Block> here = blocks.get(start);
            if (!here.isEmpty()) {
                int longest = here.get(here.size() - 1).length();
                int[] once = costs(start, start + longest, 1);
                here.replaceAll(block -> new Block(block.length(), block.most(), once[block.length()]));
            }
        }
    }

    /** The least costs of the first 0, 1, 2 ... of the runs from {@code start} on, up to all before {@code end}. */
    int[] costs(int start, int end) {
        return costs(start, end, DEEPEST);
    }

    /** @param level how deep brackets may be */
    private int[] costs(int start, int end, int level) {
        int[] least = new int[end - start + 1];
        Arrays.fill(least, Integer.MAX_VALUE);
        least[0] = 0;
        for (int at = start; at < end; at++) {
            int before = least[at - start];
            least[at + 1 - start] = Math.min(least[at + 1 - start], before + RUN);
            for (Block block : blocks.get(at)) {
                int cost = before + block.cost(level);
                int most = Math.min(block.most(), (end - at) / block.length());
                for (int times = 2; times <= most; times++) {
                    int past = at + times * block.length() - start;
                    least[past] = Math.min(least[past], cost);
                }
            }
        }
        return least;
    }

    /** The least costs of the runs from each place on: element i of those from i up to the end of the row. */
    int[] costsToEnd() {
        return costsToEnd(0, runs.size(), DEEPEST);
    }

    private int[] costsToEnd(int start, int end, int level) {
        int[] least = new int[end - start + 1];
        for (int at = end - 1; at >= start; at--) {
            int cost = RUN + least[at + 1 - start];
            for (Block block : blocks.get(at)) {
                int most = Math.min(block.most(), (end - at) / block.length());
                for (int times = 2; times <= most; times++) {
                    cost = Math.min(cost, block.cost(level) + least[at + times * block.length() - start]);
                }
            }
            least[at - start] = cost;
        }
        return least;
    }

    /**
     * The runs from {@code start} up to {@code end} at the least cost. Of several such ways the one with the earlier brackets,
     * and of these the one that takes in more, then the one that holds less.
     */
    List<SideStep> steps(int start, int end) {
        return steps(start, end, DEEPEST);
    }

    /** All of the runs, likewise. */
    List<SideStep> steps() {
        return steps(0, runs.size());
    }

    private List<SideStep> steps(int start, int end, int level) {
        if (level == 0) {
            return List.copyOf(runs.subList(start, end));
        }
        int[] least = costsToEnd(start, end, level);
        List<SideStep> steps = new ArrayList<>();
        int at = start;
        while (at < end) {
            int span = 1;
            SideStep step = runs.get(at);
            int left = least[at - start];
            for (Block block : blocks.get(at)) {
                for (int times = 2; times <= Math.min(block.most(), (end - at) / block.length()); times++) {
                    int taken = times * block.length();
                    if (taken > span && block.cost(level) + least[at + taken - start] == left) {
                        span = taken;
                        step = new Bracket(steps(at, at + block.length(), level - 1), times);
                    }
                }
            }
            steps.add(step);
            at += span;
        }
        return steps;
    }
}
