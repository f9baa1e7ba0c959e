/**
 * A chart as an accessible table: rows are rounds, columns the stitches of the side that is drawn, and each cell says what it
 * is. For the canvas, which is heard through it.
 */
package edgewright.desk.spoken;
