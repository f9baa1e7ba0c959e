package edgewright.chart;

import java.util.Optional;

/**
 * One of the four stitches that a charted border is made of.
 *
 * <p>The letters are those of the chart file. What a stitch is called in a pattern depends on the terms (UK or US) and is
 * no concern of this type.
 */
public enum Stitch {
    /** Worked into the back loop only of the stitch below; leaves its own front loop free. */
    BACK_LOOP('b'),
    /** Worked through both loops of the stitch below; leaves that stitch no loop free. */
    PLAIN('p'),
    /**
     * Dropped into the front loop of the stitch two rounds below, in front of the stitch between, which is skipped and
     * covered.
     */
    LONG('l'),
    /** One chain over the stitch below, which is skipped. */
    CHAIN('c');

    private final char letter;

    Stitch(char letter) {
        this.letter = letter;
    }

    /** The letter that stands for this stitch in a chart file. */
    public char letter() {
        return letter;
    }

    /** The stitch with this letter; empty for any other character, capital letters among them. */
    public static Optional<Stitch> ofLetter(char letter) {
        return switch (letter) {
            case 'b' -> Optional.of(BACK_LOOP);
            case 'p' -> Optional.of(PLAIN);
            case 'l' -> Optional.of(LONG);
            case 'c' -> Optional.of(CHAIN);
            default -> Optional.empty();
        };
    }
}
