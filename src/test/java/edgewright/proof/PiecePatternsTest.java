package edgewright.proof;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.Chart;
import edgewright.chart.Counting;
import edgewright.chart.HookHand;
import edgewright.chart.PerSide;
import edgewright.chart.Round;
import edgewright.chart.Section;
import edgewright.chart.Side;
import edgewright.chart.SideShape;
import edgewright.chart.Terms;
import edgewright.fit.Fit;
import edgewright.fit.FitAnswer;
import edgewright.fit.FitPlan;
import edgewright.fit.FitQuestion;
import edgewright.fit.FitRefusal;
import edgewright.fit.Ties;
import edgewright.hands.Fabric;
import edgewright.testing.RandomCharts;
import edgewright.texts.English;
import edgewright.texts.Languages;
import edgewright.words.page.PlainText;
import edgewright.words.read.PatternReader;
import edgewright.words.read.ReadingResult;
import edgewright.words.write.PatternWriter;
import edgewright.words.write.WordingOptions;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * The whole written pattern for one piece, counted in any round: written, read and worked by hands that know nothing of the
 * plan. Whatever {@link Fit#inWords} lets through makes the chart from the changing round on; what it refuses could not be
 * worked.
 */
class PiecePatternsTest {
    private static final int PIECES = 600;

    private final RandomCharts charts = new RandomCharts(20_261_125);
    private final Random random = charts.random();
    private long written;

    @Test
    void every_pattern_for_a_piece_is_worked_to_the_chart_with_the_counts_that_were_planned() {
        int pieces = 0;
        while (pieces < PIECES) {
            Chart chart = chart();
            if (!(Fit.inWords(chart, question(chart)) instanceof FitPlan plan) || plan.isDone()) {
                continue;
            }
            pieces++;
            WordingOptions options = options(chart).withPiece(plan);
            String text = PlainText.of(PatternWriter.write(chart, options));
            assertThat(PatternReader.read(text, options.language()))
                    .isEqualTo(new ReadingResult.Understood(PatternWriter.tree(chart, options)));
            ProofResult result = new Prover(chart, options.language()).prove(text, plan);
            assertThat(result).as(() -> plan.question() + "\n" + text).isInstanceOf(ProofResult.Agrees.class);
            assertCountsAsPlanned(plan, result.fabric().orElseThrow());
        }
    }

    private static void assertCountsAsPlanned(FitPlan plan, Fabric fabric) {
        int counting = plan.question().round();
        for (int round = 0; round <= fabric.rounds(); round++) {
            PerSide<Integer> meant = round <= counting
                    ? plan.question().stitches()
                    : plan.targets().wanted();
            for (Side side : Side.values()) {
                // Each side grows by two stitches a round.
                assertThat(fabric.side(round, side)).hasSize(meant.get(side) + 2 * (round - counting));
            }
        }
    }

    @Test
    void a_piece_is_refused_only_where_its_words_could_not_be_worked() {
        int across = 0;
        int patterned = 0;
        while (across < 100 || patterned < 100) {
            Chart chart = chart();
            FitQuestion question = question(chart);
            if (!(Fit.inWords(chart, question) instanceof FitRefusal.NotInWords not)) {
                continue;
            }
            FitPlan plan = (FitPlan) Fit.answer(chart, question);
            if (not.patterned().contains(plan.changing())) {
                patterned++;
                continue;
            }
            boolean couldComeOut =
                    not.across().isEmpty() && chart.round(1).repeat().length() > 1;
            if (!couldComeOut) {
                assertThat(new Prover(chart, English.LANGUAGE)
                                .prove(WordingOptions.of(chart, English.LANGUAGE), plan)
                                .agrees())
                        .isFalse();
                across++;
            }
        }
    }

    @Test
    void no_wrong_number_in_the_changing_round_passes() {
        WrongNumbers wrong =
                new WrongNumbers("(?<![\\p{L}\\d])[0-9]+", right -> right + (random.nextBoolean() ? 1 : -1));
        int spoilt = 0;
        int pieces = 0;
        while (pieces < 60) {
            Chart chart = chart();
            if (!(Fit.inWords(chart, question(chart)) instanceof FitPlan plan) || plan.isDone()) {
                continue;
            }
            pieces++;
            String text = PlainText.of(PatternWriter.write(
                    chart, WordingOptions.of(chart, English.LANGUAGE).withPiece(plan)));
            int begin = text.indexOf("): ", text.indexOf("\nRound " + plan.changing() + " (")) + 3;
            int end = text.indexOf("\n\n", begin);
            spoilt += wrong.assertNonePasses(
                    text,
                    begin,
                    end,
                    words -> new Prover(chart, English.LANGUAGE)
                            .prove(words, plan)
                            .agrees());
        }
        assertThat(spoilt).isGreaterThan(1_000);
    }

    /** A piece counted in any round, in either way, with whatever may be wanted of it. */
    private FitQuestion question(Chart chart) {
        int round = random.nextInt(chart.rounds().size());
        Counting counting = Counting.values()[random.nextInt(2)];
        int fewest = chart.shape(Side.FIRST).fewestStitches(round);
        int spread = 1 + random.nextInt(60);
        PerSide<Integer> stitches = PerSide.all(0).map(zero -> fewest + random.nextInt(spread));
        Ties ties = new Ties(random.nextBoolean(), random.nextBoolean());
        FitQuestion question = new FitQuestion(round, stitches.map(counting::shown), counting, ties, Optional.empty());
        return random.nextInt(4) > 0 ? question : wanting(chart, question);
    }

    /** One repeat more than in the nearest size. */
    private FitQuestion wanting(Chart chart, FitQuestion question) {
        FitAnswer nearest = Fit.answer(chart, question);
        return nearest instanceof FitPlan plan
                ? question.wanting(plan.targets()
                        .wanted()
                        .map(stitches -> question.counting()
                                .shown(stitches + chart.shape(Side.FIRST).w())))
                : question;
    }

    private WordingOptions options(Chart chart) {
        return WordingOptions.of(chart, Languages.of(++written))
                .withTerms(Terms.values()[random.nextInt(2)])
                .withCounting(Counting.values()[random.nextInt(2)])
                .withHand(HookHand.values()[random.nextInt(2)]);
    }

    /** A chart that can be worked and that begins with one to four rounds of one stitch. */
    private Chart chart() {
        SideShape shape = new SideShape(random.nextInt(5), 1 + random.nextInt(8), random.nextInt(5));
        int plain = 1 + random.nextInt(4);
        Chart chart = charts.chart(shape, plain + 1 + random.nextInt(4));
        for (int r = 1; r <= plain; r++) {
            String letter = random.nextInt(4) == 0 ? "p" : "b";
            chart = chart.withRound(
                    r,
                    Round.of(
                            chart.round(r).yarn(),
                            letter.repeat(shape.length(Section.FROM_CORNER, r)),
                            letter.repeat(shape.w()),
                            letter.repeat(shape.length(Section.TO_CORNER, r))));
        }
        return RandomCharts.workable(random.nextBoolean() ? charts.started(chart) : chart);
    }
}
