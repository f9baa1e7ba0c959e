/**
 * The chart as it is painted for the canvas: its picture, the scale at which it lies, the tiles in which it is kept, and what
 * is read beside it. It knows no mouse, no keys and no window.
 *
 * <p>May be used by the canvas alone. Begin at {@link edgewright.desk.picture.CanvasPicture}.
 */
package edgewright.desk.picture;
