package edgewright.draw.side;

import edgewright.chart.BorderGrid;
import edgewright.chart.BorderShape;
import edgewright.chart.Chart;
import edgewright.chart.GridCell;
import edgewright.chart.PerSide;
import edgewright.chart.Section;
import edgewright.chart.Side;
import edgewright.chart.SidePlace;
import edgewright.chart.SideShape;
import edgewright.draw.grid.CellRange;
import edgewright.draw.grid.Rotation;
import edgewright.draw.picture.CellLayout;
import edgewright.draw.picture.PictureStyle;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;

/**
 * Where the cells of one level side lie: the corner just turned, the part from it, the repeat once, the part to the next corner
 * and that corner, with the piece below. A fabric column is a column of the picture; so each row is two cells longer than the one
 * below it, a corner at each end.
 *
 * <p>Right-handed makers work it from right to left; for left-handed ones it is seen in a mirror.
 */
public final class SideLayout extends CellLayout {
    private final Side side;

    private SideLayout(BorderShape border, Side side, int rounds, Placement placement) {
        super(part(border, side, rounds), placement);
        this.side = side;
    }

    /**
     * A side of a chart.
     *
     * @param shown the columns and rows that are shown; empty for all
     * @param leftMm where the first shown column begins
     * @param topMm where the first shown row begins
     */
    static SideLayout of(
            Chart chart, Side side, PictureStyle style, Optional<CellRange> shown, double leftMm, double topMm) {
        Rotation level = Rotation.values()[side.ordinal()];
        return new SideLayout(
                chart.border(),
                side,
                chart.rounds().size(),
                new Placement(style.cellMm(), level, style.hand(), shown, leftMm, topMm));
    }

    private static Part part(BorderShape border, Side side, int rounds) {
        return new Part(
                new BorderGrid(border, PerSide.all(1)),
                rounds,
                PerSide.each(each -> each == side ? EnumSet.copyOf(Section.of(side)) : Set.of()),
                EnumSet.of(side, side.previous()));
    }

    /** The side that is drawn. */
    public Side side() {
        return side;
    }

    /** How it is put together. */
    public SideShape shape() {
        return grid().border().on(side);
    }

    /** The stitches of the side in a round, with the repeat once. */
    public int stitches(int round) {
        return shape().stitches(round, 1);
    }

    /** The first column of a section in the base round, counted in working order from the corner just turned, from 0. */
    int begins(Section section) {
        return switch (section) {
            case FROM_CORNER -> 0;
            case REPEAT -> shape().a();
            case TO_CORNER -> shape().a() + shape().w();
        };
    }

    /** The cell of a stitch, counted from 1 at the corner just turned; 0 and one past the last are the corners. */
    public GridCell cell(int round, int stitch) {
        return stitch == 0
                ? grid().cornerCell(side.previous(), round)
                : grid().cellOf(side, new SidePlace(round, stitch));
    }

    /** The round that is drawn in a row, counted from 0 at the top of the whole picture. */
    public int roundOfRow(int row) {
        return rounds() - row;
    }

    /** Which column of the picture a stitch is drawn in. */
    public int column(int round, int stitch) {
        return columnOf(cell(round, stitch));
    }

    /**
     * Where a point of the side lies on the squared paper.
     *
     * @param along from the beginning of the base round's first stitch, in working order, in cells
     * @param out from the inner edge of the base round away from the piece, in cells
     */
    double x(double along, double out) {
        return switch (side) {
            case TOP -> grid().width() - along;
            case LEFT -> -out;
            case BOTTOM -> along;
            case RIGHT -> grid().width() + out;
        };
    }

    /** The other coordinate of the same point. */
    double y(double along, double out) {
        return switch (side) {
            case TOP -> -out;
            case LEFT -> along;
            case BOTTOM -> grid().height() + out;
            case RIGHT -> grid().height() - along;
        };
    }
}
