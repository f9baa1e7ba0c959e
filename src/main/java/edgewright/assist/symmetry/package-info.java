/**
 * The repeat of a chart as a tile that goes on along the side: what it shows, and its symmetry.
 *
 * <p>May be used by the rooms of assist and by the desk.
 */
package edgewright.assist.symmetry;
