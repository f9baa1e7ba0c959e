package edgewright.words.others;

import edgewright.words.grammar.CornerGroup;
import edgewright.words.grammar.Cursor;
import edgewright.words.grammar.Item;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Finds corners that are told one thing after the other: 'st in corner, 2 ch, st in same corner', or chains where a side ends. */
final class CornerItems {
    private CornerItems() {}

    /** The items with such corners as corners, and without the chain that a round begins with. */
    static List<Item> joined(List<Item> items) {
        List<Item> joined = new ArrayList<>();
        int i = 0;
        while (i < items.size()) {
            Item item = items.get(i);
            boolean group = i + 2 < items.size()
                    && CornerGroup.is(items.subList(i, i + 3))
                    && ((Item.Work) item).inCorner()
                    && ((Item.Work) items.get(i + 2)).inCorner();
            if (group) {
                joined.add(CornerGroup.of(item.at(), items.subList(i, i + 3), false));
                i += 3;
                continue;
            }
            if (item instanceof Item.Chains chains) {
                addChains(joined, chains, i == items.size() - 1 || endsSide(items.get(i + 1)));
            } else {
                joined.add(inside(item));
            }
            i++;
        }
        return joined;
    }

    private static boolean endsSide(Item next) {
        return next instanceof Item.Alike || next instanceof Item.ForSides;
    }

    private static void addChains(List<Item> joined, Item.Chains chains, boolean atEnd) {
        if (joined.isEmpty() && chains.count() == 1 && !atEnd) {
            return;
        }
        if (!atEnd || joined.isEmpty()) {
            throw Cursor.stop(chains.at(), "miss", chains.count());
        }
        joined.add(new Item.Turn(
                chains.at(), Optional.empty(), Optional.of(CornerGroup.chains(chains)), Optional.empty(), false));
    }

    private static Item inside(Item item) {
        if (item instanceof Item.Times times) {
            return new Item.Times(times.at(), joined(times.items()), times.times(), times.unclear());
        }
        if (item instanceof Item.Open open) {
            return new Item.Open(open.at(), joined(open.items()), open.extent());
        }
        return item;
    }
}
