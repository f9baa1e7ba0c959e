package edgewright.desk.canvas;

import edgewright.chart.GridCell;
import edgewright.chart.Place;
import edgewright.desk.command.Commands;
import edgewright.desk.picture.CanvasPicture;
import edgewright.desk.picture.CanvasScale;
import edgewright.desk.tool.Toolbox;
import edgewright.desk.work.ChartView;
import edgewright.desk.work.ViewChange;
import edgewright.desk.work.Workbench;
import edgewright.desk.work.WorkbenchChange;
import edgewright.draw.paint.ColourVision;
import edgewright.draw.picture.Arm;
import edgewright.draw.picture.CellLayout;
import edgewright.draw.picture.DrawnCell;
import edgewright.texts.Messages;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.MouseEvent;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.accessibility.Accessible;
import javax.accessibility.AccessibleContext;
import javax.swing.JScrollPane;
import javax.swing.SwingUtilities;

/**
 * The chart as it is drawn, with a cursor in one of its cells. Stitches are worked on it with the mouse ({@link CanvasMouse})
 * and the keys ({@link CanvasKeys}); only what has changed is painted again.
 *
 * <p>The repeat is drawn several times and on both arms, so the cursor stands in one cell and its place shows in others, which
 * are marked too. Corner chains cannot be worked or stood on.
 */
public final class ChartCanvas extends ScrolledCanvas implements Accessible {
    private final transient Workbench bench;
    private final transient ChartView view;
    private final transient Toolbox toolbox;
    private final transient CanvasMarking marking = new CanvasMarking(this);
    private final transient CanvasTools tools;
    private final transient CanvasGhost ghost;
    private final transient CursorFrames frames = new CursorFrames(this);
    private final transient CanvasPainter painter = new CanvasPainter(this);
    private final transient Commands commands = new Commands();
    private final transient CanvasZoom zoom;
    private final transient CanvasHold hold = new CanvasHold(this);
    private final transient CanvasRulers rulers = new CanvasRulers(this);
    private transient CanvasPicture picture;
    private transient GridCell standing;
    private int shownCellPx;

    public ChartCanvas(Workbench bench, ChartView view) {
        this.bench = bench;
        this.view = view;
        toolbox = new Toolbox(bench);
        tools = new CanvasTools(this);
        ghost = new CanvasGhost(this);
        setName("chart");
        setFocusable(true);
        setOpaque(true);
        setAutoscrolls(false);
        picture = CanvasPicture.of(bench, view);
        standing = picture.layout().cellsOf(bench.cursor()).get(0);
        zoom = new CanvasZoom(this, view);
        shownCellPx = view.cellPx();
        CanvasMouse hand = new CanvasMouse(this);
        addMouseListener(hand);
        addMouseMotionListener(hand);
        addMouseWheelListener(new CanvasWheel(this));
        addKeyListener(hold);
        addFocusListener(hold);
        new CanvasCommands(this).addTo(commands);
        CanvasKeys.bind(this, commands, view.language());
        painter.light(new LitCells(this, view.lit()));
        bench.listen(this::changed);
        view.listen(this::viewChanged);
        ToolWatch.on(this);
    }

    @Override
    public void addNotify() {
        super.addNotify();
        rulers.attach();
        zoom.watch();
        zoom.refit();
    }

    /** What the room says, in the language of the view. */
    Messages says() {
        return view.language().messages("desk/canvas");
    }

    /** What the desk says in several rooms. */
    Messages common() {
        return view.language().messages("desk/common");
    }

    Workbench bench() {
        return bench;
    }

    @Override
    int cellPx() {
        return view.cellPx();
    }

    /** What is done with its cursor. */
    public Commands commands() {
        return commands;
    }

    /** Whether something is being drawn. */
    boolean isDrawing() {
        return tools.isBusy();
    }

    /** What is marked. */
    public CanvasMarking marking() {
        return marking;
    }

    /** The cell in which the cursor is drawn. */
    GridCell standing() {
        return standing;
    }

    public CellLayout cells() {
        return picture.layout();
    }

    /** How often the repeat is drawn on each side. */
    int repeats() {
        return cells().grid().repeats().get(Arm.INCOMING.side());
    }

    /** The drawn cell under a point of this component. */
    Optional<GridCell> cellAt(Point point) {
        Point2D mm = scale().toMm(point);
        return picture.layout().cellAt(mm.getX(), mm.getY());
    }

    /** The stitch of the chart that is drawn in a cell; empty for corner chains, the base round and missing stitches. */
    Optional<Place> placeIn(GridCell cell) {
        return picture.layout()
                .stitchIn(cell)
                .map(DrawnCell.OfStitch::place)
                .filter(place -> place.round() >= 1 && bench.chart().has(place));
    }

    /** Where a cell is on this component. */
    public Rectangle boundsOf(GridCell cell) {
        return scale().toPx(picture.layout().areaOf(cell));
    }

    /** Puts the cursor into a cell that shows a stitch of the chart. */
    void standIn(GridCell cell) {
        standInQuietly(cell);
        placeIn(cell).ifPresent(bench::moveCursor);
    }

    /** Remembers the cell without moving the cursor of the chart, which is about to come there. */
    void standInQuietly(GridCell cell) {
        standing = cell;
        repaintCursor();
        CanvasSpeech.follow(this, accessibleContext);
    }

