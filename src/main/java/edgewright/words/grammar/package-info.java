/**
 * How patterns by other people are worded: what their words and signs are for, and the grammar of the words of one round.
 *
 * <p>Used by the tolerant reader alone. Begin at {@link edgewright.words.grammar.BodyReader}.
 */
package edgewright.words.grammar;
