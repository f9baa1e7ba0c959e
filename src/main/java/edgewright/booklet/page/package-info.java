/**
 * Setting pages: faces, lines, tables, forms, and where pages end.
 *
 * <p>May be used by the other rooms of booklet. Begin at {@link edgewright.booklet.page.TextSetter} for text and at
 * {@link edgewright.booklet.page.Paginator} for page ends. Points of 1/72 inch, y downwards.
 */
package edgewright.booklet.page;
