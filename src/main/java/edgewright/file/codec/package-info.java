/**
 * The codecs: one for each record of a chart file, and the kit that they are made of. They make a chart of a JSON text, or all
 * that is wrong with it, and the text of a chart; no file is touched here.
 *
 * <p>May be used by file.
 */
package edgewright.file.codec;
