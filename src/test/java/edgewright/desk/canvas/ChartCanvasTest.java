package edgewright.desk.canvas;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.Chart;
import edgewright.chart.Edits;
import edgewright.chart.GridCell;
import edgewright.chart.Place;
import edgewright.chart.Section;
import edgewright.chart.Side;
import edgewright.chart.SideShape;
import edgewright.chart.Stitch;
import edgewright.desk.Desk;
import edgewright.desk.parts.Look;
import edgewright.desk.picture.CanvasPicture;
import edgewright.desk.picture.CanvasScale;
import edgewright.desk.work.ChartView;
import edgewright.desk.work.Theme;
import edgewright.desk.work.Workbench;
import edgewright.draw.grid.Direction;
import edgewright.draw.paint.Area;
import edgewright.testing.BlankBench;
import edgewright.texts.English;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.InputEvent;
import java.awt.event.MouseEvent;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The chart on the table: where the cursor goes, what the mouse works, and what is painted again. No screen is needed. */
class ChartCanvasTest {
    private static final SideShape SHAPE = new SideShape(2, 5, 1);

    private static final CanvasScale SCALE = new CanvasScale(new Point(0, 0), 4);

    private final Workbench bench = BlankBench.of(SHAPE);
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
    void arrowKeysGoTheWayTheChartIsSeen() {
        // Unturned, the upper arm is worked to the left: its places count up leftwards, and rounds count up upwards.
        stand(new Place(3, Section.TO_CORNER, 2));

        assertThat(placesWhileGoing(Direction.LEFT, Direction.RIGHT, Direction.UP, Direction.DOWN))
                .containsExactly(
                        new Place(3, Section.TO_CORNER, 3),
                        new Place(3, Section.TO_CORNER, 2),
                        new Place(4, Section.TO_CORNER, 2),
                        new Place(3, Section.TO_CORNER, 2));
    }

    @Test
    void turnedByAQuarterTheSameKeysFollowTheTurn() {
        stand(new Place(3, Section.TO_CORNER, 2));
        view.turnOn();

        // What was above is now on the right.
        assertThat(placesWhileGoing(Direction.RIGHT, Direction.LEFT, Direction.UP))
                .containsExactly(
                        new Place(4, Section.TO_CORNER, 2),
                        new Place(3, Section.TO_CORNER, 2),
                        new Place(3, Section.TO_CORNER, 3));
    }

    @Test
    void theCursorStepsOverTheDiagonalAndRoundTheCorner() {
        stand(new Place(3, Section.TO_CORNER, 4));

        assertThat(placesWhileGoing(Direction.LEFT, Direction.UP))
                .as("straight on over corner chains, onto the other arm one round further out, and so back again")
                .containsExactly(new Place(4, Section.FROM_CORNER, 1), new Place(5, Section.TO_CORNER, 6));
        stand(new Place(6, Section.TO_CORNER, 7));
        assertThat(placesWhileGoing(Direction.LEFT)).containsExactly(new Place(6, Section.FROM_CORNER, 1));
        assertThat(placesWhileGoing(Direction.UP)).containsExactly(new Place(6, Section.TO_CORNER, 7));
    }

    @Test
    void theCursorStopsWhereNothingMoreIsDrawn() {
        stand(new Place(6, Section.TO_CORNER, 1));

        assertThat(placesWhileGoing(Direction.UP)).containsExactly(new Place(6, Section.TO_CORNER, 1));
        new CanvasWalk(canvas).goToEnd(-1);
        assertThat(bench.cursor()).isEqualTo(new Place(6, Section.REPEAT, 1));
        assertThat(placesWhileGoing(Direction.RIGHT)).containsExactly(new Place(6, Section.REPEAT, 1));
        new CanvasWalk(canvas).goToEnd(1);
        assertThat(bench.cursor()).isEqualTo(new Place(6, Section.TO_CORNER, 7));
    }

    @Test
    void stitchesTypedOneAfterTheOtherFollowTheWayOfWorkingRoundTheCorner() {
        stand(new Place(4, Section.TO_CORNER, 4));
        for (Stitch stitch : new Stitch[] {Stitch.LONG, Stitch.PLAIN, Stitch.CHAIN, Stitch.LONG}) {
            new CanvasWalk(canvas).work(stitch, 1);
        }

        assertThat(bench.chart().round(4).toCorner().letters()).isEqualTo("bbblp");
        assertThat(bench.chart().round(4).fromCorner().letters()).isEqualTo("clbbbb");
        new CanvasWalk(canvas).work(Stitch.BACK_LOOP, -1);
        assertThat(bench.chart().round(4).fromCorner().letters()).isEqualTo("cbbbbb");
    }

    @Test
    void theCursorNeverStandsOnTheDiagonalHoweverItGoes() {
        Random random = new Random(7);
        for (int step = 0; step < 3_000; step++) {
            new CanvasWalk(canvas).go(Direction.values()[random.nextInt(4)]);
            assertThat(canvas.placeIn(canvas.standing())).contains(bench.cursor());
        }
    }

