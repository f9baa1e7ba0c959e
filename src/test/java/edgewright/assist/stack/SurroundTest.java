package edgewright.assist.stack;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import edgewright.assist.stack.SurroundAnswer.Change;
import edgewright.assist.stack.SurroundAnswer.Closes;
import edgewright.assist.stack.SurroundAnswer.Limit;
import edgewright.assist.stack.SurroundAnswer.NeverCloses;
import edgewright.assist.stack.SurroundAnswer.TooLarge;
import edgewright.chart.Chart;
import edgewright.chart.Colour;
import edgewright.chart.Edits;
import edgewright.chart.Heading;
import edgewright.chart.Round;
import edgewright.chart.Section;
import edgewright.chart.Side;
import edgewright.chart.SideShape;
import edgewright.chart.Stitch;
import edgewright.chart.Yarn;
import edgewright.check.Checker;
import edgewright.testing.RandomCharts;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class SurroundTest {
    private static final Heading BOTH = Heading.of("Both");
    private static final Yarn PEAT = new Yarn("A", "Peat", Colour.parse("#2b2a33"));
    private static final Yarn CHALK = new Yarn("B", "Chalk", Colour.parse("#f2ead8"));
    private static final Yarn RUST = new Yarn("B", "Rust", Colour.parse("#a9502f"));

    /** A = 1, w = 2, B = 0. */
    private static final Chart STEPS = new Chart(
            Heading.of("Steps"),
            List.of(PEAT, CHALK),
            List.of(
                    Round.of("A", "bb", "bb", "b"),
                    Round.of("B", "bbb", "bb", "bb"),
                    Round.of("A", "bbbl", "bl", "bbb")));

    /** A = 0, w = 3, B = 1. */
    private static final Chart POSTS = new Chart(
            Heading.of("Posts"),
            List.of(RUST, PEAT),
            List.of(Round.of("B", "b", "bbb", "bb"), Round.of("A", "bl", "bbl", "bbb")));

    @Test
    void theInnerRoundsThePlainRoundsAndTheOuterRoundsAreOneChart() {
        Closes both = (Closes) Surround.of(STEPS, POSTS, BOTH);
        // Both would close at once, on S = 1 (mod 6); but then long stitches of Posts would land on long stitches of
        // Steps.
        // After one plain round S = 1 (mod 2) and S + 8 = 1 (mod 3): S = 5 (mod 6), so A + B = 5.
        assertThat(both.between()).isEqualTo(1);
        assertThat(both.plainYarn()).isEqualTo(PEAT);
        assertThat(both.renamed()).isEqualTo(Map.of("B", "C"));
        assertThat(both.chart().yarns())
                .isEqualTo(List.of(PEAT, CHALK, new Yarn("C", "Rust", Colour.parse("#a9502f"))));
        assertThat(both.chart().rounds().stream().map(Round::yarn)).containsExactly("A", "B", "A", "A", "C", "A");
        assertThat(both.chart().rounds().stream()
                        .map(round -> round.side(Side.FIRST, 1).letters())
                        .toList())
                .containsExactly(
                        "bbbbbbbbbbbbb",
                        "bbbbbbbbbbbbbbb",
                        "bbblblblblblblbbb",
                        "bbbbbbbbbbbbbbbbbbb",
                        "bbbbbbbbbbbbbbbbbbbbb",
                        "blbblbblbblbblbblbblbbb");
        assertThat(both.chart().shape()).isEqualTo(new SideShape(3, 6, 2));
    }

    @Test
    void eachSideHasTheVeryStitchesOfItsTwoBorders() {
        int closing = 0;
        int never = 0;
        for (int seed = 0; seed < 1_500; seed++) {
            RandomCharts charts = new RandomCharts(seed);
            Chart inner = RandomCharts.workable(charts.small());
            Chart outer = RandomCharts.workable(charts.small());
            SurroundAnswer answer = Surround.of(inner, outer, BOTH);
            if (answer instanceof Closes both) {
                closing++;
                assertThat(Checker.check(both.chart()).errors())
                        .as("seed %d", seed)
                        .isEmpty();
                assertSidesOf(both, inner, outer);
                assertFewest(both, inner, outer);
            } else {
                never++;
                assertChangesHelp((NeverCloses) answer, inner, outer);
            }
        }
        assertThat(closing).isGreaterThan(800);
        assertThat(never).isGreaterThan(100);
    }

    private static void assertSidesOf(Closes both, Chart inner, Chart outer) {
        Chart chart = both.chart();
        assertThat(chart.raggedSections()).isEmpty();
        int before = inner.rounds().size() + both.between();
        for (int m = 0; m <= 2; m++) {
            int base = chart.shape().stitches(0, m);
            int ofInner = inner.shape().repeats(0, base).orElseThrow();
            int ofOuter = outer.shape().repeats(0, base + 2 * before).orElseThrow();
            for (int r = 1; r <= chart.rounds().size(); r++) {
                Round round = chart.round(r);
                if (r > before) {
                    Round own = outer.round(r - before);
                    assertThat(round.side(Side.FIRST, m)).isEqualTo(own.side(Side.FIRST, ofOuter));
                    assertSameYarn(chart.yarnOf(r), outer.yarnOf(r - before));
                } else if (r > inner.rounds().size()) {
                    assertThat(round.isAll(Stitch.BACK_LOOP)).isTrue();
                    assertThat(round.yarn()).isEqualTo(both.plainYarn().id());
                } else {
                    assertThat(round.side(Side.FIRST, m))
                            .isEqualTo(inner.round(r).side(Side.FIRST, ofInner));
                    assertThat(chart.yarnOf(r)).isEqualTo(inner.yarnOf(r));
                }
            }
        }
    }

    private static void assertSameYarn(Yarn one, Yarn other) {
        assertThat(one.name()).isEqualTo(other.name());
        assertThat(one.colour()).isEqualTo(other.colour());
    }

    /** With fewer plain rounds both do not close, or a long stitch would land on what cannot take it. */
    private static void assertFewest(Closes both, Chart inner, Chart outer) {
        int fewest = BaseCounts.fewestBetween(inner.shape(), inner.rounds().size(), outer.shape())
                .orElseThrow();
        if (both.between() > fewest) {
            assertThat(fewest).isZero();
            assertThat(both.between()).isEqualTo(BaseCounts.period(inner.shape(), outer.shape()));
            boolean isOpen = inner.round(inner.rounds().size()).isAll(Stitch.BACK_LOOP);
            assertThat(isOpen).isFalse();
        }
    }

    private static void assertChangesHelp(NeverCloses never, Chart inner, Chart outer) {
        assertThat(never.changes()).isNotEmpty();
        for (Change change : never.changes()) {
            Chart changed = change.ofInner() ? inner : outer;
            Chart longer = change.section() == Section.FROM_CORNER
                    ? Edits.changeFromCorner(changed, change.then())
                    : Edits.changeToCorner(changed, change.then());
            SideShape one = change.ofInner() ? longer.shape() : inner.shape();
            SideShape two = change.ofInner() ? outer.shape() : longer.shape();
            assertThat(BaseCounts.fewestBetween(one, inner.rounds().size(), two))
                    .hasValue(change.between());
        }
    }

    @Test
    void anEvenBorderNeverClosesRoundAnOddOne() {
        Chart odd = Chart.blank("Odd", new SideShape(1, 4, 0), 3, List.of(PEAT, CHALK));
        Chart even = Chart.blank("Even", new SideShape(0, 6, 0), 2, List.of(PEAT, CHALK));
        assertThat(Surround.of(odd, even, BOTH))
                .isEqualTo(new NeverCloses(
                        2,
                        false,
                        List.of(
                                new Change(false, Section.FROM_CORNER, 0, 1, 0),
                                new Change(true, Section.FROM_CORNER, 1, 2, 0),
                                new Change(false, Section.TO_CORNER, 0, 1, 0),
                                new Change(true, Section.TO_CORNER, 0, 1, 0),
                                new Change(true, Section.FROM_CORNER, 1, 0, 0))));
    }

    @Test
    void bothAllowWhatEitherAllows() {
        Chart strict =
                STEPS.withRules(STEPS.rules().withLandOnCornerChain(false).withLooseRun(4));
        Chart free = POSTS.withRules(POSTS.rules().withStackLongStitches(true));
        Closes both = (Closes) Surround.of(strict, free, BOTH);
        assertThat(both.chart().rules()).isEqualTo(POSTS.rules().withStackLongStitches(true));
    }

    @Test
    void whatIsTooLargeForOneChartIsSaid() {
        List<Yarn> yarns = List.of(PEAT);
        Chart wide = Chart.blank("Wide", new SideShape(0, 1_999, 0), 1, yarns);
        Chart other = Chart.blank("Other", new SideShape(0, 2, 0), 1, yarns);
        Chart deep = Chart.blank("Deep", new SideShape(0, 1, 0), 1_500, yarns);
        assertThat(Surround.of(wide, other, BOTH)).isEqualTo(new TooLarge(Limit.REPEAT, 3_998, 2_000));
        assertThat(Surround.of(deep, deep, BOTH)).isEqualTo(new TooLarge(Limit.ROUNDS, 3_000, 2_000));
        // S = 1999 + 4 is the smallest count for both, two more stitches for each corner section.
        Chart corner = Chart.blank("Corner", new SideShape(1_999, 2, 0), 1, yarns);
        Chart three = Chart.blank("Three", new SideShape(1, 3, 0), 1, yarns);
        assertThat(Surround.of(corner, three, BOTH)).isEqualTo(new TooLarge(Limit.CORNER, 2_002, 2_000));
    }

    @Test
    void aBorderWithErrorsIsWorkedRoundNothing() {
        Chart broken = STEPS.withRound(1, Round.of("A", "bb", "lb", "b"));
        assertThatThrownBy(() -> Surround.of(broken, POSTS, BOTH)).isInstanceOf(IllegalArgumentException.class);
    }
}
