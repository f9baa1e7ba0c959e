/**
 * What can be wrong with a file, as data, and the sentence for it.
 *
 * <p>May be used by the other rooms of file, and by desk and cli.
 */
package edgewright.file.fault;
