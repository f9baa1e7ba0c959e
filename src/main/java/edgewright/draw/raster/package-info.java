/**
 * The driver for pictures in pixels and for windows; of all drawing it alone paints with the graphics of the JDK.
 *
 * <p>May be used by desk and cli. Begin at {@link edgewright.draw.raster.RasterPicture}. It sees shapes and marks, never
 * a chart.
 */
package edgewright.draw.raster;
