/**
 * The printable pattern: chart, key, words, counts and worksheets on pages.
 *
 * <p>May be used by desk and cli, through {@link edgewright.booklet.Booklet}, and through {@link
 * edgewright.booklet.WordsFormat} for the words in files of their own. From chart to paper in three steps: {@link
 * edgewright.booklet.PatternPages} and the rooms {@code sheets}, {@code parts} and {@code maker} set everything into
 * slices of the column that are never cut; the room {@code page} fills pages with them; the room {@code press} prints
 * pages, and with them the structure tree, the outline and the links. Only the last step knows PDF.
 */
package edgewright.booklet;
