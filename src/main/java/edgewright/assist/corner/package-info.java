/**
 * Corners for a repeat: the tile carried on to the diagonal in every way, what the eye sees of it, and the best of them.
 *
 * <p>May be used by cli and the desk.
 */
package edgewright.assist.corner;
