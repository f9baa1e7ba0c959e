package edgewright.check;

import edgewright.chart.Chart;
import edgewright.chart.Colour;
import edgewright.chart.CornerEnd;
import edgewright.chart.Round;
import edgewright.chart.Section;
import edgewright.chart.Stitch;
import java.util.Optional;

/**
 * What an edit does to the looks of a fabric: how many cells then show another colour, those of the repeat counted once. A cell
 * shows the colour of {@link Chart#shownRound}; corner chains are not counted. A cell
 * that comes or goes counts too.
 *
 * <p>Cells are compared that lie in one fabric column, counted from the repeat. Where an edit makes the corner sections longer
 * or shorter, which it does beside the repeat, they are counted from the corner.
 */
final class ChangedCells {
    private final Chart before;
    private final Chart after;
    private final Colour[] coloursBefore;
    private final Colour[] coloursAfter;
    private final boolean isFromCorner;

    private ChangedCells(Chart before, Chart after) {
        this.before = before;
        this.after = after;
        this.coloursBefore = colours(before);
        this.coloursAfter = colours(after);
        this.isFromCorner = !before.border().equals(after.border());
    }

    /** How many cells change between two charts of as many rounds. */
    static int between(Chart before, Chart after) {
        return new ChangedCells(before, after).count();
    }

    private int count() {
        int changed = 0;
        for (int round = 1; round <= before.rounds().size(); round++) {
            if (!looksTheSame(round)) {
                for (Section section : Section.values()) {
                    changed += changed(round, section);
                }
            }
        }
        return changed;
    }

    /** Whether a round and those that can cover it are as they were: in most edits that is true of all but a few. */
    @SuppressWarnings(
            "ReferenceEquality") // edits keep the rounds that they do not change; the others are compared cell by cell
    private boolean looksTheSame(int round) {
        int last = Math.min(round + Stitch.DEEPEST - 1, before.rounds().size());
        for (int r = round; r <= last; r++) {
            if (before.round(r) != after.round(r) || !coloursBefore[r].equals(coloursAfter[r])) {
                return false;
            }
        }
        return true;
    }

    private int changed(int round, Section section) {
        int was = before.round(round).section(section).length();
        int is = after.round(round).section(section).length();
        int gone = atItsStart(section) ? was - is : 0;
        int changed = Math.abs(was - is);
        for (int place = 1 + Math.max(gone, 0); place <= was && place - gone <= is; place++) {
            Colour old = coloursBefore[before.shownRound(round, section, place)];
            changed += old.equals(coloursAfter[after.shownRound(round, section, place - gone)]) ? 0 : 1;
        }
        return changed;
    }

    /** Whether the cells of a section that come or go stand at its start. */
    private boolean atItsStart(Section section) {
        return section.corner().equals(Optional.of(isFromCorner ? CornerEnd.NEXT : CornerEnd.START));
    }

    /** The colour of each round; element 0 stands for the base round, which has none. */
    private static Colour[] colours(Chart chart) {
        Colour[] colours = new Colour[chart.rounds().size() + 1];
        int number = 1;
        for (Round round : chart.rounds()) {
            colours[number] = chart.yarn(round.yarn()).orElseThrow().colour();
            number++;
        }
        return colours;
    }
}
