package edgewright.booklet.page;

import edgewright.booklet.page.ColumnSlice.Piece;
import edgewright.booklet.page.ColumnSlice.Reached;
import edgewright.booklet.page.Paginator.Placed;
import java.util.ArrayList;
import java.util.List;

/**
 * Sets strips of half the width side by side: columns as high as the page, the left one first, and the last two as low as they
 * can be, so that both end at the same height. Each pair becomes one strip of the whole width, which is never cut.
 */
public final class ColumnPairs {
    private final PageLayout sheet;

    /** @param sheet the whole page */
    public ColumnPairs(PageLayout sheet) {
        this.sheet = sheet;
    }

    /**
     * The pairs in order, each but the first on a page of its own.
     *
     * @param usedPt what is full of the page already; 0 lets the first pair begin a page
     */
    public List<ColumnSlice> set(List<ColumnSlice> halves, double usedPt) {
        List<ColumnSlice> rest = new ArrayList<>(halves);
        List<ColumnSlice> pairs = new ArrayList<>();
        while (!rest.isEmpty()) {
            boolean first = pairs.isEmpty();
            double most = first ? sheet.heightPt() - usedPt : sheet.heightPt();
            List<List<Placed>> columns = columns(rest, most);
            columns = columns.size() > 2 ? columns.subList(0, 2) : level(rest, most);
            pairs.add(pair(columns).onNewPage(!first || usedPt == 0));
            int taken = columns.stream().mapToInt(List::size).sum();
            rest = rest.subList(taken, rest.size());
        }
        return pairs;
    }

    /** The lowest two columns that hold everything. */
    private List<List<Placed>> level(List<ColumnSlice> strips, double mostPt) {
        double all = strips.stream()
                .mapToDouble(strip -> strip.heightPt() + strip.spaceAbovePt())
                .sum();
        PageLayout half = sheet.half();
        double step = half.halfLinePt();
        for (double height = half.onGrid(all / 2) - 4 * step; height < mostPt; height += step) {
            List<List<Placed>> columns = columns(strips, height);
            boolean torn = columns.subList(0, columns.size() - 1).stream()
                    .anyMatch(column -> column.get(column.size() - 1).strip().below() != ColumnSlice.Break.FREE);
            if (columns.size() <= 2 && !torn && heightOf(columns) <= height + 0.01) {
                return columns;
            }
        }
        return columns(strips, mostPt);
    }

    private static List<List<Placed>> columns(List<ColumnSlice> strips, double heightPt) {
        return new Paginator(heightPt).pages(strips);
    }

    private ColumnSlice pair(List<List<Placed>> columns) {
        List<Piece> pieces = new ArrayList<>();
        List<Reached> anchors = new ArrayList<>();
        double right = sheet.widthPt() - sheet.half().widthPt();
        for (int i = 0; i < columns.size(); i++) {
            double x = i * right;
            for (Placed placed : columns.get(i)) {
                for (Piece piece : placed.strip().pieces()) {
                    pieces.add(new Piece(
                            piece.tag(),
                            piece.inks().stream()
                                    .map(ink -> ink.moved(x, placed.topPt()))
                                    .toList()));
                }
                placed.strip()
                        .anchors()
                        .forEach(at -> anchors.add(new Reached(at.anchor(), placed.topPt() + at.downPt())));
            }
        }
        return ColumnSlice.of(sheet.onGrid(heightOf(columns)), pieces).reaching(anchors);
    }

    private static double heightOf(List<List<Placed>> columns) {
        return columns.stream()
                .map(column -> column.get(column.size() - 1))
                .mapToDouble(last -> last.topPt() + last.strip().heightPt())
                .max()
                .orElse(0);
    }
}
