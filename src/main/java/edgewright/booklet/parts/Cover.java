package edgewright.booklet.parts;

import static edgewright.texts.Arg.arg;

import edgewright.booklet.matter.OwnPages;
import edgewright.booklet.page.ColumnSlice;
import edgewright.booklet.page.ColumnSlice.Break;
import edgewright.booklet.page.ColumnSlice.Piece;
import edgewright.booklet.page.LabelledEntries;
import edgewright.booklet.page.PageColour;
import edgewright.booklet.page.PageItem;
import edgewright.booklet.page.PageLayout;
import edgewright.booklet.page.StructureRole;
import edgewright.booklet.page.Tag;
import edgewright.booklet.page.TextSetter;
import edgewright.booklet.page.TextStyle;
import edgewright.booklet.page.TextStyles;
import edgewright.chart.Chart;
import edgewright.chart.Yarn;
import edgewright.draw.marks.Drawing;
import edgewright.texts.Messages;
import java.util.ArrayList;
import java.util.List;

/** The first page: title, designer, a picture of the border, what the pattern is in and asks for. */
public final class Cover {
    private static final double[] TITLE_SIZES_PT = {30, 24, 19, 16};
    private static final double[] LARGE_TITLE_SIZES_PT = {36, 30, 26, 22};
    private static final int MOST_TITLE_LINES = 3;
    private static final int MOST_LINES_AT_SMALLEST = 8;
    private static final double SMALLEST_PICTURE_PT = 150;
    private static final double LARGEST_PICTURE_PT = 460;
    private static final double CHIP_GAP_PT = 18;

    private final TextSetter setter;
    private final Messages says;
    private final TextStyles styles;
    private final PageLayout sheet;
    private final Chart chart;
    private final Tag root;

    public Cover(TextSetter setter, Chart chart, Tag root) {
        this.setter = setter;
        this.says = setter.says();
        this.styles = setter.styles();
        this.sheet = setter.sheet();
        this.chart = chart;
        this.root = root;
    }

    /**
     * The title where there is no cover.
     *
     * @param workbook whether what follows is the workbook of the pattern
     */
    public List<ColumnSlice> title(boolean workbook) {
        String named = chart.title().isBlank() ? says.text("untitled") : chart.title();
        String title = workbook ? says.text("workbook-title", arg("title", named)) : named;
        List<ColumnSlice> strips = new ArrayList<>(title(title));
        strips.addAll(designer());
        strips.replaceAll(strip -> strip.breaking(Break.NEVER));
        return strips;
    }

    /**
     * Everything that stands on it.
     *
     * @param picture the border, where there is no photograph
     * @param shown which piece the picture shows, in a sentence
     * @param own the designer's own matter
     */
    public List<ColumnSlice> strips(Drawing picture, String shown, CoverFacts facts, OwnPages own) {
        String title = chart.title().isBlank() ? says.text("untitled") : chart.title();
        List<ColumnSlice> head = new ArrayList<>(title(title));
        head.addAll(designer());
        List<ColumnSlice> foot = facts(facts.all());
        foot.addAll(own.imprint(root));
        if (sheet.oneColumn()) {
            // Both would not fit on a page.
            foot.set(0, foot.get(0).onNewPage(true));
        }
        List<ColumnSlice> caption =
                setter.paragraph(root.child(StructureRole.PARAGRAPH), shown, styles.small(), 0, sheet.widthPt());
        double room = sheet.heightPt()
                - height(head)
                - height(caption)
                - (sheet.oneColumn() ? 0 : height(foot))
                - 2.5 * sheet.linePt();
        List<ColumnSlice> strips = new ArrayList<>(head);
        strips.addAll(own.cover(root, mostPt(room)).orElseGet(() -> drawn(title, picture, shown, caption, room)));
        strips.addAll(foot);
        return strips;
    }

