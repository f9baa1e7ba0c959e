/**
 * Techniques on paper: figures with their steps.
 *
 * <p>May be used by the booklet. Begin at {@link edgewright.booklet.technique.TechniquePages}.
 */
package edgewright.booklet.technique;
