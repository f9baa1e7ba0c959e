/**
 * One side of a border on a level strip, from corner to corner, as it is worked.
 *
 * <p>May be used by booklet, desk and cli. Begin at {@link edgewright.draw.side.SidePicture}.
 */
package edgewright.draw.side;
