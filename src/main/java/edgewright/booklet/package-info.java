/**
 * The printable pattern: chart, words, counts and legend on pages.
 *
 * <p>May be used by desk and cli, through {@link edgewright.booklet.Booklet}, and through {@link
 * edgewright.booklet.WordsFormat} for the words in files of their own. It alone knows how a printed file is built.
 *
 * <p>From chart to paper in three steps. {@link edgewright.booklet.PatternPages} and the classes it calls set everything into
 * strips, slices of the column that are never cut, each with what it is to a reader that does not see it. {@link
 * edgewright.booklet.Paginator} fills pages with strips. {@link edgewright.booklet.Press} prints pages, and with them the
 * structure tree, the outline and the links. Only the last step, and the faces by which text is measured, know PDF.
 */
package edgewright.booklet;
