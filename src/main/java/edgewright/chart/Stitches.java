package edgewright.chart;

import java.util.Arrays;

/**
 * A row of stitches side by side, in working order; immutable.
 *
 * <p>Places are counted from 1. A row may be empty, since a ragged chart can hold empty sections. Equality is by content.
 *
 * <p>The row is kept as three bit sets, one each for long, plain and chain stitches; whatever is in none of them is a
 * back-loop stitch. Bit 0 of word 0 is place 1. That is what lets a whole round be judged by shifts and masks; see {@link
 * #word}.
 */
public final class Stitches {
    private static final int PLANES = 3;

    private final int length;
    /** The words of the long, plain and chain stitches, one plane after the other. Bits past the length are 0. */
    private final long[] planes;

    private Stitches(int length, long[] planes) {
        this.length = length;
        this.planes = planes;
    }

    /**
     * The row with these letters, one a stitch.
     *
     * @throws IllegalArgumentException if a character is not the letter of a stitch; the message names it and its place
     */
    public static Stitches of(CharSequence letters) {
        int length = letters.length();
        Stitches row = new Stitches(length, new long[PLANES * wordsFor(length)]);
        for (int i = 0; i < length; i++) {
            char letter = letters.charAt(i);
            int place = i + 1;
            Stitch stitch = Stitch.ofLetter(letter)
                    .orElseThrow(() -> new IllegalArgumentException(
                            "no stitch has the letter '" + letter + "' (place " + place + ")"));
            row.mark(i, stitch);
        }
        return row;
    }

    /** A row of that many back-loop stitches. */
    public static Stitches backLoops(int length) {
        if (length < 0) {
            throw new IllegalArgumentException("a row cannot have " + length + " stitches");
        }
        return new Stitches(length, new long[PLANES * wordsFor(length)]);
    }

    /** How many stitches the row has; 0 or more. */
    public int length() {
        return length;
    }

    /** The stitch at this place, counted from 1. */
    public Stitch at(int place) {
        int i = index(place);
        for (Stitch stitch : Stitch.values()) {
            if (stitch != Stitch.BACK_LOOP && (planes[plane(stitch) * words() + (i >> 6)] >>> i & 1) != 0) {
                return stitch;
            }
        }
        return Stitch.BACK_LOOP;
    }

    /** This row with another stitch at one place; this very row if that stitch is there already. */
    public Stitches with(int place, Stitch stitch) {
        if (at(place) == stitch) {
            return this;
        }
        Stitches changed = new Stitches(length, planes.clone());
        changed.mark(place - 1, stitch);
        return changed;
    }

    /** This row with one more stitch, which then stands at that place; {@code length + 1} puts it at the end. */
    public Stitches inserted(int place, Stitch stitch) {
        if (place < 1 || place > length + 1) {
            throw new IllegalArgumentException("no stitch can be put in at place " + place + " of " + length);
        }
        return of(new StringBuilder(letters()).insert(place - 1, stitch.letter()));
    }

    /** This row without the stitch at that place. */
    public Stitches deleted(int place) {
        return of(new StringBuilder(letters()).deleteCharAt(index(place)));
    }

    /** The stitches from one place to another, both included; empty where {@code last} is {@code first - 1}. */
    public Stitches between(int first, int last) {
        return of(letters().substring(first - 1, last));
    }

    /** This row and then the other one. */
    public Stitches followedBy(Stitches next) {
        return of(letters() + next.letters());
    }

    /** This row that many times over; empty for none. */
    public Stitches times(int repeats) {
        return of(letters().repeat(repeats));
    }

    /** This row in the opposite order. */
    public Stitches reversed() {
        return of(new StringBuilder(letters()).reverse());
    }

    /** This row with every stitch moved on by {@code k} places, round its own ends; a negative k moves back. */
    public Stitches rotated(int k) {
        if (length == 0) {
            return this;
        }
        String letters = letters();
        int cut = Math.floorMod(-k, length);
        return of(letters.substring(cut) + letters.substring(0, cut));
    }

    /** This row cut off at the end, or made longer there with back-loop stitches, to that length. */
    public Stitches resized(int newLength) {
        return newLength <= length ? between(1, newLength) : followedBy(backLoops(newLength - length));
    }

    /** How many of these stitches are in the row. */
    public int count(Stitch stitch) {
        if (stitch == Stitch.BACK_LOOP) {
            return length - count(Stitch.LONG) - count(Stitch.PLAIN) - count(Stitch.CHAIN);
        }
        int count = 0;
        for (int i = 0; i < words(); i++) {
            count += Long.bitCount(word(stitch, i));
        }
        return count;
    }

    /** Whether every stitch is of this kind; true for an empty row. */
    public boolean isAll(Stitch stitch) {
        return count(stitch) == length;
    }

    /**
     * The smallest number that divides the length and after which the row repeats itself: 4 for {@code lbbblbbblbbb}, the
     * length itself where there is no shorter period, 0 for an empty row.
     */
    public int shortestPeriod() {
        String letters = letters();
        for (int period = 1; period <= length / 2; period++) {
            if (length % period == 0 && letters.startsWith(letters.substring(period))) {
                return period;
            }
        }
        return length;
    }

    /** How many 64-bit words {@link #word} answers for. */
    public int words() {
        return wordsFor(length);
    }

    /**
     * Sixty-four places as a bit set: bit i of word n is set if place {@code 64 * n + i + 1} holds this stitch. Bits past the
     * end of the row are 0.
     *
     * @throws IllegalArgumentException for back-loop stitches, which have no bit set of their own
     */
    public long word(Stitch stitch, int n) {
        return planes[plane(stitch) * words() + n];
    }

    /** The letters of the row, one a stitch, as in a chart file. */
    public String letters() {
        char[] letters = new char[length];
        Arrays.fill(letters, Stitch.BACK_LOOP.letter());
        for (Stitch stitch : Stitch.values()) {
            if (stitch == Stitch.BACK_LOOP) {
                continue;
            }
            for (int n = 0; n < words(); n++) {
                for (long left = word(stitch, n); left != 0; left &= left - 1) {
                    letters[64 * n + Long.numberOfTrailingZeros(left)] = stitch.letter();
                }
            }
        }
        return new String(letters);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Stitches that && length == that.length && Arrays.equals(planes, that.planes);
    }

    @Override
    public int hashCode() {
        return 31 * length + Arrays.hashCode(planes);
    }

    /** The same as {@link #letters}. */
    @Override
    public String toString() {
        return letters();
    }

    /** Sets the bit of this stitch and clears the others. Only for rows that nobody else has seen yet. */
    private void mark(int i, Stitch stitch) {
        long bit = 1L << i;
        for (int plane = 0; plane < PLANES; plane++) {
            planes[plane * words() + (i >> 6)] &= ~bit;
        }
        if (stitch != Stitch.BACK_LOOP) {
            planes[plane(stitch) * words() + (i >> 6)] |= bit;
        }
    }

    private int index(int place) {
        if (place < 1 || place > length) {
            throw new IllegalArgumentException("place " + place + " is not in a row of " + length + " stitches");
        }
        return place - 1;
    }

    private static int plane(Stitch stitch) {
        return switch (stitch) {
            case LONG -> 0;
            case PLAIN -> 1;
            case CHAIN -> 2;
            case BACK_LOOP -> throw new IllegalArgumentException("back-loop stitches are those in no bit set");
        };
    }

    private static int wordsFor(int length) {
        return (length + 63) >> 6;
    }
}
