package edgewright.draw.side;

import static edgewright.texts.Arg.count;

import edgewright.chart.Chart;
import edgewright.chart.Side;
import edgewright.draw.grid.CellRange;
import edgewright.draw.marks.Emphasis;
import edgewright.draw.marks.Mark;
import edgewright.draw.paint.Area;
import edgewright.draw.paint.Lettering;
import edgewright.draw.paint.Shape;
import edgewright.draw.picture.Legend;
import edgewright.draw.picture.PictureStyle;
import edgewright.texts.Messages;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The sheet on which a level side is drawn: how large it is, where the cells begin, and how much room the labels need around
 * them. The legend, if there is one, lies under the side in columns.
 */
final class SideSheet {
    /** Sizes in parts of a cell. */
    static final double GAP = 0.28;

    static final double CHIP_SIZE = 0.44;
    private static final double NUMBER_SIZE = 0.48;
    private static final double EDGE = 0.3;
    private static final double RULER_ROOM = 0.75;
    private static final double LEGEND_GAP = 1.2;
    private static final double COLUMN_GAP = 1.5;

    private final SideLayout layout;
    private final double widthMm;
    private final double heightMm;
    private final double numberSizeMm;
    private final double numberWidthMm;
    private final double chipWidthMm;
    private final List<Mark> legendMarks;

    SideSheet(Chart chart, Side side, PictureStyle style, Emphasis emphasis, Optional<CellRange> shown) {
        double c = style.cellMm();
        String widest = "0".repeat(Integer.toString(chart.rounds().size()).length());
        numberSizeMm = NUMBER_SIZE * c;
        numberWidthMm = Math.max(
                Lettering.widthMm(widest, Shape.Weight.REGULAR, numberSizeMm),
                Lettering.widthMm(style.says().text("base"), Shape.Weight.REGULAR, numberSizeMm));
        chipWidthMm = chart.yarns().stream()
                .mapToDouble(yarn -> Lettering.widthMm(yarn.id(), Shape.Weight.BOLD, CHIP_SIZE * c) + 0.32 * c)
                .reduce(0.8 * c, Math::max);
        boolean flaggedRounds =
                emphasis.flags().stream().anyMatch(flag -> flag.round().isPresent());
        double beside = style.labels()
                ? 2 * GAP * c + numberWidthMm + chipWidthMm + (flaggedRounds ? 1.4 * c : 0) + EDGE * c
                : 2 * EDGE * c;
        if (style.labels() && shown.isEmpty()) {
            beside = Math.max(beside, roomForWords(chart, side, style));
        }
        double over = (style.labels() ? RULER_ROOM + EDGE : 2 * EDGE) * c;
        layout = SideLayout.of(chart, side, style, shown, beside, over);
        double under = (style.labels() ? SideLabels.WORDS_DOWN + EDGE : 2 * EDGE) * c;
        double strip = layout.area().rightMm() + beside;
        double foot = layout.area().bottomMm() + under;
        if (style.legend()) {
            LegendColumns columns = new LegendColumns(Legend.inChart(chart, style, emphasis), c, strip);
            legendMarks = columns.at(EDGE * c, foot + LEGEND_GAP * c);
            Area words =
                    legendMarks.stream().map(Mark::bounds).reduce(Area::with).orElseThrow();
            widthMm = Math.max(strip, words.rightMm() + EDGE * c);
            heightMm = words.bottomMm() + EDGE * c;
        } else {
            legendMarks = List.of();
            widthMm = strip;
            heightMm = foot;
        }
    }

    /** On a short side the words about its parts go on beyond the last cell. */
    private double roomForWords(Chart chart, Side side, PictureStyle style) {
        SideLayout bare = SideLayout.of(chart, side, style, Optional.empty(), 0, 0);
        double c = style.cellMm();
        Messages says = style.says();
        int rounds = bare.rounds();
        double half = Math.max(
                bare.shape().w() * c / 2,
                wordsMm(says.text("repeat", count("stitches", bare.shape().w()))) / 2);
        double middle = (1 + rounds + bare.shape().a() + bare.shape().w() / 2.0) * c;
        double from = half + SideLabels.BETWEEN * c + wordsMm(says.text("side-from")) - middle;
        double to = half
                + SideLabels.BETWEEN * c
                + wordsMm(says.text("side-to"))
                - (bare.area().widthMm() - middle);
        return Math.max(from, to) + EDGE * c;
    }

    private double wordsMm(String words) {
        return Lettering.widthMm(words, Shape.Weight.REGULAR, numberSizeMm);
    }

    /** A legend's rows side by side, as few columns as it takes to be no wider than the strip over it. */
    private static final class LegendColumns {
        private final Legend legend;
        private final double c;
        private final double widestMm;

        LegendColumns(Legend legend, double c, double widestMm) {
            this.legend = legend;
            this.c = c;
            this.widestMm = widestMm;
        }

        List<Mark> at(double xMm, double yMm) {
            double step = legend.widthMm() + COLUMN_GAP * c;
            int columns = Math.max(1, (int) ((widestMm + COLUMN_GAP * c) / step));
            List<Area> rows = legend.marksAt(0, 0).stream().map(Mark::bounds).toList();
            double height = legend.heightMm() / columns;
            List<Mark> marks = new ArrayList<>();
            int first = 0;
            for (int column = 0; column < columns && first < rows.size(); column++) {
                double top = rows.get(first).yMm();
                int end = first + 1;
                while (end < rows.size()
                        && (column == columns - 1 || rows.get(end).middleYMm() - top < height)) {
                    end++;
                }
                marks.addAll(legend.marksAt(xMm + column * step, yMm - top).subList(first, end));
                first = end;
            }
            return marks;
        }
    }

    SideLayout layout() {
        return layout;
    }

    double widthMm() {
        return widthMm;
    }

    double heightMm() {
        return heightMm;
    }

    /** The size of numbers and words. */
    double numberSizeMm() {
        return numberSizeMm;
    }

    /** The room the widest number of a round takes. */
    double numberWidthMm() {
        return numberWidthMm;
    }

    /** The width of a yarn's chip. */
    double chipWidthMm() {
        return chipWidthMm;
    }

    List<Mark> legendMarks() {
        return legendMarks;
    }
}
