package edgewright.booklet;

import edgewright.booklet.Strip.Break;
import edgewright.booklet.Strip.Piece;
import edgewright.booklet.Tiling.Tile;
import edgewright.chart.Chart;
import edgewright.chart.PerSide;
import edgewright.chart.SideShape;
import edgewright.draw.Area;
import edgewright.draw.CellRange;
import edgewright.draw.ChartPicture;
import edgewright.draw.CornerPicture;
import edgewright.draw.Drawing;
import edgewright.draw.Emphasis;
import edgewright.draw.FabricLook;
import edgewright.draw.PictureStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.pdmodel.documentinterchange.taggedpdf.StandardStructureTypes;

/** The chart on as many sheets as it needs, with how to read it and what the marks mean. */
final class ChartSheets {
    private static final double COMFORTABLE_CELL_MM = 6.5;
    private static final double CAPTION_PT = 4 * Sheet.LINE_PT;
    private static final double MAP_CELL_PT = 12;
    /** From the most comfortable to the smallest that is still easily read. */
    private static final List<Double> LEGEND_CELLS_MM = List.of(5.8, 5.4, 5.0);

    private static final double BRACKET_CELLS = 2.4;
    private static final double LARGEST_OVERVIEW_PT = 330;
    private static final double OUTLINE_PT = 1.1;
    private static final PictureStyle OVERVIEW =
            PictureStyle.FABRIC.withLook(FabricLook.FLAT).withCellMm(1);
    private static final double JOIN_MM = 0.6;
    private static final int MOST_PIECE_STITCHES = 60;

    private final TextSetter setter;
    private final Sheet sheet;
    private final Chart chart;
    private final BookletOptions options;
    private final Emphasis emphasis;
    private final LegendSetter legend;

    ChartSheets(TextSetter setter, Chart chart, BookletOptions options, Emphasis emphasis) {
        this.setter = setter;
        this.sheet = setter.sheet();
        this.chart = chart;
        this.options = options;
        this.emphasis = emphasis;
        this.legend = new LegendSetter(chart, options.terms(), style(1), emphasis);
    }

    List<Strip> set(Tag parent, Anchor anchor) {
        List<Strip> head = new ArrayList<>(setter.partHeading(parent, anchor));
        head.set(0, head.get(0).onNewPage());
        head.addAll(howToRead(parent));
        return inArms(parent, head).or(() -> underLegend(parent, head)).orElseGet(() -> afterLegend(parent, head));
    }

    /** On one page under what is said of it, with the legend between its two limbs. */
    private Optional<List<Strip>> inArms(Tag parent, List<Strip> head) {
        return whole(sheet.widthPt(), sheet.heightPt() - height(head) - Sheet.LINE_PT)
                .flatMap(picture -> legendInArms(picture).map(cellMm -> {
                    Area arms = arms(picture);
                    Strip chart = figure(parent, picture, List.of());
                    List<Piece> pieces = new ArrayList<>(chart.pieces());
                    pieces.add(
                            legend.column(parent, cellMm, arms.xMm() * Sheet.PT_PER_MM, arms.yMm() * Sheet.PT_PER_MM));
                    return onePage(
                            head, List.of(Strip.of(chart.heightPt(), pieces).spaced(Sheet.LINE_PT)));
                }));
    }

    /** On one page under what is said of it and the legend. */
    private Optional<List<Strip>> underLegend(Tag parent, List<Strip> head) {
        Strip columns = legend.columns(parent, LEGEND_CELLS_MM.get(1), 0, sheet.widthPt())
                .spaced(Sheet.LINE_PT);
        double over = height(head) + height(List.of(columns)) + Sheet.LINE_PT;
        return whole(sheet.widthPt(), sheet.heightPt() - over)
                .map(picture -> onePage(
                        head,
                        List.of(columns, figure(parent, picture, List.of()).spaced(Sheet.LINE_PT))));
    }

    /** On pages of its own, one or many, after one with the legend and a picture of the whole. */
    private List<Strip> afterLegend(Tag parent, List<Strip> head) {
        List<Strip> strips = new ArrayList<>(head);
        Optional<CornerPicture> alone = whole(sheet.widestPt(), sheet.heightPt());
        if (alone.isPresent()) {
            strips.add(legend.columns(parent, LEGEND_CELLS_MM.get(0), 0, sheet.widthPt())
                    .spaced(Sheet.LINE_PT));
            strips.add(figure(parent, alone.get(), List.of()).onNewPage());
        } else {
            strips.addAll(manySheets(parent));
        }
        return strips;
    }

