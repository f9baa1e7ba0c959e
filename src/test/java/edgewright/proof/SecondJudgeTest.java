package edgewright.proof;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.Chart;
import edgewright.chart.Colour;
import edgewright.chart.Corner;
import edgewright.chart.Edits;
import edgewright.chart.Extras;
import edgewright.chart.PerSide;
import edgewright.chart.Place;
import edgewright.chart.Round;
import edgewright.chart.Rules;
import edgewright.chart.Section;
import edgewright.chart.Side;
import edgewright.chart.SidePlace;
import edgewright.chart.SideShape;
import edgewright.chart.Stitch;
import edgewright.chart.Stitches;
import edgewright.chart.Terms;
import edgewright.chart.Yarn;
import edgewright.check.Checker;
import edgewright.check.Finding;
import edgewright.check.Severity;
import edgewright.hands.Stop;
import edgewright.hands.Stop.Reason;
import edgewright.hands.WorkOutcome;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * Two judges that share nothing say the same of a chart: the rules find no error exactly when a maker can work it, and the
 * first error stands at the very stitch at which the maker stops, for the same reason.
 *
 * <p>The maker judges loops only. By design it is silent where the rules only warn: {@code other-yarn}, {@code deep-gap},
 * {@code loose-run}, {@code low-contrast} and {@code unseen-long} are about how the fabric looks and wears, not about whether it can be made.
 */
class SecondJudgeTest {
    /** Which rule speaks of what stops a maker. */
    private static final Map<Reason, String> RULE_OF = new EnumMap<>(Map.of(
            Reason.NO_ROUND_BELOW, "no-round-below",
            Reason.NOTHING_UNDER_CORNER, "past-corner",
            Reason.COVERED, "covered-loop",
            Reason.LOOP_TAKEN, "used-loop",
            Reason.ON_LONG, "lands-on-long",
            Reason.ON_CHAIN, "lands-on-chain",
            Reason.ON_CORNER, "lands-on-corner-chain",
            Reason.CHAIN_OVER_CORNER, "chain-at-corner"));

    private static final List<Yarn> YARNS =
            List.of(new Yarn("A", "Peat", Colour.parse("#2b2a33")), new Yarn("B", "Chalk", Colour.parse("#f2ead8")));

    /** The repeat is worked once on the first side, so that every stitch of the chart is come to there; then not, then twice. */
    private static final PerSide<Integer> REPEATS = PerSide.of(1, 0, 2, 0);

    private int judged;
    private int stopped;

    @Test
    void both_judges_agree_on_every_chart_of_back_loop_and_long_stitches_of_small_size() {
        // Four rounds of charts with A + B + w up to this number, three rounds of charts one wider.
        // -Dedgewright.exhaustive=2 takes in four rounds of a repeat of three too: some forty million charts.
        int widest = Integer.getInteger("edgewright.exhaustive", 1);
        for (SideShape shape : shapesUpTo(widest + 1)) {
            int total = shape.a() + shape.w() + shape.b();
            for (int chains = 1; chains <= 3; chains++) {
                for (boolean stack : List.of(false, true)) {
                    for (boolean onCorner : List.of(false, true)) {
                        extend(
                                blank(shape, chains, onCorner, stack),
                                1,
                                total <= widest || (widest > 1 && shape.w() == total) ? 4 : 3);
                    }
                }
            }
        }
        assertThat(judged).isGreaterThan(100_000);
        assertThat(stopped).isBetween(judged / 10, judged * 99 / 100);
        report();
    }

    @Test
    void both_judges_agree_on_thousands_of_charts_of_all_four_stitches() {
        Random random = new Random(20_261_125);
        for (int i = 0; i < 20_000; i++) {
            judge(random(random));
        }
        assertThat(stopped).isBetween(judged / 10, judged * 99 / 100);
        report();
    }

