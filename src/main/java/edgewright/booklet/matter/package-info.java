/**
 * The designer's own matter on pages: photographs, texts, imprint.
 *
 * <p>May be used by the other rooms of booklet that set parts. Begin at {@link edgewright.booklet.matter.OwnPages}.
 */
package edgewright.booklet.matter;
