package edgewright.booklet.maker;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.commas;
import static edgewright.texts.Arg.count;

import edgewright.booklet.choice.BookletOptions;
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
import edgewright.texts.Messages;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** The worksheet: the counts of a piece written down and put right with a pencil and no calculator. */
public final class WorksheetPages {
    /** The widest name of a side, and a line for a number of four figures, in lines of text. */
    private static final double SIDE = 3.6;

    private static final double NUMBER = 4.1;
    private static final int EXAMPLE_CHANGES = 3;

    private final TextSetter setter;
    private final Messages says;
    private final Chart chart;
    private final BookletOptions options;
    private final WorksheetPlan plan;
    private final GuideSentences sentences;

    public WorksheetPages(TextSetter setter, Chart chart, BookletOptions options) {
        this.setter = setter;
        this.says = setter.says();
        this.chart = chart;
        this.options = options;
        this.sentences = new GuideSentences(options.language());
        this.plan = WorksheetPlan.of(chart, options);
    }

    public List<ColumnSlice> set(Tag parent, Anchor anchor) {
        if (options.size().changes().isPresent()) {
            FitPlan piece = options.size().changes().get();
            return new PieceSheet(setter, options, piece).set(parent, anchor);
        }
        List<ColumnSlice> strips = new ArrayList<>(setter.partHeading(parent, anchor));
        strips.addAll(setter.paragraph(parent, says.text("worksheet-how")));
        strips.addAll(after(setter.paragraph(parent, new FitSentences(options.language()).of(plan.rounds()))));
        if (!setter.sheet().oneColumn()) {
            strips.addAll(after(setter.paragraph(
                    parent, says.text("worksheet-inPicture", arg("where", inRound(plan.counting()))))));
            strips.add(picture(parent));
        }
        SizePages sizes = new SizePages(setter, plan);
        strips.addAll(sizes.closing(parent));
        strips.addAll(withNext(counting(parent)));
        strips.addAll(withNext(change(parent)));
        strips.addAll(check(parent));
        return strips;
    }

    /** Counts and measures of sizes, how the base round is picked up, and the back layer; of one piece the back layer alone. */
    public List<ColumnSlice> sizes(Tag parent, Anchor anchor) {
        SizePages sizes = new SizePages(setter, plan);
        List<ColumnSlice> strips = new ArrayList<>();
        if (options.size().changes().isEmpty()) {
            strips.addAll(sizes.sizes(parent));
            strips.addAll(sizes.swatch(parent));
            strips.addAll(sizes.pickUp(parent));
        }
        strips.addAll(sizes.back(parent));
        if (!strips.isEmpty()) {
            strips.set(0, strips.get(0).spaced(0));
            strips.addAll(0, setter.partHeading(parent, anchor));
        }
        return strips;
    }

    private String inRound(int round) {
        return plan.name(round);
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
    private List<ColumnSlice> counting(Tag parent) {
        String where = inRound(plan.counting());
        List<ColumnSlice> strips = stage(parent, says.text("worksheet-count", arg("where", where)));
        strips.addAll(prose(parent, says.text("worksheet-count-how-" + options.counting())));
        strips.addAll(SizePages.apart(setter, parent, even(plan.counting())));
        for (Side side : options.hand().workingOrder()) {
            strips.addAll(line(side)
                    .field(says.text("worksheet-counted"), numberPt())
                    .field(says.text("worksheet-minusTarget"), plan.target(side, plan.counting()), numberPt())
                    .field(says.text("worksheet-equalsChange"), numberPt())
                    .ticks(says.text("worksheet-lose"), says.text("worksheet-add"))
                    .set(parent));
        }
        return kept(strips);
    }

    private List<ColumnSlice> change(Tag parent) {
        List<ColumnSlice> strips = stage(
                parent,
                plan.isInBaseRound()
                        ? says.text("worksheet-changeBase")
                        : says.text(
                                "worksheet-changeIn",
                                arg("where", inRound(plan.rounds().changing()))));
        strips.addAll(prose(parent, says.text("worksheet-change-spread", arg("where", inRound(plan.counting())))));
        example().ifPresent(example -> strips.addAll(SizePages.apart(setter, parent, example)));
        strips.addAll(SizePages.apart(setter, parent, says.text("worksheet-change-how")));
        for (Side side : options.hand().workingOrder()) {
            strips.addAll(line(side)
                    .field(says.text("worksheet-counted"), numberPt())
                    .field(says.text("worksheet-dividedBy"), numberPt())
                    .field(says.text("worksheet-every"), numberPt())
                    .set(parent));
            strips.addAll(new FormLine(setter, sidePt(setter))
                    .fieldToEdge(says.text("worksheet-places"))
                    .set(parent));
        }
        return kept(strips);
    }

    /** The division with numbers that a side can have; none for a border that closes on any count. */
    private Optional<String> example() {
        SideShape shape = chart.shape(Side.FIRST);
        int changes = Math.min(EXAMPLE_CHANGES, shape.w() - 1);
        if (changes == 0) {
            return Optional.empty();
        }
        List<Integer> sizes = CountsPages.repeats(chart);
        int target = options.counting().shown(shape.stitches(plan.counting(), sizes.get(sizes.size() / 2)));
        int counted = target - changes;
        int every = counted / (changes + 1);
        List<String> places = IntStream.rangeClosed(1, changes)
                .mapToObj(i -> Integer.toString(i * every))
                .toList();
        return Optional.of(says.text(
                "worksheet-example",
                count("counted", counted),
                count("target", target),
                count("changes", changes),
                count("parts", changes + 1),
                count("every", every),
                commas("places", places)));
    }

    private List<ColumnSlice> check(Tag parent) {
        List<ColumnSlice> strips = stage(parent, says.text("worksheet-check", arg("where", inRound(plan.checking()))));
        int grown = SideShape.growth(plan.checking() - plan.counting());
        strips.addAll(prose(
                parent,
                grown == 0
                        ? says.text("worksheet-check-same")
                        : says.text(
                                "worksheet-check-grown",
                                count("stitches", grown),
                                arg("where", inRound(plan.counting())))));
        for (Side side : options.hand().workingOrder()) {
            strips.addAll(line(side)
                    .field(says.text("worksheet-counted"), numberPt())
                    .field(says.text("worksheet-target"), plan.target(side, plan.checking()), numberPt())
                    .tick(says.text("worksheet-right"))
                    .set(parent));
        }
        return kept(strips);
    }

    private String even(int round) {
        SideMultiple multiple = SideMultiple.of(chart.shape(), round, options.counting());
        return says.text("worksheet-even", arg("where", inRound(round)), arg("multiple", sentences.of(multiple)));
    }

    private FormLine line(Side side) {
        return line(setter, side);
    }

    /** A line that begins with the name of a side. */
    static FormLine line(TextSetter setter, Side side) {
        return new FormLine(setter, sidePt(setter)).about(setter.says().text("side-" + side));
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

    /** The lines to write on are seen at a glance, if a page holds them. */
    private static List<ColumnSlice> withNext(List<ColumnSlice> step) {
        step.set(step.size() - 1, step.get(step.size() - 1).breaking(Break.UNWELCOME));
        return step;
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
