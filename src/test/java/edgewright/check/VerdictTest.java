package edgewright.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import edgewright.chart.PerSide;
import edgewright.chart.Place;
import edgewright.chart.Section;
import edgewright.chart.Side;
import edgewright.testing.Sketches;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

class VerdictTest {
    private static final Sketch SKETCH = Sketch.read("""
            sides 2,2,3,2
            C Fog #e4dccb
            3 C bbl|lb|bbb
            2 B  bl|bb|bb
            1 A   l|bb|b
            """);

    @Test
    void findings_stand_in_working_order_sides_first_then_rounds_then_their_stitches() {
        assertThat(SKETCH.verdict().findings())
                .extracting(Finding::toString)
                .containsExactly(
                        "unclosed-side, BOTTOM",
                        "no-round-below, round 1, fromCorner 1",
                        "covered-loop, round 2, fromCorner 2",
                        "low-contrast, round 3",
                        "covered-loop, round 3, fromCorner 3",
                        "lands-on-long, round 3, fromCorner 3",
                        "other-yarn, round 3, fromCorner 3",
                        "other-yarn, round 3, repeat 1");
    }

    @Test
    void errors_are_the_findings_that_hands_cannot_work() {
        assertThat(SKETCH.verdict().errors())
                .extracting(Finding::rule)
                .containsExactly("unclosed-side", "no-round-below", "covered-loop", "covered-loop", "lands-on-long");
        assertThat(SKETCH.verdict().hasErrors()).isTrue();
    }

    @Test
    void warnings_alone_leave_a_chart_workable() {
        Verdict verdict = Checker.check(Sketches.chart("""
                2 B bb|c|bb
                1 A  b|c|b
                """));
        assertThat(verdict.findings()).extracting(Finding::rule).containsExactly("deep-gap");
        assertThat(verdict.hasErrors()).isFalse();
        assertThat(verdict.errors()).isEmpty();
    }

    @Test
    void one_stitch_can_be_asked_for() {
        assertThat(SKETCH.verdict().at(new Place(3, Section.FROM_CORNER, 3)))
                .extracting(Finding::rule)
                .containsExactly("covered-loop", "lands-on-long", "other-yarn");
        assertThat(SKETCH.verdict().at(new Place(2, Section.REPEAT, 1))).isEmpty();
    }

    @Test
    void a_verdict_says_how_many_long_stitches_it_judged() {
        assertThat(SKETCH.verdict().longStitchesJudged()).isEqualTo(4);
        assertThat(SKETCH.verdict().baseStitches()).contains(PerSide.of(2, 2, 3, 2));
        assertThat(Checker.check(Sketches.chart("1 A b|b|b"))).hasToString("0 long stitches judged: []");
    }

    @Test
    void findings_are_equal_by_rule_place_and_values_whatever_chart_they_came_from() {
        Finding one = SKETCH.verdict().findings().get(1);
        Finding same = Checker.check(Sketches.chart("1 A l|b|b")).findings().get(0);
        Finding other = Checker.check(Sketches.chart("1 A b|l|b")).findings().get(0);
        assertThat(one).isEqualTo(same).hasSameHashCodeAs(same).isNotEqualTo(other);
        assertThat(one.remedies()).extracting(Remedy::id).containsExactly("take-out");
        assertThat(same.remedies()).isEqualTo(one.remedies()).hasSameHashCodeAs(one.remedies());
    }

    @Test
    void a_place_says_no_more_than_is_meant() {
        Place place = new Place(4, Section.REPEAT, 2);
        assertThat(List.of(
                        new FindingPlace.OfStitch(place),
                        new FindingPlace.OfSection(4, Section.REPEAT),
                        new FindingPlace.OfRound(4),
                        new FindingPlace.OfSide(Side.LEFT)))
                .extracting(FindingPlace::oneStitch, FindingPlace::inRound)
                .containsExactly(
                        tuple(Optional.of(place), OptionalInt.of(4)),
                        tuple(Optional.empty(), OptionalInt.of(4)),
                        tuple(Optional.empty(), OptionalInt.of(4)),
                        tuple(Optional.empty(), OptionalInt.empty()));
    }
}
