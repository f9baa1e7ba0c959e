package edgewright.desk.canvas;

import edgewright.chart.GridCell;
import edgewright.chart.GridContent.SideStitch;
import edgewright.chart.Motif;
import edgewright.chart.Place;
import edgewright.chart.Side;
import edgewright.chart.SidePlace;
import edgewright.desk.picture.CanvasScale;
import edgewright.desk.picture.MarkedOutline;
import edgewright.desk.work.Selection;
import edgewright.draw.picture.CellLayout;
import java.awt.Rectangle;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What is marked on the chart, on one arm or round the corner. */
public final class CanvasMarking {
    /** Worked out once for each way in which the cells lie; whoever paints asks again and again. */
    private record Outlined(CanvasScale scale, CellLayout layout, Path2D path) {}

    /** How far its line reaches beyond what is marked. */
    private static final int LINE_PX = 3;

    private final ChartCanvas canvas;
    private final List<Runnable> listeners = new ArrayList<>();
    private Optional<Selection> marked = Optional.empty();
    /** Where marking began, as long as it may go on from there. */
    private Optional<SideStitch> anchor = Optional.empty();

    private Optional<Outlined> outlined = Optional.empty();

    public CanvasMarking(ChartCanvas canvas) {
        this.canvas = canvas;
    }

    /** Is run after every change of what is marked. */
    public void listen(Runnable listener) {
        listeners.add(listener);
    }

    public boolean isEmpty() {
        return marked.isEmpty();
    }

    /** What is marked; empty if nothing is. */
    public Optional<Selection> selection() {
        return marked;
    }

    /**
     * Marks from one cell to another, both included; nothing happens if they do not both show a stitch. If something is marked
     * already, it is marked from where that began.
     */
    public void extend(GridCell from, GridCell to) {
        Optional<SideStitch> begin = anchor.or(() -> stitchIn(from));
        Optional<SideStitch> end = stitchIn(to);
        if (begin.isPresent() && end.isPresent()) {
            Selection.between(begin.get(), end.get()).ifPresent(selection -> {
                anchor = begin;
                mark(Optional.of(selection));
            });
        }
    }

    /** Marks this; marking goes on from its first stitch. */
    void show(Selection shown) {
        int round = shown.rounds().first();
        int stitch = shown.firstColumn() + round;
        anchor = round >= 1 && stitch >= 1
                ? Optional.of(new SideStitch(shown.side(), new SidePlace(round, stitch)))
                : Optional.empty();
        mark(Optional.of(shown));
    }

    public void clear() {
        anchor = Optional.empty();
        mark(Optional.empty());
    }

    private void mark(Optional<Selection> next) {
        if (!next.equals(marked)) {
            repaintOutline();
            marked = next;
            outlined = Optional.empty();
            repaintOutline();
            listeners.forEach(Runnable::run);
        }
    }

    private void repaintOutline() {
        if (!isEmpty()) {
            Rectangle touched = outline().getBounds();
            touched.grow(LINE_PX, LINE_PX);
            canvas.repaint(touched);
        }
    }

    /** What is marked as it lies on the canvas, as one piece on each arm; without any point if nothing is. Not to be changed. */
    Path2D outline() {
        CanvasScale scale = canvas.scale();
        Outlined known = outlined.filter(of -> of.scale().equals(scale) && of.layout() == canvas.cells())
                .orElseGet(() -> new Outlined(scale, canvas.cells(), outlines()));
        outlined = Optional.of(known);
        return known.path();
    }

    /** The places of the chart that are marked; none if nothing is. */
    Set<Place> places() {
        return marked.map(of -> of.places(canvas.bench().chart(), canvas.repeats()))
                .orElse(Set.of());
    }

    /** What is marked of each round of each side: from the first of its cells to the last, since none is left out between. */
    private Path2D outlines() {
        Path2D path = new Path2D.Double();
        marked.ifPresent(of -> {
            for (Side side : of.roundCorner() ? List.of(of.side(), of.side().next()) : List.of(of.side())) {
                path.append(MarkedOutline.of(strips(of, side)), false);
            }
        });
        return path;
    }

    private List<Rectangle> strips(Selection of, Side side) {
        List<Rectangle> strips = new ArrayList<>();
        int last = Math.min(of.rounds().last(), canvas.bench().chart().rounds().size());
        for (int r = Math.max(1, of.rounds().first()); r <= last; r++) {
            List<GridCell> cells = of.stitches(canvas.bench().chart(), canvas.repeats(), r).stream()
                    .filter(stitch -> stitch.side() == side)
                    .map(stitch -> canvas.cells().grid().cellOf(side, stitch.place()))
                    .filter(cell -> canvas.placeIn(cell).isPresent())
                    .toList();
            if (!cells.isEmpty()) {
                strips.add(canvas.boundsOf(cells.get(0)).union(canvas.boundsOf(cells.get(cells.size() - 1))));
            }
        }
        return strips;
    }

    /** The marked stitches; empty if nothing is marked. */
    public Optional<Motif> motif() {
        return marked.map(of -> of.motif(canvas.bench().chart(), canvas.repeats()));
    }

    /** Whether the stitch in a cell is marked. */
    boolean holds(GridCell cell) {
        return stitchIn(cell)
                .filter(stitch -> marked.filter(of -> of.contains(stitch)).isPresent())
                .isPresent();
    }

    /** The stitch of a side that a cell shows. */
    Optional<SideStitch> stitchIn(GridCell cell) {
        return canvas.placeIn(cell).isPresent() && canvas.cells().grid().contentOf(cell) instanceof SideStitch stitch
                ? Optional.of(stitch)
                : Optional.empty();
    }
}