    /** The tool in the hand, and the mirrors. */
    public Toolbox toolbox() {
        return toolbox;
    }

    CanvasTools tools() {
        return tools;
    }

    CanvasGhost ghost() {
        return ghost;
    }

    ChartView view() {
        return view;
    }

    CanvasPicture picture() {
        return picture;
    }

    /** Paints parts of the canvas again. */
    void mend(List<Rectangle> parts) {
        painter.mend(parts);
    }

    /** Makes the whole chart fit into its window, now and at every resize until another size is chosen. */
    public void fit() {
        zoom.fit();
    }

    /** How its colours are seen. */
    ColourVision vision() {
        return view.seeing().vision();
    }

    CanvasZoom zoom() {
        return zoom;
    }

    /** Takes back what is being drawn; if nothing is, nothing is marked any more. */
    void cancel() {
        if (!tools.cancel()) {
            marking.clear();
        }
    }

    /** Puts the cursor into a cell and brings that into view. */
    public void standAndShow(GridCell cell) {
        standIn(cell);
        showCursor();
    }

    private void showCursor() {
        if (SwingUtilities.getAncestorOfClass(JScrollPane.class, this) instanceof JScrollPane pane) {
            // The size may have changed in this very event.
            pane.validate();
        }
        Rectangle cell = boundsOf(standing);
        int room = 2 * cellPx();
        cell.grow(room, room);
        scrollRectToVisible(cell);
    }

    private void changed(WorkbenchChange change) {
        if (!change.ofChart() && change.kind() != WorkbenchChange.Kind.CURSOR) {
            return;
        }
        List<Rectangle> damage = new ArrayList<>();
        boolean lyingAsBefore = !change.ofChart() || exchange(change, damage);
        boolean elsewhere = followCursor();
        damage.addAll(frames.moved());
        rulers.follow();
        if (lyingAsBefore) {
            painter.mend(damage);
        } else {
            marking.clear();
            layAnew();
        }
        if (elsewhere || change.kind() == WorkbenchChange.Kind.OPENED) {
            showCursor();
        }
        CanvasSpeech.follow(this, accessibleContext);
    }

    /** Lays the new picture on the table and notes what looks otherwise; false if it lies otherwise as a whole. */
    private boolean exchange(WorkbenchChange change, List<Rectangle> damage) {
        CanvasPicture before = picture;
        picture = CanvasPicture.of(bench, view);
        if (change.kind() == WorkbenchChange.Kind.OPENED) {
            fit();
            return false;
        }
        if (!picture.liesLike(before)) {
            return false;
        }
        CanvasScale scale = scale();
        picture.damageSince(before).forEach(area -> damage.add(scale.toPx(area)));
        painter.spoil(damage);
        return true;
    }

    /** Cells lie elsewhere or look otherwise as a whole, and what was remembered of them holds no more. */
    private void layAnew() {
        ghost.forget();
        tools.forget();
        painter.outdate();
        rulers.follow();
        revalidate();
        repaint();
    }

    /** Goes to the cell of the cursor's place that is nearest to where it stood; whether that is another one. */
    private boolean followCursor() {
        Place cursor = bench.cursor();
        if (placeIn(standing).filter(cursor::equals).isPresent()) {
            return false;
        }
        List<GridCell> cells = picture.layout().cellsOf(cursor);
        standing = CanvasSteps.nearest(picture.layout(), standing, cells).orElse(standing);
        return true;
    }

    private void viewChanged(ViewChange change) {
        boolean resized = shownCellPx != view.cellPx();
        if (!resized && picture.isLookedAt(view)) {
            // How sides are counted, and for which size, is not seen here.
            return;
        }
        if (!picture.isLookedAt(view)) {
            boolean others = !picture.hasCellsOf(view);
            picture = CanvasPicture.of(bench, view);
            if (others) {
                // What was marked, and where the cursor stood, were cells of another part of the border.
                marking.clear();
                standing = picture.layout().cellsOf(bench.cursor()).get(0);
            }
        }
        shownCellPx = view.cellPx();
        layAnew();
        boolean turned = change == ViewChange.TURN || change == ViewChange.SEEING;
        if (turned) {
            zoom.refit();
        }
        if (resized || turned) {
            showCursor();
        }
    }

    /** Paints the frames of the cursor where they are and were. */
    void repaintCursor() {
        painter.mend(frames.moved());
    }

    @Override
    public void updateUI() {
        super.updateUI();
        if (picture != null) {
            picture = CanvasPicture.of(bench, view);
            painter.outdate();
            repaint();
        }
    }

    @Override
    protected void processMouseEvent(MouseEvent event) {
        if (!hold.takes(event)) {
            super.processMouseEvent(event);
        }
    }

    @Override
    protected void processMouseMotionEvent(MouseEvent event) {
        if (!hold.takes(event)) {
            super.processMouseMotionEvent(event);
        }
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = (Graphics2D) graphics.create();
        if (isPaintingForPrint()) {
            painter.print(g, picture);
        } else {
            painter.paint(g, picture);
        }
        g.dispose();
    }

    @Override
    public Dimension getPreferredSize() {
        return zoom.needed();
    }

    CanvasScale scale() {
        return zoom.scale(getWidth(), getHeight());
    }

    @Override
    public AccessibleContext getAccessibleContext() {
        if (accessibleContext == null) {
            accessibleContext = new CanvasSpeech(this);
        }
        return accessibleContext;
    }
}
