package edgewright.draw.picture;

import static edgewright.texts.Arg.count;

import edgewright.chart.Chart;
import edgewright.draw.grid.CellRange;
import edgewright.draw.marks.Emphasis;
import edgewright.draw.marks.Mark;
import edgewright.draw.paint.Area;
import edgewright.draw.paint.Lettering;
import edgewright.draw.paint.Shape;
import java.util.List;
import java.util.Optional;

/**
 * The sheet on which a corner is drawn: how large it is, where the cells begin, and how much room the labels need around
 * them. The legend, if there is one, lies in the arms of the corner; the sheet grows if it needs more room than there is.
 */
final class CornerSheet {
    /** Sizes in parts of a cell. */
    static final double GAP = 0.28;

    /** How far from the corner of the piece the words about a repeat may begin, clear of those of the other arm. */
    static final double REPEAT_WORDS_AT = 1.7;

    /** From the arrow for the way of working to its words. */
    static final double DIRECTION_WORDS_GAP = 0.45;

    private static final double EDGE = 0.6;
    private static final double BARE_EDGE = 0.25;
    private static final double DIRECTION_ROOM = 1.35;
    private static final double BRACKET_ROOM = 2.1;
    private static final double NUMBER_SIZE = 0.48;
    private static final double CHIP_SIZE = 0.44;

    private final CornerLayout layout;
    private final double widthMm;
    private final double heightMm;
    private final double numberSizeMm;
    private final double numberWidthMm;
    private final double chipWidthMm;
    private final boolean chipsUpright;
    private final List<Mark> legendMarks;

    private CornerSheet(Chart chart, PictureStyle style, Emphasis emphasis, Optional<CellRange> shown, boolean ringed) {
        double c = style.cellMm();
        int rounds = chart.rounds().size();
        String widest = "0".repeat(Integer.toString(rounds).length());
        numberSizeMm = fitted(widest, Shape.Weight.REGULAR, NUMBER_SIZE * c, 0.92 * c);
        numberWidthMm = Math.max(
                Lettering.widthMm(widest, Shape.Weight.REGULAR, numberSizeMm),
                Lettering.widthMm(style.says().text("base"), Shape.Weight.REGULAR, numberSizeMm));
        double widestId = chart.yarns().stream()
                .mapToDouble(yarn -> Lettering.widthMm(yarn.id(), Shape.Weight.BOLD, CHIP_SIZE * c))
                .max()
                .orElseThrow();
        chipsUpright = widestId <= 0.66 * c;
        chipWidthMm = Math.max(0.8 * c, widestId + 0.32 * c);

        int repeats = style.repeatsOf(chart);
        CornerLayout bare = new CornerLayout(chart.border(), rounds, repeats, placement(style, shown, 0, 0));
        Margins margins = labelMargins(style, emphasis, shown.isPresent(), ringed);
        if (style.labels() && shown.isEmpty()) {
            margins = withRoomForWords(margins, style, bare);
        }
        double arm = (rounds + 1 + BRACKET_ROOM) * c;
        Optional<Legend> legend =
                style.legend() ? Optional.of(Legend.inChart(chart, style, emphasis)) : Optional.empty();
        if (legend.isPresent()) {
            margins = margins.inArms(
                    style,
                    arm + legend.get().widthMm() + EDGE * c - bare.area().widthMm(),
                    arm + legend.get().heightMm() + EDGE * c - bare.area().heightMm());
        }
        layout = new CornerLayout(
                chart.border(), rounds, repeats, placement(style, shown, margins.left(), margins.top()));
        widthMm = layout.area().rightMm() + margins.right();
        heightMm = layout.area().bottomMm() + margins.bottom();
        legendMarks = legend.map(made -> inArms(made, style, arm)).orElse(List.of());
    }

    private static CellLayout.Placement placement(
            PictureStyle style, Optional<CellRange> shown, double leftMm, double topMm) {
        return new CellLayout.Placement(style.cellMm(), style.rotation(), style.hand(), shown, leftMm, topMm);
    }

    private List<Mark> inArms(Legend legend, PictureStyle style, double armMm) {
        Area cells = layout.area();
        return legend.marksAt(
                style.cornerLeft() ? cells.xMm() + armMm : cells.rightMm() - armMm - legend.widthMm(),
                style.rotation().cornerAbove() ? cells.yMm() + armMm : cells.bottomMm() - armMm - legend.heightMm());
    }

    /** The room around the cells, in millimetres. */
    private record Margins(double left, double top, double right, double bottom) {

