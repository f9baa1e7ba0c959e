package edgewright.words.tree;

import edgewright.chart.HookSize;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * The back layer of a double border in words, and how it is joined to the front.
 *
 * @param hook the hook it is worked with, where the pattern names one
 * @param base what is said of its own base round, which has the counts of that of the front
 * @param rounds in working order, numbered from 1 with none left out
 * @param joined whether the two layers are joined, by a slip stitch in every stitch and every corner chain through the back
 *     loops of both
 */
public record WrittenBack(Optional<HookSize> hook, SideSize base, List<BackRound> rounds, boolean joined) {
    public WrittenBack {
        Objects.requireNonNull(hook);
        Objects.requireNonNull(base);
        rounds = List.copyOf(rounds);
        for (int i = 0; i < rounds.size(); i++) {
            if (rounds.get(i).number() != i + 1) {
                throw new IllegalArgumentException("back rounds are numbered from 1 with none left out");
            }
        }
    }
}
