package edgewright.check;

import edgewright.chart.Round;
import edgewright.chart.Rules;
import edgewright.chart.Section;
import edgewright.chart.Stitch;
import edgewright.chart.Stitches;
import java.util.List;

/**
 * Up to sixty-four stitches of one section side by side, and what lies under them: each kind of stitch as a bit set, and bit
 * i stands for the same fabric column in all of them.
 *
 * <p>It is moved from word to word of a chart and holds no more than that, so a chart is judged without making objects.
 *
 * <p>Columns line up inside a section. In the part from the corner place i stands on place i - 1, so there what lies below is
 * shifted by one bit a round; in the repeat and in the part to the corner place j stands on place j. Where no stitch of a
 * charted round lies below, the bits are 0: under the ends of a side there are corner chains, under round 1 there is the
 * base round.
 */
final class Neighbours {
    private static final Stitches NOTHING = Stitches.backLoops(0);

    private final List<Round> rounds;
    private final boolean cornerChainsClosed;
    private final boolean stackingAllowed;

    private boolean firstRound;
    private boolean otherYarn;

    private long longs;
    private long chains;
    private long longsBelow;
    private long plainsBelow;
    private long chainsBelow;
    private long longsTwoBelow;
    private long chainsTwoBelow;
    private long ends;
    private long besideEnds;

    /** @param rounds of a chart that is not ragged; the first element is round 1 */
    Neighbours(List<Round> rounds, Rules rules) {
        this.rounds = rounds;
        this.cornerChainsClosed = !rules.landOnCornerChain();
        this.stackingAllowed = rules.stackLongStitches();
    }

    /** Goes to a round; then {@link #lookAt} goes to its words. */
    void enter(int round) {
        firstRound = round == 1;
        otherYarn = round > 2
                && !rounds.get(round - 1).yarn().equals(rounds.get(round - 3).yarn());
    }

    /**
     * Goes to one word of a section of the round that was entered.
     *
     * @return whether there is a long stitch or a chain in it; if not, no rule can be broken and nothing is to be read
     */
    boolean lookAt(int round, Section section, Stitches row, int word) {
        longs = row.word(Stitch.LONG, word);
        chains = row.word(Stitch.CHAIN, word);
        if ((longs | chains) == 0) {
            return false;
        }
        Stitches below = round > 1 ? rounds.get(round - 2).section(section) : NOTHING;
        Stitches twoBelow = round > 2 ? rounds.get(round - 3).section(section) : NOTHING;
        int shift = section == Section.FROM_CORNER ? 1 : 0;
        longsBelow = aligned(below, Stitch.LONG, word, shift);
        plainsBelow = aligned(below, Stitch.PLAIN, word, shift);
        chainsBelow = aligned(below, Stitch.CHAIN, word, shift);
        longsTwoBelow = aligned(twoBelow, Stitch.LONG, word, 2 * shift);
        chainsTwoBelow = aligned(twoBelow, Stitch.CHAIN, word, 2 * shift);
        ends = switch (section) {
            case FROM_CORNER -> bit(0, word);
            case REPEAT -> 0;
            case TO_CORNER -> bit(row.length() - 1, word);
        };
        besideEnds = switch (section) {
            case FROM_CORNER -> bit(1, word);
            case REPEAT -> 0;
            case TO_CORNER -> bit(row.length() - 2, word);
        };
        return true;
    }

    /** The long stitches of round 1, under which there is no round to land on; none in other rounds. */
    long longsWithoutRoundBelow() {
        return firstRound ? longs : 0;
    }

    /** The long stitches, past round 1, that are the first or last of a side. */
    long longsAtEnds() {
        return firstRound ? 0 : longs & ends;
    }

    /** The long stitches that have something to land on, be it a stitch, a corner chain or the base round. */
    long landing() {
        return firstRound ? 0 : longs & ~ends;
    }

    /** Those of {@link #landing} that land in a corner chain: the second and the last but one of a side. */
    long landingInCornerChains() {
        return landing() & besideEnds;
    }

    /** The chains. */
    long chains() {
        return chains;
    }

    /** The chains that are the first or last stitch of a side. */
    long chainsAtEnds() {
        return chains & ends;
    }

    /** The columns in which the stitch directly below is long. */
    long longsBelow() {
        return longsBelow;
    }

    /** The columns in which the stitch directly below is plain. */
    long plainsBelow() {
        return plainsBelow;
    }

    /** The columns in which there is a chain directly below, corner chains not counted. */
    long chainsBelow() {
        return chainsBelow;
    }

    /** The columns in which the stitch two rounds below is long. */
    long longsTwoBelow() {
        return longsTwoBelow;
    }

    /** The columns in which there is a chain two rounds below, corner chains not counted. */
    long chainsTwoBelow() {
        return chainsTwoBelow;
    }

    /** Whether the round two below is charted and worked in another yarn. */
    boolean isOverOtherYarn() {
        return otherYarn;
    }

    /** Whether this chart wants no long stitch in a corner chain. */
    boolean areCornerChainsClosed() {
        return cornerChainsClosed;
    }

    /** Whether this chart lets a long stitch land on a long stitch. */
    boolean isStackingAllowed() {
        return stackingAllowed;
    }

    /** A row moved on by some columns; what a row of another length does not have is 0. */
    private static long aligned(Stitches row, Stitch stitch, int word, int shift) {
        long bits = word < row.words() ? row.word(stitch, word) << shift : 0;
        return shift > 0 && word > 0 && word <= row.words()
                ? bits | row.word(stitch, word - 1) >>> (Long.SIZE - shift)
                : bits;
    }

    private static long bit(int index, int word) {
        return index >= 0 && index >> 6 == word ? 1L << index : 0;
    }
}
