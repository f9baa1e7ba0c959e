/**
 * Reads and writes charts: answers with a chart or with problems that name line, member and what was expected, and
 * never loses the file that was there before.
 *
 * <p>May be used by desk and cli.
 */
package edgewright.file;
