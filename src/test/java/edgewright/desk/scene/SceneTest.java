package edgewright.desk.scene;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import edgewright.chart.Chart;
import edgewright.chart.Colour;
import edgewright.chart.Edits;
import edgewright.chart.HookHand;
import edgewright.chart.PerSide;
import edgewright.chart.Place;
import edgewright.chart.Section;
import edgewright.chart.SideShape;
import edgewright.chart.Stitch;
import edgewright.desk.Desk;
import edgewright.desk.scene.ScenePainter.Painted;
import edgewright.desk.work.Seeing;
import edgewright.draw.paint.Area;
import edgewright.draw.paint.ColourVision;
import edgewright.draw.paint.Palette;
import edgewright.texts.English;
import java.awt.Point;
import java.awt.image.BufferedImage;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The border around its piece: what is painted of it, when, and which part is looked at. No window is needed. */
class SceneTest {
    private static final Chart CHART = Chart.blank(
            "Reed Bank", new SideShape(2, 5, 1), 8, Desk.blank(English.LANGUAGE).yarns());

    @Test
    void aChangedStitchIsPaintedAsIfAllWasPaintedAnew() {
        for (double px : new double[] {1.7, 6, 20}) {
            ScenePainter painter = new ScenePainter();
            Chart chart = CHART;
            painter.paint(order(chart, px), () -> false);
            for (Place place : List.of(
                    new Place(5, Section.REPEAT, 3),
                    new Place(6, Section.TO_CORNER, 7),
                    new Place(8, Section.FROM_CORNER, 4))) {
                chart = Edits.setStitches(chart, Map.of(place, Stitch.LONG));
                BufferedImage mended = painter.paint(order(chart, px), () -> false)
                        .orElseThrow()
                        .image();
                BufferedImage whole = new ScenePainter()
                        .paint(order(chart, px), () -> false)
                        .orElseThrow()
                        .image();
                assertThat(unlike(mended, whole))
                        .as("%s at %s pixels", place, px)
                        .isZero();
            }
        }
    }

    @Test
    void theBorderLiesAroundAPlainPieceInTheColoursAsTheyAreSeen() {
        SceneOrder order = order(CHART, 8);
        Painted full = new ScenePainter().paint(order, () -> false).orElseThrow();
        int middle = full.image().getRGB(150, 130) & 0xffffff;
        assertThat(middle).isEqualTo(order.style().palette().base().rgb());

        SceneOrder grey = new SceneOrder(
                CHART,
                order.repeats(),
                new Seeing(Seeing.Drawn.SIDE, HookHand.RIGHT, ColourVision.GREY),
                order.table(),
                order.palette(),
                English.LANGUAGE,
                order.window());
        Painted seen = new ScenePainter().paint(grey, () -> false).orElseThrow();
        assertThat(unlike(seen.image(), full.image())).isZero();
        for (int y = 0; y < 400; y += 3) {
            int rgb = seen.seen().getRGB(y, y) & 0xffffff;
            assertThat(rgb).isEqualTo(ColourVision.GREY.seen(full.image().getRGB(y, y)));
        }
    }

    @Test
    void aBorderOfTooManyStitchesIsKnownBeforeItIsPainted() {
        assertThat(order(CHART, 8).isTooLarge()).isFalse();
        SceneOrder huge = new SceneOrder(
                CHART,
                PerSide.pairs(9_999, 6),
                Seeing.USUAL,
                new Colour(0),
                Palette.LIGHT,
                English.LANGUAGE,
                order(CHART, 8).window());
        assertThat(huge.isTooLarge()).isTrue();
    }

    @Test
    void howeverFastSomebodyDrawsOnlyTheFirstAndTheLatestChartArePainted() {
        Deque<Runnable> beside = new ArrayDeque<>();
        Deque<Runnable> events = new ArrayDeque<>();
        List<Chart> shown = new ArrayList<>();
        SceneWork work = new SceneWork(
                beside::add, events::add, painted -> shown.add(painted.order().chart()));
        List<Chart> charts = new ArrayList<>(List.of(CHART));
        for (int place = 1; place <= 5; place++) {
            charts.add(Edits.setStitches(
                    charts.get(place - 1), Map.of(new Place(4, Section.REPEAT, place), Stitch.PLAIN)));
        }
        charts.forEach(chart -> work.order(order(chart, 2)));
        assertThat(beside).hasSize(1);
        while (!beside.isEmpty() || !events.isEmpty()) {
            (beside.isEmpty() ? events : beside).remove().run();
        }

        assertThat(shown).containsExactly(charts.get(0), charts.get(5));
    }

    @Test
    void anotherPartOfTheBorderIsNotKeptWaitingByTheOneBefore() {
        Deque<Runnable> beside = new ArrayDeque<>();
        Deque<Runnable> events = new ArrayDeque<>();
        List<Double> shown = new ArrayList<>();
        SceneWork work = new SceneWork(
                beside::add,
                events::add,
                painted -> shown.add(painted.order().window().pxPerMm()));
        work.order(order(CHART, 5));
        work.order(order(CHART, 10));
        while (!beside.isEmpty() || !events.isEmpty()) {
            (beside.isEmpty() ? events : beside).remove().run();
        }

        assertThat(shown).containsExactly(2.0);
    }

    @Test
    void theBorderIsSeenWholeUntilSomebodyZoomsAndThenWhatLiesUnderTheMouseStays() {
        SceneSight sight = new SceneSight();
        Area sheet = new Area(0, 0, 500, 400);
        sight.lay(sheet, 1_000, 1_000);
        assertThat(sight.window()).isEqualTo(new SceneOrder.Window(0, -50, 2, 1_000, 1_000));
        sight.lay(sheet, 600, 600);
        assertThat(sight.isFitted()).isTrue();
        assertThat(sight.window().pxPerMm()).isEqualTo(1.2);

        Point at = new Point(150, 200);
        double xMm = sight.window().leftMm() + at.x / sight.window().pxPerMm();
        sight.zoom(at, 2);
        assertThat(sight.window().leftMm() + at.x / sight.window().pxPerMm()).isCloseTo(xMm, within(0.5));
        assertThat(sight.window().pxPerMm()).isEqualTo(2.4);
        sight.lay(sheet, 900, 900);
        assertThat(sight.isFitted()).isFalse();
        assertThat(sight.window().pxPerMm()).isEqualTo(2.4);
        sight.move(100_000, 100_000);
        assertThat(sheet.holds(
                        sight.window().leftMm() + 450 / 2.4, sight.window().topMm() + 450 / 2.4))
                .as("it cannot be lost out of sight")
                .isTrue();
    }

    private static SceneOrder order(Chart chart, double px) {
        return new SceneOrder(
                chart,
                PerSide.pairs(3, 2),
                Seeing.USUAL,
                new Colour(0xe5ded3),
                Palette.LIGHT,
                English.LANGUAGE,
                new SceneOrder.Window(0, 0, px / SceneOrder.CELL_MM, 400, 400));
    }

    private static int unlike(BufferedImage one, BufferedImage other) {
        int unlike = 0;
        for (int y = 0; y < one.getHeight(); y++) {
            for (int x = 0; x < one.getWidth(); x++) {
                unlike += one.getRGB(x, y) == other.getRGB(x, y) ? 0 : 1;
            }
        }
        return unlike;
    }
}
