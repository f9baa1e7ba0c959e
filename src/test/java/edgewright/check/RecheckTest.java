package edgewright.check;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.Chart;
import edgewright.chart.Colour;
import edgewright.chart.Edits;
import edgewright.chart.PerSide;
import edgewright.chart.Place;
import edgewright.chart.Round;
import edgewright.chart.Rules;
import edgewright.chart.Section;
import edgewright.chart.Stitch;
import edgewright.testing.RandomCharts;
import edgewright.testing.Sketches;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class RecheckTest {

    @Test
    void after_any_edit_a_recheck_says_what_a_check_says() {
        RandomCharts charts = new RandomCharts(41);
        for (int i = 0; i < 600; i++) {
            Chart chart = i % 3 == 0 ? charts.any() : charts.small();
            Verdict verdict = i % 2 == 0 ? Checker.check(chart) : Checker.check(chart, PerSide.all(12));
            for (int edit = 0; edit < 12; edit++) {
                Chart edited = edited(verdict.chart(), charts);
                Verdict recheck = Checker.recheck(verdict, edited);
                Verdict check = i % 2 == 0 ? Checker.check(edited) : Checker.check(edited, PerSide.all(12));
                assertThat(Sketches.marked(recheck)).isEqualTo(Sketches.marked(check));
                assertThat(recheck.longStitchesJudged()).isEqualTo(check.longStitchesJudged());
                assertThat(recheck).isEqualTo(check).hasSameHashCodeAs(check);
                verdict = recheck;
            }
        }
    }

    @Test
    void only_rounds_that_the_edit_can_touch_are_judged_again() {
        Chart chart = Sketches.chart("""
                6 B lbbbbb|b|bbbbbb
                5 A  lbbbb|b|bbbbb
                4 B   lbbb|b|bbbb
                3 A    lbb|b|bbb
                2 B     lb|b|bb
                1 A      l|b|b
                """);
        Verdict before = Checker.check(chart);
        Verdict after = Checker.recheck(
                before, Edits.setStitches(chart, List.of(new Place(3, Section.REPEAT, 1)), Stitch.PLAIN));
        for (int round : new int[] {1, 2, 6}) {
            assertThat(after.ofStitches(round)).as("round %d", round).isSameAs(before.ofStitches(round));
        }
        for (int round : new int[] {3, 4, 5}) {
            assertThat(after.ofStitches(round)).as("round %d", round).isNotSameAs(before.ofStitches(round));
        }
    }

    private static Chart edited(Chart chart, RandomCharts charts) {
        Random random = charts.random();
        int last = chart.rounds().size();
        int r = 1 + random.nextInt(last);
        int s = r + random.nextInt(last - r + 1);
        if (!chart.raggedSections().isEmpty()) {
            return random.nextBoolean() ? Edits.evenOut(chart) : chart.withRound(r, chart.round(r));
        }
        return switch (random.nextInt(14)) {
            case 0, 1, 2 -> painted(chart, r, random);
            case 3 -> painted(painted(chart, r, random), s, random);
            case 4 ->
                Edits.changeYarn(
                        chart,
                        r,
                        chart.yarns().get(random.nextInt(chart.yarns().size())).id());
            case 5 -> Edits.insertRounds(chart, r, List.of(chart.round(s).yarn()));
            case 6 -> last == s - r + 1 ? chart : Edits.deleteRounds(chart, r, s);
            case 7 -> Edits.duplicateRounds(chart, r, r);
            case 8 -> Edits.moveRounds(chart, r, r, 1 + random.nextInt(last));
            case 9 -> Edits.shiftRepeat(chart, 1);
            case 10 -> Edits.changeToCorner(chart, random.nextInt(5));
            case 11 -> chart.withRules(rules(random));
            case 12 ->
                chart.withYarns(chart.yarns().stream()
                        .map(yarn -> yarn.withColour(new Colour(random.nextInt(0x1000000))))
                        .toList());
            default -> ragged(chart, r, random);
        };
    }

    private static Chart painted(Chart chart, int r, Random random) {
        Section section = Section.values()[random.nextInt(3)];
        int length = chart.round(r).section(section).length();
        Stitch stitch = Stitch.values()[random.nextInt(4)];
        return Edits.setStitches(chart, List.of(new Place(r, section, 1 + random.nextInt(length))), stitch);
    }

    private static Chart ragged(Chart chart, int r, Random random) {
        Round round = chart.round(r);
        Section section = Section.values()[random.nextInt(3)];
        return chart.withRound(r, round.with(section, round.section(section).inserted(1, Stitch.LONG)));
    }

    private static Rules rules(Random random) {
        return Rules.DEFAULT
                .withLandOnCornerChain(random.nextBoolean())
                .withStackLongStitches(random.nextBoolean())
                .withLooseRun(1 + random.nextInt(6));
    }
}
