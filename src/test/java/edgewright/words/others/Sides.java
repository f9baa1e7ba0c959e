package edgewright.words.others;

import edgewright.chart.Side;
import edgewright.words.tree.Group;
import edgewright.words.tree.Run;
import edgewright.words.tree.SideInstructions;
import edgewright.words.tree.SideStep;
import edgewright.words.tree.WrittenRound;
import java.util.List;

/** Writes what a round of the tree says as letters, by arithmetic alone. */
final class Sides {
    private Sides() {}

    /** The letters of a side that takes so many stitches; runs that are long as number and letter. */
    static String letters(WrittenRound round, Side side, int stitches) {
        SideInstructions words = round.stretch(side);
        StringBuilder letters = new StringBuilder(letters(words.before()));
        String after = letters(words.after());
        if (words.group().isPresent()) {
            Group group = words.group().get();
            String once = letters(group.steps());
            while (letters.length() + once.length() + group.lastStitches() <= stitches) {
                letters.append(once);
            }
        }
        return letters.append(after).toString();
    }

    private static String letters(List<SideStep> steps) {
        StringBuilder letters = new StringBuilder();
        for (Run run : SideStep.workedOut(steps)) {
            letters.append(String.valueOf(run.stitch().letter()).repeat(run.count()));
        }
        return letters.toString();
    }
}
