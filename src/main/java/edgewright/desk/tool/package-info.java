/**
 * What the hand works with on the chart: tools, mirrors, and motifs being carried. Functions from cells and places to stitches;
 * no window, by law.
 *
 * <p>May be used by the rooms of the desk that show a chart or offer tools. Begin at {@link edgewright.desk.tool.Toolbox}.
 */
package edgewright.desk.tool;
