/**
 * The instructions of a pattern as a tree of values, with no sentence in it.
 *
 * <p>May be used by the writer, the reader, hands and proof. Begin at {@link edgewright.words.tree.Instructions}. All
 * counts are of stitches, corner chains not counted.
 */
package edgewright.words.tree;
