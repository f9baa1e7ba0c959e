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
import edgewright.desk.work.ChartView;
import edgewright.desk.work.Seeing;
import edgewright.desk.work.Theme;
import edgewright.desk.work.Workbench;
import edgewright.draw.paint.ColourVision;
import edgewright.testing.BlankBench;
import edgewright.texts.English;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.event.InputEvent;
import java.awt.event.MouseEvent;
import java.awt.event.MouseWheelEvent;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JScrollPane;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What is seen on the chart beside the chart itself: cursor, frame under the mouse, rings; and how large it all is. */
class CanvasLookTest {
    private static int error() {
        return Look.palette().error().rgb();
    }

    private final Workbench bench = BlankBench.of(new SideShape(2, 5, 1));
    private final ChartView view = new ChartView(English.LANGUAGE);
    private ChartCanvas canvas;

    @BeforeAll
    static void light() {
        Look.setUp(Theme.LIGHT);
    }

    @BeforeEach
    void layOnTheTable() {
        canvas = new ChartCanvas(bench, view);
        canvas.setSize(canvas.getPreferredSize());
    }

    @Test
    void aFineWheelZoomsAsFinelyAsItIsTurnedAndAWholeNotchIsSeen() {
        new JScrollPane(canvas).getViewport().setSize(400, 300);
        view.zoomTo(18);
        List<Integer> sizes = new ArrayList<>();
        for (double turned : new double[] {-0.25, -0.25, -0.25, -0.25, 0, 0.5, 0.5, 1, 15, -1, -0.5, -0.5, -40}) {
            wheel(turned);
            sizes.add(view.cellPx());
        }

        assertThat(sizes).containsExactly(19, 19, 20, 21, 21, 19, 18, 16, 3, 4, 4, 5, 64);
    }

    @Test
    void theFrameUnderTheMouseGoesWithTheRoundThatIsDeleted() {
        canvas.ghost().hover(Optional.of(cell(new Place(6, Section.REPEAT, 2))));
        bench.edit("two rounds less", chart -> Edits.deleteRounds(chart, 5, 6));
        canvas.setSize(canvas.getPreferredSize());

        assertThat(unlike(painted(canvas), painted(new ChartCanvas(bench, view))))
                .isZero();
    }

    @Test
    void theRingOfAFindingIsSeenOverTheCursor() {
        Place wrong = new Place(1, Section.REPEAT, 2);
        bench.work(List.of(wrong), Stitch.LONG);
        for (int px : new int[] {12, 18, 28, 40}) {
            view.zoomTo(px);
            canvas.setSize(canvas.getPreferredSize());
            bench.moveCursor(new Place(5, Section.FROM_CORNER, 1));
            BufferedImage elsewhere = painted(canvas);
            bench.moveCursor(wrong);
            canvas.setSize(canvas.getPreferredSize());
            BufferedImage standing = painted(canvas);

            int hidden = 0;
            int red = 0;
            for (GridCell cell : canvas.cells().cellsOf(wrong)) {
                Rectangle ring = canvas.boundsOf(cell);
                ring.grow(px, px);
                for (int y = ring.y; y < ring.y + ring.height; y++) {
                    for (int x = ring.x; x < ring.x + ring.width; x++) {
                        if ((elsewhere.getRGB(x, y) & 0xffffff) == error()) {
                            red++;
                            hidden += standing.getRGB(x, y) == elsewhere.getRGB(x, y) ? 0 : 1;
                        }
                    }
                }
            }
            assertThat(red).as("of the ring at %d", px).isGreaterThan(px);
            assertThat(hidden).as("of the ring under the cursor at %d", px).isZero();
        }
    }

    @Test
    void inGreysNothingOfTheChartHasAColourEvenTheRingAtTheCursor() {
        Place wrong = new Place(1, Section.REPEAT, 2);
        bench.work(List.of(wrong), Stitch.LONG);
        bench.moveCursor(wrong);
        assertThat(coloured(painted(canvas), wrong)).isPositive();
        view.see(Seeing.USUAL.withVision(ColourVision.GREY));

        assertThat(coloured(painted(canvas), wrong)).isZero();
    }

