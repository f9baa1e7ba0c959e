package edgewright.proof;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.Chart;
import edgewright.chart.Counting;
import edgewright.chart.HookHand;
import edgewright.chart.PatternDetails;
import edgewright.chart.PerSide;
import edgewright.chart.Round;
import edgewright.chart.Section;
import edgewright.chart.Side;
import edgewright.chart.SidePlace;
import edgewright.chart.SideShape;
import edgewright.chart.Stitch;
import edgewright.chart.Terms;
import edgewright.fit.ChangeRounds;
import edgewright.fit.CountChange;
import edgewright.fit.Fit;
import edgewright.fit.FitPlan;
import edgewright.fit.FitQuestion;
import edgewright.fit.FitWarning;
import edgewright.fit.SideChange;
import edgewright.fit.SideStitch;
import edgewright.fit.Ties;
import edgewright.hands.Fabric;
import edgewright.hands.FabricStitch;
import edgewright.hands.Stop;
import edgewright.testing.RandomCharts;
import edgewright.texts.English;
import edgewright.texts.Languages;
import edgewright.words.page.PlainText;
import edgewright.words.read.PatternReader;
import edgewright.words.read.ReadingResult;
import edgewright.words.write.PatternWriter;
import edgewright.words.write.WordingOptions;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * Pieces with wrong counts are put right as the plan says, by a maker who works the printed words from the base round to the
 * end: targets, closing and places hold, and from the changing round on the fabric is the chart's.
 */
class FittedPiecesTest {
    private static final int PIECES = 10_000;

    private final RandomCharts charts = new RandomCharts(20_261_128);
    private final Random random = charts.random();
    private long written;

    @Test
    void ten_thousand_pieces_are_put_right_in_their_plain_rounds_and_finished() {
        int plans = 0;
        int changes = 0;
        while (plans < PIECES) {
            Chart chart = chart(2 + random.nextInt(3));
            ChangeRounds rounds = ChangeRounds.of(chart);
            if (rounds.counting().isEmpty()) {
                continue;
            }
            Optional<FitPlan> found = plan(chart, rounds.counting().getAsInt());
            if (found.isEmpty()) {
                continue;
            }
            plans++;
            FitPlan plan = found.get();
            changes += plan.changes().stream().mapToInt(SideChange::changes).sum();
            assertThat(plan.warnings()).noneMatch(FitWarning.LandsAcross.class::isInstance);
            WordingOptions options = options(chart);
            if (plans % 5 == 0) {
                assertThat(PatternReader.read(words(chart, options, plan), options.language()))
                        .isEqualTo(new ReadingResult.Understood(PatternWriter.tree(chart, options.withPiece(plan))));
            }
            ProofResult result = new Prover(chart, options.language()).prove(options, plan);
            assertThat(result)
                    .as(() -> plan.question() + "\n" + words(chart, options, plan))
                    .isInstanceOf(ProofResult.Agrees.class);
            Fabric fabric = result.fabric().orElseThrow();
            for (Side side : Side.values()) {
                assertPutRight(chart.shape(Side.FIRST), plan, fabric, side);
            }
        }
        System.getLogger(FittedPiecesTest.class.getName())
                .log(System.Logger.Level.INFO, "{0} pieces, {1} changes, all finished", plans, changes);
    }

    private static void assertPutRight(SideShape shape, FitPlan plan, Fabric fabric, Side side) {
        int target = plan.targets().wanted().get(side);
        assertThat(shape.closes(plan.question().round(), target)).isTrue();
        List<FabricStitch> made = fabric.side(plan.changing(), side);
        if (plan.isDone()) {
            return;
        }
        assertThat(made).hasSize(plan.stitchesAfterwards().get(side)).hasSize(target + 2);
        SideChange change = plan.change(side);
        List<Integer> feet = new ArrayList<>();
        for (FabricStitch stitch : made) {
            if (stitch.isUneven()) {
                feet.add(stitch.below().orElseThrow().number());
            }
        }
        assertThat(feet.stream().distinct().toList())
                .isEqualTo(change.places().stream().map(SidePlace::stitch).toList());
        assertThat(feet).hasSize(change.changes() * (change.kind() == CountChange.INCREASE ? 2 : 1));
    }

