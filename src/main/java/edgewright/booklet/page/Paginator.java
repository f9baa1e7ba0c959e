package edgewright.booklet.page;

import java.util.ArrayList;
import java.util.List;

/**
 * Fills pages with strips. Of all ways to divide them the one is taken that costs least: no page ends where what hangs
 * together is torn, as long as that fits on a page; where it does not, it is torn at the best place. After that pages are to be
 * few and full, and the last one is not to hold a line or two alone, for which the pages before it may end a little early.
 *
 * <p>The way of dividing is that of D. E. Knuth and M. F. Plass, Breaking paragraphs into lines, Software: Practice and
 * Experience 11 (1981), taken from lines to pages; the costs are our own.
 */
public final class Paginator {
    /** A strip and how far under the top of the column it came to stand. */
    public record Placed(ColumnSlice strip, double topPt) {}

    /** What a page costs, however full it is. */
    private static final double PAGE = 20;

    /** What an empty page would cost; that of a page goes with the square of what is left empty. */
    private static final double EMPTY = 100;

    /** A last page that is filled less than this much costs more, up to {@link #LONELY}. */
    private static final double SCANTY = 0.25;

    private static final double LONELY = 100;

    /** A page is to be filled at least this much, if others of its run follow. */
    private static final double HALF = 0.5;

    /** More than it costs to part what hangs together but need not. */
    private static final double HALF_EMPTY = 2e5;

    private final double heightPt;

    /**
     * @param heightPt of the column of text, on pages that are like the rest
     */
    public Paginator(double heightPt) {
        this.heightPt = heightPt;
    }

    /** The pages in order, each with its strips from the top. Every strip is on one page, once, in its order. */
    public List<List<Placed>> pages(List<ColumnSlice> strips) {
        List<List<Placed>> pages = new ArrayList<>();
        int first = 0;
        while (first < strips.size()) {
            int end = first + 1;
            while (end < strips.size() && !beginsPage(strips, end)) {
                end++;
            }
            List<ColumnSlice> run = strips.subList(first, end);
            int at = 0;
            for (int next : endsOfPages(run)) {
                pages.add(place(run.subList(at, next)));
                at = next;
            }
            first = end;
        }
        return List.copyOf(pages);
    }

    /** How much of the last page is left under these strips: the whole page if there are none. */
    public double roomAfter(List<ColumnSlice> strips) {
        List<List<Placed>> pages = pages(strips);
        if (pages.isEmpty()) {
            return heightPt;
        }
        List<Placed> page = pages.get(pages.size() - 1);
        Placed last = page.get(page.size() - 1);
        return last.strip().sheet().isPresent()
                ? 0
                : heightPt - last.topPt() - last.strip().heightPt();
    }

    /** How much is left of the emptiest page that others follow; pages of a size of their own are not counted. */
    public double mostLeftPt(List<ColumnSlice> strips) {
        List<List<Placed>> pages = pages(strips);
        return pages.stream()
                .limit(Math.max(0, pages.size() - 1))
                .map(page -> page.get(page.size() - 1))
                .filter(last -> last.strip().sheet().isEmpty())
                .mapToDouble(last -> heightPt - last.topPt() - last.strip().heightPt())
                .max()
                .orElse(0);
    }

    /** How much room strips take under others. */
    public static double heightWithSpaceAbove(List<ColumnSlice> strips) {
        return strips.stream()
                .mapToDouble(strip -> strip.spaceAbovePt() + strip.heightPt())
                .sum();
    }

    /** After how many strips each page of the run ends: the cheapest way to divide it. */
    private List<Integer> endsOfPages(List<ColumnSlice> run) {
        // From the end backwards, what the pages cost from a strip on, and where the first of them ends.
        double[] cost = new double[run.size() + 1];
        int[] ends = new int[run.size()];
        for (int first = run.size() - 1; first >= 0; first--) {
            cost[first] = Double.MAX_VALUE;
            double roomPt = run.get(first).sheet().map(PageLayout::heightPt).orElse(heightPt);
            double filled = heightOf(run.get(first).repeated());
            for (int end = first + 1; end <= run.size(); end++) {
                ColumnSlice last = run.get(end - 1);
                filled += (filled == 0 ? 0 : last.spaceAbovePt()) + last.heightPt();
                if (end > first + 1 && filled > roomPt + 0.01) {
                    break;
                }
                double share = Math.min(1, filled / roomPt);
                double page = end == run.size() ? ofLast(share, first > 0) : ofPage(share, last.below());
                if (page + cost[end] <= cost[first]) {
                    cost[first] = page + cost[end];
                    ends[first] = end;
                }
            }
        }
        List<Integer> pages = new ArrayList<>();
        for (int end = 0; end < run.size(); ) {
            end = ends[end];
            pages.add(end);
        }
        return pages;
    }

    /** What a page costs that others of its run follow. */
    private static double ofPage(double share, ColumnSlice.Break below) {
        double torn = switch (below) {
            case FREE -> 0;
            case UNWELCOME -> 1e5;
            case NEVER -> 1e9;
        };
        double halfEmpty = share < HALF ? HALF_EMPTY * (1 - share) : 0;
        return torn + halfEmpty + PAGE + EMPTY * (1 - share) * (1 - share);
    }

    private static double ofLast(double share, boolean followsAnother) {
        return followsAnother && share < SCANTY ? PAGE + LONELY * (1 - share / SCANTY) : PAGE;
    }

    /** Whether a page must begin with this strip, which is not the first. */
    private static boolean beginsPage(List<ColumnSlice> strips, int index) {
        ColumnSlice strip = strips.get(index);
        return strip.newPage() || !strip.sheet().equals(strips.get(index - 1).sheet());
    }

    private static double heightOf(List<ColumnSlice> strips) {
        return strips.stream().mapToDouble(ColumnSlice::heightPt).sum();
    }

    private static List<Placed> place(List<ColumnSlice> strips) {
        List<Placed> placed = new ArrayList<>();
        double top = 0;
        for (ColumnSlice again : strips.get(0).repeated()) {
            placed.add(new Placed(again.asOrnament(), top));
            top += again.heightPt();
        }
        for (ColumnSlice strip : strips) {
            top += top == 0 ? 0 : strip.spaceAbovePt();
            placed.add(new Placed(strip, top));
            top += strip.heightPt();
        }
        return List.copyOf(placed);
    }
}
