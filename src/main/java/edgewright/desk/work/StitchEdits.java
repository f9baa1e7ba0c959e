package edgewright.desk.work;

import static edgewright.texts.Arg.count;

import edgewright.chart.Chart;
import edgewright.chart.Section;
import edgewright.chart.Stitch;
import edgewright.chart.Stitches;
import edgewright.texts.Messages;

/** What edits do to stitches, and what they are called. */
public final class StitchEdits {
    private StitchEdits() {}

    /** The name of the edit: the stitch, and how many of them are new. */
    static String name(Messages says, Stitch worked, Chart before, Chart after) {
        return says.text("edit-stitches-" + worked.letter(), count("stitches", changed(before, after)));
    }

    /** How many places have another stitch, or one only before or after; both charts have as many rounds. */
    public static int changed(Chart before, Chart after) {
        int changed = 0;
        for (int r = 1; r <= after.rounds().size(); r++) {
            if (after.round(r).equals(before.round(r))) {
                continue;
            }
            for (Section section : Section.values()) {
                Stitches now = after.round(r).section(section);
                Stitches then = before.round(r).section(section);
                changed += Math.abs(now.length() - then.length());
                for (int place = 1; place <= Math.min(now.length(), then.length()); place++) {
                    changed += now.at(place) == then.at(place) ? 0 : 1;
                }
            }
        }
        return changed;
    }
}
