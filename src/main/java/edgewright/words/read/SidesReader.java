package edgewright.words.read;

import edgewright.chart.PerSide;
import edgewright.chart.Side;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Supplier;
import java.util.stream.Stream;

/**
 * Reads a round that has words for each side.
 *
 * @param <T> what is worked along a side
 */
final class SidesReader<T> {
    private final TokenCursor cursor;
    private final WorkReader work;
    private final Supplier<Optional<T>> along;
    private final String expected;

    private final Map<Side, T> sides = new EnumMap<>(Side.class);
    private OptionalInt chains = OptionalInt.empty();

    /**
     * A reader of one round.
     *
     * @param along takes what is worked along a side, if that stands there
     * @param expected what could stand in place of a corner
     */
    SidesReader(TokenCursor cursor, WorkReader work, Supplier<Optional<T>> along, String expected) {
        this.cursor = cursor;
        this.work = work;
        this.along = along;
        this.expected = expected;
    }

    /** Whether a round with words for each side begins here. */
    static boolean opens(TokenCursor cursor) {
        return cursor.opens("puts-right")
                || cursor.opens("along")
                || Stream.of(Side.values()).anyMatch(side -> cursor.is("edge-" + side));
    }

    /** What was read, and the chains of its corners. */
    record Read<T>(PerSide<T> sides, int cornerChains) {}

    /** The four sides in any order. */
    Read<T> read() {
        while (sides.size() < Side.values().length) {
            if (!takeSide()) {
                throw cursor.stopped();
            }
            cursor.skipPartings();
        }
        return new Read<>(PerSide.each(sides::get), chains.getAsInt());
    }

    private boolean takeSide() {
        Map<Side, T> taken = new EnumMap<>(Side.class);
        Side[] named = new Side[1];
        boolean whole = cursor.take("along", gap -> switch (gap) {
            case "edge" -> {
                named[0] = takeOtherEdge();
                yield named[0] != null;
            }
            case "steps" -> {
                Optional<T> steps = along.get();
                steps.ifPresent(each -> taken.put(named[0], each));
                yield steps.isPresent();
            }
            case "corner" -> takeCorner();
            default -> throw Phrase.unknown(gap);
        });
        if (whole) {
            sides.putAll(taken);
        }
        return whole;
    }

    /** An edge that has no words yet; null if none stands here. */
    private Side takeOtherEdge() {
        Token start = cursor.peek();
        Optional<Side> side = work.takeEdge();
        if (side.filter(sides::containsKey).isPresent()) {
            throw cursor.stopAt(start, Expectation.of("otherWords"));
        }
        return side.orElse(null);
    }

    private boolean takeCorner() {
        Token corner = cursor.peek();
        if (!work.takeCornerAlone()) {
            return cursor.miss(expected);
        }
        if (chains.orElse(work.chains()) != work.chains()) {
            throw cursor.stopAt(corner, Expectation.of("chainsAsBefore", chains.getAsInt()));
        }
        chains = OptionalInt.of(work.chains());
        return true;
    }
}
