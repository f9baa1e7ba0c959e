package edgewright.check;

import edgewright.chart.Place;
import edgewright.chart.Round;
import edgewright.chart.Section;
import edgewright.chart.Stitches;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;

/**
 * Long stitches side by side in a round, over the seams of the sections.
 *
 * <p>A side is worked with the repeat any number of times: so the end of the part from the corner meets the start of the
 * repeat or, with no repeat, the part to the corner; and the end of the repeat meets its own start or the part to the corner.
 * A run starts at a long stitch that no long stitch can come before, however often the repeat is worked, and it is as long as
 * it gets for any number of repeats. If the whole repeat is long there is one run through it, without an end, that starts
 * where the long stitches before the repeat start.
 *
 * <p>Long stitches that have nothing to land on do not count: those of round 1, and the first and last of a side.
 *
 * @param first where the run starts
 * @param length the stitches of the run; empty if it is as long as the repeat is worked
 * @param stitches every place that the run can go over, with any number of repeats, from the first on
 */
record LongRun(Place first, OptionalInt length, Set<Place> stitches) {

    /** The runs of a round that are longer than that, in working order. The chart must not be ragged. */
    static List<LongRun> longerThan(int most, Round round, int number) {
        return number == 1 ? List.of() : new Search(round, number).longerThan(most);
    }

    private boolean isLongerThan(int most) {
        return length.isEmpty() || length.getAsInt() > most;
    }

    /** The places of one section from one to another, both included; empty where {@code last} is below {@code first}. */
    private record Span(Section section, int first, int last) {
        int length() {
            return last - first + 1;
        }
    }

    /** Finds the runs of one round. */
    private static final class Search {
        private final Round round;
        private final int number;
        private final List<LongRun> runs = new ArrayList<>();

        Search(Round round, int number) {
            this.round = round;
            this.number = number;
        }

        List<LongRun> longerThan(int most) {
            Span fromEnd = endingSpan(Section.FROM_CORNER);
            Span repeatStart = startingSpan(Section.REPEAT);
            Span repeatEnd = endingSpan(Section.REPEAT);
            Span toStart = startingSpan(Section.TO_CORNER);
            boolean endless = repeatStart.length() == round.repeat().length();
            addWithin(Section.FROM_CORNER, 1, fromEnd.first() - 1);
            if (endless) {
                add(OptionalInt.empty(), fromEnd, repeatStart, toStart);
            } else {
                int goesOn = Math.max(repeatStart.length(), toStart.length());
                boolean startsAfresh = fromEnd.length() == 0 && repeatEnd.length() == 0;
                if (fromEnd.length() > 0) {
                    add(OptionalInt.of(fromEnd.length() + goesOn), fromEnd, repeatStart, toStart);
                }
                if (startsAfresh) {
                    add(OptionalInt.of(repeatStart.length()), repeatStart);
                }
                addWithin(Section.REPEAT, repeatStart.last() + 1, repeatEnd.first() - 1);
                if (repeatEnd.length() > 0) {
                    add(OptionalInt.of(repeatEnd.length() + goesOn), repeatEnd, repeatStart, toStart);
                }
                if (startsAfresh) {
                    add(OptionalInt.of(toStart.length()), toStart);
                }
            }
            addWithin(Section.TO_CORNER, toStart.last() + 1, round.toCorner().length());
            return runs.stream().filter(run -> run.isLongerThan(most)).toList();
        }

        /** Adds the runs of a section that touch no seam. */
        private void addWithin(Section section, int first, int last) {
            int start = first;
            for (int place = first; place <= last + 1; place++) {
                if (place > last || !counts(section, place)) {
                    add(OptionalInt.of(place - start), new Span(section, start, place - 1));
                    start = place + 1;
                }
            }
        }

        /** Adds a run that starts with the first span that has a stitch; nothing if none has. */
        private void add(OptionalInt length, Span... spans) {
            Set<Place> stitches = new LinkedHashSet<>();
            Place start = null;
            for (Span span : spans) {
                for (int place = span.first(); place <= span.last(); place++) {
                    Place stitch = new Place(number, span.section(), place);
                    start = start == null ? stitch : start;
                    stitches.add(stitch);
                }
            }
            if (start != null) {
                runs.add(new LongRun(start, length, Collections.unmodifiableSet(stitches)));
            }
        }

        private Span startingSpan(Section section) {
            int last = 0;
            while (last < round.section(section).length() && counts(section, last + 1)) {
                last++;
            }
            return new Span(section, 1, last);
        }

        private Span endingSpan(Section section) {
            int length = round.section(section).length();
            int first = length + 1;
            while (first > 1 && counts(section, first - 1)) {
                first--;
            }
            return new Span(section, first, length);
        }

        private boolean counts(Section section, int place) {
            Stitches row = round.section(section);
            boolean atEnd = (section == Section.FROM_CORNER && place == 1)
                    || (section == Section.TO_CORNER && place == row.length());
            return !atEnd && row.at(place).coversStitchBelow();
        }
    }
}
