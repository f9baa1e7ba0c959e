/**
 * The chart as one list of marks in millimetres, and a driver for each kind of picture made from it.
 *
 * <p>May be used by booklet, desk and cli. Only the raster driver paints with the JDK's graphics.
 */
package edgewright.draw;
