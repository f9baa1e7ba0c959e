/**
 * The writer: from a chart to instructions, and from instructions to text.
 *
 * <p>May be used by proof, booklet, desk and cli; never by the reader. Begin at {@link
 * edgewright.words.write.PatternWriter}.
 */
package edgewright.words.write;
