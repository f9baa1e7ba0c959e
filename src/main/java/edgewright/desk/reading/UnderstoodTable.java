package edgewright.desk.reading;

import edgewright.desk.parts.Forms;
import edgewright.desk.parts.Look;
import edgewright.texts.Messages;
import java.awt.Component;
import java.util.List;
import javax.swing.BorderFactory;
import javax.swing.JTable;
import javax.swing.JTextArea;
import javax.swing.ListSelectionModel;
import javax.swing.UIManager;
import javax.swing.table.AbstractTableModel;
import javax.swing.table.TableCellRenderer;

/** The lines of a text, each beside what it was understood as. Lines wrap, so that nothing is cut. */
final class UnderstoodTable extends JTable {
    private static final String[] COLUMNS = {"line", "text", "understood"};
    private static final int PADDING_PX = 6;

    private final transient Messages says;
    private transient List<UnderstoodText.Line> lines = List.of();

    UnderstoodTable(Messages says) {
        this.says = says;
        setName("reading.lines");
        getAccessibleContext().setAccessibleName(says.text("reading-lines"));
        setModel(new Model());
        setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        setFillsViewportHeight(true);
        getTableHeader().setReorderingAllowed(false);
        setDefaultRenderer(Object.class, new Wrapped());
        getColumnModel().getColumn(0).setMaxWidth(56);
        getColumnModel().getColumn(1).setPreferredWidth(280);
        getColumnModel().getColumn(2).setPreferredWidth(360);
        Forms.tabLeaves(this);
    }

    void show(List<UnderstoodText.Line> shown) {
        lines = shown;
        ((AbstractTableModel) getModel()).fireTableDataChanged();
        fitRows();
    }

    /** The rounds of the chosen line; none if it makes none, or no line is chosen. */
    List<Integer> rounds() {
        int row = getSelectedRow();
        return row < 0 || row >= lines.size() ? List.of() : lines.get(row).rounds();
    }

    @Override
    public void doLayout() {
        super.doLayout();
        fitRows();
    }

    private void fitRows() {
        for (int row = 0; row < getRowCount(); row++) {
            int height = getFontMetrics(getFont()).getHeight() + PADDING_PX;
            for (int column = 1; column < COLUMNS.length; column++) {
                Component cell = prepareRenderer(getCellRenderer(row, column), row, column);
                cell.setSize(getColumnModel().getColumn(column).getWidth(), Short.MAX_VALUE);
                height = Math.max(height, cell.getPreferredSize().height);
            }
            if (getRowHeight(row) != height) {
                setRowHeight(row, height);
                repaint();
            }
        }
    }

    private final class Model extends AbstractTableModel {
        @Override
        public int getRowCount() {
            return lines == null ? 0 : lines.size();
        }

        @Override
        public int getColumnCount() {
            return COLUMNS.length;
        }

        @Override
        public String getColumnName(int column) {
            return says.text("column-" + COLUMNS[column]);
        }

        @Override
        public Object getValueAt(int row, int column) {
            UnderstoodText.Line line = lines.get(row);
            return switch (column) {
                case 0 -> Integer.toString(line.number());
                case 1 -> line.text();
                default -> line.understood();
            };
        }
    }

    private final class Wrapped implements TableCellRenderer {
        private final JTextArea area = new JTextArea();

        Wrapped() {
            area.setLineWrap(true);
            area.setWrapStyleWord(true);
            area.setBorder(BorderFactory.createEmptyBorder(PADDING_PX / 2, PADDING_PX, PADDING_PX / 2, PADDING_PX));
        }

        @Override
        public Component getTableCellRendererComponent(
                JTable table, Object value, boolean chosen, boolean focused, int row, int column) {
            UnderstoodText.Line line = lines.get(row);
            area.setFont(table.getFont());
            area.setText(String.valueOf(value));
            area.setBackground(chosen ? UIManager.getColor("Table.selectionBackground") : table.getBackground());
            boolean quiet = column != 1 && line.rounds().isEmpty();
            area.setForeground(
                    chosen
                            ? UIManager.getColor("Table.selectionForeground")
                            : line.refused() && column == 2
                                    ? Look.colour("error")
                                    : quiet ? Look.colour("quiet") : table.getForeground());
            return area;
        }
    }
}
