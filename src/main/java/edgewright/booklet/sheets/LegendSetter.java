package edgewright.booklet.sheets;

import static edgewright.texts.Arg.arg;

import edgewright.booklet.choice.PrintedTerms;
import edgewright.booklet.page.ColumnSlice;
import edgewright.booklet.page.ColumnSlice.Piece;
import edgewright.booklet.page.PageItem;
import edgewright.booklet.page.PageLayout;
import edgewright.booklet.page.StructureRole;
import edgewright.booklet.page.Tag;
import edgewright.booklet.page.TextSetter;
import edgewright.chart.Chart;
import edgewright.chart.Stitch;
import edgewright.draw.marks.Drawing;
import edgewright.draw.marks.Emphasis;
import edgewright.draw.marks.Mark;
import edgewright.draw.paint.Area;
import edgewright.draw.paint.Shape;
import edgewright.draw.picture.Legend;
import edgewright.draw.picture.PictureStyle;
import edgewright.texts.Messages;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Sets what the marks of a chart mean: in one column where there is a corner for it, else in columns side by side. */
final class LegendSetter {
    private static final double ROW_GAP_PT = 6;
    private static final double COLUMN_GAP_PT = 20;

    /** What is said of the chart stands above the legend and needs the rest. */
    private static final double MOST_OF_A_PAGE = 0.8;

    private final PageLayout sheet;
    private final Chart chart;
    private final PrintedTerms terms;
    private final PictureStyle style;
    private final Messages says;
    private final Emphasis emphasis;

    LegendSetter(
            PageLayout sheet, Chart chart, PrintedTerms terms, PictureStyle style, Emphasis emphasis, Messages says) {
        this.sheet = sheet;
        this.chart = chart;
        this.terms = terms;
        this.style = style;
        this.says = says;
        this.emphasis = emphasis;
    }

    /** The legend in one column, with samples as large as cells of that size. */
    Drawing drawing(double cellMm) {
        return Legend.of(chart, style.withCellMm(cellMm), emphasis, this::named);
    }

    /** What a stitch is called, in both terms if both are printed. */
    private String named(Stitch stitch) {
        return StitchNames.of(stitch, terms.inTurn(), style.language());
    }

    /** Whether its rows are set one by one: where there is but one column, and where they are too many to stand beside a picture. */
    boolean inRows() {
        double columnMm = drawing(ChartSheets.LEGEND_CELLS_MM.get(0)).heightMm();
        return sheet.oneColumn() || columnMm * PageLayout.PT_PER_MM > sheet.heightPt() * MOST_OF_A_PAGE;
    }

    /** Each row by itself: the sample, and beside it what it means in running text. */
    List<ColumnSlice> rows(Tag parent, double cellMm, TextSetter setter) {
        Drawing legend = Legend.withWholeWords(chart, style.withCellMm(cellMm), emphasis, this::named);
        List<ColumnSlice> rows = new ArrayList<>();
        for (Mark row : legend.marks()) {
            int end = row.shapes().size();
            while (row.shapes().get(end - 1) instanceof Shape.Text words && words.anchor() == Shape.Anchor.START) {
                end--;
            }
            String meaning = row.shapes().subList(end, row.shapes().size()).stream()
                    .map(line -> ((Shape.Text) line).text())
                    .collect(Collectors.joining(" "));
            Mark sample = new Mark(
                    row.kind(),
                    row.cell(),
                    row.place(),
                    row.yarn(),
                    row.shapes().subList(0, end));
            rows.add(row(parent, sample, meaning, setter));
        }
        return rows;
    }

