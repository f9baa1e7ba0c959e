package edgewright.booklet;

import edgewright.booklet.Strip.Break;
import edgewright.booklet.Strip.Piece;
import edgewright.chart.Chart;
import edgewright.draw.Area;
import edgewright.draw.CornerPicture;
import edgewright.draw.Drawing;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.pdmodel.documentinterchange.taggedpdf.StandardStructureTypes;

/**
 * A chart as one picture over several sheets. Neighbours show the same strip of {@link #OVERLAP_MM}; ticks beside it say where
 * the edge of the next sheet comes to lie. Sheets with nothing on them are left out.
 */
final class PosterChart {
    /** Enough for glue, and to see that both sheets show the same. */
    static final double OVERLAP_MM = 12;

    private static final double TICK_MM = 4;
    private static final double TICK_PT = 0.7;

    private final TextSetter setter;
    private final Sheet sheet;
    private final Chart chart;
    private final ChartSheets charts;

    /**
     * @param charts makes the picture
     */
    PosterChart(TextSetter setter, Chart chart, ChartSheets charts) {
        this.setter = setter;
        this.sheet = setter.sheet();
        this.chart = chart;
        this.charts = charts;
    }

    /** One sheet: what it shows of the picture, and which it is, counted from 1. */
    private record Window(int row, int column, Area shown) {}

    List<Strip> set(Tag parent, double cellMm) {
        CornerPicture whole = charts.picture(cellMm);
        double widthMm = sheet.widestPt() / Sheet.PT_PER_MM - 2 * TICK_MM;
        double heightMm = (sheet.heightPt() - sheet.linePt()) / Sheet.PT_PER_MM - 2 * TICK_MM;
        List<Window> windows = windows(whole, widthMm, heightMm);
        int rows = windows.stream().mapToInt(Window::row).max().orElseThrow();
        int columns = windows.stream().mapToInt(Window::column).max().orElseThrow();
        List<Strip> strips = new ArrayList<>(setter.paragraph(parent, Texts.of("poster.how", rows, columns)));
        strips.set(0, strips.get(0).spaced(setter.betweenPt()));
        for (int i = 0; i < windows.size(); i++) {
            Window window = windows.get(i);
            strips.add(caption(parent, window, i + 1, windows.size()));
            String words = i == 0
                    ? charts.inWords()
                    : Texts.of("chart.alternative.sheet", i + 1, windows.size(), chart.title());
            strips.add(picture(parent.figure(words), whole, window, rows, columns));
        }
        return strips;
    }

    private static List<Window> windows(CornerPicture whole, double widthMm, double heightMm) {
        List<Window> windows = new ArrayList<>();
        int columns = sheets(whole.widthMm(), widthMm);
        int rows = sheets(whole.heightMm(), heightMm);
        for (int row = 0; row < rows; row++) {
            for (int column = 0; column < columns; column++) {
                double x = column * (widthMm - OVERLAP_MM);
                double y = row * (heightMm - OVERLAP_MM);
                Area shown = Area.between(
                        x, y, Math.min(x + widthMm, whole.widthMm()), Math.min(y + heightMm, whole.heightMm()));
                // What lies in the overlap is on a neighbour; and the paper itself is a mark, too.
                Area own = Area.between(
                        column == 0 ? x : x + OVERLAP_MM,
                        row == 0 ? y : y + OVERLAP_MM,
                        shown.rightMm(),
                        shown.bottomMm());
                if (whole.marksIn(own).size() > 1) {
                    windows.add(new Window(row + 1, column + 1, shown));
                }
            }
        }
        return windows;
    }

    private static int sheets(double pictureMm, double sheetMm) {
        return Math.max(1, (int) Math.ceil((pictureMm - OVERLAP_MM) / (sheetMm - OVERLAP_MM) - 1e-9));
    }

    private Strip caption(Tag parent, Window window, int number, int all) {
        String title = Texts.of("chart.sheet", number, all);
        Style style = setter.styles().section();
        String where = title + ". " + Texts.of("poster.where", window.row(), window.column());
        return Strip.of(
                        sheet.linePt(),
                        List.of(Piece.of(
                                parent.child(StandardStructureTypes.H3),
                                setter.words(0, style.baselinePt(), where, style))))
                .onNewPage(true)
                .breaking(Break.NEVER)
                .anchored(new Anchor(title, 2));
    }

    private Strip picture(Tag figure, CornerPicture whole, Window window, int rows, int columns) {
        Area shown = window.shown();
        double left = (TICK_MM * Sheet.PT_PER_MM) - (sheet.widestPt() - sheet.widthPt()) / 2;
        double top = TICK_MM * Sheet.PT_PER_MM;
        double width = shown.widthMm() * Sheet.PT_PER_MM;
        double height = shown.heightMm() * Sheet.PT_PER_MM;
        Ink.Art art = new Ink.Art(left, top, width, height, () -> cut(whole, shown), shown.xMm(), shown.yMm(), 1);
        List<Piece> pieces = new ArrayList<>(List.of(Piece.of(figure, art)));
        pieces.add(new Piece(Optional.empty(), ticks(window, rows, columns, new Area(left, top, width, height))));
        return Strip.of(Math.floor((height + 2 * top) / sheet.halfLinePt()) * sheet.halfLinePt(), pieces);
    }

    /** Made when it is printed, and only as much as shows: a poster is never in memory as a whole. */
    private static Drawing cut(CornerPicture whole, Area shown) {
        return new Drawing(whole.widthMm(), whole.heightMm(), "", "", whole.marksIn(shown));
    }

    /** Where the edges of the neighbours come to lie, outside the picture. */
    private static List<Ink> ticks(Window window, int rows, int columns, Area picture) {
        double overlap = OVERLAP_MM * Sheet.PT_PER_MM;
        List<Ink> ticks = new ArrayList<>();
        if (window.column() > 1) {
            upright(ticks, picture.xMm() + overlap, picture);
        }
        if (window.column() < columns) {
            upright(ticks, picture.rightMm() - overlap, picture);
        }
        if (window.row() > 1) {
            level(ticks, picture.yMm() + overlap, picture);
        }
        if (window.row() < rows) {
            level(ticks, picture.bottomMm() - overlap, picture);
        }
        return ticks;
    }

    private static void upright(List<Ink> ticks, double x, Area picture) {
        double tick = (TICK_MM - 0.5) * Sheet.PT_PER_MM;
        ticks.add(Ink.Box.filled(x - TICK_PT / 2, picture.yMm() - tick, TICK_PT, tick, Tone.INK));
        ticks.add(Ink.Box.filled(x - TICK_PT / 2, picture.bottomMm(), TICK_PT, tick, Tone.INK));
    }

    private static void level(List<Ink> ticks, double y, Area picture) {
        double tick = (TICK_MM - 0.5) * Sheet.PT_PER_MM;
        ticks.add(Ink.Box.filled(picture.xMm() - tick, y - TICK_PT / 2, tick, TICK_PT, Tone.INK));
        ticks.add(Ink.Box.filled(picture.rightMm(), y - TICK_PT / 2, tick, TICK_PT, Tone.INK));
    }
}
