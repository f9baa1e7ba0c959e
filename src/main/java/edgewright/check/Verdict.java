package edgewright.check;

import edgewright.chart.Chart;
import edgewright.chart.PerSide;
import edgewright.chart.Place;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * What the checker says about a chart. Immutable.
 *
 * <p>A chart that is not judged is not thereby workable: its ragged sections must be evened out first.
 */
public final class Verdict {
    /** So many findings are told, in working order; of more, only their number. */
    public static final int MOST_TOLD = 1_000;

    private final Chart chart;
    private final Optional<PerSide<Integer>> baseStitches;
    private final Parts parts;
    /** Made when first asked for. Whoever is second makes an equal list. */
    private List<Finding> findings;

    /** What comes of edits that are the same for many findings: each is tried once. */
    private final Map<RemedyEdit, RemedyTrial.Effect> effects = new ConcurrentHashMap<>();
    /** Counted when first asked for. */
    private FindingCount count;

    /**
     * What a verdict is put together from, and what a later one may take over.
     *
     * @param outside breaches about no round: ragged sections or unclosed sides
     * @param contrast breaches about yarns, by round
     * @param byRound how many breaches the stitches of each round have; element 0 is round 1; never changed. They are counted
     *     and not kept, since a chart can have more of them than memory
     * @param longs how many long stitches were judged
     */
    @SuppressWarnings("ArrayRecordComponent") // parts are handed on, never compared
    record Parts(List<RuleBreach<?>> outside, List<RuleBreach<?>> contrast, FindingCount[] byRound, int longs) {}

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
     * The first {@link #MOST_TOLD} of what was found, in working order: first what is about sides, then round by round; of a
     * round first what is about the round as a whole, then its stitches by place; of a stitch errors first.
     */
    public List<Finding> findings() {
        List<Finding> known = findings;
        if (known == null) {
            known = told(breaches());
            findings = known;
        }
        return known;
    }

    /** The first {@link #MOST_TOLD} findings that are errors, in working order, though more than that may stand before them. */
    public List<Finding> errors() {
        return told(breaches(inRound -> inRound.errors() > 0).filter(RuleBreach::isError));
    }

    private List<Finding> told(Stream<RuleBreach<?>> found) {
        return found.limit(MOST_TOLD).map(breach -> new Finding(breach, this)).toList();
    }

    /** How many findings there are, told or not. */
    public FindingCount count() {
        FindingCount known = count;
        if (known == null) {
            known = about(Stream.concat(parts.outside().stream(), parts.contrast().stream()));
            for (FindingCount ofStitches : parts.byRound()) {
                known = known.and(ofStitches);
            }
            count = known;
        }
        return known;
    }

    /** The same for what is about each round, its sections or its stitches; element 0 is round 1. */
    public List<FindingCount> countByRound() {
        FindingCount[] counts = Arrays.copyOf(parts.byRound(), chart.rounds().size());
        if (!judged()) {
            Arrays.fill(counts, FindingCount.NONE);
        }
        Stream.concat(parts.outside().stream(), parts.contrast().stream())
                .forEach(breach -> breach.place()
                        .inRound()
                        .ifPresent(round -> counts[round - 1] = counts[round - 1].and(about(Stream.of(breach)))));
        return List.of(counts);
    }

    private static FindingCount about(Stream<RuleBreach<?>> breaches) {
        return breaches.map(breach -> breach.isError() ? FindingCount.ERROR : FindingCount.WARNING)
                .reduce(FindingCount.NONE, FindingCount::and);
    }

    /** How many findings are not told, since there are more than {@link #MOST_TOLD}. */
    public int untold() {
        return count().all() - findings().size();
    }

    /** Those of the findings that are told which are about one stitch. */
    public List<Finding> at(Place place) {
        FindingPlace stitch = new FindingPlace.OfStitch(place);
        return findings().stream()
                .filter(finding -> finding.place().equals(stitch))
                .toList();
    }

    /** Whether hands cannot work the chart as it stands. */
    public boolean hasErrors() {
        return count().errors() > 0;
    }

    /** How many long stitches of the chart were judged, those of the repeat counted once; 0 if the chart was not judged. */
    public int longStitchesJudged() {
        return parts.longs();
    }

    /** Whether stitches were judged at all; false for a ragged chart. */
    public boolean judged() {
        return parts.byRound().length > 0;
    }

    /**
     * Mends every finding of one rule, as far as that can be done without a rule saying less; see {@link MendedKind}. Takes
     * long on a large chart with many findings, since each remedy is tried.
     *
     * @param rule its id
     */
    public MendedKind mendAll(String rule) {
        return KindMending.of(this, rule);
    }

    Parts parts() {
        return parts;
    }

    /** What comes of an edit that is offered for many findings. */
    RemedyTrial.Effect effect(RemedyEdit edit) {
        return effects.computeIfAbsent(edit, tried -> new RemedyTrial.Effect(this, tried));
    }

    /** How many breaches the stitches of a round have. */
    FindingCount ofStitches(int round) {
        return parts.byRound()[round - 1];
    }

    /** All breaches, in the order of the findings. They are made one round after another as they are asked for. */
    Stream<RuleBreach<?>> breaches() {
        return breaches(inRound -> inRound.all() > 0);
    }

    /** All breaches but those of stitches in rounds that are not wanted. */
    private Stream<RuleBreach<?>> breaches(Predicate<FindingCount> wanted) {
        Map<Integer, List<RuleBreach<?>>> contrast =
                parts.contrast().stream().collect(Collectors.groupingBy(Verdict::roundOf));
        RoundJudge judge = new RoundJudge(chart);
        Stream<RuleBreach<?>> byRound = IntStream.rangeClosed(1, parts.byRound().length)
                .boxed()
                .flatMap(round -> Stream.concat(
                        contrast.getOrDefault(round, List.of()).stream(),
                        wanted.test(ofStitches(round)) ? judge.breaches(round).stream() : Stream.empty()));
        return Stream.concat(parts.outside().stream(), byRound);
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
        return (judged() ? longStitchesJudged() + " long stitches judged: " : "not judged: ")
                + findings()
                + (untold() == 0 ? "" : " and " + untold() + " more");
    }
}