    /** How many pixels of the ring's number, which stands out of the cells of a place and of the cursor's frame, are red. */
    private int coloured(BufferedImage image, Place place) {
        int coloured = 0;
        for (GridCell cell : canvas.cells().cellsOf(place)) {
            Rectangle at = canvas.boundsOf(cell);
            for (int y = at.y - at.height / 2; y < at.y + at.height; y++) {
                for (int x = at.x; x < at.x + 3 * at.width / 2; x++) {
                    int rgb = image.getRGB(x, y) & 0xffffff;
                    coloured += rgb >> 16 > (rgb & 0xff) + 60 ? 1 : 0;
                }
            }
        }
        return coloured;
    }

    @Test
    void theFrameStaysWithTheCursorWhenAStrokeHasEnded() {
        mouse(MouseEvent.MOUSE_PRESSED, new Place(4, Section.REPEAT, 1));
        bench.edit("moved on", chart -> Edits.shiftRepeat(chart, 1));
        mouse(MouseEvent.MOUSE_DRAGGED, new Place(4, Section.REPEAT, 4));
        assertThat(canvas.placeIn(canvas.standing())).contains(bench.cursor());

        mouse(MouseEvent.MOUSE_RELEASED, new Place(4, Section.REPEAT, 4));
        mouse(MouseEvent.MOUSE_PRESSED, new Place(4, Section.REPEAT, 1));
        bench.open(
                Chart.blank(
                        "Slack Water",
                        new SideShape(1, 3, 1),
                        6,
                        Desk.blank(English.LANGUAGE).yarns()),
                Optional.empty());
        Chart opened = bench.chart();
        mouse(MouseEvent.MOUSE_DRAGGED, new Place(4, Section.REPEAT, 3));
        assertThat(canvas.placeIn(canvas.standing())).contains(bench.cursor());
        assertThat(bench.chart()).isEqualTo(opened);
    }

    private void mouse(int id, Place place) {
        Rectangle at = canvas.boundsOf(cell(place));
        canvas.dispatchEvent(new MouseEvent(
                canvas,
                id,
                0,
                InputEvent.BUTTON1_DOWN_MASK,
                (int) at.getCenterX(),
                (int) at.getCenterY(),
                0,
                0,
                1,
                false,
                id == MouseEvent.MOUSE_DRAGGED ? MouseEvent.NOBUTTON : MouseEvent.BUTTON1));
    }

    private void wheel(double turned) {
        canvas.dispatchEvent(new MouseWheelEvent(
                canvas,
                MouseEvent.MOUSE_WHEEL,
                0,
                InputEvent.CTRL_DOWN_MASK,
                60,
                60,
                0,
                0,
                0,
                false,
                MouseWheelEvent.WHEEL_UNIT_SCROLL,
                1,
                (int) turned,
                turned));
    }

    private GridCell cell(Place place) {
        return canvas.cells().cellsOf(place).get(0);
    }

    private static BufferedImage painted(ChartCanvas canvas) {
        canvas.setSize(canvas.getPreferredSize());
        BufferedImage image = new BufferedImage(canvas.getWidth(), canvas.getHeight(), BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setClip(0, 0, canvas.getWidth(), canvas.getHeight());
        canvas.paint(g);
        g.dispose();
        return image;
    }

    private static int unlike(BufferedImage one, BufferedImage other) {
        assertThat(List.of(one.getWidth(), one.getHeight())).isEqualTo(List.of(other.getWidth(), other.getHeight()));
        int unlike = 0;
        for (int y = 0; y < one.getHeight(); y++) {
            for (int x = 0; x < one.getWidth(); x++) {
                unlike += one.getRGB(x, y) == other.getRGB(x, y) ? 0 : 1;
            }
        }
        return unlike;
    }
}
