package edgewright.desk.tool;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.Chart;
import edgewright.chart.Footing;
import edgewright.chart.Place;
import edgewright.chart.Section;
import edgewright.chart.SideShape;
import edgewright.desk.Desk;
import edgewright.testing.RandomCharts;
import edgewright.texts.English;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The mirrors as functions from places to places. That sides grow by two stitches a round at their corners, so that the columns
 * of both arms mirror each other across the diagonal, is common practice.
 */
class SymmetryTest {
    @Test
    void acrossTheCornerAStitchIsAsFarBehindTheChainsAsItsImageIsBeforeThem() {
        Chart chart = chart(new SideShape(1, 4, 1));
        assertThat(images(chart, place(3, Section.FROM_CORNER, 1), Mirror.CORNER))
                .containsExactly(place(3, Section.FROM_CORNER, 1), place(3, Section.TO_CORNER, 4));
        assertThat(images(chart, place(3, Section.REPEAT, 1), Mirror.CORNER))
                .containsExactly(place(3, Section.REPEAT, 1), place(3, Section.REPEAT, 4));
    }

    @Test
    void acrossTheCornerTheLongerPartMeetsTheRepeat() {
        // The part to the corner is two stitches longer: its first two stitches are mirrored in the first two of the
        // repeat.
        Chart chart = chart(new SideShape(0, 5, 2));
        assertThat(images(chart, place(2, Section.TO_CORNER, 1), Mirror.CORNER))
                .containsExactlyInAnyOrder(
                        place(2, Section.TO_CORNER, 1),
                        place(2, Section.REPEAT, 2),
                        place(2, Section.REPEAT, 1),
                        place(2, Section.TO_CORNER, 2));
    }

    @Test
    void acrossTheMiddleOfTheRepeatTheSectionsAtTheCornersStay() {
        Chart chart = chart(new SideShape(1, 5, 1));
        assertThat(images(chart, place(2, Section.REPEAT, 1), Mirror.REPEAT))
                .containsExactly(place(2, Section.REPEAT, 1), place(2, Section.REPEAT, 5));
        assertThat(images(chart, place(2, Section.REPEAT, 3), Mirror.REPEAT))
                .containsExactly(place(2, Section.REPEAT, 3));
        assertThat(images(chart, place(2, Section.FROM_CORNER, 1), Mirror.REPEAT))
                .containsExactly(place(2, Section.FROM_CORNER, 1));
    }

    @Test
    void halfARepeatOnIsAWholeNumberOfStitchesOrNothing() {
        assertThat(images(chart(new SideShape(1, 6, 1)), place(2, Section.REPEAT, 5), Mirror.HALF))
                .containsExactly(place(2, Section.REPEAT, 5), place(2, Section.REPEAT, 2));
        assertThat(images(chart(new SideShape(1, 5, 1)), place(2, Section.REPEAT, 5), Mirror.HALF))
                .containsExactly(place(2, Section.REPEAT, 5));
        assertThat(Mirror.HALF.isPossible(new SideShape(1, 5, 1))).isFalse();
    }

    @Test
    void severalMirrorsReachWhateverCanBeReachedThroughAllOfThem() {
        Chart chart = chart(new SideShape(1, 8, 1));
        assertThat(images(chart, place(2, Section.REPEAT, 1), Mirror.REPEAT, Mirror.HALF))
                .containsExactlyInAnyOrder(
                        place(2, Section.REPEAT, 1),
                        place(2, Section.REPEAT, 8),
                        place(2, Section.REPEAT, 5),
                        place(2, Section.REPEAT, 4));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void everyImageIsAStitchOfTheChartInTheSameRoundAndHasTheSameImages(long seed) {
        RandomCharts charts = new RandomCharts(seed);
        for (int i = 0; i < 60; i++) {
            Chart chart = i % 5 == 0 ? charts.ragged() : charts.small();
            Symmetry symmetry = any(charts.random());
            for (Place place : some(chart, charts.random())) {
                Set<Place> images = symmetry.images(chart, place);
                assertThat(images)
                        .contains(place)
                        .allMatch(chart::has)
                        .allMatch(image -> image.round() == place.round());
                if (chart.raggedSections().isEmpty()) {
                    assertThat(images)
                            .allSatisfy(image ->
                                    assertThat(symmetry.images(chart, image)).isEqualTo(images));
                }
            }
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {5, 6, 7, 8})
    void whatStandsBelowAnImageIsAnImageOfWhatStandsBelow(long seed) {
        RandomCharts charts = new RandomCharts(seed);
        for (int i = 0; i < 60; i++) {
            Chart chart = charts.small();
            Symmetry symmetry = any(charts.random());
            for (Place place : some(chart, charts.random())) {
                for (Place image : symmetry.images(chart, place)) {
                    assertThat(standsOn(chart, symmetry, image))
                            .as("%s and its image %s under %s in %s", place, image, symmetry, chart.shape())
                            .isEqualTo(standsOn(chart, symmetry, place));
                }
            }
        }
    }

    /** What a stitch stands on, up to the mirrors: all stitches that are the same as that one, or nothing for a corner chain. */
    private static Set<Place> standsOn(Chart chart, Symmetry symmetry, Place place) {
        return chart.shape().footing(place) instanceof Footing.OnStitch stitch
                        && stitch.place().round() >= 1
                ? symmetry.images(chart, stitch.place())
                : Set.of();
    }

    private static Symmetry any(Random random) {
        Set<Mirror> mirrors = EnumSet.noneOf(Mirror.class);
        for (Mirror mirror : Mirror.values()) {
            if (random.nextBoolean()) {
                mirrors.add(mirror);
            }
        }
        return new Symmetry(mirrors);
    }

    private static List<Place> some(Chart chart, Random random) {
        List<Place> places = new ArrayList<>();
        int round = 1 + random.nextInt(chart.rounds().size());
        for (Section section : Section.values()) {
            for (int p = 1; p <= chart.round(round).section(section).length(); p++) {
                places.add(new Place(round, section, p));
            }
        }
        return places;
    }

    private static Set<Place> images(Chart chart, Place place, Mirror... mirrors) {
        return new Symmetry(new HashSet<>(List.of(mirrors))).images(chart, place);
    }

    private static Place place(int round, Section section, int place) {
        return new Place(round, section, place);
    }

    private static Chart chart(SideShape shape) {
        return Chart.blank("Reed Bank", shape, 4, Desk.blank(English.LANGUAGE).yarns());
    }
}
