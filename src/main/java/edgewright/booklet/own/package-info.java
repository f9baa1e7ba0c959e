/**
 * What a designer adds to a pattern in files of their own: photographs and the imprint, read, judged and made ready for print.
 * Whatever is wrong with a file comes back as a {@link edgewright.booklet.own.OwnFault}.
 *
 * <p>May be used by the other rooms of booklet, by desk and cli. Begin at {@link edgewright.booklet.own.OwnFiles}.
 */
package edgewright.booklet.own;
