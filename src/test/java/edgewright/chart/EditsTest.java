package edgewright.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

class EditsTest {
    private static final List<Yarn> YARNS =
            List.of(new Yarn("A", "Peat", Colour.parse("#2b2a33")), new Yarn("B", "Chalk", Colour.parse("#f2ead8")));

    @Test
    void setting_stitches_changes_only_their_round() {
        Chart chart = chart("bbb bbbbb bb", "bbbb bbbbb bbb", "bbbbb bbbbb bbbb");
        Place place = new Place(3, Section.REPEAT, 4);
        Chart changed = Edits.setStitches(chart, List.of(place), Stitch.LONG);
        assertThat(lines(changed)).containsExactly("bbb bbbbb bb", "bbbb bbbbb bbb", "bbbbb bbblb bbbb");
        assertThat(changed.round(1)).isSameAs(chart.round(1));
        assertThat(Edits.setStitches(changed, List.of(place), Stitch.BACK_LOOP)).isEqualTo(chart);
    }

    @Test
    void several_kinds_of_stitch_can_be_set_at_once() {
        Chart chart = chart("b bb b");
        Chart changed = Edits.setStitches(
                chart,
                Map.of(
                        new Place(1, Section.FROM_CORNER, 1), Stitch.PLAIN,
                        new Place(1, Section.REPEAT, 2), Stitch.CHAIN));
        assertThat(lines(changed)).containsExactly("p bc b");
    }

    @Test
    void a_place_that_the_chart_does_not_have_is_refused() {
        Chart chart = chart("b bb b");
        assertThatThrownBy(() -> Edits.setStitches(chart, List.of(new Place(1, Section.REPEAT, 3)), Stitch.LONG))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("the chart has no stitch at round 1, repeat 3");
    }

    @Test
    void a_round_put_in_moves_the_others_out_in_their_fabric_columns() {
        Chart chart = chart("bp lb pb", "blp bl pbl");
        Chart changed = Edits.insertRounds(chart, 2, List.of("B"));
        assertThat(lines(changed)).containsExactly("bp lb pb", "bbb bb bbb", "bblp bl pblb");
        assertThat(changed.round(2).yarn()).isEqualTo("B");
    }

