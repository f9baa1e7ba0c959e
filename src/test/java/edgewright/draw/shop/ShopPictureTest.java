package edgewright.draw.shop;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.Chart;
import edgewright.chart.Colour;
import edgewright.chart.PerSide;
import edgewright.draw.EnglishStyle;
import edgewright.draw.marks.Drawing;
import edgewright.draw.marks.Mark;
import edgewright.draw.marks.MarkKind;
import edgewright.draw.paint.Area;
import edgewright.draw.paint.Shape;
import edgewright.draw.picture.ChartPicture;
import edgewright.testing.Sketches;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class ShopPictureTest {
    private static final Chart REEDS =
            Sketches.chart("""
                    4 B bbbbb|bbbblb|bbbbbb
                    3 A  bllb|llbbbb|llblb
                    2 B   bbb|bbbbbb|bbbb
                    1 A    bb|bbbbbb|bbb
                    """).withTitle("Reed Bank").withDesigner("Saltmarsh Studio");

    private static Drawing of(Chart chart, ShopSize size, boolean titled) {
        return ShopPicture.of(chart, ShopPicture.repeatsFor(chart, size), size, titled, EnglishStyle.FABRIC);
    }

    private static Area areaOf(Drawing drawing, MarkKind kind) {
        return drawing.marks().stream()
                .filter(mark -> mark.kind() == kind)
                .map(Mark::bounds)
                .reduce(Area::with)
                .orElseThrow();
    }

    private static List<String> texts(Drawing drawing) {
        List<String> texts = new ArrayList<>();
        for (Mark mark : drawing.marks()) {
            for (Shape shape : mark.shapes()) {
                if (shape instanceof Shape.Text text) {
                    texts.add(text.text());
                }
            }
        }
        return texts;
    }

    @ParameterizedTest
    @EnumSource
    void the_border_fills_the_sheet_but_for_a_margin_and_lies_in_its_middle(ShopSize size) {
        Drawing drawing = of(REEDS, size, true);
        assertThat(drawing.widthMm() * ShopSize.DPI / 25.4).isBetween(size.widthPx() - 1e-6, size.widthPx() + 1e-6);
        assertThat(drawing.heightMm() * ShopSize.DPI / 25.4).isBetween(size.heightPx() - 1e-6, size.heightPx() + 1e-6);
        Area border = areaOf(drawing, MarkKind.FABRIC_STITCH);
        double shorter = Math.min(drawing.widthMm(), drawing.heightMm());
        List<Double> margins = List.of(
                border.xMm(),
                drawing.widthMm() - border.rightMm(),
                border.yMm(),
                drawing.heightMm() - border.bottomMm());
        // Stitches are as uneven as a hand leaves them, so the edge lies now a little farther out, now farther in.
        assertThat(margins).allSatisfy(margin -> assertThat(margin).isGreaterThan(0.045 * shorter));
        assertThat(margins.stream().min(Double::compare).orElseThrow()).isLessThan(0.1 * shorter);
        assertThat(margins.get(0)).isBetween(margins.get(1) - 0.8, margins.get(1) + 0.8);
        assertThat(margins.get(2)).isBetween(margins.get(3) - 0.8, margins.get(3) + 0.8);
    }

    @ParameterizedTest
    @EnumSource
    void stitches_are_whole_pixels_wide(ShopSize size) {
        Drawing drawing = of(REEDS, size, false);
        Area piece = areaOf(drawing, MarkKind.FABRIC_PIECE);
        int stitches =
                REEDS.border().stitches(0, ShopPicture.repeatsFor(REEDS, size)).top();
        double pixels = piece.widthMm() / ShopSize.mm(1) / stitches;
        assertThat(pixels).isBetween(Math.rint(pixels) - 1e-6, Math.rint(pixels) + 1e-6);
    }

    @Test
    void the_piece_is_plain_and_softer_than_any_yarn_and_the_stitches_are_those_of_the_whole_border() {
        Drawing drawing = of(REEDS, ShopSize.SQUARE, true);
        Mark piece = drawing.marks().stream()
                .filter(mark -> mark.kind() == MarkKind.FABRIC_PIECE)
                .findFirst()
                .orElseThrow();
        Colour colour = ((Shape.Fill) piece.shapes().get(0)).colour();
        assertThat(piece.shapes()).hasSize(1);
        // Half of the two yarns of the sketch and white, the more of it the softer.
        assertThat(colour.luminance()).isBetween(0.6, 0.9);
        assertThat(stitches(drawing))
                .isEqualTo(stitches(ChartPicture.wholeBorder(
                        REEDS, ShopPicture.repeatsFor(REEDS, ShopSize.SQUARE), EnglishStyle.FABRIC)));
    }

    private static List<String> stitches(Drawing drawing) {
        return drawing.marks().stream()
                .filter(mark -> mark.cell().isPresent())
                .map(mark -> mark.kind() + " " + mark.cell() + mark.place() + mark.yarn())
                .toList();
    }

    @Test
    void title_and_designer_stand_on_the_piece_or_nothing_does() {
        Drawing titled = of(REEDS, ShopSize.WIDE, true);
        assertThat(texts(titled)).containsExactly("Reed Bank", "Saltmarsh Studio");
        assertThat(areaOf(titled, MarkKind.FABRIC_PIECE).holds(areaOf(titled, MarkKind.CAPTION)))
                .isTrue();
        assertThat(texts(of(REEDS, ShopSize.WIDE, false))).isEmpty();
        assertThat(texts(of(REEDS.withTitle(" ").withDesigner(""), ShopSize.WIDE, true)))
                .isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Heron",
                "Saltings beyond the sluice gate at low water",
                "Wadlopershorizonverruimingsgezelschapsdagen",
                "A very long title indeed that goes on and on about reeds and herons, and never comes to an end at all "
                        + "while the tide comes in and goes out again"
            })
    void a_title_of_any_length_stays_on_the_piece(String title) {
        for (ShopSize size : ShopSize.values()) {
            Drawing drawing = of(REEDS.withTitle(title), size, true);
            assertThat(areaOf(drawing, MarkKind.FABRIC_PIECE).holds(areaOf(drawing, MarkKind.CAPTION)))
                    .as(size.name())
                    .isTrue();
        }
    }

    @Test
    void a_size_that_was_asked_for_is_the_size_that_is_shown() {
        PerSide<Integer> repeats = PerSide.pairs(7, 3);
        Drawing drawing = ShopPicture.of(REEDS, repeats, ShopSize.PORTRAIT, true, EnglishStyle.FABRIC);
        Area piece = areaOf(drawing, MarkKind.FABRIC_PIECE);
        PerSide<Integer> stitches = REEDS.border().stitches(0, repeats);
        double shape = (double) stitches.top() / stitches.left();
        assertThat(piece.widthMm() / piece.heightMm()).isBetween(shape - 1e-6, shape + 1e-6);
    }

    @Test
    void help_and_readme_name_the_pixels_of_every_size() throws Exception {
        String help = Files.readString(
                Path.of("src/main/resources/edgewright/language/en/usage.properties"), StandardCharsets.UTF_8);
        String readme = Files.readString(Path.of("README.md"), StandardCharsets.UTF_8);
        for (ShopSize size : ShopSize.values()) {
            String pixels = String.format(Locale.ENGLISH, "(%,d by %,d", size.widthPx(), size.heightPx());
            assertThat(help).containsPattern(size.name().toLowerCase(Locale.ROOT) + " \\Q" + pixels + "\\E");
            assertThat(readme).containsPattern(size.name().toLowerCase(Locale.ROOT) + "` \\Q" + pixels + "\\E");
        }
    }
}
