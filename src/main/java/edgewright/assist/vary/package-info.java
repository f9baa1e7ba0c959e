/**
 * Variations: other charts on the same repeat and corners.
 *
 * <p>May be used by cli and the desk.
 */
package edgewright.assist.vary;
