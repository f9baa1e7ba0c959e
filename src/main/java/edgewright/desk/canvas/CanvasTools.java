package edgewright.desk.canvas;

import edgewright.chart.GridCell;
import edgewright.chart.GridContent.SideStitch;
import edgewright.chart.Motif;
import edgewright.chart.Stitch;
import edgewright.desk.tool.Carry;
import edgewright.desk.tool.Sheet;
import edgewright.desk.tool.Stroke;
import edgewright.desk.tool.Toolbox;
import edgewright.desk.work.Selection;
import edgewright.desk.work.Workbench;
import edgewright.texts.Messages;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * The tool in the hand at work on the canvas, for mouse and keys alike: put down in a cell, moved on, taken off or taken back.
 * One thing is done at a time, and whatever else changes the chart ends it.
 */
final class CanvasTools {
    private final ChartCanvas canvas;
    private final Workbench bench;
    private final Toolbox toolbox;
    private final Messages says;
    private Optional<Stroke> stroke = Optional.empty();
    private Optional<Carried> carried = Optional.empty();
    private Optional<GridCell> markFrom = Optional.empty();
    private Consumer<Motif.Placed> dropped = placed -> {};

    /** What is carried, and the stitch by which it was taken. */
    private record Carried(Carry carry, SideStitch grip) {}

    CanvasTools(ChartCanvas canvas) {
        this.canvas = canvas;
        bench = canvas.bench();
        toolbox = canvas.toolbox();
        says = canvas.says();
        toolbox.listen(change -> {
            if (change == Toolbox.Change.TOOL) {
                up();
            }
        });
    }

    /** Is told what did not come onto the chart of what was dropped. */
    void whenDropped(Consumer<Motif.Placed> listener) {
        dropped = listener;
    }

    /** Whether something is being worked, carried or marked. */
    boolean isBusy() {
        return isDrawing() || isCarrying() || markFrom.isPresent();
    }

    boolean isDrawing() {
        return stroke.filter(Stroke::isGoing).isPresent();
    }

    private boolean isCarrying() {
        return carried.filter(of -> of.carry().isGoing()).isPresent();
    }

    /**
     * Puts the tool down in a cell that shows a stitch.
     *
     * @param stitch that it works
     * @param copied whether what is lifted also stays where it is
     */
    void down(GridCell cell, Stitch stitch, boolean copied) {
        up();
        switch (toolbox.tool().use()) {
            case WORK -> {
                canvas.marking().clear();
                toolbox.show(Optional.empty());
                Stroke begun = toolbox.begin(sheet(), stitch);
                stroke = Optional.of(begun);
                begun.over(List.of(cell));
            }
            case MARK -> {
                if (canvas.marking().holds(cell)) {
                    lift(cell, copied);
                } else {
                    canvas.marking().clear();
                    markFrom(cell);
                }
            }
            case POINT -> canvas.marking().clear();
        }
    }

    /** Begins to mark in a cell, whatever tool is in the hand. */
    void markFrom(GridCell cell) {
        markFrom = Optional.of(cell);
        canvas.marking().extend(cell, cell);
    }

    /** Lifts what is marked, by the stitch in a cell. */
    void lift(GridCell cell, boolean copied) {
        up();
        Optional<SideStitch> grip = canvas.marking().stitchIn(cell);
        Optional<Selection> marked = canvas.marking().selection();
        if (grip.isPresent() && marked.isPresent()) {
            toolbox.show(Optional.empty());
            String name = says.text(copied ? "edit-motif-copy" : "edit-motif-move");
            carried = Optional.of(new Carried(
                    new Carry(bench, marked.get(), canvas.repeats(), toolbox.symmetry(), copied, name), grip.get()));
        }
    }

    /** Moves on over these cells to the last of them. */
    void over(List<GridCell> cells) {
        if (cells.isEmpty()) {
            return;
        }
        GridCell last = cells.get(cells.size() - 1);
        stroke.filter(Stroke::isGoing).ifPresent(going -> going.over(cells));
        markFrom.ifPresent(from -> canvas.marking().extend(from, last));
        carried.filter(of -> of.carry().isGoing())
                .ifPresent(of -> canvas.marking().stitchIn(last).ifPresent(target -> {
                    of.carry().to(of.grip(), target);
                    canvas.marking().show(of.carry().covered());
                }));
    }

    /** Takes the tool off: what it did is an edit. */
    void up() {
        stroke.ifPresent(Stroke::land);
        stroke = Optional.empty();
        markFrom = Optional.empty();
        carried.filter(of -> of.carry().isGoing()).ifPresent(of -> {
            of.carry().drop();
            dropped.accept(of.carry().placed());
        });
        carried = Optional.empty();
    }

    /** Takes back what is being done; whether there was anything to take back. */
    boolean cancel() {
        boolean going = isBusy();
        stroke.ifPresent(Stroke::leave);
        stroke = Optional.empty();
        if (markFrom.isPresent()) {
            markFrom = Optional.empty();
            canvas.marking().clear();
        }
        carried.filter(of -> of.carry().isGoing()).ifPresent(of -> {
            of.carry().leave();
            canvas.marking().show(of.carry().from());
        });
        carried = Optional.empty();
        return going;
    }

    /** The cells lie otherwise now: what was begun in them cannot go on. */
    void forget() {
        markFrom = Optional.empty();
    }

    /** Puts the tool down where the cursor stands, or takes it off again. */
    void toggleAtCursor() {
        if (isBusy()) {
            up();
        } else {
            down(canvas.standing(), bench.stitch(), false);
        }
    }

    /** Lifts what is marked by the stitch at the cursor, to be carried by the arrow keys; or drops what is carried. */
    void liftAtCursor() {
        if (isBusy()) {
            up();
        } else {
            lift(canvas.standing(), false);
        }
    }

    private Sheet sheet() {
        return new Sheet(canvas.cells(), bench.chart());
    }
}
