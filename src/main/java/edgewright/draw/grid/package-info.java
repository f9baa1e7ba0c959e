/**
 * How squared paper is turned, gone over and cut into parts.
 *
 * <p>Used by all pictures of a chart, and by the desk. Begin at {@link edgewright.draw.grid.Rotation}.
 */
package edgewright.draw.grid;
