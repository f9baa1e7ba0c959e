package edgewright.draw.picture;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.booklet.Published;
import edgewright.chart.Chart;
import edgewright.chart.Place;
import edgewright.chart.Section;
import edgewright.check.Severity;
import edgewright.draw.EnglishStyle;
import edgewright.draw.marks.Drawing;
import edgewright.draw.marks.Emphasis;
import edgewright.draw.marks.MarkKind;
import edgewright.draw.paint.Area;
import edgewright.draw.paint.Shape;
import edgewright.testing.Sketches;
import java.util.List;
import org.junit.jupiter.api.Test;

class LegendTest {
    private static List<String> rows(Drawing legend) {
        return legend.marks().stream()
                .filter(mark -> mark.kind() == MarkKind.LEGEND)
                .flatMap(mark -> mark.shapes().stream())
                .filter(Shape.Text.class::isInstance)
                .map(text -> ((Shape.Text) text).text())
                .filter(text -> text.length() > 1)
                .toList();
    }

    @Test
    void it_explains_the_marks_of_the_chart_and_no_others() {
        Chart plain = Sketches.chart("1 A bb|bb|bb\n");
        assertThat(rows(Legend.of(plain, EnglishStyle.PRINT, Emphasis.NONE)))
                .containsExactly(
                        "back-loop stitch",
                        "corner: 2 chains in the yarn of the round",
                        "base round, already on the piece",
                        "a repeat begins or ends",
                        "every 10 stitches from the corner",
                        "Peat");
        Chart all = Sketches.chart("""
                3 A bbbb|lb|bbbb
                2 B  bbb|pc|bbb
                1 A   bb|bb|bb
                """);
        Emphasis emphasis = new Emphasis(List.of(
                Emphasis.Flag.at(1, Severity.ERROR, new Place(3, Section.REPEAT, 1)),
                Emphasis.Flag.in(2, Severity.WARNING, 2)));
        assertThat(rows(Legend.of(all.withCorner(all.corner().withChains(1)), EnglishStyle.PRINT, emphasis)))
                .containsExactly(
                        "back-loop stitch",
                        "plain stitch, through both loops",
                        "long stitch: into the free front loop of the stitch two",
                        "rounds below, at the dot.",
                        "chain over one stitch",
                        "corner: 1 chain in the yarn of the round",
                        "base round, already on the piece",
                        "a repeat begins or ends",
                        "every 10 stitches from the corner",
                        "Peat",
                        "Chalk",
                        "Round 2 is worked in yarn B.",
                        "Where it shows A, a long",
                        "stitch of round 3 lies over it.",
                        "cannot be worked; see the list",
                        "needs a look; see the list");
    }

    @Test
    void it_says_which_loop_a_long_stitch_goes_into_beside_a_corner_if_the_chart_has_one_there() {
        Chart beside = Sketches.chart("""
                3 A blbb|bb|bbbb
                2 B  bbb|bb|bbb
                1 A   bb|bb|bb
                """);
        assertThat(String.join(" ", rows(Legend.of(beside, EnglishStyle.PRINT, Emphasis.NONE))))
                .contains("Over a corner: into the front loop of the corner chain that holds the stitch it covers.");
        Chart last = Sketches.chart("""
                3 A bbbb|bb|bblb
                2 B  bbb|bb|bbb
                1 A   bb|bb|bb
                """);
        assertThat(String.join(" ", rows(Legend.of(last, EnglishStyle.PRINT, Emphasis.NONE))))
                .contains("Over a corner:");
    }

    @Test
    void of_three_yarns_in_one_ink_it_explains_the_bold_outlines_of_areas() {
        Chart three = Published.sample("lantern-posts");
        assertThat(rows(Legend.of(three, EnglishStyle.BLACK_AND_WHITE, Emphasis.NONE)))
                .contains("bold outline: where the yarn that shows changes");
        assertThat(rows(Legend.of(three, EnglishStyle.PRINT, Emphasis.NONE)))
                .doesNotContain("bold outline: where the yarn that shows changes");
    }

    @Test
    void it_explains_nothing_that_the_style_leaves_out() {
        Chart chart = Sketches.chart("1 A bb|bb|bb\n");
        assertThat(rows(Legend.of(chart, EnglishStyle.PRINT.withMarks(false).withGrid(false), Emphasis.NONE)))
                .containsExactly("base round, already on the piece", "Peat");
    }

    @Test
    void stitches_can_be_named_in_the_terms_of_the_pattern() {
        Chart chart = Sketches.chart("1 A pp|pp|pp\n");
        assertThat(rows(Legend.of(chart, EnglishStyle.PRINT, Emphasis.NONE, stitch -> "named " + stitch.letter())))
                .startsWith("named p");
    }

    @Test
    void nothing_of_it_lies_beyond_its_sheet() {
        Chart chart = Sketches.chart("""
                3 A bbbb|lb|bbbb
                2 B  bbb|pc|bbb
                1 A   bb|bb|bb
                """);
        Emphasis emphasis = new Emphasis(List.of(Emphasis.Flag.at(1, Severity.ERROR, new Place(3, Section.REPEAT, 1))));
        Drawing legend = Legend.of(chart, EnglishStyle.PRINT, emphasis);
        Area sheet = new Area(0, 0, legend.widthMm(), legend.heightMm());
        assertThat(legend.marks())
                .allSatisfy(mark -> assertThat(sheet.holds(mark.bounds())).isTrue());
    }
}
