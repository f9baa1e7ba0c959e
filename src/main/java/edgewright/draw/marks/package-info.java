/**
 * What a drawing says, mark by mark, from the lowest to the topmost.
 *
 * <p>May be used by pictures, drivers, booklet, desk and cli. Begin at {@link edgewright.draw.marks.Drawing}.
 */
package edgewright.draw.marks;
