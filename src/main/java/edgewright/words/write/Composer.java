package edgewright.words.write;

import edgewright.chart.Chart;
import edgewright.chart.PerSide;
import edgewright.chart.Round;
import edgewright.chart.SideShape;
import edgewright.words.tree.BaseRound;
import edgewright.words.tree.Instructions;
import edgewright.words.tree.Multiple;
import edgewright.words.tree.PatternYarn;
import edgewright.words.tree.SideInstructions;
import edgewright.words.tree.SideSize;
import edgewright.words.tree.WrittenRound;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.IntFunction;

/** Turns a chart into instructions. */
final class Composer {
    /**
     * How often the repeat is worked in the two sizes that stand as examples beside a multiple. They are apart by more than
     * one repeat, so that nobody takes the step from one to the other for the multiple.
     */
    static final List<Integer> EXAMPLES = List.of(5, 8);

    private Composer() {}

    static Instructions compose(Chart chart, WordingOptions options) {
        StartComposer beginnings = StartComposer.of(chart, options);
        List<WrittenRound> rounds = new ArrayList<>();
        int fewest = beginnings.fewestRepeats();
        for (int r = 1; r <= chart.rounds().size(); r++) {
            WrittenRound round = round(chart, r, options, beginnings);
            fewest = Math.max(fewest, GroupedSide.fewestRepeats(chart.round(r), round.stretch()));
            rounds.add(round);
        }
        IntFunction<SideSize> size = r -> SideSize.of(
                counts(chart.shape().fewestStitches(r), chart.shape().w(), options));
        return frame(chart, options)
                .withBase(base(chart, options, fewest))
                .withRounds(rounds)
                .withBack(BackComposer.compose(chart, size));
    }

    /** The pattern of this chart with all but its rounds, and what follows from them. */
    static Instructions frame(Chart chart, WordingOptions options) {
        return new Instructions(
                onOneLine(chart.title()),
                onOneLine(chart.designer()),
                chart.notes()
                        .lines()
                        .map(Composer::onOneLine)
                        .filter(line -> !line.isEmpty())
                        .toList(),
                options.draft(),
                options.terms(),
                options.counting(),
                options.hand(),
                chart.yarnsUsed().stream()
                        .map(yarn -> new PatternYarn(yarn.id(), onOneLine(yarn.name())))
                        .toList(),
                base(chart, options, 0),
                StartComposer.of(chart, options).markers(),
                List.of(),
                Optional.empty());
    }

    static WrittenRound round(Chart chart, int number, WordingOptions options) {
        return round(chart, number, options, StartComposer.of(chart, options));
    }

    private static WrittenRound round(Chart chart, int number, WordingOptions options, StartComposer beginnings) {
        Round round = chart.round(number);
        SideInstructions said = GroupedSide.of(round, options.size().sizes());
        int fewest = round.fromCorner().length() + round.toCorner().length();
        return beginnings.begun(new WrittenRound.AtCorner(
                number,
                round.yarn(),
                SideSize.of(counts(fewest, round.repeat().length(), options)),
                said,
                chart.corner().chains()));
    }

    /** @param fewestRepeats how often the repeat must be worked on a side for all rounds to hold */
    private static BaseRound base(Chart chart, WordingOptions options, int fewestRepeats) {
        SideShape shape = chart.shape();
        int fewest = shape.stitches(0, fewestRepeats);
        boolean needsSaying = options.size().sizes().isEmpty() && fewest >= shape.w();
        return new BaseRound(
                baseSize(shape, options),
                needsSaying ? OptionalInt.of(fewest) : OptionalInt.empty(),
                OptionalInt.of(chart.corner().chains()));
    }

    /** What is said of the base round, which alone names the multiple; in a pattern for every size with the examples. */
    private static SideSize baseSize(SideShape shape, WordingOptions options) {
        int fewest = shape.fewestStitches(0);
        List<PerSide<Integer>> counts = counts(fewest, shape.w(), options);
        Multiple multiple = Multiple.containing(shape.w(), fewest);
        return options.size().sizes().isEmpty()
                ? SideSize.of(
                        multiple.withExamples(counts.stream().map(PerSide::top).toList()))
                : new SideSize.Counted(counts, shape.w() == 1 ? Optional.empty() : Optional.of(multiple));
    }

    /**
     * The counts of each size; in a pattern for every size those of the examples.
     *
     * @param w the length of the repeat in this round
     */
    private static List<PerSide<Integer>> counts(int fewest, int w, WordingOptions options) {
        List<PerSide<Integer>> sizes = options.size().sizes();
        List<PerSide<Integer>> repeats =
                sizes.isEmpty() ? EXAMPLES.stream().map(PerSide::all).toList() : sizes;
        return repeats.stream()
                .map(size -> size.map(m -> Math.addExact(fewest, Math.multiplyExact(m, w))))
                .toList();
    }

    /** Text from a chart may hold line breaks and other blanks; a line of a pattern holds single spaces. */
    static String onOneLine(String text) {
        return text.strip().replaceAll("[\\s\\p{Cc}\\p{Z}]+", " ").strip();
    }
}
