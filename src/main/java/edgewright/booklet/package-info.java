/**
 * The printable pattern: chart, words, counts and legend on pages.
 *
 * <p>May be used by desk and cli. It alone knows how a printed file is built.
 */
package edgewright.booklet;
