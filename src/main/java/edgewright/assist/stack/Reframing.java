package edgewright.assist.stack;

import edgewright.chart.Chart;
import edgewright.chart.Round;
import edgewright.chart.Stitches;

/**
 * A chart written down with a wider repeat and longer corner sections, so that the very same stitches are worked on every side on
 * which the wider repeat comes out even: the longer corner sections take some repeats over, in whole or in part.
 *
 * @param chart not ragged
 * @param from how many stitches more the section from the corner has, 0 or more
 * @param w the width of the new repeat, a multiple of the old
 * @param to how many stitches more the section to the corner has, 0 or more; together with the first a multiple of the old repeat
 */
record Reframing(Chart chart, int from, int w, int to) {
    Reframing {
        int old = chart.shape().w();
        if (from < 0 || to < 0 || w % old != 0 || (from + to) % old != 0) {
            throw new IllegalArgumentException(
                    "a repeat of " + old + " cannot become " + from + ", " + w + " and " + to + " stitches");
        }
    }

    /** A round as it is written down then. */
    Round round(int number) {
        Round round = chart.round(number);
        int old = chart.shape().w();
        Stitches repeats = round.repeat().times((from + w + to) / old + 1);
        return new Round(
                round.yarn(),
                round.fromCorner().followedBy(repeats.between(1, from)),
                repeats.between(from + 1, from + w),
                repeats.between(from + w + 1, from + w + to).followedBy(round.toCorner()),
                round.extras());
    }
}
