/**
 * Reading the words of others: a text that is pasted or opened, beside it how each line was understood, and the stitches that
 * it makes.
 *
 * <p>May be used by the frame alone. Begin at {@link edgewright.desk.reading.ReadingCommands}.
 */
package edgewright.desk.reading;
