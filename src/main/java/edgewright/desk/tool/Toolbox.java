package edgewright.desk.tool;

import edgewright.chart.Edits;
import edgewright.chart.GridCell;
import edgewright.chart.Place;
import edgewright.chart.Stitch;
import edgewright.desk.work.Listeners;
import edgewright.desk.work.Listening;
import edgewright.desk.work.Workbench;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;

/** The tool in the hand and the mirrors that are up, for one chart in work. */
public final class Toolbox {
    /** What has changed. */
    public enum Change {
        /** Another tool is in the hand. */
        TOOL,
        /** A mirror was put up or away. */
        MIRRORS,
        /** Something else would land; as often as the mouse comes to another square. */
        GHOST
    }

    private final Workbench bench;
    private final Listeners<Change> listeners = new Listeners<>();
    private final EnumSet<Mirror> up = EnumSet.noneOf(Mirror.class);
    private Tool tool = Tools.BRUSH;
    private Optional<Ghost> ghost = Optional.empty();

    public Toolbox(Workbench bench) {
        this.bench = bench;
    }

    /** Tells the listener of every change from now on, after it has happened. */
    public Listening listen(Consumer<Change> listener) {
        return listeners.add(listener);
    }

    public Tool tool() {
        return tool;
    }

    public void take(Tool taken) {
        if (tool != taken) {
            tool = taken;
            listeners.tell(Change.TOOL);
        }
    }

    /** Whether a mirror is up, be it of no use on this chart. */
    public boolean isUp(Mirror mirror) {
        return up.contains(mirror);
    }

    /** Puts a mirror up, or away again. */
    public void turn(Mirror mirror) {
        if (!up.remove(mirror)) {
            up.add(mirror);
        }
        listeners.tell(Change.MIRRORS);
    }

    /** Whether a mirror does anything on this chart. */
    public boolean isPossible(Mirror mirror) {
        return mirror.isPossible(bench.chart().shape());
    }

    /** All mirrors that are up and do something on this chart, together. */
    public Symmetry symmetry() {
        EnumSet<Mirror> possible = EnumSet.copyOf(up);
        possible.removeIf(mirror -> !isPossible(mirror));
        return new Symmetry(possible);
    }

    /** A place and its mirror images, the place last, as an edit wants them that the cursor goes along with. */
    public List<Place> underMirrors(Place place) {
        List<Place> images = new ArrayList<>(symmetry().images(bench.chart(), place));
        images.remove(place);
        images.add(place);
        return images;
    }

    /** What the tool would do if it were put down here with the chosen stitch; empty if it would work nothing. */
    public Optional<Ghost> ghostAt(Sheet sheet, GridCell cell) {
        Stitch stitch = bench.stitch();
        Set<Place> lands = symmetry().images(sheet.chart(), tool.work(sheet, List.of(cell)));
        return lands.isEmpty()
                ? Optional.empty()
                : Optional.of(Ghost.of(bench.verdict(), Edits.setStitches(sheet.chart(), lands, stitch), lands));
    }

    /** What would land just now, as it is shown. */
    public Optional<Ghost> ghost() {
        return ghost;
    }

    /** Says what would land just now, or that nothing would. */
    public void show(Optional<Ghost> shown) {
        if (!shown.equals(ghost)) {
            ghost = shown;
            listeners.tell(Change.GHOST);
        }
    }

    /** Puts the tool down: what it goes over is worked as this stitch. */
    public Stroke begin(Sheet sheet, Stitch stitch) {
        return new Stroke(bench, tool, symmetry(), sheet, stitch);
    }
}
