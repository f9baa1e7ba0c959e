/**
 * Printing set pages into a file: marks, tags, links, outline and what the file says of itself.
 *
 * <p>May be used by the root of booklet alone. Begin at {@link edgewright.booklet.press.Press}.
 */
package edgewright.booklet.press;
