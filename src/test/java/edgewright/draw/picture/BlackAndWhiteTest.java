package edgewright.draw.picture;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.Chart;
import edgewright.chart.Colour;
import edgewright.chart.PerSide;
import edgewright.chart.Yarn;
import edgewright.check.Checker;
import edgewright.draw.EnglishStyle;
import edgewright.draw.marks.Drawing;
import edgewright.draw.marks.Emphasis;
import edgewright.draw.marks.Mark;
import edgewright.draw.marks.MarkKind;
import edgewright.draw.paint.Area;
import edgewright.draw.paint.Hatch;
import edgewright.draw.paint.Shape;
import edgewright.draw.paint.Surface;
import edgewright.draw.raster.RasterPicture;
import edgewright.testing.RandomCharts;
import edgewright.testing.Sketches;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Pictures in one ink: nothing that a photocopier would lose. */
class BlackAndWhiteTest {
    private static final Chart REEDS = Sketches.chart("""
            4 B bbbbb|bbbblb|bbbbbb
            3 A  bllb|llbbbb|llblb
            2 B   bbb|bbbpcb|bbbb
            1 A    bb|bbbbbb|bbb
            """);

    /** Hears of every colour that is used. */
    private static final class Colours implements Surface {
        private final Set<String> used = new TreeSet<>();

        @Override
        public void fill(Shape.Fill fill) {
            used.add(fill.colour().toString());
        }

        @Override
        public void line(Shape.Line line) {
            used.add(line.colour().toString());
        }

        @Override
        public void text(Shape.Text text) {
            used.add(text.colour().toString());
        }
    }

    private static Set<String> colours(Drawing drawing) {
        Colours colours = new Colours();
        drawing.drawOn(colours);
        return colours.used;
    }

    @Test
    void nothing_is_drawn_but_black_on_white() {
        for (int seed = 0; seed < 20; seed++) {
            RandomCharts charts = new RandomCharts(seed);
            Chart chart = seed % 3 == 0 ? charts.ragged() : charts.small();
            Emphasis findings = Emphasis.of(Checker.check(chart).findings());
            assertThat(colours(ChartPicture.corner(chart, EnglishStyle.BLACK_AND_WHITE, findings)))
                    .containsExactly("#000000", "#ffffff");
            assertThat(colours(ChartPicture.wholeBorder(
                            chart, PerSide.all(2), EnglishStyle.BLACK_AND_WHITE.withLook(FabricFill.WORKED))))
                    .containsExactly("#000000", "#ffffff");
        }
    }

    @Test
    void the_lightest_yarn_is_left_blank_and_the_others_are_hatched_the_heavier_the_darker_they_are() {
        Chart chart = REEDS.withYarns(List.of(
                        new Yarn("A", "Peat", Colour.parse("#2b2a33")),
                        new Yarn("B", "Chalk", Colour.parse("#f2ead8")),
                        new Yarn("C", "Sedge", Colour.parse("#7c8a4a")),
                        new Yarn("D", "Never worked", Colour.parse("#ffffff"))))
                .withRound(3, REEDS.round(3).withYarn("C"));
        assertThat(Hatch.of(chart)).isEqualTo(Map.of("B", Hatch.BLANK, "C", Hatch.RISING, "A", Hatch.CROSSED));
    }

    @Test
    void a_covered_stitch_is_hatched_as_the_yarn_that_covers_it() {
        Map<String, Hatch> hatches = Hatch.of(REEDS);
        for (Mark mark : ChartPicture.corner(REEDS, EnglishStyle.BLACK_AND_WHITE, Emphasis.NONE)
                .marks()) {
            if (mark.kind() == MarkKind.FABRIC_STITCH) {
                String shown = REEDS.round(REEDS.shownRound(mark.place().orElseThrow()))
                        .yarn();
                Area cell = mark.shapes().get(0).bounds();
                assertThat(mark.shapes()).isEqualTo(hatches.get(shown).in(cell));
            }
        }
    }

    @Test
    void every_round_bears_the_letter_of_its_yarn_at_both_ends() {
        List<String> letters = new ArrayList<>();
        for (Mark mark : ChartPicture.corner(REEDS, EnglishStyle.BLACK_AND_WHITE, Emphasis.NONE)
                .marks()) {
            if (mark.kind() == MarkKind.YARN_LETTER) {
                letters.add(mark.yarn().orElseThrow());
            }
        }
        assertThat(letters).containsExactlyInAnyOrder("A", "A", "A", "A", "B", "B", "B", "B");
    }

    /** Copied at 200 dots an inch and turned to black and white at half grey, the smallest printed cells stay apart. */
    @ParameterizedTest
    @ValueSource(doubles = {4, 6.5, 12})
    void hatches_are_told_apart_after_a_copy_in_one_bit(double cellMm) {
        Set<List<Boolean>> copies = new HashSet<>();
        for (Hatch hatch : Hatch.values()) {
            List<Mark> marks = new ArrayList<>();
            for (int row = 0; row < 3; row++) {
                for (int column = 0; column < 3; column++) {
                    Area cell = new Area(column * cellMm, row * cellMm, cellMm, cellMm);
                    marks.add(Mark.beside(MarkKind.LEGEND, hatch.in(cell)));
                }
            }
            copies.add(copy(new Drawing(3 * cellMm, 3 * cellMm, "hatch", "hatch", marks)));
        }
        assertThat(copies).hasSize(Hatch.values().length);
    }

    @Test
    void hatches_are_lighter_and_heavier_in_their_order() {
        List<Double> black = new ArrayList<>();
        for (Hatch hatch : Hatch.values()) {
            List<Boolean> copy = copy(new Drawing(
                    5, 5, "hatch", "hatch", List.of(Mark.beside(MarkKind.LEGEND, hatch.in(new Area(0, 0, 5, 5))))));
            black.add(copy.stream().filter(dark -> dark).count() / (double) copy.size());
        }
        assertThat(black.get(0)).isZero();
        assertThat(black.get(1)).isBetween(0.05, 0.2);
        assertThat(black.get(7)).isBetween(0.2, 0.5);
        assertThat(black.get(6)).isBetween(0.2, 0.5);
        for (int i = 2; i < 6; i++) {
            assertThat(black.get(i)).isBetween(0.1, 0.25);
        }
    }

    private static List<Boolean> copy(Drawing drawing) {
        BufferedImage image = RasterPicture.of(drawing, 200);
        List<Boolean> dark = new ArrayList<>();
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                dark.add((image.getRGB(x, y) & 0xff) < 128);
            }
        }
        return dark;
    }
}
