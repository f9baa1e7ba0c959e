package edgewright.desk.pattern;

import edgewright.chart.Place;
import edgewright.words.said.Said;
import edgewright.words.said.SaidPattern;
import edgewright.words.said.SaidPattern.Saying;
import edgewright.words.said.SaidRounds;
import edgewright.words.said.SaidSpan;
import edgewright.words.said.SaidStitch;
import edgewright.words.tree.StartMark.Part;
import java.util.List;
import java.util.Optional;

/**
 * The place at which the words are read: a stitch of a round, in the order in which a maker works. It walks from stitch to stitch, from
 * step to step, and from round to round; at an end it stays. Knows no window.
 */
final class ReadingMark {
    private SaidPattern said;
    private int round = 1;
    private List<SaidStitch> stitches = List.of();
    /** Which of them is read, counted from 0. */
    private int at;

    /** At the first stitch of the first round. */
    ReadingMark(SaidPattern said) {
        this.said = said;
        read(1);
    }

    /** Goes on in the words of another chart, or the same: at the same place as far as there is one. */
    void readIn(SaidPattern other) {
        Place place = stitch().place();
        said = other;
        round = Math.min(round, other.chart().rounds().size());
        read(round);
        goTo(new Place(round, place.section(), place.place()));
    }

    private void read(int number) {
        round = number;
        stitches = said.inWorkingOrder(number);
        at = 0;
    }

    /** The stitch that is read. */
    SaidStitch stitch() {
        return stitches.get(at);
    }

    /** The words that say it: those in which its round is told itself. */
    Saying words() {
        return new Saying(said.toldUnder(round), said.toldIn(stitch()));
    }

    /** Goes to the stitch at a place of the chart; to the nearest one read if the round does not read that place. */
    void goTo(Place place) {
        if (place.round() != round) {
            read(place.round());
        }
        for (int i = 0; i < stitches.size(); i++) {
            if (stitches.get(i).place().compareTo(place) == 0) {
                at = i;
                return;
            }
        }
    }

    /** Goes to the first stitch of these words, in the first round that they are about; to its first one if they say none. */
    void goTo(int title, Optional<SaidSpan> words) {
        read(said.rounds().get(title).first());
        words.flatMap(span -> firstOf(span.said())).ifPresent(first -> at = first);
    }

    private Optional<Integer> firstOf(Said words) {
        for (int i = 0; i < stitches.size(); i++) {
            if (words.says(stitches.get(i).side(), stitches.get(i).told())) {
                return Optional.of(i);
            }
        }
        return Optional.empty();
    }

    /** So many stitches on, or back if negative. */
    void goOn(int by) {
        at = Math.max(0, Math.min(at + by, stitches.size() - 1));
    }

    void goToFirst() {
        at = 0;
    }

    void goToLast() {
        at = stitches.size() - 1;
    }

    /** So many rounds on, or back if negative; to where a maker begins it. */
    void goOnRounds(int by) {
        int to = Math.max(1, Math.min(round + by, said.chart().rounds().size()));
        if (to != round) {
            read(to);
        }
    }

    /** To the first stitch of the next step. */
    void goToNextStep() {
        int next = at;
        while (next < stitches.size() - 1 && isSameStep(next, next + 1)) {
            next++;
        }
        at = Math.min(next + 1, stitches.size() - 1);
    }

    /** To the first stitch of this step, or if it is there already of the one before. */
    void goToStepBefore() {
        at = Math.max(0, at - 1);
        while (at > 0 && isSameStep(at - 1, at)) {
            at--;
        }
    }

    private boolean isSameStep(int one, int other) {
        return step(stitches.get(one)).equals(step(stitches.get(other)));
    }

    /** The step that says a stitch: a run or a bracket that stands in no other bracket. */
    private SaidSpan step(SaidStitch stitch) {
        SaidRounds.Piece told = said.toldIn(stitch);
        List<SaidSpan> around = said.rounds()
                .get(said.toldUnder(stitch.place().round()))
                .around(told.line(), stitch.side(), stitch.told());
        // The outermost piece of what is worked over and over is all of it, unless it is but one stitch.
        boolean inGroup = stitch.told().part() == Part.GROUP && around.size() > 1;
        return around.get(inGroup ? 1 : 0);
    }
}
