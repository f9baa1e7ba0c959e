package edgewright.check;

import edgewright.chart.Chart;
import edgewright.chart.PerSide;
import edgewright.chart.Place;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What the checker says about a chart. Immutable.
 *
 * <p>A chart that is not judged is not thereby workable: its ragged sections must be evened out first.
 */
public final class Verdict {
    private final Chart chart;
    private final Optional<PerSide<Integer>> baseStitches;
    private final Parts parts;
    /** Made when first asked for. Whoever is second makes an equal list. */
    private List<Finding> findings;

    /**
     * What a verdict is put together from, and what a later one may take over.
     *
     * @param outside breaches about no round: ragged sections or unclosed sides
     * @param contrast breaches about yarns, by round
     * @param byRound breaches about the stitches of each round; element 0 is round 1; never changed
     * @param longs how many long stitches were judged
     */
    @SuppressWarnings("ArrayRecordComponent") // parts are handed on, never compared
    record Parts(List<RuleBreach<?>> outside, List<RuleBreach<?>> contrast, RuleBreach<?>[][] byRound, int longs) {}

    Verdict(Chart chart, Optional<PerSide<Integer>> baseStitches, Parts parts) {
        this.chart = chart;
        this.baseStitches = baseStitches;
        this.parts = parts;
    }

    /** The chart that was checked. */
    public Chart chart() {
        return chart;
    }

    /** The stitches a side of the base round that it was checked for; empty if it was checked for every size. */
    public Optional<PerSide<Integer>> baseStitches() {
        return baseStitches;
    }

    /**
     * Everything that was found, in working order: first what is about sides, then round by round; of a round first what is
     * about the round as a whole, then its stitches; of a stitch errors first.
     */
    public List<Finding> findings() {
        List<Finding> known = findings;
        if (known == null) {
            known = breaches().map(breach -> new Finding(breach, this)).toList();
            findings = known;
        }
        return known;
    }

    /** The findings that are errors, in working order. */
    public List<Finding> errors() {
        return findings().stream()
                .filter(finding -> finding.severity() == Severity.ERROR)
                .toList();
    }

    /** The findings about one stitch. */
    public List<Finding> at(Place place) {
        FindingPlace stitch = new FindingPlace.OfStitch(place);
        return findings().stream()
                .filter(finding -> finding.place().equals(stitch))
                .toList();
    }

    /** Whether hands cannot work the chart as it stands. */
    public boolean hasErrors() {
        return breaches().anyMatch(RuleBreach::isError);
    }

    /** How many long stitches of the chart were judged, those of the repeat counted once; 0 if the chart was not judged. */
    public int longStitchesJudged() {
        return parts.longs();
    }

    /** Whether stitches were judged at all; false for a ragged chart. */
    public boolean judged() {
        return parts.byRound().length > 0;
    }

    Parts parts() {
        return parts;
    }

    /** The breaches about the stitches of a round. */
    RuleBreach<?>[] inRound(int round) {
        return parts.byRound()[round - 1];
    }

    /** All breaches, in the order of the findings. */
    Stream<RuleBreach<?>> breaches() {
        List<RuleBreach<?>> breaches = new ArrayList<>(parts.outside());
        int next = 0;
        for (int i = 0; i < parts.byRound().length; i++) {
            while (next < parts.contrast().size() && roundOf(parts.contrast().get(next)) == i + 1) {
                breaches.add(parts.contrast().get(next));
                next++;
            }
            breaches.addAll(Arrays.asList(parts.byRound()[i]));
        }
        return breaches.stream();
    }

    private static int roundOf(RuleBreach<?> breach) {
        return breach.place().inRound().orElseThrow();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Verdict that
                && chart.equals(that.chart)
                && baseStitches.equals(that.baseStitches)
                && findings().equals(that.findings());
    }

    @Override
    public int hashCode() {
        return Objects.hash(chart, baseStitches, findings());
    }

    @Override
    public String toString() {
        return judged() ? longStitchesJudged() + " long stitches judged: " + findings() : "not judged: " + findings();
    }
}