    @Test
    void everyStitchCanBeReachedWithTheArrowKeys() {
        List<Place> seen = new ArrayList<>();
        List<GridCell> open = new ArrayList<>(List.of(canvas.standing()));
        for (int i = 0; i < open.size(); i++) {
            for (Direction heading : Direction.values()) {
                canvas.standIn(open.get(i));
                new CanvasWalk(canvas).go(heading);
                if (!open.contains(canvas.standing())) {
                    open.add(canvas.standing());
                    seen.add(bench.cursor());
                }
            }
        }

        for (int round = 1; round <= 6; round++) {
            for (Section section : Section.values()) {
                for (int place = 1; place <= SHAPE.length(section, round); place++) {
                    assertThat(seen).contains(new Place(round, section, place));
                }
            }
        }
    }

    @Test
    void aDragWithTheLeftButtonWorksEveryStitchItGoesOverAsOneEdit() {
        List<GridCell> row = new ArrayList<>();
        for (int place = 1; place <= 4; place++) {
            row.add(canvas.cells().cellsOf(new Place(4, Section.REPEAT, place)).get(0));
        }
        press(row.get(0), InputEvent.BUTTON1_DOWN_MASK);
        // Straight to the last: the mouse is faster than its reports.
        drag(row.get(3), InputEvent.BUTTON1_DOWN_MASK);
        release(row.get(3), InputEvent.BUTTON1_DOWN_MASK);

        assertThat(bench.chart().round(4).repeat().letters()).isEqualTo("llllb");
        assertThat(bench.undoName()).contains("4 long stitches");
    }

    @Test
    void theRightButtonTakesOut() {
        Place place = new Place(4, Section.REPEAT, 2);
        bench.work(List.of(place), Stitch.LONG);
        GridCell second = canvas.cells().cellsOf(place).get(1);
        press(second, InputEvent.BUTTON3_DOWN_MASK);
        release(second, InputEvent.BUTTON3_DOWN_MASK);

        assertThat(bench.chart().stitch(place)).isEqualTo(Stitch.BACK_LOOP);
        assertThat(bench.undoName()).contains("1 back-loop stitch");
    }

    @Test
    void theDiagonalAndTheBaseRoundCannotBeDrawnOn() {
        Chart before = bench.chart();
        for (int round = 0; round <= 6; round++) {
            GridCell corner = canvas.cells().grid().cornerCell(Side.TOP, round);
            press(corner, InputEvent.BUTTON1_DOWN_MASK);
            release(corner, InputEvent.BUTTON1_DOWN_MASK);
        }
        GridCell base = new GridCell(2, -1);
        press(base, InputEvent.BUTTON1_DOWN_MASK);
        release(base, InputEvent.BUTTON1_DOWN_MASK);

        assertThat(bench.chart()).isSameAs(before);
    }

    @Test
    void withShiftAPressOnlyPutsTheCursorThereAndWithAltItTakesTheStitchUp() {
        Place place = new Place(4, Section.REPEAT, 2);
        bench.work(List.of(place), Stitch.CHAIN);
        Chart before = bench.chart();
        GridCell cell = canvas.cells().cellsOf(place).get(0);
        stand(new Place(1, Section.REPEAT, 1));
        press(cell, InputEvent.BUTTON1_DOWN_MASK | InputEvent.SHIFT_DOWN_MASK);
        release(cell, InputEvent.BUTTON1_DOWN_MASK | InputEvent.SHIFT_DOWN_MASK);
        assertThat(bench.cursor()).isEqualTo(place);

        press(cell, InputEvent.BUTTON1_DOWN_MASK | InputEvent.ALT_DOWN_MASK);
        release(cell, InputEvent.BUTTON1_DOWN_MASK | InputEvent.ALT_DOWN_MASK);
        assertThat(bench.stitch()).isEqualTo(Stitch.CHAIN);
        assertThat(bench.chart()).isSameAs(before);
    }

    @Test
    void whatIsPaintedAgainIsAllThatHasChanged() {
        Random random = new Random(11);
        Stitch[] stitches = Stitch.values();
        for (int i = 0; i < 40; i++) {
            CanvasPicture before = CanvasPicture.of(bench, view);
            BufferedImage old = painted(before, new Rectangle(0, 0, 600, 600));
            Section section = Section.values()[random.nextInt(3)];
            int round = 1 + random.nextInt(6);
            Place place = new Place(round, section, 1 + random.nextInt(SHAPE.length(section, round)));
            bench.work(List.of(place), stitches[random.nextInt(4)]);
            CanvasPicture after = CanvasPicture.of(bench, view);

            assertThat(after.liesLike(before)).isTrue();
            BufferedImage fresh = painted(after, new Rectangle(0, 0, 600, 600));
            Graphics2D mended = old.createGraphics();
            for (Area area : after.damageSince(before)) {
                Rectangle px = pixels(area);
                mended.setClip(px);
                after.paint((Graphics2D) mended.create(), SCALE, area);
            }
            mended.dispose();
            assertThat(differing(old, fresh)).as("edit %d at %s", i, place).isZero();
        }
    }

