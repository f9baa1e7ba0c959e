package edgewright.booklet.matter;

import edgewright.booklet.choice.Edition;
import edgewright.booklet.own.Photograph;
import edgewright.booklet.own.PrintedPhoto;
import edgewright.booklet.page.ColumnSlice;
import edgewright.booklet.page.ColumnSlice.Break;
import edgewright.booklet.page.ColumnSlice.Piece;
import edgewright.booklet.page.PageItem;
import edgewright.booklet.page.PageLayout;
import edgewright.booklet.page.StructureRole;
import edgewright.booklet.page.Tag;
import edgewright.booklet.page.TextSetter;
import java.util.ArrayList;
import java.util.List;

/** Sets photographs: as large as there is room and as their pixels allow, never cut, with their captions under them. */
final class PhotoSetter {
    /** A picture of few pixels is rather coarse than smaller than this. */
    private static final double SMALLEST_MM = 40;

    private final TextSetter setter;
    private final boolean grey;

    PhotoSetter(TextSetter setter, Edition edition) {
        this.setter = setter;
        this.grey = edition == Edition.BLACK_AND_WHITE;
    }

    /**
     * A photograph and its caption.
     *
     * @param leftPt the left edge of its room
     * @param centred whether it stands in the middle of its room, else at its left edge
     */
    List<ColumnSlice> set(
            Tag parent, PrintedPhoto photo, double leftPt, double widthPt, double heightPt, boolean centred) {
        double width = widthPt(photo.picture(), widthPt, heightPt);
        double x = centred ? leftPt + (widthPt - width) / 2 : leftPt;
        ColumnSlice figure = figure(parent.figure(photo.photo().alternative()), photo.picture(), x, width);
        String caption = photo.photo().caption();
        if (caption.isEmpty()) {
            return List.of(figure);
        }
        List<ColumnSlice> strips = new ArrayList<>();
        strips.add(figure.breaking(Break.NEVER));
        strips.addAll(setter.paragraph(
                parent.child(StructureRole.PARAGRAPH), caption, setter.styles().small(), x, leftPt + widthPt - x));
        return strips;
    }

    /** How wide a picture is printed in this room. */
    double widthPt(Photograph picture, double mostPt, double heightPt) {
        double sharp = Math.max(SMALLEST_MM, picture.mostWidthMm()) * PageLayout.PT_PER_MM;
        return Math.min(Math.min(mostPt, sharp), heightPt * picture.aspect());
    }

    /** A picture with the words that stand for it. */
    ColumnSlice figure(Tag figure, Photograph picture, double xPt, double widthPt) {
        double height = widthPt / picture.aspect();
        return ColumnSlice.of(
                setter.sheet().onGrid(height),
                List.of(Piece.of(
                        figure,
                        new PageItem.Photo(
                                xPt,
                                0,
                                widthPt,
                                height,
                                () -> picture.printed(widthPt / PageLayout.PT_PER_MM, grey)))));
    }
}