        /** With at least so much room on the two sides between which the arms of the corner are open. */
        Margins inArms(PictureStyle style, double across, double down) {
            return new Margins(
                    style.cornerLeft() ? left : Math.max(left, across),
                    style.rotation().cornerAbove() ? top : Math.max(top, down),
                    style.cornerLeft() ? Math.max(right, across) : right,
                    style.rotation().cornerAbove() ? Math.max(bottom, down) : bottom);
        }
    }

    /** On short arms the words about the repeat and the way of working go on beyond the last cell. */
    private Margins withRoomForWords(Margins margins, PictureStyle style, CornerLayout bare) {
        double c = bare.cellMm();
        double corner = (bare.rounds() + 1) * c;
        double repeat = corner
                + REPEAT_WORDS_AT * c
                + wordsMm(style.says()
                        .text(
                                "repeat",
                                count("stitches", bare.shape(Arm.INCOMING).w())));
        double direction = (directionArm(bare) + DIRECTION_WORDS_GAP) * c
                + wordsMm(style.says().text("direction"));
        return margins.inArms(
                style,
                Math.max(repeat, direction) + EDGE * c - bare.area().widthMm(),
                repeat + EDGE * c - bare.area().heightMm());
    }

    /** How long an arm of the arrow for the way of working is, in cells from the edge of the corner. */
    static double directionArm(CornerLayout layout) {
        return Math.min(4.5, 0.5 * Math.min(layout.columns(), layout.rows()));
    }

    private double wordsMm(String words) {
        return Lettering.widthMm(words, Shape.Weight.REGULAR, numberSizeMm);
    }

    private Margins labelMargins(PictureStyle style, Emphasis emphasis, boolean tile, boolean ringed) {
        double c = style.cellMm();
        if (!style.labels()) {
            // Rings and their numbers stand out of the cells at the edge.
            double bare = (ringed ? 2 * EDGE : BARE_EDGE) * c;
            return new Margins(bare, bare, bare, bare);
        }
        boolean flaggedRounds =
                emphasis.flags().stream().anyMatch(flag -> flag.round().isPresent());
        double rest = 2 * GAP * c + (flaggedRounds ? 1.4 * c : 0) + EDGE * c;
        double row = rest + numberWidthMm + chipWidthMm;
        double column = rest + Lettering.CAPITAL * numberSizeMm + columnChipMm(c);
        if (tile) {
            return new Margins(row, column, row, column);
        }
        double outer = (DIRECTION_ROOM + EDGE) * c;
        boolean left = style.cornerLeft();
        boolean above = style.rotation().cornerAbove();
        return new Margins(left ? outer : row, above ? outer : column, left ? row : outer, above ? column : outer);
    }

    /** @param ringed whether rings, which stand out of the cells at the edge, have room even where nothing else does */
    static CornerSheet of(
            Chart chart, PictureStyle style, Emphasis emphasis, Optional<CellRange> shown, boolean ringed) {
        return new CornerSheet(chart, style, emphasis, shown, ringed);
    }

    CornerLayout layout() {
        return layout;
    }

    double widthMm() {
        return widthMm;
    }

    double heightMm() {
        return heightMm;
    }

    /** The size of the numbers of rounds; three figures fit in the width of a cell. */
    double numberSizeMm() {
        return numberSizeMm;
    }

    /** The room the widest number of a round takes. */
    double numberWidthMm() {
        return numberWidthMm;
    }

    /** The size of the letters of yarns. */
    double chipSizeMm() {
        return CHIP_SIZE * layout.cellMm();
    }

    /** The width of a yarn's chip beside a row. */
    double chipWidthMm() {
        return chipWidthMm;
    }

    /** Whether a yarn's letter stands upright in a chip at the end of a column; a long one is rotated. */
    boolean chipsUpright() {
        return chipsUpright;
    }

    /** How far a yarn's chip reaches out from the end of a column. */
    double columnChipMm() {
        return columnChipMm(layout.cellMm());
    }

    /** The legend's marks, where they lie on this sheet. */
    List<Mark> legendMarks() {
        return legendMarks;
    }

    /** The size at which a text is no wider than that, and no more than the size asked for. */
    static double fitted(String text, Shape.Weight weight, double sizeMm, double widthMm) {
        double width = Lettering.widthMm(text, weight, sizeMm);
        return width <= widthMm ? sizeMm : sizeMm * widthMm / width;
    }

    private double columnChipMm(double c) {
        return chipsUpright ? 0.72 * c : chipWidthMm;
    }
}
