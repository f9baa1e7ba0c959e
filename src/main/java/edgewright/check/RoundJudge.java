package edgewright.check;

import edgewright.chart.Chart;
import edgewright.chart.Place;
import edgewright.chart.Round;
import edgewright.chart.Section;
import edgewright.chart.Stitches;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Judges the rounds of one chart that is not ragged, one at a time, by all rules about stitches and runs. What it says of a
 * round depends on that round, the two below and the chart's rules alone. Nothing is made for a round without breaches.
 */
final class RoundJudge {
    private final Chart chart;
    private final StitchPlanes look;
    private final int looseRun;
    private int longs;
    private long crowded;

    RoundJudge(Chart chart) {
        this.chart = chart;
        this.look = new StitchPlanes(chart.rounds(), chart.rules());
        this.looseRun = chart.rules().looseRun();
    }

    /** The breaches of a round in working order, and at one stitch in the order of the rules. */
    RuleBreach<?>[] breaches(int number) {
        Round round = look.enter(number);
        crowded = 0;
        long flagged = screen(Section.FROM_CORNER);
        int before = longs;
        flagged |= screen(Section.REPEAT);
        boolean repeatIsLong = longs - before == round.repeat().length();
        flagged |= screen(Section.TO_CORNER);
        boolean loose = number > 1
                && LongRunLimit.mayBeLongerThan(looseRun, crowded, repeatIsLong)
                && LongRunLimit.anyLongerThan(looseRun, round);
        return flagged == 0 && !loose ? RuleBreach.NONE : collect(number, round, loose);
    }

    /** How many long stitches there are in all rounds that were judged, each charted one counted once. */
    int longs() {
        return longs;
    }

    /** Whether a section has breaches at all: not 0 if so. This is all that is run on a round without breaches. */
    private long screen(Section section) {
        long flagged = 0;
        Stitches row = look.enter(section);
        for (int word = 0; word < row.words(); word++) {
            if (look.lookAt(word)) {
                longs += Long.bitCount(look.longs());
                crowded |= LongRunLimit.crowded(look.longs());
                flagged |= AllRules.flagged(look);
            }
        }
        return flagged;
    }

    private RuleBreach<?>[] collect(int number, Round round, boolean loose) {
        List<RuleBreach<?>> breaches = new ArrayList<>();
        for (Section section : Section.values()) {
            Stitches row = look.enter(section);
            for (int word = 0; word < row.words(); word++) {
                if (look.lookAt(word)) {
                    addWord(number, section, word, AllRules.flagged(look), breaches);
                }
            }
        }
        if (loose) {
            breaches.addAll(AllRules.LOOSE_RUN.breaches(round, number, looseRun));
            breaches.sort(Comparator.comparing(RuleBreach::stitch));
        }
        return breaches.toArray(RuleBreach.NONE);
    }

    private void addWord(int number, Section section, int word, long flagged, List<RuleBreach<?>> breaches) {
        for (long left = flagged; left != 0; left &= left - 1) {
            int bit = Long.numberOfTrailingZeros(left);
            Place place = new Place(number, section, Long.SIZE * word + bit + 1);
            for (StitchRule<?> rule : AllRules.ABOUT_STITCHES) {
                if ((rule.flagged(look) >>> bit & 1) != 0) {
                    breaches.add(RuleBreach.at(rule, chart, place));
                }
            }
        }
    }
}
