package edgewright.booklet.maker;

import edgewright.booklet.page.PageColour;
import edgewright.chart.Colour;
import edgewright.chart.Side;
import edgewright.draw.marks.Drawing;
import edgewright.draw.marks.Mark;
import edgewright.draw.marks.MarkKind;
import edgewright.draw.paint.Area;
import edgewright.draw.paint.PenPath;
import edgewright.draw.paint.Shape;
import edgewright.texts.Messages;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The piece as a box inside its border, with the sides named and lines to write their counts on. */
final class WorksheetPicture {
    private static final double HEIGHT_MM = 80;
    private static final double LEVEL_BAND_MM = 17;
    private static final double UPRIGHT_BAND_MM = 42;
    private static final double SIZE_MM = 3.6;
    private static final double LINE_MM = 18;
    private static final double ROW_MM = 9.5;
    private static final double GAP_MM = 2;
    private static final double UPRIGHT_MARGIN_MM = 3.5;
    private static final double UPRIGHT_LABEL_MM = 17;

    private final WorksheetPlan plan;
    private final Messages says;
    private final double widthMm;
    private final List<Mark> marks = new ArrayList<>();

    private WorksheetPicture(WorksheetPlan plan, double widthMm) {
        this.plan = plan;
        this.says = plan.options().says();
        this.widthMm = widthMm;
    }

    static Drawing of(WorksheetPlan plan, double widthMm) {
        return new WorksheetPicture(plan, widthMm).drawing();
    }

    private Drawing drawing() {
        Area border = new Area(0.3, 0.3, widthMm - 0.6, HEIGHT_MM - 0.6);
        Area piece =
                new Area(UPRIGHT_BAND_MM, LEVEL_BAND_MM, widthMm - 2 * UPRIGHT_BAND_MM, HEIGHT_MM - 2 * LEVEL_BAND_MM);
        mark(MarkKind.FABRIC_PIECE, new Shape.Fill(PenPath.rectangle(piece), tone(PageColour.WASH)));
        outline(border, 0.3, PageColour.INK);
        outline(piece, 0.3, PageColour.INK);
        corner(border.xMm(), border.yMm(), piece.xMm(), piece.yMm());
        corner(border.rightMm(), border.yMm(), piece.rightMm(), piece.yMm());
        corner(border.xMm(), border.bottomMm(), piece.xMm(), piece.bottomMm());
        corner(border.rightMm(), border.bottomMm(), piece.rightMm(), piece.bottomMm());
        text(
                says.text("worksheet-piece"),
                piece.middleXMm(),
                piece.middleYMm() + 1,
                Shape.Weight.REGULAR,
                Shape.Anchor.MIDDLE,
                tone(PageColour.SOFT));
        level(Side.TOP, LEVEL_BAND_MM / 2);
        level(Side.BOTTOM, HEIGHT_MM - LEVEL_BAND_MM / 2);
        upright(Side.LEFT, UPRIGHT_MARGIN_MM);
        upright(Side.RIGHT, widthMm - UPRIGHT_BAND_MM + UPRIGHT_MARGIN_MM);
        return new Drawing(widthMm, HEIGHT_MM, says.text("worksheet-heading"), says.text("worksheet-picture"), marks);
    }

    /** Name, counted, target and change in one row, in the middle of the band. */
    private void level(Side side, double middleMm) {
        double baseline = middleMm + SIZE_MM / 3;
        String name = says.text("side-" + side);
        List<String> fields = fields();
        double width = width(name, Shape.Weight.BOLD) + 2 * GAP_MM;
        for (String field : fields) {
            width += width(field, Shape.Weight.REGULAR) + LINE_MM + 2 * GAP_MM;
        }
        double x = (widthMm - width) / 2;
        text(name, x, baseline, Shape.Weight.BOLD, Shape.Anchor.START, PageColour.INK);
        x += width(name, Shape.Weight.BOLD) + 2 * GAP_MM;
        for (int i = 0; i < fields.size(); i++) {
            text(fields.get(i), x, baseline, Shape.Weight.REGULAR, Shape.Anchor.START, PageColour.INK);
            x += width(fields.get(i), Shape.Weight.REGULAR) + GAP_MM;
            blank(side, i, x, baseline);
            x += LINE_MM + GAP_MM;
        }
    }

    /** Name, counted, target and change under one another. */
    private void upright(Side side, double leftMm) {
        List<String> fields = fields();
        double baseline = HEIGHT_MM / 2 - 1.5 * ROW_MM + SIZE_MM / 2;
        text(says.text("side-" + side), leftMm, baseline, Shape.Weight.BOLD, Shape.Anchor.START, PageColour.INK);
        for (int i = 0; i < fields.size(); i++) {
            baseline += ROW_MM;
            text(fields.get(i), leftMm, baseline, Shape.Weight.REGULAR, Shape.Anchor.START, PageColour.INK);
            blank(side, i, leftMm + UPRIGHT_LABEL_MM, baseline);
        }
    }

    private List<String> fields() {
        return List.of(says.text("worksheet-counted"), says.text("worksheet-target"), says.text("worksheet-change"));
    }

    /** A line to write on; that of the target bears it, if it is known. */
    private void blank(Side side, int field, double xMm, double baselineMm) {
        mark(
                MarkKind.CAPTION,
                new Shape.Line(
                        PenPath.line(xMm, baselineMm + 0.8, xMm + LINE_MM, baselineMm + 0.8),
                        0.25,
                        tone(PageColour.SOFT)));
        Optional<String> target = field == 1 ? plan.target(side, plan.counting()) : Optional.empty();
        target.ifPresent(number ->
                text(number, xMm + LINE_MM / 2, baselineMm, Shape.Weight.BOLD, Shape.Anchor.MIDDLE, PageColour.INK));
    }

    private void corner(double x1Mm, double y1Mm, double x2Mm, double y2Mm) {
        mark(MarkKind.GRID_LINE, new Shape.Line(PenPath.line(x1Mm, y1Mm, x2Mm, y2Mm), 0.2, tone(PageColour.LINE)));
    }

    private void outline(Area area, double lineMm, Colour colour) {
        mark(MarkKind.OUTLINE, new Shape.Line(PenPath.rectangle(area), lineMm, colour));
    }

    private void text(String text, double xMm, double yMm, Shape.Weight weight, Shape.Anchor anchor, Colour colour) {
        mark(MarkKind.CAPTION, new Shape.Text(text, xMm, yMm, SIZE_MM, weight, anchor, 0, colour));
    }

    private Colour tone(Colour colour) {
        return PageColour.printed(colour, plan.options().edition());
    }

    private static double width(String text, Shape.Weight weight) {
        return new Shape.Text(text, 0, 0, SIZE_MM, weight, Shape.Anchor.START, 0, PageColour.INK)
                .bounds()
                .widthMm();
    }

    private void mark(MarkKind kind, Shape shape) {
        marks.add(Mark.beside(kind, List.of(shape)));
    }
}
