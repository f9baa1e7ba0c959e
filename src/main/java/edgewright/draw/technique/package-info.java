/**
 * Figures that show how something is worked: yarn, hook and needle, drawn from one small set of shapes.
 *
 * <p>May be used by booklet and cli. Begin at {@link edgewright.draw.technique.TechniqueFigure}. A figure is described in
 * stitches along the way of working and away from the piece, so that the one for the other hand is its mirror image; numbers
 * are never mirrored.
 */
package edgewright.draw.technique;
