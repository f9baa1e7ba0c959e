package edgewright.draw.side;

import static edgewright.texts.Arg.count;

import edgewright.chart.Chart;
import edgewright.chart.HookHand;
import edgewright.chart.Section;
import edgewright.chart.Yarn;
import edgewright.draw.grid.CellRange;
import edgewright.draw.marks.Emphasis;
import edgewright.draw.marks.Mark;
import edgewright.draw.marks.MarkKind;
import edgewright.draw.paint.Area;
import edgewright.draw.paint.Lettering;
import edgewright.draw.paint.Palette;
import edgewright.draw.paint.PenPath;
import edgewright.draw.paint.Shape;
import edgewright.draw.picture.CornerLabels;
import edgewright.draw.picture.FindingShapes;
import edgewright.draw.picture.PictureStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What stands around the cells of a level side: number and yarn at both ends of each row, the tens of the outermost row over it,
 * the way of working, and under it what is the repeat.
 */
final class SideLabels {
    /** How far under the cells the words about sections stand, in cells. */
    static final double WORDS_DOWN = 1.35;

    /** From word to word on one line, in cells. */
    static final double BETWEEN = 1;

    private final Chart chart;
    private final Map<Integer, List<Emphasis.Flag>> flagged;
    private final PictureStyle style;
    private final Palette palette;
    private final SideSheet sheet;
    private final SideLayout layout;
    private final double c;
    private final List<Mark> marks = new ArrayList<>();

    SideLabels(Chart chart, PictureStyle style, Emphasis emphasis, SideSheet sheet) {
        this.chart = chart;
        this.flagged = emphasis.byRound();
        this.style = style;
        this.palette = style.palette();
        this.sheet = sheet;
        this.layout = sheet.layout();
        this.c = layout.cellMm();
    }

    List<Mark> marks() {
        CellRange shown = layout.shown();
        for (int row = shown.endRow() - 1; row >= shown.firstRow(); row--) {
            addEnds(layout.roundOfRow(row));
        }
        addRuler(layout.roundOfRow(shown.firstRow()));
        addDirection(layout.roundOfRow(shown.firstRow()));
        addSections();
        return marks;
    }

    /** The number and the yarn of a round beside its first and its last shown cell. */
    private void addEnds(int round) {
        CellRange shown = layout.shown();
        int one = layout.column(round, 0);
        int other = layout.column(round, layout.stitches(round) + 1);
        int first = Math.max(Math.min(one, other), shown.firstColumn());
        int last = Math.min(Math.max(one, other), shown.endColumn() - 1);
        if (first <= last) {
            int row = layout.rowOf(layout.cell(round, 0));
            addEnd(round, layout.areaOf(layout.cellAtColumn(first, row)), false);
            addEnd(round, layout.areaOf(layout.cellAtColumn(last, row)), true);
        }
    }

    private void addEnd(int round, Area cell, boolean right) {
        double gap = SideSheet.GAP * c;
        double edge = right ? cell.rightMm() + gap : cell.xMm() - gap;
        double numberEnd = right ? edge + sheet.numberWidthMm() : edge;
        marks.add(Mark.beside(
                MarkKind.ROUND_NUMBER,
                List.of(text(
                        round == 0 ? style.says().text("base") : Integer.toString(round),
                        numberEnd,
                        cell.middleYMm() + Lettering.CAPITAL * sheet.numberSizeMm() / 2,
                        Shape.Weight.REGULAR,
                        Shape.Anchor.END,
                        round == 0))));
        double chip = right ? numberEnd + gap : numberEnd - sheet.numberWidthMm() - gap - sheet.chipWidthMm();
        Area plate = new Area(chip, cell.middleYMm() - 0.36 * c, sheet.chipWidthMm(), 0.72 * c);
        if (round > 0) {
            Yarn yarn = chart.yarnOf(round);
            marks.add(new Mark(
                    MarkKind.YARN_LETTER,
                    Optional.empty(),
                    Optional.empty(),
                    Optional.of(yarn.id()),
                    CornerLabels.chip(yarn, plate, false, SideSheet.CHIP_SIZE * c, style)));
        }
        List<Emphasis.Flag> flags = flagged.getOrDefault(round, List.of());
        if (!flags.isEmpty()) {
            double badge = right ? plate.rightMm() + 0.8 * c : plate.xMm() - 0.8 * c;
            marks.add(Mark.beside(MarkKind.FLAG, FindingShapes.badge(badge, cell.middleYMm(), c, flags, palette)));
        }
    }

