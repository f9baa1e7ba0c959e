/**
 * Design help: what a designer asks for and an exact computation can answer.
 *
 * <p>Everything lies in rooms: {@code picture} makes stitches of a picture, {@code stack} puts one border round another. No room
 * sees another.
 */
package edgewright.assist;
