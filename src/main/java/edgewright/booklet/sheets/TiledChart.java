package edgewright.booklet.sheets;

import static edgewright.texts.Arg.count;
import static edgewright.texts.Arg.number;

import edgewright.booklet.choice.BookletOptions;
import edgewright.booklet.choice.CellSizes;
import edgewright.booklet.choice.Edition;
import edgewright.booklet.page.Anchor;
import edgewright.booklet.page.ColumnSlice;
import edgewright.booklet.page.ColumnSlice.Break;
import edgewright.booklet.page.ColumnSlice.Piece;
import edgewright.booklet.page.LineBreaker;
import edgewright.booklet.page.PageColour;
import edgewright.booklet.page.PageItem;
import edgewright.booklet.page.PageLayout;
import edgewright.booklet.page.StructureRole;
import edgewright.booklet.page.Tag;
import edgewright.booklet.page.TextSetter;
import edgewright.booklet.page.TextStyle;
import edgewright.booklet.page.TextStyles;
import edgewright.booklet.sheets.Tiling.Tile;
import edgewright.chart.Chart;
import edgewright.chart.HookHand;
import edgewright.draw.grid.CellRange;
import edgewright.draw.marks.Drawing;
import edgewright.draw.marks.Emphasis;
import edgewright.draw.paint.Area;
import edgewright.draw.picture.CornerPicture;
import edgewright.draw.picture.FabricFill;
import edgewright.draw.picture.PictureStyle;
import edgewright.texts.Messages;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A chart that is larger than a page: which sheets there are, how they lie, and each of them. */
final class TiledChart {
    /** The most lines over a sheet. */
    private static final double CAPTION = 4;

    private static final double MAP_CELL_PT = 12;
    /** In lines. */
    private static final double MAP_HEIGHT = 3;

    private static final double MAP_WIDTH = 8;
    private static final double LARGEST_OVERVIEW_PT = 330;
    /** As a part of the largest. */
    private static final double SMALLEST_OVERVIEW = 0.6;

    private static final double OUTLINE_PT = 1.1;

    /** The picture of the whole is left out of an overview with more cells than this; the sheets are shown all the same. */
    private static final int MOST_CELLS_IN_OVERVIEW = 40_000;

    private static final double JOIN_MM = 0.6;

    private final TextSetter setter;
    private final Messages says;
    private final PageLayout sheet;
    private final Chart chart;
    private final BookletOptions options;
    private final ChartSheets charts;
    private final LegendSetter legend;

    /**
     * @param charts makes the pictures
     */
    TiledChart(TextSetter setter, Chart chart, BookletOptions options, ChartSheets charts, LegendSetter legend) {
        this.setter = setter;
        this.says = setter.says();
        this.sheet = setter.sheet();
        this.chart = chart;
        this.options = options;
        this.charts = charts;
        this.legend = legend;
    }

    /**
     * The page that shows how the sheets lie, then each sheet on a page of its own.
     *
     * @param pages on which the sheets may be printed; those are taken that need the fewest
     * @param roomPt how much of the page is left; the picture of the whole is made smaller to fit there, within reason
     */
    List<ColumnSlice> set(Tag parent, List<PageLayout> pages, CellSizes sizes, double roomPt) {
        PageLayout page = pages.get(0);
        Tiling tiling = tiling(page, sizes);
        for (PageLayout other : pages.subList(1, pages.size())) {
            Tiling there = tiling(other, sizes);
            if (there.tiles().size() < tiling.tiles().size()) {
                page = other;
                tiling = there;
            }
        }
        CornerPicture whole = charts.picture(tiling.cellMm());
        List<ColumnSlice> strips = new ArrayList<>(overview(parent, tiling, roomPt));
        int sheets = tiling.tiles().size();
        ChartInWords words = charts.sheetWords();
        for (int i = 0; i < sheets; i++) {
            Tile tile = tiling.tiles().get(i);
            CornerPicture cut = whole.tile(tile.cells());
            strips.add(charts.onPage(page, caption(parent, tiling, i, page)));
            String named = words.ofSheet(
                    i + 1, sheets, cut.layout().rounds(cut.layout().area()));
            // The sheet is cut out again when it is printed, so that not all of them are in memory.
            ColumnSlice figure = charts.figure(
                    parent, page, cut, () -> whole.tile(tile.cells()).drawing(), named);
            strips.add(charts.onPage(page, withJoins(figure, page, cut, joins(tiling, tile, cut))));
        }
        return strips;
    }