    /** The border as it is drawn, and under it which piece that is. */
    private List<ColumnSlice> drawn(
            String title, Drawing picture, String shown, List<ColumnSlice> caption, double roomPt) {
        List<ColumnSlice> strips = new ArrayList<>();
        strips.add(picture(says.text("cover-picture", arg("title", title), arg("shown", shown)), picture, roomPt)
                .spaced(sheet.linePt())
                .breaking(Break.NEVER));
        strips.add(caption.get(0).spaced(sheet.halfLinePt()));
        strips.addAll(caption.subList(1, caption.size()));
        return strips;
    }

    private List<ColumnSlice> title(String title) {
        Tag tag = root.child(StructureRole.H1);
        double[] sizes = sheet.oneColumn() ? LARGE_TITLE_SIZES_PT : TITLE_SIZES_PT;
        for (double size : sizes) {
            boolean smallest = size == sizes[sizes.length - 1];
            double leading = Math.ceil(size * 1.15 / sheet.halfLinePt()) * sheet.halfLinePt();
            TextStyle style = TextStyle.on(sheet, styles.title().face(), size, leading, PageColour.INK);
            List<ColumnSlice> lines = setter.paragraph(tag, title, style, 0, sheet.widthPt());
            if (lines.size() <= MOST_TITLE_LINES) {
                return lines;
            }
            if (smallest) {
                String cut = setter.fitted(title, style, MOST_LINES_AT_SMALLEST * 0.9 * sheet.widthPt());
                return setter.paragraph(tag, cut, style, 0, sheet.widthPt());
            }
        }
        throw new IllegalStateException("no size for a title");
    }

    private List<ColumnSlice> designer() {
        TextStyle style = sheet.oneColumn()
                ? styles.text()
                : TextStyle.on(sheet, styles.text().face(), 13, 1.5 * sheet.linePt(), PageColour.SOFT);
        String by = chart.designer().isBlank() ? "" : says.text("cover-by", arg("designer", chart.designer()));
        List<ColumnSlice> strips = new ArrayList<>();
        if (!by.isEmpty()) {
            String fitted = setter.fitted(by, style, 2.5 * sheet.widthPt());
            strips.addAll(setter.paragraph(root.child(StructureRole.PARAGRAPH), fitted, style, 0, sheet.widthPt()));
        }
        strips.addAll(setter.paragraph(
                root.child(StructureRole.PARAGRAPH), says.text("cover-what"), styles.small(), 0, sheet.widthPt()));
        return strips;
    }

    private ColumnSlice picture(String alternative, Drawing picture, double roomPt) {
        double scale = Math.min(
                sheet.widthPt() / (picture.widthMm() * PageLayout.PT_PER_MM),
                mostPt(roomPt) / (picture.heightMm() * PageLayout.PT_PER_MM));
        double width = picture.widthMm() * scale * PageLayout.PT_PER_MM;
        double height = picture.heightMm() * scale * PageLayout.PT_PER_MM;
        double onGrid = sheet.onGrid(height);
        Tag figure = root.figure(alternative);
        return ColumnSlice.of(
                onGrid,
                List.of(Piece.of(
                        figure,
                        new PageItem.Art(
                                (sheet.widthPt() - width) / 2, 0, width, height, () -> picture, 0, 0, scale))));
    }

    private static double mostPt(double roomPt) {
        return Math.max(SMALLEST_PICTURE_PT, Math.min(LARGEST_PICTURE_PT, roomPt));
    }

    private List<ColumnSlice> facts(List<CoverFacts.Fact> facts) {
        LabelledEntries entries = new LabelledEntries(setter);
        Tag list = root.child(StructureRole.LIST);
        List<ColumnSlice> strips = new ArrayList<>();
        for (CoverFacts.Fact fact : facts) {
            strips.addAll(apart(fact(entries, list, fact.label(), fact.text())));
        }
        strips.addAll(apart(yarns(list)));
        strips.set(0, strips.get(0).spaced(1.5 * sheet.linePt()));
        return strips;
    }

