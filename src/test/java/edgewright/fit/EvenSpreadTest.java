package edgewright.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import edgewright.chart.Counting;
import edgewright.chart.Side;
import edgewright.chart.SidePlace;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class EvenSpreadTest {

    @ParameterizedTest
    @EnumSource(CountChange.class)
    void one_change_in_36_stitches_is_at_18_and_three_in_48_at_12_24_and_36(CountChange change) {
        // Source: common practice, no source: stitches divided by changes plus one.
        assertThat(numbers(36, change, 1)).containsExactly(18);
        assertThat(numbers(48, change, 3)).containsExactly(12, 24, 36);
    }

    @ParameterizedTest
    @CsvSource({
        // Counts in and out and the number of changes; the places are the sources' own affair.
        "140, 21, 161", // https://aliciaramirez.com/hookandneedles.com/2009/02/increasedecrease-evenly-in-a-row/
        "48, 12, 60", // same
        "24, 6, 30", // same
        "24, -6, 18", // same
        "60, 6, 66", // http://www.lionbrand.com/blog/how-to-evenly-space-your-increasesdecreases/
        "99, 8, 107", // same
        "80, -10, 70", // https://www.10rowsaday.com/evenly-increase-decrease
        "100, 10, 110", // http://www.lionbrand.com/cgi-bin/lionbrand/displayCustomerProjects.fcgi?projectKey=97183&displayType=lit
        "56, -8, 48", // https://forum.knittinghelp.com/t/help-decreasing/77473
        "56, -7, 49", // same
        "115, 8, 123", // https://stampinglane.com/mosaicism/how-do-you-decrease-stitches-evenly-in-knitting.html
    })
    void published_examples_come_out_with_the_published_counts(int before, int change, int after) {
        SideChange side = new SideChange(Side.TOP, 0, before, change);

        assertThat(side.changes()).isEqualTo(Math.abs(change));
        assertThat(side.places()).hasSize(Math.abs(change));
        assertThat(made(side)).isEqualTo(after);
        assertThat(spread(side.gaps())).isLessThanOrEqualTo(1);
    }

    @Test
    void eighty_stitches_less_ten_have_eleven_parts_of_seven_and_eight() {
        // Source: 80 / 11 = 7.27, eight parts of 7 and three of 8, https://www.10rowsaday.com/evenly-increase-decrease
        // A part is a gap and, but for the last, the first stitch of the two worked together.
        List<Integer> numbers = numbers(80, CountChange.DECREASE, 10);
        List<Integer> parts = new ArrayList<>();
        int before = 0;
        for (int number : numbers) {
            parts.add(number - before);
            before = number;
        }
        parts.add(80 - before);
        assertThat(parts).hasSize(11).containsOnly(7, 8);
        assertThat(Collections.frequency(parts, 8)).isEqualTo(3);
    }

    @Test
    void gaps_differ_by_at_most_one_and_keep_off_two_stitches_at_each_corner_on_every_small_side() {
        for (CountChange change : CountChange.values()) {
            for (int stitches = 0; stitches <= 60; stitches++) {
                for (int changes = 1; changes <= EvenSpread.most(stitches, change); changes++) {
                    List<Integer> gaps = EvenSpread.gaps(stitches, change, changes);

                    assertThat(gaps).hasSize(changes + 1);
                    assertThat(gaps.stream().mapToInt(gap -> gap).sum() + changes * change.used())
                            .isEqualTo(stitches);
                    assertThat(gaps.get(0)).isGreaterThanOrEqualTo(2);
                    assertThat(gaps.get(changes)).isGreaterThanOrEqualTo(2);
                    boolean allEven = evenIsPossible(stitches, change, changes);
                    List<Integer> judged = allEven ? gaps : gaps.subList(1, changes);
                    assertThat(spread(judged)).as(stitches + " " + gaps).isLessThanOrEqualTo(1);
                }
            }
        }
    }

    @Test
    void no_other_even_spreading_lies_nearer_to_stitches_divided_by_changes_plus_one() {
        for (CountChange change : CountChange.values()) {
            for (int stitches = 8; stitches <= 40; stitches++) {
                for (int changes = 1; changes <= Math.min(6, (stitches - 6) / 4); changes++) {
                    assertThat(distance(EvenSpread.gaps(stitches, change, changes), stitches, change))
                            .as(stitches + " stitches, " + changes + " times " + change)
                            .isLessThanOrEqualTo(leastDistance(stitches, change, changes) + 1e-9);
                }
            }
        }
    }

    @Test
    void a_side_has_room_for_as_many_changes_as_it_has_stitches_away_from_the_corners() {
        assertThat(SideChange.most(10, 1)).isEqualTo(6);
        assertThat(SideChange.most(10, -1)).isEqualTo(3);
        assertThat(SideChange.most(3, 1)).isZero();
        assertThat(new SideChange(Side.LEFT, 2, 10, 6).gaps()).containsExactly(2, 0, 0, 0, 0, 0, 2);
        assertThat(new SideChange(Side.LEFT, 2, 10, -3).gaps()).containsExactly(2, 0, 0, 2);
        assertThatThrownBy(() -> new SideChange(Side.LEFT, 2, 10, 7)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new SideChange(Side.LEFT, 2, 10, -4)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void more_than_one_change_in_six_stitches_is_too_many() {
        assertThat(new SideChange(Side.TOP, 0, 36, 6).isCrowded()).isFalse();
        assertThat(new SideChange(Side.TOP, 0, 36, -7).isCrowded()).isTrue();
        assertThat(new SideChange(Side.TOP, 0, 5, 0).isCrowded()).isFalse();
    }

    @Test
    void the_way_along_a_side_counts_equal_parts_together() {
        SideChange side = new SideChange(Side.TOP, 2, 48, 3);

        assertThat(side.blocks(Counting.STITCHES))
                .containsExactly(
                        new ChangeBlock(11, Optional.of(CountChange.INCREASE), 3),
                        new ChangeBlock(12, Optional.empty(), 1));
        assertThat(side.places()).containsExactly(new SidePlace(2, 12), new SidePlace(2, 24), new SidePlace(2, 36));
    }

    @Test
    void where_corner_chains_are_counted_the_chain_is_number_one_and_its_stitch_is_worked_too() {
        SideChange side = new SideChange(Side.TOP, 2, 48, 3);

        assertThat(side.numbers(Counting.WITH_CHAINS)).containsExactly(13, 25, 37);
        assertThat(side.blocks(Counting.WITH_CHAINS))
                .containsExactly(
                        new ChangeBlock(12, Optional.of(CountChange.INCREASE), 1),
                        new ChangeBlock(11, Optional.of(CountChange.INCREASE), 2),
                        new ChangeBlock(13, Optional.empty(), 1));
        assertThat(new SideChange(Side.TOP, 2, 48, 0).blocks(Counting.WITH_CHAINS))
                .containsExactly(new ChangeBlock(50, Optional.empty(), 1));
    }

    @Test
    void the_stitches_that_share_a_foot_are_those_worked_into_the_changed_ones() {
        // Feet of every stitch of the round after, worked out stitch by stitch: 0 is the corner chain.
        for (int stitches = 8; stitches <= 30; stitches++) {
            for (int change = -3; change <= 3; change++) {
                if (Math.abs(change) > SideChange.most(stitches, change)) {
                    continue;
                }
                SideChange side = new SideChange(Side.RIGHT, 1, stitches, change);
                List<List<Integer>> feet = feet(side);
                List<SidePlace> uneven = IntStream.range(0, feet.size())
                        .filter(i -> feet.get(i).size() > 1 || Collections.frequency(feet, feet.get(i)) > 1)
                        .mapToObj(i -> new SidePlace(2, i + 1))
                        .toList();
                assertThat(side.unevenStitches()).as(side.toString()).isEqualTo(uneven);
            }
        }
    }

    private static List<List<Integer>> feet(SideChange side) {
        List<List<Integer>> feet = new ArrayList<>();
        List<Integer> changed = side.places().stream().map(SidePlace::stitch).toList();
        feet.add(List.of(0));
        for (int stitch = 1; stitch <= side.stitches(); stitch++) {
            if (!changed.contains(stitch)) {
                feet.add(List.of(stitch));
            } else if (side.change() > 0) {
                feet.add(List.of(stitch));
                feet.add(List.of(stitch));
            } else {
                feet.add(List.of(stitch, ++stitch));
            }
        }
        feet.add(List.of(side.stitches() + 1));
        return feet;
    }

    private static List<Integer> numbers(int stitches, CountChange change, int changes) {
        int by = change == CountChange.INCREASE ? changes : -changes;
        return new SideChange(Side.TOP, 0, stitches, by).numbers(Counting.STITCHES);
    }

    /** The stitches that come out when the blocks are worked. */
    private static int made(SideChange side) {
        return side.blocks(Counting.STITCHES).stream()
                .mapToInt(block -> block.times()
                        * (block.work() + block.change().map(CountChange::made).orElse(0)))
                .sum();
    }

    private static int spread(List<Integer> gaps) {
        return gaps.isEmpty() ? 0 : Collections.max(gaps) - Collections.min(gaps);
    }

    /** Whether any gaps that differ by at most one have two stitches or more at both ends. */
    private static boolean evenIsPossible(int stitches, CountChange change, int changes) {
        int plain = stitches - changes * change.used();
        int longer = plain % (changes + 1);
        return plain / (changes + 1) + (longer >= 2 ? 1 : 0) >= 2;
    }

    private static double distance(List<Integer> gaps, int stitches, CountChange change) {
        double distance = 0;
        int done = 0;
        for (int i = 1; i < gaps.size(); i++) {
            int first = done + gaps.get(i - 1) + 1;
            distance += Math.abs(first - (double) i * stitches / gaps.size());
            done += gaps.get(i - 1) + change.used();
        }
        return distance;
    }

    private static double leastDistance(int stitches, CountChange change, int changes) {
        return evenSpreadings(stitches - changes * change.used(), changes + 1).stream()
                .mapToDouble(gaps -> distance(gaps, stitches, change))
                .min()
                .orElseThrow();
    }

    /** Every way to share out so many stitches in so many parts that differ by at most one. */
    private static List<List<Integer>> evenSpreadings(int number, int parts) {
        List<List<Integer>> all = new ArrayList<>();
        for (int longer = 0; longer < 1 << parts; longer++) {
            if (Integer.bitCount(longer) == number % parts) {
                int bits = longer;
                all.add(IntStream.range(0, parts)
                        .mapToObj(i -> number / parts + (bits >> i & 1))
                        .toList());
            }
        }
        return all;
    }
}
