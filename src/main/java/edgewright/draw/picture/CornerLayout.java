package edgewright.draw.picture;

import edgewright.chart.BorderGrid;
import edgewright.chart.GridCell;
import edgewright.chart.GridContent;
import edgewright.chart.HookHand;
import edgewright.chart.PerSide;
import edgewright.chart.Place;
import edgewright.chart.Section;
import edgewright.chart.Side;
import edgewright.chart.SidePlace;
import edgewright.chart.SideShape;
import edgewright.draw.paint.Area;
import edgewright.draw.paint.Frame;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * Where each cell of a corner lies on the paper, and what lies in it: the corner is drawn as an angle of two limbs, with the
 * piece in its arms.
 *
 * <p>Cells are those of {@link BorderGrid} for a border with the drawn repeats on every side; the drawn corner is the one
 * between top and left, which {@link Rotation} then turns; for a left-handed maker all of that is seen in a mirror. A layout may show a part of the corner only, as on one page of several.
 */
public final class CornerLayout {
    private final BorderGrid grid;
    private final int rounds;
    private final int repeats;
    private final double cellMm;
    private final Rotation turn;
    private final HookHand hand;
    private final CellRange shown;
    private final double leftMm;
    private final double topMm;

    /**
     * @param rounds the outermost round; the base round is drawn too
     * @param repeats how often the repeat is drawn on each limb
     * @param shown the part of the corner that is shown
     * @param leftMm where the first shown column begins on the paper
     * @param topMm where the first shown row begins on the paper
     */
    CornerLayout(
            SideShape shape,
            int rounds,
            int repeats,
            double cellMm,
            Rotation turn,
            HookHand hand,
            Optional<CellRange> shown,
            double leftMm,
            double topMm) {
        this.grid = new BorderGrid(shape, PerSide.all(repeats));
        this.rounds = rounds;
        this.repeats = repeats;
        this.cellMm = cellMm;
        this.turn = turn;
        this.hand = hand;
        this.shown = shown.orElseGet(() -> new CellRange(0, 0, columns(), rows()));
        this.leftMm = leftMm;
        this.topMm = topMm;
    }

    /** The squared paper that the corner is cut from. */
    public BorderGrid grid() {
        return grid;
    }

    /** The outermost round. */
    public int rounds() {
        return rounds;
    }

    /** How often the repeat is drawn on each limb. */
    public int repeats() {
        return repeats;
    }

    /** The edge of a cell. */
    public double cellMm() {
        return cellMm;
    }

    /** How the corner lies, seen in a mirror for a left-handed maker. */
    public Rotation turn() {
        return turn;
    }

    /** Whose corner it is. */
    public HookHand hand() {
        return hand;
    }

    /** The cells across the whole corner as it is drawn, shown or not. */
    public int columns() {
        return turn.incomingLevel() ? unturnedColumns() : unturnedRows();
    }

    /** The cells down the whole corner as it is drawn, shown or not. */
    public int rows() {
        return turn.incomingLevel() ? unturnedRows() : unturnedColumns();
    }

    /** The part of the corner that is shown. */
    public CellRange shown() {
        return shown;
    }

    /** The rectangle that holds all shown cells; the piece lies in it too. */
    public Area area() {
        return new Area(leftMm, topMm, shown.columns() * cellMm, shown.rows() * cellMm);
    }

    /** Where a cell lies on the paper, shown or not. */
    public Area areaOf(GridCell cell) {
        return new Area(
                leftMm + (columnOf(cell) - shown.firstColumn()) * cellMm,
                topMm + (rowOf(cell) - shown.firstRow()) * cellMm,
                cellMm,
                cellMm);
    }

    /** The cell at a point of the paper, if a stitch or a corner of the border is drawn there, be it of the base round. */
    public Optional<GridCell> cellAt(double xMm, double yMm) {
        int column = shown.firstColumn() + (int) Math.floor((xMm - leftMm) / cellMm);
        int row = shown.firstRow() + (int) Math.floor((yMm - topMm) / cellMm);
        return shown.holds(column, row)
                ? Optional.of(cellAtColumn(column, row)).filter(this::isDrawn)
                : Optional.empty();
    }

    /** The cell one step away, if something is drawn there. */
    public Optional<GridCell> neighbour(GridCell cell, Direction heading) {
        int column = columnOf(cell) + heading.columns();
        int row = rowOf(cell) + heading.rows();
        return shown.holds(column, row)
                ? Optional.of(cellAtColumn(column, row)).filter(this::isDrawn)
                : Optional.empty();
    }

    /** The stitch that is drawn in a cell; empty for corner chains and for cells that show nothing of the border. */
    public Optional<ArmPlace> stitchIn(GridCell cell) {
        if (!(grid.contentOf(cell) instanceof GridContent.SideStitch stitch)
                || stitch.place().round() > rounds) {
            return Optional.empty();
        }
        for (Arm limb : Arm.values()) {
            if (limb.side() == stitch.side()) {
                Place place = grid.shape().placeOf(stitch.place(), repeats);
                int occurrence = place.section() == Section.REPEAT ? occurrence(stitch.place()) : 1;
                return limb.shows(place.section())
                        ? Optional.of(new ArmPlace(limb, place, occurrence))
                        : Optional.empty();
            }
        }
        return Optional.empty();
    }

    /** The round whose corner chains are drawn in a cell; empty for any other cell. */
    public Optional<Integer> cornerIn(GridCell cell) {
        return grid.contentOf(cell) instanceof GridContent.CornerChains corner
                        && corner.after() == Arm.INCOMING.side()
                        && corner.round() <= rounds
                ? Optional.of(corner.round())
                : Optional.empty();
    }

