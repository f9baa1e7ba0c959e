package edgewright.draw.side;

import edgewright.chart.Section;
import edgewright.draw.marks.Mark;
import edgewright.draw.marks.MarkKind;
import edgewright.draw.paint.Palette;
import edgewright.draw.picture.SquaredPaper;
import java.util.List;

/**
 * The squared paper of a level side: a line round every cell, the edge of the border, heavier lines where the repeat begins and
 * ends, and a short line after every tenth stitch of each round: counted from the corner just turned, and after the repeat, which
 * is worked any number of times, back from the next corner.
 */
final class SideLines {
    private final SideLayout layout;
    private final SquaredPaper paper;
    private final int last;

    SideLines(SideLayout layout, Palette palette) {
        this.layout = layout;
        this.paper = new SquaredPaper(layout, palette);
        this.last = layout.stitches(0);
    }

    List<Mark> marks() {
        int outermost = layout.rounds();
        for (int out = 0; out <= outermost + 1; out++) {
            // The line over a row is as long as that row, the lowest line as the base round.
            int reach = Math.max(0, Math.min(out, outermost)) + 1;
            line(MarkKind.GRID_LINE, -reach, out, last + reach, out);
        }
        for (int along = -outermost - 1; along <= last + outermost + 1; along++) {
            int outside = Math.max(-along, along - last);
            line(MarkKind.GRID_LINE, along, Math.max(0, outside - 1), along, outermost + 1);
        }
        for (Section section : List.of(Section.REPEAT, Section.TO_CORNER)) {
            int along = layout.begins(section);
            line(MarkKind.REPEAT_LINE, along, 0, along, outermost + 1);
        }
        for (int round = 1; round <= outermost; round++) {
            addTens(round);
        }
        addEdges();
        return paper.lines();
    }

    private void addTens(int round) {
        int repeated = layout.begins(Section.TO_CORNER) + round;
        for (int stitch = 10; stitch < repeated; stitch += 10) {
            tenth(round, stitch - round);
        }
        int back = layout.shape().length(Section.TO_CORNER, round);
        for (int stitch = 10; stitch < back; stitch += 10) {
            tenth(round, last + round - stitch);
        }
    }

    private void tenth(int round, int along) {
        line(MarkKind.TENTH_LINE, along, round + 1 - SquaredPaper.TENTH_LENGTH, along, round + 1);
    }

    /** Steps up both ends, and what lies along the piece and outermost. */
    private void addEdges() {
        int outermost = layout.rounds();
        line(MarkKind.OUTLINE, -1, 0, last + 1, 0);
        line(MarkKind.OUTLINE, -outermost - 1, outermost + 1, last + outermost + 1, outermost + 1);
        for (int round = 0; round <= outermost; round++) {
            for (int end : new int[] {-round - 1, last + round + 1}) {
                line(MarkKind.OUTLINE, end, round, end, round + 1);
                if (round > 0) {
                    line(MarkKind.OUTLINE, end, round, end < 0 ? end + 1 : end - 1, round);
                }
            }
        }
    }

    private void line(MarkKind kind, double along1, double out1, double along2, double out2) {
        paper.line(
                kind, layout.x(along1, out1), layout.y(along1, out1), layout.x(along2, out2), layout.y(along2, out2));
    }
}
