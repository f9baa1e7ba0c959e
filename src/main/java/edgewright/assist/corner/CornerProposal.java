package edgewright.assist.corner;

import edgewright.chart.Chart;

/**
 * A chart whose corners were worked out anew.
 *
 * @param shift by how many places along the side every stitch of the repeat was moved on, in every round; 0 or more
 * @param score how good the corner looks, at most 100; see {@link CornerProposals}
 */
public record CornerProposal(Chart chart, CornerKind kind, int shift, double score) {}
