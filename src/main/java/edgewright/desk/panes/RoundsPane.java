package edgewright.desk.panes;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.count;

import edgewright.chart.Counting;
import edgewright.chart.Place;
import edgewright.chart.Yarn;
import edgewright.check.FindingCount;
import edgewright.desk.parts.DeskActions;
import edgewright.desk.parts.Forms;
import edgewright.desk.parts.Look;
import edgewright.desk.parts.SeverityIcon;
import edgewright.desk.parts.SizeSpinners;
import edgewright.desk.parts.YarnCard;
import edgewright.desk.work.ChartView;
import edgewright.desk.work.RoundRange;
import edgewright.desk.work.Workbench;
import edgewright.desk.work.WorkbenchChange;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import java.awt.Component;
import java.awt.Rectangle;
import java.util.Arrays;
import javax.swing.DefaultCellEditor;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.ListSelectionModel;
import javax.swing.SwingConstants;
import javax.swing.table.DefaultTableCellRenderer;
import javax.swing.table.TableCellRenderer;
import javax.swing.table.TableColumn;
import net.miginfocom.swing.MigLayout;

/** The rounds: number, yarn, stitches on a side and findings of each, and what can be done with a round. */
public final class RoundsPane extends JPanel {
    private final transient Workbench bench;
    private final RoundTable rounds;
    private final JTable table;
    private final transient Messages says;
    private final transient Messages common;
    private boolean following;

    public RoundsPane(Workbench bench, ChartView view, DeskActions actions) {
        super(new MigLayout("insets 10 12 10 12, gap 6, fill", "[grow, fill]", "[][][grow, fill][]"));
        this.bench = bench;
        says = view.language().messages("desk/panes");
        common = view.language().messages("desk/common");
        rounds = new RoundTable(bench, view);
        table = table(view.language());
        add(Look.heading(says.text("rounds-heading")), "wrap");
        add(countingLine(view), "wrap");
        JScrollPane scroll = new JScrollPane(table);
        scroll.setName("roundsScroll");
        add(scroll, "wrap, hmin 120");
        add(buttons(actions), "growx");
        bench.listen(this::changed);
        follow();
    }

    /** The rounds chosen in the table; the round of the cursor if none is. */
    public RoundRange chosen() {
        int[] rows = table.getSelectedRows();
        // Somebody may ask while a chart with fewer rounds is being laid on the desk.
        if (rows.length == 0 || rows[rows.length - 1] >= rounds.getRowCount()) {
            return RoundRange.of(bench.cursor().round());
        }
        int first = Arrays.stream(rows).map(rounds::roundOf).min().orElseThrow();
        int last = Arrays.stream(rows).map(rounds::roundOf).max().orElseThrow();
        return new RoundRange(first, last);
    }

    /** Chooses these rounds in the table. */
    public void choose(RoundRange range) {
        following = true;
        table.getSelectionModel().setSelectionInterval(rounds.rowOf(range.first()), rounds.rowOf(range.last()));
        following = false;
    }

    public JTable rounds() {
        return table;
    }

    private JPanel countingLine(ChartView view) {
        JPanel line = new JPanel(new MigLayout("insets 0, gap 6, wrap 2", "[grow][84!, fill]"));
        line.setOpaque(false);
        SizeSpinners size = new SizeSpinners(view, "repeats", "repeatsUpright");
        size.level().setToolTipText(says.text("rounds-repeats-tip"));
        size.upright().setToolTipText(says.text("rounds-repeats-tip"));
        line.add(Forms.label(says.text("rounds-repeats"), size.level()));
        line.add(size.level());
        line.add(Forms.label(says.text("rounds-repeatsUpright"), size.upright()));
        line.add(size.upright());
        JComboBox<Counting> counting = new JComboBox<>(Counting.values());
        counting.setName("counting");
        counting.getAccessibleContext().setAccessibleName(common.text("rounds-counting"));
        counting.setToolTipText(says.text("rounds-counting-tip"));
        counting.setRenderer(Forms.renderer((Counting way) -> common.text("counting-" + way.name())));
        counting.setSelectedItem(view.counting());
        counting.addActionListener(event -> view.count((Counting) counting.getSelectedItem()));
        view.listen(change -> counting.setSelectedItem(view.counting()));
        line.add(counting, "span, growx, wmin 0");
        return line;
    }

    private JPanel buttons(DeskActions actions) {
        JPanel buttons =
                new JPanel(new MigLayout("insets 0, gap 6, fillx, wrap 2", "[grow, fill, sg][grow, fill, sg]"));
        buttons.setOpaque(false);
        for (String id :
                new String[] {"insertOutside", "insertInside", "moveOut", "moveIn", "duplicateRounds", "deleteRounds"
                }) {
            JButton button = Forms.button(actions.get(id));
            button.setText(says.text("rounds-button-" + id));
            button.setDisplayedMnemonicIndex(-1);
            button.setMnemonic(0);
            buttons.add(button);
        }
        return buttons;
    }

