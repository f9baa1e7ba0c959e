package edgewright.draw.picture;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.count;

import edgewright.chart.Chart;
import edgewright.chart.Colour;
import edgewright.chart.HookHand;
import edgewright.chart.Stitch;
import edgewright.chart.Yarn;
import edgewright.check.Severity;
import edgewright.draw.marks.Drawing;
import edgewright.draw.marks.Emphasis;
import edgewright.draw.marks.Mark;
import edgewright.draw.marks.MarkKind;
import edgewright.draw.marks.MarkStyle;
import edgewright.draw.paint.Area;
import edgewright.draw.paint.ColourMode;
import edgewright.draw.paint.Frame;
import edgewright.draw.paint.Hatch;
import edgewright.draw.paint.Lettering;
import edgewright.draw.paint.Palette;
import edgewright.draw.paint.PenPath;
import edgewright.draw.paint.Shape;
import edgewright.draw.paint.ShortenedText;
import edgewright.draw.paint.YarnSign;
import edgewright.texts.Messages;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;

/**
 * What the marks of a chart mean: those that the chart uses and no others, each drawn as it is drawn in the chart, and its
 * yarns.
 */
public final class Legend {
    static final double TEXT = 0.52;
    private static final double TITLE = 0.95;
    private static final double TEXT_AT = 1.65;
    private static final double ROW_GAP = 0.42;

    /** How far from the left edge words may reach, in cells; longer ones are set smaller or cut. */
    private static final double MOST_WIDE = 17;

    /** The smallest size of a long title. */
    private static final double SMALLEST_TITLE = 0.62;

    private final Chart chart;
    private final PictureStyle style;
    private final Emphasis emphasis;
    private final Function<Stitch, String> names;
    private final boolean titled;
    private final boolean shortened;
    private final double c;
    private final List<Mark> marks = new ArrayList<>();
    private double widthMm;
    private double heightMm;

    private Legend(
            Chart chart,
            PictureStyle style,
            Emphasis emphasis,
            Function<Stitch, String> names,
            boolean titled,
            boolean shortened) {
        this.chart = chart;
        this.style = style;
        this.emphasis = emphasis;
        this.names = names;
        this.titled = titled;
        this.shortened = shortened;
        this.c = style.cellMm();
        lay(0, 0);
    }

    /** The legend of a chart as a drawing of its own, with the stitches named in words that hold for any terms. */
    public static Drawing of(Chart chart, PictureStyle style, Emphasis emphasis) {
        return of(chart, style, emphasis, stitch -> plainName(stitch, style.says()));
    }

    /**
     * The legend of a chart as a drawing of its own.
     *
     * @param names what each stitch is called
     */
    public static Drawing of(Chart chart, PictureStyle style, Emphasis emphasis, Function<Stitch, String> names) {
        return drawing(new Legend(chart, style, emphasis, names, false, true));
    }

    /** The same with all words whole, however long, for whoever breaks them into lines. */
    public static Drawing withWholeWords(
            Chart chart, PictureStyle style, Emphasis emphasis, Function<Stitch, String> names) {
        return drawing(new Legend(chart, style, emphasis, names, false, false));
    }

    private static Drawing drawing(Legend legend) {
        // Rings stand out of their cells.
        double edge = 0.3 * legend.c;
        legend.lay(edge, edge);
        return new Drawing(
                legend.widthMm + 2 * edge,
                legend.heightMm + 2 * edge,
                legend.style.says().text("legend-title", arg("title", legend.chart.title())),
                legend.style.says().text("legend-description"),
                legend.marks);
    }

    /** The legend to be set into the chart, with the title of the border above it. */
    public static Legend inChart(Chart chart, PictureStyle style, Emphasis emphasis) {
        return new Legend(chart, style, emphasis, stitch -> plainName(stitch, style.says()), true, true);
    }

    /** How wide it is. */
    public double widthMm() {
        return widthMm;
    }

    /** How high it is. */
    public double heightMm() {
        return heightMm;
    }

    /** The marks with the legend's upper left corner at a point. */
    public List<Mark> marksAt(double xMm, double yMm) {
        Legend moved = new Legend(chart, style, emphasis, names, titled, shortened);
        moved.lay(xMm, yMm);
        return List.copyOf(moved.marks);
    }

    private static String plainName(Stitch stitch, Messages says) {
        return says.text("legend-stitch-" + stitch);
    }

    private void lay(double xMm, double yMm) {
        marks.clear();
        widthMm = 0;
        double y = titled ? title(xMm, yMm) : yMm;
        if (style.marks()) {
            y = stitches(xMm, y);
        }
        y = base(xMm, y);
        if (style.grid()) {
            y = line(MarkKind.REPEAT_LINE, style.says().text("legend-repeat"), xMm, y);
            y = line(MarkKind.TENTH_LINE, style.says().text("legend-tenth"), xMm, y);
        }
        if (style.marks() && !chart.raggedSections().isEmpty()) {
            y = missing(xMm, y);
        }
        for (Yarn yarn : chart.yarns()) {
            if (chart.rounds().stream().anyMatch(round -> round.yarn().equals(yarn.id()))) {
                y = yarn(yarn, xMm, y);
            }
        }
        Optional<LegendExample> example = LegendExample.of(chart, style);
        if (example.isPresent()) {
            y = example(example.get(), xMm, y);
        }
        for (Severity severity : Severity.values()) {
            if (emphasis.flags().stream().anyMatch(flag -> flag.severity() == severity)) {
                y = flag(severity, xMm, y);
            }
        }
        widthMm -= xMm;
        heightMm = y - ROW_GAP * c - yMm;
    }

