package edgewright.desk.canvas;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.Chart;
import edgewright.chart.Place;
import edgewright.chart.Section;
import edgewright.chart.SideShape;
import edgewright.chart.Stitch;
import edgewright.desk.parts.Look;
import edgewright.desk.tool.Tools;
import edgewright.desk.work.ChartView;
import edgewright.desk.work.Theme;
import edgewright.desk.work.Workbench;
import edgewright.testing.BlankBench;
import edgewright.texts.English;
import java.awt.Rectangle;
import java.awt.event.InputEvent;
import java.awt.event.MouseEvent;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The tools that work no stitches, under the mouse. No screen is needed. */
class CanvasToolsTest {
    private static final int LEFT = InputEvent.BUTTON1_DOWN_MASK;
    private static final int RIGHT = InputEvent.BUTTON3_DOWN_MASK;
    private static final Place FIRST = new Place(3, Section.TO_CORNER, 1);
    private static final Place SECOND = new Place(3, Section.TO_CORNER, 2);
    private static final Place OUTER = new Place(4, Section.TO_CORNER, 3);

    private final Workbench bench = BlankBench.of(new SideShape(2, 5, 2));
    private ChartCanvas canvas;

    @BeforeAll
    static void light() {
        Look.setUp(Theme.LIGHT);
    }

    @BeforeEach
    void layOnTheTable() {
        canvas = new ChartCanvas(bench, new ChartView(English.LANGUAGE));
        canvas.setSize(canvas.getPreferredSize());
    }

    @Test
    void thePointerOnlyPutsTheCursorThereWhicheverButtonIsPressed() {
        bench.work(List.of(SECOND), Stitch.PLAIN);
        Chart before = bench.chart();
        canvas.toolbox().take(Tools.POINTER);
        drag(FIRST, SECOND, LEFT);
        drag(SECOND, SECOND, RIGHT);

        assertThat(bench.chart()).isSameAs(before);
        assertThat(bench.cursor()).isEqualTo(SECOND);
    }

    @Test
    void withTheMarkerADragMarksASecondOneCarriesAndTheRightButtonClearsTheMarks() {
        bench.work(List.of(FIRST), Stitch.PLAIN);
        canvas.toolbox().take(Tools.MARKER);
        drag(FIRST, SECOND, LEFT);
        drag(SECOND, OUTER, LEFT);

        assertThat(letters()).containsExactly("bbbbb", "bpbbbb");
        assertThat(bench.undoName()).contains("move motif");
        assertThat(canvas.marking().motif().orElseThrow().rounds()).containsExactly("pb");
        drag(OUTER, OUTER, RIGHT);
        assertThat(canvas.marking().isEmpty()).isTrue();
        assertThat(letters()).containsExactly("bbbbb", "bpbbbb");
    }

    @Test
    void withControlWhatIsCarriedAlsoStaysWhereItWas() {
        bench.work(List.of(FIRST), Stitch.PLAIN);
        canvas.toolbox().take(Tools.MARKER);
        drag(FIRST, SECOND, LEFT);
        drag(SECOND, OUTER, LEFT | InputEvent.CTRL_DOWN_MASK);

        assertThat(letters()).containsExactly("pbbbb", "bpbbbb");
        assertThat(bench.undoName()).contains("copy motif");
    }

    @Test
    void carriedToTheOtherArmAMotifKeepsItsOrderOfWorking() {
        bench.work(List.of(FIRST), Stitch.PLAIN);
        canvas.toolbox().take(Tools.MARKER);
        drag(FIRST, SECOND, LEFT);
        drag(SECOND, new Place(3, Section.FROM_CORNER, 3), LEFT);

        assertThat(bench.chart().round(3).fromCorner().letters()).isEqualTo("bpbbb");
        assertThat(letters()).containsExactly("bbbbb", "bbbbbb");
    }

    private List<String> letters() {
        return List.of(
                bench.chart().round(3).toCorner().letters(),
                bench.chart().round(4).toCorner().letters());
    }

    private void drag(Place from, Place to, int modifiers) {
        send(MouseEvent.MOUSE_PRESSED, from, modifiers);
        send(MouseEvent.MOUSE_DRAGGED, to, modifiers);
        send(MouseEvent.MOUSE_RELEASED, to, modifiers);
    }

    private void send(int id, Place place, int modifiers) {
        Rectangle at = canvas.boundsOf(canvas.cells().cellsOf(place).get(0));
        int button = (modifiers & RIGHT) != 0 ? MouseEvent.BUTTON3 : MouseEvent.BUTTON1;
        int x = at.x + at.width / 2;
        int y = at.y + at.height / 2;
        canvas.dispatchEvent(new MouseEvent(canvas, id, 0, modifiers, x, y, x, y, 1, false, button));
    }
}
