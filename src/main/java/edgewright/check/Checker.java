package edgewright.check;

import edgewright.chart.Chart;
import edgewright.chart.PerSide;
import edgewright.chart.Round;
import edgewright.chart.Rules;
import edgewright.chart.Section;
import edgewright.chart.SideShape;
import edgewright.chart.Stitch;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Judges charts by all rules. It is made to be asked after every edit: a check is a few word operations for sixty-four
 * stitches of a section, and a recheck looks only at rounds that an edit can touch.
 */
public final class Checker {
    /** How many rounds above a changed one may have to be judged otherwise: as many as a stitch can drop. */
    private static final int REACH = Stitch.DEEPEST;

    private Checker() {}

    /** Judges a chart, whatever piece it goes round. */
    public static Verdict check(Chart chart) {
        return check(chart, Optional.empty());
    }

    /**
     * Judges a chart for one piece.
     *
     * @param baseStitches the stitches on each side of the base round, corner chains not counted
     */
    public static Verdict check(Chart chart, PerSide<Integer> baseStitches) {
        return check(chart, Optional.of(baseStitches));
    }

    /**
     * Judges a chart that came from another by an edit: the same verdict as a check would give. Only the rounds from the first
     * changed one to the last, and those that can drop on them, are judged again; a round is unchanged if it is the same object in both.
     */
    public static Verdict recheck(Verdict before, Chart edited) {
        if (!before.judged() || !isSameGround(before.chart(), edited)) {
            return check(edited, before.baseStitches());
        }
        return recheckRounds(before, edited);
    }

    private static Verdict check(Chart chart, Optional<PerSide<Integer>> baseStitches) {
        SideShape shape = chart.shape();
        List<Round> rounds = chart.rounds();
        for (int i = 0; i < rounds.size(); i++) {
            if (AllRules.RAGGED_SECTION.breaks(rounds.get(i), i + 1, shape)) {
                return ragged(chart, baseStitches);
            }
        }
        RoundJudge judge = new RoundJudge(chart);
        FindingCount[] byRound = new FindingCount[rounds.size()];
        for (int i = 0; i < byRound.length; i++) {
            byRound[i] = judge.count(i + 1);
        }
        List<RuleBreach<?>> unclosed = baseStitches
                .map(stitches -> AllRules.UNCLOSED_SIDE.breaches(chart.border(), stitches))
                .orElse(List.of());
        return new Verdict(
                chart,
                baseStitches,
                new Verdict.Parts(unclosed, AllRules.LOW_CONTRAST.breaches(chart), byRound, judge.longs()));
    }

    private static Verdict ragged(Chart chart, Optional<PerSide<Integer>> baseStitches) {
        return new Verdict(
                chart,
                baseStitches,
                new Verdict.Parts(AllRules.RAGGED_SECTION.breaches(chart), List.of(), new FindingCount[0], 0));
    }

    private static Verdict recheckRounds(Verdict before, Chart edited) {
        List<Round> old = before.chart().rounds();
        List<Round> now = edited.rounds();
        Span changed = changed(old, now);
        if (isRagged(edited, changed)) {
            return ragged(edited, before.baseStitches());
        }
        Verdict.Parts parts = before.parts();
        FindingCount[] byRound = Arrays.copyOf(parts.byRound(), now.size());
        RoundJudge judge = new RoundJudge(edited);
        int touched = Math.min(changed.end() + REACH, now.size());
        for (int i = changed.start(); i < touched; i++) {
            byRound[i] = judge.count(i + 1);
        }
        int longs = parts.longs()
                - longs(old, changed.start(), changed.endBefore())
                + longs(now, changed.start(), changed.end());
        List<RuleBreach<?>> contrast = hasSameYarns(before.chart(), edited, changed)
                ? parts.contrast()
                : AllRules.LOW_CONTRAST.breaches(edited);
        return new Verdict(edited, before.baseStitches(), new Verdict.Parts(parts.outside(), contrast, byRound, longs));
    }

    /**
     * The rounds between those at both ends that an edit left as they were, by index.
     *
     * @param end the index after the last of them in the edited chart
     * @param endBefore the same in the chart before the edit
     */
    private record Span(int start, int end, int endBefore) {}

    /** Rounds that moved in or out are others than before, so the outer end is compared only if none came or went. */
    @SuppressWarnings("ReferenceEquality") // edits keep the rounds that they do not change; comparing would cost more
    private static Span changed(List<Round> old, List<Round> now) {
        int common = Math.min(old.size(), now.size());
        int start = 0;
        while (start < common && old.get(start) == now.get(start)) {
            start++;
        }
        if (old.size() != now.size()) {
            return new Span(start, now.size(), old.size());
        }
        int end = common;
        while (end > start && old.get(end - 1) == now.get(end - 1)) {
            end--;
        }
        return new Span(start, end, end);
    }

    private static boolean isRagged(Chart edited, Span changed) {
        SideShape shape = edited.shape();
        for (int i = changed.start(); i < changed.end(); i++) {
            if (AllRules.RAGGED_SECTION.breaks(edited.rounds().get(i), i + 1, shape)) {
                return true;
            }
        }
        return false;
    }

    private static boolean hasSameYarns(Chart before, Chart edited, Span changed) {
        if (changed.end() != changed.endBefore()) {
            return false;
        }
        for (int i = changed.start(); i < changed.end(); i++) {
            if (!before.rounds().get(i).yarn().equals(edited.rounds().get(i).yarn())) {
                return false;
            }
        }
        return true;
    }

    private static int longs(List<Round> rounds, int start, int end) {
        int longs = 0;
        for (Round round : rounds.subList(start, end)) {
            for (Section section : Section.values()) {
                longs += round.section(section).countCovering();
            }
        }
        return longs;
    }

    /** Whether two charts differ in their rounds at most, as far as a rule can tell or a finding can name it. */
    private static boolean isSameGround(Chart one, Chart two) {
        return one.shape().equals(two.shape()) && one.yarns().equals(two.yarns()) && isSame(one.rules(), two.rules());
    }

    private static boolean isSame(Rules one, Rules two) {
        return one.landOnCornerChain() == two.landOnCornerChain()
                && one.stackLongStitches() == two.stackLongStitches()
                && one.looseRun() == two.looseRun();
    }
}
