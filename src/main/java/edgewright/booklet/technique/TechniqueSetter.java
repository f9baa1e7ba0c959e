package edgewright.booklet.technique;

import edgewright.booklet.choice.BookletOptions;
import edgewright.booklet.choice.Edition;
import edgewright.booklet.page.ColumnSlice;
import edgewright.booklet.page.ColumnSlice.Break;
import edgewright.booklet.page.ColumnSlice.Piece;
import edgewright.booklet.page.PageItem;
import edgewright.booklet.page.PageLayout;
import edgewright.booklet.page.StructureRole;
import edgewright.booklet.page.Tag;
import edgewright.booklet.page.TextSetter;
import edgewright.booklet.page.TextStyle;
import edgewright.draw.marks.Drawing;
import edgewright.draw.paint.ColourMode;
import edgewright.draw.technique.TechniqueFigure;
import edgewright.words.technique.ToldTechnique;
import java.util.ArrayList;
import java.util.List;

/** Sets one technique: title, figure and numbered steps one under the other. */
final class TechniqueSetter {
    /** From the number of a step to its words, in lines of text. */
    private static final double LABEL_LINES = 1.1;

    /** The part of a column that a figure takes where two columns stand side by side. */
    private static final double FIGURE = 0.9;

    private final TextSetter setter;
    private final PageLayout sheet;
    private final BookletOptions options;
    private final double columnPt;

    /** @param columnPt how wide the column is that it is set in */
    TechniqueSetter(TextSetter setter, BookletOptions options, double columnPt) {
        this.setter = setter;
        this.sheet = setter.sheet();
        this.options = options;
        this.columnPt = columnPt;
    }

    /** @param xPt where the column begins */
    List<ColumnSlice> set(Tag parent, ToldTechnique told, double xPt) {
        List<ColumnSlice> strips = new ArrayList<>();
        setter.paragraph(
                        parent.child(StructureRole.H3),
                        told.title(),
                        setter.styles().section(),
                        xPt,
                        columnPt)
                .forEach(line -> strips.add(line.breaking(Break.NEVER)));
        strips.add(figure(parent, told, xPt));
        Tag list = parent.child(StructureRole.LIST);
        for (int i = 0; i < told.steps().size(); i++) {
            strips.addAll(
                    step(list.child(StructureRole.ITEM), i + 1, told.steps().get(i), xPt));
        }
        return strips;
    }

    private ColumnSlice figure(Tag parent, ToldTechnique told, double xPt) {
        ColourMode mode = options.edition() == Edition.BLACK_AND_WHITE ? ColourMode.BLACK : ColourMode.COLOUR;
        Drawing drawing = TechniqueFigure.of(told.shown(), options.hand(), mode, told.title(), told.alternative());
        double widthPt = sheet.oneColumn() ? columnPt : FIGURE * columnPt;
        double scale = widthPt / (drawing.widthMm() * PageLayout.PT_PER_MM);
        double height = drawing.heightMm() * PageLayout.PT_PER_MM * scale;
        PageItem.Art art = new PageItem.Art(xPt, 0, widthPt, height, () -> drawing, 0, 0, scale);
        return ColumnSlice.of(sheet.onGrid(height), List.of(Piece.of(parent.figure(told.alternative()), art)))
                .breaking(Break.NEVER);
    }

    private List<ColumnSlice> step(Tag item, int number, String text, double xPt) {
        TextStyle style = setter.styles().text();
        double labelPt = LABEL_LINES * style.leadingPt();
        Tag label = item.child(StructureRole.LABEL);
        List<ColumnSlice> lines = new ArrayList<>(
                setter.paragraph(item.child(StructureRole.BODY), text, style, xPt + labelPt, columnPt - labelPt));
        ColumnSlice first = lines.get(0);
        List<Piece> pieces = new ArrayList<>();
        pieces.add(Piece.of(
                label,
                setter.words(
                        xPt,
                        style.baselinePt(),
                        Integer.toString(number),
                        setter.styles().strong())));
        pieces.addAll(first.pieces());
        lines.set(0, first.holding(pieces));
        return lines;
    }
}
