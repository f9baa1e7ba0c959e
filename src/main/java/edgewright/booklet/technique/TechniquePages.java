package edgewright.booklet.technique;

import edgewright.booklet.choice.BookletOptions;
import edgewright.booklet.page.Anchor;
import edgewright.booklet.page.ColumnSlice;
import edgewright.booklet.page.ColumnSlice.Break;
import edgewright.booklet.page.ColumnSlice.Piece;
import edgewright.booklet.page.PageLayout;
import edgewright.booklet.page.Tag;
import edgewright.booklet.page.TextSetter;
import edgewright.words.technique.ToldTechnique;
import java.util.ArrayList;
import java.util.List;

/**
 * Sets techniques: title, figure and numbered steps, two beside each other, or one under the other where there is but one column.
 */
public final class TechniquePages {
    /** White between two techniques side by side. */
    private static final double GUTTER_PT = 20;

    private final TextSetter setter;
    private final PageLayout sheet;
    private final TechniqueSetter setting;
    private final double columnPt;

    public TechniquePages(TextSetter setter, BookletOptions options) {
        this.setter = setter;
        this.sheet = setter.sheet();
        this.columnPt = sheet.oneColumn() ? sheet.widthPt() : (sheet.widthPt() - GUTTER_PT) / 2;
        this.setting = new TechniqueSetter(setter, options, columnPt);
    }

    /** All of these techniques under a heading of their own. */
    public List<ColumnSlice> set(Tag parent, Anchor anchor, List<ToldTechnique> techniques) {
        List<ColumnSlice> strips = new ArrayList<>(setter.partHeading(parent, anchor));
        if (sheet.oneColumn()) {
            techniques.forEach(told -> strips.addAll(stacked(parent, told)));
            return strips;
        }
        for (int i = 0; i < techniques.size(); i += 2) {
            strips.add(pair(parent, techniques.subList(i, Math.min(i + 2, techniques.size())))
                    .spaced(i == 0 ? 0 : 1.5 * sheet.linePt()));
        }
        return strips;
    }

    /** One or two techniques in one strip, which is never cut. */
    private ColumnSlice pair(Tag parent, List<ToldTechnique> beside) {
        List<Piece> pieces = new ArrayList<>();
        double height = 0;
        double x = 0;
        for (ToldTechnique told : beside) {
            double down = 0;
            for (ColumnSlice line : setting.set(parent, told, x)) {
                down += down == 0 ? 0 : line.spaceAbovePt();
                for (Piece piece : line.pieces()) {
                    double by = down;
                    pieces.add(new Piece(
                            piece.tag(),
                            piece.inks().stream().map(ink -> ink.moved(0, by)).toList()));
                }
                down += line.heightPt();
            }
            height = Math.max(height, down);
            x += columnPt + GUTTER_PT;
        }
        return ColumnSlice.of(sheet.onGrid(height), pieces);
    }

    /** One technique as wide as the page, with its figure and its steps on one page if they fit. */
    private List<ColumnSlice> stacked(Tag parent, ToldTechnique told) {
        List<ColumnSlice> strips = setting.set(parent, told, 0);
        strips.subList(0, strips.size() - 1)
                .replaceAll(strip -> strip.below() == Break.FREE ? strip.breaking(Break.UNWELCOME) : strip);
        strips.set(0, strips.get(0).spaced(1.5 * sheet.linePt()));
        return strips;
    }
}