    private double stitches(double xMm, double yMm) {
        double y = yMm;
        for (Stitch stitch : Stitch.values()) {
            if (uses(stitch)) {
                y = stitch(stitch, xMm, y);
            }
        }
        if (style.markStyle() == MarkStyle.SQUARES && uses(Stitch.LONG)) {
            y = bare(xMm, y);
        }
        return corner(xMm, y);
    }

    private boolean uses(Stitch stitch) {
        return chart.rounds().stream().anyMatch(round -> uses(round, stitch));
    }

    private static boolean uses(edgewright.chart.Round round, Stitch stitch) {
        return round.has(stitch::equals);
    }

    private double title(double x, double y) {
        double size = Math.max(
                SMALLEST_TITLE * c, CornerSheet.fitted(chart.title(), Shape.Weight.BOLD, TITLE * c, MOST_WIDE * c));
        double base = y + Lettering.CAPITAL * size;
        List<Shape> shapes = new ArrayList<>();
        shapes.add(text(
                shortened(chart.title(), MOST_WIDE, Shape.Weight.BOLD, size),
                x,
                base,
                size,
                Shape.Weight.BOLD,
                style.palette().ink()));
        if (!chart.designer().isBlank()) {
            base += 0.85 * c;
            shapes.add(text(
                    shortened(chart.designer(), MOST_WIDE, Shape.Weight.REGULAR, TEXT * c),
                    x,
                    base,
                    TEXT * c,
                    Shape.Weight.REGULAR,
                    style.palette().quietInk()));
        }
        marks.add(Mark.beside(MarkKind.CAPTION, shapes));
        return base + 0.9 * c;
    }

    private double stitch(Stitch stitch, double x, double y) {
        int cells = stitch.coversStitchBelow() ? 1 + stitch.roundsDown() : 1;
        Yarn yarn = yarnOf(stitch);
        Colour ground = ground(yarn.colour());
        List<Shape> shapes = new ArrayList<>();
        for (int i = 0; i < cells; i++) {
            shapes.addAll(cell(new Area(x, y + i * c, c, c), ground));
        }
        shapes.addAll(signs(x, y).of(stitch, style.inking().yarn(yarn.colour()), ground, stitch.roundsDown()));
        if (cells > 1 && style.markStyle() == MarkStyle.SQUARES) {
            // The loop that it goes into.
            shapes.addAll(signs(x, y + (cells - 1) * c).of(Stitch.BACK_LOOP, yarn.colour(), ground, 0));
        }
        return row(shapes, names.apply(stitch), x, y, cells);
    }

    private Yarn yarnOf(Stitch stitch) {
        return chart.rounds().stream()
                .filter(round -> uses(round, stitch))
                .findFirst()
                .flatMap(round -> chart.yarn(round.yarn()))
                .orElseThrow();
    }

    private double corner(double x, double y) {
        Colour ground = ground(chart.yarnOf(1).colour());
        List<Shape> shapes = new ArrayList<>(cell(new Area(x, y, c, c), ground));
        shapes.addAll(StitchShapes.cornerChains(
                new Area(x, y, c, c),
                true,
                chart.corner().chains(),
                style.inking().on(ground)));
        return row(
                shapes,
                style.says()
                        .text("legend-corner", count("chains", chart.corner().chains())),
                x,
                y,
                1);
    }

    private double base(double x, double y) {
        Colour ground = ground(style.palette().base());
        List<Shape> shapes = new ArrayList<>(cell(new Area(x, y, c, c), ground));
        shapes.addAll(signs(x, y).base(ground, style.palette()));
        return row(shapes, style.says().text("legend-base"), x, y, 1);
    }

    /** A corner of squared paper with one heavier line upright in its middle. */
    private double line(MarkKind kind, String words, double x, double y) {
        Palette palette = style.palette();
        List<Shape> shapes = new ArrayList<>();
        for (double at : new double[] {0, 1}) {
            shapes.add(SquaredPaper.solid(
                    PenPath.line(x, y + at * c, x + c, y + at * c), SquaredPaper.GRID * c, palette.grid()));
            shapes.add(SquaredPaper.solid(
                    PenPath.line(x + at * c, y, x + at * c, y + c), SquaredPaper.GRID * c, palette.grid()));
        }
        double length = kind == MarkKind.TENTH_LINE ? SquaredPaper.TENTH_LENGTH : 1;
        PenPath path = PenPath.line(x + 0.5 * c, y, x + 0.5 * c, y + length * c);
        shapes.addAll(SquaredPaper.shapes(kind, path, c, palette));
        return row(shapes, words, x, y, 1);
    }