    private static List<Strip> onePage(List<Strip> head, List<Strip> chart) {
        List<Strip> page = new ArrayList<>(head);
        page.addAll(chart.subList(0, chart.size() - 1));
        page.replaceAll(strip -> strip.breaking(Break.NEVER));
        page.add(chart.get(chart.size() - 1));
        return page;
    }

    private List<Strip> howToRead(Tag parent) {
        List<Strip> strips = new ArrayList<>(setter.paragraph(parent, Texts.of("chart.read")));
        List<Strip> more = new ArrayList<>(setter.paragraph(parent, Texts.of("chart.limbs")));
        more.set(0, more.get(0).spaced(Sheet.HALF_LINE_PT));
        strips.addAll(more);
        return strips;
    }

    /** The whole chart with cells as large as the room allows or as they were asked for; empty if they would be too small. */
    private Optional<CornerPicture> whole(double widthPt, double heightPt) {
        CornerPicture unit = picture(1);
        double largest =
                Math.min(widthPt / Sheet.PT_PER_MM / unit.widthMm(), heightPt / Sheet.PT_PER_MM / unit.heightMm());
        double cellMm = options.cellMm().orElse(Math.min(largest, COMFORTABLE_CELL_MM));
        return cellMm > largest || cellMm < BookletOptions.SMALLEST_CELL_MM
                ? Optional.empty()
                : Optional.of(picture(cellMm));
    }

    /** The largest legend that fits in the arms of a chart. */
    private Optional<Double> legendInArms(CornerPicture picture) {
        Area arms = arms(picture);
        return LEGEND_CELLS_MM.stream()
                .filter(cellMm -> {
                    Drawing column = legend.drawing(cellMm);
                    return column.widthMm() <= arms.widthMm() && column.heightMm() <= arms.heightMm();
                })
                .findFirst();
    }

    /** The empty part of the sheet between the two limbs, inside the brackets of the repeats. */
    private Area arms(CornerPicture picture) {
        double limbMm =
                (chart.rounds().size() + 1 + BRACKET_CELLS) * picture.layout().cellMm();
        Area cells = picture.layout().area();
        double x = cells.xMm() + limbMm;
        double y = cells.yMm() + limbMm;
        return Area.between(x, y, Math.max(x, picture.widthMm()), Math.max(y, picture.heightMm()));
    }

    private List<Strip> manySheets(Tag parent) {
        CornerPicture unit = picture(1);
        int columns = unit.layout().columns();
        int rows = unit.layout().rows();
        CornerPicture oneCell = unit.tile(new CellRange(0, 0, 1, 1));
        Tiling.Work work = new Tiling.Work(columns, rows, oneCell.widthMm() - 1, oneCell.heightMm() - 1);
        double widthMm = sheet.widestPt() / Sheet.PT_PER_MM;
        double heightMm = (sheet.heightPt() - CAPTION_PT) / Sheet.PT_PER_MM;
        Tiling tiling = options.cellMm().isPresent()
                ? Tiling.of(work, widthMm, heightMm, options.cellMm().getAsDouble(), this::shows)
                : Tiling.fewestSheets(
                        work, widthMm, heightMm, BookletOptions.SMALLEST_CELL_MM, COMFORTABLE_CELL_MM, this::shows);
        CornerPicture whole = picture(tiling.cellMm());
        List<Strip> strips = new ArrayList<>(List.of(overview(parent, tiling)));
        for (int i = 0; i < tiling.tiles().size(); i++) {
            CornerPicture tile = whole.tile(tiling.tiles().get(i).cells());
            strips.add(caption(parent, tiling, i));
            strips.add(figure(parent, tile, joins(tiling, tiling.tiles().get(i), tile)));
        }
        return strips;
    }

