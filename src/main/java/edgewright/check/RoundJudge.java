package edgewright.check;

import edgewright.chart.Chart;
import edgewright.chart.Place;
import edgewright.chart.Round;
import edgewright.chart.Section;
import edgewright.chart.Stitches;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

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

    /** How many breaches a round has; nothing is made to find out, but for the runs of a round that has long ones. */
    FindingCount count(int number) {
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
        return flagged == 0 && !loose ? FindingCount.NONE : count(number, round, loose);
    }

    private FindingCount count(int number, Round round, boolean loose) {
        int errors = 0;
        int warnings = loose ? LongRun.longerThan(looseRun, round, number).size() : 0;
        for (Section section : Section.values()) {
            Stitches row = look.enter(section);
            for (int word = 0; word < row.words(); word++) {
                if (look.lookAt(word)) {
                    errors += AllRules.count(look, Severity.ERROR);
                    warnings += AllRules.count(look, Severity.WARNING);
                }
            }
        }
        return new FindingCount(errors, warnings);
    }

    /** The breaches of a round in working order, and at one stitch in the order of the rules. */
    List<RuleBreach<?>> breaches(int number) {
        Round round = look.enter(number);
        List<RuleBreach<?>> breaches = new ArrayList<>();
        for (Section section : Section.values()) {
            Stitches row = look.enter(section);
            for (int word = 0; word < row.words(); word++) {
                if (look.lookAt(word)) {
                    addWord(number, section, word, AllRules.flagged(look), breaches);
                }
            }
        }
        if (hasLooseRun(round, number)) {
            breaches.addAll(AllRules.LOOSE_RUN.breaches(round, number, looseRun));
            breaches.sort(Comparator.comparing(RuleBreach::stitch));
        }
        return breaches;
    }

    /** Whether a rule is broken in a round at a stitch where it was not in an earlier chart of the same shape. */
    boolean breaksMore(int number, RoundJudge earlier) {
        Round round = look.enter(number);
        Round old = earlier.look.enter(number);
        for (Section section : Section.values()) {
            Stitches row = look.enter(section);
            earlier.look.enter(section);
            for (int word = 0; word < row.words(); word++) {
                earlier.look.lookAt(word);
                if (look.lookAt(word) && AllRules.breaksMore(look, earlier.look)) {
                    return true;
                }
            }
        }
        return hasLooseRun(round, number) && !earlier.looseRuns(old, number).containsAll(looseRuns(round, number));
    }

    private boolean hasLooseRun(Round round, int number) {
        return number > 1 && LongRunLimit.anyLongerThan(looseRun, round);
    }

    /** Where the runs begin that are too long. */
    private Set<Place> looseRuns(Round round, int number) {
        return LongRun.longerThan(looseRun, round, number).stream()
                .map(LongRun::first)
                .collect(Collectors.toSet());
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
