/**
 * The forms that change a chart.
 *
 * <p>May be used by the frame alone.
 */
package edgewright.desk.dialogs;