    @Test
    void a_round_taken_out_moves_the_others_in_in_their_fabric_columns() {
        Chart chart = chart("bp lb pb", "bbb bb bbb", "bblp bl pblb");
        assertThat(lines(Edits.deleteRounds(chart, 2, 2))).containsExactly("bp lb pb", "blp bl pbl");
        assertThat(lines(Edits.deleteRounds(chart, 1, 2))).containsExactly("lp bl pb");
        assertThatThrownBy(() -> Edits.deleteRounds(chart, 1, 3)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void a_round_moves_with_every_round_in_its_fabric_columns() {
        Chart chart = chart("b pp b", "bb ll bb", "bbl cc lbb");
        assertThat(lines(Edits.moveRounds(chart, 3, 3, 1))).containsExactly("l cc l", "bb pp bb", "bbb ll bbb");
        assertThat(lines(Edits.moveRounds(chart, 1, 2, 2))).containsExactly("l cc l", "bb pp bb", "bbb ll bbb");
        assertThatThrownBy(() -> Edits.moveRounds(chart, 1, 2, 3)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void rounds_can_be_worked_a_second_time() {
        Chart chart = chart("p bb p", "lp ll pl");
        assertThat(lines(Edits.duplicateRounds(chart, 1, 2)))
                .containsExactly("p bb p", "lp ll pl", "bbp bb pbb", "bblp ll plbb");
    }

    @Test
    void every_stitch_stays_in_its_fabric_column_when_rounds_come_and_go() {
        Random random = new Random(7);
        for (int i = 0; i < 500; i++) {
            Chart chart = random(random);
            int at = 1 + random.nextInt(chart.rounds().size() + 1);
            int count = 1 + random.nextInt(3);
            Chart more = Edits.insertRounds(chart, at, List.of("A", "B", "A").subList(0, count));
            for (int r = 1; r <= chart.rounds().size(); r++) {
                int now = r < at ? r : r + count;
                assertThat(columns(more, now)).containsAllEntriesOf(columns(chart, r));
                assertThat(more.round(now).yarn()).isEqualTo(chart.round(r).yarn());
            }
            assertThat(more.raggedSections()).isEmpty();
            assertThat(Edits.deleteRounds(more, at, at + count - 1)).isEqualTo(chart);
        }
    }

    @Test
    void a_column_put_in_and_taken_out_again_leaves_the_chart_as_it_was() {
        Random random = new Random(8);
        for (int i = 0; i < 500; i++) {
            Chart chart = random(random);
            Section section = Section.values()[random.nextInt(3)];
            int place = 1
                    + random.nextInt(chart.shape(Side.FIRST)
                                    .length(section, chart.rounds().size())
                            + 1);
            Chart wider = Edits.insertColumn(chart, section, place);
            assertThat(wider.raggedSections()).isEmpty();
            assertThat(Edits.deleteColumn(wider, section, place)).isEqualTo(chart);
        }
    }

    @Test
    void a_column_put_in_near_the_corner_keeps_the_corner_section_in_shape() {
        Chart chart = chart("p bb p", "lp bb pl");
        assertThat(lines(Edits.insertColumn(chart, Section.FROM_CORNER, 1))).containsExactly("bp bb p", "blp bb pl");
        assertThat(lines(Edits.insertColumn(chart, Section.FROM_CORNER, 2))).containsExactly("bp bb p", "lbp bb pl");
        assertThat(lines(Edits.insertColumn(chart, Section.TO_CORNER, 1))).containsExactly("p bb bp", "lp bb bpl");
        assertThat(lines(Edits.insertColumn(chart, Section.REPEAT, 2))).containsExactly("p bbb p", "lp bbb pl");
    }

    @Test
    void the_last_column_of_a_section_of_round_1_cannot_be_taken_out() {
        Chart chart = chart("p b p");
        for (Section section : Section.values()) {
            assertThatThrownBy(() -> Edits.deleteColumn(chart, section, 1))
                    .isInstanceOf(IllegalArgumentException.class);
        }
    }

    @Test
    void the_corner_stays_as_it_is_when_a_corner_section_changes_its_length() {
        Chart chart = chart("lp bb pl", "lcp bb pcl");
        assertThat(lines(Edits.changeFromCorner(chart, 2))).containsExactly("lpb bb pl", "lcpb bb pcl");
        assertThat(lines(Edits.changeFromCorner(chart, 0))).containsExactly("l bb pl", "lc bb pcl");
        assertThat(lines(Edits.changeToCorner(chart, 2))).containsExactly("lp bb bpl", "lcp bb bpcl");
        assertThat(lines(Edits.changeToCorner(chart, 0))).containsExactly("lp bb l", "lcp bb cl");
    }

    @Test
    void the_repeat_can_be_made_wider_narrower_and_shifted() {
        Chart chart = chart("b lpb b", "bb bcl bb");
        assertThat(lines(Edits.changeRepeatWidth(chart, 4))).containsExactly("b lpbb b", "bb bclb bb");
        assertThat(lines(Edits.changeRepeatWidth(chart, 1))).containsExactly("b l b", "bb b bb");
        assertThat(lines(Edits.shiftRepeat(chart, 1))).containsExactly("b blp b", "bb lbc bb");
        assertThat(Edits.shiftRepeat(chart, 3)).isEqualTo(chart);
    }

    @Test
    void turning_the_side_round_twice_leaves_the_chart_as_it_was() {
        Chart chart = chart("lp lpb bbc", "lpp bbc bbbc");
        assertThat(lines(Edits.reverse(chart))).containsExactly("cbb bpl pl", "cbbb cbb ppl");
        Random random = new Random(9);
        for (int i = 0; i < 200; i++) {
            Chart any = random(random);
            Chart turned = Edits.reverse(any);
            assertThat(turned.raggedSections()).isEmpty();
            assertThat(Edits.reverse(turned)).isEqualTo(any);
        }
    }

    @Test
    void a_ragged_section_is_evened_out_at_the_corner() {
        Chart chart = chart("bp lb pb", "lp lb pbll");
        assertThat(chart.raggedSections())
                .containsExactly(
                        new Chart.RaggedSection(2, Section.FROM_CORNER, 2, 3),
                        new Chart.RaggedSection(2, Section.TO_CORNER, 4, 3));
        assertThat(lines(Edits.evenOut(chart))).containsExactly("bp lb pb", "blp lb pbl");
        assertThat(lines(Edits.evenOut(chart, 2, Section.TO_CORNER))).containsExactly("bp lb pb", "lp lb pbl");
        assertThat(Edits.evenOut(chart, 1, Section.REPEAT)).isSameAs(chart);
        assertThatThrownBy(() -> Edits.insertColumn(chart, Section.REPEAT, 1))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void a_yarn_can_be_changed_for_one_round_or_replaced_in_all() {
        Chart chart = chart("b b b", "bb b bb", "bbb b bbb");
        assertThat(Edits.changeYarn(chart, 2, "A").round(2).yarn()).isEqualTo("A");
        Chart replaced = Edits.replaceYarn(chart, "A", new Yarn("S", "Samphire", Colour.parse("#5d7a4a")));
        assertThat(replaced.rounds()).extracting(Round::yarn).containsExactly("S", "B", "S");
        assertThatThrownBy(() -> Edits.changeYarn(chart, 2, "Z"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("'Z'");
    }

    /** Each stitch of a round by its section and its column in that section, which does not move with the round. */
    private static Map<String, Stitch> columns(Chart chart, int r) {
        Map<String, Stitch> columns = new java.util.TreeMap<>();
        for (Section section : Section.values()) {
            for (int i = 1; i <= chart.round(r).section(section).length(); i++) {
                int column = section == Section.FROM_CORNER ? i - r : i;
                columns.put(section.member() + " " + column, chart.stitch(new Place(r, section, i)));
            }
        }
        return columns;
    }

    private static Chart random(Random random) {
        SideShape shape = new SideShape(random.nextInt(4), 1 + random.nextInt(5), random.nextInt(4));
        Chart chart = Chart.blank("Mud Ripple", shape, 1 + random.nextInt(6), YARNS);
        List<Round> rounds = new ArrayList<>();
        for (int r = 1; r <= chart.rounds().size(); r++) {
            Round round = chart.round(r);
            for (Section section : Section.values()) {
                for (int i = 1; i <= shape.length(section, r); i++) {
                    Stitches changed = round.section(section).with(i, Stitch.values()[random.nextInt(4)]);
                    round = round.with(section, changed);
                }
            }
            rounds.add(round);
        }
        return chart.withRounds(rounds);
    }

    private static Chart chart(String... lines) {
        List<Round> rounds = new ArrayList<>();
        for (String line : lines) {
            String[] parts = line.split(" ");
            rounds.add(Round.of(rounds.size() % 2 == 0 ? "A" : "B", parts[0], parts[1], parts[2]));
        }
        return new Chart(Heading.of("Mud Ripple"), YARNS, rounds);
    }

    private static List<String> lines(Chart chart) {
        return chart.rounds().stream()
                .map(round -> round.fromCorner() + " " + round.repeat() + " " + round.toCorner())
                .toList();
    }
}
