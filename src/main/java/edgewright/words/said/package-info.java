/**
 * Which piece of a written pattern says which stitches.
 *
 * <p>The writer marks what it places into a message, and takes the marks out of the text that comes of it; so nothing is ever
 * searched for in a text. Used by the writer and the desk. Begin at {@link edgewright.words.said.SaidPattern}.
 */
package edgewright.words.said;
