package edgewright.chart;

import java.util.Arrays;
import java.util.Objects;

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
    private static final long[] NONE = {};

    private final int length;
    /** The words of one kind of stitch each; {@link #NONE} if there is no such stitch, as often. Bits past the length are 0. */
    private final long[] longs;

    private final long[] plains;
    private final long[] chains;

    private Stitches(int length, long[] longs, long[] plains, long[] chains) {
        this.length = length;
        this.longs = orNone(longs);
        this.plains = orNone(plains);
        this.chains = orNone(chains);
    }

    /**
     * The row with these letters, one a stitch.
     *
     * @throws IllegalArgumentException if a character is not the letter of a stitch; the message names it and its place
     */
    public static Stitches of(CharSequence letters) {
        int length = letters.length();
        long[][] planes = new long[Stitch.values().length][wordsFor(length)];
        for (int i = 0; i < length; i++) {
            char letter = letters.charAt(i);
            int place = i + 1;
            Stitch stitch = Stitch.ofLetter(letter)
                    .orElseThrow(() -> new IllegalArgumentException(
                            "no stitch has the letter '" + letter + "' (place " + place + ")"));
            planes[stitch.ordinal()][i >> 6] |= 1L << i;
        }
        return new Stitches(
                length, planes[Stitch.LONG.ordinal()], planes[Stitch.PLAIN.ordinal()], planes[Stitch.CHAIN.ordinal()]);
    }

    /** A row of that many back-loop stitches. */
    public static Stitches backLoops(int length) {
        if (length < 0) {
            throw new IllegalArgumentException("a row cannot have " + length + " stitches");
        }
        return new Stitches(length, NONE, NONE, NONE);
    }

    /** How many stitches the row has; 0 or more. */
    public int length() {
        return length;
    }

    /** The stitch at this place, counted from 1. */
    public Stitch at(int place) {
        int i = index(place);
        for (Stitch stitch : Stitch.values()) {
            if (stitch != Stitch.BACK_LOOP && (word(stitch, i >> 6) >>> i & 1) != 0) {
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
        return new Stitches(
                length,
                withBit(longs, place - 1, stitch == Stitch.LONG),
                withBit(plains, place - 1, stitch == Stitch.PLAIN),
                withBit(chains, place - 1, stitch == Stitch.CHAIN));
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
        for (long word : plane(stitch)) {
            count += Long.bitCount(word);
        }
        return count;
    }

    /** How many stitches of the row lie in front of the one below; see {@link Stitch#coversStitchBelow}. */
    public int countCovering() {
        int count = 0;
        for (int i = 0; i < words(); i++) {
            count += Long.bitCount(coveringWord(i));
        }
        return count;
    }

    /** Whether there is a stitch of this kind in the row. */
    public boolean has(Stitch stitch) {
        return stitch == Stitch.BACK_LOOP ? count(stitch) > 0 : plane(stitch).length > 0;
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
     * end of the row are 0, and so are words past it.
     *
     * @throws IllegalArgumentException for back-loop stitches, which have no bit set of their own
     */
    public long word(Stitch stitch, int n) {
        long[] plane = plane(stitch);
        return n < plane.length ? plane[n] : 0;
    }

    /** Like {@link #word}: the places of the stitches that lie in front of the one below. The long stitch is the only such kind. */
    public long coveringWord(int n) {
        return n < longs.length ? longs[n] : 0;
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
        return other instanceof Stitches that
                && length == that.length
                && Arrays.equals(longs, that.longs)
                && Arrays.equals(plains, that.plains)
                && Arrays.equals(chains, that.chains);
    }

    @Override
    public int hashCode() {
        return Objects.hash(length, Arrays.hashCode(longs), Arrays.hashCode(plains), Arrays.hashCode(chains));
    }

    /** The same as {@link #letters}. */
    @Override
    public String toString() {
        return letters();
    }

    /** Words of the same kind with one bit set or cleared. */
    private long[] withBit(long[] plane, int i, boolean set) {
        if (plane.length == 0 && !set) {
            return NONE;
        }
        long[] changed = Arrays.copyOf(plane, words());
        changed[i >> 6] &= ~(1L << i);
        changed[i >> 6] |= set ? 1L << i : 0;
        return changed;
    }

    private static long[] orNone(long[] plane) {
        for (long word : plane) {
            if (word != 0) {
                return plane;
            }
        }
        return NONE;
    }

    private int index(int place) {
        if (place < 1 || place > length) {
            throw new IllegalArgumentException("place " + place + " is not in a row of " + length + " stitches");
        }
        return place - 1;
    }

    /** Written with comparisons, since the compiler of the JVM can do these beforehand and a switch over an enum it cannot. */
    private long[] plane(Stitch stitch) {
        if (stitch == Stitch.LONG) {
            return longs;
        }
        if (stitch == Stitch.PLAIN) {
            return plains;
        }
        if (stitch == Stitch.CHAIN) {
            return chains;
        }
        throw new IllegalArgumentException("back-loop stitches are those in no bit set");
    }

    private static int wordsFor(int length) {
        return (length + 63) >> 6;
    }
}
