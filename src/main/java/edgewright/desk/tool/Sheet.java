package edgewright.desk.tool;

import edgewright.chart.Chart;
import edgewright.chart.GridCell;
import edgewright.chart.Place;
import edgewright.draw.picture.CellLayout;
import edgewright.draw.picture.DrawnCell;
import java.util.Optional;

/** A chart as it is drawn, under the hand: its cells and the stitches in them. */
public record Sheet(CellLayout layout, Chart chart) {
    /** The stitch of the chart in a cell; empty for corner chains, the base round, missing stitches and bare paper. */
    public Optional<Place> placeIn(GridCell cell) {
        return layout.stitchIn(cell)
                .map(DrawnCell.OfStitch::place)
                .filter(place -> place.round() >= 1 && chart.has(place));
    }
}
