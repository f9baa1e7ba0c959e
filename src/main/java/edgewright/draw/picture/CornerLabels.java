package edgewright.draw.picture;

import static edgewright.texts.Arg.count;

import edgewright.chart.Chart;
import edgewright.chart.Colour;
import edgewright.chart.GridCell;
import edgewright.chart.Place;
import edgewright.chart.Section;
import edgewright.chart.Yarn;
import edgewright.draw.grid.CellRange;
import edgewright.draw.marks.Emphasis;
import edgewright.draw.marks.Mark;
import edgewright.draw.marks.MarkKind;
import edgewright.draw.paint.Area;
import edgewright.draw.paint.ColourMode;
import edgewright.draw.paint.Frame;
import edgewright.draw.paint.Lettering;
import edgewright.draw.paint.Palette;
import edgewright.draw.paint.PenPath;
import edgewright.draw.paint.Shape;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What stands around the cells of a corner: numbers and yarns of rounds, the way of working, and what the repeat is. */
public final class CornerLabels {
    private final Chart chart;
    private final Map<Integer, List<Emphasis.Flag>> flagged;
    private final PictureStyle style;
    private final Palette palette;
    private final CornerSheet sheet;
    private final CornerLayout layout;
    private final double cellMm;

    CornerLabels(Chart chart, PictureStyle style, Emphasis emphasis, CornerSheet sheet) {
        this.chart = chart;
        this.flagged = emphasis.byRound();
        this.style = style;
        this.palette = style.palette();
        this.sheet = sheet;
        this.layout = sheet.layout();
        this.cellMm = layout.cellMm();
    }

    List<Mark> marks() {
        List<Mark> marks = new ArrayList<>();
        for (int round = 0; round <= layout.rounds(); round++) {
            for (Arm arm : Arm.values()) {
                addEnds(marks, arm, round);
            }
        }
        if (layout.isShown(layout.cornerCell(layout.rounds()))) {
            marks.add(direction());
        }
        for (Arm arm : Arm.values()) {
            bracket(arm).ifPresent(marks::add);
        }
        for (Chart.RaggedSection ragged : chart.raggedSections()) {
            if (ragged.length() > ragged.expected()) {
                addSurplus(marks, ragged);
            }
        }
        return marks;
    }

    /** The labels at the far end of a round on an arm, and at the near end where its corner is not shown. */
    private void addEnds(List<Mark> marks, Arm arm, int round) {
        GridCell corner = layout.cornerCell(round);
        GridCell end = arm.cell(layout.end(arm) - 1, round);
        int column = layout.columnOf(corner);
        int row = layout.rowOf(corner);
        int endColumn = layout.columnOf(end);
        int endRow = layout.rowOf(end);
        CellRange shown = layout.shown();
        boolean level = row == endRow;
        int first = level
                ? Math.max(Math.min(column, endColumn), shown.firstColumn())
                : Math.max(Math.min(row, endRow), shown.firstRow());
        int last = level
                ? Math.min(Math.max(column, endColumn), shown.endColumn() - 1)
                : Math.min(Math.max(row, endRow), shown.endRow() - 1);
        boolean crosses = level
                ? shown.firstRow() <= row && row < shown.endRow()
                : shown.firstColumn() <= column && column < shown.endColumn();
        if (!crosses || first > last) {
            return;
        }
        boolean cornerShown = layout.isShown(corner);
        boolean onward = level ? endColumn > column : endRow > row;
        if (onward || !cornerShown) {
            addEnd(marks, round, level, level ? last : column, level ? row : last, 1);
        }
        if (!onward || !cornerShown) {
            addEnd(marks, round, level, level ? first : column, level ? row : first, -1);
        }
    }

    /**
     * The number and the yarn of a round beside its last shown cell.
     *
     * @param level whether the round runs level there
     * @param outward 1 to the right or downwards, -1 to the left or upwards
     */
    private void addEnd(List<Mark> marks, int round, boolean level, int column, int row, int outward) {
        Area cell = layout.areaOf(layout.cellAtColumn(column, row));
        double gap = CornerSheet.GAP * cellMm;
        double size = sheet.numberSizeMm();
        double capital = Lettering.CAPITAL * size;
        if (level) {
            double edge = outward > 0 ? cell.rightMm() + gap : cell.xMm() - gap;
            double right = outward > 0 ? edge + sheet.numberWidthMm() : edge;
            number(marks, round, right, cell.middleYMm() + capital / 2, Shape.Anchor.END);
            double chip = outward > 0 ? right + gap : right - sheet.numberWidthMm() - gap - sheet.chipWidthMm();
            Area plate = new Area(chip, cell.middleYMm() - 0.36 * cellMm, sheet.chipWidthMm(), 0.72 * cellMm);
            yarn(marks, round, plate, false);
            double badge = outward > 0 ? plate.rightMm() + 0.8 * cellMm : plate.xMm() - 0.8 * cellMm;
            flags(marks, round, badge, cell.middleYMm());
        } else {
            double base = outward > 0 ? cell.bottomMm() + gap + capital : cell.yMm() - gap;
            number(marks, round, cell.middleXMm(), base, Shape.Anchor.MIDDLE);
            double chip = outward > 0 ? base + gap : base - capital - gap - sheet.columnChipMm();
            Area plate = new Area(cell.middleXMm() - 0.4 * cellMm, chip, 0.8 * cellMm, sheet.columnChipMm());
            yarn(marks, round, plate, !sheet.chipsUpright());
            double badge = outward > 0 ? plate.bottomMm() + 0.6 * cellMm : plate.yMm() - 0.6 * cellMm;
            flags(marks, round, cell.middleXMm(), badge);
        }
    }

