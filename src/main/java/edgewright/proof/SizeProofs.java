package edgewright.proof;

import edgewright.chart.Chart;
import edgewright.chart.PerSide;
import edgewright.chart.Side;
import edgewright.fit.FitPlan;
import edgewright.fit.PatternSize;
import edgewright.hands.Fabric;
import edgewright.words.page.PlainText;
import edgewright.words.tree.Instructions;
import edgewright.words.write.PatternWriter;
import edgewright.words.write.WordingOptions;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;

/**
 * Works the words of a chart for several sizes of piece: the pattern with the counts of that size, and the pattern for every
 * size, unless that one asks for longer sides. Words for the sizes that the chart names are worked in these sizes instead.
 */
public final class SizeProofs {
    /** Repeats a side that bring out what goes wrong: none, one, two, odd and even, many, and sides that differ. */
    public static final List<PerSide<Integer>> USUAL = List.of(
            PerSide.all(0),
            PerSide.all(1),
            PerSide.all(2),
            PerSide.all(5),
            PerSide.pairs(3, 4),
            PerSide.each(Side::ordinal),
            PerSide.pairs(12, 9));

    /**
     * How the words fared on one piece.
     *
     * @param repeats how often the repeat was worked on each side
     * @param baseStitches the stitches on each side of the base round, corner chains not counted
     * @param stitches what came off the hook, corner chains not counted
     * @param problems what stands against the words, a sentence each; none if they made the chart
     */
    public record Trial(PerSide<Integer> repeats, PerSide<Integer> baseStitches, long stitches, List<String> problems) {
        public Trial {
            problems = List.copyOf(problems);
        }

        /** Whether the words made the chart. */
        public boolean agrees() {
            return problems.isEmpty();
        }
    }

    private SizeProofs() {}

    /**
     * Works the words for one piece, from the counts that it has.
     *
     * @param options how the words are written; the size in them is of no account
     * @param plan for this chart, one that can be put into words
     * @param says for what stands against the words
     * @param cancelled asked as in {@link #run}
     */
    public static Trial ofPiece(
            Chart chart, WordingOptions options, FitPlan plan, ProofSentences says, BooleanSupplier cancelled) {
        ProofResult result = new Prover(chart, options.language(), cancelled).prove(options, plan);
        return new Trial(
                plan.targets().repeats(),
                plan.stitches(0),
                result.fabric().map(Fabric::total).orElse(0L),
                says.of(result));
    }

    /**
     * Works the words for each size, one after the other.
     *
     * @param chart a chart without errors
     * @param options how the words are written; of the size in them only named sizes are of account
     * @param sizes how often the repeat is worked on each side
     * @param says for what stands against the words
     * @param done told of each trial when it ends
     * @param cancelled asked before each round that is read and each side that is worked; once it answers true the work ends with a {@link
     *     java.util.concurrent.CancellationException}
     */
    public static List<Trial> run(
            Chart chart,
            WordingOptions options,
            List<PerSide<Integer>> sizes,
            ProofSentences says,
            Consumer<Trial> done,
            BooleanSupplier cancelled) {
        Prover prover = new Prover(chart, options.language(), cancelled);
        WordingOptions everySize = options.withoutRepeats();
        boolean named = options.size() instanceof PatternSize.OfSizes;
        Instructions tree = PatternWriter.tree(chart, named ? options : everySize);
        String ofAllSizes = PlainText.of(PatternWriter.write(tree, options.language()));
        int fewest = tree.base().fewest().orElse(0);
        List<Trial> trials = new ArrayList<>();
        for (PerSide<Integer> repeats : sizes) {
            PerSide<Integer> base = chart.border().stitches(0, repeats);
            ProofResult ofThisSize = prover.prove(everySize.withRepeats(repeats), repeats);
            // The pattern for every size says itself how short a side may be.
            boolean isMeant = named
                    ? options.size().sizes().contains(repeats)
                    : base.stream().allMatch(stitches -> stitches >= fewest);
            ProofResult result = ofThisSize.agrees() && isMeant ? prover.prove(ofAllSizes, repeats) : ofThisSize;
            Trial trial =
                    new Trial(repeats, base, result.fabric().map(Fabric::total).orElse(0L), says.of(result));
            trials.add(trial);
            done.accept(trial);
        }
        return List.copyOf(trials);
    }
}
