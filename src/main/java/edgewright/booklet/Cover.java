package edgewright.booklet;

import edgewright.booklet.Strip.Break;
import edgewright.booklet.Strip.Piece;
import edgewright.chart.Chart;
import edgewright.chart.Yarn;
import edgewright.draw.Drawing;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.documentinterchange.taggedpdf.StandardStructureTypes;

/** The first page: title, designer, a picture of the border, what the pattern is in and asks for. */
final class Cover {
    private static final double[] TITLE_SIZES_PT = {30, 24, 19, 16};
    private static final double[] LARGE_TITLE_SIZES_PT = {36, 30, 26, 22};
    private static final int MOST_TITLE_LINES = 3;
    private static final int MOST_LINES_AT_SMALLEST = 8;
    private static final double SMALLEST_PICTURE_PT = 150;
    private static final double LARGEST_PICTURE_PT = 400;
    private static final double CHIP_GAP_PT = 18;

    private final TextSetter setter;
    private final Styles styles;
    private final Sheet sheet;
    private final Chart chart;
    private final Tag root;

    Cover(TextSetter setter, Chart chart, Tag root) {
        this.setter = setter;
        this.styles = setter.styles();
        this.sheet = setter.sheet();
        this.chart = chart;
        this.root = root;
    }

    List<Strip> strips(Drawing picture, Facts facts) {
        String title = chart.title().isBlank() ? Texts.of("untitled") : chart.title();
        List<Strip> head = new ArrayList<>(title(title));
        head.addAll(designer());
        List<Strip> foot = facts(facts.all());
        if (sheet.oneColumn()) {
            // Both would not fit on a page.
            foot.set(0, foot.get(0).onNewPage(true));
        }
        double room = sheet.heightPt() - height(head) - (sheet.oneColumn() ? 0 : height(foot)) - 2 * sheet.linePt();
        List<Strip> strips = new ArrayList<>(head);
        strips.add(picture(title, picture, room).spaced(sheet.linePt()));
        strips.addAll(foot);
        return strips;
    }

    private List<Strip> title(String title) {
        Tag tag = root.child(StandardStructureTypes.H1);
        double[] sizes = sheet.oneColumn() ? LARGE_TITLE_SIZES_PT : TITLE_SIZES_PT;
        for (double size : sizes) {
            boolean smallest = size == sizes[sizes.length - 1];
            double leading = Math.ceil(size * 1.15 / sheet.halfLinePt()) * sheet.halfLinePt();
            Style style = Style.on(sheet, styles.title().face(), size, leading, Tone.INK);
            List<Strip> lines = setter.paragraph(tag, title, style, 0, sheet.widthPt());
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

    private List<Strip> designer() {
        Style style = sheet.oneColumn()
                ? styles.text()
                : Style.on(sheet, styles.text().face(), 13, 1.5 * sheet.linePt(), Tone.SOFT);
        String by = chart.designer().isBlank() ? "" : Texts.of("cover.by", chart.designer());
        List<Strip> strips = new ArrayList<>();
        if (!by.isEmpty()) {
            String fitted = setter.fitted(by, style, 2.5 * sheet.widthPt());
            strips.addAll(setter.paragraph(root.child(StandardStructureTypes.P), fitted, style, 0, sheet.widthPt()));
        }
        strips.addAll(setter.paragraph(
                root.child(StandardStructureTypes.P), Texts.of("cover.what"), styles.small(), 0, sheet.widthPt()));
        return strips;
    }

    private Strip picture(String title, Drawing picture, double roomPt) {
        double mostPt = Math.max(SMALLEST_PICTURE_PT, Math.min(LARGEST_PICTURE_PT, roomPt));
        double scale = Math.min(
                sheet.widthPt() / (picture.widthMm() * Sheet.PT_PER_MM),
                mostPt / (picture.heightMm() * Sheet.PT_PER_MM));
        double width = picture.widthMm() * scale * Sheet.PT_PER_MM;
        double height = picture.heightMm() * scale * Sheet.PT_PER_MM;
        double onGrid = sheet.onGrid(height);
        Tag figure = root.figure(Texts.of("cover.picture", title));
        return Strip.of(
                onGrid,
                List.of(Piece.of(
                        figure,
                        new Ink.Art((sheet.widthPt() - width) / 2, 0, width, height, () -> picture, 0, 0, scale))));
    }

    private List<Strip> facts(List<Facts.Fact> facts) {
        Entries entries = new Entries(setter);
        Tag list = root.child(StandardStructureTypes.L);
        List<Strip> strips = new ArrayList<>();
        for (Facts.Fact fact : facts) {
            strips.addAll(apart(fact(entries, list, fact.label(), fact.text())));
        }
        strips.addAll(apart(yarns(list)));
        strips.set(0, strips.get(0).spaced(1.5 * sheet.linePt()));
        return strips;
    }

    /** In large print groups are parted by blank lines. */
    private List<Strip> apart(List<Strip> group) {
        List<Strip> apart = new ArrayList<>(group);
        if (sheet.oneColumn()) {
            apart.set(0, apart.get(0).spaced(sheet.linePt()));
        }
        return apart;
    }

    private List<Strip> fact(Entries entries, Tag list, String label, String value) {
        Tag item = list.child(StandardStructureTypes.LI);
        return entries.entry(
                item.child(StandardStructureTypes.LBL),
                label,
                styles.strong(),
                List.of(),
                0,
                List.of(new Entries.Line(item.child(StandardStructureTypes.L_BODY), value, styles.text(), true)));
    }

    /** The yarns side by side, each with its chip, id and name; as many lines as they need. */
    private List<Strip> yarns(Tag list) {
        Tag item = list.child(StandardStructureTypes.LI);
        Tag label = item.child(StandardStructureTypes.LBL);
        Tag body = item.child(StandardStructureTypes.L_BODY);
        Style bold = styles.strong();
        Style text = styles.text();
        List<Strip> strips = new ArrayList<>();
        List<Piece> line = new ArrayList<>();
        line.add(Piece.of(label, setter.words(0, bold.baselinePt(), Texts.of("cover.yarns"), bold)));
        if (sheet.oneColumn()) {
            return oneUnderTheOther(Strip.of(sheet.linePt(), line), body);
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
                strips.add(Strip.of(sheet.linePt(), line).breaking(Break.UNWELCOME));
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
        strips.add(Strip.of(sheet.linePt(), line));
        return strips;
    }

    private List<Strip> oneUnderTheOther(Strip head, Tag body) {
        List<Strip> strips = new ArrayList<>(List.of(head.breaking(Break.NEVER)));
        chart.yarnsUsed().forEach(yarn -> strips.addAll(alone(yarn, body)));
        return TextSetter.together(strips);
    }

    private List<Strip> alone(Yarn yarn, Tag body) {
        double indent = setter.chips().indentPt();
        List<Strip> lines = new ArrayList<>(setter.paragraph(
                body, yarn.id() + " " + yarn.name() + " ", styles.text(), indent, sheet.widthPt() - indent));
        List<Piece> pieces =
                new ArrayList<>(List.of(Piece.ornament(setter.chips().of(yarn, 0, 0))));
        pieces.addAll(lines.get(0).pieces());
        lines.set(0, lines.get(0).holding(pieces));
        return lines;
    }

    private static double height(List<Strip> strips) {
        return strips.stream()
                .mapToDouble(strip -> strip.heightPt() + strip.spaceAbovePt())
                .sum();
    }
}
