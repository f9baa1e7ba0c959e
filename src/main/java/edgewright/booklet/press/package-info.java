/**
 * Printing set pages into a file: marks, tags, links, outline and what the file says of itself. The one room that knows PDF.
 *
 * <p>May be used by the root of booklet alone. Begin at {@link edgewright.booklet.press.PrintedFile}.
 */
package edgewright.booklet.press;