    /** The charted rounds of which a cell has its middle in an area of the paper, ascending. */
    public List<Integer> rounds(Area area) {
        Set<Integer> found = new TreeSet<>();
        double left = leftMm + Math.ceil((area.xMm() - leftMm) / cellMm - 0.5) * cellMm;
        double top = topMm + Math.ceil((area.yMm() - topMm) / cellMm - 0.5) * cellMm;
        for (double y = top + cellMm / 2; y < area.bottomMm(); y += cellMm) {
            for (double x = left + cellMm / 2; x < area.rightMm(); x += cellMm) {
                cellAt(x, y)
                        .flatMap(cell -> stitchIn(cell)
                                .map(stitch -> stitch.place().round())
                                .or(() -> cornerIn(cell)))
                        .filter(round -> round > 0)
                        .ifPresent(found::add);
            }
        }
        return List.copyOf(found);
    }

    /** The cell of a drawn stitch. */
    public GridCell cellOf(ArmPlace stitch) {
        SidePlace place = grid.shape().sidePlaceOf(stitch.place(), repeats, stitch.occurrence());
        return grid.cellOf(stitch.limb().side(), place);
    }

    /** The cell of the corner chains of a round. */
    public GridCell cornerCell(int round) {
        return grid.cornerCell(Arm.INCOMING.side(), round);
    }

    /** All shown cells in which a place of the chart is drawn, first those of the incoming limb, in working order. */
    public List<GridCell> cellsOf(Place place) {
        List<GridCell> cells = new ArrayList<>();
        for (Arm limb : Arm.values()) {
            if (limb.shows(place.section())) {
                int times = place.section() == Section.REPEAT ? repeats : 1;
                for (int occurrence = 1; occurrence <= times; occurrence++) {
                    GridCell cell = cellOf(new ArmPlace(limb, place, occurrence));
                    if (isShown(cell)) {
                        cells.add(cell);
                    }
                }
            }
        }
        return List.copyOf(cells);
    }

    /** Whether a stitch or a corner of the border is drawn in this cell and the cell is in the part that is shown. */
    public boolean isDrawn(GridCell cell) {
        return isShown(cell) && (stitchIn(cell).isPresent() || cornerIn(cell).isPresent());
    }

    /** Whether this cell is in the part that is shown. */
    boolean isShown(GridCell cell) {
        return shown.holds(columnOf(cell), rowOf(cell));
    }

    /** The column of a cell as drawn, from 0 for the whole corner. */
    int columnOf(GridCell cell) {
        int u = cell.x() + rounds + 1;
        int v = cell.y() + rounds + 1;
        return inMirror(
                switch (turn) {
                    case NONE -> u;
                    case QUARTER -> unturnedRows() - 1 - v;
                    case HALF -> unturnedColumns() - 1 - u;
                    case THREE_QUARTERS -> v;
                });
    }

    /** The row of a cell as drawn, from 0 for the whole corner. */
    int rowOf(GridCell cell) {
        int u = cell.x() + rounds + 1;
        int v = cell.y() + rounds + 1;
        return switch (turn) {
            case NONE -> v;
            case QUARTER -> u;
            case HALF -> unturnedRows() - 1 - v;
            case THREE_QUARTERS -> unturnedColumns() - 1 - u;
        };
    }

    /** The cell that is drawn in a column and a row, whether anything is drawn there or not. */
    GridCell cellAtColumn(int drawnColumn, int row) {
        int column = inMirror(drawnColumn);
        int u;
        int v;
        switch (turn) {
            case NONE -> {
                u = column;
                v = row;
            }
            case QUARTER -> {
                u = row;
                v = unturnedRows() - 1 - column;
            }
            case HALF -> {
                u = unturnedColumns() - 1 - column;
                v = unturnedRows() - 1 - row;
            }
            default -> {
                u = unturnedColumns() - 1 - row;
                v = column;
            }
        }
        return new GridCell(u - rounds - 1, v - rounds - 1);
    }

    /** The frame in which the marks of a side's cell are made. */
    Frame frameOf(GridCell cell, Side side) {
        Area area = areaOf(cell);
        // A turn clockwise undoes the turn anticlockwise from one side to the next.
        int quarters = Math.floorMod(side.ordinal() - turn.ordinal(), 4);
        Frame frame = Frame.of(quarters, area.middleXMm(), area.middleYMm(), cellMm);
        return hand == HookHand.LEFT ? frame.mirrored() : frame;
    }

    /** Where a point of the unturned squared paper lies, in cells: (0, 0) is the corner of the piece. */
    Frame paperFrame() {
        Area zero = areaOf(new GridCell(0, 0));
        double c = cellMm;
        boolean mirrored = hand == HookHand.LEFT;
        double left = mirrored ? zero.rightMm() : zero.xMm();
        double right = mirrored ? zero.xMm() : zero.rightMm();
        Frame frame = switch (turn) {
            case NONE -> new Frame(left, zero.yMm(), c, 0, 0, c);
            case QUARTER -> new Frame(right, zero.yMm(), 0, c, -c, 0);
            case HALF -> new Frame(right, zero.bottomMm(), -c, 0, 0, -c);
            case THREE_QUARTERS -> new Frame(left, zero.bottomMm(), 0, -c, c, 0);
        };
        return mirrored ? frame.mirrored() : frame;
    }

    private int inMirror(int column) {
        return hand == HookHand.LEFT ? columns() - 1 - column : column;
    }

    private int occurrence(SidePlace stitch) {
        int from = grid.shape().length(Section.FROM_CORNER, stitch.round());
        return (stitch.stitch() - from - 1) / grid.shape().w() + 1;
    }

    private int unturnedColumns() {
        return rounds + 1 + grid.shape().b() + repeats * grid.shape().w();
    }

    private int unturnedRows() {
        return rounds + 1 + grid.shape().a() + repeats * grid.shape().w();
    }
}
