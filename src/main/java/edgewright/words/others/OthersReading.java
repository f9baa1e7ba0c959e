package edgewright.words.others;

import edgewright.chart.PerSide;
import edgewright.words.grammar.Remark;
import edgewright.words.tree.Instructions;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What was made of a text.
 *
 * @param account what each line was taken as
 * @param remarks what was not understood, or does not come out, in the order of the text
 * @param pattern the instructions; empty if anything was refused or must be asked
 * @param sizes the stitches of each side in the base round, for each size that the text tells; empty if it tells none
 */
public record OthersReading(
        Account account, List<Remark> remarks, Optional<Instructions> pattern, List<PerSide<Integer>> sizes) {
    public OthersReading {
        Objects.requireNonNull(account);
        Objects.requireNonNull(pattern);
        remarks = List.copyOf(remarks);
        sizes = List.copyOf(sizes);
    }

    /** Whether all was understood, and all that is stated comes out. */
    public boolean isClear() {
        return pattern.isPresent() && remarks.isEmpty();
    }
}