    /** Over the tenth, twentieth ... stitch of the row: from the corner just turned, and back from the next one. */
    private void addRuler(int round) {
        int repeated = layout.begins(Section.TO_CORNER) + round;
        for (int stitch = 10; stitch <= repeated; stitch += 10) {
            addTen(round, stitch, stitch);
        }
        int back = layout.shape().length(Section.TO_CORNER, round);
        for (int stitch = 10; stitch <= back; stitch += 10) {
            addTen(round, layout.stitches(round) + 1 - stitch, stitch);
        }
    }

    private void addTen(int round, int stitch, int number) {
        if (layout.isShown(layout.cell(round, stitch))) {
            Area cell = layout.areaOf(layout.cell(round, stitch));
            marks.add(Mark.beside(
                    MarkKind.RULER,
                    List.of(text(
                            Integer.toString(number),
                            cell.middleXMm(),
                            cell.yMm() - SideSheet.GAP * c,
                            Shape.Weight.REGULAR,
                            Shape.Anchor.MIDDLE,
                            false))));
        }
    }

    /** An arrow over the corner just turned, and over the next one that its tens are counted back. */
    private void addDirection(int round) {
        if (layout.isShown(layout.cell(round, 0))) {
            Area corner = layout.areaOf(layout.cell(round, 0));
            addArrow(startsRight() ? corner.rightMm() : corner.xMm());
        }
        int last = layout.stitches(round) + 1;
        if (layout.shape().length(Section.TO_CORNER, round) >= 10 && layout.isShown(layout.cell(round, last))) {
            Area corner = layout.areaOf(layout.cell(round, last));
            Shape words = words(
                    style.says().text("side-back"),
                    startsRight() ? corner.xMm() : corner.rightMm(),
                    rulerBaseMm(),
                    startsRight() ? Shape.Anchor.START : Shape.Anchor.END);
            if (isOnSheet(words)) {
                marks.add(Mark.beside(MarkKind.CAPTION, List.of(words)));
            }
        }
    }

    private boolean startsRight() {
        return style.hand() == HookHand.RIGHT;
    }

    private double rulerBaseMm() {
        return layout.area().yMm() - SideSheet.GAP * c;
    }

    private void addArrow(double fromMm) {
        double middle = rulerBaseMm() - Lettering.CAPITAL * sheet.numberSizeMm() / 2;
        double onward = startsRight() ? -c : c;
        double to = fromMm + 1.6 * onward;
        PenPath arrow = new PenPath.Builder()
                .moveTo(fromMm, middle)
                .lineTo(to, middle)
                .moveTo(to - 0.34 * onward, middle - 0.2 * c)
                .lineTo(to, middle)
                .lineTo(to - 0.34 * onward, middle + 0.2 * c)
                .build();
        List<Shape> shapes = new ArrayList<>(List.of(new Shape.Line(arrow, 0.08 * c, palette.accent())));
        Shape words = words(
                style.says().text("direction"),
                to + 0.35 * onward,
                rulerBaseMm(),
                startsRight() ? Shape.Anchor.END : Shape.Anchor.START);
        if (isOnSheet(words)) {
            shapes.add(words);
        }
        marks.add(Mark.beside(MarkKind.DIRECTION, shapes));
    }

