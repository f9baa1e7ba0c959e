package edgewright.words.write;

import edgewright.chart.Chart;
import edgewright.chart.PerSide;
import edgewright.chart.Start;
import edgewright.fit.RoundStart;
import edgewright.fit.Starts;
import edgewright.words.tree.Group;
import edgewright.words.tree.Run;
import edgewright.words.tree.SideInstructions;
import edgewright.words.tree.SideStep;
import edgewright.words.tree.WrittenStart;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Says where each round of a chart begins. A chart that says nothing of starts, or that has ragged sections, begins every
 * round at a corner.
 *
 * <p>Without a size, and for several, a start is said for every side that is long enough to have it; {@link #fewestRepeats}
 * says how long that is. A pattern for several sizes of which one is too small begins every round at a corner.
 */
final class StartComposer {
    private final Chart chart;
    private final Optional<PerSide<Integer>> repeats;
    private final List<PerSide<Integer>> sizes;
    private final List<RoundStart> starts;

    private StartComposer(Chart chart, WordingOptions options, List<RoundStart> starts) {
        this.chart = chart;
        this.repeats = options.repeats();
        this.sizes = options.size().sizes();
        this.starts = starts;
    }

    static StartComposer of(Chart chart, WordingOptions options) {
        Optional<Start> plan =
                chart.making().start().filter(start -> chart.raggedSections().isEmpty());
        List<RoundStart> starts = plan.map(start -> options.repeats()
                        .map(size -> Starts.of(chart, start, size))
                        .orElseGet(() -> Starts.of(chart, start)))
                .orElse(List.of());
        StartComposer composer = new StartComposer(chart, options, starts);
        return options.size().sizes().size() > 1
                        && composer.isTooLongFor(options.size().sizes())
                ? new StartComposer(chart, options, List.of())
                : composer;
    }

    /** How often the repeat must be worked on a side for it to have the start of every round; 0 for a given size. */
    int fewestRepeats() {
        int fewest = 0;
        for (RoundStart start : repeats.isEmpty() ? starts : List.<RoundStart>of()) {
            SideInstructions said = said(start.round());
            int last = said.group().orElseThrow().lastStitches();
            while (start.number() > SideStep.stitches(said.before())
                    && start.number() > chart.shape(start.side()).stitches(start.round(), fewest) - last) {
                fewest++;
            }
        }
        return fewest;
    }

    /** Whether some size has a side that is too short for a start. */
    private boolean isTooLongFor(List<PerSide<Integer>> sizes) {
        int fewest = fewestRepeats();
        return sizes.stream().flatMap(PerSide::stream).anyMatch(times -> times < fewest);
    }

    /** Where this round begins, and what is worked from there to the corner and at the end of the round. */
    Optional<WrittenStart> of(int round) {
        return starts.isEmpty() ? Optional.empty() : Optional.of(written(starts.get(round - 1)));
    }

    private WrittenStart written(RoundStart start) {
        // Any side that has the start begins with the same stitches.
        int times = repeats.map(size -> size.get(start.side())).orElseGet(this::manyRepeats);
        String side = chart.round(start.round()).side(start.side(), times).letters();
        return new WrittenStart(
                start.side(),
                start.number(),
                rest(said(start.round()), start.number(), side),
                GroupedSide.runs(side.substring(0, start.number())));
    }

    /** What is left of a side after so many of its stitches, with the group where it was. */
    private static SideInstructions rest(SideInstructions said, int done, String side) {
        int before = SideStep.stitches(said.before());
        Group group = said.group().orElseThrow();
        int inGroups = done - before;
        if (inGroups <= 0) {
            return SideInstructions.of(dropped(said.before(), done), group, said.after());
        }
        if (done > side.length() - group.lastStitches()) {
            return SideInstructions.of(GroupedSide.runs(side.substring(done)));
        }
        int begun = inGroups % group.stitches();
        List<Run> restOfGroup = begun == 0 ? List.of() : dropped(group.steps(), begun);
        return SideInstructions.of(restOfGroup, group, said.after());
    }

    /** The runs of these steps without their first stitches. */
    private static List<Run> dropped(List<SideStep> steps, int stitches) {
        List<Run> rest = new ArrayList<>();
        int left = stitches;
        for (Run run : SideStep.workedOut(steps)) {
            int here = Math.min(left, run.count());
            left -= here;
            if (here < run.count()) {
                rest.add(new Run(run.count() - here, run.stitch()));
            }
        }
        return rest;
    }

    private int manyRepeats() {
        int furthest = starts.stream().mapToInt(RoundStart::number).max().orElse(0);
        // The words after the group may begin a repeat before its end.
        return furthest / chart.shape().w() + 2;
    }

    private SideInstructions said(int round) {
        return GroupedSide.of(chart.round(round), sizes);
    }
}
