/**
 * The tolerant reader: patterns that other people wrote in English, in UK or US terms, read into the tree.
 *
 * <p>It stands beside the strict reader of our own text, which stays the first try. It guesses at nothing: each line of the
 * text is accounted for, and what is not understood is shown with its place. Begin at {@link
 * edgewright.words.others.OthersReader}.
 */
package edgewright.words.others;
