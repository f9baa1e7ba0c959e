package edgewright.hands;

import edgewright.chart.PerSide;
import edgewright.chart.Side;
import edgewright.chart.Stitch;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What has come off the hook: the base round and every round made so far, stitch by stitch.
 *
 * <p>Rounds count from 0, the base round. Sides keep their names, whatever way the maker travels.
 */
public final class Fabric {
    /** One round: the stitches of its four sides, and the two arms of the corner before and after each. */
    static final class MadeRound {
        final String yarn;
        final PerSide<List<FabricStitch>> sides = PerSide.each(side -> new ArrayList<>());
        final Map<Side, FabricStitch> openingArms = new EnumMap<>(Side.class);
        final Map<Side, FabricStitch> closingArms = new EnumMap<>(Side.class);
        int chains;

        MadeRound(String yarn) {
            this.yarn = yarn;
        }

        /**
         * Makes the chains of the corner between two sides: an arm to close the one and one to open the other.
         *
         * @param stitches how many stitches the side has that ends here
         */
        void turnCorner(int round, Side side, int stitches, Side nextSide, int cornerChains) {
            chains = cornerChains;
            closingArms.put(side, FabricStitch.corner(round, side, stitches + 1));
            openingArms.put(nextSide, FabricStitch.corner(round, nextSide, 0));
        }

        /** Everything that a side of the next round is worked over, in order: corner, stitches, corner. */
        List<FabricStitch> feet(Side side) {
            List<FabricStitch> feet = new ArrayList<>(sides.get(side).size() + 2);
            feet.add(openingArms.get(side));
            feet.addAll(sides.get(side));
            feet.add(closingArms.get(side));
            return feet;
        }
    }

    private final List<MadeRound> rounds = new ArrayList<>();
    private BackFabric back;

    /** A piece with its base round on it, of so many stitches on its top, left, bottom and right side. */
    Fabric(PerSide<Integer> baseStitches, int cornerChains, TravelDirection travel) {
        MadeRound base = new MadeRound("");
        for (Side side : Side.values()) {
            for (int number = 1; number <= baseStitches.get(side); number++) {
                base.sides.get(side).add(FabricStitch.base(side, number));
            }
            base.turnCorner(0, side, baseStitches.get(side), travel.after(side), cornerChains);
        }
        rounds.add(base);
    }

    MadeRound last() {
        return rounds.get(rounds.size() - 1);
    }

    void add(MadeRound round) {
        rounds.add(round);
    }

    void setBack(BackFabric layer) {
        back = layer;
    }

    /** The back layer behind it, if one was made. */
    public Optional<BackFabric> back() {
        return Optional.ofNullable(back);
    }

    /** How many rounds there are, the base round not counted. A round that was begun counts. */
    public int rounds() {
        return rounds.size() - 1;
    }

    /** The id of the yarn that a round was made in; empty for the base round. */
    public String yarn(int round) {
        return rounds.get(round).yarn;
    }

    /** The chains of the corners of a round. */
    public int cornerChains(int round) {
        return rounds.get(round).chains;
    }

    /** The stitches made on a side in a round, in working order from its own corner. */
    public List<FabricStitch> side(int round, Side side) {
        return Collections.unmodifiableList(rounds.get(round).sides.get(side));
    }

    /** The same as letters, one a stitch, as in a chart; only for rounds from 1. */
    public String letters(int round, Side side) {
        StringBuilder letters = new StringBuilder();
        for (FabricStitch made : side(round, side)) {
            letters.append(made.stitch().map(Stitch::letter).orElseThrow());
        }
        return letters.toString();
    }

    /** The stitches made in a round on all four sides, corner chains not counted. */
    public long total(int round) {
        return rounds.get(round).sides.stream().mapToLong(List::size).sum();
    }

    /** The stitches made in all rounds, corner chains and the base round not counted. */
    public long total() {
        long total = 0;
        for (int r = 1; r <= rounds(); r++) {
            total += total(r);
        }
        return total;
    }

    /** The round whose yarn is seen where this stitch is: its own, or that of the long stitch that lies before it. */
    public static int shownRound(FabricStitch made) {
        return made.inFront().map(FabricStitch::round).orElse(made.round());
    }
}
