package edgewright.booklet.sheets;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.count;
import static edgewright.texts.Arg.number;

import edgewright.booklet.page.Anchor;
import edgewright.booklet.page.ColumnSlice;
import edgewright.booklet.page.ColumnSlice.Break;
import edgewright.booklet.page.ColumnSlice.Piece;
import edgewright.booklet.page.PageColour;
import edgewright.booklet.page.PageItem;
import edgewright.booklet.page.PageLayout;
import edgewright.booklet.page.StructureRole;
import edgewright.booklet.page.Tag;
import edgewright.booklet.page.TextSetter;
import edgewright.booklet.page.TextStyle;
import edgewright.draw.marks.Drawing;
import edgewright.draw.marks.Layer;
import edgewright.draw.marks.Mark;
import edgewright.draw.paint.Area;
import edgewright.draw.picture.CellLayout;
import edgewright.texts.Messages;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * A chart as one picture over several sheets. Neighbours show the same strip of whole squares; ticks beside it say where
 * the edge of the next sheet comes to lie. Sheets with nothing on them are left out.
 */
final class PosterChart {
    /** Enough for glue, and to see that both sheets show the same. */
    private static final double LEAST_OVERLAP_MM = 12;

    /** What lies within this of the edge of a sheet lies beyond it: lines have a width, and the paper's own edge is white. */
    private static final double EDGE_MM = 1;

    private static final double TICK_MM = 4;
    private static final double TICK_PT = 0.7;

    private final TextSetter setter;
    private final Messages says;
    private final PageLayout sheet;
    private final Whole whole;
    private final double cellMm;
    private final double overlapMm;

    /**
     * The picture that is cut.
     *
     * @param layout where its cells lie
     * @param marksIn its marks in an area
     */
    record Whole(
            double widthMm, double heightMm, String title, CellLayout layout, Function<Area, List<Mark>> marksIn) {}

    PosterChart(TextSetter setter, Whole whole) {
        this.setter = setter;
        this.says = setter.says();
        this.sheet = setter.sheet();
        this.whole = whole;
        this.cellMm = whole.layout().cellMm();
        this.overlapMm = Math.ceil(LEAST_OVERLAP_MM / cellMm) * cellMm;
    }

    /** One sheet: what it shows of the picture, and which it is, counted from 1. */
    private record Window(int row, int column, Span across, Span down) {
        Area shown() {
            return Area.between(across.from(), down.from(), across.to(), down.to());
        }
    }

    /** @param words what is heard of it */
    List<ColumnSlice> set(Tag parent, ChartInWords words) {
        double widthMm = sheet.widestPt() / PageLayout.PT_PER_MM - 2 * TICK_MM;
        double heightMm = (sheet.heightPt() - sheet.linePt()) / PageLayout.PT_PER_MM - 2 * TICK_MM;
        List<Window> windows = windows(widthMm, heightMm);
        int rows = windows.stream().mapToInt(Window::row).max().orElseThrow();
        int columns = windows.stream().mapToInt(Window::column).max().orElseThrow();
        List<ColumnSlice> strips = new ArrayList<>(
                setter.paragraph(parent, says.text("poster-how", count("rows", rows), count("columns", columns))));
        strips.set(0, strips.get(0).spaced(setter.betweenPt()));
        for (int i = 0; i < windows.size(); i++) {
            Window window = windows.get(i);
            strips.add(caption(parent, window, i + 1, windows.size()));
            List<Integer> rounds = whole.layout().rounds(window.shown());
            String sheetWords = words.ofSheet(i + 1, windows.size(), rounds);
            String heard = i == 0 ? words.ofWhole(windows.size()) + " " + sheetWords : sheetWords;
            strips.add(picture(parent.figure(heard), window, rows, columns));
        }
        return strips;
    }

    /**
     * The sheets are cut at lines of the squared paper and are as large as each other up to one square, so none shows just a
     * sliver. Those on which nothing stands that a neighbour does not show are left out.
     */
    private List<Window> windows(double widestMm, double highestMm) {
        Area squares = whole.layout().area();
        List<Span> columns = spans(whole.widthMm(), widestMm, squares.xMm());
        List<Span> rows = spans(whole.heightMm(), highestMm, squares.yMm());
        List<Window> filled = new ArrayList<>();
        List<Window> others = new ArrayList<>();
        for (int row = 0; row < rows.size(); row++) {
            for (int column = 0; column < columns.size(); column++) {
                Window window = new Window(row + 1, column + 1, columns.get(column), rows.get(row));
                boolean squared = whole.marksIn().apply(ownOf(window)).stream()
                        .anyMatch(mark -> mark.kind().layer() == Layer.FABRIC);
                (squared ? filled : others).add(window);
            }
        }
        others.removeIf(window -> whole.marksIn().apply(ownOf(window)).stream()
                .allMatch(mark -> mark.kind().layer().compareTo(Layer.MARKS) < 0
                        || filled.stream().anyMatch(other -> other.shown().holds(mark.bounds()))));
        return Stream.concat(filled.stream(), others.stream())
                .sorted(Comparator.comparingInt(Window::row).thenComparingInt(Window::column))
                .toList();
    }

