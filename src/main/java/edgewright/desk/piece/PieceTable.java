package edgewright.desk.piece;

import edgewright.desk.fitting.Piece;
import edgewright.desk.fitting.PieceCounts;
import edgewright.desk.parts.FittedTable;
import edgewright.desk.parts.Forms;
import edgewright.desk.parts.Look;
import edgewright.texts.Messages;
import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Font;
import java.util.function.Function;
import javax.swing.BorderFactory;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.JTextArea;
import javax.swing.SwingConstants;
import javax.swing.table.AbstractTableModel;
import javax.swing.table.DefaultTableCellRenderer;

/** A table of counts with its caption, which follows the piece. */
final class PieceTable extends JPanel {
    private final transient Messages says;
    private final transient Piece piece;
    private final transient Function<Piece, PieceCounts.Table> of;
    private final JTextArea caption = Forms.prose("");
    private final Model model = new Model();
    private final FittedTable table;

    /**
     * The table, under its name for tests.
     *
     * @param heard its name for the ear
     */
    PieceTable(Piece piece, String name, String heard, Function<Piece, PieceCounts.Table> of, Messages says) {
        super(new BorderLayout());
        this.says = says;
        this.piece = piece;
        this.of = of;
        JPanel above = new JPanel(new BorderLayout());
        above.setBorder(BorderFactory.createEmptyBorder(12, 16, 8, 16));
        above.add(caption);
        table = new FittedTable(model, name, heard);
        table.setDefaultRenderer(Object.class, new Cell());
        JScrollPane scroll = new JScrollPane(table);
        scroll.setName(name + ".scroll");
        scroll.setBorder(BorderFactory.createEmptyBorder());
        add(above, BorderLayout.NORTH);
        add(scroll, BorderLayout.CENTER);
        piece.listen(change -> follow());
        follow();
    }

    private void follow() {
        PieceCounts.Table now = of.apply(piece);
        boolean otherColumns = !now.columns().equals(model.shown.columns());
        model.shown = now;
        caption.setText(now.rows().isEmpty() ? says.text("piece-table-none") : now.caption());
        if (otherColumns) {
            model.fireTableStructureChanged();
        } else {
            model.fireTableDataChanged();
        }
    }

    private static final class Model extends AbstractTableModel {
        private static final long serialVersionUID = 1;

        private transient PieceCounts.Table shown = PieceCounts.Table.NONE;

        @Override
        public int getRowCount() {
            return shown.rows().size();
        }

        @Override
        public int getColumnCount() {
            return shown.columns().size();
        }

        @Override
        public String getColumnName(int column) {
            return shown.columns().get(column);
        }

        @Override
        public Object getValueAt(int row, int column) {
            return shown.rows().get(row).get(column);
        }
    }

    /** Numbers on the right; the rows that stand out are bold. */
    private final class Cell extends DefaultTableCellRenderer {
        private static final long serialVersionUID = 1;

        @Override
        public Component getTableCellRendererComponent(
                JTable in, Object value, boolean chosen, boolean focused, int row, int column) {
            super.getTableCellRendererComponent(in, value, chosen, false, row, column);
            setHorizontalAlignment(SwingConstants.RIGHT);
            setBorder(BorderFactory.createEmptyBorder(0, 4, 0, 5));
            boolean marked = model.shown.marked().contains(row);
            setFont(in.getFont().deriveFont(marked ? Font.BOLD : Font.PLAIN));
            if (!chosen) {
                setForeground(marked ? Look.colour("accent") : in.getForeground());
            }
            return this;
        }
    }
}