    /** The legend, and beside it the whole corner with the sheets marked on it. */
    private Strip overview(Tag parent, Tiling tiling) {
        Piece column = legend.column(parent, LEGEND_CELLS_MM.get(0), 0, 0);
        Ink.Art art = (Ink.Art) column.inks().get(0);
        double left = Math.max(sheet.labelPt(), art.widthPt() + 2 * Sheet.LINE_PT);
        CornerPicture unit = CornerPicture.of(chart, OVERVIEW, Emphasis.NONE);
        double mostPt = Math.min(sheet.widthPt() - left, LARGEST_OVERVIEW_PT);
        double scale = mostPt / Sheet.PT_PER_MM / Math.max(unit.widthMm(), unit.heightMm());
        double width = unit.widthMm() * scale * Sheet.PT_PER_MM;
        double height = unit.heightMm() * scale * Sheet.PT_PER_MM;
        Tag figure = parent.figure(Texts.of("chart.overview", tiling.tiles().size()));
        List<Piece> pieces = new ArrayList<>(List.of(column));
        pieces.add(Piece.of(figure, new Ink.Art(left, 0, width, height, unit::drawing, 0, 0, scale)));
        List<Ink> outlines = new ArrayList<>();
        Area cells = unit.layout().area();
        double cellPt = unit.layout().cellMm() * scale * Sheet.PT_PER_MM;
        for (int i = 0; i < tiling.tiles().size(); i++) {
            CellRange range = tiling.tiles().get(i).cells();
            double x = left + cells.xMm() * scale * Sheet.PT_PER_MM + range.firstColumn() * cellPt;
            double y = cells.yMm() * scale * Sheet.PT_PER_MM + range.firstRow() * cellPt;
            outlines.addAll(outline(x, y, range.columns() * cellPt, range.rows() * cellPt, i + 1));
        }
        pieces.add(new Piece(Optional.empty(), outlines));
        return Strip.of(Sheet.onGrid(Math.max(art.heightPt(), height)), pieces).spaced(Sheet.LINE_PT);
    }

    private List<Ink> outline(double xPt, double yPt, double widthPt, double heightPt, int number) {
        Style style = setter.styles().strong();
        Ink.Words words = setter.words(0, 0, Integer.toString(number), style);
        double badge = Sheet.LINE_PT + 2;
        double left = xPt + (widthPt - badge) / 2;
        double top = yPt + (heightPt - badge) / 2;
        return List.of(
                new Ink.Box(xPt, yPt, widthPt, heightPt, Optional.empty(), Optional.of(Tone.PAPER), 3 * OUTLINE_PT),
                new Ink.Box(xPt, yPt, widthPt, heightPt, Optional.empty(), Optional.of(Tone.INK), OUTLINE_PT),
                new Ink.Box(left, top, badge, badge, Optional.of(Tone.PAPER), Optional.of(Tone.MARSH), OUTLINE_PT),
                words.moved(left + (badge - words.widthPt()) / 2, top + 1 + style.baselinePt()));
    }

    /** Whether these cells hold something of the border that no neighbour at the left or above holds too. */
    private boolean shows(CellRange cells) {
        int rounds = chart.rounds().size();
        int ownColumn = cells.firstColumn() == 0 ? 0 : cells.firstColumn() + Tiling.OVERLAP;
        int ownRow = cells.firstRow() == 0 ? 0 : cells.firstRow() + Tiling.OVERLAP;
        return ownColumn <= rounds || ownRow <= rounds;
    }

    private Strip figure(Tag parent, CornerPicture picture, List<Ink> over) {
        double width = picture.widthMm() * Sheet.PT_PER_MM;
        double height = picture.heightMm() * Sheet.PT_PER_MM;
        Tag figure = parent.figure(
                Texts.of("chart.alternative", chart.title(), chart.rounds().size()));
        List<Piece> pieces = new ArrayList<>();
        double left = Math.min(0, (sheet.widthPt() - width) / 2);
        pieces.add(Piece.of(figure, new Ink.Art(left, 0, width, height, picture::drawing, 0, 0, 1)));
        if (!over.isEmpty()) {
            pieces.add(new Piece(
                    Optional.empty(),
                    over.stream().map(ink -> ink.moved(left, 0)).toList()));
        }
        return Strip.of(Sheet.onGrid(height), pieces);
    }

