/**
 * The window in which a border is made to fit a piece.
 *
 * <p>May be used by the frame alone. Begin at {@link edgewright.desk.piece.PieceWindow}; what it shows is found in
 * {@code edgewright.desk.fitting}.
 */
package edgewright.desk.piece;