    /** What no sheet above or left of this one shows. */
    private Area ownOf(Window window) {
        Area shown = window.shown();
        return Area.between(
                shown.xMm() + (window.column() == 1 ? 0 : overlapMm) + EDGE_MM,
                shown.yMm() + (window.row() == 1 ? 0 : overlapMm) + EDGE_MM,
                shown.rightMm() - EDGE_MM,
                shown.bottomMm() - EDGE_MM);
    }

    /** What a sheet shows of the width or the height of the picture. */
    private record Span(double from, double to) {}

    /**
     * @param firstLineMm where the squared paper begins
     */
    private List<Span> spans(double pictureMm, double longestMm, double firstLineMm) {
        double longestStep = longestMm - overlapMm - cellMm;
        int sheets = pictureMm <= longestMm ? 1 : (int) Math.ceil((pictureMm - overlapMm) / longestStep - 1e-9);
        double step = (pictureMm - overlapMm) / sheets;
        List<Span> spans = new ArrayList<>();
        for (int i = 0; i < sheets; i++) {
            spans.add(new Span(
                    i == 0 ? 0 : onLine(i * step, firstLineMm),
                    i == sheets - 1 ? pictureMm : onLine((i + 1) * step, firstLineMm) + overlapMm));
        }
        return spans;
    }

    private double onLine(double mm, double firstLineMm) {
        return firstLineMm + Math.floor((mm - firstLineMm) / cellMm) * cellMm;
    }

    private ColumnSlice caption(Tag parent, Window window, int number, int all) {
        String title = says.text("chart-sheet", number("sheet", number), count("sheets", all));
        TextStyle style = setter.styles().section();
        String where = says.text(
                "poster-where", arg("title", title), number("row", window.row()), number("column", window.column()));
        return ColumnSlice.of(
                        sheet.linePt(),
                        List.of(Piece.of(
                                parent.child(StructureRole.H3), setter.words(0, style.baselinePt(), where, style))))
                .onNewPage(true)
                .breaking(Break.NEVER)
                .anchored(new Anchor(title, 2));
    }

    private ColumnSlice picture(Tag figure, Window window, int rows, int columns) {
        Area shown = window.shown();
        double left = (TICK_MM * PageLayout.PT_PER_MM) - (sheet.widestPt() - sheet.widthPt()) / 2;
        double top = TICK_MM * PageLayout.PT_PER_MM;
        double width = shown.widthMm() * PageLayout.PT_PER_MM;
        double height = shown.heightMm() * PageLayout.PT_PER_MM;
        PageItem.Art art = new PageItem.Art(left, top, width, height, () -> cut(shown), shown.xMm(), shown.yMm(), 1);
        List<Piece> pieces = new ArrayList<>(List.of(Piece.of(figure, art)));
        pieces.add(new Piece(Optional.empty(), ticks(window, rows, columns, new Area(left, top, width, height))));
        return ColumnSlice.of(Math.floor((height + 2 * top) / sheet.halfLinePt()) * sheet.halfLinePt(), pieces);
    }

    /** Made when it is printed, and only as much as shows: a poster is never in memory as a whole. */
    private Drawing cut(Area shown) {
        return new Drawing(
                whole.widthMm(),
                whole.heightMm(),
                whole.title(),
                "",
                whole.marksIn().apply(shown));
    }

    /** Where the edges of the neighbours come to lie, outside the picture. */
    private List<PageItem> ticks(Window window, int rows, int columns, Area picture) {
        double overlap = overlapMm * PageLayout.PT_PER_MM;
        List<PageItem> ticks = new ArrayList<>();
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

    private static void upright(List<PageItem> ticks, double x, Area picture) {
        double tick = (TICK_MM - 0.5) * PageLayout.PT_PER_MM;
        ticks.add(PageItem.Box.filled(x - TICK_PT / 2, picture.yMm() - tick, TICK_PT, tick, PageColour.INK));
        ticks.add(PageItem.Box.filled(x - TICK_PT / 2, picture.bottomMm(), TICK_PT, tick, PageColour.INK));
    }

    private static void level(List<PageItem> ticks, double y, Area picture) {
        double tick = (TICK_MM - 0.5) * PageLayout.PT_PER_MM;
        ticks.add(PageItem.Box.filled(picture.xMm() - tick, y - TICK_PT / 2, tick, TICK_PT, PageColour.INK));
        ticks.add(PageItem.Box.filled(picture.rightMm(), y - TICK_PT / 2, tick, TICK_PT, PageColour.INK));
    }
}
