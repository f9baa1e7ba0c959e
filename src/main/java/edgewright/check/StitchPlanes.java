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
 * <p>It is moved from word to word of a chart, so a chart is judged without making objects. Bit sets are worked out when asked
 * for and not kept: the compiler of the JVM then does each once for all rules and stores none.
 *
 * <p>Columns line up inside a section. In the part from the corner place i stands on place i - 1, so there what lies below is
 * shifted by one bit a round; in the repeat and in the part to the corner place j stands on place j. Where no stitch of a
 * charted round lies below, the bits are 0: under the ends of a side there are corner chains, under round 1 there is the
 * base round.
 */
final class StitchPlanes {
    /** The index of a stitch that there is not. */
    private static final int NOWHERE = -1;

    private static final Round NO_ROUND = Round.of("", "", "", "");

    private final List<Round> rounds;
    private final boolean cornerChainsClosed;
    private final boolean stackingAllowed;

    private boolean isFirstRound;
    private boolean isOverOtherYarn;
    private boolean isOnOwnYarn;
    private Round round = NO_ROUND;
    private Round roundBelow = NO_ROUND;
    private Round roundTwoBelow = NO_ROUND;
    private Stitches row = Stitches.backLoops(0);
    private Stitches below = Stitches.backLoops(0);
    private Stitches twoBelow = Stitches.backLoops(0);
    private int shift;
    private int end;
    private int besideEnd;
    /** Whether long stitches are all that has to be read here, as in most sections of most charts. */
    private boolean onlyLongs;

    private int word;

    /** @param rounds of a chart that is not ragged; the first element is round 1 */
    StitchPlanes(List<Round> rounds, Rules rules) {
        this.rounds = rounds;
        this.cornerChainsClosed = !rules.landOnCornerChain();
        this.stackingAllowed = rules.stackLongStitches();
    }

    /** Goes to a round, and answers with it; then {@link #enter(Section)} goes to its sections. */
    Round enter(int number) {
        round = rounds.get(number - 1);
        roundBelow = number > 1 ? rounds.get(number - 2) : NO_ROUND;
        roundTwoBelow = number > 2 ? rounds.get(number - 3) : NO_ROUND;
        isFirstRound = number == 1;
        isOverOtherYarn = number > 2 && !round.yarn().equals(roundTwoBelow.yarn());
        isOnOwnYarn = number > 1 && round.yarn().equals(roundBelow.yarn());
        return round;
    }

    /** Goes to a section of that round, and answers with its stitches; then {@link #lookAt} goes to its words. */
    Stitches enter(Section section) {
        row = round.section(section);
        below = roundBelow.section(section);
        twoBelow = roundTwoBelow.section(section);
        shift = section.shift();
        end = section == Section.FROM_CORNER ? 0 : section == Section.TO_CORNER ? row.length() - 1 : NOWHERE;
        besideEnd = section == Section.FROM_CORNER ? 1 : section == Section.TO_CORNER ? row.length() - 2 : NOWHERE;
        onlyLongs = !(row.has(Stitch.CHAIN)
                || below.has(Stitch.PLAIN)
                || below.has(Stitch.CHAIN)
                || twoBelow.has(Stitch.CHAIN));
        return row;
    }

    /**
     * Goes to one word of the section that was entered.
     *
     * @return whether there is a long stitch or a chain in it; if not, no rule can be broken and nothing is to be read
     */
    boolean lookAt(int number) {
        word = number;
        return (longs() | chains()) != 0;
    }

    /** The long stitches. */
    long longs() {
        return row.coveringWord(word);
    }

    /** The long stitches of round 1, under which there is no round to land on; none in other rounds. */
    long longsWithoutRoundBelow() {
        return isFirstRound ? longs() : 0;
    }

    /** The long stitches, past round 1, that are the first or last of a side. */
    long longsAtEnds() {
        return isFirstRound ? 0 : longs() & bit(end, word);
    }

    /** The long stitches that have something to land on, be it a stitch, a corner chain or the base round. */
    long landing() {
        return isFirstRound ? 0 : longs() & ~bit(end, word);
    }

    /** Those of {@link #landing} that land in a corner chain: the second and the last but one of a side. */
    long landingInCornerChains() {
        return landing() & bit(besideEnd, word);
    }

    /** The chains. */
    long chains() {
        return onlyLongs ? 0 : row.word(Stitch.CHAIN, word);
    }

    /** The chains that are the first or last stitch of a side. */
    long chainsAtEnds() {
        return chains() & bit(end, word);
    }

    /** Those of {@link #landing} whose loop is behind another long stitch. */
    long landingBehindLongs() {
        return landing() & aligned(below, Stitch.LONG, word, shift);
    }

    /** Those of {@link #landing} whose loop another stitch has taken. */
    long landingInTakenLoops() {
        return onlyLongs ? 0 : landing() & aligned(below, Stitch.PLAIN, word, shift);
    }

    /** The chains with a chain directly below, corner chains not counted. */
    long chainsOnChains() {
        return onlyLongs ? 0 : chains() & aligned(below, Stitch.CHAIN, word, shift);
    }

    /** Those of {@link #landing} that land on a long stitch. */
    long landingOnLongs() {
        return landing() & aligned(twoBelow, Stitch.LONG, word, 2 * shift);
    }

    /** Those of {@link #landing} that land on a chain, corner chains not counted. */
    long landingOnChains() {
        return onlyLongs ? 0 : landing() & aligned(twoBelow, Stitch.CHAIN, word, 2 * shift);
    }

    /** Those of {@link #landing} whose landing round is charted and worked in another yarn. */
    long landingOnOtherYarn() {
        return isOverOtherYarn ? landing() : 0;
    }

    /** Those of {@link #landing} that cover nothing but their own yarn. */
    long landingOverOwnYarn() {
        return isOnOwnYarn ? landing() : 0;
    }

    /** Whether this chart wants no long stitch in a corner chain. */
    boolean areCornerChainsClosed() {
        return cornerChainsClosed;
    }

    /** Whether this chart lets a long stitch land on a long stitch. */
    boolean isStackingAllowed() {
        return stackingAllowed;
    }

    /** A word of a row that is moved on by some columns. */
    private static long aligned(Stitches row, Stitch stitch, int word, int shift) {
        long bits = row.word(stitch, word) << shift;
        return shift > 0 && word > 0 ? bits | row.word(stitch, word - 1) >>> (Long.SIZE - shift) : bits;
    }

    private static long bit(int index, int word) {
        return index >> 6 == word ? 1L << index : 0;
    }
}