    /** The bracket under the repeat, and what the parts beside it are. */
    private void addSections() {
        Area cells = layout.area();
        double base = cells.bottomMm() + WORDS_DOWN * c;
        Optional<Area> repeat = shownColumns(layout.begins(Section.REPEAT), layout.begins(Section.TO_CORNER));
        boolean startsRight = startsRight();
        double leftEnd = cells.middleXMm();
        double rightEnd = leftEnd;
        if (repeat.isPresent()) {
            Shape.Text words = words(
                    style.says().text("repeat", count("stitches", layout.shape().w())),
                    repeat.get().middleXMm(),
                    base,
                    Shape.Anchor.MIDDLE);
            marks.add(Mark.beside(MarkKind.REPEAT, List.of(bracket(repeat.get()), words)));
            leftEnd = Math.min(repeat.get().xMm(), words.bounds().xMm()) - BETWEEN * c;
            rightEnd = Math.max(repeat.get().rightMm(), words.bounds().rightMm()) + BETWEEN * c;
        }
        int first = -layout.rounds() - 1;
        int last = layout.stitches(0) + layout.rounds() + 1;
        boolean from = shownColumns(first, layout.begins(Section.REPEAT)).isPresent();
        boolean to = shownColumns(layout.begins(Section.TO_CORNER), last).isPresent();
        boolean alone = repeat.isEmpty();
        if (from) {
            addCaption(style.says().text("side-from"), startsRight ? rightEnd : leftEnd, base, startsRight, alone);
        }
        if (to) {
            addCaption(style.says().text("side-to"), startsRight ? leftEnd : rightEnd, base, !startsRight, alone);
        }
    }

    private void addCaption(String text, double xMm, double base, boolean rightOfRepeat, boolean alone) {
        Shape.Anchor outwards = rightOfRepeat ? Shape.Anchor.START : Shape.Anchor.END;
        Shape words = words(text, xMm, base, alone ? Shape.Anchor.MIDDLE : outwards);
        if (isOnSheet(words)) {
            marks.add(Mark.beside(MarkKind.CAPTION, List.of(words)));
        }
    }

    /** A part of a side can be too narrow for words; the rows are labelled all the same. */
    private boolean isOnSheet(Shape words) {
        return words.bounds().xMm() >= 0 && words.bounds().rightMm() <= sheet.widthMm();
    }

    private Shape bracket(Area columns) {
        double inset = 0.08 * c;
        double top = columns.bottomMm() + 0.25 * c;
        double low = columns.bottomMm() + 0.6 * c;
        PenPath path = new PenPath.Builder()
                .moveTo(columns.xMm() + inset, top)
                .lineTo(columns.xMm() + inset, low)
                .lineTo(columns.rightMm() - inset, low)
                .lineTo(columns.rightMm() - inset, top)
                .build();
        return new Shape.Line(path, 0.07 * c, palette.accent(), Shape.Ends.CUT, List.of());
    }

    /** The shown part of the columns between two boundaries, which are counted from the first stitch of the base round. */
    private Optional<Area> shownColumns(int from, int to) {
        Area cells = layout.area();
        // The stitches of the outermost round stand in all columns.
        int round = layout.rounds();
        int one = layout.column(round, from + round + 1);
        int other = layout.column(round, to + round);
        int first = Math.max(Math.min(one, other), layout.shown().firstColumn());
        int end = Math.min(Math.max(one, other) + 1, layout.shown().endColumn());
        double left = cells.xMm() + (first - layout.shown().firstColumn()) * c;
        return first < end
                ? Optional.of(new Area(left, cells.yMm(), (end - first) * c, cells.heightMm()))
                : Optional.empty();
    }

    private Shape.Text words(String text, double xMm, double baseMm, Shape.Anchor anchor) {
        return new Shape.Text(
                text, xMm, baseMm, sheet.numberSizeMm(), Shape.Weight.REGULAR, anchor, 0, palette.accent());
    }

    private Shape.Text text(
            String text, double xMm, double baseMm, Shape.Weight weight, Shape.Anchor anchor, boolean quiet) {
        return new Shape.Text(
                text, xMm, baseMm, sheet.numberSizeMm(), weight, anchor, 0, quiet ? palette.quietInk() : palette.ink());
    }
}