    private Tiling tiling(PageLayout page, CellSizes sizes) {
        CornerPicture unit = charts.picture(1);
        CornerPicture oneCell = unit.tile(new CellRange(0, 0, 1, 1));
        Tiling.Work work = new Tiling.Work(
                unit.layout().columns(),
                unit.layout().rows(),
                chart.rounds().size() + 1,
                oneCell.widthMm() - 1,
                oneCell.heightMm() - 1);
        double widthMm = page.widestPt() / PageLayout.PT_PER_MM;
        double heightMm = (page.heightPt() - CAPTION * page.linePt()) / PageLayout.PT_PER_MM;
        Tiling tiling = Tiling.fewestSheets(work, widthMm, heightMm, sizes.smallestMm(), sizes.comfortableMm());
        return options.hand() == HookHand.LEFT ? tiling.mirrored(work.columns()) : tiling;
    }

    /** A sheet with the bars that say where it is joined to others. */
    private static ColumnSlice withJoins(
            ColumnSlice figure, PageLayout page, CornerPicture picture, List<PageItem> bars) {
        double left = ChartSheets.leftOf(page, picture.widthMm());
        List<Piece> pieces = new ArrayList<>(figure.pieces());
        pieces.add(new Piece(
                Optional.empty(), bars.stream().map(ink -> ink.moved(left, 0)).toList()));
        return ColumnSlice.of(figure.heightPt(), pieces);
    }

    /**
     * The legend, and beside it the whole corner with the sheets marked on it; under it where there is no room for the legend
     * in one column, so that a page may end between them.
     */
    private List<ColumnSlice> overview(Tag parent, Tiling tiling, double roomPt) {
        Optional<Double> column = legend.inRows() ? Optional.empty() : legendCellMm(roomPt);
        List<ColumnSlice> strips = new ArrayList<>();
        if (!legend.inRows() && column.isEmpty()) {
            strips.add(legend.columns(parent, ChartSheets.LEGEND_CELLS_MM.get(0), 0, sheet.widthPt())
                    .spaced(sheet.linePt()));
        }
        strips.add(overview(parent, tiling, column, roomPt));
        return strips;
    }

    private ColumnSlice overview(Tag parent, Tiling tiling, Optional<Double> legendCellMm, double roomPt) {
        List<Piece> pieces = new ArrayList<>();
        double left = sheet.labelPt();
        double lowest = 0;
        if (legendCellMm.isPresent()) {
            Piece column = legend.column(parent, legendCellMm.get(), 0, 0);
            PageItem.Art art = (PageItem.Art) column.inks().get(0);
            left = Math.max(left, art.widthPt() + 2 * sheet.linePt());
            lowest = art.heightPt();
            pieces.add(column);
        }
        PictureStyle flat =
                CoverPicture.style(options).withLook(FabricFill.FLAT).withCellMm(1);
        CornerPicture unit = CornerPicture.of(chart, flat, Emphasis.NONE);
        double mostPt = Math.min(sheet.widthPt() - left, LARGEST_OVERVIEW_PT);
        double scale = mostPt / PageLayout.PT_PER_MM / Math.max(unit.widthMm(), unit.heightMm());
        double shrunk = (roomPt - sheet.halfLinePt()) / PageLayout.PT_PER_MM / unit.heightMm();
        if (roomPt >= lowest && shrunk < scale && shrunk > SMALLEST_OVERVIEW * scale) {
            scale = shrunk;
        }
        CornerPicture inPrint = CornerPicture.of(chart, flat.withLook(overviewLook(scale)), Emphasis.NONE);
        double width = unit.widthMm() * scale * PageLayout.PT_PER_MM;
        double height = unit.heightMm() * scale * PageLayout.PT_PER_MM;
        Tag figure = parent.figure(
                says.text("chart-overview", count("sheets", tiling.tiles().size())) + " "
                        + charts.sheetWords().ofWhole(tiling.tiles().size()));
        pieces.add(Piece.of(figure, new PageItem.Art(left, 0, width, height, () -> overview(inPrint), 0, 0, scale)));
        List<PageItem> outlines = new ArrayList<>();
        Area cells = unit.layout().area();
        double cellPt = unit.layout().cellMm() * scale * PageLayout.PT_PER_MM;
        for (int i = 0; i < tiling.tiles().size(); i++) {
            CellRange range = tiling.tiles().get(i).cells();
            double x = left + cells.xMm() * scale * PageLayout.PT_PER_MM + range.firstColumn() * cellPt;
            double y = cells.yMm() * scale * PageLayout.PT_PER_MM + range.firstRow() * cellPt;
            outlines.addAll(outline(x, y, range.columns() * cellPt, range.rows() * cellPt, i + 1));
        }
        pieces.add(new Piece(Optional.empty(), outlines));
        return ColumnSlice.of(sheet.onGrid(Math.max(lowest, height)), pieces).spaced(sheet.linePt());
    }

