/**
 * Texts of the designer's own: paragraphs and lists, with emphasis and links. The one room that knows the marks in which they
 * are typed.
 *
 * <p>May be used by whoever prints patterns. Begin at {@link edgewright.words.own.OwnText}.
 */
package edgewright.words.own;
