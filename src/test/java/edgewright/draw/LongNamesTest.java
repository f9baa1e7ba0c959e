package edgewright.draw;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.Chart;
import edgewright.draw.marks.Drawing;
import edgewright.draw.marks.Emphasis;
import edgewright.draw.marks.Mark;
import edgewright.draw.paint.Area;
import edgewright.draw.paint.Shortened;
import edgewright.draw.picture.ChartPicture;
import edgewright.draw.picture.Legend;
import edgewright.draw.picture.Rotation;
import edgewright.testing.LongNames;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Names of any length in pictures. */
class LongNamesTest {

    @ParameterizedTest
    @ValueSource(ints = {1, 30, 60, 100, 200, 300})
    void no_text_reaches_out_of_a_picture_and_no_name_makes_it_wider_than_so_much(int letters) {
        for (Rotation rotation : Rotation.values()) {
            for (boolean blanks : new boolean[] {false, true}) {
                Chart chart = LongNames.chart(letters, blanks);
                Drawing drawing = ChartPicture.corner(chart, EnglishStyle.PRINT.withRotation(rotation), Emphasis.NONE);
                Area sheet = new Area(0, 0, drawing.widthMm(), drawing.heightMm());
                assertThat(drawing.marks())
                        .allSatisfy(mark -> assertThat(sheet.grown(0.001).holds(mark.bounds()))
                                .isTrue());
                // The arm and the labels beside it, then the legend: 17 cells of 5 mm.
                assertThat(drawing.widthMm()).isLessThan(5 * (17 + 26));
            }
        }
    }

    @Test
    void the_rows_of_a_legend_do_not_overlap() {
        for (int letters : new int[] {1, 60, 300}) {
            Drawing legend = Legend.of(LongNames.chart(letters, true), EnglishStyle.PRINT, Emphasis.NONE);
            List<Area> rows = legend.marks().stream().map(Mark::bounds).toList();
            for (int i = 1; i < rows.size(); i++) {
                assertThat(rows.get(i).yMm())
                        .isGreaterThanOrEqualTo(rows.get(i - 1).bottomMm() - 0.3);
            }
        }
    }

    @Test
    void a_text_that_does_not_fit_is_cut_behind_a_whole_letter_with_an_ellipsis() {
        assertThat(Shortened.toFit("Saltings", text -> text.length() <= 5)).isEqualTo("Salt\u2026");
        assertThat(Shortened.toFit("Saltings", text -> text.length() <= 8)).isEqualTo("Saltings");
        assertThat(Shortened.toFit("Salt ings", text -> text.length() <= 6)).isEqualTo("Salt\u2026");
        assertThat(Shortened.toFit("abce\u0301fgh", text -> text.length() <= 5)).isEqualTo("abc\u2026");
        assertThat(Shortened.toFit("Saltings", text -> false)).isEqualTo("\u2026");
    }
}
