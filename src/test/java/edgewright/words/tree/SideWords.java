package edgewright.words.tree;

import java.util.List;
import java.util.stream.Collectors;

/** Runs as letters, to compare them with a chart. */
public final class SideWords {
    private SideWords() {}

    public static String letters(List<Run> runs) {
        return spaced(runs).replace(" ", "");
    }

    /** A blank between two runs. */
    public static String spaced(List<Run> runs) {
        return runs.stream()
                .map(run -> String.valueOf(run.stitch().letter()).repeat(run.count()))
                .collect(Collectors.joining(" "));
    }
}
