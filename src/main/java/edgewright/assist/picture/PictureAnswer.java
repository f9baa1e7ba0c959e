package edgewright.assist.picture;

import edgewright.chart.Chart;
import edgewright.chart.Corner;
import edgewright.chart.Extras;
import edgewright.chart.Heading;
import edgewright.chart.PatternDetails;
import edgewright.chart.Round;
import edgewright.chart.Rules;
import edgewright.chart.Stitches;
import edgewright.chart.Yarn;
import java.util.ArrayList;
import java.util.List;

/** What came of looking for the stitches of a picture. */
public sealed interface PictureAnswer {

    /**
     * The stitches.
     *
     * @param yarns the yarn of each round, round 1 first
     * @param rounds the stitches of the repeat in each round, round 1 first
     * @param misses the cells that do not show what is wanted, in working order
     * @param cost what these stitches cost
     * @param least whether it is certain that nothing that was asked for costs less
     */
    record Stitched(List<String> yarns, List<Stitches> rounds, List<Miss> misses, Cost cost, boolean least)
            implements PictureAnswer {
        public Stitched {
            yarns = List.copyOf(yarns);
            rounds = List.copyOf(rounds);
            misses = List.copyOf(misses);
        }

        /**
         * The chart with these stitches in its repeat and back-loop stitches in its corner sections.
         *
         * @param a the stitches from the corner in the base round, 0 or more; {@code b} those to the corner
         * @param chartYarns every yarn of the rounds is among them
         */
        public Chart chart(Heading heading, Corner corner, Rules rules, List<Yarn> chartYarns, int a, int b) {
            List<Round> charted = new ArrayList<>();
            for (int r = 1; r <= rounds.size(); r++) {
                charted.add(new Round(
                        yarns.get(r - 1), Stitches.backLoops(a + r), rounds.get(r - 1), Stitches.backLoops(b + r)));
            }
            return new Chart(heading, corner, rules, chartYarns, charted, PatternDetails.NONE, Extras.NONE);
        }
    }

    /**
     * There are none, because stitches that are locked cannot be worked together, or make a run that must not be.
     *
     * @param columns the places, from 1, of the fabric columns that clash in themselves; empty if only a run does
     */
    record LocksClash(List<Integer> columns) implements PictureAnswer {
        public LocksClash {
            columns = List.copyOf(columns);
        }
    }
}
