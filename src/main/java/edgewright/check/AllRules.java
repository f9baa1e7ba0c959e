package edgewright.check;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** All laws, each one object. */
final class AllRules {
    static final NoRoundBelow NO_ROUND_BELOW = new NoRoundBelow();
    static final PastCorner PAST_CORNER = new PastCorner();
    static final CoveredLoop COVERED_LOOP = new CoveredLoop();
    static final UsedLoop USED_LOOP = new UsedLoop();
    static final LandsOnLong LANDS_ON_LONG = new LandsOnLong();
    static final LandsOnChain LANDS_ON_CHAIN = new LandsOnChain();
    static final LandsOnCornerChain LANDS_ON_CORNER_CHAIN = new LandsOnCornerChain();
    static final ChainAtCorner CHAIN_AT_CORNER = new ChainAtCorner();
    static final OtherYarn OTHER_YARN = new OtherYarn();
    static final DeepGap DEEP_GAP = new DeepGap();
    static final UnseenLong UNSEEN_LONG = new UnseenLong();
    static final LooseRun LOOSE_RUN = new LooseRun();
    static final RaggedSection RAGGED_SECTION = new RaggedSection();
    static final UnclosedSide UNCLOSED_SIDE = new UnclosedSide();
    static final LowContrast LOW_CONTRAST = new LowContrast();

    /** The rules about one stitch, in the order in which the findings of a stitch stand: errors first. */
    static final List<StitchRule<?>> ABOUT_STITCHES = List.of(
            NO_ROUND_BELOW,
            PAST_CORNER,
            COVERED_LOOP,
            USED_LOOP,
            LANDS_ON_LONG,
            LANDS_ON_CHAIN,
            LANDS_ON_CORNER_CHAIN,
            CHAIN_AT_CORNER,
            OTHER_YARN,
            DEEP_GAP,
            UNSEEN_LONG);

    /** Every rule, sorted by id. */
    static final List<Rule<?>> BY_ID = Stream.<Rule<?>>concat(
                    ABOUT_STITCHES.stream(), Stream.of(LOOSE_RUN, RAGGED_SECTION, UNCLOSED_SIDE, LOW_CONTRAST))
            .sorted(Comparator.comparing(Rule::id))
            .toList();

    private AllRules() {}

    /**
     * Which of the stitches that are looked at break any rule. The same as asking each of {@link #ABOUT_STITCHES}, but written
     * out, since then the compiler of the JVM sees all of it as one expression.
     */
    static long flagged(StitchPlanes look) {
        return NO_ROUND_BELOW.flagged(look)
                | PAST_CORNER.flagged(look)
                | COVERED_LOOP.flagged(look)
                | USED_LOOP.flagged(look)
                | LANDS_ON_LONG.flagged(look)
                | LANDS_ON_CHAIN.flagged(look)
                | LANDS_ON_CORNER_CHAIN.flagged(look)
                | CHAIN_AT_CORNER.flagged(look)
                | OTHER_YARN.flagged(look)
                | DEEP_GAP.flagged(look)
                | UNSEEN_LONG.flagged(look);
    }

    /** How often the stitches that are looked at break rules of that weight. */
    static int count(StitchPlanes look, Severity severity) {
        int count = 0;
        for (StitchRule<?> rule : ABOUT_STITCHES) {
            if (rule.severity() == severity) {
                count += Long.bitCount(rule.flagged(look));
            }
        }
        return count;
    }

    /** Whether a stitch that is looked at breaks a rule that it does not break where {@code earlier} looks. */
    static boolean breaksMore(StitchPlanes look, StitchPlanes earlier) {
        for (StitchRule<?> rule : ABOUT_STITCHES) {
            if ((rule.flagged(look) & ~rule.flagged(earlier)) != 0) {
                return true;
            }
        }
        return false;
    }
}
