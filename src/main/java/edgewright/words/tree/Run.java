package edgewright.words.tree;

import edgewright.chart.Stitch;
import java.util.Objects;
import java.util.stream.Stream;

/**
 * The same stitch worked some times, side by side: one in each of so many stitches. For chains: so many chains over as many
 * stitches, which are missed.
 *
 * @param count 1 or more
 */
public record Run(int count, Stitch stitch) implements SideStep {
    public Run {
        Objects.requireNonNull(stitch);
        if (count < 1) {
            throw new IllegalArgumentException("a run of " + count + " stitches");
        }
    }

    @Override
    public int stitches() {
        return count;
    }

    @Override
    public Stream<Run> runs() {
        return Stream.of(this);
    }

    @Override
    public Stitch stitchAt(int place) {
        return stitch;
    }
}
