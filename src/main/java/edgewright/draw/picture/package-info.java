/**
 * The pictures of a chart: one corner, the whole border, their legend.
 *
 * <p>May be used by booklet, desk and cli. Begin at {@link edgewright.draw.picture.ChartPicture}. It makes marks and
 * knows no driver.
 */
package edgewright.draw.picture;
