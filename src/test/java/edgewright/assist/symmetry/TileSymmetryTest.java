package edgewright.assist.symmetry;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.assist.symmetry.TileSymmetry.Breach;
import edgewright.chart.Chart;
import edgewright.chart.Colour;
import edgewright.chart.Heading;
import edgewright.chart.Place;
import edgewright.chart.Round;
import edgewright.chart.Rules;
import edgewright.chart.Section;
import edgewright.chart.SideShape;
import edgewright.chart.Stitches;
import edgewright.chart.Yarn;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TileSymmetryTest {
    private static final List<Yarn> YARNS =
            List.of(new Yarn("A", "Peat", Colour.parse("#2b2a33")), new Yarn("B", "Chalk", Colour.parse("#f2ead8")));

    /**
     * Bands of one period as they are shown, the outermost round first. The names of the groups and what each has are from memory;
     * the bands were made with a pencil.
     */
    @ParameterizedTest
    @CsvSource({
        "p1, 'x..... xx.... x.x... xxxx..'",
        "p11g, 'xx.... x..... ...x.. ...xx.'",
        "p1m1, '..x... .xxx.. x...x.'",
        "p2, '.xxx.. .xx... xxx...'",
        "p2mg, '.xx..... xxxx.... ....xxxx .....xx.'",
        "p11m, 'xxx... x..... xx.... x..... xxx...'",
        "p2mm, '.x.... xxx... .x....'"
    })
    void eachOfTheSevenGroupsIsNamed(String name, String band) {
        List<String> rows = List.of(band.split(" "));
        for (int shift = 0; shift < rows.get(0).length(); shift++) {
            int by = shift;
            List<String> moved = rows.stream()
                    .map(row -> row.substring(by) + row.substring(0, by))
                    .toList();
            TileSymmetry symmetry = TileSymmetry.of(chart(moved));
            assertThat(symmetry.group().standardName()).isEqualTo(name);
            assertThat(symmetry.period()).isEqualTo(rows.get(0).length());
            List<String> twice = moved.stream().map(row -> row + row).toList();
            assertThat(TileSymmetry.of(chart(twice)).group()).isEqualTo(symmetry.group());
            assertThat(TileSymmetry.of(chart(twice)).period()).isEqualTo(symmetry.period());
        }
    }

    @Test
    void whatBreaksTheNextGroupIsMarked() {
        // The square at the right of the upper row, and the one below it that joins it to the middle row, have none
        // opposite.
        TileSymmetry symmetry = TileSymmetry.of(chart(List.of(".xx...", "xxx...", ".x....")));
        assertThat(symmetry)
                .isEqualTo(new TileSymmetry(
                        FriezeGroup.P1,
                        6,
                        Optional.of(new Breach(
                                FriezeGroup.P2MM,
                                List.of(new Place(5, Section.REPEAT, 3), new Place(6, Section.REPEAT, 3))))));
    }

    @Test
    void theGreatestGroupsLackNothing() {
        assertThat(TileSymmetry.of(chart(List.of(".x....", "xxx...", ".x...."))).nearest())
                .isEmpty();
        assertThat(TileSymmetry.of(Chart.blank("Plain", new SideShape(0, 4, 0), 3, YARNS)))
                .isEqualTo(new TileSymmetry(FriezeGroup.P2MM, 1, Optional.empty()));
    }

    @Test
    void aBandInAMirrorHasTheSameGroupAndLacksAsMuch() {
        Random random = new Random(7);
        for (int i = 0; i < 200; i++) {
            int width = 2 + random.nextInt(6);
            List<String> rows = new ArrayList<>();
            for (int height = 2 + random.nextInt(3); height > 0; height--) {
                StringBuilder row = new StringBuilder();
                for (int column = 0; column < width; column++) {
                    row.append(random.nextInt(3) == 0 ? 'x' : '.');
                }
                rows.add(row.toString());
            }
            List<String> reversed = rows.stream()
                    .map(row -> new StringBuilder(row).reverse().toString())
                    .toList();
            TileSymmetry one = TileSymmetry.of(chart(rows));
            TileSymmetry two = TileSymmetry.of(chart(reversed));
            assertThat(two.group()).isEqualTo(one.group());
            assertThat(two.nearest().map(breach -> breach.cells().size()))
                    .isEqualTo(one.nearest().map(breach -> breach.cells().size()));
        }
    }

    /**
     * A chart that shows a band: each row is a round of Chalk, joined to the next where both are filled, on a ground of Peat.
     *
     * @param rows the outermost first
     */
    private static Chart chart(List<String> rows) {
        int w = rows.get(0).length();
        List<Round> rounds = new ArrayList<>(List.of(round("A", 1, "b".repeat(w))));
        for (int i = rows.size() - 1; i >= 0; i--) {
            StringBuilder filled = new StringBuilder();
            StringBuilder ground = new StringBuilder();
            for (int column = 0; column < w; column++) {
                boolean here = rows.get(i).charAt(column) == 'x';
                boolean below = i + 1 < rows.size() && rows.get(i + 1).charAt(column) == 'x';
                filled.append(here && below ? 'l' : 'b');
                ground.append(here ? 'b' : 'l');
            }
            rounds.add(round("B", rounds.size() + 1, filled.toString()));
            rounds.add(round("A", rounds.size() + 1, ground.toString()));
        }
        return new Chart(Heading.of("Band"), YARNS, rounds).withRules(Rules.DEFAULT.withStackLongStitches(true));
    }

    private static Round round(String yarn, int number, String repeat) {
        return new Round(yarn, Stitches.backLoops(number), Stitches.of(repeat), Stitches.backLoops(number));
    }
}
