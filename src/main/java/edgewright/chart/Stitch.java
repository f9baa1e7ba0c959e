package edgewright.chart;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * One of the stitches that a charted border is made of, with the facts of the craft about it: how far down it is worked,
 * into which loops, and what it leaves of the stitch directly below it. Rules, counts, words and drawings ask for these and do not
 * list stitches again.
 *
 * <p>The letters are those of the chart file. What a stitch is called in a pattern depends on the terms (UK or US) and is
 * no concern of this type.
 *
 * <p>Source: https://www.gyho.co.uk/mosaiccrochetrules for the loops of back-loop and long stitches; the rest is common practice,
 * no source.
 */
public enum Stitch {
    /** Worked into the back loop only of the stitch below; leaves its own front loop free. */
    BACK_LOOP('b', 1, false, true),
    /** Worked through both loops of the stitch below; leaves that stitch no loop free. */
    PLAIN('p', 1, true, true),
    /**
     * Dropped into the front loop of the stitch two rounds below, in front of the stitch between, which is skipped and
     * covered.
     */
    LONG('l', 2, true, false),
    /** One chain over the stitch below, which is skipped. */
    CHAIN('c', 0, false, false);

    /** How many rounds below its own the stitch that is worked deepest goes. */
    public static final int DEEPEST =
            Stream.of(values()).mapToInt(Stitch::roundsDown).max().orElseThrow();

    /** The letters of all stitches, in the order of their declaration. */
    public static final String LETTERS =
            Stream.of(values()).map(stitch -> "" + stitch.letter).collect(Collectors.joining());

    private static final Stitch[] ALL = values();

    private final char letter;
    private final int roundsDown;
    private final boolean takesFront;
    private final boolean takesBack;

    Stitch(char letter, int roundsDown, boolean takesFront, boolean takesBack) {
        this.letter = letter;
        this.roundsDown = roundsDown;
        this.takesFront = takesFront;
        this.takesBack = takesBack;
    }

    /** The letter that stands for this stitch in a chart file. */
    public char letter() {
        return letter;
    }

    /**
     * How many rounds below its own the stitch is worked into: 1 for the stitch directly below, 2 for the one under that; 0 for a
     * chain, which is worked into nothing.
     */
    public int roundsDown() {
        return roundsDown;
    }

    /** Whether it is worked into the stitch directly below it, be it into one loop or both. */
    public boolean standsInStitchBelow() {
        return roundsDown == 1;
    }

    /** Whether it is worked past the stitch directly below it, lies in front of it and hides it. */
    public boolean coversStitchBelow() {
        return roundsDown > 1;
    }

    /** Whether it lies in front of the stitch that many rounds below its own, 1 being the one directly below, and hides it. */
    public boolean covers(int below) {
        return below >= 1 && below < roundsDown;
    }

    /** Whether it takes this loop of the stitch that many rounds below its own, 1 being the one directly below. */
    public boolean takes(StitchLoop loop, int below) {
        return below == roundsDown && takes(loop);
    }

    /** Whether it takes this loop of the stitch that it is worked into; a chain takes none. */
    public boolean takes(StitchLoop loop) {
        return loop == StitchLoop.FRONT ? takesFront : takesBack;
    }

    /**
     * Whether it leaves this loop of the stitch directly below to a stitch of a later round: neither taken nor behind it. A chain
     * takes nothing and hides nothing.
     */
    public boolean leavesFree(StitchLoop loop) {
        return !coversStitchBelow() && !takes(loop);
    }

    /** The stitches that are worked into the stitch directly below, in the order of their declaration. */
    public static List<Stitch> inStitchBelow() {
        return Stream.of(values()).filter(Stitch::standsInStitchBelow).toList();
    }

    /** The stitches that lie in front of others, in the order of their declaration. */
    public static List<Stitch> covering() {
        return Stream.of(values()).filter(Stitch::coversStitchBelow).toList();
    }

    /** The stitch with this letter; empty for any other character, capital letters among them. */
    public static Optional<Stitch> ofLetter(char letter) {
        for (Stitch stitch : ALL) {
            if (stitch.letter == letter) {
                return Optional.of(stitch);
            }
        }
        return Optional.empty();
    }
}
