package edgewright.words.write;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.Chart;
import edgewright.chart.Round;
import edgewright.chart.Side;
import edgewright.chart.Stitches;
import edgewright.words.SeededCharts;
import edgewright.words.tree.Group;
import edgewright.words.tree.SideInstructions;
import edgewright.words.tree.SideStep;
import edgewright.words.tree.SideWords;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A round is said with the shortest period of its repeat, for every size. */
class GroupedSideTest {

    @ParameterizedTest(name = "{0} {1} {2} is said as {3}")
    @CsvSource({
        // One stitch throughout.
        "bb, bbbb, bbb, *b* 0",
        "p, p, p, *p* 0",
        // The same in the middle only.
        "bbl, bbbb, bbb, bb l *b* 0",
        "lbb, bbbb, bbl, l *b* 1 l",
        // The example round of the format: nothing is gained, the group stays in its place.
        "bbbb, lblblbbb, lblbb, bbbb *l b l b l bbb* 5 l b l bb",
        // A shorter period.
        "b, lbblbb, b, b *l bb* 1 b",
        "b, lblb, l, *b l* 0",
        // Corner sections that continue the period, by whole periods together.
        "bb, lbbb, lb, *bb l b* 0",
        "bbllbbb, llbbb, ll, bb *ll bbb* 2 ll",
        "b, lbbb, lbbbl, b *l bbb* 1 l",
        "bbbb, lbb, lbb, bbbb *l bb* 0",
        // The end of the period alone is not enough.
        "lbb, lbbb, b, l bb *l bbb* 1 b",
    })
    void aRoundIsSaidAsSimplyAsItCanBe(String from, String repeat, String to, String said) {
        assertThat(said(GroupedSide.of(Stitches.of(from), Stitches.of(repeat), Stitches.of(to))))
                .isEqualTo(said);
    }

    @Test
    void aRepeatWithoutStitchesIsNotSaid() {
        assertThat(said(GroupedSide.of(Stitches.of("bb"), Stitches.of(""), Stitches.of("bl"))))
                .isEqualTo("bbb l");
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 5})
    void theWordsOfEveryRoundComeOutEvenForSoManyRepeats(int repeats) {
        for (long seed = 0; seed < 3_000; seed++) {
            Chart chart = new SeededCharts(seed).any();
            for (Round round : chart.rounds()) {
                SideInstructions said = GroupedSide.of(round.fromCorner(), round.repeat(), round.toCorner());
                Group group = said.group().orElseThrow();
                String side = round.side(Side.FIRST, repeats).letters();
                // As a maker does it: the group as often as it fits before the last stitches.
                int room = side.length() - SideStep.stitches(said.before()) - group.lastStitches();
                int width = group.stitches();
                assertThat(room % width).as("seed %d, %s", seed, round).isZero();
                String worked = SideWords.letters(said.before())
                        + SideWords.letters(group.steps()).repeat(room / width)
                        + SideWords.letters(said.after());
                assertThat(worked).as("seed %d, %s", seed, round).isEqualTo(side);
                assertThat(group.lastStitches()).isEqualTo(SideStep.stitches(said.after()));
                assertThat(width).isEqualTo(round.repeat().shortestPeriod());
            }
        }
    }

    @Test
    void nothingIsGainedByBeginningTheGroupElsewhere() {
        for (long seed = 0; seed < 1_000; seed++) {
            for (Round round : new SeededCharts(seed).any().rounds()) {
                SideInstructions said = GroupedSide.of(round.fromCorner(), round.repeat(), round.toCorner());
                assertThat(cost(said)).as("seed %d, %s", seed, round).isEqualTo(leastCost(round));
            }
        }
    }

    /** Tries every way of taking whole periods from the corner sections, with no thought of speed. */
    private static int leastCost(Round round) {
        int period = round.repeat().shortestPeriod();
        String from = round.fromCorner().letters();
        String to = round.toCorner().letters();
        int least = Integer.MAX_VALUE;
        for (int x = 0; x <= from.length(); x++) {
            for (int y = 0; y <= to.length(); y++) {
                String middle =
                        from.substring(from.length() - x) + round.repeat().letters() + to.substring(0, y);
                if ((x + y) % period == 0 && middle.startsWith(middle.substring(period))) {
                    String group = middle.substring(0, period);
                    String before = from.substring(0, from.length() - x);
                    least = Math.min(least, runs(before) + 2 * runs(group) + runs(to.substring(y)));
                }
            }
        }
        return least;
    }

    private static int runs(String letters) {
        return letters.isEmpty() ? 0 : letters.split("(?<=(.))(?!\\1)").length;
    }

    private static int cost(SideInstructions said) {
        return said.before().size()
                + 2 * said.group().orElseThrow().steps().size()
                + said.after().size();
    }

    private static String said(SideInstructions said) {
        String group = said.group()
                .map(g -> "*" + SideWords.spaced(g.steps()) + "* " + g.lastStitches())
                .orElse("");
        return (SideWords.spaced(said.before()) + " " + group + " " + SideWords.spaced(said.after())).strip();
    }
}
