package edgewright.draw.picture;

import edgewright.chart.GridCell;
import edgewright.chart.Place;
import edgewright.chart.Side;

/** What a picture shows in a cell of the squared paper. */
public sealed interface DrawnCell {
    /** The cell. */
    GridCell cell();

    /** The side of the piece in whose frame its marks are made; corner chains belong to the side that ends in them. */
    Side side();

    /** The round; 0 is the base round. */
    int round();

    /**
     * The cell of a stitch. The repeat is drawn on more than one side and more than once, so one place of the chart can be drawn
     * in many cells; whether the chart has a stitch at the place is for the chart to say.
     *
     * @param occurrence which working of the repeat on that side, from 1 in working order; 1 for the other sections
     */
    record OfStitch(GridCell cell, Side side, Place place, int occurrence) implements DrawnCell {
        @Override
        public int round() {
            return place.round();
        }
    }

    /** The cell of the corner chains of a round. */
    record OfCorner(GridCell cell, Side side, int round) implements DrawnCell {}
}
