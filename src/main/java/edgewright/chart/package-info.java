/**
 * The design of a border as immutable values: chart, round, section, stitch, place and yarn, the geometry of
 * sides, corners and fabric columns, and edits as functions from chart to chart.
 *
 * <p>Every other package may use it. It uses the JDK alone and nothing that paints.
 */
package edgewright.chart;
