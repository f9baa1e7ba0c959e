/**
 * What stands around the chart: tools, findings, rounds, yarns, words, status.
 *
 * <p>May be used by the frame alone. Panes do not see each other; they meet on the bench.
 */
package edgewright.desk.panes;
