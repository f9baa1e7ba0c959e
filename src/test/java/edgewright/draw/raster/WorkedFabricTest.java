package edgewright.draw.raster;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.BorderGrid;
import edgewright.chart.Chart;
import edgewright.chart.Colour;
import edgewright.chart.GridCell;
import edgewright.chart.GridContent;
import edgewright.chart.HookHand;
import edgewright.chart.PerSide;
import edgewright.chart.Place;
import edgewright.chart.Yarn;
import edgewright.draw.EnglishStyle;
import edgewright.draw.marks.Drawing;
import edgewright.draw.marks.Mark;
import edgewright.draw.paint.Palette;
import edgewright.draw.paint.Shape;
import edgewright.draw.paint.Surface;
import edgewright.draw.picture.ChartPicture;
import edgewright.draw.picture.FabricFill;
import edgewright.draw.picture.PictureStyle;
import edgewright.testing.RandomCharts;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Worked fabric in pixels: whatever the light does to the yarn, it must still show what the chart says. */
class WorkedFabricTest {
    private static final double MM_PER_INCH = 25.4;
    /** How far the middle of the chains lies from that of their cell, on either axis, in cells. */
    private static final double CHAINS_OUTWARDS = 0.1;

    private static final PerSide<Integer> REPEATS = PerSide.pairs(2, 1);

    /** Three yarns that are easy to tell apart, light, dark and in between. */
    private static final List<Colour> COLOURS =
            List.of(Colour.parse("#2b2a33"), Colour.parse("#f2ead8"), Colour.parse("#c9542f"));

    private static Chart chart(int seed) {
        Chart chart = RandomCharts.workable(new RandomCharts(seed).small());
        List<Yarn> yarns = chart.yarns();
        Chart coloured = chart;
        for (int i = 0; i < yarns.size(); i++) {
            Yarn yarn = yarns.get(i).withColour(COLOURS.get(i % COLOURS.size()));
            coloured = coloured.withYarns(coloured.yarns().stream()
                    .map(other -> other.id().equals(yarn.id()) ? yarn : other)
                    .toList());
        }
        return coloured;
    }

    private static double dpi(PictureStyle style, double pixels) {
        return pixels * MM_PER_INCH / style.cellMm();
    }

    private static PictureStyle fabric(double pixels) {
        return EnglishStyle.FABRIC.withLook(
                FabricFill.ofDots(EnglishStyle.FABRIC.cellMm(), dpi(EnglishStyle.FABRIC, pixels)));
    }

    @ParameterizedTest
    @ValueSource(doubles = {6, 9.3, 12, 24, 48})
    void the_middle_of_every_cell_shows_the_yarn_of_the_chart_on_all_sides_and_for_either_hand(double pixels) {
        for (int seed = 0; seed < 8; seed++) {
            Chart chart = chart(seed);
            BorderGrid grid = new BorderGrid(chart.border(), REPEATS);
            for (HookHand hand : HookHand.values()) {
                PictureStyle style = fabric(pixels).withHand(hand);
                Drawing drawing = ChartPicture.wholeBorder(chart, REPEATS, style);
                BufferedImage image = RasterPicture.of(drawing, dpi(style, pixels));
                int rounds = chart.rounds().size();
                for (int x = -rounds - 1; x <= grid.width() + rounds; x++) {
                    for (int y = -rounds - 1; y <= grid.height() + rounds; y++) {
                        int round = shownRound(chart, grid, new GridCell(x, y));
                        if (round > 0) {
                            int column = x + rounds + 2;
                            int columns = grid.width() + 2 * rounds + 4;
                            int drawn = hand == HookHand.LEFT ? columns - 1 - column : column;
                            // A corner is open towards the piece: its chains lie in the outer half of its cell, but for
                            // the last round, with paper beyond.
                            boolean corner = grid.contentOf(new GridCell(x, y)) instanceof GridContent.CornerChains;
                            double outwards = corner ? CHAINS_OUTWARDS * pixels / (round < rounds ? 1 : 2) : 0;
                            double right = (x < 0) == (hand == HookHand.RIGHT) ? -outwards : outwards;
                            double down = y < 0 ? -outwards : outwards;
                            Colour middle =
                                    middle(image, drawn * pixels + right, (y + rounds + 2) * pixels + down, pixels);
                            assertThat(nearest(chart, middle))
                                    .as("seed %d, %s, cell %d,%d, %s", seed, hand, x, y, middle)
                                    .isEqualTo(chart.yarnOf(round).colour());
                        }
                    }
                }
            }
        }
    }

    /** The round whose yarn the chart shows in a cell; 0 where it shows none. */
    private static int shownRound(Chart chart, BorderGrid grid, GridCell cell) {
        GridContent content = grid.contentOf(cell);
        if (content instanceof GridContent.SideStitch stitch) {
            Place place = grid.border().on(stitch.side()).placeOf(stitch.place(), REPEATS.get(stitch.side()));
            return place.round() == 0 ? 0 : chart.shownRound(place);
        }
        return content instanceof GridContent.CornerChains corner ? corner.round() : 0;
    }

