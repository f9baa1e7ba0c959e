package edgewright.desk.output;

import edgewright.chart.Counting;
import edgewright.desk.parts.TextColumn;
import edgewright.desk.work.DeskTexts;
import edgewright.proof.SizeProofs.Trial;
import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.Window;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.util.List;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.KeyStroke;
import javax.swing.table.AbstractTableModel;

/** For which sizes the words were worked, and what came of it. It stays beside the chart until it is closed. */
final class ProofWindow extends JDialog {
    private static final String[] COLUMNS = {"repeats", "base", "stitches", "outcome"};

    ProofWindow(Window owner, List<Trial> trials, Counting counting) {
        super(owner, DeskTexts.of("proof.title"), ModalityType.MODELESS);
        setName("proofWindow");
        // Each proof has a window of its own.
        setDefaultCloseOperation(DISPOSE_ON_CLOSE);
        TextColumn column = new TextColumn(14, 18, 10);
        long failed = trials.stream().filter(trial -> !trial.agrees()).count();
        column.heading(DeskTexts.of(failed == 0 ? "proof.agrees" : "proof.fails", trials.size(), failed));
        column.prose(DeskTexts.of("proof.explain"));
        trials.stream().filter(trial -> !trial.agrees()).limit(1).forEach(trial -> {
            column.heading(DeskTexts.of("proof.first", ProveDialog.line(trial.repeats())));
            trial.problems().forEach(column::prose);
        });
        JTable table = new JTable(new Model(trials, counting));
        table.setName("proofTable");
        table.getAccessibleContext().setAccessibleName(DeskTexts.of("proof.title"));
        table.setRowHeight(26);
        table.setFillsViewportHeight(true);
        table.setIntercellSpacing(new Dimension(16, 1));
        table.getColumnModel().getColumn(COLUMNS.length - 1).setPreferredWidth(240);
        setLayout(new BorderLayout());
        add(column, BorderLayout.NORTH);
        add(new JScrollPane(table), BorderLayout.CENTER);
        addWindowListener(new WindowAdapter() {
            @Override
            public void windowOpened(WindowEvent event) {
                table.requestFocusInWindow();
            }
        });
        setSize(new Dimension(640, 420));
        setLocationRelativeTo(owner);
        getRootPane()
                .registerKeyboardAction(
                        event -> dispose(),
                        KeyStroke.getKeyStroke("ESCAPE"),
                        JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT);
    }

    /** A row for each size. */
    private static final class Model extends AbstractTableModel {
        private final transient List<Trial> trials;
        private final Counting counting;

        Model(List<Trial> trials, Counting counting) {
            this.trials = trials;
            this.counting = counting;
        }

        @Override
        public int getRowCount() {
            return trials.size();
        }

        @Override
        public int getColumnCount() {
            return COLUMNS.length;
        }

        @Override
        public String getColumnName(int column) {
            return DeskTexts.of("proof.column." + COLUMNS[column], DeskTexts.of("counting." + counting.name()));
        }

        @Override
        public Object getValueAt(int row, int column) {
            Trial trial = trials.get(row);
            return switch (COLUMNS[column]) {
                case "repeats" -> ProveDialog.line(trial.repeats());
                case "base" -> ProveDialog.line(trial.baseStitches().map(counting::shown));
                case "stitches" -> DeskTexts.of("proof.number", trial.stitches());
                default ->
                    trial.agrees()
                            ? DeskTexts.of("proof.chart")
                            : trial.problems().get(0);
            };
        }
    }
}
