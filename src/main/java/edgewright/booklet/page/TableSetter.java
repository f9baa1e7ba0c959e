package edgewright.booklet.page;

import edgewright.booklet.page.ColumnSlice.Break;
import edgewright.booklet.page.ColumnSlice.Piece;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Sets a table of counts: a head that comes again on every page, the first cell of a row as its heading, columns of
 * figures (a dash for none) flush right under their head and all others flush left. A column is as wide as its widest cell; where that is too wide for the page the text is broken.
 */
public final class TableSetter {
    private static final double PADDING_PT = 9;
    private static final double LARGE_PADDING_PT = 12;

    private static final double NARROWEST_PT = 44;

    private final TextSetter setter;
    private final double paddingPt;

    public TableSetter(TextSetter setter) {
        this.setter = setter;
        this.paddingPt = setter.sheet().oneColumn() ? LARGE_PADDING_PT : PADDING_PT;
    }

    /** How far the text of the first column stands in from the left edge. */
    public double indentPt() {
        return paddingPt / 2;
    }

    /**
     * @param columns the heads of the columns, at least one
     * @param rows each as long as {@code columns}
     * @param xPt the left edge
     * @param roomPt the greatest width
     */
    List<ColumnSlice> table(Tag parent, List<String> columns, List<List<String>> rows, double xPt, double roomPt) {
        Tag table = parent.child(StructureRole.TABLE);
        double[] widths = widths(columns, rows, roomPt);
        boolean[] figures = new boolean[widths.length];
        for (int i = 0; i < figures.length; i++) {
            int column = i;
            figures[i] = rows.stream().allMatch(row -> row.get(column).matches("[0-9]+([.][0-9]+)?|\u2013"));
        }
        ColumnSlice head = row(
                table.child(StructureRole.TABLE_HEAD).child(StructureRole.ROW),
                columns,
                widths,
                figures,
                xPt,
                Kind.HEAD);
        Tag body = table.child(StructureRole.TABLE_BODY);
        List<ColumnSlice> strips = new ArrayList<>(List.of(head.breaking(Break.NEVER)));
        for (int i = 0; i < rows.size(); i++) {
            ColumnSlice row = row(
                            body.child(StructureRole.ROW),
                            rows.get(i),
                            widths,
                            figures,
                            xPt,
                            i % 2 == 0 ? Kind.PLAIN : Kind.SHADED)
                    .repeating(List.of(head));
            boolean nearEdge = i < 2 || i >= rows.size() - 3;
            boolean last = i == rows.size() - 1;
            strips.add(last ? row : row.breaking(nearEdge ? Break.NEVER : Break.UNWELCOME));
        }
        return strips;
    }

    /** One table, or several where there is but one column and large type. */
    public List<ColumnSlice> fitting(
            Tag parent, List<String> columns, List<List<String>> rows, double xPt, double roomPt) {
        return fitting(parent, 1, columns, rows, xPt, roomPt);
    }

    /**
     * One table, as wide as the page if it must be, or several where there is but one column and large type.
     *
     * @param naming so many columns say what a row is about, and stand in every table
     */
    public List<ColumnSlice> fitting(
            Tag parent, int naming, List<String> columns, List<List<String>> rows, double xPt, double roomPt) {
        if (setter.sheet().oneColumn()) {
            return tables(parent, naming, columns, rows, xPt, roomPt);
        }
        boolean wide = Arrays.stream(widest(columns, rows)).sum() > roomPt;
        return wide
                ? table(parent, columns, rows, 0, setter.sheet().widthPt())
                : table(parent, columns, rows, xPt, roomPt);
    }

    /** The same as one table or, where that would be too wide, as several, each with the first column. */
    public List<ColumnSlice> tables(
            Tag parent, List<String> columns, List<List<String>> rows, double xPt, double roomPt) {
        return tables(parent, 1, columns, rows, xPt, roomPt);
    }

    /** The same, each with the first columns. */
    public List<ColumnSlice> tables(
            Tag parent, int naming, List<String> columns, List<List<String>> rows, double xPt, double roomPt) {
        double[] widths = widths(columns, rows, Double.POSITIVE_INFINITY);
        double namingPt = 0;
        for (int i = 0; i < naming; i++) {
            namingPt += widths[i];
        }
        List<ColumnSlice> strips = new ArrayList<>();
        for (int first = naming; first < widths.length; ) {
            int end = first;
            double width = namingPt;
            while (end < widths.length && (end == first || width + widths[end] <= roomPt)) {
                width += widths[end];
                end++;
            }
            int from = first;
            int to = end;
            List<ColumnSlice> table = new ArrayList<>(table(
                    parent,
                    part(columns, naming, from, to),
                    rows.stream().map(row -> part(row, naming, from, to)).toList(),
                    xPt,
                    roomPt));
            if (first > naming) {
                table.set(0, table.get(0).spaced(setter.sheet().halfLinePt()));
            }
            strips.addAll(table);
            first = end;
        }
        return strips;
    }

