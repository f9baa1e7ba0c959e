package edgewright.desk.panes;

import static edgewright.texts.Arg.plain;

import edgewright.chart.Chart;
import edgewright.chart.Counting;
import edgewright.chart.PerSide;
import edgewright.chart.Section;
import edgewright.chart.Side;
import edgewright.chart.Yarn;
import edgewright.check.FindingCount;
import edgewright.desk.work.ChartCommands;
import edgewright.desk.work.ChartView;
import edgewright.desk.work.RoundRange;
import edgewright.desk.work.Workbench;
import edgewright.desk.work.WorkbenchChange;
import edgewright.texts.Messages;
import java.util.List;
import javax.swing.table.AbstractTableModel;

/**
 * The rounds as rows of a table, the outermost on top, as they lie on the blanket seen from the piece. The yarn of a round can
 * be changed in its cell.
 */
public final class RoundTable extends AbstractTableModel {
    static final int ROUND = 0;
    static final int YARN = 1;
    public static final int STITCHES = 2;
    static final int FINDINGS = 3;

    private final transient Workbench bench;
    private final transient Messages says;
    private transient List<FindingCount> found = List.of();
    private PerSide<Integer> repeats;
    private Counting counting;

    public RoundTable(Workbench bench, ChartView view) {
        this.bench = bench;
        says = view.language().messages("desk/panes");
        counting = view.counting();
        repeats = view.repeats();
        count();
        bench.listen(this::changed);
        view.listen(change -> count(view.counting(), view.repeats()));
    }

    /** The round that a row shows; rows count from 0, at the top. */
    int roundOf(int row) {
        return getRowCount() - row;
    }

    int rowOf(int round) {
        return getRowCount() - round;
    }

    private void count(Counting way, PerSide<Integer> size) {
        if (counting != way || !repeats.equals(size)) {
            counting = way;
            repeats = size;
            fireTableRowsUpdated(0, getRowCount() - 1);
        }
    }

    @Override
    public int getRowCount() {
        return bench.chart().rounds().size();
    }

    @Override
    public int getColumnCount() {
        return 4;
    }

    @Override
    public String getColumnName(int column) {
        return says.text("rounds-column-" + column);
    }

    @Override
    public Class<?> getColumnClass(int column) {
        return switch (column) {
            case ROUND -> Integer.class;
            case STITCHES -> String.class;
            case YARN -> Yarn.class;
            default -> FindingCount.class;
        };
    }

    @Override
    public Object getValueAt(int row, int column) {
        Chart chart = bench.chart();
        int round = roundOf(row);
        return switch (column) {
            case ROUND -> round;
            case YARN -> chart.yarnOf(round);
            case STITCHES -> sides(chart, round);
            default -> found.get(round - 1);
        };
    }

    @Override
    public boolean isCellEditable(int row, int column) {
        return column == YARN && bench.chart().yarns().size() > 1;
    }

    @Override
    public void setValueAt(Object value, int row, int column) {
        if (value instanceof Yarn yarn) {
            ChartCommands.changeYarn(bench, RoundRange.of(roundOf(row)), yarn);
        }
    }

    /** The count of a side; where left and right have another than top and bottom, both. */
    private String sides(Chart chart, int round) {
        int level = counting.shown(stitches(chart, round, Side.TOP));
        int upright = counting.shown(stitches(chart, round, Side.LEFT));
        return level == upright
                ? says.text("rounds-side", plain("stitches", level))
                : says.text("rounds-sides", plain("topAndBottom", level), plain("leftAndRight", upright));
    }

    /** What is there, also where it is not what the round asks for. */
    private int stitches(Chart chart, int round, Side side) {
        int stitches = 0;
        for (Section section : Section.of(side)) {
            int length = chart.round(round).section(section).length();
            stitches += section.isRepeat()
                    ? repeats.get(side) * Math.max(chart.shape(side).w(), length)
                    : length;
        }
        return stitches;
    }

    private void changed(WorkbenchChange change) {
        if (!change.ofChart()) {
            return;
        }
        count();
        if (change.kind() == WorkbenchChange.Kind.OPENED
                || change.before().rounds().size() != change.after().rounds().size()) {
            fireTableDataChanged();
        } else {
            fireTableRowsUpdated(0, getRowCount() - 1);
        }
    }

    private void count() {
        found = bench.verdict().countByRound();
    }
}