    /** In large print groups are parted by blank lines. */
    private List<ColumnSlice> apart(List<ColumnSlice> group) {
        List<ColumnSlice> apart = new ArrayList<>(group);
        if (sheet.oneColumn()) {
            apart.set(0, apart.get(0).spaced(sheet.linePt()));
        }
        return apart;
    }

    private List<ColumnSlice> fact(LabelledEntries entries, Tag list, String label, String value) {
        Tag item = list.child(StructureRole.ITEM);
        return entries.entry(
                item.child(StructureRole.LABEL),
                label,
                styles.strong(),
                List.of(),
                0,
                List.of(new LabelledEntries.Line(item.child(StructureRole.BODY), value, styles.text(), true)));
    }

    /** The yarns side by side, each with its chip, id and name; as many lines as they need. */
    private List<ColumnSlice> yarns(Tag list) {
        Tag item = list.child(StructureRole.ITEM);
        Tag label = item.child(StructureRole.LABEL);
        Tag body = item.child(StructureRole.BODY);
        TextStyle bold = styles.strong();
        TextStyle text = styles.text();
        List<ColumnSlice> strips = new ArrayList<>();
        List<Piece> line = new ArrayList<>();
        line.add(Piece.of(label, setter.words(0, bold.baselinePt(), says.text("cover-yarns"), bold)));
        if (sheet.oneColumn()) {
            return oneUnderTheOther(ColumnSlice.of(sheet.linePt(), line), body);
        }
        double x = sheet.labelPt();
        List<Yarn> yarns = chart.yarnsUsed();
        for (int i = 0; i < yarns.size(); i++) {
            Yarn yarn = yarns.get(i);
            boolean last = i == yarns.size() - 1;
            String id = yarn.id() + " ";
            double idPt = setter.words(0, 0, id, bold).widthPt();
            String name = setter.fitted(
                    yarn.name(), text, sheet.textPt() - setter.chips().indentPt() - idPt - CHIP_GAP_PT);
            double width = setter.chips().indentPt()
                    + idPt
                    + setter.words(0, 0, name, text).widthPt();
            if (x > sheet.labelPt() && x + width > sheet.widthPt()) {
                strips.add(ColumnSlice.of(sheet.linePt(), line).breaking(Break.UNWELCOME));
                line = new ArrayList<>();
                x = sheet.labelPt();
            }
            line.add(Piece.ornament(setter.chips().of(yarn, x, 0)));
            line.add(Piece.of(
                    body,
                    setter.words(x + setter.chips().indentPt(), bold.baselinePt(), id, bold),
                    setter.words(
                            x + setter.chips().indentPt() + idPt, text.baselinePt(), name + (last ? "" : ", "), text)));
            x += width + CHIP_GAP_PT;
        }
        strips.add(ColumnSlice.of(sheet.linePt(), line));
        return strips;
    }

    private List<ColumnSlice> oneUnderTheOther(ColumnSlice head, Tag body) {
        List<ColumnSlice> strips = new ArrayList<>(List.of(head.breaking(Break.NEVER)));
        chart.yarnsUsed().forEach(yarn -> strips.addAll(alone(yarn, body)));
        return TextSetter.together(strips);
    }

    private List<ColumnSlice> alone(Yarn yarn, Tag body) {
        double indent = setter.chips().indentPt();
        List<ColumnSlice> lines = new ArrayList<>(setter.paragraph(
                body, yarn.id() + " " + yarn.name() + " ", styles.text(), indent, sheet.widthPt() - indent));
        List<Piece> pieces =
                new ArrayList<>(List.of(Piece.ornament(setter.chips().of(yarn, 0, 0))));
        pieces.addAll(lines.get(0).pieces());
        lines.set(0, lines.get(0).holding(pieces));
        return lines;
    }

    private static double height(List<ColumnSlice> strips) {
        return strips.stream()
                .mapToDouble(strip -> strip.heightPt() + strip.spaceAbovePt())
                .sum();
    }
}
