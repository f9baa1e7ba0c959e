package edgewright.booklet.choice;

/**
 * How large the cells of a chart may be in an edition, in millimetres.
 *
 * @param smallestMm the smallest that is printed to save sheets
 * @param comfortableMm the largest that is printed where there is room for more
 * @param posterMm of a poster
 */
public record CellSizes(double smallestMm, double comfortableMm, double posterMm) {
    /** Numbers beside the rounds are then of 13 to 14 points; larger cells would scatter a chart over dozens of sheets. */
    private static final double LARGE_MM = 10;

    /** Hatches are finer than colours. */
    private static final double HATCHED_MM = 5;

    /** Letters of yarns in the corners of squares are to be read in the copy of a copy. */
    private static final double LETTERED_MM = 6;

    private static final double COMFORTABLE_MM = 6.5;
    private static final double POSTER_MM = 9;

    /**
     * The sizes of a chart in an edition; where one is asked for, that one.
     *
     * @param lettered whether in one ink yarns have their letters in the squares
     */
    public static CellSizes of(BookletOptions options, boolean lettered) {
        if (options.cellMm().isPresent()) {
            double cellMm = options.cellMm().getAsDouble();
            return new CellSizes(cellMm, cellMm, cellMm);
        }
        return switch (options.edition()) {
            case STANDARD -> new CellSizes(PrintChoice.SMALLEST_CELL_MM, COMFORTABLE_MM, POSTER_MM);
            case LARGE_PRINT -> new CellSizes(LARGE_MM, LARGE_MM, LARGE_MM);
            case BLACK_AND_WHITE -> new CellSizes(lettered ? LETTERED_MM : HATCHED_MM, COMFORTABLE_MM, POSTER_MM);
        };
    }
}
