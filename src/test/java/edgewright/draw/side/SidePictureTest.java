package edgewright.draw.side;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.Chart;
import edgewright.chart.HookHand;
import edgewright.chart.Place;
import edgewright.chart.Section;
import edgewright.chart.Side;
import edgewright.chart.Stitch;
import edgewright.draw.EnglishStyle;
import edgewright.draw.marks.Drawing;
import edgewright.draw.marks.Emphasis;
import edgewright.draw.marks.Layer;
import edgewright.draw.marks.Mark;
import edgewright.draw.marks.MarkKind;
import edgewright.draw.marks.MarkStyle;
import edgewright.draw.paint.Area;
import edgewright.draw.paint.Shape;
import edgewright.draw.picture.PictureStyle;
import edgewright.testing.RandomCharts;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class SidePictureTest {
    private static SidePicture picture(Chart chart, PictureStyle style) {
        return SidePicture.of(chart, Side.FIRST, style, Emphasis.NONE);
    }

    /** What a row shows, as it is read in the direction of work. */
    private static List<String> row(SidePicture picture, int round, HookHand hand) {
        Comparator<Mark> fromTheLeft = Comparator.comparingDouble(
                mark -> picture.layout().areaOf(mark.cell().orElseThrow()).xMm());
        return picture.drawing().marks().stream()
                .filter(mark -> mark.kind().layer() == Layer.MARKS)
                .filter(mark -> mark.place().isPresent()
                        ? mark.place().get().round() == round
                        : mark.kind() == MarkKind.CORNER_CHAINS
                                && mark.cell().orElseThrow().y() == -round - 1)
                .sorted(hand == HookHand.LEFT ? fromTheLeft : fromTheLeft.reversed())
                .map(mark -> mark.place().map(Place::toString).orElse("corner") + " " + mark.kind())
                .toList();
    }

    @ParameterizedTest
    @EnumSource
    void a_row_is_a_round_from_the_corner_just_turned_over_the_repeat_to_the_next_corner(HookHand hand) {
        for (long seed = 1; seed < 20; seed++) {
            Chart chart = new RandomCharts(seed).workable();
            SidePicture picture = picture(chart, EnglishStyle.SCREEN.withHand(hand));
            for (int round = 1; round <= chart.rounds().size(); round++) {
                List<String> expected = new ArrayList<>(List.of("corner CORNER_CHAINS"));
                for (Section section : Section.values()) {
                    for (int i = 1; i <= chart.shape(Side.FIRST).length(section, round); i++) {
                        Place place = new Place(round, section, i);
                        expected.add(place + " " + MarkKind.of(chart.stitch(place)));
                    }
                }
                expected.add("corner CORNER_CHAINS");
                assertThat(row(picture, round, hand)).isEqualTo(expected);
            }
        }
    }

    @Test
    void rounds_lie_one_over_the_other_with_the_piece_below() {
        Chart chart = new RandomCharts(3).workable();
        SideLayout layout = picture(chart, EnglishStyle.SCREEN).layout();
        for (int round = 1; round <= chart.rounds().size(); round++) {
            Area above = layout.areaOf(layout.cell(round, 2));
            Area below = layout.areaOf(layout.cell(round - 1, 1));
            assertThat(above).isEqualTo(below.moved(0, above.yMm() - below.yMm()));
            assertThat(above.bottomMm()).isCloseTo(below.yMm(), org.assertj.core.api.Assertions.within(1e-9));
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void in_one_square_a_long_stitch_stays_in_it_and_the_back_loop_stitch_that_it_covers_has_no_mark(long seed) {
        Chart chart = new RandomCharts(seed).small();
        PictureStyle style = EnglishStyle.SCREEN;
        SidePicture squares = picture(chart, style.withMarkStyle(MarkStyle.SQUARES));
        Set<Place> bare = places(picture(chart, style.withMarkStyle(MarkStyle.STEMS)));
        bare.removeAll(places(squares));
        Set<Place> covered = places(picture(chart, style)).stream()
                .filter(place -> chart.has(place) && chart.stitch(place) == Stitch.BACK_LOOP)
                .filter(place -> {
                    Place above = chart.shape(Side.FIRST).above(place);
                    return above.round() <= chart.rounds().size()
                            && chart.has(above)
                            && chart.stitch(above) == Stitch.LONG;
                })
                .collect(Collectors.toSet());
        assertThat(bare).isEqualTo(covered);
        assertThat(squares.drawing().marks().stream().filter(mark -> mark.kind() == MarkKind.LONG))
                .allMatch(mark ->
                        squares.layout().areaOf(mark.cell().orElseThrow()).holds(mark.bounds()));
    }

    private static Set<Place> places(SidePicture picture) {
        return picture.drawing().marks().stream()
                .filter(mark -> mark.kind().layer() == Layer.MARKS)
                .flatMap(mark -> mark.place().stream())
                .collect(Collectors.toSet());
    }

    @Test
    void sides_that_are_alike_are_drawn_once() {
        assertThat(SidePicture.differing(new RandomCharts(1).workable())).containsExactly(Side.FIRST);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
    void whatever_stands_beside_the_cells_is_on_the_sheet_and_no_two_texts_lie_over_each_other(long seed) {
        Chart chart = new RandomCharts(seed).small();
        for (HookHand hand : HookHand.values()) {
            Drawing drawing = picture(chart, EnglishStyle.PRINT.withHand(hand)).drawing();
            List<Area> texts = drawing.marks().stream()
                    .flatMap(mark -> mark.shapes().stream())
                    .filter(Shape.Text.class::isInstance)
                    .map(shape -> shape.bounds().grown(-0.3))
                    .toList();
            Area sheet = new Area(0, 0, drawing.widthMm(), drawing.heightMm());
            assertThat(texts).allMatch(sheet::holds);
            for (int i = 0; i < texts.size(); i++) {
                Area one = texts.get(i);
                assertThat(IntStream.range(0, i).filter(j -> one.touches(texts.get(j))))
                        .as("texts over " + one)
                        .isEmpty();
            }
        }
    }
}
