package edgewright.check;

import edgewright.chart.Chart;
import edgewright.chart.Place;
import edgewright.chart.Round;
import edgewright.chart.Section;
import edgewright.chart.Stitch;
import edgewright.chart.Stitches;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Judges the rounds of one chart that is not ragged, one at a time, by all rules about stitches and runs. What it says of a
 * round depends on that round, the two below and the chart's rules alone. Nothing is made for a round without flags.
 */
final class RoundJudge {
    private final Chart chart;
    private final List<Round> rounds;
    private final int looseRun;
    private final Neighbours look;

    RoundJudge(Chart chart) {
        this.chart = chart;
        this.rounds = chart.rounds();
        this.looseRun = chart.rules().looseRun();
        this.look = new Neighbours(rounds, chart.rules());
    }

    /** The flags of a round in working order, and at one stitch in the order of the rules. */
    Flag[] flags(int number) {
        Round round = rounds.get(number - 1);
        look.enter(number);
        List<Flag> flags = section(number, Section.FROM_CORNER, round.fromCorner(), null);
        flags = section(number, Section.REPEAT, round.repeat(), flags);
        flags = section(number, Section.TO_CORNER, round.toCorner(), flags);
        if (number > 1 && LongRuns.anyLongerThan(looseRun, round)) {
            flags = flags == null ? new ArrayList<>() : flags;
            flags.addAll(AllRules.LOOSE_RUN.flags(round, number, looseRun));
            flags.sort(Comparator.comparing(Flag::place));
        }
        return flags == null ? Flag.NONE : flags.toArray(Flag.NONE);
    }

    /** Adds the flags of a section; the list may be null as long as there are none. */
    private List<Flag> section(int number, Section section, Stitches row, List<Flag> before) {
        List<Flag> flags = before;
        for (int word = 0; word < row.words(); word++) {
            if (look.lookAt(number, section, row, word)) {
                long flagged = AllRules.flagged(look);
                if (flagged != 0) {
                    flags = flags == null ? new ArrayList<>() : flags;
                    addWord(number, section, word, flagged, flags);
                }
            }
        }
        return flags;
    }

    private void addWord(int number, Section section, int word, long flagged, List<Flag> flags) {
        for (long left = flagged; left != 0; left &= left - 1) {
            int bit = Long.numberOfTrailingZeros(left);
            Place place = new Place(number, section, Long.SIZE * word + bit + 1);
            for (StitchRule rule : AllRules.ABOUT_STITCHES) {
                if ((rule.flagged(look) >>> bit & 1) != 0) {
                    flags.add(new Flag(rule, Where.at(place), rule.values(chart, place)));
                }
            }
        }
    }

    /** The long stitches of a round, each charted one counted once. */
    static int longs(Round round) {
        return round.fromCorner().count(Stitch.LONG)
                + round.repeat().count(Stitch.LONG)
                + round.toCorner().count(Stitch.LONG);
    }
}
