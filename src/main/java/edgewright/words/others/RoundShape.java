package edgewright.words.others;

import edgewright.chart.PerSide;
import edgewright.chart.Side;
import edgewright.words.grammar.Cursor;
import edgewright.words.grammar.Extent;
import edgewright.words.grammar.Item;
import edgewright.words.grammar.Lexeme;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Finds the four sides and corners in the words of a round, whichever way these go round the piece: one side for all, all four
 * one after the other, or words for some sides and words for the others.
 */
final class RoundShape {
    private static final int CORNERS = Side.values().length;

    /** What is worked between two corners, and those corners. */
    record Stretch(Item.Turn before, List<Item> items, Item.Turn after) {
        Stretch {
            items = List.copyOf(items);
        }
    }

    private final RoundWords words;
    private final Optional<Item.Turn> told;
    private final boolean armsAdded;

    private RoundShape(RoundWords words, Optional<Item.Turn> told, boolean armsAdded) {
        this.words = words;
        this.told = told;
        this.armsAdded = armsAdded;
    }

    /**
     * The stretch of each side.
     *
     * @param told the corner that the text tells once for all rounds
     * @param armsAdded whether its two stitches are worked in a round that names no corner, beside those that its words tell
     */
    static PerSide<Stretch> of(RoundWords words, Optional<Item.Turn> told, boolean armsAdded) {
        Optional<Item.Turn> every =
                words.notes().everyCorner.filter(turn -> turn.chains().isPresent());
        return new RoundShape(words, every.or(() -> told), armsAdded || every.isPresent()).stretches();
    }

    private PerSide<Stretch> stretches() {
        List<Item> items = CornerItems.joined(words.items());
        if (items.stream().anyMatch(Item.ForSides.class::isInstance)) {
            return apart(items);
        }
        return around(
                items.stream().filter(item -> !(item instanceof Item.Alike)).toList());
    }

    /** Words for some sides, then for others. */
    private PerSide<Stretch> apart(List<Item> items) {
        List<List<Item>> found = new ArrayList<>(List.of(List.of(), List.of(), List.of(), List.of()));
        int i = 0;
        while (i < items.size()) {
            if (!(items.get(i) instanceof Item.ForSides label)) {
                throw Cursor.stop(items.get(i).at(), "sidesFirst", "");
            }
            List<Item> own = new ArrayList<>();
            i++;
            while (i < items.size() && !(items.get(i) instanceof Item.ForSides)) {
                if (!(items.get(i) instanceof Item.Alike)) {
                    own.add(items.get(i));
                }
                i++;
            }
            for (Side side : label.sides()) {
                if (!found.get(side.ordinal()).isEmpty()) {
                    throw Cursor.stop(label.at(), "otherSide", "");
                }
                found.set(side.ordinal(), own);
            }
        }
        if (found.stream().anyMatch(List::isEmpty)) {
            throw Cursor.stop(items.get(0).at(), "allSides", "");
        }
        PerSide<Stretch> alone =
                PerSide.each(side -> around(found.get(side.ordinal())).get(side));
        return PerSide.each(side -> new Stretch(
                alone.get(Side.values()[(side.ordinal() + CORNERS - 1) % CORNERS])
                        .after(),
                alone.get(side).items(),
                alone.get(side).after()));
    }

    private PerSide<Stretch> around(List<Item> items) {
        List<Item> flat = unrolled(items);
        List<List<Item>> parts = new ArrayList<>(List.of(new ArrayList<>()));
        List<Item.Turn> turns = new ArrayList<>();
        for (Item item : flat) {
            if (item instanceof Item.Turn turn) {
                turns.add(resolved(turn));
                parts.add(new ArrayList<>());
            } else {
                parts.get(parts.size() - 1).add(item);
            }
        }
        List<Item> begun = parts.get(0);
        List<Item> ended = parts.get(parts.size() - 1);
        if (turns.isEmpty()) {
            Item.Turn corner = told.filter(turn -> turn.chains().isPresent())
                    .orElseThrow(() -> Cursor.stop(last(items), "cornerOfRound", ""));
            Item.Turn turned = armsAdded
                    ? corner
                    : new Item.Turn(corner.at(), Optional.empty(), corner.chains(), Optional.empty(), corner.each());
            return PerSide.all(new Stretch(turned, begun, turned));
        }
        if (!begun.isEmpty() && !ended.isEmpty()) {
            throw Cursor.stop(ended.get(0).at(), "beginsAtCorner", "");
        }
        if (turns.size() == 1) {
            return PerSide.all(new Stretch(turns.get(0), begun.isEmpty() ? ended : begun, turns.get(0)));
        }
        if (turns.size() != CORNERS) {
            throw Cursor.stop(turns.get(turns.size() - 1).at(), "fourCorners", turns.size());
        }
        int first = begun.isEmpty() ? 1 : 0;
        return PerSide.each(side -> {
            int part = first + side.ordinal();
            return new Stretch(turns.get((part + CORNERS - 1) % CORNERS), parts.get(part), turns.get(part % CORNERS));
        });
    }

    private Lexeme last(List<Item> items) {
        return items.isEmpty() ? words.at() : items.get(items.size() - 1).at();
    }

    /** A corner that is only named is the one that was told. */
    private Item.Turn resolved(Item.Turn turn) {
        if (turn.chains().isPresent()) {
            return turn;
        }
        Item.Turn known = told.filter(corner -> corner.chains().isPresent())
                .orElseThrow(() -> Cursor.stop(turn.at(), "cornerTold", ""));
        return new Item.Turn(turn.at(), known.before(), known.chains(), known.after(), false);
    }

    /** The items with all that goes round corners written out. */
    private static List<Item> unrolled(List<Item> items) {
        int outside = turnsOutside(items);
        List<Item> flat = new ArrayList<>();
        for (Item item : items) {
            if (!item.turns() || item instanceof Item.Turn) {
                flat.add(item);
                continue;
            }
            List<Item> inner = item instanceof Item.Times times ? times.items() : ((Item.Open) item).items();
            List<Item> once = unrolled(inner);
            int each = (int) once.stream().filter(Item.Turn.class::isInstance).count();
            int times = item instanceof Item.Times said ? said.times().get(0) : rounds((Item.Open) item, each, outside);
            if (times > CORNERS || each > CORNERS) {
                throw Cursor.stop(item.at(), "fourCorners", (long) times * each + outside);
            }
            for (int i = 0; i < times; i++) {
                flat.addAll(once);
            }
        }
        return flat;
    }

    private static int rounds(Item.Open open, int each, int outside) {
        boolean fits = open.extent().kind() == Extent.Kind.AROUND
                && each > 0
                && (CORNERS - outside) % each == 0
                && outside < CORNERS;
        if (!fits) {
            throw Cursor.stop(open.extent().at(), "fourCorners", outside);
        }
        return (CORNERS - outside) / each;
    }

    private static int turnsOutside(List<Item> items) {
        long turns = items.stream().filter(Item.Turn.class::isInstance).count();
        return (int) Math.min(turns, CORNERS + 1);
    }
}
