/**
 * The driver for SVG.
 *
 * <p>May be used by booklet, desk and cli. Begin at {@link edgewright.draw.svg.SvgPicture}. It sees shapes and marks,
 * never a chart.
 */
package edgewright.draw.svg;