    @Test
    void a_long_stitch_stops_the_hands_above_a_change_exactly_where_the_plan_warns_of_it() {
        int stopped = 0;
        int finished = 0;
        while (stopped + finished < 3_000) {
            // A round that begins along a side meets its long stitches in another order than the plan tells of them.
            Chart chart = chart(1 + random.nextInt(2)).withMaking(PatternDetails.NONE);
            int firstLong = ChangeRounds.of(chart).firstLong().orElse(0);
            // The changes are worked in the last plain round, which the first long stitches lie before.
            boolean isPlain =
                    firstLong >= 2 && isOneStitch(chart.round(firstLong - 1)) && firstLong - 2 <= plain(chart);
            Optional<FitPlan> found = isPlain ? plan(chart, firstLong - 2) : Optional.empty();
            if (found.isEmpty()) {
                continue;
            }
            FitPlan plan = found.get();
            List<SideStitch> across = plan.warnings().stream()
                    .filter(FitWarning.LandsAcross.class::isInstance)
                    .flatMap(warning -> ((FitWarning.LandsAcross) warning).longStitches().stream())
                    .toList();
            ProofResult result =
                    new Prover(chart, English.LANGUAGE).prove(WordingOptions.of(chart, English.LANGUAGE), plan);
            if (across.isEmpty()) {
                assertThat(result).isInstanceOf(ProofResult.Agrees.class);
                finished++;
            } else {
                Stop stop = ((ProofResult.Stopped) result).stop();
                assertThat(stop)
                        .isEqualTo(new Stop(
                                Stop.Reason.ACROSS_A_CHANGE,
                                across.get(0).place().round(),
                                across.get(0).side(),
                                across.get(0).place().stitch(),
                                Optional.of(Stitch.LONG),
                                0,
                                0));
                stopped++;
            }
        }
        assertThat(stopped).isGreaterThan(300);
        assertThat(finished).isGreaterThan(300);
    }

    @Test
    void no_wrong_number_in_the_words_of_a_changing_round_passes() {
        WrongNumbers wrong = new WrongNumbers("[0-9]+", right -> right + (random.nextBoolean() ? 1 : -1));
        int spoilt = 0;
        int plans = 0;
        while (plans < 60) {
            Chart chart = chart(3);
            int counting = ChangeRounds.of(chart).counting().orElse(-1);
            Optional<FitPlan> found = counting < 0 ? Optional.empty() : plan(chart, counting);
            if (found.isEmpty() || found.get().isDone()) {
                continue;
            }
            FitPlan plan = found.get();
            plans++;
            String text = words(chart, WordingOptions.of(chart, English.LANGUAGE), plan);
            int begin = text.indexOf("\n  Along the ");
            int end = text.indexOf("\n\n", begin);
            spoilt += wrong.assertNonePasses(
                    text,
                    begin,
                    end,
                    words -> new Prover(chart, English.LANGUAGE)
                            .prove(words, plan)
                            .agrees());
        }
        assertThat(spoilt).isGreaterThan(800);
    }

    private Optional<FitPlan> plan(Chart chart, int counting) {
        int fewest = chart.shape(Side.FIRST).fewestStitches(counting);
        int spread = 1 + random.nextInt(60);
        PerSide<Integer> counts = PerSide.all(0).map(zero -> fewest + random.nextInt(spread));
        Ties ties = new Ties(random.nextBoolean(), random.nextBoolean());
        FitQuestion question = new FitQuestion(counting, counts, Counting.STITCHES, ties, Optional.empty());
        return Fit.answer(chart, question) instanceof FitPlan plan ? Optional.of(plan) : Optional.empty();
    }

    private WordingOptions options(Chart chart) {
        return WordingOptions.of(chart, Languages.of(++written))
                .withTerms(Terms.values()[random.nextInt(2)])
                .withCounting(Counting.values()[random.nextInt(2)])
                .withHand(HookHand.values()[random.nextInt(2)]);
    }

    private static String words(Chart chart, WordingOptions options, FitPlan plan) {
        return PlainText.of(PatternWriter.write(chart, options.withPiece(plan)));
    }

    /** A chart that can be worked and that begins with so many plain rounds. */
    private Chart chart(int plain) {
        SideShape shape = new SideShape(random.nextInt(5), 1 + random.nextInt(8), random.nextInt(5));
        Chart chart = charts.chart(shape, plain + 1 + random.nextInt(4));
        for (int r = 1; r <= plain; r++) {
            char letter = random.nextInt(4) == 0 ? 'p' : 'b';
            String yarn = chart.round(r).yarn();
            chart = chart.withRound(
                    r,
                    Round.of(
                            yarn,
                            String.valueOf(letter).repeat(shape.length(Section.FROM_CORNER, r)),
                            String.valueOf(letter).repeat(shape.w()),
                            String.valueOf(letter).repeat(shape.length(Section.TO_CORNER, r))));
        }
        if (random.nextBoolean()) {
            chart = charts.started(chart);
        }
        return RandomCharts.workable(chart);
    }

    private static boolean isOneStitch(Round round) {
        return round.isAll(Stitch.BACK_LOOP) || round.isAll(Stitch.PLAIN);
    }

    /** How many rounds of one stitch throughout the chart begins with. */
    private static int plain(Chart chart) {
        int plain = 0;
        while (plain < chart.rounds().size() && isOneStitch(chart.round(plain + 1))) {
            plain++;
        }
        return plain;
    }
}
