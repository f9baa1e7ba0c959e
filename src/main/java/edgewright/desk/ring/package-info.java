/**
 * The findings on the chart of the desk: those of neighbouring squares gathered into one ring with one number, each number where
 * it lies on nothing else. Knows no window.
 *
 * <p>Begin at {@link edgewright.desk.ring.RingPlan}.
 */
package edgewright.desk.ring;
