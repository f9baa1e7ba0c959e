package edgewright.desk.parts;

import java.awt.Component;
import java.awt.Container;
import java.awt.event.MouseEvent;
import java.util.Collections;
import javax.swing.BorderFactory;
import javax.swing.JLabel;
import javax.swing.JTable;
import javax.swing.SwingConstants;
import javax.swing.event.TableModelEvent;
import javax.swing.table.TableCellRenderer;
import javax.swing.table.TableColumn;
import javax.swing.table.TableModel;

/**
 * A table to look at whose columns are as wide as what they hold, their heads too. Where there is less room
 * long texts are cut first, and are whole in their tip; then the table scrolls across.
 */
public final class FittedTable extends JTable {
    private static final int MOST_PX = 420;

    /** A wider column gives way to this where there is less room. */
    private static final int LEAST_PX = 170;

    /** So many rows say how wide a column is; more would be slow to ask. */
    private static final int ROWS_ASKED = 100;

    /** Between a text and the next column. */
    private static final int APART_PX = 10;

    /** A table under its name for tests, and for the ear. */
    public FittedTable(TableModel model, String name, String heard) {
        super(model);
        setName(name);
        getAccessibleContext().setAccessibleName(heard);
        getTableHeader().setReorderingAllowed(false);
        setFillsViewportHeight(true);
        Forms.tabLeaves(this);
        TableCellRenderer usual = getTableHeader().getDefaultRenderer();
        getTableHeader().setDefaultRenderer((in, value, chosen, focused, row, column) -> {
            Component head = usual.getTableCellRendererComponent(in, value, chosen, focused, row, column);
            if (head instanceof JLabel label) {
                label.setHorizontalAlignment(alignment(column));
                // Cells stand in from the edges of their column by half of what lies between two.
                int inset = getIntercellSpacing().width / 2;
                label.setBorder(BorderFactory.createCompoundBorder(
                        label.getBorder(), BorderFactory.createEmptyBorder(0, inset, 0, inset)));
            }
            return head;
        });
        fit();
    }

    /** A head stands over what it is the head of. */
    private int alignment(int column) {
        return getRowCount() > 0 && prepareRenderer(getCellRenderer(0, column), 0, column) instanceof JLabel cell
                ? cell.getHorizontalAlignment()
                : SwingConstants.LEADING;
    }

    @Override
    public void tableChanged(TableModelEvent event) {
        super.tableChanged(event);
        fit();
    }

    @Override
    public void updateUI() {
        super.updateUI();
        // Letters may have another size now.
        fit();
    }

    /** Makes each column as wide as the widest of what it holds. */
    public void fit() {
        if (getTableHeader() == null) {
            return;
        }
        for (int column = 0; column < getColumnCount(); column++) {
            int width = headWidth(column);
            for (int row = 0; row < Math.min(getRowCount(), ROWS_ASKED); row++) {
                width = Math.max(width, cellWidth(row, column));
            }
            TableColumn one = getColumnModel().getColumn(column);
            int fitted = Math.min(width + getIntercellSpacing().width + APART_PX, Look.px(MOST_PX));
            one.setMinWidth(Math.min(fitted, Math.max(headWidth(column), Look.px(LEAST_PX))));
            one.setPreferredWidth(fitted);
        }
    }

    private int headWidth(int column) {
        Object head = getColumnModel().getColumn(column).getHeaderValue();
        return getTableHeader()
                .getDefaultRenderer()
                .getTableCellRendererComponent(this, head, false, false, -1, column)
                .getPreferredSize()
                .width;
    }

    private int cellWidth(int row, int column) {
        return prepareRenderer(getCellRenderer(row, column), row, column).getPreferredSize().width;
    }

    private int least() {
        return Collections.list(getColumnModel().getColumns()).stream()
                .mapToInt(TableColumn::getMinWidth)
                .sum();
    }

    @Override
    public boolean getScrollableTracksViewportWidth() {
        Container view = getParent();
        return view == null || least() <= view.getWidth();
    }

    @Override
    public String getToolTipText(MouseEvent event) {
        int row = rowAtPoint(event.getPoint());
        int column = columnAtPoint(event.getPoint());
        if (row < 0 || column < 0) {
            return super.getToolTipText(event);
        }
        Component cell = prepareRenderer(getCellRenderer(row, column), row, column);
        boolean cut = cell.getPreferredSize().width
                > getColumnModel().getColumn(column).getWidth() - getIntercellSpacing().width;
        return cut ? String.valueOf(getValueAt(row, column)) : super.getToolTipText(event);
    }
}
