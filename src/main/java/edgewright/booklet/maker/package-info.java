/**
 * The pages that guide a maker through the work: round guide, worksheet, sizes.
 *
 * <p>May be used by the root of booklet. Begin at {@link edgewright.booklet.maker.GuidePages} and {@link
 * edgewright.booklet.maker.WorksheetPages}.
 */
package edgewright.booklet.maker;
