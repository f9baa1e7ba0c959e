package edgewright.assist.picture;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.assist.picture.PictureAnswer.LocksClash;
import edgewright.assist.picture.PictureAnswer.Stitched;
import edgewright.chart.Place;
import edgewright.chart.Rules;
import edgewright.chart.Section;
import edgewright.chart.Stitch;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** No chart comes nearer to a picture: held to every column that there is. */
class LeastMissesTest {
    private static final Rules RULES = Rules.DEFAULT.withLooseRun(2_000);

    /** As many columns as a repeat may have. */
    private static final int MOST = 2_000;

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void everyColumnOfTwoYarnsUpToEightRoundsInEveryOrderOfItsRoundsMissesAsLittleAsCanBe(boolean stacking) {
        long compared = 0;
        for (int rounds = 1; rounds <= 8; rounds++) {
            List<List<Wanted>> columns = all(rounds, List.of(".", "A", "B"));
            for (List<String> yarns : orders(rounds, List.of("A", "B"))) {
                compared += compare(columns, yarns, stacking);
            }
        }
        // The sum of 3^n wanted columns times 2^n orders for n = 1 to 8.
        assertThat(compared).isEqualTo((6L * (1_679_616 - 1)) / 5);
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void everyColumnOfThreeYarnsMissesAsLittleAsCanBe(boolean stacking) {
        long compared = 0;
        for (int rounds = 1; rounds <= 5; rounds++) {
            List<List<Wanted>> columns = all(rounds, List.of(".", "A", "B", "C"));
            for (List<String> yarns : orders(rounds, List.of("A", "B", "C"))) {
                compared += compare(columns, yarns, stacking);
            }
        }
        for (int rounds = 6; rounds <= 8; rounds++) {
            List<List<Wanted>> columns = all(rounds, List.of(".", "A", "B", "C"));
            for (List<String> turn : List.of(List.of("A", "B", "C"), List.of("C", "A", "B", "A"))) {
                compared += compare(columns, YarnOrder.inTurn(turn, rounds), stacking);
            }
        }
        assertThat(compared).isEqualTo(12 * (248_832 - 1) / 11 + 2 * (4_096 + 16_384 + 65_536));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void columnsByChanceWithWeightsMustsAndLocksCostAsLittleAsCanBe(long seed) {
        Random random = new Random(seed);
        int rounds = 9 + (int) seed;
        boolean stacking = random.nextBoolean();
        List<boolean[]> workable = PlainColumns.workable(rounds, stacking);
        List<String> yarns = new ArrayList<>();
        for (int i = 0; i < rounds; i++) {
            yarns.add("ABC".substring(random.nextInt(3)).substring(0, 1));
        }
        List<List<Wanted>> columns = new ArrayList<>();
        Map<Place, Stitch> locked = new HashMap<>();
        for (int place = 1; place <= 300; place++) {
            columns.add(byChance(random, rounds));
            for (int r = 1; r <= rounds; r++) {
                if (random.nextInt(8) == 0) {
                    locked.put(
                            new Place(r, Section.REPEAT, place),
                            random.nextInt(3) == 0 ? Stitch.LONG : Stitch.BACK_LOOP);
                }
            }
        }
        List<Integer> clashing = new ArrayList<>();
        Cost least = Cost.NOTHING;
        for (int place = 1; place <= columns.size(); place++) {
            List<Stitch> locks = new ArrayList<>();
            for (int r = 1; r <= rounds; r++) {
                locks.add(locked.get(new Place(r, Section.REPEAT, place)));
            }
            Cost cost = PlainColumns.least(workable, yarns, columns.get(place - 1), locks);
            if (cost == null) {
                clashing.add(place);
                int column = place;
                locked.keySet().removeIf(at -> at.place() == column);
                cost = PlainColumns.least(workable, yarns, columns.get(place - 1), Collections.nCopies(rounds, null));
            }
            least = least.plus(cost);
        }
        assertThat(clashing).isNotEmpty();

        PictureTask task = new PictureTask(picture(columns), yarns, RULES.withStackLongStitches(stacking), locked);
        Stitched answer = (Stitched) PictureStitcher.nearest(task);
        assertThat(answer.cost()).isEqualTo(least);
        locked.forEach((place, stitch) -> assertThat(
                        answer.rounds().get(place.round() - 1).at(place.place()))
                .isEqualTo(stitch));
    }

    @Test
    void locksThatCannotBeWorkedTogetherAreNamedByTheirColumns() {
        Map<Place, Stitch> locked = Map.of(
                new Place(2, Section.REPEAT, 2), Stitch.LONG,
                new Place(3, Section.REPEAT, 2), Stitch.LONG,
                new Place(1, Section.REPEAT, 3), Stitch.LONG,
                new Place(3, Section.REPEAT, 1), Stitch.LONG);
        PictureTask task =
                new PictureTask(WantedPicture.neverMind(3, 3), List.of("A", "B", "A"), Rules.DEFAULT, locked);
        assertThat(PictureStitcher.nearest(task)).isEqualTo(new LocksClash(List.of(2, 3)));
    }

    @Test
    void whatMustShowCostsWhateverElseItMust() {
        List<List<Wanted>> columns = List.of(List.of(
                Wanted.of("A"), Wanted.of("B").withWeight(1), new Wanted("A", 1, true), new Wanted("A", 900, false)));
        PictureTask task = new PictureTask(picture(columns), List.of("A", "B", "B", "A"), Rules.DEFAULT);
        Stitched answer = (Stitched) PictureStitcher.nearest(task);
        // Round 3 shows A only under a long stitch of round 4; nothing is lost by it.
        assertThat(answer.rounds().toString()).isEqualTo("[b, b, b, l]");
        assertThat(answer.cost()).isEqualTo(new Cost(0, 0, 1));
    }

    /** Compares the program with the witness, column by column, and says how many there were. */
    private static long compare(List<List<Wanted>> columns, List<String> yarns, boolean stacking) {
        List<boolean[]> workable = PlainColumns.workable(yarns.size(), stacking);
        for (int from = 0; from < columns.size(); from += MOST) {
            List<List<Wanted>> batch = columns.subList(from, Math.min(from + MOST, columns.size()));
            PictureTask task = new PictureTask(picture(batch), yarns, RULES.withStackLongStitches(stacking));
            Stitched answer = (Stitched) PictureStitcher.nearest(task);
            int[] misses = new int[batch.size()];
            answer.misses().forEach(miss -> misses[miss.place().place() - 1]++);
            for (int i = 0; i < misses.length; i++) {
                int longs = 0;
                for (int row = 0; row < yarns.size(); row++) {
                    longs += answer.rounds().get(row).at(i + 1) == Stitch.LONG ? 1 : 0;
                }
                int fewest = PlainColumns.fewest(workable, yarns, batch.get(i));
                if (fewest != 100 * misses[i] + longs) {
                    assertThat(100 * misses[i] + longs)
                            .as("%s in %s", batch.get(i), yarns)
                            .isEqualTo(fewest);
                }
            }
        }
        return columns.size();
    }

    private static WantedPicture picture(List<List<Wanted>> columns) {
        return WantedPicture.of(
                columns.get(0).size(),
                columns.size(),
                place -> columns.get(place.place() - 1).get(place.round() - 1));
    }

    private static List<Wanted> byChance(Random random, int rounds) {
        List<Wanted> column = new ArrayList<>();
        for (int i = 0; i < rounds; i++) {
            String yarn = "ABC".substring(random.nextInt(3)).substring(0, 1);
            column.add(
                    random.nextInt(5) == 0
                            ? Wanted.NEVER_MIND
                            : new Wanted(yarn, 1 + random.nextInt(4), random.nextInt(6) == 0));
        }
        return column;
    }

    private static List<List<Wanted>> all(int rounds, List<String> letters) {
        return orders(rounds, letters).stream()
                .map(column -> column.stream()
                        .map(letter -> letter.equals(".") ? Wanted.NEVER_MIND : Wanted.of(letter))
                        .toList())
                .toList();
    }

    private static List<List<String>> orders(int rounds, List<String> letters) {
        List<List<String>> orders = List.of(List.of());
        for (int i = 0; i < rounds; i++) {
            List<List<String>> longer = new ArrayList<>();
            for (List<String> begun : orders) {
                for (String letter : letters) {
                    List<String> next = new ArrayList<>(begun);
                    next.add(letter);
                    longer.add(List.copyOf(next));
                }
            }
            orders = longer;
        }
        return orders;
    }
}
