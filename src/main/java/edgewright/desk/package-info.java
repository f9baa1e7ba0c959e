/**
 * The window on which a border is drawn, seen, mended and published.
 *
 * <p>May be used by main alone. It alone uses the window toolkit.
 */
package edgewright.desk;
