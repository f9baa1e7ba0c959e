package edgewright.booklet.matter;

import static edgewright.texts.Arg.arg;

import edgewright.booklet.page.ColumnSlice;
import edgewright.booklet.page.ColumnSlice.Break;
import edgewright.booklet.page.ColumnSlice.Piece;
import edgewright.booklet.page.PageItem;
import edgewright.booklet.page.StructureRole;
import edgewright.booklet.page.Tag;
import edgewright.booklet.page.TextSetter;
import edgewright.booklet.page.TextStyle;
import edgewright.chart.Colour;
import edgewright.words.own.OwnText;
import edgewright.words.own.OwnText.Span;
import edgewright.words.own.OwnText.Stress;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;

/** Sets texts of the designer's own. Emphasis is bold, links are underlined and followed by their address. */
final class OwnTextSetter {
    private static final double UNDERLINE_PT = 0.6;
    private static final double UNDER_BASELINE = 0.16;

    /** How far the text of a list stands in, in lines. */
    private static final double INDENT = 1.4;

    private final TextSetter setter;
    private final TextStyle plain;
    private final TextStyle bold;
    private final Colour ofLinks;

    OwnTextSetter(TextSetter setter) {
        this.setter = setter;
        this.plain = setter.styles().text();
        this.bold = setter.styles().strong();
        this.ofLinks = setter.styles().part().colour();
    }

    /** The text beside the labels, one block under the other. */
    List<ColumnSlice> set(Tag parent, OwnText text) {
        return set(parent, text, setter.sheet().labelPt());
    }

    /** The same, that far from the left edge of the column. */
    private List<ColumnSlice> set(Tag parent, OwnText text, double xPt) {
        List<ColumnSlice> strips = new ArrayList<>();
        for (OwnText.Block block : text.blocks()) {
            List<ColumnSlice> set = block instanceof OwnText.Paragraph paragraph
                    ? paragraph(parent.child(StructureRole.PARAGRAPH), paragraph.spans(), xPt)
                    : items(parent.child(StructureRole.LIST), (OwnText.Items) block, xPt);
            // A list in a list goes on with it.
            boolean inList = parent.role() == StructureRole.BODY && block instanceof OwnText.Items;
            boolean close = strips.isEmpty() || (inList && !setter.sheet().oneColumn());
            strips.addAll(close ? set : spaced(set, setter.betweenPt()));
        }
        return strips;
    }

    /** A label at the left edge and a text beside it, or under it where there is but one column. */
    List<ColumnSlice> labelled(Tag item, String label, OwnText text) {
        TextStyle strong = setter.styles().strong();
        Piece head =
                Piece.of(item.child(StructureRole.LABEL), setter.words(0, strong.baselinePt(), label + " ", strong));
        Tag body = item.child(StructureRole.BODY);
        if (!setter.sheet().oneColumn()) {
            return headed(head, set(body, text));
        }
        List<ColumnSlice> strips = new ArrayList<>();
        strips.add(ColumnSlice.of(strong.leadingPt(), List.of(head)).breaking(Break.NEVER));
        strips.addAll(set(body, text));
        return strips;
    }

    private List<ColumnSlice> items(Tag list, OwnText.Items items, double xPt) {
        double indent = INDENT * setter.sheet().linePt();
        for (int i = 0; i < items.items().size(); i++) {
            indent = Math.max(
                    indent, setter.words(0, 0, items.label(i) + "  ", plain).widthPt());
        }
        List<ColumnSlice> strips = new ArrayList<>();
        for (int i = 0; i < items.items().size(); i++) {
            Tag item = list.child(StructureRole.ITEM);
            Piece label = Piece.of(
                    item.child(StructureRole.LABEL),
                    setter.words(xPt, plain.baselinePt(), items.label(i) + " ", plain));
            List<ColumnSlice> set = headed(
                    label, set(item.child(StructureRole.BODY), items.items().get(i), xPt + indent));
            strips.addAll(i > 0 && setter.sheet().oneColumn() ? spaced(set, setter.betweenPt()) : set);
        }
        return strips;
    }

    /** With a piece more at the beginning of the first line. */
    private List<ColumnSlice> headed(Piece head, List<ColumnSlice> strips) {
        if (strips.isEmpty()) {
            return List.of(ColumnSlice.of(plain.leadingPt(), List.of(head)));
        }
        List<ColumnSlice> headed = new ArrayList<>(strips);
        List<Piece> pieces = new ArrayList<>(List.of(head));
        pieces.addAll(strips.get(0).pieces());
        headed.set(0, strips.get(0).holding(pieces));
        return headed;
    }

    private List<ColumnSlice> paragraph(Tag tag, List<Span> spans, double xPt) {
        // Two spans that say the same are two all the same.
        IdentityHashMap<Span, Tag> tags = new IdentityHashMap<>();
        List<Span> printed = new ArrayList<>();
        for (Span span : spans) {
            Span whole = new Span(withAddress(span), span.stress(), span.link());
            printed.add(whole);
            tags.put(whole, tag(tag, whole));
        }
        OwnWords words = new OwnWords(plain.face(), bold.face(), plain.sizePt());
        List<ColumnSlice> lines = new ArrayList<>();
        for (List<OwnWords.Run> runs : words.lines(printed, setter.sheet().widthPt() - xPt)) {
            List<Piece> pieces = new ArrayList<>();
            for (OwnWords.Run run : runs) {
                pieces.addAll(pieces(run, tags.get(run.span()), xPt));
            }
            lines.add(ColumnSlice.of(plain.leadingPt(), pieces));
        }
        return TextSetter.together(lines);
    }

    private String withAddress(Span span) {
        return span.addressBeside()
                .map(address -> setter.says().text("own-address", arg("text", span.text()), arg("address", address)))
                .orElse(span.text());
    }

    private static Tag tag(Tag paragraph, Span span) {
        if (span.link().isPresent()) {
            return paragraph.child(StructureRole.LINK);
        }
        return span.stress() == Stress.NONE ? paragraph : paragraph.child(StructureRole.SPAN);
    }

    private List<Piece> pieces(OwnWords.Run run, Tag tag, double leftPt) {
        TextStyle style = run.span().stress() == Stress.NONE ? plain : bold;
        double x = leftPt + run.xPt();
        PageItem.Words words = setter.words(x, plain.baselinePt(), run.text(), style);
        if (run.span().link().isEmpty()) {
            return List.of(Piece.of(tag, words));
        }
        double under = plain.baselinePt() + UNDER_BASELINE * plain.sizePt();
        String address = run.span().link().get();
        return List.of(
                Piece.ornament(PageItem.Box.filled(x, under, run.widthPt(), UNDERLINE_PT, ofLinks)),
                Piece.of(
                        tag,
                        new PageItem.Words(x, plain.baselinePt(), run.text(), style.face(), style.sizePt(), ofLinks),
                        new PageItem.WebLink(
                                x,
                                0,
                                run.widthPt(),
                                plain.leadingPt(),
                                address,
                                setter.says().text("own-link", arg("address", address)))));
    }

    /** The first of these slices with white above it. */
    static List<ColumnSlice> spaced(List<ColumnSlice> strips, double abovePt) {
        List<ColumnSlice> spaced = new ArrayList<>(strips);
        if (!spaced.isEmpty()) {
            spaced.set(0, spaced.get(0).spaced(abovePt));
        }
        return spaced;
    }

    /** A text of one span. */
    static OwnText alone(String text, Optional<String> link) {
        return new OwnText(List.of(new OwnText.Paragraph(List.of(new Span(text, Stress.NONE, link)))));
    }
}
