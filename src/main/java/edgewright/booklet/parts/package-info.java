/**
 * The parts that every pattern has: cover, contents, words, counts, yarn.
 *
 * <p>May be used by the root of booklet and by the pages for the maker. Begin at {@link
 * edgewright.booklet.parts.PartPages}.
 */
package edgewright.booklet.parts;
