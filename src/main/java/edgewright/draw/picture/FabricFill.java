package edgewright.draw.picture;

import edgewright.draw.fabric.Detail;
import java.util.Optional;

/** How the cells of the fabric layer are filled. */
public enum FabricFill {
    /** Each cell flat in the yarn that shows: calm under marks. */
    FLAT(Optional.empty()),
    /** Worked fabric for stitches of a few pixels. */
    SMALL(Optional.of(Detail.SIMPLE)),
    /** Worked fabric in strands of yarn with light and shade. */
    SHADED(Optional.of(Detail.STRANDS)),
    /** Worked fabric as it looks from the right side, down to the plies of the yarn. */
    WORKED(Optional.of(Detail.PLIES));

    /** Dots an inch of a fine screen, on which a picture without pixels of its own is looked at. */
    public static final double SCREEN_DPI = 192;

    /** Dots an inch of print, as far as tones can be told apart in it. */
    public static final double PRINT_DPI = 200;

    private static final double MM_PER_INCH = 25.4;

    @SuppressWarnings("ImmutableEnumChecker") // of an enum
    private final Optional<Detail> detail;

    FabricFill(Optional<Detail> detail) {
        this.detail = detail;
    }

    /** How much of the yarn is drawn; empty for flat cells. */
    Optional<Detail> detail() {
        return detail;
    }

    /**
     * Worked fabric, with what is seen of its stitches.
     *
     * @param cellMm how wide a stitch is
     * @param dpi how many dots an inch the picture has, or the screen or print it is looked at on
     */
    public static FabricFill ofDots(double cellMm, double dpi) {
        return of(Detail.ofDots(cellMm * dpi / MM_PER_INCH));
    }

    private static FabricFill of(Detail detail) {
        return switch (detail) {
            case SIMPLE -> SMALL;
            case STRANDS -> SHADED;
            case PLIES -> WORKED;
        };
    }
}
