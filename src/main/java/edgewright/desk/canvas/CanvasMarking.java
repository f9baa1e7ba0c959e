package edgewright.desk.canvas;

import edgewright.chart.GridCell;
import edgewright.chart.GridContent.SideStitch;
import edgewright.chart.Motif;
import edgewright.chart.Place;
import edgewright.chart.Side;
import edgewright.chart.SidePlace;
import edgewright.draw.picture.CornerLayout;
import java.awt.Rectangle;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/** What is marked on the chart: a rectangle of rounds and fabric columns on one arm. */
public final class CanvasMarking {
    /**
     * Two opposite corners of the rectangle.
     *
     * @param from where marking began
     */
    private record Corners(Side side, SidePlace from, SidePlace to) {
        int firstRound() {
            return Math.min(from.round(), to.round());
        }

        int lastRound() {
            return Math.max(from.round(), to.round());
        }

        int firstColumn() {
            return Math.min(from.fabricColumn(), to.fabricColumn());
        }

        int lastColumn() {
            return Math.max(from.fabricColumn(), to.fabricColumn());
        }
    }

    /** Worked out once for each way in which the cells lie; whoever paints asks again and again. */
    private record Outlined(CanvasScale scale, CornerLayout layout, Path2D path) {}

    /** How far its line reaches beyond what is marked. */
    private static final int LINE_PX = 3;

    private final ChartCanvas canvas;
    private final List<Runnable> listeners = new ArrayList<>();
    private Optional<Corners> corners = Optional.empty();
    private Optional<Outlined> outlined = Optional.empty();

    public CanvasMarking(ChartCanvas canvas) {
        this.canvas = canvas;
    }

    /** Is run after every change of what is marked. */
    void listen(Runnable listener) {
        listeners.add(listener);
    }

    public boolean isEmpty() {
        return corners.isEmpty();
    }

    /**
     * Marks from one cell to another, both included; nothing happens if they do not both show a stitch of the same side. If
     * something is marked already, it is marked from where that began.
     */
    public void extend(GridCell from, GridCell to) {
        Optional<SideStitch> first = stitchIn(from);
        Optional<SideStitch> last = stitchIn(to);
        if (last.isEmpty() || first.isEmpty()) {
            return;
        }
        SideStitch end = last.get();
        SideStitch begin =
                corners.map(old -> new SideStitch(old.side(), old.from())).orElse(first.get());
        if (begin.side() == end.side()) {
            mark(Optional.of(new Corners(end.side(), begin.place(), end.place())));
        }
    }

    /** Marks where a motif has come to lie. */
    void show(Side side, SidePlace first, Motif motif) {
        int round = first.round() + motif.rounds().size() - 1;
        int stitch = Math.max(1, first.fabricColumn() + motif.columns() - 1 + round);
        mark(Optional.of(new Corners(side, first, new SidePlace(round, stitch))));
    }

    public void clear() {
        mark(Optional.empty());
    }

    private void mark(Optional<Corners> marked) {
        if (!marked.equals(corners)) {
            repaintOutline();
            corners = marked;
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

    /** What is marked as it lies on the canvas, as one piece; without any point if nothing is. Not to be changed. */
    Path2D outline() {
        CanvasScale scale = canvas.scale();
        Outlined known = outlined.filter(of -> of.scale().equals(scale) && of.layout() == canvas.cells())
                .orElseGet(() -> new Outlined(scale, canvas.cells(), MarkedOutline.of(outlines())));
        outlined = Optional.of(known);
        return known.path();
    }

    /** The cell of a column in a round, if it shows a stitch. */
    private Optional<GridCell> cell(int round, int column) {
        return column + round < 1
                ? Optional.empty()
                : Optional.of(canvas.cells()
                                .grid()
                                .cellOf(corners.orElseThrow().side(), new SidePlace(round, column + round)))
                        .filter(cell -> canvas.placeIn(cell).isPresent());
    }

    /** The places of the chart that are marked; none if nothing is. */
    Set<Place> places() {
        Set<Place> places = new LinkedHashSet<>();
        corners.ifPresent(of -> {
            for (int r = of.firstRound(); r <= of.lastRound(); r++) {
                for (int column = of.firstColumn(); column <= of.lastColumn(); column++) {
                    cell(r, column).flatMap(canvas::placeIn).ifPresent(places::add);
                }
            }
        });
        return places;
    }

    /** What is marked of each round, on the canvas: from the first of its cells to the last, since none is left out between. */
    private List<Rectangle> outlines() {
        List<Rectangle> outlines = new ArrayList<>();
        corners.ifPresent(of -> {
            for (int r = of.firstRound(); r <= of.lastRound(); r++) {
                int round = r;
                Optional<GridCell> first = firstCell(round, IntStream.rangeClosed(of.firstColumn(), of.lastColumn()));
                Optional<GridCell> last = firstCell(
                        round,
                        IntStream.rangeClosed(of.firstColumn(), of.lastColumn())
                                .map(column -> of.firstColumn() + of.lastColumn() - column));
                first.ifPresent(cell -> outlines.add(canvas.boundsOf(cell).union(canvas.boundsOf(last.orElseThrow()))));
            }
        });
        return outlines;
    }

    private Optional<GridCell> firstCell(int round, IntStream columns) {
        return columns.mapToObj(column -> cell(round, column))
                .flatMap(Optional::stream)
                .findFirst();
    }

    /** The marked stitches; empty if nothing is marked. */
    public Optional<Motif> motif() {
        return corners.map(
                of -> Motif.of(canvas.bench().chart(), of.side(), canvas.cells().repeats(), of.from(), of.to()));
    }

    /** The stitch of a side that a cell shows. */
    Optional<SideStitch> stitchIn(GridCell cell) {
        return canvas.placeIn(cell).isPresent() && canvas.cells().grid().contentOf(cell) instanceof SideStitch stitch
                ? Optional.of(stitch)
                : Optional.empty();
    }
}
