package edgewright.draw.picture;

import edgewright.chart.GridCell;
import edgewright.draw.marks.Mark;
import edgewright.draw.marks.MarkKind;
import edgewright.draw.paint.Palette;
import java.util.List;

/**
 * The squared paper of a corner: a line round every cell, the edge of the border, heavier lines where repeats begin and end,
 * and a short line after every tenth stitch of each round, counted from the corner.
 */
final class CornerLines {
    private final CornerLayout layout;
    private final SquaredPaper paper;
    private final int outermost;
    private final int across;
    private final int down;

    CornerLines(CornerLayout layout, Palette palette) {
        this.layout = layout;
        this.paper = new SquaredPaper(layout, palette);
        this.outermost = -layout.rounds() - 1;
        this.across = layout.end(Arm.INCOMING);
        this.down = layout.end(Arm.OUTGOING);
    }

    List<Mark> marks() {
        for (int y = outermost; y <= down; y++) {
            paper.line(MarkKind.GRID_LINE, outermost, y, y <= 0 ? across : 0, y);
        }
        for (int x = outermost; x <= across; x++) {
            paper.line(MarkKind.GRID_LINE, x, outermost, x, x <= 0 ? down : 0);
        }
        for (int i = 0; i <= layout.repeats(); i++) {
            addRepeatLine(Arm.INCOMING, i);
            addRepeatLine(Arm.OUTGOING, i);
        }
        double tick = SquaredPaper.TENTH_LENGTH;
        for (int round = 1; round <= layout.rounds(); round++) {
            for (int stitch = 10; stitch < across + round; stitch += 10) {
                paper.line(MarkKind.TENTH_LINE, stitch - round, -round - 1, stitch - round, -round - 1 + tick);
            }
            for (int stitch = 10; stitch < down + round; stitch += 10) {
                paper.line(MarkKind.TENTH_LINE, -round - 1, stitch - round, -round - 1 + tick, stitch - round);
            }
        }
        paper.line(MarkKind.OUTLINE, outermost, outermost, across, outermost);
        paper.line(MarkKind.OUTLINE, outermost, outermost, outermost, down);
        paper.line(MarkKind.OUTLINE, -1, -1, across, -1);
        paper.line(MarkKind.OUTLINE, -1, -1, -1, down);
        return paper.lines();
    }

    /** The line at the beginning of a repeat, or where the last one ends. */
    private void addRepeatLine(Arm arm, int repeat) {
        int w = layout.shape(arm).w();
        // A line at every cell or two would say nothing; where the repeats begin and the one in brackets are enough.
        if (w < 3 && repeat != 0 && repeat < layout.repeats() - 1) {
            return;
        }
        int along = layout.repeatsBegin(arm) + repeat * w;
        GridCell outer = arm.cell(along, layout.rounds());
        GridCell inner = arm.cell(along, -1);
        paper.line(MarkKind.REPEAT_LINE, outer.x(), outer.y(), inner.x(), inner.y());
    }
}
