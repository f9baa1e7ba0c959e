package edgewright.draw.picture;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.count;

import edgewright.chart.Chart;
import edgewright.chart.Colour;
import edgewright.chart.Place;
import edgewright.chart.Section;
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
import edgewright.draw.paint.Hatch;
import edgewright.draw.paint.Lettering;
import edgewright.draw.paint.Shape;
import edgewright.draw.paint.ShortenedText;
import edgewright.draw.paint.YarnSign;
import edgewright.texts.Messages;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.stream.IntStream;

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

    /** How far from the left edge words go before they go on in another line, in cells. */
    static final double WIDE = 13.5;

    /** From a sample to another in the same row. */
    private static final double BESIDE = 1.3;

    /** The smallest size of a long title. */
    private static final double SMALLEST_TITLE = 0.62;

    private final Chart chart;
    private final PictureStyle style;
    private final Emphasis emphasis;
    private final Function<Stitch, String> names;
    private final boolean titled;
    private final boolean shortened;
    private final double c;
    private final LegendSamples samples;
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
        this.samples = new LegendSamples(chart, style);
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
        y = row(samples.base(xMm, y), style.says().text("legend-base"), xMm, y, 1);
        y = lines(xMm, y);
        if (style.marks() && !chart.raggedSections().isEmpty()) {
            y = row(samples.missing(xMm, y), style.says().text("legend-missing"), xMm, y, 1);
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

    private double lines(double xMm, double yMm) {
        double y = yMm;
        if (style.grid()) {
            for (MarkKind kind : List.of(MarkKind.REPEAT_LINE, MarkKind.TENTH_LINE)) {
                String meaning = style.says().text(kind == MarkKind.REPEAT_LINE ? "legend-repeat" : "legend-tenth");
                y = row(samples.line(kind, xMm, y), meaning, xMm, y, 1);
            }
        }
        if (style.fabric() && style.marks() && style.inking() == ColourMode.BLACK && YarnSign.hasLetters(chart)) {
            y = row(samples.areaLine(xMm, y), style.says().text("legend-area"), xMm, y, 1);
        }
        return y;
    }

    private double stitches(double xMm, double yMm) {
        double y = yMm;
        for (Stitch stitch : Stitch.values()) {
            if (stitch.coversStitchBelow() && uses(stitch)) {
                y = covering(stitch, xMm, y);
            } else if (uses(stitch)) {
                y = row(samples.stitch(stitch, false, xMm, y), names.apply(stitch), xMm, y, 1);
            }
        }
        if (style.markStyle() == MarkStyle.SQUARES && uses(Stitch.LONG)) {
            String meaning = style.says().text("legend-bare", arg("stitch", names.apply(Stitch.BACK_LOOP)));
            y = row(samples.bare(xMm, y), meaning, xMm, y, 1);
        }
        String corner = style.says()
                .text("legend-corner", count("chains", chart.corner().chains()));
        return row(samples.corner(xMm, y), corner, xMm, y, 1);
    }

    /** A stitch that goes down over others, and beside it, if the chart has that, one that lands in a corner. */
    private double covering(Stitch stitch, double x, double y) {
        List<Shape> shapes = new ArrayList<>(samples.stitch(stitch, false, x, y));
        String meaning = style.says().text("legend-lands", arg("stitch", names.apply(stitch)));
        int columns = 1;
        if (landsInCorner()) {
            shapes.addAll(samples.stitch(stitch, true, x + BESIDE * c, y));
            meaning += " " + style.says().text("legend-lands-corner");
            columns = 2;
        }
        return row(shapes, meaning, x, (TEXT_AT + (columns - 1) * BESIDE) * c, y, 1 + stitch.roundsDown());
    }

    /** Whether a long stitch is the second of a side or the last but one: two rounds below these there is a corner. */
    private boolean landsInCorner() {
        return IntStream.rangeClosed(2, chart.rounds().size()).anyMatch(round -> {
            int lastButOne = chart.round(round).section(Section.TO_CORNER).length() - 1;
            return isLong(round, Section.FROM_CORNER, 2) || isLong(round, Section.TO_CORNER, lastButOne);
        });
    }

    private boolean isLong(int round, Section section, int place) {
        return place > 0
                && place <= chart.round(round).section(section).length()
                && chart.stitch(new Place(round, section, place)) == Stitch.LONG;
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

    private double example(LegendExample example, double x, double y) {
        List<Shape> shapes = example.row(x, y);
        marks.add(new Mark(MarkKind.LEGEND, Optional.empty(), Optional.empty(), Optional.empty(), shapes));
        widthMm = Math.max(widthMm, marks.get(marks.size() - 1).bounds().rightMm());
        return y + example.heightMm() + ROW_GAP * c;
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
            shapes.add(samples.edge(cell));
            plateAt = 1.3 * c;
        }
        Area plate = new Area(x + plateAt, y + 0.14 * c, width, 0.72 * c);
        shapes.addAll(CornerLabels.chip(yarn, plate, false, size, style));
        double textAt = Math.max(TEXT_AT * c, plateAt + width + 0.4 * c);
        return row(
                MarkKind.LEGEND,
                Optional.of(yarn.id()),
                shapes,
                List.of(style.says().text("legend-yarn", arg("yarn", yarn.name()))),
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

    private double row(List<Shape> sample, String words, double x, double y, int cells) {
        return row(sample, words, x, TEXT_AT * c, y, cells);
    }

    private double row(List<Shape> sample, String words, double x, double textAt, double y, int cells) {
        List<String> lines = LegendWords.lines(words, WIDE * c - textAt, c);
        return row(MarkKind.LEGEND, Optional.empty(), sample, lines, x, textAt, y, cells);
    }

    /** Adds a row and says where the next begins. */
    private double row(
            MarkKind kind,
            Optional<String> yarn,
            List<Shape> sample,
            List<String> lines,
            double x,
            double textAt,
            double y,
            int cells) {
        List<Shape> shapes = new ArrayList<>(sample);
        double height = Math.max(cells, lines.size() * LegendWords.LINE) * c;
        List<String> fitting = lines.stream()
                .map(line -> shortened(line, MOST_WIDE - textAt / c, Shape.Weight.REGULAR, TEXT * c))
                .toList();
        for (Shape.Text line : LegendWords.set(fitting, x + textAt, y + height / 2, c, style)) {
            widthMm = Math.max(widthMm, line.bounds().rightMm());
            shapes.add(line);
        }
        marks.add(new Mark(kind, Optional.empty(), Optional.empty(), yarn, shapes));
        return y + height + ROW_GAP * c;
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
