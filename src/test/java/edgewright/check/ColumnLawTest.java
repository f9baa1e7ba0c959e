package edgewright.check;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.Chart;
import edgewright.chart.Extras;
import edgewright.chart.Place;
import edgewright.chart.Rules;
import edgewright.chart.Section;
import edgewright.chart.Side;
import edgewright.chart.SideShape;
import edgewright.chart.Stitch;
import edgewright.testing.RandomCharts;
import edgewright.testing.Sketches;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class ColumnLawTest {
    private static final List<Boolean> EITHER = List.of(false, true);
    private static final SideShape SHAPE = new SideShape(1, 2, 1);

    /** One question to the law. */
    private record Question(Stitch stitch, Underlay under, Rules rules) {}

    @Test
    void a_long_stitch_needs_an_open_front_loop_of_something_firm_two_rounds_below() {
        assertThat(broken(Stitch.LONG, on(Stitch.BACK_LOOP, Stitch.PLAIN))).isEmpty();
        assertThat(broken(Stitch.LONG, on(Stitch.CHAIN, Stitch.BACK_LOOP))).isEmpty();
        assertThat(broken(Stitch.LONG, on(Stitch.PLAIN, Stitch.BACK_LOOP))).containsExactly("used-loop");
        assertThat(broken(Stitch.LONG, on(Stitch.LONG, Stitch.BACK_LOOP))).containsExactly("covered-loop");
        assertThat(broken(Stitch.LONG, on(Stitch.BACK_LOOP, Stitch.CHAIN))).containsExactly("lands-on-chain");
        assertThat(broken(Stitch.LONG, on(Stitch.LONG, Stitch.LONG))).containsExactly("covered-loop", "lands-on-long");
        assertThat(broken(Stitch.LONG, on(new Underlay.OfCornerChain(true)))).containsExactly("past-corner");
        assertThat(broken(Stitch.LONG, on(new Underlay.OfBaseRound(true)))).containsExactly("no-round-below");
    }

    @Test
    void a_stitch_that_stands_in_the_one_below_may_stand_on_anything() {
        for (Stitch stitch : Stitch.inStitchBelow()) {
            for (Underlay under : underlays()) {
                assertThat(broken(stitch, under)).as("%s on %s", stitch, under).isEmpty();
            }
        }
    }

    @Test
    void a_chain_needs_a_stitch_under_it_that_is_none() {
        assertThat(broken(Stitch.CHAIN, on(Stitch.LONG, Stitch.CHAIN))).isEmpty();
        assertThat(broken(Stitch.CHAIN, on(Stitch.CHAIN, Stitch.BACK_LOOP))).containsExactly("deep-gap");
        assertThat(broken(Stitch.CHAIN, on(new Underlay.OfCornerChain(true)))).containsExactly("chain-at-corner");
        assertThat(broken(Stitch.CHAIN, on(new Underlay.OfBaseRound(false)))).isEmpty();
    }

    /** Every stitch on every underlay under all rules comes up in some chart, and the checker says of it what the law says. */
    @Test
    void the_checker_keeps_the_law_of_one_column_in_every_case_there_is() {
        Set<Question> asked = new HashSet<>();
        int picks = (int) Math.pow(Stitch.values().length, 3);
        for (String yarns : List.of("AAA", "AAB", "ABA", "ABB")) {
            for (Rules rules : allRules()) {
                Chart blank = blank(yarns, rules);
                for (Place top : places(blank, 3)) {
                    for (int pick = 0; pick < picks; pick++) {
                        assertLawKept(withColumn(blank, top, pick), asked);
                    }
                }
            }
        }
        Set<Question> all = new HashSet<>();
        for (Rules rules : allRules()) {
            for (Underlay under : underlays()) {
                for (Stitch stitch : Stitch.values()) {
                    all.add(new Question(stitch, under, rules));
                }
            }
        }
        assertThat(asked).isEqualTo(all);
    }

    @Test
    void the_checker_keeps_the_law_in_charts_of_every_shape() {
        RandomCharts charts = new RandomCharts(71);
        for (int i = 0; i < 150; i++) {
            assertLawKept(charts.any(), new HashSet<>());
        }
    }

    private static void assertLawKept(Chart chart, Set<Question> asked) {
        List<String> law = new ArrayList<>();
        for (int round = 1; round <= chart.rounds().size(); round++) {
            for (Place place : places(chart, round)) {
                ColumnLaw.broken(chart, place).forEach(rule -> law.add(rule.id() + rule.severity() + " at " + place));
                asked.add(new Question(chart.stitch(place), Underlay.of(chart, place), chart.rules()));
            }
        }
        List<String> checked = Checker.check(chart)
                .breaches()
                .filter(breach -> breach.violation() instanceof Violation.OfStitch)
                .filter(breach -> !breach.rule().id().equals("loose-run"))
                .map(breach -> breach.rule().id() + breach.rule().severity() + " at "
                        + breach.place().oneStitch().orElseThrow())
                .toList();
        assertThat(checked).as(() -> Sketches.rounds(chart) + chart.rules()).isEqualTo(law);
    }

    private static List<Place> places(Chart chart, int round) {
        List<Place> places = new ArrayList<>();
        for (Section section : Section.values()) {
            for (int i = 1; i <= chart.round(round).section(section).length(); i++) {
                places.add(new Place(round, section, i));
            }
        }
        return places;
    }

    /** Three stitches of one column, as far down as it goes; the others are back-loop. */
    private static Chart withColumn(Chart blank, Place top, int pick) {
        Chart chart = blank;
        int left = pick;
        for (int round = top.round(); round >= 1; round--) {
            int place = top.section() == Section.FROM_CORNER ? top.place() - top.round() + round : top.place();
            Place here = new Place(round, top.section(), Math.max(1, place));
            if (place >= 1 && chart.has(here)) {
                Stitch stitch = Stitch.values()[left % Stitch.values().length];
                chart = chart.withRound(
                        round,
                        chart.round(round)
                                .with(
                                        here.section(),
                                        chart.round(round)
                                                .section(here.section())
                                                .with(here.place(), stitch)));
            }
            left /= Stitch.values().length;
        }
        return chart;
    }

    private static Chart blank(String yarns, Rules rules) {
        Chart blank = Sketches.chart("""
                3 A bbbb|bb|bbbb
                2 A  bbb|bb|bbb
                1 A   bb|bb|bb
                """).withRules(rules);
        for (int round = 1; round <= 3; round++) {
            blank = blank.withRound(round, blank.round(round).withYarn(yarns.substring(round - 1, round)));
        }
        assertThat(blank.shape(Side.FIRST)).isEqualTo(SHAPE);
        return blank;
    }

    private static List<Rules> allRules() {
        List<Rules> all = new ArrayList<>();
        for (boolean corner : EITHER) {
            for (boolean stack : EITHER) {
                all.add(new Rules(corner, stack, 9, Extras.NONE));
            }
        }
        return all;
    }

    private static List<Underlay> underlays() {
        List<Underlay> all = new ArrayList<>();
        addUnderlays(List.of(), all);
        return all;
    }

    /** All that go on below these stitches. */
    private static void addUnderlays(List<Underlay.Layer> above, List<Underlay> all) {
        if (above.size() == Stitch.DEEPEST) {
            all.add(new Underlay(above));
            return;
        }
        for (boolean either : EITHER) {
            all.add(new Underlay(with(above, new Underlay.OfBaseRound(either))));
            all.add(new Underlay(with(above, new Underlay.OfCornerChain(either))));
            for (Stitch stitch : Stitch.values()) {
                addUnderlays(with(above, new Underlay.OfStitch(stitch, either)), all);
            }
        }
    }

    private static List<Underlay.Layer> with(List<Underlay.Layer> above, Underlay.Layer layer) {
        return Stream.concat(above.stream(), Stream.of(layer)).toList();
    }

    private static Underlay on(Stitch below, Stitch landing) {
        return new Underlay(List.of(new Underlay.OfStitch(below, false), new Underlay.OfStitch(landing, true)));
    }

    private static Underlay on(Underlay.Layer end) {
        return new Underlay(List.of(end));
    }

    private static List<String> broken(Stitch stitch, Underlay under) {
        return ColumnLaw.broken(stitch, under, Rules.DEFAULT).stream()
                .map(RuleEntry::id)
                .toList();
    }
}
