/**
 * Publishing, pictures, words in files, and the proof of the words.
 *
 * <p>May be used by the frame alone. Begin at {@link edgewright.desk.output.PublishCommands} and {@link
 * edgewright.desk.output.ProofCommands}.
 */
package edgewright.desk.output;
