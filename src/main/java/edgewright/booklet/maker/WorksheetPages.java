package edgewright.booklet.maker;

import edgewright.booklet.choice.BookletOptions;
import edgewright.booklet.choice.BookletTexts;
import edgewright.booklet.page.Anchor;
import edgewright.booklet.page.ColumnSlice;
import edgewright.booklet.page.ColumnSlice.Break;
import edgewright.booklet.page.ColumnSlice.Piece;
import edgewright.booklet.page.FormLine;
import edgewright.booklet.page.PageItem;
import edgewright.booklet.page.PageLayout;
import edgewright.booklet.page.Tag;
import edgewright.booklet.page.TextSetter;
import edgewright.booklet.parts.CountsPages;
import edgewright.chart.Chart;
import edgewright.chart.Side;
import edgewright.chart.SideShape;
import edgewright.draw.marks.Drawing;
import edgewright.fit.FitPlan;
import edgewright.fit.FitSentences;
import edgewright.fit.GuideSentences;
import edgewright.fit.SideMultiple;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** The worksheet: the counts of a piece written down and put right with a pencil and no calculator. */
public final class WorksheetPages {
    /** The widest name of a side, and a line for a number of four figures, in lines of text. */
    private static final double SIDE = 3.6;

    private static final double NUMBER = 4.1;
    private static final int EXAMPLE_CHANGES = 3;

    private final TextSetter setter;
    private final Chart chart;
    private final BookletOptions options;
    private final WorksheetPlan plan;
    private final GuideSentences sentences;

    public WorksheetPages(TextSetter setter, Chart chart, BookletOptions options) {
        this.setter = setter;
        this.chart = chart;
        this.options = options;
        this.sentences = new GuideSentences(options.language());
        this.plan = WorksheetPlan.of(chart, options);
    }

    public List<ColumnSlice> set(Tag parent, Anchor anchor) {
        if (options.size().changes().isPresent()) {
            FitPlan piece = options.size().changes().get();
            List<ColumnSlice> strips = new PieceSheet(setter, options, piece).set(parent, anchor);
            strips.addAll(new SizePages(setter, plan).back(parent));
            return strips;
        }
        List<ColumnSlice> strips = new ArrayList<>(setter.partHeading(parent, anchor));
        strips.set(0, strips.get(0).onNewPage(true));
        strips.addAll(setter.paragraph(parent, BookletTexts.of("worksheet.how")));
        strips.addAll(after(setter.paragraph(parent, new FitSentences(options.language()).of(plan.rounds()))));
        if (!setter.sheet().oneColumn()) {
            strips.addAll(
                    after(setter.paragraph(parent, BookletTexts.of("worksheet.inPicture", inRound(plan.counting())))));
            strips.add(picture(parent));
        }
        SizePages sizes = new SizePages(setter, plan);
        strips.addAll(sizes.closing(parent));
        strips.addAll(count(parent));
        strips.addAll(change(parent));
        strips.addAll(check(parent));
        strips.addAll(sizes.sizes(parent));
        strips.addAll(sizes.swatch(parent));
        strips.addAll(sizes.pickUp(parent));
        strips.addAll(sizes.back(parent));
        return strips;
    }

    private String inRound(int round) {
        return WorksheetPlan.name(round);
    }

    private ColumnSlice picture(Tag parent) {
        Drawing drawing = WorksheetPicture.of(plan, setter.sheet().widthPt() / PageLayout.PT_PER_MM);
        double height = drawing.heightMm() * PageLayout.PT_PER_MM;
        Tag figure = parent.figure(drawing.description());
        PageItem.Art art = new PageItem.Art(0, 0, setter.sheet().widthPt(), height, () -> drawing, 0, 0, 1);
        return ColumnSlice.of(setter.sheet().onGrid(height), List.of(Piece.of(figure, art)))
                .spaced(setter.sheet().linePt());
    }

    /** The page that is written on begins here. */
    private List<ColumnSlice> count(Tag parent) {
        String where = inRound(plan.counting());
        List<ColumnSlice> strips = stage(parent, BookletTexts.of("worksheet.count", where));
        strips.set(0, strips.get(0).onNewPage(true));
        strips.addAll(prose(parent, BookletTexts.of("worksheet.count.how." + options.counting())));
        strips.addAll(SizePages.apart(setter, parent, even(plan.counting())));
        for (Side side : options.hand().workingOrder()) {
            strips.addAll(line(side)
                    .field(BookletTexts.of("worksheet.counted"), numberPt())
                    .field(BookletTexts.of("worksheet.minusTarget"), plan.target(side, plan.counting()), numberPt())
                    .field(BookletTexts.of("worksheet.equalsChange"), numberPt())
                    .ticks(BookletTexts.of("worksheet.lose"), BookletTexts.of("worksheet.add"))
                    .set(parent));
        }
        return kept(strips);
    }