    /** 'Sheet 2 of 4', how it goes on, and a map of the sheets on which this one is filled. */
    private Strip caption(Tag parent, Tiling tiling, int number) {
        Styles styles = setter.styles();
        Tile tile = tiling.tiles().get(number);
        int sheets = tiling.tiles().size();
        String title = Texts.of("chart.sheet", number + 1, sheets);
        List<Piece> pieces = new ArrayList<>();
        pieces.add(Piece.of(
                parent.child(StandardStructureTypes.H3),
                setter.words(0, styles.section().baselinePt(), title, styles.section())));
        double mapWidth = tiling.across() * MAP_CELL_PT;
        double room = sheet.widthPt() - mapWidth - 2 * MAP_CELL_PT;
        List<String> lines = LineBreaker.forProse(
                        styles.small().face(), styles.small().sizePt())
                .lines(goesOn(tiling, tile), room);
        Tag prose = parent.child(StandardStructureTypes.P);
        for (int i = 0; i < lines.size(); i++) {
            double baseline = (i + 1) * Sheet.LINE_PT + styles.small().baselinePt();
            pieces.add(Piece.of(prose, setter.words(0, baseline, lines.get(i) + " ", styles.small())));
        }
        pieces.add(new Piece(Optional.empty(), map(tiling, tile)));
        double height = Math.max((lines.size() + 2) * Sheet.LINE_PT, Sheet.onGrid(tiling.down() * MAP_CELL_PT + 6));
        return Strip.of(height, pieces).onNewPage().breaking(Break.NEVER).anchored(new Anchor(title, 2));
    }

    private List<Ink> map(Tiling tiling, Tile here) {
        List<Ink> map = new ArrayList<>();
        double left = sheet.widthPt() - tiling.across() * MAP_CELL_PT;
        for (Tile tile : tiling.tiles()) {
            boolean filled = tile.equals(here);
            map.add(new Ink.Box(
                    left + tile.column() * MAP_CELL_PT,
                    2 + tile.row() * MAP_CELL_PT,
                    MAP_CELL_PT - 1.5,
                    MAP_CELL_PT - 1.5,
                    filled ? Optional.of(Tone.MARSH) : Optional.empty(),
                    Optional.of(Tone.MARSH),
                    0.6));
        }
        return map;
    }

    private static String goesOn(Tiling tiling, Tile tile) {
        List<String> sentences = new ArrayList<>();
        for (Tiling.Edge edge : Tiling.Edge.values()) {
            tiling.beside(tile, edge)
                    .ifPresent(other -> sentences.add(Texts.of("chart.joins." + edge, other + 1, Tiling.OVERLAP)));
        }
        return String.join(" ", sentences);
    }

    /** Bars at the outer edges of the numbers, over the columns and beside the rows that come again on another sheet. */
    private static List<Ink> joins(Tiling tiling, Tile tile, CornerPicture picture) {
        Area cells = picture.layout().area();
        double overlapMm = Tiling.OVERLAP * tiling.cellMm();
        List<Ink> bars = new ArrayList<>();
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

    private static List<Ink> across(double fromMm, double lengthMm, CornerPicture picture) {
        return List.of(
                bar(fromMm, JOIN_MM, lengthMm, JOIN_MM),
                bar(fromMm, picture.heightMm() - 2 * JOIN_MM, lengthMm, JOIN_MM));
    }

    private static List<Ink> down(double fromMm, double lengthMm, CornerPicture picture) {
        return List.of(
                bar(JOIN_MM, fromMm, JOIN_MM, lengthMm),
                bar(picture.widthMm() - 2 * JOIN_MM, fromMm, JOIN_MM, lengthMm));
    }

    private static Ink bar(double xMm, double yMm, double widthMm, double heightMm) {
        return Ink.Box.filled(
                xMm * Sheet.PT_PER_MM,
                yMm * Sheet.PT_PER_MM,
                widthMm * Sheet.PT_PER_MM,
                heightMm * Sheet.PT_PER_MM,
                Tone.MARSH);
    }

    /** The border around a piece, opposite sides alike, as it looks when it is done. */
    static Drawing fabric(Chart chart) {
        SideShape shape = chart.shape();
        int rounds = chart.rounds().size();
        int across = repeats(shape, Math.max(MOST_PIECE_STITCHES / 2, 2 * rounds));
        int down = repeats(shape, Math.max(MOST_PIECE_STITCHES / 3, 3 * rounds / 2));
        return ChartPicture.wholeBorder(chart, new PerSide(across, down, across, down), PictureStyle.FABRIC);
    }

    private static int repeats(SideShape shape, int stitches) {
        return Math.max(1, Math.round((stitches - shape.fewestStitches(0)) / (float) shape.w()));
    }

    private CornerPicture picture(double cellMm) {
        return CornerPicture.of(chart, style(cellMm), emphasis);
    }

    private static PictureStyle style(double cellMm) {
        return PictureStyle.PRINT.withLegend(false).withCellMm(cellMm);
    }

    private static double height(List<Strip> strips) {
        return strips.stream()
                .mapToDouble(strip -> strip.heightPt() + strip.spaceAbovePt())
                .sum();
    }
}
