package edgewright.chart;

import java.util.OptionalInt;

/**
 * How a side is put together: A + r stitches from the corner, w stitches any number of times, B + r stitches to the next
 * corner, where r is the round. Constants of a chart; they follow from its round 1.
 *
 * <p>All counts are of stitches, corner chains not counted; see {@link Counting} for the other way of counting. Source of
 * the geometry: common practice. A corner of chains with one stitch at each of its arms makes each side two stitches
 * longer every round, whatever the number of chains.
 *
 * @param a the stitches from the corner in the base round; 0 or more
 * @param w the width of the repeat; 1 or more
 * @param b the stitches to the corner in the base round; 0 or more
 */
public record SideShape(int a, int w, int b) {
    /** How many stitches longer than the round before it a side is: one at each end, worked into the corner chains. */
    public static final int GROWTH = 2;

    /** How many stitches a side grows by in so many rounds; negative for rounds back. */
    public static int growth(int rounds) {
        return GROWTH * rounds;
    }

    public SideShape {
        if (a < 0 || w < 1 || b < 0) {
            throw new IllegalArgumentException("no side is put together from A = " + a + ", w = " + w + ", B = " + b);
        }
    }

    /** How many stitches this section has in that round: A + r, w or B + r. */
    public int length(Section section, int round) {
        return switch (section) {
            case FROM_CORNER -> a + round;
            case REPEAT -> w;
            case TO_CORNER -> b + round;
        };
    }

    /** S(r) = A + B + 2r + m * w: the stitches on a side in round r when the repeat is worked m times. */
    public int stitches(int round, int repeats) {
        return Math.addExact(a + b + growth(round), Math.multiplyExact(repeats, w));
    }

    /** A + B + 2r: the fewest stitches a side can have in that round, with no repeat worked. */
    public int fewestStitches(int round) {
        return stitches(round, 0);
    }

    /** How often the repeat is worked on a side with that many stitches; empty if the side does not close. */
    public OptionalInt repeats(int round, int stitches) {
        int rest = stitches - fewestStitches(round);
        return rest < 0 || rest % w != 0 ? OptionalInt.empty() : OptionalInt.of(rest / w);
    }

    /** Whether the repeat comes out even: S(r) = A + B + 2r (mod w), and not fewer than A + B + 2r. */
    public boolean closes(int round, int stitches) {
        return repeats(round, stitches).isPresent();
    }

    /**
     * How many stitches must be lost so that the side closes; 0 if it does. Empty if the side has fewer stitches than the
     * smallest that closes.
     */
    public OptionalInt toLose(int round, int stitches) {
        int rest = stitches - fewestStitches(round);
        return rest < 0 ? OptionalInt.empty() : OptionalInt.of(rest % w);
    }

    /** How many stitches must be added so that the side closes; 0 if it does. */
    public int toAdd(int round, int stitches) {
        int rest = stitches - fewestStitches(round);
        return rest < 0 ? -rest : Math.floorMod(-rest, w);
    }

    /**
     * What the stitch at this place stands on.
     *
     * @throws IllegalArgumentException if the place is in the base round or beyond its section
     */
    public Footing footing(Place place) {
        require(place, 1);
        int below = place.round() - 1;
        return switch (place.section()) {
            case REPEAT -> new Footing.OnStitch(new Place(below, Section.REPEAT, place.place()));
            case FROM_CORNER ->
                place.place() == 1
                        ? new Footing.OnCornerChain(below, CornerEnd.START)
                        : new Footing.OnStitch(new Place(below, Section.FROM_CORNER, place.place() - 1));
            case TO_CORNER ->
                place.place() == length(Section.TO_CORNER, place.round())
                        ? new Footing.OnCornerChain(below, CornerEnd.NEXT)
                        : new Footing.OnStitch(new Place(below, Section.TO_CORNER, place.place()));
        };
    }

    /**
     * Where this stitch would land at this place. A stitch that drops as many rounds as its round has below lands on the base
     * round, which is round 0.
     *
     * @param stitch one that is worked past the stitch directly below it
     * @throws IllegalArgumentException if the place is in the base round or beyond its section, or the stitch does not drop
     */
    public Landing landing(Place place, Stitch stitch) {
        require(place, 1);
        if (!stitch.coversStitchBelow()) {
            throw new IllegalArgumentException(stitch + " lands nowhere: it is not worked past the stitch below");
        }
        if (place.round() < stitch.roundsDown()) {
            return new Landing.NoRoundBelow();
        }
        Footing footing = footing(place);
        for (int down = 2; down <= stitch.roundsDown(); down++) {
            if (footing instanceof Footing.OnCornerChain chain) {
                return new Landing.PastCorner(chain.corner());
            }
            footing = footing(((Footing.OnStitch) footing).place());
        }
        return footing instanceof Footing.OnCornerChain chain
                ? new Landing.InCornerChain(chain.round(), chain.corner())
                : new Landing.InStitch(((Footing.OnStitch) footing).place());
    }

    /** The place directly above, in the same fabric column: what stands on this stitch. Round 0 is the base round. */
    public Place above(Place place) {
        require(place, 0);
        return new Place(place.round() + 1, place.section(), place.section().placeAbove(place.place(), 1));
    }

    /**
     * The place in the chart of a stitch of a whole side.
     *
     * @throws IllegalArgumentException if a side with that many repeats has no such stitch
     */
    public Place placeOf(SidePlace stitch, int repeats) {
        int round = stitch.round();
        int from = length(Section.FROM_CORNER, round);
        int inRepeats = stitch.stitch() - from;
        int inTo = inRepeats - repeats * w;
        if (inRepeats <= 0) {
            return new Place(round, Section.FROM_CORNER, stitch.stitch());
        }
        if (inTo <= 0) {
            return new Place(round, Section.REPEAT, (inRepeats - 1) % w + 1);
        }
        if (inTo > length(Section.TO_CORNER, round)) {
            throw new IllegalArgumentException(
                    "a side of " + stitches(round, repeats) + " stitches has no stitch " + stitch.stitch());
        }
        return new Place(round, Section.TO_CORNER, inTo);
    }

    /**
     * The stitch of a whole side that a place in the chart stands for.
     *
     * @param occurrence which working of the repeat is meant, 1 to {@code repeats}; of no account in the corner sections
     */
    public SidePlace sidePlaceOf(Place place, int repeats, int occurrence) {
        require(place, 0);
        int from = length(Section.FROM_CORNER, place.round());
        int before = switch (place.section()) {
            case FROM_CORNER -> 0;
            case REPEAT -> from + (occurrence - 1) * w;
            case TO_CORNER -> from + repeats * w;
        };
        return new SidePlace(place.round(), before + place.place());
    }

    /**
     * Which working of the repeat a stitch of a whole side belongs to, from 1; 1 in the corner sections.
     *
     * @param place the stitch's place in the chart, as {@link #placeOf} has it
     */
    public int occurrence(SidePlace stitch, Place place) {
        int inRepeats = stitch.stitch() - length(Section.FROM_CORNER, stitch.round());
        return place.section().isRepeat() ? (inRepeats - 1) / w + 1 : 1;
    }

    private void require(Place place, int firstRound) {
        if (place.round() < firstRound || place.place() > length(place.section(), place.round())) {
            throw new IllegalArgumentException(place + " is outside a side of A = " + a + ", w = " + w + ", B = " + b);
        }
    }
}
