package edgewright.words.said;

import edgewright.chart.Place;
import edgewright.chart.Side;
import edgewright.words.tree.StretchPlace;
import java.util.Objects;

/**
 * One stitch of a side and the words that say it.
 *
 * @param number of the stitch on its side, counted from 1 from the corner just turned
 * @param place in the chart
 * @param told where the words of the side tell of it
 * @param piece the smallest piece that says it, of the words in which its own round is told or said to be as another
 */
public record SaidStitch(Side side, int number, Place place, StretchPlace told, SaidRounds.Piece piece) {
    public SaidStitch {
        Objects.requireNonNull(side);
        Objects.requireNonNull(place);
        Objects.requireNonNull(told);
        Objects.requireNonNull(piece);
    }
}
