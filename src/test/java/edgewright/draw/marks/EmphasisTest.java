package edgewright.draw.marks;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.Place;
import edgewright.chart.Section;
import edgewright.check.Checker;
import edgewright.check.Severity;
import edgewright.testing.Sketches;
import java.util.Map;
import org.junit.jupiter.api.Test;

class EmphasisTest {
    @Test
    void findings_are_numbered_as_in_their_list_from_one() {
        Emphasis emphasis = Emphasis.of(Checker.check(Sketches.chart("""
                2 B bbb|lb|bbb
                1 A  bb|lb|bb
                """)).findings());
        assertThat(emphasis.flags())
                .containsExactly(
                        Emphasis.Flag.at(1, Severity.ERROR, new Place(1, Section.REPEAT, 1)),
                        Emphasis.Flag.at(2, Severity.ERROR, new Place(2, Section.REPEAT, 1)));
    }

    @Test
    void a_ragged_section_is_flagged_at_its_round() {
        Emphasis emphasis = Emphasis.of(Checker.check(Sketches.chart("""
                2 B bb|bb|bbb
                1 A bb|bb|bb
                """)).findings());
        assertThat(emphasis.flags()).containsExactly(Emphasis.Flag.in(1, Severity.ERROR, 2));
        assertThat(emphasis.byRound()).isEqualTo(Map.of(2, emphasis.flags()));
        assertThat(emphasis.byStitch()).isEmpty();
    }
}
