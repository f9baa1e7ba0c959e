/**
 * From the colours that are wanted in a repeat to the stitches that come nearest: wanted pictures and how they are read, the
 * search column by column, and the order of the yarns.
 *
 * <p>May be used by cli and the desk.
 */
package edgewright.assist.picture;
