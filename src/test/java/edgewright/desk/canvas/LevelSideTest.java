package edgewright.desk.canvas;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.Chart;
import edgewright.chart.GridCell;
import edgewright.chart.HookHand;
import edgewright.chart.Place;
import edgewright.chart.Section;
import edgewright.chart.SideShape;
import edgewright.chart.Stitch;
import edgewright.desk.parts.Look;
import edgewright.desk.work.ChartView;
import edgewright.desk.work.Seeing;
import edgewright.desk.work.Theme;
import edgewright.desk.work.Workbench;
import edgewright.draw.grid.Direction;
import edgewright.testing.BlankBench;
import edgewright.texts.English;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.awt.event.KeyListener;
import java.awt.event.MouseEvent;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import javax.swing.JScrollPane;
import javax.swing.JViewport;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The level side on the canvas: the same mouse, keys and cursor over one strip from corner to corner. And the chart in the hand. */
class LevelSideTest {
    private static final SideShape SHAPE = new SideShape(2, 5, 1);

    private final Workbench bench = BlankBench.of(SHAPE);
    private final ChartView view = new ChartView(English.LANGUAGE);
    private ChartCanvas canvas;

    @BeforeAll
    static void light() {
        Look.setUp(Theme.LIGHT);
    }

    @BeforeEach
    void layTheSideOnTheTable() {
        canvas = new ChartCanvas(bench, view);
        view.see(Seeing.USUAL.withDrawn(Seeing.Drawn.SIDE));
        canvas.setSize(canvas.getPreferredSize());
    }

    @Test
    void everyStitchOfTheChartLiesThereOnceAndIsWorkedWhereItLies() {
        bench.choose(Stitch.PLAIN);
        for (HookHand hand : HookHand.values()) {
            view.see(view.seeing().withHand(hand));
            for (int side = 0; side < 4; side++) {
                for (Place place : places()) {
                    List<GridCell> cells = canvas.cells().cellsOf(place);
                    assertThat(cells).as("%s", place).hasSize(1);
                    Chart before = bench.chart();
                    press(cells.get(0));
                    assertThat(bench.chart().stitch(place)).isEqualTo(Stitch.PLAIN);
                    bench.undo();
                    assertThat(bench.chart()).isEqualTo(before);
                }
                view.turnOn();
                canvas.setSize(canvas.getPreferredSize());
            }
        }
    }

    @Test
    void theCursorWalksARoundFromCornerToCornerAndNoFurther() {
        stand(new Place(3, Section.FROM_CORNER, 1));
        List<Place> walked = new ArrayList<>(List.of(bench.cursor()));
        for (int i = 0; i < SHAPE.stitches(3, 1) + 2; i++) {
            new CanvasWalk(canvas).go(Direction.LEFT);
            walked.add(bench.cursor());
        }
        List<Place> round = new ArrayList<>(
                places().stream().filter(place -> place.round() == 3).toList());
        Place last = round.get(round.size() - 1);
        round.addAll(List.of(last, last, last));

        assertThat(walked).isEqualTo(round);
        new CanvasWalk(canvas).goToEnd(-1);
        assertThat(bench.cursor()).isEqualTo(round.get(0));
        new CanvasWalk(canvas).go(Direction.DOWN);
        assertThat(bench.cursor()).as("under it is the corner").isEqualTo(round.get(0));
    }

    @Test
    void forTheLeftHandARoundIsWalkedTheOtherWay() {
        view.see(view.seeing().withHand(HookHand.LEFT));
        stand(new Place(3, Section.FROM_CORNER, 1));
        new CanvasWalk(canvas).go(Direction.LEFT);
        assertThat(bench.cursor()).isEqualTo(new Place(3, Section.FROM_CORNER, 1));
        new CanvasWalk(canvas).go(Direction.RIGHT);
        assertThat(bench.cursor()).isEqualTo(new Place(3, Section.FROM_CORNER, 2));
    }

    @Test
    void theCursorStaysAndTheMarksGoAsAnotherPartIsDrawn() {
        Place place = new Place(4, Section.REPEAT, 2);
        stand(place);
        new CanvasWalk(canvas).mark(Direction.LEFT);
        Place stood = bench.cursor();
        assertThat(canvas.marking().isEmpty()).isFalse();
        view.see(Seeing.USUAL);

        assertThat(canvas.marking().isEmpty()).isTrue();
        assertThat(bench.cursor()).isEqualTo(stood);
        assertThat(canvas.placeIn(canvas.standing())).contains(stood);
    }

