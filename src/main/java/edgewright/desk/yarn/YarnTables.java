package edgewright.desk.yarn;

import static edgewright.texts.Arg.arg;

import edgewright.chart.Chart;
import edgewright.chart.Yarn;
import edgewright.desk.parts.FittedTable;
import edgewright.desk.parts.YarnCard;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import edgewright.yarn.Amounts;
import edgewright.yarn.YarnSentences;
import java.awt.Component;
import java.awt.Dimension;
import java.util.List;
import java.util.function.IntFunction;
import javax.swing.JLabel;
import javax.swing.JTable;
import javax.swing.table.AbstractTableModel;
import javax.swing.table.DefaultTableCellRenderer;
import javax.swing.table.DefaultTableModel;

/** The tables of the window about yarn. A yarn is shown with its card; what is counted stands flush right. */
final class YarnTables {
    private static final String NONE = "\u2013";

    private final Language language;
    private final YarnSentences sentences;
    private final Messages says;
    private final Messages common;

    YarnTables(Language language) {
        this.language = language;
        sentences = new YarnSentences(language);
        says = language.messages("desk/yarn");
        common = language.messages("desk/common");
    }

    /** A row for each yarn: what to have of it, and what is in hand. */
    Model yarns(Amounts amounts) {
        List<Amounts.OfYarn> yarns = amounts.yarns();
        return new Model(List.of("yarn", "needed", "grams", "balls", "inHand", "missing"), 0, yarns.size(), row -> {
            Amounts.OfYarn yarn = yarns.get(row);
            return new Object[] {
                yarn.yarn(),
                sentences.toHave(yarn.metres()),
                sentences.grams(yarn).orElse(NONE),
                sentences.balls(yarn).orElse(NONE),
                yarn.yarn().metresInHand().isPresent()
                        ? sentences.worked(yarn.yarn().metresInHand().getAsDouble())
                        : NONE,
                yarn.missingMetres() > 0 ? sentences.toHave(yarn.missingMetres()) : NONE
            };
        });
    }

    /** A row for each round, in the order in which they are worked. */
    Model rounds(Chart chart, Amounts amounts) {
        List<Amounts.OfRound> rounds = amounts.rounds();
        return new Model(List.of("round", "yarn", "stitches", "metres", "soFar"), 1, rounds.size(), row -> {
            Amounts.OfRound round = rounds.get(row);
            return new Object[] {
                sentences.round(round.round()),
                chart.yarn(round.round().yarn()).orElseThrow(),
                language.count(round.round().total()),
                sentences.worked(round.metres()),
                sentences.worked(round.metresSoFar())
            };
        });
    }

    /** A table that is only looked at. */
    JTable table(String name, String heard) {
        JTable table = new FittedTable(new DefaultTableModel(), name, heard);
        table.setIntercellSpacing(new Dimension(14, 1));
        table.setDefaultRenderer(Yarn.class, new Card());
        table.setDefaultRenderer(Object.class, new Figure());
        return table;
    }

    /** Rows that do not change; a change makes another model. */
    final class Model extends AbstractTableModel {
        private final List<String> columns;
        private final int yarnColumn;
        private final int rows;
        private final transient IntFunction<Object[]> row;

        private Model(List<String> columns, int yarnColumn, int rows, IntFunction<Object[]> row) {
            this.columns = columns;
            this.yarnColumn = yarnColumn;
            this.rows = rows;
            this.row = row;
        }

        @Override
        public int getRowCount() {
            return rows;
        }

        @Override
        public int getColumnCount() {
            return columns.size();
        }

        @Override
        public String getColumnName(int column) {
            return says.text("yarns-column-" + columns.get(column));
        }

        @Override
        public Class<?> getColumnClass(int column) {
            return column == yarnColumn ? Yarn.class : Object.class;
        }

        @Override
        public Object getValueAt(int at, int column) {
            return row.apply(at)[column];
        }
    }

    private final class Card extends DefaultTableCellRenderer {
        @Override
        public Component getTableCellRendererComponent(
                JTable table, Object value, boolean chosen, boolean focused, int row, int column) {
            Yarn yarn = (Yarn) value;
            String text = common.text("yarn-short", arg("id", yarn.id()), arg("yarn", yarn.name()));
            super.getTableCellRendererComponent(table, text, chosen, focused, row, column);
            setIcon(new YarnCard(yarn.colour(), 16));
            setIconTextGap(8);
            return this;
        }
    }

    private static final class Figure extends DefaultTableCellRenderer {
        Figure() {
            setHorizontalAlignment(JLabel.RIGHT);
        }
    }
}
