package edgewright.fit;

import edgewright.chart.Measures;
import edgewright.chart.PerSide;
import edgewright.chart.Swatch;

/**
 * How large a piece is with its border on, by a swatch. Lengths are in millimetres; nothing is rounded.
 *
 * @param acrossMm the piece without these rounds, along top and bottom
 * @param downMm the piece without these rounds, along left and right
 * @param borderMm the width of the border
 * @param edgeToSpareMm how much longer than its place the outermost round is along each side; below 0 where it is shorter.
 *     A side grows by two stitches a round and its place by the height of two rounds, so this is above 0 where stitches are
 *     wider than rounds are high. The edge then ruffles, otherwise the corners cup; blocking evens out a little
 */
public record FinishedSize(double acrossMm, double downMm, double borderMm, double edgeToSpareMm) {

    /**
     * The size round a piece that was measured.
     *
     * @param rounds the rounds worked round what was measured; the base round is one of them if the piece was measured
     *     without it
     */
    public static FinishedSize around(double acrossMm, double downMm, int rounds, Swatch swatch) {
        Measures.requirePositive(acrossMm, "millimetres across");
        Measures.requirePositive(downMm, "millimetres down");
        return new FinishedSize(
                acrossMm, downMm, rounds * swatch.roundMm(), 2 * rounds * (swatch.stitchMm() - swatch.roundMm()));
    }

    /**
     * The size round a piece whose base round has so many stitches and lies as the swatch does. Opposite sides that differ
     * are taken at their mean.
     *
     * @param base the stitches of the base round, corner chains not counted
     * @param rounds the rounds worked round the base round
     */
    public static FinishedSize onStitches(PerSide<Integer> base, int rounds, Swatch swatch) {
        return around(
                (base.top() + base.bottom()) / 2.0 * swatch.stitchMm(),
                (base.left() + base.right()) / 2.0 * swatch.stitchMm(),
                rounds,
                swatch);
    }

    /** The whole with its border, along top and bottom. */
    public double outerAcrossMm() {
        return acrossMm + 2 * borderMm;
    }

    /** The whole with its border, along left and right. */
    public double outerDownMm() {
        return downMm + 2 * borderMm;
    }
}