    /** The largest that lets the legend stand in one column where there is room. */
    private Optional<Double> legendCellMm(double roomPt) {
        return ChartSheets.LEGEND_CELLS_MM.stream()
                .filter(cellMm -> legend.drawing(cellMm).heightMm() * PageLayout.PT_PER_MM < roomPt - 2)
                .findFirst();
    }

    /** Flat in colours; in one ink how coarse hatches are depends on how small the cells are printed. */
    private FabricFill overviewLook(double cellMm) {
        return options.edition() == Edition.BLACK_AND_WHITE
                ? FabricFill.ofDots(cellMm, FabricFill.PRINT_DPI)
                : FabricFill.FLAT;
    }

    private Drawing overview(CornerPicture corner) {
        long cells = (long) corner.layout().columns() * corner.layout().rows();
        return cells <= MOST_CELLS_IN_OVERVIEW
                ? corner.drawing()
                : new Drawing(corner.widthMm(), corner.heightMm(), "", "", List.of());
    }

    private List<PageItem> outline(double xPt, double yPt, double widthPt, double heightPt, int number) {
        TextStyle style = setter.styles().strong();
        PageItem.Words words = setter.words(0, 0, Integer.toString(number), style);
        double badge = sheet.linePt() + 2;
        double left = xPt + (widthPt - badge) / 2;
        double top = yPt + (heightPt - badge) / 2;
        PageItem halo = new PageItem.Box(
                xPt, yPt, widthPt, heightPt, Optional.empty(), Optional.of(PageColour.PAPER), 3 * OUTLINE_PT);
        PageItem line = new PageItem.Box(
                xPt, yPt, widthPt, heightPt, Optional.empty(), Optional.of(PageColour.INK), OUTLINE_PT);
        if (Math.min(widthPt, heightPt) < badge || words.widthPt() > badge) {
            return List.of(halo, line);
        }
        return List.of(
                halo,
                line,
                new PageItem.Box(
                        left,
                        top,
                        badge,
                        badge,
                        Optional.of(PageColour.PAPER),
                        Optional.of(PageColour.MARSH),
                        OUTLINE_PT),
                words.moved(left + (badge - words.widthPt()) / 2, top + 1 + style.baselinePt()));
    }

    /** 'Sheet 2 of 4', how it goes on, and a map of the sheets on which this one is filled. */
    private ColumnSlice caption(Tag parent, Tiling tiling, int number, PageLayout page) {
        TextStyles styles = setter.styles();
        Tile tile = tiling.tiles().get(number);
        int sheets = tiling.tiles().size();
        String title = says.text("chart-sheet", number("sheet", number + 1), count("sheets", sheets));
        List<Piece> pieces = new ArrayList<>();
        pieces.add(Piece.of(
                parent.child(StructureRole.H3),
                setter.words(0, styles.section().baselinePt(), title, styles.section())));
        double mapWidth = tiling.across() * mapCell(tiling);
        double room = page.widthPt() - mapWidth - 2 * MAP_CELL_PT;
        List<String> lines = LineBreaker.forProse(
                        styles.small().face(), styles.small().sizePt())
                .lines(goesOn(tiling, tile), room);
        Tag prose = parent.child(StructureRole.PARAGRAPH);
        for (int i = 0; i < lines.size(); i++) {
            double baseline = (i + 1) * sheet.linePt() + styles.small().baselinePt();
            pieces.add(Piece.of(prose, setter.words(0, baseline, lines.get(i), styles.small())));
        }
        pieces.add(new Piece(Optional.empty(), map(tiling, tile, page)));
        int blank = sheet.oneColumn() ? 0 : 1;
        double height = Math.max(
                (1 + lines.size() + blank) * sheet.linePt(), sheet.onGrid(tiling.down() * mapCell(tiling) + 6));
        return ColumnSlice.of(height, pieces)
                .onNewPage(true)
                .breaking(Break.NEVER)
                .anchored(new Anchor(title, 2));
    }

