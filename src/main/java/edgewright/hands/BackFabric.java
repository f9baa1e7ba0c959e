package edgewright.hands;

import edgewright.chart.PerSide;
import edgewright.chart.Side;
import edgewright.words.tree.BackRound;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * The back layer as it came off the hook: its own base round and every round made so far.
 *
 * <p>Rounds count from 0, the base round. Sides are named as they are on the right side of the piece.
 */
public final class BackFabric {
    /** One round; the stitches of each side in working order, those in the corner chains among them. */
    record Layer(PerSide<List<FabricStitch>> sides, int chains) {}

    private final List<Layer> rounds = new ArrayList<>();
    private final List<BackRound.Height> heights = new ArrayList<>();
    private int joins;

    /** A base round of so many stitches on each side. */
    BackFabric(PerSide<Integer> baseStitches, int chains) {
        PerSide<List<FabricStitch>> sides = PerSide.each(side -> new ArrayList<>());
        for (Side side : Side.values()) {
            for (int number = 1; number <= baseStitches.get(side); number++) {
                sides.get(side).add(FabricStitch.base(side, number));
            }
        }
        rounds.add(new Layer(sides, chains));
    }

    /**
     * Makes a round: so many stitches into the corner chain that a side begins at, one through both loops of each stitch, and
     * so many into the corner chain that it ends at.
     */
    void make(BackRound words) {
        int round = rounds.size();
        PerSide<List<FabricStitch>> sides = PerSide.each(side -> new ArrayList<>());
        for (Side side : Side.values()) {
            List<FabricStitch> made = sides.get(side);
            for (int i = 0; i < words.atEachArm(); i++) {
                made.add(FabricStitch.ofBack(round, side, made.size() + 1));
            }
            for (FabricStitch foot : last().sides().get(side)) {
                foot.take(Loop.BACK);
                foot.take(Loop.FRONT);
                made.add(FabricStitch.ofBack(round, side, made.size() + 1));
            }
            for (int i = 0; i < words.atEachArm(); i++) {
                made.add(FabricStitch.ofBack(round, side, made.size() + 1));
            }
        }
        rounds.add(new Layer(sides, words.cornerChains()));
        heights.add(words.height());
    }

    Layer last() {
        return rounds.get(rounds.size() - 1);
    }

    /** One slip stitch more holds this layer to the front. */
    void join() {
        joins++;
    }

    /** How many rounds there are, the base round not counted. */
    public int rounds() {
        return rounds.size() - 1;
    }

    /** Which stitch a round was made in; rounds from 1. */
    public BackRound.Height height(int round) {
        return heights.get(round - 1);
    }

    /** The chains of the corners of a round. */
    public int cornerChains(int round) {
        return rounds.get(round).chains();
    }

    /** The stitches made on a side in a round. */
    public List<FabricStitch> side(int round, Side side) {
        return Collections.unmodifiableList(rounds.get(round).sides().get(side));
    }

    /** The slip stitches that join it to the front; 0 if it is not joined. */
    public int joins() {
        return joins;
    }
}
