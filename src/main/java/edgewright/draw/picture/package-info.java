/**
 * The pictures of a chart: one corner, the whole border, their legend.
 *
 * <p>May be used by booklet, desk and cli. Begin at {@link edgewright.draw.picture.ChartPicture}. Where cells lie is
 * for {@link edgewright.draw.picture.CellLayout} to say, whatever part of a border is drawn. It makes marks and knows no driver.
 */
package edgewright.draw.picture;
