package edgewright.yarn;

import edgewright.chart.Chart;
import edgewright.chart.Corner;
import edgewright.chart.PerSide;
import edgewright.chart.Round;
import edgewright.chart.Section;
import edgewright.chart.Side;
import edgewright.chart.Stitch;
import edgewright.chart.Stitches;
import edgewright.fit.BackLayer;
import edgewright.fit.BackStitch;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * A round of a border of one size, and how many stitches of each kind are worked in it, corner chains among them.
 *
 * @param number counted outwards from 1 in its layer; 0 for the base round of a back layer
 * @param yarn the id of its yarn
 * @param stitches only the kinds that occur, in the order of {@link YarnStitch}
 */
public record WorkedRound(Layer layer, int number, String yarn, Map<YarnStitch, Long> stitches) {
    /** What a round belongs to. */
    public enum Layer {
        /** The charted rounds. */
        FRONT,
        /** The back layer of a double border. */
        BACK,
        /** The round that joins the two layers. */
        JOINING
    }

    public WorkedRound {
        EnumMap<YarnStitch, Long> ordered = new EnumMap<>(YarnStitch.class);
        ordered.putAll(stitches);
        stitches = Collections.unmodifiableMap(ordered);
    }

    /**
     * All rounds in the order in which they are worked: the charted ones, then the back layer, from a base round of its own on,
     * and the joining round if the chart has them. Those are counted in the yarn of the outermost charted round. The base
     * round of the front is on the piece already and not among them.
     *
     * @param repeats how often the repeat is worked on each side
     */
    public static List<WorkedRound> of(Chart chart, PerSide<Integer> repeats) {
        List<WorkedRound> rounds = new ArrayList<>();
        int last = chart.rounds().size();
        for (int r = 1; r <= last; r++) {
            rounds.add(front(chart, r, repeats));
        }
        if (chart.making().back().isPresent()) {
            BackLayer back = new BackLayer(chart.border(), last);
            String yarn = chart.round(last).yarn();
            int chains = chart.corner().chains();
            long base = chart.border().allStitches(0, repeats);
            rounds.add(backRound(0, YarnStitch.PLAIN, base, yarn, chains));
            back.rounds().forEach(round -> rounds.add(back(back, round, yarn, repeats, chains)));
            long slips = back.joining(repeats, chains).total();
            rounds.add(new WorkedRound(Layer.JOINING, 1, yarn, Map.of(YarnStitch.SLIP, slips)));
        }
        return List.copyOf(rounds);
    }

    /** All stitches of the round, chains among them. */
    public long total() {
        return stitches.values().stream().mapToLong(Long::longValue).sum();
    }

    private static WorkedRound front(Chart chart, int number, PerSide<Integer> repeats) {
        Map<YarnStitch, Long> counts = new EnumMap<>(YarnStitch.class);
        Round round = chart.round(number);
        for (Side side : Side.values()) {
            for (Section section : Section.of(side)) {
                add(counts, round.section(section), section.times(repeats.get(side)));
            }
        }
        counts.merge(YarnStitch.CHAIN, Corner.chainsOfRound(chart.corner().chains()), Long::sum);
        return new WorkedRound(Layer.FRONT, number, round.yarn(), counts);
    }

    private static void add(Map<YarnStitch, Long> counts, Stitches stitches, long times) {
        for (Stitch stitch : Stitch.values()) {
            long count = stitches.count(stitch);
            if (count * times > 0) {
                counts.merge(YarnStitch.of(stitch), count * times, Long::sum);
            }
        }
    }

    private static WorkedRound back(
            BackLayer back, BackLayer.Round round, String yarn, PerSide<Integer> repeats, int chains) {
        long stitches = PerSide.sum(back.stitches(round.number(), repeats));
        YarnStitch kind = round.stitch() == BackStitch.TALL ? YarnStitch.TALL : YarnStitch.PLAIN;
        return backRound(round.number(), kind, stitches, yarn, chains);
    }

    private static WorkedRound backRound(int number, YarnStitch kind, long stitches, String yarn, int chains) {
        return new WorkedRound(
                Layer.BACK, number, yarn, Map.of(kind, stitches, YarnStitch.CHAIN, Corner.chainsOfRound(chains)));
    }
}
