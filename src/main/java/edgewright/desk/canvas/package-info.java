/**
 * The chart as it is drawn on the desk, with the cursor, the mouse and the keys that work on it.
 *
 * <p>May be used by the frame alone. Begin at {@link edgewright.desk.canvas.ChartCanvas}.
 */
package edgewright.desk.canvas;
