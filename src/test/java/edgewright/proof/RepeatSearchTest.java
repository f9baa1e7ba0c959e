package edgewright.proof;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.PerSide;
import edgewright.chart.Side;
import edgewright.proof.RepeatSearch.Cut;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.IntBinaryOperator;
import org.junit.jupiter.api.Test;

/** The search for the repeat, beside trying every cut letter by letter. */
class RepeatSearchTest {
    @Test
    void a_search_finds_what_trying_every_cut_finds() {
        Random random = new Random(5);
        int found = 0;
        int without = 0;
        for (int i = 0; i < 40_000; i++) {
            int w = 1 + random.nextInt(4);
            PerSide<Integer> times = PerSide.each(side -> random.nextInt(4));
            int a = random.nextInt(4);
            int b = random.nextInt(4);
            List<PerSide<String>> rounds = new ArrayList<>();
            for (int r = 1; r <= 1 + random.nextInt(3); r++) {
                rounds.add(round(random, a + r, w, b + r, times));
            }
            spoil(random, rounds);
            int asked = random.nextInt(4) == 0 ? 1 + random.nextInt(6) : w;
            int shortest =
                    a + b + w * times.stream().mapToInt(Integer::intValue).min().orElseThrow();
            IntBinaryOperator worth = (from, to) -> Math.floorMod(from * 7 + to, 3);
            Optional<Cut> cut = RepeatSearch.best(rounds, asked, shortest, worth);
            assertThat(cut)
                    .as("w %d, shortest %d: %s", asked, shortest, rounds)
                    .isEqualTo(tried(rounds, asked, shortest, worth));
            found += cut.isPresent() ? 1 : 0;
            without += cut.isPresent() ? 0 : 1;
        }
        assertThat(Math.min(found, without)).isGreaterThan(4_000);
    }

    private static PerSide<String> round(Random random, int from, int w, int to, PerSide<Integer> times) {
        String first = letters(random, from);
        String repeat = letters(random, w);
        String last = letters(random, to);
        return times.map(m -> first + repeat.repeat(m) + last);
    }

    private static String letters(Random random, int length) {
        StringBuilder letters = new StringBuilder();
        int sorts = 1 + random.nextInt(2);
        for (int i = 0; i < length; i++) {
            letters.append("bl".charAt(random.nextInt(sorts)));
        }
        return letters.toString();
    }

    /** Now and then a stitch is another one, or a side has a stitch more. */
    private static void spoil(Random random, List<PerSide<String>> rounds) {
        if (random.nextInt(3) > 0) {
            return;
        }
        int at = random.nextInt(rounds.size());
        Side side = Side.values()[random.nextInt(4)];
        StringBuilder letters = new StringBuilder(rounds.get(at).get(side));
        int place = random.nextInt(letters.length());
        if (random.nextInt(3) == 0) {
            letters.insert(place, 'p');
        } else {
            letters.setCharAt(place, 'l');
        }
        rounds.set(at, rounds.get(at).with(side, letters.toString()));
    }

    private static Optional<Cut> tried(List<PerSide<String>> rounds, int w, int shortest, IntBinaryOperator worth) {
        for (int corners = shortest % w; corners <= shortest; corners += w) {
            Optional<Cut> best = Optional.empty();
            int most = -1;
            for (int a = 0; a <= corners; a++) {
                if (worth.applyAsInt(a, corners - a) > most && isCut(rounds, a, w, corners - a)) {
                    best = Optional.of(new Cut(a, corners - a));
                    most = worth.applyAsInt(a, corners - a);
                }
            }
            if (best.isPresent()) {
                return best;
            }
        }
        return Optional.empty();
    }

    private static boolean isCut(List<PerSide<String>> rounds, int a, int w, int b) {
        for (int r = 1; r <= rounds.size(); r++) {
            String from = null;
            String to = null;
            String repeat = null;
            for (String letters : rounds.get(r - 1).stream().toList()) {
                int between = letters.length() - (a + r) - (b + r);
                if (between < 0 || between % w != 0) {
                    return false;
                }
                String thisFrom = letters.substring(0, a + r);
                String thisTo = letters.substring(letters.length() - (b + r));
                String thisRepeat = between == 0 ? repeat : letters.substring(a + r, a + r + w);
                boolean comesOut = between == 0 || letters.equals(thisFrom + thisRepeat.repeat(between / w) + thisTo);
                if (!comesOut
                        || (from != null && !from.equals(thisFrom))
                        || (to != null && !to.equals(thisTo))
                        || (repeat != null && !repeat.equals(thisRepeat))) {
                    return false;
                }
                from = thisFrom;
                to = thisTo;
                repeat = thisRepeat;
            }
            if (repeat == null) {
                return false;
            }
        }
        return true;
    }
}
