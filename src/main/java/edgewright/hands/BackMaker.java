package edgewright.hands;

import edgewright.chart.PerSide;
import edgewright.chart.Side;
import edgewright.hands.Stop.Reason;
import edgewright.words.tree.BackRound;
import edgewright.words.tree.SideSize;
import edgewright.words.tree.WrittenBack;
import java.util.List;
import java.util.Optional;

/**
 * A maker's work on the back layer of a double border, once the front is made: the back rounds, each held to the front round
 * that it is said to match, and the join of both layers stitch by stitch.
 *
 * <p>The wrong side faces the maker, so the sides are come to the other way round; nothing that is made depends on that, and
 * sides keep their names.
 */
final class BackMaker {
    private final Fabric front;
    private final BackFabric back;
    private final StatedSizes sizes;

    private BackMaker(Fabric front, BackFabric back, StatedSizes sizes) {
        this.front = front;
        this.back = back;
        this.sizes = sizes;
    }

    /**
     * Makes the back of a front that is finished, and leaves it with the front.
     *
     * @param sizes what is known of the piece from the front
     */
    static Optional<Stop> work(WrittenBack words, Fabric front, StatedSizes sizes) {
        List<PerSide<Integer>> stated = words.base().counts();
        PerSide<Integer> base = stated.size() == 1
                ? stated.get(0)
                : PerSide.each(side -> front.side(0, side).size());
        BackMaker maker = new BackMaker(front, new BackFabric(base, front.cornerChains(0)), sizes);
        front.setBack(maker.back);
        Optional<Stop> stop = maker.base(words.base());
        for (BackRound round : words.rounds()) {
            stop = stop.isEmpty() ? maker.round(round) : stop;
        }
        return stop.isEmpty() && words.joined() ? maker.join() : stop;
    }

    private Optional<Stop> base(SideSize stated) {
        Optional<Stop> stop = Optional.empty();
        for (Side side : Side.values()) {
            stop = stop.isEmpty() ? compare(stated, 0, side, back.side(0, side).size()) : stop;
        }
        return stop;
    }

    private Optional<Stop> round(BackRound words) {
        back.make(words);
        int round = back.rounds();
        for (Side side : Side.values()) {
            int made = back.side(round, side).size();
            Optional<Stop> stop = compare(words.side(), round, side, made);
            if (stop.isEmpty() && words.frontRound().isPresent()) {
                stop = compareWithFront(words.frontRound().getAsInt(), round, side, made);
            }
            if (stop.isPresent()) {
                return stop;
            }
        }
        return Optional.empty();
    }

    private Optional<Stop> compare(SideSize stated, int round, Side side, int made) {
        return sizes.against(stated, round, side, made, Reason.BACK_COUNT_NOT_MET, Reason.BACK_MULTIPLE_NOT_MET);
    }

    private Optional<Stop> compareWithFront(int frontRound, int round, Side side, int made) {
        int expected =
                frontRound <= front.rounds() ? front.side(frontRound, side).size() : 0;
        return expected == made
                ? Optional.empty()
                : Stop.atCount(Reason.BACK_NOT_AS_FRONT, round, side, expected, made);
    }

    /** A slip stitch through the back loops of each stitch of the front and the one behind it, and in every corner chain. */
    private Optional<Stop> join() {
        int last = front.rounds();
        int round = back.rounds();
        if (front.cornerChains(last) != back.cornerChains(round)) {
            return Stop.atCount(
                    Reason.CORNERS_DIFFER, round, Side.FIRST, front.cornerChains(last), back.cornerChains(round));
        }
        for (Side side : Side.values()) {
            List<FabricStitch> before = front.side(last, side);
            List<FabricStitch> behind = back.side(round, side);
            for (int i = 0; i < Math.min(before.size(), behind.size()); i++) {
                before.get(i).take(Loop.BACK);
                behind.get(i).take(Loop.BACK);
                back.join();
            }
            if (before.size() != behind.size()) {
                return Stop.atCount(Reason.LAYERS_DIFFER, round, side, before.size(), behind.size());
            }
            for (int chain = 0; chain < back.cornerChains(round); chain++) {
                back.join();
            }
        }
        return Optional.empty();
    }
}
