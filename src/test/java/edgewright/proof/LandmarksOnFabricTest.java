package edgewright.proof;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.Chart;
import edgewright.chart.PerSide;
import edgewright.chart.Round;
import edgewright.chart.SideShape;
import edgewright.chart.Stitch;
import edgewright.check.Checker;
import edgewright.check.Finding;
import edgewright.fit.GuideSentences;
import edgewright.fit.Landmarks;
import edgewright.hands.Fabric;
import edgewright.hands.FabricStitch;
import edgewright.hands.WorkOutcome;
import edgewright.testing.RandomCharts;
import edgewright.texts.English;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * What a maker is told to see is there: every sentence about a round is held to the stitches that came off a maker's hook,
 * which know what they stand over and what the hook went into, but no columns.
 */
class LandmarksOnFabricTest {
    private static final int CHARTS = 3_000;
    private static final int ROUNDS = 6;

    /** Every kind of sentence about a round, and whether it is true of one side. */
    private static final Map<Pattern, Claim> CLAIMS = new LinkedHashMap<>();

    static {
        each(
                "sits between two long stitches of the round below",
                (side, made) -> side.after(made) && side.before(made));
        each("comes directly after a long stitch of the round below", Side::after);
        each("comes directly before a long stitch of the round below", Side::before);
        each(
                "comes directly before or after a long stitch of the round below",
                (side, made) -> side.after(made) || side.before(made));
        each("stands midway between two long stitches of the round below", Side::midway);
        each(
                "stands over a long stitch two rounds below",
                (side, made) -> made.below()
                        .flatMap(FabricStitch::below)
                        .filter(LandmarksOnFabricTest::isLong)
                        .isPresent());
        claim(
                "The long stitches stand in groups of (\\d+).",
                (side, said) -> side.groups().stream().allMatch(size -> size == number(said, 1)));
        claim(
                "The first long stitch after a corner is stitch (\\d+) \\(the one in the corner chain is 1\\).",
                (side, said) -> side.longs().isEmpty() || side.longs().get(0).number() == number(said, 1));
        claim(
                "The first long stitch after a corner is stitch 2 \\(the one in the corner chain is 1\\): it goes into the corner "
                        + "chain two rounds below.",
                (side, said) ->
                        side.longs().isEmpty() || inCornerChain(side.longs().get(0)));
        claim(
                "Each side has (\\d+) long stitch(?:es)?.",
                (side, said) -> side.longs().size() == number(said, 1));
        claim(
                "Each repeat of the chart has (\\d+) long stitch(?:es)?, and the corners have none.",
                (side, said) -> side.longs().size() == side.repeats() * number(said, 1));
        claim(
                "Each side has (\\d+) long stitch(?:es)? near its corners, and (\\d+) more in each repeat of the chart.",
                (side, said) -> side.longs().size() == number(said, 1) + side.repeats() * number(said, 2));
        claim(
                "Long stitches: top (\\d+), left (\\d+), bottom (\\d+), right (\\d+).",
                (side, said) -> side.longs().size() == number(said, side.number() + 1));
    }

    private interface Claim {
        boolean isTrue(Side side, MatchResult said);
    }

    private interface OfStitch {
        boolean isTrue(Side side, FabricStitch longStitch);
    }

    private static void claim(String sentence, Claim claim) {
        CLAIMS.put(Pattern.compile(sentence), claim);
    }

    private static void each(String what, OfStitch claim) {
        claim(
                "Each long stitch " + what + ".",
                (side, said) -> side.longs().stream().allMatch(made -> claim.isTrue(side, made)));
    }

    private static int number(MatchResult said, int group) {
        return Integer.parseInt(said.group(group));
    }

    private static boolean isLong(FabricStitch made) {
        return made.stitch().equals(Optional.of(Stitch.LONG));
    }

    private static boolean inCornerChain(FabricStitch made) {
        return made.number() == 2 && made.into().orElseThrow().kind() == FabricStitch.Kind.CORNER;
    }

    /**
     * A side of a round as it lies before the maker.
     *
     * @param number 0 to 3: top, left, bottom, right
     */
    private record Side(int number, int repeats, List<FabricStitch> stitches, List<FabricStitch> below) {
        List<FabricStitch> longs() {
            return stitches.stream().filter(LandmarksOnFabricTest::isLong).toList();
        }

        /** The stitch of the round below that lies so many steps on from the one that this long stitch covers. */
        private Optional<FabricStitch> besideCovered(FabricStitch longStitch, int steps) {
            int covered = below.indexOf(longStitch.below().orElseThrow());
            int at = covered + steps;
            return covered < 0 || at < 0 || at >= below.size() ? Optional.empty() : Optional.of(below.get(at));
        }