    /** Puts every possible round on top of a chart that can be worked. What has stopped stays stopped, whatever follows. */
    private void extend(Chart below, int round, int lastRound) {
        SideShape shape = below.shape();
        int from = shape.length(Section.FROM_CORNER, round);
        int to = shape.length(Section.TO_CORNER, round);
        int stitches = from + shape.w() + to;
        for (int pick = 0; pick < 1 << stitches; pick++) {
            StringBuilder letters = new StringBuilder();
            for (int i = 0; i < stitches; i++) {
                letters.append((pick >> i & 1) == 0 ? 'b' : 'l');
            }
            Round next = Round.of(
                    round % 2 == 1 ? "A" : "B",
                    letters.substring(0, from),
                    letters.substring(from, from + shape.w()),
                    letters.substring(from + shape.w()));
            List<Round> rounds = new ArrayList<>(below.rounds().subList(0, round - 1));
            rounds.add(next);
            Chart chart = below.withRounds(rounds);
            if (judge(chart) && round < lastRound) {
                extend(chart, round + 1, lastRound);
            }
        }
    }

    /** Whether the chart can be worked; fails if the judges differ. */
    private boolean judge(Chart chart) {
        judged++;
        List<Finding> findings = Checker.check(chart).findings();
        Optional<Finding> firstError = findings.stream()
                .filter(finding -> finding.severity() == Severity.ERROR)
                .findFirst();
        WorkOutcome outcome = Prover.workCells(chart, REPEATS);
        if (outcome instanceof WorkOutcome.Stopped stop) {
            stopped++;
            Place place = placeOf(chart, stop.stop());
            assertThat(findings.stream()
                            .filter(finding -> finding.place().oneStitch().equals(Optional.of(place)))
                            .map(Finding::rule))
                    .as("at %s of %s", place, chart.rounds())
                    .contains(RULE_OF.get(stop.stop().reason()));
            assertThat(firstError.orElseThrow().place().oneStitch())
                    .as("first error of %s", chart.rounds())
                    .contains(place);
            return false;
        }
        assertThat(firstError).as("worked to the end: %s", chart.rounds()).isEmpty();
        return true;
    }

    private static Place placeOf(Chart chart, Stop stop) {
        int repeats = REPEATS.get(stop.side());
        return chart.shape(Side.FIRST).placeOf(new SidePlace(stop.round(), stop.stitch()), repeats);
    }

    /** Said once on the console of the build, so that the number of charts judged can be read off. */
    private void report() {
        System.Logger log = System.getLogger(SecondJudgeTest.class.getName());
        log.log(System.Logger.Level.INFO, "{0} charts judged, {1} cannot be worked, 0 disagreements", judged, stopped);
    }

    private static List<SideShape> shapesUpTo(int total) {
        List<SideShape> shapes = new ArrayList<>();
        for (int a = 0; a <= total; a++) {
            for (int b = 0; b <= total; b++) {
                for (int w = 1; w <= 3 && a + b + w <= total; w++) {
                    shapes.add(new SideShape(a, w, b));
                }
            }
        }
        return shapes;
    }

    private static Chart blank(SideShape shape, int chains, boolean onCorner, boolean stack) {
        return Chart.blank("Mud Ripple", shape, 1, YARNS)
                .withCorner(new Corner(chains, Extras.NONE))
                .withRules(new Rules(onCorner, stack, 9, Extras.NONE))
                .withTerms(Terms.UK);
    }

    private static Chart random(Random random) {
        SideShape shape = new SideShape(random.nextInt(4), 1 + random.nextInt(6), random.nextInt(4));
        Chart chart = blank(shape, 1 + random.nextInt(3), random.nextBoolean(), random.nextBoolean());
        int rounds = 1 + random.nextInt(8);
        for (int r = 2; r <= rounds; r++) {
            chart = Edits.insertRounds(chart, r, List.of(r % 2 == 1 ? "A" : "B"));
        }
        // The rarer the other stitches, the further hands get before they stop.
        int often = 2 + random.nextInt(30);
        for (int r = 1; r <= rounds; r++) {
            Round round = chart.round(r);
            for (Section section : Section.values()) {
                Stitches stitches = round.section(section);
                for (int i = 1; i <= stitches.length(); i++) {
                    if (random.nextInt(often) == 0) {
                        stitches = stitches.with(i, Stitch.values()[random.nextInt(4)]);
                    }
                }
                round = round.with(section, stitches);
            }
            chart = chart.withRound(r, round);
        }
        return chart;
    }
}
