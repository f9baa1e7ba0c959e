/**
 * The chart on paper: on one sheet, on several, as a poster, with its legend.
 *
 * <p>May be used by the root of booklet. Begin at {@link edgewright.booklet.sheets.ChartSheets}.
 */
package edgewright.booklet.sheets;