    private JTable table(Language language) {
        JTable made = new JTable(rounds);
        made.setName("rounds");
        made.getAccessibleContext().setAccessibleName(says.text("rounds-heading"));
        made.setSelectionMode(ListSelectionModel.SINGLE_INTERVAL_SELECTION);
        made.getTableHeader().setReorderingAllowed(false);
        made.getTableHeader()
                .setDefaultRenderer(
                        new HeadCell(made.getTableHeader().getDefaultRenderer(), says.text("rounds-side-tip")));
        made.setShowVerticalLines(false);
        made.putClientProperty("terminateEditOnFocusLost", true);
        Forms.tabLeaves(made);
        widths(made, RoundTable.ROUND, 52, 60);
        widths(made, RoundTable.STITCHES, 78, 110);
        widths(made, RoundTable.FINDINGS, 66, 84);
        made.getColumnModel().getColumn(RoundTable.YARN).setPreferredWidth(110);
        DefaultTableCellRenderer numbers = new DefaultTableCellRenderer();
        numbers.setHorizontalAlignment(SwingConstants.RIGHT);
        made.getColumnModel().getColumn(RoundTable.ROUND).setCellRenderer(numbers);
        made.getColumnModel().getColumn(RoundTable.STITCHES).setCellRenderer(numbers);
        made.getColumnModel().getColumn(RoundTable.YARN).setCellRenderer(new YarnCell());
        made.getColumnModel().getColumn(RoundTable.FINDINGS).setCellRenderer(new FoundCell());
        made.getColumnModel().getColumn(RoundTable.YARN).setCellEditor(yarnChoice(language));
        made.getSelectionModel().addListSelectionListener(event -> {
            int lead = made.getSelectionModel().getLeadSelectionIndex();
            if (!following && !event.getValueIsAdjusting() && lead >= 0 && lead < made.getRowCount()) {
                goToRound(rounds.roundOf(lead));
            }
        });
        return made;
    }

    /** The yarns of the chart, from which one is chosen for a round. */
    private DefaultCellEditor yarnChoice(Language language) {
        JComboBox<Yarn> yarns = new JComboBox<>();
        yarns.setName("yarnOfRound");
        yarns.setRenderer(new YarnRenderer(language));
        return new DefaultCellEditor(yarns) {
            @Override
            public Component getTableCellEditorComponent(JTable of, Object value, boolean chosen, int row, int column) {
                yarns.removeAllItems();
                bench.chart().yarns().forEach(yarns::addItem);
                return super.getTableCellEditorComponent(of, value, chosen, row, column);
            }
        };
    }

    private static void widths(JTable table, int column, int least, int most) {
        TableColumn of = table.getColumnModel().getColumn(column);
        of.setMinWidth(least);
        of.setMaxWidth(most);
        of.setPreferredWidth(least);
    }

    private void goToRound(int round) {
        Place at = bench.cursor();
        if (at.round() != round) {
            bench.moveCursor(new Place(round, at.section(), at.place()));
        }
    }

    private void changed(WorkbenchChange change) {
        if (change.ofChart() || change.kind() == WorkbenchChange.Kind.CURSOR) {
            follow();
        }
    }

    /** Chooses the round in which the cursor stands, unless it is among those chosen already. */
    private void follow() {
        int row = rounds.rowOf(bench.cursor().round());
        if (!table.isRowSelected(row)) {
            following = true;
            table.getSelectionModel().setSelectionInterval(row, row);
            following = false;
        }
        Rectangle cell = table.getCellRect(row, 0, true);
        table.scrollRectToVisible(cell);
    }

    /** The head of a column, over its content: numbers on the right, all else on the left. */
    private record HeadCell(TableCellRenderer usual, String tip) implements TableCellRenderer {
        @Override
        public Component getTableCellRendererComponent(
                JTable of, Object value, boolean chosen, boolean focused, int row, int column) {
            Component head = usual.getTableCellRendererComponent(of, value, chosen, focused, row, column);
            if (head instanceof JLabel label) {
                boolean number = column == RoundTable.ROUND || column == RoundTable.STITCHES;
                label.setHorizontalAlignment(number ? SwingConstants.RIGHT : SwingConstants.LEFT);
                label.setToolTipText(column == RoundTable.STITCHES ? tip : null);
            }
            return head;
        }
    }

    /** A yarn as its card, its letter and its name. */
    private final class YarnCell extends DefaultTableCellRenderer {
        @Override
        public Component getTableCellRendererComponent(
                JTable of, Object value, boolean chosen, boolean focused, int row, int column) {
            super.getTableCellRendererComponent(of, value, chosen, focused, row, column);
            Yarn yarn = (Yarn) value;
            setText(common.text("yarn-short", arg("id", yarn.id()), arg("yarn", yarn.name())));
            setToolTipText(getText());
            setIcon(new YarnCard(yarn.colour(), 14));
            setIconTextGap(7);
            return this;
        }
    }

    /** How many findings a round has; nothing where it has none. */
    private final class FoundCell extends DefaultTableCellRenderer {
        @Override
        public Component getTableCellRendererComponent(
                JTable of, Object value, boolean chosen, boolean focused, int row, int column) {
            super.getTableCellRendererComponent(of, value, chosen, focused, row, column);
            FindingCount found = (FindingCount) value;
            setIconTextGap(6);
            setText(found.all() == 0 ? "" : String.valueOf(found.all()));
            setIcon(
                    found.all() == 0
                            ? null
                            : SeverityIcon.of(found.errors() > 0, chosen ? of.getSelectionForeground() : null));
            setToolTipText(
                    found.all() == 0
                            ? null
                            : says.text(
                                    "rounds-tally", count("findings", found.all()), count("errors", found.errors())));
            return this;
        }
    }
}
