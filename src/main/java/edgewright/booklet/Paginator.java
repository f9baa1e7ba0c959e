package edgewright.booklet;

import java.util.ArrayList;
import java.util.List;

/**
 * Fills pages with strips. A page ends at the last good place that still fits; failing that at a place that is unwelcome,
 * and only where a single run of strips that hang together is higher than a page, anywhere.
 */
final class Paginator {
    /** A strip and how far under the top of the column it came to stand. */
    record Placed(Strip strip, double topPt) {}

    private final double heightPt;

    /**
     * @param heightPt of the column of text, on pages that are like the rest
     */
    Paginator(double heightPt) {
        this.heightPt = heightPt;
    }

    /** The pages in order, each with its strips from the top. Every strip is on one page, once, in its order. */
    List<List<Placed>> pages(List<Strip> strips) {
        List<List<Placed>> pages = new ArrayList<>();
        int first = 0;
        while (first < strips.size()) {
            int end = endOfPage(strips, first);
            pages.add(place(strips.subList(first, end)));
            first = end;
        }
        return List.copyOf(pages);
    }

    /** The index after the last strip of the page that begins with {@code first}. */
    private int endOfPage(List<Strip> strips, int first) {
        int fits = lastThatFits(strips, first);
        if (fits == strips.size() || beginsPage(strips, fits)) {
            return fits;
        }
        for (Strip.Break willing : Strip.Break.values()) {
            for (int end = fits; end > first; end--) {
                if (strips.get(end - 1).below() == willing) {
                    return end;
                }
            }
        }
        return fits;
    }

    private int lastThatFits(List<Strip> strips, int first) {
        double filled = heightOf(strips.get(first).repeated());
        double roomPt = strips.get(first).sheet().map(Sheet::heightPt).orElse(heightPt);
        for (int i = first; i < strips.size(); i++) {
            Strip strip = strips.get(i);
            if (i > first && beginsPage(strips, i)) {
                return i;
            }
            filled += (filled == 0 ? 0 : strip.spaceAbovePt()) + strip.heightPt();
            if (i > first && filled > roomPt + 0.01) {
                return i;
            }
        }
        return strips.size();
    }

    /** Whether a page must begin with this strip, which is not the first. */
    private static boolean beginsPage(List<Strip> strips, int index) {
        Strip strip = strips.get(index);
        return strip.newPage() || !strip.sheet().equals(strips.get(index - 1).sheet());
    }

    private static double heightOf(List<Strip> strips) {
        return strips.stream().mapToDouble(Strip::heightPt).sum();
    }

    private static List<Placed> place(List<Strip> strips) {
        List<Placed> placed = new ArrayList<>();
        double top = 0;
        for (Strip again : strips.get(0).repeated()) {
            placed.add(new Placed(again.asOrnament(), top));
            top += again.heightPt();
        }
        for (Strip strip : strips) {
            top += top == 0 ? 0 : strip.spaceAbovePt();
            placed.add(new Placed(strip, top));
            top += strip.heightPt();
        }
        return List.copyOf(placed);
    }
}
