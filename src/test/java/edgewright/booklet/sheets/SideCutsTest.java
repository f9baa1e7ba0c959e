package edgewright.booklet.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.booklet.choice.Edition;
import edgewright.booklet.page.PageLayout;
import edgewright.chart.Section;
import edgewright.chart.SideShape;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

class SideCutsTest {
    /** An A4 page, upright and on its side. */
    private static final List<PageLayout> PAGES =
            List.of(PageLayout.of(210, 297, Edition.STANDARD), PageLayout.of(297, 210, Edition.STANDARD));

    private static SideCuts cuts(SideCuts.Work work) {
        return SideCuts.fewestPages(work, PAGES, 1.5, 6, 6.5);
    }

    private static SideCuts.Work work(int a, int w, int b, int rounds) {
        return new SideCuts.Work(new SideShape(a, w, b), rounds, 4.5, 2.7);
    }

    private record Square(int round, int column) {}

    /** The squares of all rounds that each part shows, corners included. */
    private static Map<Square, Integer> shown(SideCuts.Work work, List<SideCuts.Part> parts) {
        Map<Square, Integer> shown = new HashMap<>();
        for (SideCuts.Part part : parts) {
            for (int round = part.first(); round <= part.last(); round++) {
                int outside = work.rounds() - round;
                for (int column = Math.max(part.begin(), outside);
                        column < Math.min(part.end(), work.columns() - outside);
                        column++) {
                    shown.merge(new Square(round, column), 1, Integer::sum);
                }
            }
        }
        return shown;
    }

    @Test
    void every_stitch_of_every_round_is_on_one_part_and_but_for_two_rounds_on_no_other() {
        for (int rounds : new int[] {1, 7, 21, 27, 60, 131}) {
            for (int w : new int[] {1, 6, 16, 90}) {
                SideCuts.Work work = work(2, w, 13, rounds);
                Map<Square, Integer> shown = shown(work, cuts(work).parts());
                List<Square> missing = new ArrayList<>();
                Set<Integer> twice = new java.util.TreeSet<>();
                for (int round = 0; round <= rounds; round++) {
                    int outside = rounds - round;
                    for (int column = outside; column < work.columns() - outside; column++) {
                        int times = shown.getOrDefault(new Square(round, column), 0);
                        if (times == 0) {
                            missing.add(new Square(round, column));
                        } else if (times > 1) {
                            twice.add(round);
                        }
                    }
                }
                long bands = cuts(work).parts().stream()
                        .mapToInt(SideCuts.Part::last)
                        .distinct()
                        .count();
                assertThat(missing).as("rounds " + rounds + ", repeat " + w).isEmpty();
                assertThat(twice).hasSizeLessThanOrEqualTo((int) (2 * (bands - 1)));
            }
        }
    }

    @Test
    void a_side_of_some_twenty_rounds_is_cut_where_the_repeat_ends() {
        SideCuts.Work work = work(2, 6, 3, 21);
        assertThat(cuts(work).parts())
                .containsExactly(new SideCuts.Part(0, 21, 0, 30), new SideCuts.Part(0, 21, 30, 55));
        assertThat(cuts(work).parts())
                .extracting(work::sections)
                .containsExactly(EnumSet.of(Section.FROM_CORNER, Section.REPEAT), EnumSet.of(Section.TO_CORNER));
    }
}
