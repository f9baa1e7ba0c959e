package edgewright.desk.canvas;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.Chart;
import edgewright.chart.Edits;
import edgewright.chart.GridCell;
import edgewright.chart.Place;
import edgewright.chart.Section;
import edgewright.chart.SideShape;
import edgewright.chart.Stitch;
import edgewright.desk.Desk;
import edgewright.desk.parts.Look;
import edgewright.desk.picture.CanvasPicture;
import edgewright.desk.picture.CanvasScale;
import edgewright.desk.picture.CanvasTiles;
import edgewright.desk.picture.DamagedParts;
import edgewright.desk.picture.MarkedOutline;
import edgewright.desk.work.ChartView;
import edgewright.desk.work.Theme;
import edgewright.desk.work.Workbench;
import edgewright.testing.BlankBench;
import edgewright.texts.English;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.geom.Area;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** What is kept of the painted chart shows the chart as it is, and what is painted again is little. */
class CanvasTilesTest {
    private final Workbench bench = BlankBench.of(new SideShape(2, 5, 1));
    private final ChartView view = new ChartView(English.LANGUAGE);

    @BeforeAll
    static void light() {
        Look.setUp(Theme.LIGHT);
    }

    @Test
    void whatIsLaidDownFromTilesIsWhatAWholePaintingShows() {
        ChartCanvas canvas = new ChartCanvas(bench, view);
        Random random = new Random(3);
        for (int i = 0; i < 60; i++) {
            change(canvas, random, i);
            canvas.setSize(canvas.getPreferredSize());
            BufferedImage kept = image(canvas);
            Graphics2D g = graphics(kept);
            canvas.paint(g);
            g.dispose();
            BufferedImage anew = image(canvas);
            Graphics2D fresh = graphics(anew);
            canvas.print(fresh);
            fresh.dispose();
            assertThat(far(kept, anew)).as("after change %d", i).isZero();
        }
    }

    @Test
    void onlySoManyTilesArePaintedAtOnceAndTheNearestFirst() {
        CanvasTiles tiles = new CanvasTiles();
        CanvasPicture picture = CanvasPicture.of(bench, view);
        CanvasScale scale = new CanvasScale(new Point(0, 0), 4);
        Rectangle all = new Rectangle(0, 0, 384, 384);
        Rectangle last = new Rectangle(256, 256, 128, 128);
        BufferedImage image = new BufferedImage(384, 384, BufferedImage.TYPE_INT_RGB);
        List<Integer> owed = new ArrayList<>();
        Graphics2D g = image.createGraphics();
        for (int i = 0; i < 10; i++) {
            owed.add(tiles.lay(g, picture, scale, all, new Point(383, 383), 0).size());
            assertThat(tiles.areReady(List.of(last), scale)).isTrue();
        }
        g.dispose();

        assertThat(owed).containsExactly(8, 7, 6, 5, 4, 3, 2, 1, 0, 0);
    }

    @Test
    void aStepOfTheCursorOnARepeatOfOneIsPaintedInAFewStrips() {
        Workbench narrow = new Workbench(
                Chart.blank(
                        "Slack Water",
                        new SideShape(2, 1, 2),
                        8,
                        Desk.blank(English.LANGUAGE).yarns()),
                Optional.empty(),
                English.LANGUAGE);
        ChartCanvas canvas = new ChartCanvas(narrow, view);
        canvas.setSize(canvas.getPreferredSize());
        List<Rectangle> cells = canvas.cells().cellsOf(new Place(5, Section.REPEAT, 1)).stream()
                .map(canvas::boundsOf)
                .map(CursorFrames::around)
                .toList();
        List<Rectangle> merged = DamagedParts.merged(cells);

        assertThat(cells).hasSizeGreaterThan(20);
        assertThat(merged).hasSize(2);
        assertThat(cells).allMatch(cell -> merged.stream().anyMatch(part -> part.contains(cell)));
    }

    @Test
    void partsFarFromEachOtherStayApart() {
        List<Rectangle> parts =
                List.of(new Rectangle(0, 0, 10, 10), new Rectangle(200, 0, 10, 10), new Rectangle(8, 0, 10, 10));
        assertThat(DamagedParts.merged(parts))
                .containsExactlyInAnyOrder(new Rectangle(0, 0, 18, 10), new Rectangle(200, 0, 10, 10));
    }

    @Test
    void theOutlineOfWhatIsMarkedHoldsExactlyItsStrips() {
        List<List<Rectangle>> piles = List.of(
                List.of(new Rectangle(5, 5, 30, 10)),
                List.of(new Rectangle(20, 30, 10, 10), new Rectangle(10, 20, 25, 10), new Rectangle(0, 10, 40, 10)),
                List.of(new Rectangle(0, 10, 40, 10), new Rectangle(10, 20, 25, 10)),
                List.of(new Rectangle(30, 20, 10, 10), new Rectangle(20, 10, 10, 25), new Rectangle(10, 0, 10, 40)),
                List.of(new Rectangle(10, 0, 10, 40), new Rectangle(20, 10, 10, 25)),
                List.of(new Rectangle(0, 20, 40, 11), new Rectangle(0, 10, 40, 11), new Rectangle(0, 0, 40, 11)),
                List.of(new Rectangle(0, 0, 11, 40), new Rectangle(10, 0, 11, 40)),
                List.of(new Rectangle(0, 0, 9, 9), new Rectangle(50, 50, 9, 9)),
                List.of());
        for (List<Rectangle> pile : piles) {
            Area expected = new Area();
            pile.forEach(strip -> expected.add(new Area(strip)));
            assertThat(new Area(MarkedOutline.of(pile)).equals(expected))
                    .as("%s", pile)
                    .isTrue();
        }
    }

    private void change(ChartCanvas canvas, Random random, int number) {
        if (number % 12 == 11) {
            view.zoomTo(10 + random.nextInt(14));
        } else if (number % 20 == 18) {
            view.turnOn();
        } else if (number % 20 == 8) {
            bench.edit("one more", chart -> Edits.insertRounds(chart, 2, List.of("A")));
        } else {
            int round = 1 + random.nextInt(6);
            Section section = Section.values()[random.nextInt(3)];
            int length = bench.chart().round(round).section(section).length();
            Place place = new Place(round, section, 1 + random.nextInt(length));
            bench.work(List.of(place), Stitch.values()[random.nextInt(4)]);
            List<GridCell> cells = canvas.cells().cellsOf(place);
            canvas.standAndShow(cells.get(random.nextInt(cells.size())));
        }
    }

    private static BufferedImage image(ChartCanvas canvas) {
        return new BufferedImage(canvas.getWidth(), canvas.getHeight(), BufferedImage.TYPE_INT_RGB);
    }

    private static Graphics2D graphics(BufferedImage image) {
        Graphics2D g = image.createGraphics();
        g.setClip(0, 0, image.getWidth(), image.getHeight());
        return g;
    }

    /** Edges may be smoothed a little otherwise where only a part is painted. */
    private static int far(BufferedImage one, BufferedImage other) {
        int far = 0;
        for (int y = 0; y < one.getHeight(); y++) {
            for (int x = 0; x < one.getWidth(); x++) {
                int apart = 0;
                for (int shift = 0; shift <= 16; shift += 8) {
                    int a = one.getRGB(x, y) >> shift & 0xff;
                    int b = other.getRGB(x, y) >> shift & 0xff;
                    apart = Math.max(apart, Math.abs(a - b));
                }
                far += apart > 40 ? 1 : 0;
            }
        }
        return far;
    }
}
