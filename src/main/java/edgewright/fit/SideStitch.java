package edgewright.fit;

import edgewright.chart.Side;
import edgewright.chart.SidePlace;

/** A stitch on one of the four sides of a piece. */
public record SideStitch(Side side, SidePlace place) {}
