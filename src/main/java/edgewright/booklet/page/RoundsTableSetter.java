package edgewright.booklet.page;

import edgewright.booklet.page.ColumnSlice.Break;
import edgewright.booklet.page.ColumnSlice.Piece;
import edgewright.chart.Yarn;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Sets rounds as a table as wide as the column: a head that comes again on every page, the number of a round as the heading
 * of its row, the chip of its yarn before the yarn. Words that run across a row take the columns of the work as one.
 */
public final class RoundsTableSetter {
    private static final double PADDING_PT = 8;
    private static final int YARN = 1;
    /** Round and yarn stand before the columns of the work. */
    private static final int NAMING = 2;

    private static final int WORK = 3;
    /** No cell of the work is narrower, if there is any other way. */
    private static final double NARROWEST_PT = 62;

    private final TextSetter setter;
    private final TextStyle style;
    private final TextStyle headStyle;

    public RoundsTableSetter(TextSetter setter) {
        this.setter = setter;
        this.style = setter.styles().figures();
        this.headStyle = setter.styles().figuresHead();
    }

    /**
     * What stands in a row.
     *
     * @param yarn whose chip stands before the name of the yarn
     * @param across whether one cell takes the place of the three of the work
     * @param cells as many as there are columns, or two fewer
     */
    public record Row(Yarn yarn, boolean across, List<String> cells) {
        public Row {
            cells = List.copyOf(cells);
        }
    }

    /** The slices of the table; a page may end between two rows, and in a row only if it is higher than a page. */
    public List<ColumnSlice> set(Tag parent, List<String> columns, List<Row> rows) {
        Tag table = parent.child(StructureRole.TABLE);
        double[] widths = widths(columns, rows);
        List<ColumnSlice> head = head(table.child(StructureRole.TABLE_HEAD).child(StructureRole.ROW), columns, widths);
        Tag body = table.child(StructureRole.TABLE_BODY);
        List<ColumnSlice> strips = new ArrayList<>(head);
        for (int i = 0; i < rows.size(); i++) {
            List<ColumnSlice> row = row(body.child(StructureRole.ROW), rows.get(i), widths, i % 2 == 1);
            boolean last = i == rows.size() - 1;
            boolean nearEdge = i == 0 || i == rows.size() - 2;
            for (int line = 0; line < row.size(); line++) {
                Break below = line < row.size() - 1 || (nearEdge && !last) ? Break.NEVER : Break.FREE;
                strips.add(row.get(line).repeating(head).breaking(below));
            }
        }
        return strips;
    }

    private List<ColumnSlice> head(Tag row, List<String> columns, double[] widths) {
        List<Tag> tags = columns.stream()
                .map(column -> row.headerCell(Tag.Scope.COLUMN, 1))
                .toList();
        List<ColumnSlice> head = new ArrayList<>(lines(tags, columns, widths, headStyle, List.of(), false));
        int last = head.size() - 1;
        List<Piece> pieces = new ArrayList<>(head.get(last).pieces());
        double height = head.get(last).heightPt();
        double width = setter.sheet().widthPt();
        pieces.add(Piece.ornament(PageItem.Box.filled(
                0, height - 0.8, width, 0.8, setter.styles().part().colour())));
        head.set(last, head.get(last).holding(pieces));
        head.replaceAll(strip -> strip.breaking(Break.NEVER));
        return head;
    }

    private List<ColumnSlice> row(Tag row, Row round, double[] widths, boolean shaded) {
        double[] own = widths;
        if (round.across()) {
            double across = widths[NAMING] + widths[NAMING + 1] + widths[NAMING + 2];
            own = IntStream.range(0, round.cells().size())
                    .mapToDouble(i -> i < NAMING ? widths[i] : i == NAMING ? across : widths[i + WORK - 1])
                    .toArray();
        }
        List<Tag> tags = IntStream.range(0, round.cells().size())
                .mapToObj(i ->
                        i == 0 ? row.headerCell(Tag.Scope.ROW, 1) : row.cell(round.across() && i == NAMING ? WORK : 1))
                .toList();
        List<PageItem> chip = List.of(setter.chips().of(round.yarn(), own[0] + PADDING_PT / 2, 0));
        return lines(tags, round.cells(), own, style, chip, shaded);
    }