    @Test
    void whatIsLaidDownFromTilesIsWhatAWholePaintingShows() {
        Random random = new Random(7);
        for (ChartView.Layers layers : ChartView.Layers.values()) {
            view.show(layers);
            painted(false);
            for (int i = 0; i < 8; i++) {
                List<Place> places = places();
                bench.work(List.of(places.get(random.nextInt(places.size()))), Stitch.values()[random.nextInt(4)]);
                assertThat(far(painted(false), painted(true)))
                        .as("%s after edit %d", layers, i)
                        .isZero();
            }
        }
    }

    @Test
    void aTappedSpaceBarWorksAStitchAndAHeldOneMovesTheChart() {
        bench.choose(Stitch.PLAIN);
        JViewport window = new JScrollPane(canvas).getViewport();
        window.setSize(200, 100);
        view.zoomTo(40);
        canvas.setSize(canvas.getPreferredSize());
        stand(new Place(3, Section.FROM_CORNER, 1));
        window.setViewPosition(new Point(100, 60));
        Chart before = bench.chart();
        space(KeyEvent.KEY_PRESSED, 1_000);
        assertThat(bench.chart()).isEqualTo(before);
        mouse(MouseEvent.MOUSE_PRESSED, 150, 90);
        mouse(MouseEvent.MOUSE_DRAGGED, 130, 80);
        mouse(MouseEvent.MOUSE_RELEASED, 130, 80);
        space(KeyEvent.KEY_RELEASED, 1_100);
        assertThat(window.getViewPosition()).isEqualTo(new Point(120, 70));
        assertThat(bench.chart()).isEqualTo(before);

        // Held without the mouse it repeats itself, and nothing comes of it.
        space(KeyEvent.KEY_PRESSED, 2_000);
        for (int at = 2_600; at < 3_000; at += 30) {
            space(KeyEvent.KEY_RELEASED, at);
            space(KeyEvent.KEY_PRESSED, at);
        }
        space(KeyEvent.KEY_RELEASED, 3_010);
        assertThat(bench.chart()).isEqualTo(before);

        space(KeyEvent.KEY_PRESSED, 4_000);
        space(KeyEvent.KEY_RELEASED, 4_080);
        assertThat(bench.chart().stitch(new Place(3, Section.FROM_CORNER, 1))).isEqualTo(Stitch.PLAIN);
    }

    private List<Place> places() {
        List<Place> places = new ArrayList<>();
        for (int round = 1; round <= 6; round++) {
            for (Section section : Section.values()) {
                for (int place = 1; place <= SHAPE.length(section, round); place++) {
                    places.add(new Place(round, section, place));
                }
            }
        }
        return places;
    }

    private void stand(Place place) {
        canvas.standIn(canvas.cells().cellsOf(place).get(0));
    }

    private void press(GridCell cell) {
        Rectangle at = canvas.boundsOf(cell);
        mouse(MouseEvent.MOUSE_PRESSED, (int) at.getCenterX(), (int) at.getCenterY());
        mouse(MouseEvent.MOUSE_RELEASED, (int) at.getCenterX(), (int) at.getCenterY());
    }

    private void mouse(int id, int x, int y) {
        int button = id == MouseEvent.MOUSE_DRAGGED ? MouseEvent.NOBUTTON : MouseEvent.BUTTON1;
        canvas.dispatchEvent(new MouseEvent(canvas, id, 0, InputEvent.BUTTON1_DOWN_MASK, x, y, x, y, 1, false, button));
    }

    private void space(int id, long when) {
        KeyEvent event = new KeyEvent(canvas, id, when, 0, KeyEvent.VK_SPACE, ' ');
        for (KeyListener listener : canvas.getKeyListeners()) {
            if (id == KeyEvent.KEY_PRESSED) {
                listener.keyPressed(event);
            } else {
                listener.keyReleased(event);
            }
        }
        assertThat(event.isConsumed()).isTrue();
    }

    private BufferedImage painted(boolean anew) {
        canvas.setSize(canvas.getPreferredSize());
        BufferedImage image = new BufferedImage(canvas.getWidth(), canvas.getHeight(), BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setClip(0, 0, image.getWidth(), image.getHeight());
        if (anew) {
            canvas.print(g);
        } else {
            canvas.paint(g);
        }
        g.dispose();
        return image;
    }

    /** Edges may be smoothed a little otherwise where only a part is painted. */
    private static int far(BufferedImage one, BufferedImage other) {
        int far = 0;
        for (int y = 0; y < one.getHeight(); y++) {
            for (int x = 0; x < one.getWidth(); x++) {
                int a = one.getRGB(x, y);
                int b = other.getRGB(x, y);
                far += Math.abs((a & 0xff) - (b & 0xff)) + Math.abs((a >> 8 & 0xff) - (b >> 8 & 0xff)) > 80 ? 1 : 0;
            }
        }
        return far;
    }
}
