package edgewright.chart;

import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * One round of the border, worked in one yarn: the stitches of a side in its three sections. All four sides are the same.
 *
 * <p>A section may have the wrong length for its round; see {@link Chart#raggedSections}.
 *
 * @param yarn the id of its yarn
 */
public record Round(String yarn, Stitches fromCorner, Stitches repeat, Stitches toCorner, Extras extras) {

    /** A round with no unknown members. */
    public Round(String yarn, Stitches fromCorner, Stitches repeat, Stitches toCorner) {
        this(yarn, fromCorner, repeat, toCorner, Extras.NONE);
    }

    /** A round with its sections written in letters. */
    public static Round of(String yarn, String fromCorner, String repeat, String toCorner) {
        return new Round(yarn, Stitches.of(fromCorner), Stitches.of(repeat), Stitches.of(toCorner));
    }

    /** The stitches of one section. */
    public Stitches section(Section section) {
        return switch (section) {
            case FROM_CORNER -> fromCorner;
            case REPEAT -> repeat;
            case TO_CORNER -> toCorner;
        };
    }

    /** This round with other stitches in one section; this very round if they are equal. */
    public Round with(Section section, Stitches stitches) {
        if (section(section).equals(stitches)) {
            return this;
        }
        return switch (section) {
            case FROM_CORNER -> new Round(yarn, stitches, repeat, toCorner, extras);
            case REPEAT -> new Round(yarn, fromCorner, stitches, toCorner, extras);
            case TO_CORNER -> new Round(yarn, fromCorner, repeat, stitches, extras);
        };
    }

    /** This round in another yarn. */
    public Round withYarn(String id) {
        return new Round(id, fromCorner, repeat, toCorner, extras);
    }

    /** The stitches of a whole side in working order, with the repeat worked that often. */
    public Stitches side(Side side, int repeats) {
        StringBuilder letters = new StringBuilder();
        for (Section section : Section.of(side)) {
            letters.append(section(section).letters().repeat(section.times(repeats)));
        }
        return Stitches.of(letters);
    }

    /** Whether there is such a stitch in the round, in any of its sections. */
    public boolean has(Predicate<Stitch> such) {
        return Stream.of(Stitch.values())
                .filter(such)
                .anyMatch(stitch -> fromCorner.has(stitch) || repeat.has(stitch) || toCorner.has(stitch));
    }

    /** Whether every stitch of the round is worked into the stitch directly below it. */
    public boolean standsInRoundBelow() {
        return !has(stitch -> !stitch.standsInStitchBelow());
    }

    /** Whether every stitch of the round is of this kind. */
    public boolean isAll(Stitch stitch) {
        return fromCorner.isAll(stitch) && repeat.isAll(stitch) && toCorner.isAll(stitch);
    }
}