    /** Whether a row heading and so many figures as wide as this one stand side by side. */
    public boolean fits(int figures, String widest, double roomPt) {
        double column = Math.max(NARROWEST_PT, width(widest, setter.styles().figures()) + paddingPt);
        return (figures + 1) * column <= roomPt + figures;
    }

    private static List<String> part(List<String> cells, int naming, int from, int to) {
        List<String> part = new ArrayList<>(cells.subList(0, naming));
        part.addAll(cells.subList(from, to));
        return part;
    }

    private enum Kind {
        HEAD,
        PLAIN,
        SHADED
    }

    private ColumnSlice row(Tag row, List<String> cells, double[] widths, boolean[] figures, double xPt, Kind kind) {
        TextStyle style = kind == Kind.HEAD
                ? setter.styles().figuresHead()
                : setter.styles().figures();
        List<List<String>> lines = new ArrayList<>();
        int most = 1;
        for (int i = 0; i < cells.size(); i++) {
            lines.add(breaker(style).lines(cells.get(i), widths[i] - paddingPt));
            most = Math.max(most, lines.get(i).size());
        }
        double height = most * style.leadingPt();
        double width = 0;
        for (double w : widths) {
            width += w;
        }
        List<Piece> pieces = new ArrayList<>();
        if (kind == Kind.SHADED) {
            pieces.add(Piece.ornament(PageItem.Box.filled(xPt, 0, width, height, PageColour.WASH)));
        }
        double left = xPt;
        for (int i = 0; i < cells.size(); i++) {
            Tag tag = kind == Kind.HEAD
                    ? row.headerCell(Tag.Scope.COLUMN, 1)
                    : i == 0 ? row.headerCell(Tag.Scope.ROW, 1) : row.child(StructureRole.CELL);
            pieces.add(new Piece(Optional.of(tag), cell(lines.get(i), left, widths[i], !figures[i], style)));
            left += widths[i];
        }
        if (kind == Kind.HEAD) {
            pieces.add(Piece.ornament(PageItem.Box.filled(
                    xPt, height - 0.8, width, 0.8, setter.styles().part().colour())));
        }
        return ColumnSlice.of(height, pieces);
    }

    private List<PageItem> cell(List<String> lines, double leftPt, double widthPt, boolean flushLeft, TextStyle style) {
        List<PageItem> inks = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            double baseline = i * style.leadingPt() + style.baselinePt();
            inks.add(
                    flushLeft
                            ? setter.words(leftPt + paddingPt / 2, baseline, lines.get(i), style)
                            : setter.wordsTo(
                                    leftPt + widthPt - paddingPt / 2,
                                    baseline,
                                    lines.get(i).stripTrailing(),
                                    style));
        }
        return inks;
    }

    /** As wide as the widest cell where all fit; else heads are broken between words, then cells, and only at last words. */
    private double[] widths(List<String> columns, List<List<String>> rows, double roomPt) {
        double[] widths = widest(columns, rows);
        double sum = Arrays.stream(widths).sum();
        if (sum <= roomPt) {
            return widths;
        }
        double[] least = least(columns, rows, false);
        if (Arrays.stream(least).sum() > roomPt) {
            least = least(columns, rows, true);
        }
        double all = Arrays.stream(least).sum();
        for (int i = 0; i < widths.length; i++) {
            widths[i] = all <= roomPt
                    ? least[i] + (widths[i] - least[i]) * (roomPt - all) / (sum - all)
                    : widths[i] * roomPt / sum;
        }
        return widths;
    }

    private double[] widest(List<String> columns, List<List<String>> rows) {
        double[] widths = new double[columns.size()];
        for (int i = 0; i < widths.length; i++) {
            double widest = width(columns.get(i), setter.styles().figuresHead());
            for (List<String> row : rows) {
                widest = Math.max(widest, width(row.get(i), setter.styles().figures()));
            }
            widths[i] = Math.max(NARROWEST_PT, widest + paddingPt);
        }
        return widths;
    }

    /** @param broken whether cells are broken between words, and not only heads */
    private double[] least(List<String> columns, List<List<String>> rows, boolean broken) {
        TextStyle figures = setter.styles().figures();
        double[] least = new double[columns.size()];
        for (int i = 0; i < least.length; i++) {
            double widest = widestWord(columns.get(i), setter.styles().figuresHead());
            for (List<String> row : rows) {
                String cell = row.get(i);
                widest = Math.max(widest, broken ? widestWord(cell, figures) : width(cell, figures));
            }
            least[i] = paddingPt + widest;
        }
        return least;
    }

    private static double widestWord(String text, TextStyle style) {
        return Arrays.stream(text.split(" "))
                .mapToDouble(word -> width(word, style))
                .max()
                .orElse(0);
    }

    private static double width(String text, TextStyle style) {
        return style.face().widthPt(text, style.sizePt());
    }

    private static LineBreaker breaker(TextStyle style) {
        return LineBreaker.forProse(style.face(), style.sizePt());
    }
}