    private List<ColumnSlice> change(Tag parent) {
        List<ColumnSlice> strips = stage(
                parent,
                plan.isInBaseRound()
                        ? BookletTexts.of("worksheet.changeBase")
                        : BookletTexts.of(
                                "worksheet.changeIn", inRound(plan.rounds().changing())));
        strips.addAll(prose(parent, BookletTexts.of("worksheet.change.spread", inRound(plan.counting()))));
        example().ifPresent(example -> strips.addAll(SizePages.apart(setter, parent, example)));
        strips.addAll(SizePages.apart(setter, parent, BookletTexts.of("worksheet.change.how")));
        for (Side side : options.hand().workingOrder()) {
            strips.addAll(line(side)
                    .field(BookletTexts.of("worksheet.counted"), numberPt())
                    .field(BookletTexts.of("worksheet.dividedBy"), numberPt())
                    .field(BookletTexts.of("worksheet.every"), numberPt())
                    .set(parent));
            strips.addAll(new FormLine(setter, sidePt(setter))
                    .fieldToEdge(BookletTexts.of("worksheet.places"))
                    .set(parent));
        }
        return kept(strips);
    }

    /** The division with numbers that a side can have; none for a border that closes on any count. */
    private Optional<String> example() {
        int changes = Math.min(EXAMPLE_CHANGES, chart.shape().w() - 1);
        if (changes == 0) {
            return Optional.empty();
        }
        List<Integer> sizes = CountsPages.repeats(chart.shape());
        int target = options.counting().shown(chart.shape().stitches(plan.counting(), sizes.get(sizes.size() / 2)));
        int counted = target - changes;
        int every = counted / (changes + 1);
        String places = IntStream.rangeClosed(1, changes)
                .mapToObj(i -> Integer.toString(i * every))
                .collect(Collectors.joining(", "));
        return Optional.of(BookletTexts.of("worksheet.example", counted, target, changes, changes + 1, every, places));
    }

    private List<ColumnSlice> check(Tag parent) {
        List<ColumnSlice> strips = stage(parent, BookletTexts.of("worksheet.check", inRound(plan.checking())));
        int grown = SideShape.growth(plan.checking() - plan.counting());
        strips.addAll(prose(
                parent,
                grown == 0
                        ? BookletTexts.of("worksheet.check.same")
                        : BookletTexts.of("worksheet.check.grown", grown, inRound(plan.counting()))));
        for (Side side : options.hand().workingOrder()) {
            strips.addAll(line(side)
                    .field(BookletTexts.of("worksheet.counted"), numberPt())
                    .field(BookletTexts.of("worksheet.target"), plan.target(side, plan.checking()), numberPt())
                    .tick(BookletTexts.of("worksheet.right"))
                    .set(parent));
        }
        return kept(strips);
    }

    private String even(int round) {
        SideMultiple multiple = SideMultiple.of(chart.shape(), round, options.counting());
        return BookletTexts.of("worksheet.even", inRound(round), sentences.of(multiple));
    }

    private FormLine line(Side side) {
        return line(setter, side);
    }

    /** A line that begins with the name of a side. */
    static FormLine line(TextSetter setter, Side side) {
        return new FormLine(setter, sidePt(setter)).about(BookletTexts.of("side." + side));
    }

    private static double sidePt(TextSetter setter) {
        return SIDE * setter.sheet().linePt();
    }

    private double numberPt() {
        return numberPt(setter);
    }

    /** How long a line for a number is. */
    static double numberPt(TextSetter setter) {
        return NUMBER * setter.sheet().linePt();
    }

    private List<ColumnSlice> stage(Tag parent, String heading) {
        return new ArrayList<>(setter.sectionHeading(parent, heading, Optional.empty()));
    }

    /** A paragraph as wide as the column, over the lines that it is about. */
    private List<ColumnSlice> prose(Tag parent, String text) {
        return SizePages.wide(setter, parent, text);
    }

    private List<ColumnSlice> after(List<ColumnSlice> paragraph) {
        paragraph.set(0, paragraph.get(0).spaced(setter.sheet().halfLinePt()));
        return paragraph;
    }

    private List<ColumnSlice> kept(List<ColumnSlice> strips) {
        return kept(setter, strips);
    }

    /** A step as a whole; one column of large type has no room for that. */
    static List<ColumnSlice> kept(TextSetter setter, List<ColumnSlice> strips) {
        if (!setter.sheet().oneColumn()) {
            strips.replaceAll(strip -> strip.breaking(Break.NEVER));
        }
        int last = strips.size() - 1;
        strips.set(last, strips.get(last).breaking(Break.FREE));
        return strips;
    }
}