    /** The mean of the middle of a cell, half as wide. */
    private static Colour middle(BufferedImage image, double left, double top, double pixels) {
        long red = 0;
        long green = 0;
        long blue = 0;
        int count = 0;
        for (int x = (int) (left + pixels / 4); x < left + pixels * 3 / 4; x++) {
            for (int y = (int) (top + pixels / 4); y < top + pixels * 3 / 4; y++) {
                int rgb = image.getRGB(x, y);
                red += rgb >> 16 & 0xff;
                green += rgb >> 8 & 0xff;
                blue += rgb & 0xff;
                count++;
            }
        }
        return new Colour((int) (red / count) << 16 | (int) (green / count) << 8 | (int) (blue / count));
    }

    private static Colour nearest(Chart chart, Colour seen) {
        Colour nearest = null;
        double least = Double.MAX_VALUE;
        for (Yarn yarn : chart.yarns()) {
            Colour colour = yarn.colour();
            double apart = Math.pow(colour.red() - seen.red(), 2)
                    + Math.pow(colour.green() - seen.green(), 2)
                    + Math.pow(colour.blue() - seen.blue(), 2);
            if (apart < least) {
                least = apart;
                nearest = colour;
            }
        }
        return nearest;
    }

    @Test
    void the_same_chart_gives_the_same_bytes() throws IOException {
        assertThat(png()).isEqualTo(png());
    }

    private static byte[] png() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        PictureStyle style = fabric(20);
        RasterPicture.writePng(ChartPicture.wholeBorder(chart(1), REPEATS, style), dpi(style, 20), out);
        return out.toByteArray();
    }

    @ParameterizedTest
    @ValueSource(doubles = {5.7, 9.3, 13.6, 29.53})
    void no_paper_shows_between_stitches_where_pixels_do_not_come_out_even(double pixels) {
        Colour paper = Colour.parse("#ff00ff");
        PictureStyle style = fabric(pixels).withPalette(withPaper(paper));
        Chart chart = chart(2);
        BufferedImage image = RasterPicture.of(ChartPicture.wholeBorder(chart, REPEATS, style), dpi(style, pixels));
        // Paper lies a cell wide around the border, and on its edge between the loops of the last round.
        int edge = (int) Math.ceil(2 * pixels);
        List<String> seams = new ArrayList<>();
        for (int x = edge; x < image.getWidth() - edge; x++) {
            for (int y = edge; y < image.getHeight() - edge; y++) {
                int rgb = image.getRGB(x, y);
                if ((rgb >> 16 & 0xff) - (rgb >> 8 & 0xff) > 190 && (rgb & 0xff) > 190) {
                    seams.add(x + "," + y + " of " + image.getWidth());
                }
            }
        }
        assertThat(seams).isEmpty();
    }

    private static Palette withPaper(Colour paper) {
        Palette light = Palette.LIGHT;
        return new Palette(
                paper,
                light.ink(),
                light.quietInk(),
                light.grid(),
                light.tenth(),
                light.base(),
                light.accent(),
                light.error(),
                light.warning());
    }

    @Test
    void a_stamp_that_is_copied_looks_as_if_its_shapes_were_drawn_one_by_one() {
        // With lines every stitch lies in its square, on whole pixels.
        PictureStyle style = fabric(20).withGrid(true);
        Drawing drawing = ChartPicture.wholeBorder(chart(3), REPEATS, style);
        double dpi = dpi(style, 20);
        BufferedImage copied = RasterPicture.of(drawing, dpi);
        BufferedImage drawn = new BufferedImage(copied.getWidth(), copied.getHeight(), BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = drawn.createGraphics();
        graphics.scale(dpi / MM_PER_INCH, dpi / MM_PER_INCH);
        Surface shapes = oneByOne(new RasterSurface(graphics));
        for (Mark mark : drawing.marks()) {
            mark.drawOn(shapes);
        }
        graphics.dispose();
        long apart = 0;
        for (int x = 0; x < drawn.getWidth(); x++) {
            for (int y = 0; y < drawn.getHeight(); y++) {
                int one = copied.getRGB(x, y);
                int other = drawn.getRGB(x, y);
                apart += Math.abs((one >> 8 & 0xff) - (other >> 8 & 0xff));
            }
        }
        assertThat((double) apart / (drawn.getWidth() * drawn.getHeight())).isLessThan(0.8);
    }

    /** A surface that does not know how to keep a stamp. */
    private static Surface oneByOne(Surface surface) {
        return new Surface() {
            @Override
            public void fill(Shape.Fill fill) {
                surface.fill(fill);
            }

            @Override
            public void line(Shape.Line line) {
                surface.line(line);
            }

            @Override
            public void text(Shape.Text text) {
                surface.text(text);
            }
        };
    }
}
