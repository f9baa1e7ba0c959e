package edgewright.desk.output;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.count;

import edgewright.chart.Counting;
import edgewright.desk.parts.FittedTable;
import edgewright.desk.parts.Forms;
import edgewright.desk.parts.Look;
import edgewright.desk.parts.TextColumn;
import edgewright.proof.SizeProofs.Trial;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.Window;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.util.List;
import javax.swing.JDialog;
import javax.swing.JScrollPane;
import javax.swing.SwingConstants;
import javax.swing.table.AbstractTableModel;
import javax.swing.table.DefaultTableCellRenderer;

/** For which sizes the words were worked, and what came of it. It stays beside the chart until it is closed. */
final class ProofWindow extends JDialog {
    private static final String[] COLUMNS = {"repeats", "base", "stitches", "outcome"};

    private final transient Language language;
    private final transient Messages says;

    ProofWindow(Window owner, List<Trial> trials, Counting counting, Language language) {
        super(owner, ModalityType.MODELESS);
        this.language = language;
        says = language.messages("desk/output");
        setTitle(says.text("proof-title"));
        setName("proofWindow");
        // Each proof has a window of its own.
        setDefaultCloseOperation(DISPOSE_ON_CLOSE);
        TextColumn column = new TextColumn(14, 18, 10);
        column.heading(outcome(trials, says));
        column.prose(says.text("proof-explain"));
        trials.stream().filter(trial -> !trial.agrees()).limit(1).forEach(trial -> {
            column.heading(says.text("proof-first", arg("repeats", ProveDialog.line(trial.repeats()))));
            trial.problems().forEach(column::prose);
        });
        FittedTable table = new FittedTable(new Model(trials, counting), "proofTable", says.text("proof-title"));
        table.setIntercellSpacing(new Dimension(16, 1));
        DefaultTableCellRenderer figures = new DefaultTableCellRenderer();
        figures.setHorizontalAlignment(SwingConstants.RIGHT);
        table.getColumnModel().getColumn(List.of(COLUMNS).indexOf("stitches")).setCellRenderer(figures);
        table.fit();
        setLayout(new BorderLayout());
        add(column, BorderLayout.NORTH);
        add(new JScrollPane(table), BorderLayout.CENTER);
        addWindowListener(new WindowAdapter() {
            @Override
            public void windowOpened(WindowEvent event) {
                table.requestFocusInWindow();
            }
        });
        setSize(Look.onScreen(this, 640, 420));
        setLocationRelativeTo(owner);
        Forms.onEscape(this, () -> dispose());
    }

    /** In one sentence, for how many of the sizes the words make the chart. */
    static String outcome(List<Trial> trials, Messages says) {
        long failed = trials.stream().filter(trial -> !trial.agrees()).count();
        return failed == 0
                ? says.text("proof-agrees", count("sizes", trials.size()))
                : says.text("proof-fails", count("sizes", trials.size()), count("failed", failed));
    }

    /** A row for each size. */
    private final class Model extends AbstractTableModel {
        private final transient List<Trial> trials;
        private final Counting counting;
        private final transient Messages common = language.messages("desk/common");

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
            return says.text(
                    "proof-column-" + COLUMNS[column], arg("counting", common.text("counting-" + counting.name())));
        }

        @Override
        public Object getValueAt(int row, int column) {
            Trial trial = trials.get(row);
            return switch (COLUMNS[column]) {
                case "repeats" -> ProveDialog.line(trial.repeats());
                case "base" -> ProveDialog.line(trial.baseStitches().map(counting::shown));
                case "stitches" -> language.count(trial.stitches());
                default ->
                    trial.agrees() ? says.text("proof-chart") : trial.problems().get(0);
            };
        }
    }
}