    /** The lines of a row, each a slice; the cells of all lines have the same tags. */
    private List<ColumnSlice> lines(
            List<Tag> tags, List<String> cells, double[] widths, TextStyle text, List<PageItem> chip, boolean shaded) {
        List<List<String>> wrapped = new ArrayList<>();
        int most = 1;
        for (int i = 0; i < cells.size(); i++) {
            double room = widths[i] - PADDING_PT - indent(i, chip);
            wrapped.add(TextSetter.breaker(text, i > YARN).lines(cells.get(i), room));
            most = Math.max(most, wrapped.get(i).size());
        }
        List<ColumnSlice> strips = new ArrayList<>();
        for (int line = 0; line < most; line++) {
            List<Piece> pieces = new ArrayList<>();
            if (shaded) {
                pieces.add(Piece.ornament(
                        PageItem.Box.filled(0, 0, setter.sheet().widthPt(), text.leadingPt(), PageColour.WASH)));
            }
            if (line == 0 && !chip.isEmpty()) {
                pieces.add(new Piece(Optional.empty(), chip));
            }
            double left = 0;
            for (int i = 0; i < cells.size(); i++) {
                if (line < wrapped.get(i).size()) {
                    double x = left + PADDING_PT / 2 + indent(i, chip);
                    String words = wrapped.get(i).get(line);
                    pieces.add(Piece.of(tags.get(i), setter.words(x, text.baselinePt(), words, text)));
                }
                left += widths[i];
            }
            strips.add(ColumnSlice.of(text.leadingPt(), pieces));
        }
        return strips;
    }

    private double indent(int column, List<PageItem> chip) {
        return column == YARN && !chip.isEmpty() ? setter.chips().indentPt() : 0;
    }

    /** As wide as the widest cell, where all fit; else the room is shared, and the number of the round keeps what it needs. */
    private double[] widths(List<String> columns, List<Row> rows) {
        double[] widest = new double[columns.size()];
        for (int i = 0; i < widest.length; i++) {
            widest[i] = width(columns.get(i), headStyle);
            for (Row row : rows) {
                int cell = row.across() && i > NAMING ? i - WORK + 1 : i;
                boolean own = !row.across() || i < NAMING || i >= NAMING + WORK;
                if (own) {
                    widest[i] = Math.max(widest[i], width(row.cells().get(cell), style));
                }
            }
            widest[i] += PADDING_PT + (i == YARN ? setter.chips().indentPt() : 0);
        }
        double room = setter.sheet().widthPt();
        double[] least = new double[widest.length];
        double spare = room;
        double wish = 0;
        for (int i = 0; i < least.length; i++) {
            least[i] = i == 0
                    ? widest[i]
                    : Math.min(widest[i], Math.max(NARROWEST_PT, width(columns.get(i), headStyle) + PADDING_PT));
            spare -= least[i];
            wish += widest[i] - least[i];
        }
        double[] widths = new double[widest.length];
        for (int i = 0; i < widths.length; i++) {
            double more = wish <= spare || wish == 0 ? widest[i] - least[i] : (widest[i] - least[i]) * spare / wish;
            widths[i] = least[i] + more;
        }
        if (rows.stream().anyMatch(Row::across)) {
            double left = Math.max(0, room - Arrays.stream(widths).sum());
            IntStream.range(NAMING, NAMING + WORK).forEach(i -> widths[i] += left / WORK);
        }
        return widths;
    }

    private static double width(String text, TextStyle style) {
        return style.face().widthPt(text, style.sizePt());
    }
}
