package edgewright.booklet.parts;

import edgewright.booklet.page.Anchor;
import edgewright.booklet.page.ColumnSlice;
import edgewright.booklet.page.ColumnSlice.Break;
import edgewright.booklet.page.ColumnSlice.Piece;
import edgewright.booklet.page.PageColour;
import edgewright.booklet.page.PageItem;
import edgewright.booklet.page.PageLayout;
import edgewright.booklet.page.StructureRole;
import edgewright.booklet.page.Tag;
import edgewright.booklet.page.TextSetter;
import edgewright.booklet.page.TextStyle;
import java.util.ArrayList;
import java.util.List;

/** What is inside, and on which page: a line for each part, each a link. */
public final class ContentsPage {
    /** In lines of the page. */
    private static final double INDENT = 1;

    private static final double WIDEST = 18;
    private static final double NUMBER_ROOM = 2.5;

    /** Parts of parts are listed only as long as the list stays one that is taken in at a glance. */
    private static final int MOST_WITH_SMALL = 30;

    private final TextSetter setter;
    private final PageLayout sheet;
    private final TextStyle text;

    public ContentsPage(TextSetter setter) {
        this.setter = setter;
        this.sheet = setter.sheet();
        this.text = setter.styles().text();
    }

    /**
     * @param inside what there is to go to, in order
     */
    public List<ColumnSlice> set(Tag parent, Anchor own, List<Anchor> inside) {
        List<ColumnSlice> strips = new ArrayList<>(setter.partHeading(parent, own));
        Tag toc = parent.child(StructureRole.CONTENTS);
        List<Anchor> listed = inside.size() <= MOST_WITH_SMALL
                ? inside
                : inside.stream().filter(anchor -> anchor.level() == 1).toList();
        for (int i = 0; i < listed.size(); i++) {
            strips.add(line(toc, listed.get(i), i == listed.size() - 1));
        }
        return strips;
    }

    private ColumnSlice line(Tag toc, Anchor anchor, boolean last) {
        double left = sheet.labelPt() + (anchor.level() - 1) * INDENT * sheet.linePt();
        double most = sheet.labelPt() + Math.min(sheet.textPt(), WIDEST * sheet.linePt());
        double room = NUMBER_ROOM * sheet.linePt();
        String title = setter.fitted(anchor.title(), text, most - room - left) + " ";
        // In one column the number stands beside its title: nobody has to find the way across the page.
        double right =
                sheet.oneColumn() ? left + setter.words(0, 0, title, text).widthPt() + room * 0.6 : most;
        Tag link = toc.child(StructureRole.CONTENTS_ITEM).child(StructureRole.LINK);
        List<Piece> pieces = new ArrayList<>();
        if (!sheet.oneColumn()) {
            pieces.add(Piece.ornament(
                    PageItem.Box.filled(left, sheet.linePt() - 0.2, right - left, 0.4, PageColour.LINE)));
        }
        pieces.add(Piece.of(
                link,
                setter.words(left, text.baselinePt(), title, text),
                new PageItem.PageOf(
                        right,
                        true,
                        text.baselinePt(),
                        anchor,
                        setter.styles().figures().face(),
                        text.sizePt()),
                new PageItem.Link(left, 0, right - left, sheet.linePt(), anchor)));
        return ColumnSlice.of(sheet.linePt(), pieces).breaking(last ? Break.FREE : Break.UNWELCOME);
    }
}
