package edgewright.desk.parts;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.MouseEvent;
import java.util.stream.IntStream;
import javax.swing.JScrollPane;
import javax.swing.SwingConstants;
import javax.swing.table.DefaultTableCellRenderer;
import javax.swing.table.DefaultTableModel;
import org.junit.jupiter.api.Test;

/** Columns of a table that are as wide as what they hold. */
class FittedTableTest {
    private static final String LONG = "the third round comes out two stitches short on the left side ".repeat(6);

    private final DefaultTableModel model = new DefaultTableModel(
            new Object[][] {{"1", "176", "makes the chart"}, {"2", "1,840", "makes the chart"}},
            new Object[] {"Round", "Stitches of all sides", "Result"});
    private final FittedTable table = new FittedTable(model, "table", "A table");

    @Test
    void a_column_has_room_for_its_head_and_for_every_cell_and_little_more() {
        for (int column = 0; column < 3; column++) {
            int at = column;
            int widest = IntStream.of(text(table.getColumnName(at)), cell(0, at), cell(1, at))
                    .max()
                    .orElseThrow();
            assertThat(width(at)).isBetween(widest, widest + 40);
        }
        assertThat(width(0)).isLessThan(width(1));
        model.setValueAt("one thousand eight hundred and forty stitches", 1, 1);
        assertThat(width(1)).isGreaterThan(cell(1, 1));
    }

    @Test
    void where_there_is_less_room_the_table_scrolls_across() {
        JScrollPane scroll = new JScrollPane(table);
        scroll.getViewport().setSize(table.getPreferredSize().width + 50, 200);
        assertThat(table.getScrollableTracksViewportWidth()).isTrue();
        scroll.getViewport().setSize(table.getPreferredSize().width - 1, 200);
        assertThat(table.getScrollableTracksViewportWidth()).isFalse();
    }

    @Test
    void a_text_that_is_cut_is_whole_in_its_tip() {
        model.setValueAt(LONG, 0, 2);
        table.setSize(table.getPreferredSize());
        table.doLayout();
        assertThat(width(2)).isLessThan(cell(0, 2));
        assertThat(tip(0, 2)).isEqualTo(LONG);
        assertThat(tip(1, 2)).isNull();
    }

    @Test
    void a_head_stands_over_its_figures() {
        DefaultTableCellRenderer figures = new DefaultTableCellRenderer();
        figures.setHorizontalAlignment(SwingConstants.RIGHT);
        table.getColumnModel().getColumn(1).setCellRenderer(figures);
        assertThat(headAlignment(0)).isEqualTo(SwingConstants.LEADING);
        assertThat(headAlignment(1)).isEqualTo(SwingConstants.RIGHT);
    }

    private int headAlignment(int column) {
        return ((DefaultTableCellRenderer) table.getTableHeader()
                        .getDefaultRenderer()
                        .getTableCellRendererComponent(table, table.getColumnName(column), false, false, -1, column))
                .getHorizontalAlignment();
    }

    private String tip(int row, int column) {
        var at = table.getCellRect(row, column, false);
        return table.getToolTipText(new MouseEvent(
                table, MouseEvent.MOUSE_MOVED, 0, 0, (int) at.getCenterX(), (int) at.getCenterY(), 0, false));
    }

    private int width(int column) {
        return table.getColumnModel().getColumn(column).getPreferredWidth();
    }

    private int cell(int row, int column) {
        return table.prepareRenderer(table.getCellRenderer(row, column), row, column)
                .getPreferredSize()
                .width;
    }

    private int text(String text) {
        return table.getFontMetrics(table.getTableHeader().getFont()).stringWidth(text);
    }
}
