package edgewright.words.write;

import edgewright.chart.Chart;
import edgewright.chart.PerSide;
import edgewright.chart.Side;
import edgewright.chart.Start;
import edgewright.fit.RoundStart;
import edgewright.fit.Starts;
import edgewright.words.tree.Group;
import edgewright.words.tree.SideInstructions;
import edgewright.words.tree.SideStep;
import edgewright.words.tree.StartMark;
import edgewright.words.tree.StartMark.Part;
import edgewright.words.tree.StartMarker;
import edgewright.words.tree.StartMarkers;
import edgewright.words.tree.WrittenRound;
import edgewright.words.tree.WrittenStart;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Says where each round of a chart begins. A chart that says nothing of starts, or that has ragged sections, begins every
 * round at a corner. So does a round that is long stitches and chains as far as its start could step on.
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
        this.starts = starts.stream().anyMatch(RoundStart::free) ? starts : List.of();
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

    /** The markers in the base round above which rounds start; none if all of them begin at a corner. */
    Optional<StartMarkers> markers() {
        if (starts.isEmpty()) {
            return Optional.empty();
        }
        StartMarker odd = marker(starts.get(0));
        return Optional.of(new StartMarkers(0, odd, starts.size() > 1 ? marker(starts.get(1)) : odd));
    }

    /** Below a start that has not stepped on, as many rounds further down. */
    private static StartMarker marker(RoundStart start) {
        return new StartMarker(start.side(), start.number() - start.movedOn() - start.round() + 1);
    }

    /** How often the repeat must be worked on a side for it to have the start of every round; 0 for a given size. */
    int fewestRepeats() {
        int fewest = 0;
        for (RoundStart start : repeats.isEmpty() ? starts : List.<RoundStart>of()) {
            SideInstructions said = GroupedSide.of(chart.round(start.round()), sizes);
            int last = said.group().orElseThrow().lastStitches();
            while (start.free()
                    && start.number() >= SideStep.stitches(said.before())
                    && start.number() >= chart.shape(start.side()).stitches(start.round(), fewest) - last) {
                fewest++;
            }
        }
        return fewest;
    }

    /** Whether some size has a side that is too short for a start. */
    private boolean isTooLongFor(List<PerSide<Integer>> all) {
        int fewest = fewestRepeats();
        return all.stream().flatMap(PerSide::stream).anyMatch(times -> times < fewest);
    }

    /** This round with its start, if it begins along a side. */
    WrittenRound begun(WrittenRound.AtCorner round) {
        return starts.isEmpty() || !starts.get(round.number() - 1).free()
                ? round
                : begun(round, starts.get(round.number() - 1));
    }

    private WrittenRound begun(WrittenRound.AtCorner round, RoundStart start) {
        SideInstructions said = round.stretch();
        Group group = said.group().orElseThrow();
        int before = SideStep.stitches(said.before());
        int number = start.number();
        if (RoundWording.isOneStitchThroughout(said)) {
            return begun(round, said, start, new StartMark(Part.GROUP, 0));
        }
        if (number < before) {
            Parted parted = Parted.of(said.before(), number);
            return begun(
                    round, SideInstructions.of(parted.steps(), group, said.after()), start, parted.mark(Part.BEFORE));
        }
        OptionalInt after = stitchesAfter(start, group);
        if (after.isPresent()) {
            Parted parted = Parted.of(said.after(), after.getAsInt());
            return begun(
                    round, SideInstructions.of(said.before(), group, parted.steps()), start, parted.mark(Part.AFTER));
        }
        Parted parted = Parted.of(group.steps(), (number - before) % group.stitches());
        Group marked = new Group(parted.steps(), group.lastStitches());
        return begun(round, SideInstructions.of(said.before(), marked, said.after()), start, parted.mark(Part.GROUP));
    }

    /** How many stitches after the last group a start is; empty if a group goes on there, as on a side that is long enough. */
    private OptionalInt stitchesAfter(RoundStart start, Group group) {
        if (repeats.isEmpty()) {
            return OptionalInt.empty();
        }
        Side side = start.side();
        int length = chart.shape(side).stitches(start.round(), repeats.get().get(side));
        int after = start.number() - (length - group.lastStitches());
        return after >= 0 ? OptionalInt.of(after) : OptionalInt.empty();
    }

    private static WrittenRound begun(
            WrittenRound.AtCorner round, SideInstructions marked, RoundStart start, StartMark mark) {
        return new WrittenRound.AlongSide(
                round.number(),
                round.yarn(),
                round.side(),
                marked,
                round.cornerChains(),
                new WrittenStart(start.side(), start.number(), mark));
    }

    /** Steps in two parts, each in the fewest things that a reader must take in: a run or a bracket is parted if it must be. */
    private record Parted(List<SideStep> first, List<SideStep> rest) {
        static Parted of(List<SideStep> steps, int stitches) {
            String letters = letters(steps);
            return new Parted(said(letters.substring(0, stitches)), said(letters.substring(stitches)));
        }

        private static String letters(List<SideStep> steps) {
            StringBuilder letters = new StringBuilder();
            SideStep.workedOut(steps)
                    .forEach(run ->
                            letters.append(String.valueOf(run.stitch().letter()).repeat(run.count())));
            return letters.toString();
        }

        private static List<SideStep> said(String letters) {
            return new Bracketing(GroupedSide.runs(letters)).steps();
        }

        List<SideStep> steps() {
            List<SideStep> steps = new ArrayList<>(first);
            steps.addAll(rest);
            return steps;
        }

        StartMark mark(Part part) {
            return new StartMark(part, first.size());
        }
    }
}
