/**
 * The designer's own pages: photographs, texts and imprint of a chart, in a dialog.
 *
 * <p>May be used by the root of desk. Begin at {@link edgewright.desk.own.OwnCommands}.
 */
package edgewright.desk.own;
