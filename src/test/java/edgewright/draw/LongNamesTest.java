package edgewright.draw;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.Chart;
import edgewright.chart.HookHand;
import edgewright.chart.PerSide;
import edgewright.check.Checker;
import edgewright.check.Severity;
import edgewright.draw.grid.Rotation;
import edgewright.draw.marks.Drawing;
import edgewright.draw.marks.Emphasis;
import edgewright.draw.marks.Layer;
import edgewright.draw.marks.Mark;
import edgewright.draw.marks.MarkKind;
import edgewright.draw.paint.Area;
import edgewright.draw.paint.Palette;
import edgewright.draw.paint.ShortenedText;
import edgewright.draw.picture.ChartPicture;
import edgewright.draw.picture.DraftFindings;
import edgewright.draw.picture.Legend;
import edgewright.draw.picture.PictureStyle;
import edgewright.draw.raster.RasterPicture;
import edgewright.testing.LongNames;
import edgewright.testing.RandomCharts;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import javax.imageio.ImageIO;
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

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 5, 8})
    void ids_of_yarns_do_not_make_chips_and_labels_overlap(int letters) {
        for (int seed = 0; seed < 6; seed++) {
            Chart plain = RandomCharts.workable(new RandomCharts(seed).small());
            Chart chart = LongNames.withWideIds(LongNames.in(plain, 100, true), letters);
            Emphasis emphasis = new Emphasis(List.of(Emphasis.Flag.in(1, Severity.WARNING, 1)));
            for (Rotation rotation : Rotation.values()) {
                for (HookHand hand : HookHand.values()) {
                    PictureStyle style =
                            EnglishStyle.PRINT.withRotation(rotation).withHand(hand);
                    Drawing drawing = ChartPicture.corner(chart, style, emphasis);
                    assertThat(overlaps(drawing))
                            .as("seed %d, %s, %s", seed, rotation, hand)
                            .isEmpty();
                }
            }
        }
    }

    /** Which of the marks around the cells lie on one another; letters are as high as they may be, so a little is let pass. */
    private static List<String> overlaps(Drawing drawing) {
        List<Mark> marks = drawing.marks().stream()
                .filter(mark -> mark.kind().layer() == Layer.LABELS || mark.kind() == MarkKind.FLAG)
                .filter(mark -> mark.cell().isEmpty() && mark.kind() != MarkKind.DIRECTION)
                .toList();
        List<String> overlaps = new ArrayList<>();
        for (int i = 0; i < marks.size(); i++) {
            for (int j = i + 1; j < marks.size(); j++) {
                if (marks.get(i)
                        .bounds()
                        .grown(-0.35)
                        .touches(marks.get(j).bounds().grown(-0.35))) {
                    overlaps.add(marks.get(i).kind() + " on " + marks.get(j).kind());
                }
            }
        }
        return overlaps;
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 60, 300})
    void a_whole_border_is_as_large_as_its_cells_whatever_its_title(int letters) {
        Chart chart = LongNames.chart(letters, true);
        PerSide<Integer> repeats = PerSide.pairs(2, 1);
        for (HookHand hand : HookHand.values()) {
            PictureStyle style = EnglishStyle.PRINT.withHand(hand);
            Drawing drawing = ChartPicture.wholeBorder(chart, repeats, style);
            Drawing plain = ChartPicture.wholeBorder(chart.withTitle("Reed"), repeats, style);
            Area sheet = new Area(0, 0, drawing.widthMm(), drawing.heightMm());
            assertThat(sheet).isEqualTo(ChartPicture.sheetOfBorder(chart, repeats, style));
            assertThat(drawing.marks())
                    .isEqualTo(plain.marks())
                    .allSatisfy(mark ->
                            assertThat(sheet.grown(0.001).holds(mark.bounds())).isTrue());
            Drawing draft = DraftFindings.under(drawing, Checker.check(chart), style);
            Area withFindings = new Area(0, 0, drawing.widthMm(), draft.heightMm());
            assertThat(draft.marks())
                    .allSatisfy(mark -> assertThat(withFindings.grown(0.001).holds(mark.bounds()))
                            .isTrue());
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 60, 300})
    void a_picture_in_pixels_is_as_large_as_its_drawing_whatever_its_title(int letters) throws IOException {
        Chart chart = LongNames.chart(letters, false);
        for (Drawing drawing : List.of(
                ChartPicture.corner(chart, EnglishStyle.PRINT, Emphasis.NONE),
                ChartPicture.wholeBorder(chart, PerSide.all(1), EnglishStyle.PRINT))) {
            ByteArrayOutputStream png = new ByteArrayOutputStream();
            RasterPicture.writePng(drawing, 50.8, png);
            BufferedImage image = ImageIO.read(new ByteArrayInputStream(png.toByteArray()));
            assertThat(List.of(image.getWidth(), image.getHeight()))
                    .isEqualTo(
                            List.of((int) Math.round(2 * drawing.widthMm()), (int) Math.round(2 * drawing.heightMm())));
            assertThat(edgePixels(image)).containsOnly(Palette.LIGHT.paper().rgb());
        }
    }

    /** The colours at the edges of a picture: a text that ran over one would be seen there. */
    private static Set<Integer> edgePixels(BufferedImage image) {
        Set<Integer> colours = new HashSet<>();
        for (int x = 0; x < image.getWidth(); x++) {
            colours.add(image.getRGB(x, 0) & 0xffffff);
            colours.add(image.getRGB(x, image.getHeight() - 1) & 0xffffff);
        }
        for (int y = 0; y < image.getHeight(); y++) {
            colours.add(image.getRGB(0, y) & 0xffffff);
            colours.add(image.getRGB(image.getWidth() - 1, y) & 0xffffff);
        }
        return colours;
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
        assertThat(ShortenedText.toFit("Saltings", text -> text.length() <= 5)).isEqualTo("Salt\u2026");
        assertThat(ShortenedText.toFit("Saltings", text -> text.length() <= 8)).isEqualTo("Saltings");
        assertThat(ShortenedText.toFit("Salt ings", text -> text.length() <= 6)).isEqualTo("Salt\u2026");
        assertThat(ShortenedText.toFit("abce\u0301fgh", text -> text.length() <= 5))
                .isEqualTo("abc\u2026");
        assertThat(ShortenedText.toFit("Saltings", text -> false)).isEqualTo("\u2026");
    }
}
