/**
 * What the trade calls stitches and what is done with them, in the UK and US terms of a language, from resources.
 *
 * <p>May be used by the other rooms of words, and by the booklet for its key. Begin at {@link
 * edgewright.words.terms.TradeTerms}.
 */
package edgewright.words.terms;