        boolean after(FabricStitch longStitch) {
            return besideCovered(longStitch, -1)
                    .filter(LandmarksOnFabricTest::isLong)
                    .isPresent();
        }

        boolean before(FabricStitch longStitch) {
            return besideCovered(longStitch, 1)
                    .filter(LandmarksOnFabricTest::isLong)
                    .isPresent();
        }

        boolean midway(FabricStitch longStitch) {
            int back = stepsToLong(longStitch, -1);
            return back > 1 && back == stepsToLong(longStitch, 1);
        }

        private int stepsToLong(FabricStitch longStitch, int way) {
            return IntStream.range(0, below.size())
                    .filter(steps -> besideCovered(longStitch, way * steps)
                            .filter(LandmarksOnFabricTest::isLong)
                            .isPresent())
                    .findFirst()
                    .orElse(-1);
        }

        /** The sizes of the runs of long stitches side by side. */
        List<Integer> groups() {
            StringBuilder letters = new StringBuilder();
            stitches.forEach(made -> letters.append(isLong(made) ? 'l' : ' '));
            return Pattern.compile("l+")
                    .matcher(letters)
                    .results()
                    .map(run -> run.group().length())
                    .toList();
        }
    }

    @Test
    void every_sentence_about_a_round_is_true_of_the_fabric_that_a_maker_makes() {
        RandomCharts charts = new RandomCharts(41);
        Random random = charts.random();
        Set<String> met = new TreeSet<>();
        PerSide<Integer> repeats = PerSide.of(0, 1, 2, 3);
        for (int i = 0; i < CHARTS; i++) {
            SideShape shape = new SideShape(random.nextInt(3), 1 + random.nextInt(4), random.nextInt(3));
            Chart chart = workable(charts.chart(shape, ROUNDS), random.nextBoolean());
            WorkOutcome outcome = Prover.workCells(chart, repeats);
            assertThat(outcome).isInstanceOf(WorkOutcome.Finished.class);
            for (int round = 1; round <= ROUNDS; round++) {
                GuideSentences sentences = new GuideSentences(English.LANGUAGE);
                hold(sentences.landmarks(Landmarks.of(chart, round)), outcome.fabric(), round, repeats, met);
                hold(
                        sentences.landmarks(Landmarks.of(chart, round, repeats), repeats),
                        outcome.fabric(),
                        round,
                        repeats,
                        met);
            }
        }
        // A check that meets nothing would pass too.
        assertThat(met)
                .isEqualTo(new TreeSet<>(
                        CLAIMS.keySet().stream().map(Pattern::pattern).toList()));
    }

    private static void hold(List<String> said, Fabric fabric, int round, PerSide<Integer> repeats, Set<String> met) {
        for (String sentence : said) {
            Map.Entry<Pattern, Claim> claim = CLAIMS.entrySet().stream()
                    .filter(entry -> entry.getKey().matcher(sentence).matches())
                    .findFirst()
                    .orElseThrow(() -> new AssertionError("nobody knows what this says: " + sentence));
            Matcher match = claim.getKey().matcher(sentence);
            assertThat(match.matches()).isTrue();
            met.add(claim.getKey().pattern());
            Predicate<Side> holds = side -> claim.getValue().isTrue(side, match.toMatchResult());
            for (edgewright.chart.Side side : edgewright.chart.Side.values()) {
                Side made = new Side(
                        side.ordinal(), repeats.get(side), fabric.side(round, side), fabric.side(round - 1, side));
                assertThat(made)
                        .as("'%s' of %s on %s", sentence, fabric.letters(round, side), below(fabric, round, side))
                        .matches(holds);
            }
        }
    }

    private static String below(Fabric fabric, int round, edgewright.chart.Side side) {
        return round == 1 ? "the base round" : fabric.letters(round - 1, side);
    }

    /** The same chart with whatever hands cannot work made back-loop. */
    private static Chart workable(Chart any, boolean stacking) {
        Chart chart = any.withRules(any.rules().withStackLongStitches(stacking));
        List<Finding> errors = Checker.check(chart).errors();
        while (!errors.isEmpty()) {
            for (Finding error : errors) {
                var place = error.place().oneStitch().orElseThrow();
                Round round = chart.round(place.round());
                chart = chart.withRound(
                        place.round(),
                        round.with(
                                place.section(), round.section(place.section()).with(place.place(), Stitch.BACK_LOOP)));
            }
            errors = Checker.check(chart).errors();
        }
        return chart;
    }
}
