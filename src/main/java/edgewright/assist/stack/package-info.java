/**
 * Borders outside borders: one chart worked round another on the same piece, and which borders go round a piece in which order.
 *
 * <p>May be used by cli and the desk.
 */
package edgewright.assist.stack;
