package edgewright.desk.spoken;

import edgewright.chart.GridCell;
import edgewright.chart.Place;
import edgewright.check.Verdict;
import edgewright.desk.work.Selection;
import edgewright.draw.picture.CellLayout;
import edgewright.texts.Language;
import java.awt.Rectangle;
import java.util.Optional;
import javax.swing.JComponent;

/** What the spoken table asks of whatever draws the chart. */
public interface SpokenChart {
    /** In which it is spoken. */
    Language language();

    /** The chart, and what was found in it. */
    Verdict verdict();

    /** Which cells are drawn, and what lies in them. */
    CellLayout layout();

    /** How often the repeat is drawn on each side. */
    int repeats();

    /** The component on which the chart is drawn. */
    JComponent drawnOn();

    /** The stitch of the chart that is drawn in a cell; empty for corner chains and missing stitches. */
    Optional<Place> placeIn(GridCell cell);

    /** Where a cell lies on the component. */
    Rectangle boundsOf(GridCell cell);

    /** The cell in which the cursor is drawn. */
    GridCell standing();

    /** Moves the cursor into a cell that shows a stitch, and shows it. */
    void standIn(GridCell cell);

    /** What is marked; empty if nothing is. */
    Optional<Selection> marked();

    /** Marks nothing any more. */
    void unmark();
}