    /** The square of a stitch that a long stitch covers. */
    private double bare(double x, double y) {
        Colour ground = ground(yarnOf(Stitch.LONG).colour());
        return row(
                cell(new Area(x, y, c, c), ground),
                style.says().text("legend-bare", arg("stitch", names.apply(Stitch.BACK_LOOP))),
                x,
                y,
                1);
    }

    private double example(LegendExample example, double x, double y) {
        List<Shape> shapes = example.row(x, y);
        marks.add(new Mark(MarkKind.LEGEND, Optional.empty(), Optional.empty(), Optional.empty(), shapes));
        widthMm = Math.max(widthMm, marks.get(marks.size() - 1).bounds().rightMm());
        return y + example.heightMm() + ROW_GAP * c;
    }

    private double missing(double x, double y) {
        List<Shape> shapes = signs(x, y).missing(style.palette());
        return row(shapes, style.says().text("legend-missing"), x, y, 1);
    }

    private double yarn(Yarn yarn, double x, double y) {
        double size = 0.44 * c;
        double width = Math.max(c, Lettering.widthMm(yarn.id(), Shape.Weight.BOLD, size) + 0.32 * c);
        List<Shape> shapes = new ArrayList<>();
        double plateAt = 0;
        if (style.inking() == ColourMode.BLACK && style.fabric()) {
            Area cell = new Area(x, y, c, c);
            shapes.addAll(
                    style.marks()
                            ? YarnSign.of(chart).get(yarn.id()).in(cell)
                            : Hatch.of(chart).get(yarn.id()).in(cell));
            shapes.add(edge(cell));
            plateAt = 1.3 * c;
        }
        Area plate = new Area(x + plateAt, y + 0.14 * c, width, 0.72 * c);
        shapes.addAll(CornerLabels.chip(yarn, plate, false, size, style));
        double textAt = Math.max(TEXT_AT * c, plateAt + width + 0.4 * c);
        return row(
                MarkKind.LEGEND,
                Optional.of(yarn.id()),
                shapes,
                style.says().text("legend-yarn", arg("yarn", yarn.name())),
                x,
                textAt,
                y,
                1);
    }

    private double flag(Severity severity, double x, double y) {
        Emphasis.Flag sample = new Emphasis.Flag(1, severity, Optional.empty(), OptionalInt.empty());
        List<Shape> shapes = FindingShapes.ring(new Area(x, y, c, c), List.of(sample), style.palette());
        String meaning = style.says().text(severity == Severity.ERROR ? "legend-error" : "legend-warning");
        return row(shapes, meaning, x, y, 1);
    }

    private List<Shape> cell(Area area, Colour ground) {
        return List.of(new Shape.Fill(PenPath.rectangle(area), ground), edge(area));
    }

    private Shape edge(Area area) {
        double width = style.inking() == ColourMode.COLOUR ? 0.022 : 0.04;
        return new Shape.Line(
                PenPath.rectangle(area), width * c, style.palette().tenth(), Shape.Ends.CUT, List.of());
    }

    /** The marks as they lie in the chart, in a cell with its upper left corner at a point. */
    private StitchShapes signs(double x, double y) {
        Frame frame = Frame.of(0, x + c / 2, y + c / 2, c);
        return new StitchShapes(
                style.hand() == HookHand.LEFT ? frame.mirrored() : frame, c, style.inking(), style.markStyle());
    }

    private Colour ground(Colour shown) {
        return style.ground(shown);
    }

    private double row(List<Shape> sample, String words, double x, double y, int cells) {
        return row(MarkKind.LEGEND, Optional.empty(), sample, words, x, TEXT_AT * c, y, cells);
    }

    /** Adds a row and says where the next begins. */
    private double row(
            MarkKind kind,
            Optional<String> yarn,
            List<Shape> sample,
            String words,
            double x,
            double textAt,
            double y,
            int cells) {
        double size = TEXT * c;
        List<Shape> shapes = new ArrayList<>(sample);
        double base = y + cells * c / 2 + Lettering.CAPITAL * size / 2;
        shapes.add(text(
                shortened(words, MOST_WIDE - textAt / c, Shape.Weight.REGULAR, size),
                x + textAt,
                base,
                size,
                Shape.Weight.REGULAR,
                style.palette().ink()));
        marks.add(new Mark(kind, Optional.empty(), Optional.empty(), yarn, shapes));
        return y + (cells + ROW_GAP) * c;
    }

    private String shortened(String words, double mostCells, Shape.Weight weight, double size) {
        return shortened
                ? ShortenedText.toFit(words, text -> Lettering.widthMm(text, weight, size) <= mostCells * c)
                : words;
    }

    private Shape text(String words, double x, double base, double size, Shape.Weight weight, Colour colour) {
        widthMm = Math.max(widthMm, x + Lettering.widthMm(words, weight, size));
        return new Shape.Text(words, x, base, size, weight, Shape.Anchor.START, 0, colour);
    }
}
