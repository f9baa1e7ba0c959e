package edgewright.draw.picture;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.number;

import edgewright.chart.Chart;
import edgewright.chart.Colour;
import edgewright.chart.HookHand;
import edgewright.chart.Stitch;
import edgewright.chart.Yarn;
import edgewright.draw.marks.MarkStyle;
import edgewright.draw.paint.Area;
import edgewright.draw.paint.ColourMode;
import edgewright.draw.paint.Frame;
import edgewright.draw.paint.Lettering;
import edgewright.draw.paint.PenPath;
import edgewright.draw.paint.Shape;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * A few squares of a chart with a long stitch in another yarn than the stitch that it covers, for the legend: there the yarn that
 * shows is not the one that is worked.
 */
final class LegendExample {
    private static final int COLUMNS = 3;
    private static final double NUMBER = 0.48;
    private static final double CHIP = 0.44;
    private static final double GAP = 0.22;
    private static final double EDGE = 0.022;

    private final Chart chart;
    private final PictureStyle style;
    private final int round;
    private final double c;
    private final double numberMm;
    private final double chipMm;

    private LegendExample(Chart chart, PictureStyle style, int round) {
        this.chart = chart;
        this.style = style;
        this.round = round;
        this.c = style.cellMm();
        this.numberMm = Lettering.widthMm(Integer.toString(round), Shape.Weight.REGULAR, NUMBER * c);
        this.chipMm = Math.max(0.8 * c, widestId(chart.yarnOf(round), chart.yarnOf(round - 1)) + 0.32 * c);
    }

    private double widestId(Yarn one, Yarn other) {
        return Math.max(
                Lettering.widthMm(one.id(), Shape.Weight.BOLD, CHIP * c),
                Lettering.widthMm(other.id(), Shape.Weight.BOLD, CHIP * c));
    }

    /** The first round of a chart with such a stitch; empty for a chart without one, and where yarns or marks are not drawn. */
    static Optional<LegendExample> of(Chart chart, PictureStyle style) {
        if (!style.fabric() || !style.marks()) {
            return Optional.empty();
        }
        return IntStream.rangeClosed(3, chart.rounds().size())
                .filter(round -> chart.round(round).has(Stitch.LONG::equals))
                .filter(round ->
                        !chart.round(round).yarn().equals(chart.round(round - 1).yarn()))
                .mapToObj(round -> new LegendExample(chart, style, round))
                .findFirst();
    }

    private static int rows() {
        return 1 + Stitch.LONG.roundsDown();
    }

    private double widthMm() {
        return COLUMNS * c + 2 * (2 * GAP * c + numberMm + chipMm);
    }

    private double wordsAtMm() {
        return widthMm() + 0.45 * c;
    }

    double heightMm() {
        return Math.max(rows(), lines().size() * LegendWords.LINE) * c;
    }

    /** The squares with their upper left corner at a point, and beside them what is to be seen and done there. */
    List<Shape> row(double xMm, double yMm) {
        List<Shape> shapes = new ArrayList<>(at(xMm, yMm));
        shapes.addAll(LegendWords.set(lines(), xMm + wordsAtMm(), yMm + heightMm() / 2, c, style));
        return shapes;
    }

    private List<String> lines() {
        String words = style.says()
                .text(
                        "legend-example",
                        number("below", round - 1),
                        number("above", round),
                        arg("worked", chart.yarnOf(round - 1).id()),
                        arg("shown", chart.yarnOf(round).id()));
        return LegendWords.lines(words, Legend.WIDE * c - wordsAtMm(), c);
    }

    /** The squares, with the number and the yarn of each row at both ends. */
    private List<Shape> at(double xMm, double yMm) {
        List<Shape> shapes = new ArrayList<>();
        double left = xMm + 2 * GAP * c + numberMm + chipMm;
        for (int row = 0; row < rows(); row++) {
            addEnds(shapes, round - row, xMm, left + COLUMNS * c, yMm + row * c);
        }
        for (int row = 0; row < rows(); row++) {
            for (int column = 0; column < COLUMNS; column++) {
                addCell(shapes, new Area(left + column * c, yMm + row * c, c, c), shown(row, column));
            }
        }
        for (int row = rows() - 1; row >= 0; row--) {
            for (int column = 0; column < COLUMNS; column++) {
                addSign(shapes, new Area(left + column * c, yMm + row * c, c, c), row, column);
            }
        }
        return shapes;
    }

    /** The round that shows in a square. */
    private int shown(int row, int column) {
        return row == 1 && column == 1 ? round : round - row;
    }

    private void addEnds(List<Shape> shapes, int ofRound, double leftMm, double cellsEndMm, double yMm) {
        double base = yMm + c / 2 + Lettering.CAPITAL * NUMBER * c / 2;
        String digits = Integer.toString(ofRound);
        Yarn yarn = chart.yarnOf(ofRound);
        double right = cellsEndMm + GAP * c + numberMm;
        shapes.addAll(
                CornerLabels.chip(yarn, new Area(leftMm, yMm + 0.14 * c, chipMm, 0.72 * c), false, CHIP * c, style));
        shapes.addAll(CornerLabels.chip(
                yarn, new Area(right + GAP * c, yMm + 0.14 * c, chipMm, 0.72 * c), false, CHIP * c, style));
        for (double end : new double[] {leftMm + chipMm + GAP * c + numberMm, right}) {
            shapes.add(new Shape.Text(
                    digits,
                    end,
                    base,
                    NUMBER * c,
                    Shape.Weight.REGULAR,
                    Shape.Anchor.END,
                    0,
                    style.palette().ink()));
        }
    }

    private void addCell(List<Shape> shapes, Area area, int shownRound) {
        YarnColours yarns = new YarnColours(chart, style);
        shapes.addAll(
                yarns.isInOneInk()
                        ? yarns.inOneInk(shownRound, area, 0, 0, Frame.of(0, area.middleXMm(), area.middleYMm(), c))
                        : List.of(new Shape.Fill(PenPath.rectangle(area), yarns.colour(shownRound))));
        shapes.add(new Shape.Line(
                PenPath.rectangle(area), EDGE * c, style.palette().tenth(), Shape.Ends.CUT, List.of()));
    }

    private void addSign(List<Shape> shapes, Area area, int row, int column) {
        boolean covering = row == 0 && column == 1;
        boolean covered = row == 1 && column == 1;
        boolean squares = style.markStyle() == MarkStyle.SQUARES;
        if (squares && (covered || (row == rows() - 1 && column == 1))) {
            return;
        }
        Frame frame = Frame.of(0, area.middleXMm(), area.middleYMm(), c);
        Colour ground = style.ground(chart.yarnOf(shown(row, column)).colour());
        shapes.addAll(new StitchShapes(
                        style.hand() == HookHand.LEFT ? frame.mirrored() : frame, c, style.inking(), style.markStyle())
                .of(
                        covering ? Stitch.LONG : Stitch.BACK_LOOP,
                        style.inking() == ColourMode.BLACK
                                ? style.palette().ink()
                                : chart.yarnOf(round).colour(),
                        ground,
                        Stitch.LONG.roundsDown()));
        if (covering && squares) {
            shapes.addAll(LegendSamples.landing(style, area, ground, style.ground(yarnColour(rows() - 1))));
        }
    }

    /** The yarn of the round of a row. */
    private Colour yarnColour(int row) {
        return chart.yarnOf(round - row).colour();
    }
}