    private List<PageItem> map(Tiling tiling, Tile here, PageLayout page) {
        List<PageItem> map = new ArrayList<>();
        double cell = mapCell(tiling);
        double left = page.widthPt() - tiling.across() * cell;
        for (Tile tile : tiling.tiles()) {
            boolean filled = tile.equals(here);
            map.add(new PageItem.Box(
                    left + tile.column() * cell,
                    2 + tile.row() * cell,
                    cell * 0.88,
                    cell * 0.88,
                    filled ? Optional.of(PageColour.MARSH) : Optional.empty(),
                    Optional.of(PageColour.MARSH),
                    cell / 20));
        }
        return map;
    }

    /** The side of a sheet in the map, however many there are. */
    private double mapCell(Tiling tiling) {
        return Math.min(
                MAP_CELL_PT,
                Math.min(MAP_HEIGHT * sheet.linePt() / tiling.down(), MAP_WIDTH * sheet.linePt() / tiling.across()));
    }

    private String goesOn(Tiling tiling, Tile tile) {
        List<String> sentences = new ArrayList<>();
        for (Tiling.Edge edge : Tiling.Edge.values()) {
            tiling.beside(tile, edge).ifPresent(other -> sentences.add(joins(edge, other + 1)));
        }
        return String.join(" ", sentences);
    }

    private String joins(Tiling.Edge edge, int other) {
        return sheet.oneColumn()
                ? says.text("chart-brief-" + edge, number("sheet", other))
                : says.text("chart-joins-" + edge, number("sheet", other), count("shared", Tiling.OVERLAP));
    }

    /** Bars at the outer edges of the numbers, over the columns and beside the rows that come again on another sheet. */
    private static List<PageItem> joins(Tiling tiling, Tile tile, CornerPicture picture) {
        Area cells = picture.layout().area();
        double overlapMm = Tiling.OVERLAP * tiling.cellMm();
        List<PageItem> bars = new ArrayList<>();
        for (Tiling.Edge edge : Tiling.Edge.values()) {
            if (tiling.beside(tile, edge).isEmpty()) {
                continue;
            }
            switch (edge) {
                case LEFT -> bars.addAll(across(cells.xMm(), overlapMm, picture));
                case RIGHT -> bars.addAll(across(cells.rightMm() - overlapMm, overlapMm, picture));
                case TOP -> bars.addAll(down(cells.yMm(), overlapMm, picture));
                case BOTTOM -> bars.addAll(down(cells.bottomMm() - overlapMm, overlapMm, picture));
            }
        }
        return bars;
    }

    private static List<PageItem> across(double fromMm, double lengthMm, CornerPicture picture) {
        return List.of(
                bar(fromMm, JOIN_MM, lengthMm, JOIN_MM),
                bar(fromMm, picture.heightMm() - 2 * JOIN_MM, lengthMm, JOIN_MM));
    }

    private static List<PageItem> down(double fromMm, double lengthMm, CornerPicture picture) {
        return List.of(
                bar(JOIN_MM, fromMm, JOIN_MM, lengthMm),
                bar(picture.widthMm() - 2 * JOIN_MM, fromMm, JOIN_MM, lengthMm));
    }

    private static PageItem bar(double xMm, double yMm, double widthMm, double heightMm) {
        return PageItem.Box.filled(
                xMm * PageLayout.PT_PER_MM,
                yMm * PageLayout.PT_PER_MM,
                widthMm * PageLayout.PT_PER_MM,
                heightMm * PageLayout.PT_PER_MM,
                PageColour.MARSH);
    }
}
