package edgewright.desk.tool;

import edgewright.chart.Edits;
import edgewright.chart.GridCell;
import edgewright.chart.Place;
import edgewright.chart.Stitch;
import edgewright.desk.work.Transaction;
import edgewright.desk.work.Workbench;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** A tool on its way over the chart, from where it is put down to where it is taken off: one edit, under the mirrors. */
public final class Stroke {
    private final Tool tool;
    private final Stitch stitch;
    private final Symmetry symmetry;
    private final Sheet sheet;
    private final Transaction transaction;
    private final List<GridCell> way = new ArrayList<>();

    Stroke(Workbench bench, Tool tool, Symmetry symmetry, Sheet sheet, Stitch stitch) {
        this.tool = tool;
        this.stitch = stitch;
        this.symmetry = symmetry;
        this.sheet = sheet;
        transaction = bench.beginDrawing(stitch);
    }

    /** Goes on over these cells. Those that show no stitch of the chart are passed over. */
    public void over(List<GridCell> cells) {
        List<GridCell> stitches =
                cells.stream().filter(cell -> sheet.placeIn(cell).isPresent()).toList();
        if (!isGoing() || stitches.isEmpty()) {
            return;
        }
        way.addAll(stitches);
        Place last = sheet.placeIn(way.get(way.size() - 1)).orElseThrow();
        Set<Place> worked = symmetry.images(sheet.chart(), tool.work(sheet, way));
        transaction.preview(before -> Edits.setStitches(before, worked, stitch), last);
    }

    /** Whether it can go on. */
    public boolean isGoing() {
        return transaction.isGoing();
    }

    /** Ends it as one edit, or as none if it changed nothing. */
    public void land() {
        transaction.commit();
    }

    /** Ends it without a trace. */
    public void leave() {
        transaction.cancel();
    }
}
