package edgewright.booklet;

import edgewright.booklet.Strip.Break;
import edgewright.booklet.Strip.Piece;
import edgewright.chart.Chart;
import edgewright.chart.Yarn;
import edgewright.draw.Drawing;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.pdmodel.documentinterchange.taggedpdf.StandardStructureTypes;

/** The first page: title, designer, a picture of the border, what the pattern is in and asks for, and what is inside. */
final class Cover {
    private static final double[] TITLE_SIZES_PT = {30, 24, 19, 16};
    private static final int MOST_TITLE_LINES = 3;
    private static final int MOST_LINES_AT_SMALLEST = 8;
    private static final double SMALLEST_PICTURE_PT = 150;
    private static final double LARGEST_PICTURE_PT = 340;
    private static final double CHIP_INDENT_PT = 15;
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

    /**
     * @param inside where the parts of the pattern begin
     */
    List<Strip> strips(String title, Drawing picture, List<String> facts, List<Anchor> inside) {
        List<Strip> head = new ArrayList<>(title(title));
        head.addAll(designer());
        List<Strip> foot = new ArrayList<>(facts(facts));
        foot.addAll(contents(inside));
        double room = sheet.heightPt() - height(head) - height(foot) - 2 * sheet.linePt();
        List<Strip> strips = new ArrayList<>(head);
        strips.add(picture(title, picture, room).spaced(sheet.linePt()));
        strips.addAll(foot);
        return strips;
    }

    private List<Strip> title(String title) {
        Tag tag = root.child(StandardStructureTypes.H1);
        for (double size : TITLE_SIZES_PT) {
            boolean smallest = size == TITLE_SIZES_PT[TITLE_SIZES_PT.length - 1];
            double leading = Math.ceil(size * 1.15 / sheet.halfLinePt()) * sheet.halfLinePt();
            Style style = new Style(styles.title().face(), size, leading, Tone.INK);
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
        Style style = new Style(styles.text().face(), 13, 1.5 * sheet.linePt(), Tone.SOFT);
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

    private List<Strip> facts(List<String> facts) {
        Entries entries = new Entries(setter);
        Tag list = root.child(StandardStructureTypes.L);
        List<Strip> strips = new ArrayList<>();
        for (int i = 0; i + 1 < facts.size(); i += 2) {
            strips.addAll(fact(entries, list, facts.get(i), facts.get(i + 1)));
        }
        strips.addAll(yarns(list));
        strips.set(0, strips.get(0).spaced(1.5 * sheet.linePt()));
        return strips;
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
        double x = sheet.labelPt();
        for (int i = 0; i < chart.yarns().size(); i++) {
            Yarn yarn = chart.yarns().get(i);
            boolean last = i == chart.yarns().size() - 1;
            String id = yarn.id() + " ";
            double idPt = setter.words(0, 0, id, bold).widthPt();
            String name = setter.fitted(yarn.name(), text, sheet.textPt() - CHIP_INDENT_PT - idPt - CHIP_GAP_PT);
            double width =
                    CHIP_INDENT_PT + idPt + setter.words(0, 0, name, text).widthPt();
            if (x > sheet.labelPt() && x + width > sheet.widthPt()) {
                strips.add(Strip.of(sheet.linePt(), line).breaking(Break.UNWELCOME));
                line = new ArrayList<>();
                x = sheet.labelPt();
            }
            line.add(Piece.ornament(setter.chips().of(yarn, x, 0)));
            line.add(Piece.of(
                    body,
                    setter.words(x + CHIP_INDENT_PT, bold.baselinePt(), id, bold),
                    setter.words(x + CHIP_INDENT_PT + idPt, text.baselinePt(), name + (last ? "" : ", "), text)));
            x += width + CHIP_GAP_PT;
        }
        strips.add(Strip.of(sheet.linePt(), line));
        return strips;
    }

    private List<Strip> contents(List<Anchor> inside) {
        Tag toc = root.child(StandardStructureTypes.TOC);
        Style text = styles.text();
        double left = sheet.labelPt();
        double right = left + Math.min(sheet.textPt(), 230);
        List<Strip> strips = new ArrayList<>();
        for (int i = 0; i < inside.size(); i++) {
            Anchor anchor = inside.get(i);
            Tag link = toc.child(StandardStructureTypes.TOCI).child(StandardStructureTypes.LINK);
            List<Piece> pieces = new ArrayList<>();
            if (i == 0) {
                pieces.add(Piece.of(
                        root.child(StandardStructureTypes.P),
                        setter.words(0, text.baselinePt(), Texts.of("cover.inside"), styles.strong())));
            }
            pieces.add(Piece.ornament(Ink.Box.filled(left, sheet.linePt() - 0.2, right - left, 0.4, Tone.LINE)));
            pieces.add(Piece.of(
                    link,
                    setter.words(
                            left,
                            text.baselinePt(),
                            setter.fitted(anchor.title(), text, right - left - 40) + " ",
                            text),
                    new Ink.PageOf(
                            right, text.baselinePt(), anchor, styles.figures().face(), text.sizePt()),
                    new Ink.Link(left, 0, right - left, sheet.linePt(), anchor)));
            Strip strip = new Strip(
                    sheet.linePt(),
                    0,
                    pieces,
                    i < inside.size() - 1 ? Break.NEVER : Break.FREE,
                    false,
                    Optional.empty(),
                    List.of());
            strips.add(i == 0 ? strip.spaced(sheet.linePt()) : strip);
        }
        return strips;
    }

    private static double height(List<Strip> strips) {
        return strips.stream()
                .mapToDouble(strip -> strip.heightPt() + strip.spaceAbovePt())
                .sum();
    }
}
