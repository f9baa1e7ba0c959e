package edgewright.desk.panes;

import edgewright.chart.Chart;
import java.util.function.UnaryOperator;

/**
 * What helps: one remedy, or the remedies of all findings of a rule.
 *
 * @param name of the edit, for people
 * @param changedCells how many cells of the fabric then show another colour
 */
record Help(String name, UnaryOperator<Chart> edit, int changedCells) {}
