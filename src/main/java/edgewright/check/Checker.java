package edgewright.check;

import edgewright.chart.Chart;
import edgewright.chart.PerSide;
import edgewright.chart.Round;
import edgewright.chart.Rules;
import edgewright.chart.SideShape;
import java.util.List;
import java.util.Optional;

/**
 * Judges charts by all rules. It is made to be asked after every edit: a check is a few word operations for sixty-four
 * stitches of a section, and a recheck looks only at rounds that an edit can touch.
 */
public final class Checker {
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
    public static Verdict check(Chart chart, PerSide baseStitches) {
        return check(chart, Optional.of(baseStitches));
    }

    /**
     * Judges a chart that came from another by an edit: the same verdict as a check would give. Rounds that are the same
     * objects in both charts, and stand on two such rounds, are not judged again.
     */
    public static Verdict recheck(Verdict before, Chart edited) {
        if (!before.judged() || !isSameGround(before.chart(), edited)) {
            return check(edited, before.baseStitches());
        }
        return recheckRounds(before, edited);
    }

    private static Verdict check(Chart chart, Optional<PerSide> baseStitches) {
        SideShape shape = chart.shape();
        List<Round> rounds = chart.rounds();
        for (int i = 0; i < rounds.size(); i++) {
            if (AllRules.RAGGED_SECTION.breaks(rounds.get(i), i + 1, shape)) {
                return ragged(chart, baseStitches);
            }
        }
        RoundJudge judge = new RoundJudge(chart);
        Flag[][] byRound = new Flag[rounds.size()][];
        int longs = 0;
        for (int i = 0; i < byRound.length; i++) {
            byRound[i] = judge.flags(i + 1);
            longs += RoundJudge.longs(rounds.get(i));
        }
        List<Flag> unclosed = baseStitches
                .map(stitches -> AllRules.UNCLOSED_SIDE.flags(shape, stitches))
                .orElse(List.of());
        return new Verdict(
                chart, baseStitches, new Verdict.Parts(unclosed, AllRules.LOW_CONTRAST.flags(chart), byRound, longs));
    }

    private static Verdict ragged(Chart chart, Optional<PerSide> baseStitches) {
        return new Verdict(
                chart,
                baseStitches,
                new Verdict.Parts(AllRules.RAGGED_SECTION.flags(chart), List.of(), new Flag[0][], 0));
    }

    @SuppressWarnings(
            "ReferenceEquality") // an edit keeps the rounds that it does not change; to compare them costs more
    private static Verdict recheckRounds(Verdict before, Chart edited) {
        List<Round> old = before.chart().rounds();
        List<Round> rounds = edited.rounds();
        SideShape shape = edited.shape();
        Verdict.Parts parts = before.parts();
        boolean sameYarns =
                old.size() == rounds.size() && before.chart().yarns().equals(edited.yarns());
        Flag[][] byRound = new Flag[rounds.size()][];
        System.arraycopy(parts.byRound(), 0, byRound, 0, Math.min(old.size(), rounds.size()));
        int longs = parts.longs();
        for (int i = rounds.size(); i < old.size(); i++) {
            longs -= RoundJudge.longs(old.get(i));
        }
        RoundJudge judge = null;
        int touched = 0;
        for (int i = 0; i < rounds.size(); i++) {
            Round round = rounds.get(i);
            Round oldRound = i < old.size() ? old.get(i) : null;
            if (round != oldRound) {
                if (AllRules.RAGGED_SECTION.breaks(round, i + 1, shape)) {
                    return ragged(edited, before.baseStitches());
                }
                longs += RoundJudge.longs(round) - (oldRound == null ? 0 : RoundJudge.longs(oldRound));
                sameYarns &= oldRound != null && oldRound.yarn().equals(round.yarn());
                touched = 3;
            }
            if (touched > 0) {
                touched--;
                judge = judge == null ? new RoundJudge(edited) : judge;
                byRound[i] = judge.flags(i + 1);
            }
        }
        List<Flag> contrast = sameYarns ? parts.contrast() : AllRules.LOW_CONTRAST.flags(edited);
        return new Verdict(edited, before.baseStitches(), new Verdict.Parts(parts.outside(), contrast, byRound, longs));
    }

    /** Whether two charts differ in their rounds and yarns at most, as far as a rule can tell. */
    private static boolean isSameGround(Chart one, Chart two) {
        return one.shape().equals(two.shape()) && isSame(one.rules(), two.rules());
    }

    private static boolean isSame(Rules one, Rules two) {
        return one.landOnCornerChain() == two.landOnCornerChain()
                && one.stackLongStitches() == two.stackLongStitches()
                && one.looseRun() == two.looseRun();
    }
}
