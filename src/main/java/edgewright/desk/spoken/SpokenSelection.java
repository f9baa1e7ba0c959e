package edgewright.desk.spoken;

import edgewright.chart.GridCell;
import edgewright.chart.GridContent.SideStitch;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.accessibility.Accessible;
import javax.accessibility.AccessibleSelection;

/**
 * What of the chart is marked, for those who hear it: the cells that are marked or, if none is, the one under the cursor. To
 * choose a cell moves the cursor there; more are marked with the commands for it.
 */
public final class SpokenSelection implements AccessibleSelection {
    private final SpokenChart chart;
    private final ChartTable table;

    public SpokenSelection(SpokenChart chart) {
        this.chart = chart;
        table = ChartTable.of(chart.layout());
    }

    /** Whether the cell in a row and a column is chosen. */
    boolean holds(int row, int column) {
        return table.cellAt(row, column).filter(this::isChosen).isPresent();
    }

    private boolean isChosen(GridCell cell) {
        if (chart.marked().isEmpty()) {
            return cell.equals(chart.standing());
        }
        return chart.placeIn(cell).isPresent()
                && table.layout().grid().contentOf(cell) instanceof SideStitch stitch
                && chart.marked().get().contains(stitch);
    }

    /** The indices of the chosen cells in the table, ascending. */
    List<Integer> indices() {
        return chosen().flatMap(cell -> table
                        .rowOf(cell)
                        .flatMap(row -> table.columnOf(cell).map(column -> row * table.columns() + column))
                        .stream())
                .sorted()
                .toList();
    }

    private Stream<GridCell> chosen() {
        if (chart.marked().isEmpty()) {
            return Stream.of(chart.standing());
        }
        return chart.marked().stream()
                .flatMap(marked -> IntStream.rangeClosed(1, table.rows())
                        .boxed()
                        .flatMap(round -> marked.stitches(chart.verdict().chart(), chart.repeats(), round).stream())
                        .filter(marked::contains)
                        .map(stitch -> table.layout().grid().cellOf(stitch.side(), stitch.place()))
                        .filter(cell -> chart.placeIn(cell).isPresent()));
    }

    @Override
    public int getAccessibleSelectionCount() {
        return indices().size();
    }

    @Override
    public Accessible getAccessibleSelection(int i) {
        List<Integer> indices = indices();
        return i < 0 || i >= indices.size()
                ? null
                : chart.drawnOn().getAccessibleContext().getAccessibleChild(indices.get(i));
    }

    @Override
    public boolean isAccessibleChildSelected(int i) {
        return indices().contains(i);
    }

    @Override
    public void addAccessibleSelection(int i) {
        Optional<GridCell> cell = i < 0 ? Optional.empty() : table.cellAt(i / table.columns(), i % table.columns());
        cell.filter(at -> chart.placeIn(at).isPresent()).ifPresent(chart::standIn);
    }

    @Override
    public void removeAccessibleSelection(int i) {
        if (holds(i / table.columns(), i % table.columns())) {
            clearAccessibleSelection();
        }
    }

    @Override
    public void clearAccessibleSelection() {
        chart.unmark();
    }

    /** The chart as a whole is marked by no command. */
    @Override
    public void selectAllAccessibleSelection() {}
}
