package edgewright.fit;

import edgewright.chart.Measures;
import edgewright.chart.Swatch;

/** One edge of a bare piece, along which the stitches of the base round are picked up. */
public sealed interface Edge {
    /** The stitches that lie along it without stretching or gathering it, to the nearest whole number. */
    int natural();

    /** An edge that was measured. */
    record OfLength(double lengthMm, Swatch border) implements Edge {
        public OfLength {
            Measures.requirePositive(lengthMm, "millimetres");
        }

        @Override
        public int natural() {
            return (int) Math.round(lengthMm / border.stitchMm());
        }
    }

    /** An edge of stitches, such as the last row; one is picked up in each. */
    record OfStitches(int stitches) implements Edge {
        public OfStitches {
            requireSome(stitches);
        }

        @Override
        public int natural() {
            return stitches;
        }
    }

    /** An edge of row ends. */
    record OfRows(int rows, Ratio ratio) implements Edge {
        public OfRows {
            requireSome(rows);
        }

        @Override
        public int natural() {
            return (int) Math.round(rows * ratio.stitchesARow());
        }
    }

    private static void requireSome(int number) {
        if (number < 1) {
            throw new IllegalArgumentException(number + " along an edge: expected 1 or more");
        }
    }
}