    private void number(List<Mark> marks, int round, double xMm, double baseMm, Shape.Anchor anchor) {
        String text = round == 0 ? style.says().text("base") : Integer.toString(round);
        double size = anchor == Shape.Anchor.MIDDLE
                ? CornerSheet.fitted(text, Shape.Weight.REGULAR, sheet.numberSizeMm(), 0.92 * cellMm)
                : sheet.numberSizeMm();
        Shape shape = new Shape.Text(
                text,
                xMm,
                baseMm,
                size,
                Shape.Weight.REGULAR,
                anchor,
                0,
                round == 0 ? palette.quietInk() : palette.ink());
        marks.add(Mark.beside(MarkKind.ROUND_NUMBER, List.of(shape)));
    }

    private void yarn(List<Mark> marks, int round, Area plate, boolean rotated) {
        if (round > 0) {
            Yarn yarn = chart.yarnOf(round);
            marks.add(new Mark(
                    MarkKind.YARN_LETTER,
                    Optional.empty(),
                    Optional.empty(),
                    Optional.of(yarn.id()),
                    chip(yarn, plate, rotated, sheet.chipSizeMm(), style)));
        }
    }

    /** A plate in the colour of a yarn, or a white one where there is no colour, with its id. */
    public static List<Shape> chip(Yarn yarn, Area plate, boolean rotated, double sizeMm, PictureStyle style) {
        Palette palette = style.palette();
        double edge = style.inking() == ColourMode.COLOUR ? 0.05 : 0.09;
        Colour ground = style.inking() == ColourMode.COLOUR ? yarn.colour() : palette.paper();
        double capital = Lettering.CAPITAL * sizeMm;
        return List.of(
                new Shape.Fill(PenPath.rounded(plate, 0.3 * sizeMm), ground),
                new Shape.Line(PenPath.rounded(plate, 0.3 * sizeMm), edge * sizeMm, palette.quietInk()),
                new Shape.Text(
                        yarn.id(),
                        rotated ? plate.middleXMm() + capital / 2 : plate.middleXMm(),
                        rotated ? plate.middleYMm() : plate.middleYMm() + capital / 2,
                        sizeMm,
                        Shape.Weight.BOLD,
                        Shape.Anchor.MIDDLE,
                        rotated ? 3 : 0,
                        style.inking().on(ground)));
    }

    private void flags(List<Mark> marks, int round, double xMm, double yMm) {
        List<Emphasis.Flag> flags = flagged.getOrDefault(round, List.of());
        if (!flags.isEmpty()) {
            marks.add(Mark.beside(MarkKind.FLAG, FindingShapes.badge(xMm, yMm, cellMm, flags, palette)));
        }
    }

    /** An arrow that comes along the incoming side and turns the corner. */
    private Mark direction() {
        Frame paper = layout.paperFrame();
        double edge = -layout.rounds() - 1;
        double off = edge - 0.85;
        double arm = edge + CornerSheet.directionArm(layout);
        double round = 0.9;
        double handle = 0.4;
        PenPath arrow = new PenPath.Builder()
                .moveTo(arm, off)
                .lineTo(off + round, off)
                .curveTo(off + handle, off, off, off + handle, off, off + round)
                .lineTo(off, arm)
                .moveTo(off - 0.26, arm - 0.42)
                .lineTo(off, arm)
                .lineTo(off + 0.26, arm - 0.42)
                .build()
                .through(paper);
        boolean incomingArmIsHorizontal = layout.rotation().incomingArmIsHorizontal();
        double x = incomingArmIsHorizontal
                ? paper.xMm(arm + CornerSheet.DIRECTION_WORDS_GAP, off)
                : paper.xMm(off, arm + CornerSheet.DIRECTION_WORDS_GAP);
        double y = incomingArmIsHorizontal
                ? paper.yMm(arm + CornerSheet.DIRECTION_WORDS_GAP, off)
                : paper.yMm(off, arm + CornerSheet.DIRECTION_WORDS_GAP);
        boolean rightwards = x > paper.xMm(edge, edge);
        double size = sheet.numberSizeMm();
        return Mark.beside(
                MarkKind.DIRECTION,
                List.of(
                        new Shape.Line(arrow, 0.08 * cellMm, palette.accent()),
                        new Shape.Text(
                                style.says().text("direction"),
                                x,
                                y + Lettering.CAPITAL * size / 2,
                                size,
                                Shape.Weight.REGULAR,
                                rightwards ? Shape.Anchor.START : Shape.Anchor.END,
                                0,
                                palette.accent())));
    }

