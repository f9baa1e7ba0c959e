package edgewright.fit;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.Chart;
import edgewright.chart.PerSide;
import edgewright.chart.Side;
import edgewright.chart.SideShape;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

class LandmarksTest {

    @Test
    void long_stitches_that_climb_come_directly_after_those_of_the_round_below() {
        assertThat(Landmarks.of(TestCharts.chart("""
                bbbbb bbblb bbbb
                bbbb  bblbb bbb
                bbb   bbbbb bb
                """), 3))
                .containsExactly(
                        new Landmark.EachLong(LandmarkRelation.AFTER_LONG_BELOW),
                        new Landmark.FirstLong(9),
                        new Landmark.LongsOnSide(0, 1));
    }

    @Test
    void long_stitches_between_those_of_the_round_below_are_said_to_be_between_and_no_more() {
        assertThat(Landmarks.of(TestCharts.chart("""
                bbblb lb lbbb
                blbl  bl blb
                bbb   bb bb
                """), 3))
                .containsExactly(
                        new Landmark.EachLong(LandmarkRelation.BETWEEN_LONGS_BELOW),
                        new Landmark.FirstLong(4),
                        new Landmark.LongsOnSide(2, 1));
    }

    @Test
    void stacked_long_stitches_stand_over_those_two_rounds_below() {
        assertThat(Landmarks.of(TestCharts.chart("""
                bbbbbb bbllb bbbbb
                bbbbb  bbbbb bbbb
                bbbb   bbllb bbb
                bbb    bbbbb bb
                """), 4))
                .containsExactly(
                        new Landmark.EachLong(LandmarkRelation.OVER_LONG_TWO_BELOW),
                        new Landmark.InGroups(2),
                        new Landmark.FirstLong(9),
                        new Landmark.LongsOnSide(0, 2));
    }

    @Test
    void where_nothing_simple_is_true_of_all_long_stitches_nothing_is_said_of_them() {
        assertThat(Landmarks.of(TestCharts.chart("""
                bblbb lbblb bbbl
                bbbb  bbbbl bbb
                bbb   bbbbb bb
                """), 3))
                .containsExactly(new Landmark.FirstLong(3), new Landmark.LongsOnSide(2, 2));
    }

    @Test
    void a_round_without_long_stitches_has_nothing_to_go_by() {
        Chart chart = TestCharts.chart(new SideShape(2, 5, 1), 6, 5);

        assertThat(Landmarks.of(chart, 4)).isEmpty();
        assertThat(Landmarks.of(chart, 1)).isEmpty();
    }

    @Test
    void what_depends_on_the_size_is_said_of_a_piece_and_not_of_every_size() {
        Chart chart = TestCharts.chart("""
                bbbbb bbbbb bblb
                bbbb  bbbbb bbb
                bbb   bbbbb bb
                """);

        assertThat(Landmarks.of(chart, 3)).containsExactly(new Landmark.LongsOnSide(1, 0));
        assertThat(Landmarks.of(chart, 3, PerSide.all(2)))
                .containsExactly(new Landmark.FirstLong(18), new Landmark.LongsOnSide(1, 0));
    }

    @Test
    void every_landmark_of_any_chart_is_true_of_whole_sides_and_every_true_one_is_found() {
        Random random = new Random(12);
        Set<Class<?>> met = new HashSet<>();
        Set<LandmarkRelation> relations = new TreeSet<>();
        for (int i = 0; i < 4_000; i++) {
            SideShape shape = new SideShape(random.nextInt(3), 1 + random.nextInt(4), random.nextInt(3));
            Chart chart = TestCharts.random(random, shape, 4, 0.05 + random.nextDouble() * 0.9);
            for (int round = 1; round <= 4; round++) {
                List<Landmark> said = Landmarks.of(chart, round);
                assertThat(said).isEqualTo(byEye(chart, round, List.of(0, 1, 2, 3, 4, 7)));
                PerSide<Integer> repeats = PerSide.each(side -> random.nextInt(5));
                assertThat(Landmarks.of(chart, round, repeats))
                        .isEqualTo(byEye(chart, round, repeats.stream().toList()));
                said.forEach(landmark -> {
                    met.add(landmark.getClass());
                    if (landmark instanceof Landmark.EachLong each) {
                        relations.add(each.relation());
                    }
                });
            }
        }
        // A check that meets nothing would pass too.
        assertThat(met).hasSize(4);
        assertThat(relations).containsExactly(LandmarkRelation.values());
    }

