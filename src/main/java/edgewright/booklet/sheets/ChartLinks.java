package edgewright.booklet.sheets;

import edgewright.booklet.page.Anchor;
import edgewright.booklet.page.ColumnSlice;
import edgewright.booklet.page.ColumnSlice.Break;
import edgewright.booklet.page.ColumnSlice.Piece;
import edgewright.booklet.page.PageItem;
import edgewright.booklet.page.StructureRole;
import edgewright.booklet.page.Tag;
import edgewright.booklet.page.TextSetter;
import edgewright.booklet.page.TextStyle;
import edgewright.chart.Terms;
import edgewright.texts.Messages;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** The ways from the chart to the rounds in words, and back. */
public final class ChartLinks {
    private final TextSetter setter;
    private final Messages says;
    private final Anchor chart;
    private final Map<Terms, Anchor> rounds = new EnumMap<>(Terms.class);

    public ChartLinks(TextSetter setter) {
        this.setter = setter;
        this.says = setter.says();
        this.chart = new Anchor(says.text("chart-heading"), 1);
    }

    /** Where the chart begins. */
    public Anchor chart() {
        return chart;
    }

    /** Says that the rounds stand in words in these terms. */
    public void announce(Terms terms, String heading) {
        rounds.put(terms, new Anchor(heading, 1));
    }

    /** Where the rounds begin in words. */
    public Anchor rounds(Terms terms) {
        return rounds.get(terms);
    }

    /** Puts a way to the chart to the heading of rounds in words. */
    public List<ColumnSlice> toChart(List<ColumnSlice> heading, Tag parent) {
        return with(heading, parent, List.of(new Way(says.text("link-chart"), chart)));
    }

    /** Puts ways to the rounds in words, one for each of the terms, to the heading of the chart. */
    List<ColumnSlice> toWords(List<ColumnSlice> heading, Tag parent) {
        List<Way> ways = new ArrayList<>();
        boolean both = rounds.size() > 1;
        rounds.forEach(
                (terms, anchor) -> ways.add(new Way(says.text((both ? "link-words-" : "link-only-") + terms), anchor)));
        return with(heading, parent, ways);
    }

    private record Way(String words, Anchor to) {}

    /** Under the heading where there is but one column, else at the end of its line. */
    private List<ColumnSlice> with(List<ColumnSlice> heading, Tag parent, List<Way> ways) {
        List<ColumnSlice> strips = new ArrayList<>(heading);
        if (setter.sheet().oneColumn()) {
            for (Way way : ways) {
                strips.add(line(parent, way).breaking(Break.NEVER));
            }
            return strips;
        }
        int last = strips.size() - 1;
        List<Piece> pieces = new ArrayList<>(strips.get(last).pieces());
        double right = setter.sheet().widthPt();
        for (int i = ways.size() - 1; i >= 0; i--) {
            Piece piece = at(right, parent, ways.get(i), setter.styles().small(), headingBaseline(strips.get(last)));
            pieces.add(piece);
            right = ((PageItem.Link) piece.inks().get(2)).xPt() - setter.sheet().linePt();
        }
        strips.set(last, strips.get(last).holding(pieces));
        return strips;
    }

    private static double headingBaseline(ColumnSlice heading) {
        return heading.pieces().stream()
                .flatMap(piece -> piece.inks().stream())
                .filter(PageItem.Words.class::isInstance)
                .mapToDouble(words -> ((PageItem.Words) words).baselinePt())
                .max()
                .orElseThrow();
    }

    /** Words and the number of the page; a click goes there. */
    private ColumnSlice line(Tag parent, Way way) {
        TextStyle text = setter.styles().text();
        double right = width(way, text);
        return ColumnSlice.of(setter.sheet().linePt(), List.of(at(right, parent, way, text, text.baselinePt())));
    }

    private Piece at(double right, Tag parent, Way way, TextStyle style, double baseline) {
        double left = right - width(way, style);
        Tag link = parent.child(StructureRole.PARAGRAPH).child(StructureRole.LINK);
        PageItem.Words words = setter.words(left, baseline, way.words() + " ", style);
        return Piece.of(
                link,
                words,
                new PageItem.PageOf(
                        left + words.widthPt(),
                        false,
                        baseline,
                        way.to(),
                        setter.styles().figures().face(),
                        style.sizePt()),
                new PageItem.Link(left, baseline - style.baselinePt(), right - left, style.leadingPt(), way.to()));
    }

    /** With room for a page number of two figures. */
    private double width(Way way, TextStyle style) {
        return setter.words(0, 0, way.words() + " ", style).widthPt()
                + setter.styles().figures().face().widthPt("00", style.sizePt());
    }
}