    private ColumnSlice row(Tag parent, Mark sample, String words, TextSetter setter) {
        Area area = sample.bounds().grown(0.3);
        Drawing picture = new Drawing(area.rightMm(), area.bottomMm(), words, words, List.of(sample));
        double samplePt = area.widthMm() * PageLayout.PT_PER_MM;
        double left = Math.max(samplePt + sheet.halfLinePt(), 2.5 * sheet.linePt());
        List<ColumnSlice> lines = setter.paragraph(
                parent.child(StructureRole.PARAGRAPH), words, setter.styles().text(), left, sheet.widthPt() - left);
        double height = sheet.onGrid(Math.max(area.heightMm() * PageLayout.PT_PER_MM, lines.size() * sheet.linePt()));
        double firstPt = setter.styles().text().baselinePt();
        double top = sheet.nearestBaselinePt((height - lines.size() * sheet.linePt()) / 2 + firstPt) - firstPt;
        List<Piece> pieces = new ArrayList<>();
        pieces.add(Piece.of(
                parent.figure(says.text("chart-sample", arg("meaning", words))),
                new PageItem.Art(
                        0,
                        (height - area.heightMm() * PageLayout.PT_PER_MM) / 2,
                        samplePt,
                        area.heightMm() * PageLayout.PT_PER_MM,
                        () -> picture,
                        area.xMm(),
                        area.yMm(),
                        1)));
        for (int i = 0; i < lines.size(); i++) {
            double down = top + i * sheet.linePt();
            for (Piece piece : lines.get(i).pieces()) {
                pieces.add(new Piece(
                        piece.tag(),
                        piece.inks().stream().map(ink -> ink.moved(0, down)).toList()));
            }
        }
        return ColumnSlice.of(height, pieces).spaced(sheet.halfLinePt());
    }

    /** The legend in one column with its upper left corner at a point. */
    Piece column(Tag parent, double cellMm, double xPt, double yPt) {
        Drawing legend = drawing(cellMm);
        return Piece.of(
                figure(parent),
                window(legend, new Area(0, 0, legend.widthMm(), legend.heightMm()).grown(0.3), xPt, yPt));
    }

    /** Its rows in columns side by side, filled from the left, as low as they can be in that width. */
    ColumnSlice columns(Tag parent, double cellMm, double xPt, double widthPt) {
        Drawing legend = drawing(cellMm);
        List<List<Area>> columns = List.of();
        double height = 0;
        do {
            height += ROW_GAP_PT / 2;
            columns = split(legend.marks().stream().map(Mark::bounds).toList(), height);
        } while (columns.size() > 1 && widthPt(columns) > widthPt);
        List<PageItem> inks = new ArrayList<>();
        double x = xPt;
        double lowest = 0;
        for (List<Area> column : columns) {
            double y = 0;
            for (Area row : column) {
                inks.add(window(legend, row, x, y));
                lowest = Math.max(lowest, y + heightPt(row));
                y += heightPt(row) + ROW_GAP_PT;
            }
            x += widthPt(List.of(column));
        }
        return ColumnSlice.of(sheet.onGrid(lowest), List.of(new Piece(Optional.of(figure(parent)), inks)));
    }

    /** The rows in columns that are no higher than that, unless a single row is. */
    private static List<List<Area>> split(List<Area> rows, double heightPt) {
        List<List<Area>> columns = new ArrayList<>();
        double filled = 0;
        for (Area row : rows) {
            if (columns.isEmpty() || filled + heightPt(row) > heightPt) {
                columns.add(new ArrayList<>());
                filled = 0;
            }
            columns.get(columns.size() - 1).add(row);
            filled += heightPt(row) + ROW_GAP_PT;
        }
        return columns;
    }

    private static double widthPt(List<List<Area>> columns) {
        return columns.stream()
                .mapToDouble(column ->
                        column.stream().mapToDouble(Area::widthMm).max().orElse(0) * PageLayout.PT_PER_MM
                                + COLUMN_GAP_PT)
                .sum();
    }

    private static double heightPt(Area row) {
        return row.heightMm() * PageLayout.PT_PER_MM;
    }

    private Tag figure(Tag parent) {
        return parent.figure(says.text("chart-legend"));
    }

    private static PageItem.Art window(Drawing legend, Area part, double xPt, double yPt) {
        Drawing cut = new Drawing(
                legend.widthMm(),
                legend.heightMm(),
                legend.title(),
                legend.description(),
                legend.marks().stream()
                        .filter(mark -> part.grown(0.001).holds(mark.bounds()))
                        .toList());
        return new PageItem.Art(
                xPt,
                yPt,
                part.widthMm() * PageLayout.PT_PER_MM,
                part.heightMm() * PageLayout.PT_PER_MM,
                () -> cut,
                part.xMm(),
                part.yMm(),
                1);
    }
}