    /** The bracket along the repeat that is drawn farthest from the corner, on the piece's side. */
    private Optional<Mark> bracket(Arm arm) {
        Frame paper = layout.paperFrame();
        int end = layout.end(arm);
        int start = end - layout.shape(arm).w();
        if (!layout.isShown(arm.cell(start, 0)) || !layout.isShown(arm.cell(end - 1, 0))) {
            return Optional.empty();
        }
        double tick = 0.25;
        double depth = 0.6;
        double inset = 0.08;
        PenPath.Builder path = new PenPath.Builder();
        path.moveTo(arm.x(start + inset, -tick), arm.y(start + inset, -tick));
        path.lineTo(arm.x(start + inset, -depth), arm.y(start + inset, -depth));
        path.lineTo(arm.x(end - inset, -depth), arm.y(end - inset, -depth));
        path.lineTo(arm.x(end - inset, -tick), arm.y(end - inset, -tick));
        List<Shape> shapes = new ArrayList<>();
        shapes.add(new Shape.Line(
                path.build().through(paper), 0.07 * cellMm, palette.accent(), Shape.Ends.CUT, List.of()));
        shapes.add(repeatText(arm, start, end, depth));
        return Optional.of(Mark.beside(MarkKind.REPEAT, shapes));
    }

    private Shape repeatText(Arm arm, double start, double end, double depth) {
        boolean incoming = arm == Arm.INCOMING;
        Frame paper = layout.paperFrame();
        String text =
                style.says().text("repeat", count("stitches", layout.shape(arm).w()));
        double size = sheet.numberSizeMm();
        double half = Lettering.widthMm(text, Shape.Weight.REGULAR, size) / cellMm / 2;
        // In the middle of the bracket, not beyond the end of the arm; but clear of the other arm's words before all.
        double along = Math.max(Math.min((start + end) / 2, end - half), CornerSheet.REPEAT_WORDS_AT + half);
        double inward = depth + 0.3;
        double x = paper.xMm(arm.x(along, -inward), arm.y(along, -inward));
        double y = paper.yMm(arm.x(along, -inward), arm.y(along, -inward));
        double pieceX = incoming ? paper.outXMm() : paper.alongXMm();
        double pieceY = incoming ? paper.outYMm() : paper.alongYMm();
        double capital = Lettering.CAPITAL * size;
        boolean level = pieceX == 0;
        return new Shape.Text(
                text,
                pieceX > 0 ? x + capital : x,
                pieceY > 0 ? y + capital : y,
                size,
                Shape.Weight.REGULAR,
                Shape.Anchor.MIDDLE,
                level ? 0 : 3,
                palette.accent());
    }

    /** How many stitches too many a section has, at its last cell: there is no cell for them. */
    private void addSurplus(List<Mark> marks, Chart.RaggedSection ragged) {
        Section section = ragged.section();
        int atEnd = section == Section.TO_CORNER ? 1 : ragged.expected();
        Place last = new Place(ragged.round(), section, Math.max(1, atEnd));
        String text = style.says().text("surplus", count("stitches", ragged.length() - ragged.expected()));
        double size = 0.42 * cellMm;
        double width = Lettering.widthMm(text, Shape.Weight.BOLD, size) + 0.2 * cellMm;
        for (GridCell cell : layout.cellsOf(last)) {
            Area area = layout.areaOf(cell);
            Area plate = new Area(area.middleXMm() - width / 2, area.middleYMm() - 0.28 * cellMm, width, 0.56 * cellMm);
            marks.add(new Mark(
                    MarkKind.SURPLUS,
                    Optional.of(cell),
                    Optional.of(last),
                    Optional.empty(),
                    List.of(
                            new Shape.Fill(PenPath.rounded(plate, 0.1 * cellMm), palette.paper()),
                            new Shape.Line(PenPath.rounded(plate, 0.1 * cellMm), 0.06 * cellMm, palette.error()),
                            new Shape.Text(
                                    text,
                                    area.middleXMm(),
                                    area.middleYMm() + Lettering.CAPITAL * size / 2,
                                    size,
                                    Shape.Weight.BOLD,
                                    Shape.Anchor.MIDDLE,
                                    0,
                                    palette.error()))));
        }
    }
}
