/**
 * What comes of a piece and its counts. No window, by law.
 *
 * <p>May be used by the room of the piece window. Begin at {@link edgewright.desk.fitting.Piece} and {@link
 * edgewright.desk.fitting.PieceAnswers}.
 */
package edgewright.desk.fitting;
