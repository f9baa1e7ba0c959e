package edgewright.proof;

import edgewright.chart.Chart;
import edgewright.chart.PerSide;
import edgewright.chart.SideShape;
import edgewright.words.write.PatternWriter;
import edgewright.words.write.WordingOptions;

/** Sides that are as long as a pattern for every size asks for. */
final class LongEnough {
    private LongEnough() {}

    /** These repeats, or as many more as the words with these options ask for; a pattern for one size asks for none. */
    static PerSide<Integer> repeats(Chart chart, WordingOptions options, PerSide<Integer> repeats) {
        int fewest = PatternWriter.tree(chart, options).base().fewest().orElse(0);
        SideShape shape = chart.shape();
        return repeats.map(times -> Math.max(times, (fewest - shape.a() - shape.b()) / shape.w()));
    }
}
