/**
 * Design help: what a designer asks for and an exact computation can answer.
 *
 * <p>Everything lies in rooms: {@code picture} makes stitches of a picture, {@code stack} puts one border round another,
 * {@code corner} works corners out, {@code letter} writes along the border, {@code vary} makes others of one chart,
 * {@code symmetry} names that of a repeat, {@code effort} says how much work a border is. What several ask of a repeat they ask of
 * {@code symmetry}, and stitches that come nearest of {@code picture}.
 */
package edgewright.assist;
