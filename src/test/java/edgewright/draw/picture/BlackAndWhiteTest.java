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
import edgewright.draw.paint.YarnSign;
import edgewright.testing.RandomCharts;
import edgewright.testing.Sketches;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

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
    void areas_are_blank_in_the_lightest_yarn_black_in_the_darkest_and_hatched_in_those_between() {
        Chart chart = REEDS.withYarns(List.of(
                        new Yarn("A", "Peat", Colour.parse("#2b2a33")),
                        new Yarn("B", "Chalk", Colour.parse("#f2ead8")),
                        new Yarn("C", "Sedge", Colour.parse("#7c8a4a")),
                        new Yarn("D", "Never worked", Colour.parse("#ffffff"))))
                .withRound(3, REEDS.round(3).withYarn("C"));
        assertThat(Hatch.of(chart)).isEqualTo(Map.of("B", Hatch.BLANK, "C", Hatch.RISING, "A", Hatch.SOLID));
    }

    @Test
    void a_covered_stitch_is_hatched_as_the_yarn_that_covers_it() {
        Map<String, YarnSign> signs = YarnSign.of(REEDS);
        for (Mark mark : ChartPicture.corner(REEDS, EnglishStyle.BLACK_AND_WHITE, Emphasis.NONE)
                .marks()) {
            if (mark.kind() == MarkKind.FABRIC_STITCH) {
                String shown = REEDS.round(REEDS.shownRound(mark.place().orElseThrow()))
                        .yarn();
                Area cell = mark.shapes().get(0).bounds();
                assertThat(mark.shapes()).isEqualTo(signs.get(shown).in(cell));
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

    @Test
    void of_three_yarns_in_a_chart_the_darkest_is_hatched_and_the_others_have_their_letters() {
        assertThat(YarnSign.of(inThreeYarns()))
                .isEqualTo(Map.of(
                        "A", new YarnSign(true, Optional.empty()),
                        "B", new YarnSign(false, Optional.of("B")),
                        "C", new YarnSign(false, Optional.of("C"))));
        assertThat(YarnSign.of(REEDS))
                .isEqualTo(Map.of("A", new YarnSign(true, Optional.empty()), "B", YarnSign.BLANK));
    }

    @Test
    void an_area_is_parted_from_one_of_another_yarn_by_one_line_where_squares_have_letters() {
        Chart two = Sketches.chart("""
                2 B bbb|bb|bb
                1 A  bb|bb|b
                """);
        assertThat(lines(two)).isEmpty();
        Chart three = inThreeYarns();
        List<Mark> lines = lines(three);
        assertThat(lines.stream().flatMap(mark -> mark.shapes().stream()).distinct())
                .hasSameSizeAs(
                        lines.stream().flatMap(mark -> mark.shapes().stream()).toList())
                .isNotEmpty();
    }

    private static Chart inThreeYarns() {
        return REEDS.withYarns(List.of(
                        new Yarn("A", "Peat", Colour.parse("#2b2a33")),
                        new Yarn("B", "Chalk", Colour.parse("#f2ead8")),
                        new Yarn("C", "Sedge", Colour.parse("#7c8a4a"))))
                .withRound(3, REEDS.round(3).withYarn("C"));
    }

    private static List<Mark> lines(Chart chart) {
        return ChartPicture.corner(chart, EnglishStyle.BLACK_AND_WHITE, Emphasis.NONE).marks().stream()
                .filter(mark -> mark.kind() == MarkKind.AREA_LINE)
                .toList();
    }
}
