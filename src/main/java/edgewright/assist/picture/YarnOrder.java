package edgewright.assist.picture;

import edgewright.chart.Rules;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;

/**
 * Finds the order of the yarns in which a picture comes out best: every order that repeats itself after one, two, three or four
 * rounds, begun at every one of its rounds.
 *
 * <p>Of orders that cost the same the one with the shorter period is taken, then the one that stands first if yarns are compared
 * in the order in which they are given.
 */
public final class YarnOrder {
    /** The longest period that is tried. */
    public static final int LONGEST_PERIOD = 4;

    /** With more yarns there would be too many orders. */
    public static final int MOST_YARNS = 6;

    private final WantedPicture picture;
    private final Map<List<Wanted>, Integer> columns;
    private final ColumnSearch search;
    private final BooleanSupplier cancelled;

    private YarnOrder(WantedPicture picture, Rules rules, BooleanSupplier cancelled) {
        this.picture = picture;
        this.columns = new HashMap<>();
        for (int place = 1; place <= picture.width(); place++) {
            columns.merge(picture.column(place), 1, Integer::sum);
        }
        this.search = new ColumnSearch(rules);
        this.cancelled = cancelled;
    }

    /**
     * The yarn of each round, round 1 first; empty if it was cancelled.
     *
     * @param yarns the ids to choose from, 1 to {@value #MOST_YARNS} of them
     */
    public static Optional<List<String>> best(
            WantedPicture picture, List<String> yarns, Rules rules, BooleanSupplier cancelled) {
        if (yarns.isEmpty() || yarns.size() > MOST_YARNS) {
            throw new IllegalArgumentException(
                    yarns.size() + " yarns to find an order of, expected 1 to " + MOST_YARNS);
        }
        return new YarnOrder(picture, rules, cancelled).best(yarns);
    }

    /** Orders over and over again to that many rounds. */
    public static List<String> inTurn(List<String> yarns, int rounds) {
        List<String> order = new ArrayList<>();
        for (int i = 0; i < rounds; i++) {
            order.add(yarns.get(i % yarns.size()));
        }
        return order;
    }

    private Optional<List<String>> best(List<String> yarns) {
        List<String> best = null;
        Cost least = null;
        for (List<String> period : periods(yarns)) {
            List<String> order = inTurn(period, picture.rounds());
            Optional<Cost> cost = cost(order, least);
            if (cancelled.getAsBoolean()) {
                return Optional.empty();
            }
            if (cost.isPresent()) {
                least = cost.get();
                best = order;
            }
        }
        return Optional.ofNullable(best);
    }

    /** What the picture costs with these yarns; empty if that is not less than the least so far. */
    private Optional<Cost> cost(List<String> order, Cost least) {
        Cost sum = Cost.NOTHING;
        for (Map.Entry<List<Wanted>, Integer> column : columns.entrySet()) {
            long units = search.leastCost(ColumnTask.of(order, column.getKey(), List.of()));
            sum = sum.plus(Cost.ofColumn(units).times(column.getValue()));
            if ((least != null && !sum.isLessThan(least)) || cancelled.getAsBoolean()) {
                return Optional.empty();
            }
        }
        return Optional.of(sum);
    }

    /** All periods, shorter ones first; none that is a shorter one over and over. */
    static List<List<String>> periods(List<String> yarns) {
        List<List<String>> periods = new ArrayList<>();
        List<List<String>> ofLength = List.of(List.of());
        for (int length = 1; length <= LONGEST_PERIOD; length++) {
            List<List<String>> longer = new ArrayList<>();
            for (List<String> begun : ofLength) {
                for (String yarn : yarns) {
                    List<String> next = new ArrayList<>(begun);
                    next.add(yarn);
                    longer.add(next);
                }
            }
            ofLength = longer;
            longer.stream().filter(YarnOrder::isPrimitive).forEach(periods::add);
        }
        return periods;
    }

    private static boolean isPrimitive(List<String> period) {
        for (int shorter = 1; shorter < period.size(); shorter++) {
            if (inTurn(period.subList(0, shorter), period.size()).equals(period) && period.size() % shorter == 0) {
                return false;
            }
        }
        return true;
    }
}
