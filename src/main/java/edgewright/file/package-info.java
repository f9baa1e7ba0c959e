/**
 * Reads and writes charts: answers with a chart or with problems that name line, member and what was expected, and
 * never loses the file that was there before. Keeps unsaved work in journals, and sees what others do with a file.
 *
 * <p>May be used by desk and cli.
 */
package edgewright.file;