    @Test
    void oneStitchCostsALittlePartOfTheChartOnly() {
        Workbench large = new Workbench(
                Chart.blank(
                        "Long Shore",
                        new SideShape(10, 24, 10),
                        200,
                        Desk.blank(English.LANGUAGE).yarns()),
                Optional.empty(),
                English.LANGUAGE);
        CanvasPicture before = CanvasPicture.of(large, view);
        large.work(List.of(new Place(120, Section.REPEAT, 5)), Stitch.LONG);
        CanvasPicture after = CanvasPicture.of(large, view);

        double damaged = after.damageSince(before).stream()
                .mapToDouble(area -> area.widthMm() * area.heightMm())
                .sum();
        assertThat(damaged / (after.widthMm() * after.heightMm())).isLessThan(0.002);
    }

    @Test
    void aChartThatLiesOtherwiseIsPaintedAsAWhole() {
        CanvasPicture before = CanvasPicture.of(bench, view);
        bench.edit("more", chart -> Edits.insertRounds(chart, 3, List.of("A")));

        assertThat(CanvasPicture.of(bench, view).liesLike(before)).isFalse();
    }

    @Test
    void aStitchFoundFromOutsideIsShownInTheNearestCell() {
        Place place = new Place(4, Section.REPEAT, 2);
        List<GridCell> cells = canvas.cells().cellsOf(place);
        canvas.standIn(
                canvas.cells().cellsOf(new Place(1, Section.FROM_CORNER, 1)).get(0));
        bench.moveCursor(place);

        assertThat(canvas.placeIn(canvas.standing())).contains(place);
        assertThat(cells).contains(canvas.standing());
    }

    @Test
    void thoseWhoHearTheChartHearWhatTheStitchStandsOn() {
        stand(new Place(4, Section.REPEAT, 2));
        bench.work(List.of(bench.cursor()), Stitch.LONG);

        assertThat(canvas.getAccessibleContext().getAccessibleName()).isEqualTo("Chart of Reed Bank");
        assertThat(canvas.getAccessibleContext().getAccessibleDescription())
                .isEqualTo(
                        "Round 4, repeat, stitch 2: long stitch over a back-loop stitch of round 3, lands in a back-loop stitch of"
                                + " round 2.");
    }

    private void stand(Place place) {
        canvas.standIn(canvas.cells().cellsOf(place).get(0));
    }

    private List<Place> placesWhileGoing(Direction... headings) {
        List<Place> places = new ArrayList<>();
        for (Direction heading : headings) {
            new CanvasWalk(canvas).go(heading);
            places.add(bench.cursor());
        }
        return places;
    }

    private void press(GridCell cell, int modifiers) {
        send(MouseEvent.MOUSE_PRESSED, cell, modifiers);
    }

    private void drag(GridCell cell, int modifiers) {
        send(MouseEvent.MOUSE_DRAGGED, cell, modifiers);
    }

    private void release(GridCell cell, int modifiers) {
        send(MouseEvent.MOUSE_RELEASED, cell, modifiers);
    }

    private void send(int id, GridCell cell, int modifiers) {
        Rectangle at = canvas.boundsOf(cell);
        int button = (modifiers & InputEvent.BUTTON3_DOWN_MASK) != 0 ? MouseEvent.BUTTON3 : MouseEvent.BUTTON1;
        int x = at.x + at.width / 2;
        int y = at.y + at.height / 2;
        canvas.dispatchEvent(new MouseEvent(canvas, id, 0, modifiers, x, y, x, y, 1, false, button));
    }

    private static BufferedImage painted(CanvasPicture picture, Rectangle clip) {
        BufferedImage image = new BufferedImage(600, 600, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setClip(clip);
        picture.paint(g, SCALE, new Area(0, 0, picture.widthMm(), picture.heightMm()));
        return image;
    }

    private static Rectangle pixels(Area area) {
        int left = (int) Math.floor(area.xMm() * 4);
        int top = (int) Math.floor(area.yMm() * 4);
        return new Rectangle(
                left, top, (int) Math.ceil(area.rightMm() * 4) - left, (int) Math.ceil(area.bottomMm() * 4) - top);
    }

    private static int differing(BufferedImage one, BufferedImage other) {
        int differing = 0;
        for (int y = 0; y < one.getHeight(); y++) {
            for (int x = 0; x < one.getWidth(); x++) {
                if (one.getRGB(x, y) != other.getRGB(x, y)) {
                    differing++;
                }
            }
        }
        return differing;
    }
}