    /** The same statements from sides written out in letters and looked at stitch by stitch. */
    private static List<Landmark> byEye(Chart chart, int round, List<Integer> sizes) {
        Map<LandmarkRelation, Boolean> holds = new EnumMap<>(LandmarkRelation.class);
        Set<Integer> firsts = new TreeSet<>();
        Set<Integer> groups = new TreeSet<>();
        boolean any = false;
        for (int m : sizes) {
            String side = side(chart, round, m);
            any |= side.contains("l");
            if (side.contains("l")) {
                firsts.add(side.indexOf('l') + 1);
            }
            for (String group : side.split("[^l]+")) {
                if (!group.isEmpty()) {
                    groups.add(group.length());
                }
            }
            for (int p = 1; p <= side.length(); p++) {
                if (side.charAt(p - 1) == 'l') {
                    Map<LandmarkRelation, Boolean> here = at(chart, round, m, p);
                    here.forEach((relation, is) -> holds.merge(relation, is, Boolean::logicalAnd));
                }
            }
        }
        if (!any) {
            return List.of();
        }
        return said(chart, round, holds, firsts, groups);
    }

    private static List<Landmark> said(
            Chart chart, int round, Map<LandmarkRelation, Boolean> holds, Set<Integer> firsts, Set<Integer> groups) {
        List<Landmark> said = new ArrayList<>();
        boolean between = holds.get(LandmarkRelation.BETWEEN_LONGS_BELOW);
        boolean after = holds.get(LandmarkRelation.AFTER_LONG_BELOW) && !between;
        boolean before = holds.get(LandmarkRelation.BEFORE_LONG_BELOW) && !between;
        holds.put(LandmarkRelation.AFTER_LONG_BELOW, after);
        holds.put(LandmarkRelation.BEFORE_LONG_BELOW, before);
        holds.computeIfPresent(
                LandmarkRelation.BESIDE_LONG_BELOW, (relation, is) -> is && !between && !after && !before);
        holds.forEach((relation, is) -> {
            if (is) {
                said.add(new Landmark.EachLong(relation));
            }
        });
        if (groups.size() == 1 && !groups.contains(1)) {
            said.add(new Landmark.InGroups(groups.iterator().next()));
        }
        if (firsts.size() == 1) {
            said.add(new Landmark.FirstLong(firsts.iterator().next()));
        }
        int inRepeat = longs(side(chart, round, 1)) - longs(side(chart, round, 0));
        said.add(new Landmark.LongsOnSide(longs(side(chart, round, 0)), inRepeat));
        return said;
    }

    /** Stitch p of a round stands on stitch p - 1 of the round below and over p - 2 of the one two below. */
    private static Map<LandmarkRelation, Boolean> at(Chart chart, int round, int m, int p) {
        String below = side(chart, round - 1, m);
        String twoBelow = side(chart, round - 2, m);
        boolean after = isLong(below, p - 2);
        boolean before = isLong(below, p);
        int back = 0;
        while (p - 1 - back >= 1 && !isLong(below, p - 1 - back)) {
            back++;
        }
        int on = 0;
        while (p - 1 + on <= below.length() && !isLong(below, p - 1 + on)) {
            on++;
        }
        boolean found = isLong(below, p - 1 - back) && isLong(below, p - 1 + on);
        return new EnumMap<>(Map.of(
                LandmarkRelation.BETWEEN_LONGS_BELOW,
                after && before,
                LandmarkRelation.AFTER_LONG_BELOW,
                after,
                LandmarkRelation.BEFORE_LONG_BELOW,
                before,
                LandmarkRelation.BESIDE_LONG_BELOW,
                after || before,
                LandmarkRelation.MIDWAY_BETWEEN_LONGS_BELOW,
                found && back == on && on > 1,
                LandmarkRelation.OVER_LONG_TWO_BELOW,
                isLong(twoBelow, p - 2)));
    }

    private static boolean isLong(String side, int p) {
        return p >= 1 && p <= side.length() && side.charAt(p - 1) == 'l';
    }

    private static int longs(String side) {
        return (int) side.chars().filter(letter -> letter == 'l').count();
    }

    private static String side(Chart chart, int round, int m) {
        return round < 1 ? "" : chart.round(round).side(Side.FIRST, m).letters();
    }
}
