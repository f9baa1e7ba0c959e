package edgewright.fit;

import edgewright.chart.Measures;
import edgewright.chart.Swatch;
import org.apache.commons.numbers.core.ArithmeticUtils;

/**
 * So many stitches in so many rows of an edge, for instance 3 in every 4 rows; always in lowest terms.
 *
 * <p>Published ratios: 1 to a row of the shortest stitch, 2 and 3 to rows of taller ones
 * (http://carol-mycrochetpage.blogspot.com/2009/09/picot-edging.html); 3 in 4 rows
 * (https://issuhub.com/view/index/20231?pageIndex=65).
 *
 * @param stitches 1 or more
 * @param rows 1 or more
 */
public record Ratio(int stitches, int rows) {
    /** The most rows that a maker is asked to keep in mind. */
    public static final int MOST_ROWS = 8;

    public Ratio {
        if (stitches < 1 || rows < 1) {
            throw new IllegalArgumentException(stitches + " stitches in " + rows + " rows: expected 1 or more of both");
        }
        int common = ArithmeticUtils.gcd(stitches, rows);
        stitches /= common;
        rows /= common;
    }

    /** The ratio of at most {@link #MOST_ROWS} rows that is nearest to so many stitches a row; the one of fewer rows if two are. */
    public static Ratio nearest(double stitchesARow) {
        Measures.requirePositive(stitchesARow, "stitches a row");
        Ratio nearest = null;
        for (int rows = 1; rows <= MOST_ROWS; rows++) {
            Ratio ratio = new Ratio(Math.max(1, (int) Math.round(stitchesARow * rows)), rows);
            if (nearest == null
                    || Math.abs(ratio.stitchesARow() - stitchesARow)
                            < Math.abs(nearest.stitchesARow() - stitchesARow)) {
                nearest = ratio;
            }
        }
        return nearest;
    }

    /**
     * The ratio with which a border lies flat along the row ends of a piece.
     *
     * @param pieceRowsIn10Cm the rows of the piece in ten centimetres
     */
    public static Ratio alongRows(double pieceRowsIn10Cm, Swatch border) {
        Measures.requirePositive(pieceRowsIn10Cm, "rows in 10 cm");
        return nearest(border.stitchesIn10Cm() / pieceRowsIn10Cm);
    }

    /** How many stitches fall to one row. */
    public double stitchesARow() {
        return (double) stitches / rows;
    }
}
