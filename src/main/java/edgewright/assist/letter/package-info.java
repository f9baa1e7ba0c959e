/**
 * Lettering: a line of text along the border.
 *
 * <p>May be used by cli and the desk.
 */
package edgewright.assist.letter;
