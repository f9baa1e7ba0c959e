package edgewright.assist.effort;

/**
 * The work of one round.
 *
 * @param round its number
 * @param stitches on all four sides, corner chains not counted
 * @param longs how many of them drop to a round below
 * @param longestRun the most stitches of one kind side by side that a maker has to count on a side; 0 in a round of one kind, which
 *     needs no counting
 * @param changes how often one kind of stitch follows another in one repeat, counted around its ends: the
 *     rhythm a maker has to keep; 0 where the repeat is of one kind
 */
public record RoundEffort(int round, long stitches, long longs, int longestRun, int changes) {}
