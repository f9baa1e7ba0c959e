package edgewright.assist.effort;

import edgewright.chart.Chart;
import edgewright.chart.PerSide;
import edgewright.chart.Round;
import edgewright.chart.Side;
import edgewright.chart.Stitch;
import edgewright.chart.Stitches;
import java.util.ArrayList;
import java.util.List;

/**
 * The work of a border on a piece.
 *
 * @param rounds round 1 first
 * @param hours at the pace that was stated; corner chains, ends and counting take what they take besides
 */
public record Effort(List<RoundEffort> rounds, double hours) {
    private static final double MINUTES = 60;

    public Effort {
        rounds = List.copyOf(rounds);
    }

    /**
     * The work of a chart that is not ragged.
     *
     * @param repeats how often the repeat is worked on each side
     */
    public static Effort of(Chart chart, PerSide<Integer> repeats, Pace pace) {
        List<RoundEffort> rounds = new ArrayList<>();
        double minutes = 0;
        for (int r = 1; r <= chart.rounds().size(); r++) {
            RoundEffort effort = of(chart.round(r), r, repeats);
            rounds.add(effort);
            minutes += (effort.stitches() - effort.longs()) / pace.stitchesAMinute()
                    + effort.longs() / pace.longStitchesAMinute();
        }
        return new Effort(rounds, minutes / MINUTES);
    }

    private static RoundEffort of(Round round, int number, PerSide<Integer> repeats) {
        long stitches = 0;
        long longs = 0;
        int longestRun = 0;
        boolean oneKind = true;
        for (Side side : Side.values()) {
            Stitches worked = round.side(side, repeats.get(side));
            stitches += worked.length();
            longs += worked.countCovering();
            longestRun = Math.max(longestRun, longestRun(worked));
            oneKind &= worked.isAll(worked.at(1));
        }
        return new RoundEffort(number, stitches, longs, oneKind ? 0 : longestRun, changes(round.repeat()));
    }

    private static int longestRun(Stitches worked) {
        int longest = 0;
        int run = 0;
        Stitch last = null;
        for (int place = 1; place <= worked.length(); place++) {
            Stitch stitch = worked.at(place);
            run = stitch == last ? run + 1 : 1;
            longest = Math.max(longest, run);
            last = stitch;
        }
        return longest;
    }

    /** Counted around the ends of the repeat. */
    private static int changes(Stitches repeat) {
        int changes = 0;
        for (int place = 1; place <= repeat.length(); place++) {
            changes += repeat.at(place) == repeat.at(place % repeat.length() + 1) ? 0 : 1;
        }
        return changes;
    }

    /** The stitches of all rounds. */
    public long stitches() {
        return rounds.stream().mapToLong(RoundEffort::stitches).sum();
    }

    /** The long stitches of all rounds. */
    public long longs() {
        return rounds.stream().mapToLong(RoundEffort::longs).sum();
    }

    /** The longest run that has to be counted in any round. */
    public int longestRun() {
        return rounds.stream().mapToInt(RoundEffort::longestRun).max().orElse(0);
    }

    /** The changes of rhythm in one repeat of all rounds. */
    public int changes() {
        return rounds.stream().mapToInt(RoundEffort::changes).sum();
    }
}
