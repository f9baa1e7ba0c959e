package edgewright.draw.raster;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import edgewright.chart.Chart;
import edgewright.chart.Colour;
import edgewright.chart.GridCell;
import edgewright.chart.PerSide;
import edgewright.chart.Place;
import edgewright.chart.Section;
import edgewright.draw.EnglishStyle;
import edgewright.draw.grid.Rotation;
import edgewright.draw.marks.Drawing;
import edgewright.draw.marks.Emphasis;
import edgewright.draw.marks.Mark;
import edgewright.draw.marks.MarkKind;
import edgewright.draw.paint.Area;
import edgewright.draw.paint.Palette;
import edgewright.draw.paint.PenPath;
import edgewright.draw.paint.Shape;
import edgewright.draw.paint.Surface;
import edgewright.draw.picture.ChartPicture;
import edgewright.draw.picture.CornerPicture;
import edgewright.draw.picture.FabricFill;
import edgewright.draw.picture.PictureStyle;
import edgewright.testing.RandomCharts;
import edgewright.testing.Sketches;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.File;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class RasterPictureTest {
    private static final Chart POST = Sketches.chart("""
            3 A bbbb|lb|bbbb
            2 B  bbb|bb|bbb
            1 A   bb|bb|bb
            """);
    private static final double DPI = 96;
    private static final double PIXELS_PER_MM = DPI / 25.4;

    private static Colour at(BufferedImage image, double xMm, double yMm) {
        return new Colour(image.getRGB((int) (xMm * PIXELS_PER_MM), (int) (yMm * PIXELS_PER_MM)) & 0xffffff);
    }

    @ParameterizedTest
    @EnumSource
    void the_covered_cell_shows_the_yarn_of_the_round_above_and_its_neighbours_their_own(Rotation rotation) {
        PictureStyle style = EnglishStyle.FABRIC.withLook(FabricFill.FLAT).withRotation(rotation);
        CornerPicture picture = CornerPicture.of(POST, style, Emphasis.NONE);
        BufferedImage image = RasterPicture.of(picture.drawing(), DPI);
        Colour peat = POST.yarns().get(0).colour();
        Colour chalk = POST.yarns().get(1).colour();
        for (GridCell covered : picture.layout().cellsOf(new Place(2, Section.REPEAT, 1))) {
            Area cell = picture.layout().areaOf(covered);
            assertThat(at(image, cell.middleXMm(), cell.middleYMm())).isEqualTo(peat);
        }
        for (GridCell free : picture.layout().cellsOf(new Place(2, Section.REPEAT, 2))) {
            Area cell = picture.layout().areaOf(free);
            assertThat(at(image, cell.middleXMm(), cell.middleYMm())).isEqualTo(chalk);
        }
    }

    @Test
    void a_png_needs_no_folder_for_temporary_files(@TempDir Path folder) throws IOException {
        Path gone = Files.createDirectory(folder.resolve("gone"));
        File before = ImageIO.getCacheDirectory();
        ImageIO.setCacheDirectory(gone.toFile());
        Files.delete(gone);
        ByteArrayOutputStream png = new ByteArrayOutputStream();
        try {
            RasterPicture.writePng(drawing(), DPI, png);
        } finally {
            ImageIO.setCacheDirectory(before);
        }
        assertThat(ImageIO.read(new ByteArrayInputStream(png.toByteArray()))).isNotNull();
    }

    @Test
    void a_png_that_cannot_be_written_fails_with_the_reason_of_the_system() {
        OutputStream full = new OutputStream() {
            @Override
            public void write(int b) throws IOException {
                throw new IOException("No space left on device");
            }
        };
        assertThatThrownBy(() -> RasterPicture.writePng(drawing(), DPI, full))
                .isInstanceOf(IOException.class)
                .hasMessage("No space left on device");
    }

    private static Drawing drawing() {
        return CornerPicture.of(POST, EnglishStyle.FABRIC, Emphasis.NONE).drawing();
    }

    @Test
    void every_pixel_of_flat_fabric_is_of_the_yarn_that_shows_there_without_seams_at_any_resolution() {
        Chart chart = new RandomCharts(5).small();
        for (double dpi : new double[] {37, 96, 150}) {
            CornerPicture picture =
                    CornerPicture.of(chart, EnglishStyle.FABRIC.withLook(FabricFill.FLAT), Emphasis.NONE);
            BufferedImage image = RasterPicture.of(picture.drawing(), dpi);
            Set<Integer> allowed = new HashSet<>(Set.of(
                    picture.drawing().marks().isEmpty()
                            ? 0
                            : Palette.LIGHT.paper().rgb(),
                    Palette.LIGHT.base().rgb()));
            chart.yarns().forEach(yarn -> allowed.add(yarn.colour().rgb()));
            Set<Integer> seen = new HashSet<>();
            for (int rgb : image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth())) {
                seen.add(rgb & 0xffffff);
            }
            assertThat(allowed).containsAll(seen);
        }
    }

    @Test
    void lines_between_cells_are_one_colour_and_at_least_a_pixel_wide() {
        CornerPicture picture = CornerPicture.of(POST, EnglishStyle.SCREEN.withMarks(false), Emphasis.NONE);
        BufferedImage image = RasterPicture.of(picture.drawing(), DPI);
        GridCell cell =
                picture.layout().cellsOf(new Place(1, Section.REPEAT, 2)).get(0);
        Area area = picture.layout().areaOf(cell);
        // The edge towards the corner lies between two stitches of one repeat.
        Set<Colour> across = new HashSet<>();
        for (double x = area.middleXMm(); x < area.rightMm() + 2; x += 0.5 / PIXELS_PER_MM) {
            across.add(at(image, x, area.middleYMm()));
        }
        assertThat(across).contains(Palette.LIGHT.grid());
    }

    @Test
    void painting_only_a_damaged_part_gives_the_same_pixels_as_painting_all() {
        CornerPicture picture = CornerPicture.of(POST, EnglishStyle.PRINT, Emphasis.NONE);
        BufferedImage whole = RasterPicture.of(picture.drawing(), DPI);
        BufferedImage patched = new BufferedImage(whole.getWidth(), whole.getHeight(), BufferedImage.TYPE_INT_RGB);
        for (int x = 0; x < whole.getWidth(); x += 53) {
            for (int y = 0; y < whole.getHeight(); y += 41) {
                Graphics2D graphics = patched.createGraphics();
                graphics.clipRect(x, y, 53, 41);
                graphics.scale(PIXELS_PER_MM, PIXELS_PER_MM);
                Surface surface = new RasterSurface(graphics);
                double pixel = 1 / PIXELS_PER_MM;
                Area damaged = new Area(x * pixel, y * pixel, 53 * pixel, 41 * pixel).grown(pixel);
                picture.marksIn(damaged).forEach(mark -> mark.drawOn(surface));
                graphics.dispose();
            }
        }
        assertThat(pixels(patched)).isEqualTo(pixels(whole));
    }

    private static int[] pixels(BufferedImage image) {
        return image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
    }

    @Test
    void a_png_reads_back_as_the_picture_it_was() throws Exception {
        Drawing drawing = ChartPicture.wholeBorder(POST, PerSide.all(1), EnglishStyle.FABRIC);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        RasterPicture.writePng(drawing, DPI, bytes);
        BufferedImage read = ImageIO.read(new ByteArrayInputStream(bytes.toByteArray()));
        assertThat(pixels(read)).isEqualTo(pixels(RasterPicture.of(drawing, DPI)));
        assertThat(read.getWidth()).isEqualTo(Math.round(drawing.widthMm() * PIXELS_PER_MM));
    }

    @Test
    void text_is_set_in_the_bundled_face_where_its_bounds_say() {
        for (int turns = 0; turns < 4; turns++) {
            for (Shape.Anchor anchor : Shape.Anchor.values()) {
                Shape.Text text =
                        new Shape.Text("HÅg", 30, 30, 10, Shape.Weight.BOLD, anchor, turns, Colour.parse("#000000"));
                Drawing drawing = new Drawing(
                        60,
                        60,
                        "",
                        "",
                        List.of(
                                Mark.beside(
                                        MarkKind.PAPER,
                                        List.of(new Shape.Fill(
                                                PenPath.rectangle(new Area(0, 0, 60, 60)), Colour.parse("#ffffff")))),
                                Mark.beside(MarkKind.CAPTION, List.of(text))));
                BufferedImage image = RasterPicture.of(drawing, DPI);
                Area ink = ink(image);
                assertThat(text.bounds().grown(0.5).holds(ink))
                        .as("ink %s, bounds %s", ink, text.bounds())
                        .isTrue();
                assertThat(ink.grown(1.6).holds(text.bounds()))
                        .as("ink %s, bounds %s", ink, text.bounds())
                        .isTrue();
            }
        }
    }

    /** The area of all pixels that are not white. */
    private static Area ink(BufferedImage image) {
        Area ink = null;
        for (int x = 0; x < image.getWidth(); x++) {
            for (int y = 0; y < image.getHeight(); y++) {
                if ((image.getRGB(x, y) & 0xffffff) != 0xffffff) {
                    Area pixel = new Area(x / PIXELS_PER_MM, y / PIXELS_PER_MM, 1 / PIXELS_PER_MM, 1 / PIXELS_PER_MM);
                    ink = ink == null ? pixel : ink.with(pixel);
                }
            }
        }
        return ink;
    }
}
