package edgewright.desk;

import edgewright.chart.GridCell;
import edgewright.chart.GridContent.SideStitch;
import edgewright.chart.Motif;
import edgewright.chart.Place;
import edgewright.chart.Side;
import edgewright.chart.SidePlace;
import java.awt.Rectangle;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What is marked on the chart: a rectangle of rounds and fabric columns on one limb. */
final class CanvasMarking {
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

    private final ChartCanvas canvas;
    private final List<Runnable> listeners = new ArrayList<>();
    private Optional<Corners> corners = Optional.empty();

    CanvasMarking(ChartCanvas canvas) {
        this.canvas = canvas;
    }

    /** Is run after every change of what is marked. */
    void listen(Runnable listener) {
        listeners.add(listener);
    }

    boolean isEmpty() {
        return corners.isEmpty();
    }

    /**
     * Marks from one cell to another, both included; nothing happens if they do not both show a stitch of the same side. If
     * something is marked already, it is marked from where that began.
     */
    void extend(GridCell from, GridCell to) {
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

    void clear() {
        mark(Optional.empty());
    }

    private void mark(Optional<Corners> marked) {
        if (!marked.equals(corners)) {
            corners = marked;
            canvas.repaint();
            listeners.forEach(Runnable::run);
        }
    }

    /** The stitches that are marked, each as often as it is drawn in the rectangle. */
    private List<GridCell> cells(int round) {
        Corners of = corners.orElseThrow();
        List<GridCell> cells = new ArrayList<>();
        for (int column = of.firstColumn(); column <= of.lastColumn(); column++) {
            if (column + round >= 1) {
                GridCell cell = canvas.cells().grid().cellOf(of.side(), new SidePlace(round, column + round));
                if (canvas.placeIn(cell).isPresent()) {
                    cells.add(cell);
                }
            }
        }
        return cells;
    }

    /** The places of the chart that are marked; none if nothing is. */
    Set<Place> places() {
        Set<Place> places = new LinkedHashSet<>();
        corners.ifPresent(of -> {
            for (int r = of.firstRound(); r <= of.lastRound(); r++) {
                cells(r).forEach(cell -> canvas.placeIn(cell).ifPresent(places::add));
            }
        });
        return places;
    }

    /** What is marked of each round, on the canvas. */
    List<Rectangle> outlines() {
        List<Rectangle> outlines = new ArrayList<>();
        corners.ifPresent(of -> {
            for (int r = of.firstRound(); r <= of.lastRound(); r++) {
                List<GridCell> cells = cells(r);
                if (!cells.isEmpty()) {
                    outlines.add(canvas.boundsOf(cells.get(0)).union(canvas.boundsOf(cells.get(cells.size() - 1))));
                }
            }
        });
        return outlines;
    }

    /** The marked stitches; empty if nothing is marked. */
    Optional<Motif> motif() {
        return corners.map(of -> Motif.of(canvas.bench().chart(), canvas.cells().repeats(), of.from(), of.to()));
    }

    /** The stitch of a side that a cell shows. */
    Optional<SideStitch> stitchIn(GridCell cell) {
        return canvas.placeIn(cell).isPresent() && canvas.cells().grid().contentOf(cell) instanceof SideStitch stitch
                ? Optional.of(stitch)
                : Optional.empty();
    }
}
