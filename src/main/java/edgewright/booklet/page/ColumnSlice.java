package edgewright.booklet.page;

import java.util.List;
import java.util.Optional;

/**
 * A slice of the column of text, as wide as the column, that is never cut: a line, a row of a table, a picture. Pages are
 * filled with strips from the top.
 *
 * @param spaceAbovePt white over the strip, dropped where it begins a page
 * @param pieces what is printed in it, in reading order
 * @param below how willingly a page ends under this strip
 * @param newPage whether a page begins with this strip
 * @param anchors the places to go to that begin here, from the top
 * @param repeated what is printed again over this strip if a page begins with it: the head of its table, the number of its
 *     round
 * @param sheet the page that this strip stands on, if it is not that of the rest; strips on other sheets begin other pages
 */
public record ColumnSlice(
        double heightPt,
        double spaceAbovePt,
        List<Piece> pieces,
        Break below,
        boolean newPage,
        List<Reached> anchors,
        List<ColumnSlice> repeated,
        Optional<PageLayout> sheet) {

    /** Whether a page may end under a strip. */
    public enum Break {
        /** A good place to end a page. */
        FREE,
        /** Only if what is kept together does not fit on a page. */
        UNWELCOME,
        /** Never, as long as the strips that hang together fit on a page. */
        NEVER
    }

    /** Things that are one thing to a reader; without a tag they are an ornament that a reader does not hear of. */
    public record Piece(Optional<Tag> tag, List<PageItem> inks) {
        public Piece {
            inks = List.copyOf(inks);
        }

        public static Piece of(Tag tag, PageItem... inks) {
            return new Piece(Optional.of(tag), List.of(inks));
        }

        public static Piece ornament(PageItem... inks) {
            return new Piece(Optional.empty(), List.of(inks));
        }

        Piece asOrnament() {
            return new Piece(Optional.empty(), inks);
        }
    }

    /**
     * A place to go to.
     *
     * @param downPt how far under the top of the strip it begins
     */
    public record Reached(Anchor anchor, double downPt) {}

    public ColumnSlice {
        pieces = List.copyOf(pieces);
        anchors = List.copyOf(anchors);
        repeated = List.copyOf(repeated);
    }

    public static ColumnSlice of(double heightPt, List<Piece> pieces) {
        return new ColumnSlice(heightPt, 0, pieces, Break.FREE, false, List.of(), List.of(), Optional.empty());
    }

    public ColumnSlice spaced(double abovePt) {
        return new ColumnSlice(heightPt, abovePt, pieces, below, newPage, anchors, repeated, sheet);
    }

    public ColumnSlice breaking(Break willingness) {
        return new ColumnSlice(heightPt, spaceAbovePt, pieces, willingness, newPage, anchors, repeated, sheet);
    }

    public ColumnSlice holding(List<Piece> others) {
        return new ColumnSlice(heightPt, spaceAbovePt, others, below, newPage, anchors, repeated, sheet);
    }

    public ColumnSlice onNewPage(boolean begins) {
        return new ColumnSlice(heightPt, spaceAbovePt, pieces, below, begins, anchors, repeated, sheet);
    }

    public ColumnSlice anchored(Anchor place) {
        return new ColumnSlice(
                heightPt, spaceAbovePt, pieces, below, newPage, List.of(new Reached(place, 0)), repeated, sheet);
    }

    /** With these places to go to. */
    ColumnSlice reaching(List<Reached> places) {
        return new ColumnSlice(heightPt, spaceAbovePt, pieces, below, newPage, places, repeated, sheet);
    }

    public ColumnSlice repeating(List<ColumnSlice> again) {
        return new ColumnSlice(heightPt, spaceAbovePt, pieces, below, newPage, anchors, again, sheet);
    }

    /** On a page of that kind. */
    public ColumnSlice onSheet(PageLayout page) {
        return new ColumnSlice(heightPt, spaceAbovePt, pieces, below, newPage, anchors, repeated, Optional.of(page));
    }

    /** The same to the eye, but nothing that a reader hears again. */
    ColumnSlice asOrnament() {
        return new ColumnSlice(
                heightPt,
                spaceAbovePt,
                pieces.stream().map(Piece::asOrnament).toList(),
                below,
                newPage,
                List.of(),
                List.of(),
                sheet);
    }
}
