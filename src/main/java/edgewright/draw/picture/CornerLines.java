package edgewright.draw.picture;

import edgewright.chart.Colour;
import edgewright.draw.marks.Mark;
import edgewright.draw.marks.MarkKind;
import edgewright.draw.paint.Area;
import edgewright.draw.paint.Frame;
import edgewright.draw.paint.Palette;
import edgewright.draw.paint.PenPath;
import edgewright.draw.paint.Shape;
import java.util.ArrayList;
import java.util.List;

/**
 * The squared paper of a corner: a line round every cell, a heavier one after every tenth round and every tenth stitch, the
 * edge of the border, and where repeats begin and end.
 *
 * <p>Stitches are counted in fabric columns from the corner of the base round; so in rounds 10, 20, 30 ... the heavier lines
 * stand at every tenth stitch from the corner chains.
 */
final class CornerLines {
    static final double GRID = 0.022;
    static final double TENTH = 0.09;
    private static final double EDGE = 0.075;
    private static final double REPEAT = 0.06;

    private final CornerLayout layout;
    private final Palette palette;
    private final Frame paper;
    private final int outermost;
    private final int level;
    private final int upright;

    CornerLines(CornerLayout layout, Palette palette) {
        this.layout = layout;
        this.palette = palette;
        this.paper = layout.paperFrame();
        this.outermost = -layout.rounds() - 1;
        int repeats = layout.repeats() * layout.grid().shape().w();
        this.level = layout.grid().shape().b() + repeats;
        this.upright = layout.grid().shape().a() + repeats;
    }

    List<Mark> marks() {
        List<Mark> marks = new ArrayList<>();
        for (int y = outermost; y <= upright; y++) {
            add(marks, MarkKind.GRID_LINE, outermost, y, y <= 0 ? level : 0, y);
        }
        for (int x = outermost; x <= level; x++) {
            add(marks, MarkKind.GRID_LINE, x, outermost, x, x <= 0 ? upright : 0);
        }
        for (int round = 10; round < layout.rounds(); round += 10) {
            add(marks, MarkKind.TENTH_LINE, -round - 1, -round - 1, level, -round - 1);
            add(marks, MarkKind.TENTH_LINE, -round - 1, -round - 1, -round - 1, upright);
        }
        for (int stitch = outermost / 10 * 10; stitch < Math.max(level, upright); stitch += 10) {
            int inner = Math.min(stitch, 0);
            if (stitch < level) {
                add(marks, MarkKind.TENTH_LINE, stitch, outermost, stitch, inner);
            }
            if (stitch < upright) {
                add(marks, MarkKind.TENTH_LINE, outermost, stitch, inner, stitch);
            }
        }
        int w = layout.grid().shape().w();
        for (int i = 0; i <= layout.repeats(); i++) {
            // A line at every cell or two would say nothing; where the repeats begin and the one in brackets are
            // enough.
            if (w < 3 && i != 0 && i < layout.repeats() - 1) {
                continue;
            }
            int across = layout.grid().shape().b() + i * w;
            int down = layout.grid().shape().a() + i * w;
            add(marks, MarkKind.REPEAT_LINE, across, outermost, across, 0);
            add(marks, MarkKind.REPEAT_LINE, outermost, down, 0, down);
        }
        add(marks, MarkKind.OUTLINE, outermost, outermost, level, outermost);
        add(marks, MarkKind.OUTLINE, outermost, outermost, outermost, upright);
        add(marks, MarkKind.OUTLINE, -1, -1, level, -1);
        add(marks, MarkKind.OUTLINE, -1, -1, -1, upright);
        return marks;
    }

    /** A line between two points of the unturned squared paper, cut off at the edge of what is shown. */
    private void add(List<Mark> marks, MarkKind kind, double x1, double y1, double x2, double y2) {
        Area shown = layout.area();
        double left = Math.min(paper.xMm(x1, y1), paper.xMm(x2, y2));
        double right = Math.max(paper.xMm(x1, y1), paper.xMm(x2, y2));
        double top = Math.min(paper.yMm(x1, y1), paper.yMm(x2, y2));
        double bottom = Math.max(paper.yMm(x1, y1), paper.yMm(x2, y2));
        // A thousandth of a cell of play: the sums above need not end on the very edge.
        double play = layout.cellMm() / 1000;
        if (right < shown.xMm() - play
                || left > shown.rightMm() + play
                || bottom < shown.yMm() - play
                || top > shown.bottomMm() + play) {
            return;
        }
        left = Math.max(left, shown.xMm());
        right = Math.min(right, shown.rightMm());
        top = Math.max(top, shown.yMm());
        bottom = Math.min(bottom, shown.bottomMm());
        if (right - left < play && bottom - top < play) {
            return;
        }
        double c = layout.cellMm();
        PenPath path =
                right - left < play ? PenPath.line(left, top, left, bottom) : PenPath.line(left, top, right, top);
        List<Shape> shapes = switch (kind) {
            case TENTH_LINE -> List.of(solid(path, TENTH * c, palette.tenth()));
            // On paper-coloured casing, to be seen on a yarn of any colour.
            case REPEAT_LINE ->
                List.of(
                        solid(path, 3 * REPEAT * c, palette.paper()),
                        new Shape.Line(path, REPEAT * c, palette.accent(), Shape.Ends.CUT, repeatDashesMm()));
            case OUTLINE -> List.of(solid(path, EDGE * c, palette.ink()));
            default -> List.of(solid(path, GRID * c, palette.grid()));
        };
        marks.add(Mark.beside(kind, shapes));
    }

    /** Where it has no colour of its own the line of a repeat is told from the others by its dashes. */
    private List<Double> repeatDashesMm() {
        double c = layout.cellMm();
        return palette.accent().equals(palette.ink()) ? List.of(0.5 * c, 0.25 * c) : List.of();
    }

    static Shape.Line solid(PenPath path, double widthMm, Colour colour) {
        return new Shape.Line(path, widthMm, colour, Shape.Ends.CUT, List.of());
    }
}
