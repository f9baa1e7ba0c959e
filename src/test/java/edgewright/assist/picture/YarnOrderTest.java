package edgewright.assist.picture;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.assist.picture.PictureAnswer.Stitched;
import edgewright.chart.Rules;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class YarnOrderTest {
    @Test
    void everyPeriodOfUpToFourRoundsIsTriedOnceWithEachOfItsBeginnings() {
        assertThat(YarnOrder.periods(List.of("A", "B")))
                .hasToString(
                        "[[A], [B], [A, B], [B, A], [A, A, B], [A, B, A], [A, B, B], [B, A, A], [B, A, B], [B, B, A],"
                                + " [A, A, A, B], [A, A, B, A], [A, A, B, B], [A, B, A, A], [A, B, B, A], [A, B, B, B],"
                                + " [B, A, A, A], [B, A, A, B], [B, A, B, B], [B, B, A, A], [B, B, A, B], [B, B, B, A]]");
    }

    @Test
    void noOrderOfUpToFourRoundsMissesLessThanTheOneThatIsFound() {
        for (int seed = 0; seed < 60; seed++) {
            Rules rules = Rules.DEFAULT.withStackLongStitches(seed % 2 == 0);
            PictureTask task = new RandomPictures(seed).task(1, 9, 1, 12, rules);
            List<String> ids = List.of("A", "B", "C").subList(0, 2 + seed % 2);
            List<String> found =
                    YarnOrder.best(task.picture(), ids, rules, () -> false).orElseThrow();
            Cost least = null;
            List<String> first = null;
            for (List<String> order : allOrders(ids, task.picture().rounds())) {
                Cost cost = ((Stitched) PictureStitcher.nearest(task.withYarns(order))).cost();
                if (least == null || cost.isLessThan(least)) {
                    least = cost;
                    first = order;
                }
            }
            assertThat(found).as("seed %d", seed).isEqualTo(first);
        }
    }

    /** Whatever repeats itself after 1 to 4 rounds, shorter periods first, written with nested loops. */
    private static List<List<String>> allOrders(List<String> ids, int rounds) {
        Set<List<String>> orders = new LinkedHashSet<>();
        for (int period = 1; period <= 4; period++) {
            for (int code = 0; code < Math.pow(ids.size(), period); code++) {
                List<String> order = new ArrayList<>();
                for (int r = 0; r < rounds; r++) {
                    int digit = code / (int) Math.pow(ids.size(), period - 1 - r % period) % ids.size();
                    order.add(ids.get(digit));
                }
                orders.add(order);
            }
        }
        return List.copyOf(orders);
    }
}
