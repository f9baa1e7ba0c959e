package edgewright.words.tree;

import edgewright.chart.Stitch;
import java.util.List;
import java.util.Objects;

/**
 * The same stitch worked some times, side by side: one in each of so many stitches. For chains: so many chains over as many
 * stitches, which are missed.
 *
 * @param count 1 or more
 */
public record Run(int count, Stitch stitch) {
    public Run {
        Objects.requireNonNull(stitch);
        if (count < 1) {
            throw new IllegalArgumentException("a run of " + count + " stitches");
        }
    }

    /** How many stitches these runs have together. */
    public static int stitches(List<Run> runs) {
        return runs.stream().mapToInt(Run::count).sum();
    }
}
