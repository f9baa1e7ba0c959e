package edgewright.words.tree;

import edgewright.chart.Side;
import java.util.Objects;

/**
 * Where along a side a round begins and ends. The yarn is joined there with a chain that is no stitch. The work goes on with
 * the stitch after it, round the piece, and back to it: the last stitch of the round is worked where the joining chain sits,
 * so that every stitch of the round below is used once.
 *
 * @param side the side on which the yarn is joined
 * @param stitch the stitch of the round below in which it is joined, counted from the corner just turned with the corner
 *     chain as number 1. The last stitch of the round, which is worked there, has the same number on its side
 * @param mark where the words of the side say that the round starts: after that last stitch. As the words state it: it need not
 *     stand there, and a maker finds out
 */
public record WrittenStart(Side side, int stitch, StartMark mark) {
    public WrittenStart {
        Objects.requireNonNull(side);
        Objects.requireNonNull(mark);
        if (stitch < 1) {
            throw new IllegalArgumentException("a yarn joined in stitch " + stitch);
        }
    }
}
