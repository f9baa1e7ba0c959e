/**
 * The chart as one list of marks in millimetres, and a driver for each kind of picture made from it.
 *
 * <p>Rooms: {@code paint} holds shapes and the surface they are drawn on, {@code marks} what a drawing says, {@code
 * picture} the pictures that can be made of a chart, {@code svg} and {@code raster} the drivers. A mark says what it
 * means (a long stitch at this place, in this yarn) and carries the few shapes that show it: filled paths, stroked paths
 * and text. A driver knows only those shapes, so nothing is drawn twice in two ways, and a driver that cannot draw one
 * of them does not compile.
 */
package edgewright.draw;
