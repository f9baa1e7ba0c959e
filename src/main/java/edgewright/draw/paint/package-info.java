/**
 * Shapes, colours and measures of drawings, and the surface that every driver is.
 *
 * <p>May be used by every room of draw, by the booklet and the desk. Begin at {@link edgewright.draw.paint.Shape} and
 * {@link edgewright.draw.paint.Surface}. Measures are millimetres on the paper, x to the right and y down.
 */
package edgewright.draw.paint;
