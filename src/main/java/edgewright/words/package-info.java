/**
 * Written instructions as a tree, the terms of the trade as resources, the writer that turns a chart into
 * instructions and text, and the reader that turns text back into instructions.
 *
 * <p>May be used by hands, proof, booklet, desk and cli.
 */
package edgewright.words;
