/**
 * A written pattern as text in parts, and its printers: plain text, Markdown and HTML.
 *
 * <p>May be used by whoever writes, reads or prints patterns. Begin at {@link edgewright.words.page.PatternText}. How a
 * part came to its words is no concern of this room.
 */
package edgewright.words.page;
