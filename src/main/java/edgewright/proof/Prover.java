package edgewright.proof;

import edgewright.chart.Chart;
import edgewright.chart.PerSide;
import edgewright.chart.Round;
import edgewright.chart.Stitch;
import edgewright.chart.Stitches;
import edgewright.fit.FitPlan;
import edgewright.hands.Fabric;
import edgewright.hands.HouseRules;
import edgewright.hands.Maker;
import edgewright.hands.WorkOutcome;
import edgewright.texts.Language;
import edgewright.words.page.PlainText;
import edgewright.words.read.PatternReader;
import edgewright.words.read.ReadingResult;
import edgewright.words.tree.Instructions;
import edgewright.words.write.PatternWriter;
import edgewright.words.write.WordingOptions;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;

/**
 * Works the words of a chart back: reads them as a maker does, works them stitch by stitch, and holds what comes off the hook
 * to the chart.
 */
public final class Prover {
    /** Pieces of more stitches are not worked: it would take too long and too much memory, and no blanket is as large. */
    public static final long MOST_STITCHES = 1_000_000;

    private final Chart chart;
    private final Language language;
    private final BooleanSupplier cancelled;

    /** A prover that is never called away. */
    public Prover(Chart chart, Language language) {
        this(chart, language, () -> false);
    }

    /**
     * A prover for a chart without ragged sections.
     *
     * @param language in which the words are read
     * @param cancelled asked before each round that is read and each side that is worked; once it answers true the work ends with a {@link
     *     java.util.concurrent.CancellationException}
     */
    public Prover(Chart chart, Language language, BooleanSupplier cancelled) {
        this.chart = chart;
        this.language = language;
        this.cancelled = cancelled;
    }

    /** Works the words that the writer writes now, as it prints them for these options, on sides of so many repeats. */
    public ProofResult prove(WordingOptions options, PerSide<Integer> repeats) {
        return prove(PlainText.of(PatternWriter.write(chart, options)), repeats);
    }

    /** Works a written pattern on sides of so many repeats of the chart. */
    public ProofResult prove(String text, PerSide<Integer> repeats) {
        long stitches = stitches(chart, repeats);
        if (stitches > MOST_STITCHES) {
            return new ProofResult.TooLarge(stitches);
        }
        ReadingResult reading = PatternReader.read(text, language, cancelled);
        return reading instanceof ReadingResult.Understood understood
                ? prove(understood.pattern(), repeats)
                : new ProofResult.Unread(((ReadingResult.Refused) reading).problems());
    }

    /** Works a tree of instructions on sides of so many repeats of the chart. */
    public ProofResult prove(Instructions pattern, PerSide<Integer> repeats) {
        long stitches = stitches(chart, repeats);
        if (stitches > MOST_STITCHES) {
            return new ProofResult.TooLarge(stitches);
        }
        WorkOutcome outcome = new Maker(houseRules(chart), cancelled).work(pattern, base(chart, repeats));
        return result(pattern, outcome, repeats, 0);
    }

    private ProofResult result(Instructions pattern, WorkOutcome outcome, PerSide<Integer> repeats, int first) {
        if (outcome instanceof WorkOutcome.Stopped stopped) {
            return new ProofResult.Stopped(stopped.fabric(), stopped.stop());
        }
        Fabric fabric = outcome.fabric();
        List<Difference> differences = Comparison.of(chart, repeats, fabric, pattern.yarns(), first);
        return differences.isEmpty()
                ? new ProofResult.Agrees(pattern, fabric)
                : new ProofResult.Differs(fabric, differences);
    }

    /**
     * Works the words for a piece whose counts are put right on the way, from the counts that it has, and holds all rounds from
     * the changing round on to the chart.
     *
     * @param options how the words are written; the size in them is of no account
     * @param plan for this chart, with its changes in a plain round
     */
    public ProofResult prove(WordingOptions options, FitPlan plan) {
        return prove(PlainText.of(PatternWriter.write(chart, options.withPiece(plan))), plan);
    }

    /**
     * Works a written pattern on a piece whose counts it puts right on the way, likewise.
     *
     * @param plan for this chart; its counts are those of the piece, and its targets those that the piece comes to
     */
    public ProofResult prove(String text, FitPlan plan) {
        long stitches = stitches(plan.stitches(0), chart.rounds().size());
        if (stitches > MOST_STITCHES) {
            return new ProofResult.TooLarge(stitches);
        }
        ReadingResult reading = PatternReader.read(text, language, cancelled);
        if (reading instanceof ReadingResult.Refused refused) {
            return new ProofResult.Unread(refused.problems());
        }
        Instructions pattern = ((ReadingResult.Understood) reading).pattern();
        WorkOutcome outcome = new Maker(houseRules(chart), cancelled).work(pattern, plan.stitches(0));
        int first = plan.isDone() ? 0 : plan.changing();
        return result(pattern, outcome, plan.targets().repeats(), first);
    }

    /**
     * Works instructions for which there is no chart, on a piece with so many stitches a side in the base round. Whatever hands
     * can do is allowed; the words agree if they can be worked to the end.
     */
    public static ProofResult work(Instructions pattern, PerSide<Integer> baseStitches) {
        long stitches = stitches(baseStitches, pattern.rounds().size());
        if (stitches > MOST_STITCHES) {
            return new ProofResult.TooLarge(stitches);
        }
        WorkOutcome outcome = new Maker(HouseRules.ALL_ALLOWED).work(pattern, baseStitches);
        return outcome instanceof WorkOutcome.Stopped stopped
                ? new ProofResult.Stopped(stopped.fabric(), stopped.stop())
                : new ProofResult.Agrees(pattern, outcome.fabric());
    }

    /**
     * Works the cells of a chart with no words between: the second judge of what can be worked. The chart may have findings,
     * but no ragged sections.
     */
    public static WorkOutcome workCells(Chart chart, PerSide<Integer> repeats) {
        List<Maker.Cells> rounds = new ArrayList<>();
        for (Round round : chart.rounds()) {
            PerSide<List<Stitch>> sides = PerSide.each(side -> stitches(round.side(side, repeats.get(side))));
            rounds.add(new Maker.Cells(round.yarn(), sides, chart.corner().chains()));
        }
        return new Maker(houseRules(chart))
                .work(rounds, base(chart, repeats), chart.corner().chains());
    }

    /** The stitches of all rounds on sides of so many repeats, the base round and corner chains not counted. */
    public static long stitches(Chart chart, PerSide<Integer> repeats) {
        return stitches(base(chart, repeats), chart.rounds().size());
    }

    private static long stitches(PerSide<Integer> base, int rounds) {
        return base.stream()
                .mapToLong(stitches -> (long) rounds * stitches + (long) rounds * (rounds + 1))
                .sum();
    }

    /** What this chart lets its makers do. */
    static HouseRules houseRules(Chart chart) {
        return new HouseRules(chart.rules().landOnCornerChain(), chart.rules().stackLongStitches());
    }

    private static PerSide<Integer> base(Chart chart, PerSide<Integer> repeats) {
        return chart.border().stitches(0, repeats);
    }

    private static List<Stitch> stitches(Stitches row) {
        return IntStream.rangeClosed(1, row.length()).mapToObj(row::at).toList();
    }
}
