package edgewright.fit;

import edgewright.chart.Counting;
import edgewright.chart.Side;
import edgewright.chart.SidePlace;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * What is changed on one side, and where. The changes are spread as evenly as can be and keep off the two stitches next to
 * each corner; see {@link EvenSpread}.
 *
 * @param round the counting round; the changes are worked into its stitches, in the round after it
 * @param stitches the stitches of the side in the counting round, corner chains not counted
 * @param change stitches added, or lost if below 0
 */
public record SideChange(Side side, int round, int stitches, int change) {
    /** More than one change in so many stitches makes the edge ruffle or pull. Source: common practice, no source. */
    public static final int FEWEST_STITCHES_A_CHANGE = 6;

    /** @throws IllegalArgumentException if the side has no room for so many changes */
    public SideChange {
        if (Math.abs(change) > most(stitches, change)) {
            throw new IllegalArgumentException(stitches + " stitches cannot be changed by " + change);
        }
    }

    /** How far a side of so many stitches can be changed in one round, in the direction of this change. */
    public static int most(int stitches, int change) {
        return EvenSpread.most(stitches, kind(change));
    }

    /** How many changes there are; 0 or more. */
    public int changes() {
        return Math.abs(change);
    }

    /** Whether stitches are added or lost; of no account where nothing is changed. */
    public CountChange kind() {
        return kind(change);
    }

    /** Whether there is more than one change in six stitches. */
    public boolean isCrowded() {
        return isCrowded(stitches, change);
    }

    /** Whether such a change of a side of so many stitches is more than one in six. */
    public static boolean isCrowded(int stitches, int change) {
        return (long) Math.abs(change) * FEWEST_STITCHES_A_CHANGE > stitches;
    }

    /** The plain stitches before each change and after the last; one number, the whole side, where nothing is changed. */
    public List<Integer> gaps() {
        return EvenSpread.gaps(stitches, kind(), changes());
    }

    /**
     * The stitch of the counting round that two are worked into, or the first of the two that are worked together, for each
     * change from the corner just turned on.
     */
    public List<SidePlace> places() {
        List<Integer> gaps = gaps();
        List<SidePlace> places = new ArrayList<>();
        int done = 0;
        for (int gap : gaps.subList(0, changes())) {
            places.add(new SidePlace(round, done + gap + 1));
            done += gap + kind().used();
        }
        return Collections.unmodifiableList(places);
    }

    /** The places as numbers of stitches. Where corner chains are counted, the chain at the corner is number 1. */
    public List<Integer> numbers(Counting counting) {
        return places().stream().map(place -> number(place, counting)).toList();
    }

    /**
     * The way along the side in the round after the counting round. Where corner chains are counted, the first and the last
     * block take in the stitch that is worked into the corner chain.
     */
    public List<ChangeBlock> blocks(Counting counting) {
        int chain = counting.shown(0) / 2;
        List<Integer> gaps = gaps();
        List<ChangeBlock> blocks = new ArrayList<>();
        for (int i = 0; i < changes(); i++) {
            ChangeBlock block = new ChangeBlock(gaps.get(i) + (i == 0 ? chain : 0), Optional.of(kind()), 1);
            ChangeBlock last = blocks.isEmpty() ? null : blocks.get(blocks.size() - 1);
            if (last != null && last.work() == block.work()) {
                blocks.set(blocks.size() - 1, new ChangeBlock(block.work(), block.change(), last.times() + 1));
            } else {
                blocks.add(block);
            }
        }
        int rest = gaps.get(changes()) + (changes() == 0 ? 2 * chain : chain);
        blocks.add(new ChangeBlock(rest, Optional.empty(), 1));
        return Collections.unmodifiableList(blocks);
    }

    /**
     * The stitches of the changed round that share a foot (after an increase two, side by side) or that stand on two (after
     * a decrease one), counted from 1 at the corner just turned, the stitch in the corner chain among them.
     */
    List<SidePlace> unevenStitches() {
        List<SidePlace> uneven = new ArrayList<>();
        int added = 0;
        for (SidePlace place : places()) {
            for (int i = 0; i < kind().made(); i++) {
                uneven.add(new SidePlace(round + 1, place.stitch() + 1 + added + i));
            }
            added += Integer.signum(change);
        }
        return uneven;
    }

    /** The number that a stitch of a side has in this way of counting. */
    static int number(SidePlace place, Counting counting) {
        return place.stitch() + counting.shown(0) / 2;
    }

    private static CountChange kind(int change) {
        return change < 0 ? CountChange.DECREASE : CountChange.INCREASE;
    }
}
