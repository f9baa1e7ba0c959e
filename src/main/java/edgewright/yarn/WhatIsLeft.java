package edgewright.yarn;

import edgewright.chart.Chart;
import edgewright.chart.Edits;
import edgewright.chart.PerSide;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;

/**
 * Whether a border of one size can be finished with the yarn that is at hand. A yarn of which nobody said how much is at hand
 * can be had as needed. Amounts are with their margin.
 */
public sealed interface WhatIsLeft {
    /** The amounts of the border as it is charted. */
    Amounts amounts();

    /** Of no yarn is it known how much is at hand. */
    record Unknown(Amounts amounts) implements WhatIsLeft {}

    /** There is enough of every yarn. */
    record Enough(Amounts amounts) implements WhatIsLeft {}

    /**
     * There is not enough for the chart as it stands, but for the same picture with rounds in other yarns of the chart.
     *
     * @param yarns the ids of the yarns that the charted rounds are then worked in, from round 1 on. As few rounds change as can
     *     be; of several such ways this one leaves most of the yarn that runs shortest
     * @param proved whether that is so for certain; if not, the search was ended before it was through, and there may be a way
     *     that changes fewer rounds
     */
    record OtherYarns(Amounts amounts, List<String> yarns, boolean proved) implements WhatIsLeft {
        public OtherYarns {
            yarns = List.copyOf(yarns);
        }

        /** The rounds that change their yarn, ascending. */
        public List<Integer> changed(Chart chart) {
            return IntStream.rangeClosed(1, yarns.size())
                    .filter(round -> !chart.round(round).yarn().equals(yarns.get(round - 1)))
                    .boxed()
                    .toList();
        }

        /** The chart with its rounds in those yarns. */
        public Chart applyTo(Chart chart) {
            Chart changed = chart;
            for (int round : changed(chart)) {
                changed = Edits.changeYarn(changed, round, yarns.get(round - 1));
            }
            return changed;
        }
    }

    /** There is not enough, and no other choice of yarns keeps the picture and is enough. */
    record NotEnough(Amounts amounts) implements WhatIsLeft {}

    /** There is not enough for the chart as it stands; the search for other yarns was ended before it was through. */
    record Undecided(Amounts amounts) implements WhatIsLeft {}

    /**
     * The answer for one size.
     *
     * @param repeats how often the repeat is worked on each side
     */
    static WhatIsLeft of(Chart chart, PerSide<Integer> repeats) {
        return of(chart, repeats, () -> false);
    }

    /**
     * The answer for one size, unless it is no longer wanted.
     *
     * @param repeats how often the repeat is worked on each side
     * @param cancelled asked again and again during a search; once it answers true the search ends with a {@link
     *     java.util.concurrent.CancellationException}
     */
    static WhatIsLeft of(Chart chart, PerSide<Integer> repeats, BooleanSupplier cancelled) {
        Amounts amounts = Amounts.of(chart, repeats);
        if (chart.yarns().stream().allMatch(yarn -> yarn.metresInHand().isEmpty())) {
            return new Unknown(amounts);
        }
        return amounts.missing().isEmpty() ? new Enough(amounts) : YarnSearch.of(chart, amounts, cancelled);
    }
}
