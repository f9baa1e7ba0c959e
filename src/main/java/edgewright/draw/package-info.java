/**
 * The chart as one list of marks in millimetres, and a driver for each kind of picture made from it.
 *
 * <p>May be used by booklet, desk and cli. A mark says what it means (a long stitch at this place, in this yarn) and carries
 * the few shapes that show it: filled paths, stroked paths and text. A driver is a {@link edgewright.draw.Surface} and knows
 * only those shapes, so nothing is drawn twice in two ways, and a driver that cannot draw one of them does not compile. Only
 * the raster driver paints with the JDK's graphics.
 */
package edgewright.draw;
