package edgewright.desk.spoken;

import static edgewright.texts.Arg.number;

import edgewright.desk.work.PlaceTexts;
import edgewright.texts.Messages;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.accessibility.Accessible;
import javax.accessibility.AccessibleExtendedTable;
import javax.accessibility.AccessibleTable;
import javax.swing.JLabel;

/** The chart as a table that is read out: {@link ChartTable} says what stands where. A cell's index counts row by row, from 0. */
public final class SpokenTable implements AccessibleExtendedTable {
    private final SpokenChart chart;
    private final ChartTable table;
    private final Messages says;

    public SpokenTable(SpokenChart chart) {
        this.chart = chart;
        table = ChartTable.of(chart.layout());
        says = chart.language().messages("desk/spoken");
    }

    /** The cell in which the cursor is drawn. */
    public Optional<Accessible> atCursor() {
        return table.rowOf(chart.standing())
                .flatMap(row -> table.columnOf(chart.standing()).map(column -> getAccessibleAt(row, column)));
    }

    @Override
    public int getAccessibleRowCount() {
        return table.rows();
    }

    @Override
    public int getAccessibleColumnCount() {
        return table.columns();
    }

    @Override
    public Accessible getAccessibleAt(int row, int column) {
        return row < 0 || column < 0 || row >= table.rows() || column >= table.columns()
                ? null
                : new SpokenCell(chart, row, column);
    }

    @Override
    public int getAccessibleRow(int index) {
        return index / table.columns();
    }

    @Override
    public int getAccessibleColumn(int index) {
        return index % table.columns();
    }

    @Override
    public int getAccessibleIndex(int row, int column) {
        return row * table.columns() + column;
    }

    @Override
    public int getAccessibleRowExtentAt(int row, int column) {
        return 1;
    }

    @Override
    public int getAccessibleColumnExtentAt(int row, int column) {
        return 1;
    }

    @Override
    public Accessible getAccessibleCaption() {
        return new JLabel(chart.drawnOn().getAccessibleContext().getAccessibleName());
    }

    @Override
    public Accessible getAccessibleSummary() {
        return new JLabel(says.text(table.hasCorner() ? "table-summary-corner" : "table-summary"));
    }

    @Override
    public Accessible getAccessibleRowDescription(int row) {
        return new JLabel(new PlaceTexts(chart.language()).round(chart.verdict(), row + 1));
    }

    @Override
    public Accessible getAccessibleColumnDescription(int column) {
        return new JLabel(says.text("table-column", number("column", column + 1)));
    }

    @Override
    public AccessibleTable getAccessibleRowHeader() {
        // Each row says itself what it is.
        return null;
    }

    @Override
    public AccessibleTable getAccessibleColumnHeader() {
        return null;
    }

    @Override
    public boolean isAccessibleSelected(int row, int column) {
        return new SpokenSelection(chart).holds(row, column);
    }

    /** Rows and columns are marked cell by cell. */
    @Override
    public boolean isAccessibleRowSelected(int row) {
        return false;
    }

    @Override
    public boolean isAccessibleColumnSelected(int column) {
        return false;
    }

    @Override
    public int[] getSelectedAccessibleRows() {
        return selected().map(this::getAccessibleRow).distinct().toArray();
    }

    @Override
    public int[] getSelectedAccessibleColumns() {
        return selected().map(this::getAccessibleColumn).sorted().distinct().toArray();
    }

    private IntStream selected() {
        return new SpokenSelection(chart).indices().stream().mapToInt(Integer::intValue);
    }

    /** They are chosen cell by cell: the caption and the rest are what they are. */
    @Override
    public void setAccessibleCaption(Accessible caption) {}

    @Override
    public void setAccessibleSummary(Accessible summary) {}

    @Override
    public void setAccessibleRowDescription(int row, Accessible description) {}

    @Override
    public void setAccessibleColumnDescription(int column, Accessible description) {}

    @Override
    public void setAccessibleRowHeader(AccessibleTable header) {}

    @Override
    public void setAccessibleColumnHeader(AccessibleTable header) {}
}
