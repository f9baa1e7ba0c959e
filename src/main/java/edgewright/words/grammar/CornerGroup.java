package edgewright.words.grammar;

import edgewright.chart.Corner;
import edgewright.chart.Stitch;
import java.util.List;
import java.util.Optional;

/** Makes a corner of what is worked into it: chains alone, or chains between two stitches, one for each side. */
public final class CornerGroup {
    private CornerGroup() {}

    /** Whether these have the shape of what goes into a corner. */
    public static boolean is(List<Item> items) {
        return items.size() == 3
                && items.get(0) instanceof Item.Work
                && items.get(1) instanceof Item.Chains
                && items.get(2) instanceof Item.Work;
    }

    /** The corner; stops where it is none of ours. */
    public static Item.Turn of(Lexeme at, List<Item> items, boolean each) {
        if (items.size() == 1 && items.get(0) instanceof Item.Chains chains) {
            return new Item.Turn(at, Optional.empty(), Optional.of(chains(chains)), Optional.empty(), each);
        }
        if (items.size() == 1 && items.get(0) instanceof Item.Turn turn) {
            return new Item.Turn(at, turn.before(), turn.chains(), turn.after(), each);
        }
        if (!is(items)) {
            throw Cursor.stop(items.get(0).at(), "cornerGroup", "");
        }
        return new Item.Turn(
                at,
                Optional.of(arm(items.get(0))),
                Optional.of(chains((Item.Chains) items.get(1))),
                Optional.of(arm(items.get(2))),
                each);
    }

    public static int chains(Item.Chains chains) {
        if (chains.count() < 1 || chains.count() > Corner.MOST_CHAINS) {
            throw Cursor.stop(chains.at(), "cornerChains", "");
        }
        return chains.count();
    }

    private static Stitch arm(Item item) {
        Item.Work work = (Item.Work) item;
        if (work.count() != 1 || !work.stitch().standsInStitchBelow()) {
            throw Cursor.stop(work.at(), "cornerArm", "");
        }
        return work.stitch();
    }
}
