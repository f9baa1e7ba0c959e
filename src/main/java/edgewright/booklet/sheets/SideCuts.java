package edgewright.booklet.sheets;

import edgewright.booklet.page.PageLayout;
import edgewright.chart.HookHand;
import edgewright.chart.Section;
import edgewright.chart.SideShape;
import edgewright.draw.grid.CellRange;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * How a level side that is wider than a page is divided: at whole stitches, where the repeat begins or ends wherever that will do,
 * and nothing stands twice. Rounds that are too many for a page are divided too; then the two rounds into which long stitches
 * of the next part go are shown with it again.
 *
 * @param page on which the parts are printed
 * @param cellMm the side of a cell
 * @param parts in working order: from the lowest rounds upwards, each from the corner just turned
 */
record SideCuts(PageLayout page, double cellMm, List<Part> parts) {
    private static final double STEP_MM = 0.25;

    /** The rounds that two parts share: as many as a long stitch reaches down. */
    private static final int SHARED = 2;

    /**
     * A part of the side.
     *
     * @param first the lowest round
     * @param last the highest round
     * @param begin the first column, counted in working order over the whole picture, from 0
     * @param end the column after the last
     */
    record Part(int first, int last, int begin, int end) {
        /** What it shows of a picture with so many columns, whose highest row is the outermost round. */
        CellRange shown(int columns, int rounds, HookHand hand) {
            return new CellRange(
                    hand == HookHand.RIGHT ? columns - end : begin, rounds - last, end - begin, last - first + 1);
        }
    }

    /**
     * The side that is to be divided.
     *
     * @param aroundColumns the room that a part needs beside its columns, in cells
     * @param aroundRows the room over and under its rows
     */
    record Work(SideShape shape, int rounds, double aroundColumns, double aroundRows) {
        int columns() {
            return shape.stitches(rounds, 1) + 2;
        }

        int rows() {
            return rounds + 1;
        }

        /** Where a section begins, in columns from the outermost corner. */
        private int begins(Section section) {
            return switch (section) {
                case FROM_CORNER -> 0;
                case REPEAT -> 1 + rounds + shape.a();
                case TO_CORNER -> 1 + rounds + shape.a() + shape.w();
            };
        }

        /** Where it ends. */
        private int ends(Section section) {
            return section == Section.TO_CORNER ? columns() : begins(Section.values()[section.ordinal() + 1]);
        }

        /** The sections of which a part shows something. */
        Set<Section> sections(Part part) {
            Set<Section> shown = EnumSet.noneOf(Section.class);
            for (Section section : Section.values()) {
                if (part.begin() < ends(section) && begins(section) < part.end()) {
                    shown.add(section);
                }
            }
            return shown;
        }
    }

    /** The fewest pages that cells of an allowed size can be had on, and of those the largest cells. */
    static SideCuts fewestPages(
            Work work, List<PageLayout> pages, double captionLines, double smallestMm, double largestMm) {
        SideCuts best = null;
        int fewest = Integer.MAX_VALUE;
        for (PageLayout page : pages) {
            for (double cell = smallestMm; cell <= largestMm + 1e-9; cell += STEP_MM) {
                double heightMm = (page.heightPt() - captionLines * page.linePt()) / PageLayout.PT_PER_MM;
                int rows = capacity(heightMm, cell, work.aroundRows());
                int columns = capacity(page.widestPt() / PageLayout.PT_PER_MM, cell, work.aroundColumns());
                SideCuts cuts = new SideCuts(page, cell, parts(work, columns, rows));
                int used = cuts.pages(work, captionLines);
                if (used < fewest || (used == fewest && best.page.equals(page))) {
                    best = cuts;
                    fewest = used;
                }
            }
        }
        return best;
    }

    private static int capacity(double roomMm, double cellMm, double around) {
        return Math.max(SHARED + 1, (int) Math.floor(roomMm / cellMm - around + 1e-9));
    }

    /** How many pages the parts take, one under the other as long as they fit. */
    private int pages(Work work, double captionLines) {
        int pages = 0;
        double left = 0;
        for (Part part : parts) {
            double height = (part.last() - part.first() + 1 + work.aroundRows()) * cellMm * PageLayout.PT_PER_MM
                    + captionLines * page.linePt();
            if (height > left) {
                pages++;
                left = page.heightPt();
            }
            left -= height;
        }
        return pages;
    }

    private static List<Part> parts(Work work, int columns, int rows) {
        List<Part> parts = new ArrayList<>();
        int bands = work.rows() <= rows ? 1 : (work.rows() - SHARED + rows - SHARED - 1) / (rows - SHARED);
        for (int band = 0; band < bands; band++) {
            int first = (work.rows() - SHARED) * band / bands;
            int last = bands == 1 ? work.rounds() : (work.rows() - SHARED) * (band + 1) / bands + SHARED - 1;
            for (int[] span : spans(work, work.rounds() - last, columns)) {
                parts.add(new Part(Math.max(first, lowest(work, span)), last, span[0], span[1]));
            }
        }
        return List.copyOf(parts);
    }

    /** The lowest round that reaches into columns. */
    private static int lowest(Work work, int[] span) {
        int beforeStart = work.rounds() - (span[1] - 1);
        int afterEnd = span[0] - (work.columns() - 1 - work.rounds());
        return Math.max(0, Math.max(beforeStart, afterEnd));
    }

    /** @param outside how many columns at each end lie beyond the corners of the part's highest round */
    private static List<int[]> spans(Work work, int outside, int capacity) {
        List<int[]> spans = new ArrayList<>();
        for (Section section : Section.values()) {
            int begin = Math.max(work.begins(section), outside);
            int end = Math.min(work.ends(section), work.columns() - outside);
            for (int[] span : evenly(begin, end, capacity)) {
                int[] before = spans.isEmpty() ? span : spans.get(spans.size() - 1);
                if (before != span && span[1] - before[0] <= capacity) {
                    before[1] = span[1];
                } else {
                    spans.add(span);
                }
            }
        }
        return spans;
    }

    private static List<int[]> evenly(int begin, int end, int capacity) {
        int pieces = (end - begin + capacity - 1) / capacity;
        List<int[]> spans = new ArrayList<>();
        for (int i = 0; i < pieces; i++) {
            spans.add(new int[] {begin + (end - begin) * i / pieces, begin + (end - begin) * (i + 1) / pieces});
        }
        return spans;
    }
}
