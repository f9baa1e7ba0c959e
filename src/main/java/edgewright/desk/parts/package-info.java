/**
 * The kit of the desk: forms, columns, icons, fields, and how everything looks.
 *
 * <p>May be used by every room that shows something. Begin at {@link edgewright.desk.parts.Forms} and {@link
 * edgewright.desk.parts.FormDialog}.
 */
package edgewright.desk.parts;
