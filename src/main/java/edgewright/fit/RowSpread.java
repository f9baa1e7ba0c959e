package edgewright.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * So many stitches picked up evenly along so many rows, or stitches, of an edge. Any two rows differ by at most one, and
 * after each row the stitches so far are those of an even share, to the nearest whole number.
 *
 * @param rows 1 or more
 * @param stitches 0 or more
 */
public record RowSpread(int rows, int stitches) {
    /** Neighbouring rows with the same number of stitches in each; a row with none is missed. */
    public record Run(int rows, int stitchesInEach) {}

    public RowSpread {
        if (rows < 1 || stitches < 0) {
            throw new IllegalArgumentException(stitches + " stitches along " + rows + " rows");
        }
    }

    /** The stitches picked up by the end of this row; 0 for row 0. */
    public int upTo(int row) {
        return (int) ((2L * row * stitches + rows) / (2L * rows));
    }

    /** The stitches picked up in this row, counted from 1. */
    public int inRow(int row) {
        return upTo(row) - upTo(row - 1);
    }

    /** The rows in order, those alike side by side taken together. */
    public List<Run> runs() {
        List<Run> runs = new ArrayList<>();
        int first = 1;
        for (int row = 2; row <= rows + 1; row++) {
            if (row > rows || inRow(row) != inRow(first)) {
                runs.add(new Run(row - first, inRow(first)));
                first = row;
            }
        }
        return List.copyOf(runs);
    }

    /** The simple ratio that the spread keeps exactly, if there is one of at most {@link Ratio#MOST_ROWS} rows. */
    public Optional<Ratio> exactly() {
        return stitches == 0
                ? Optional.empty()
                : Optional.of(new Ratio(stitches, rows)).filter(ratio -> ratio.rows() <= Ratio.MOST_ROWS);
    }
}
