/**
 * The reader: from text to instructions, or to the place where reading stopped.
 *
 * <p>May be used by proof alone; never sees the writer. Begin at {@link edgewright.words.read.PatternReader}.
 */
package edgewright.words.read;
