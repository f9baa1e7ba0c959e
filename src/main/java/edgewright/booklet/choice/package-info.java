/**
 * What the person who publishes a pattern chooses, and how the work is followed.
 *
 * <p>May be used by the other rooms of booklet, by desk and cli. Begin at {@link
 * edgewright.booklet.choice.BookletOptions}.
 */
package edgewright.booklet.choice;
