package edgewright.desk.piece;

import edgewright.chart.Side;
import edgewright.desk.fitting.Piece;
import edgewright.desk.fitting.PieceCounts;
import edgewright.desk.parts.FormScroll;
import edgewright.desk.parts.Forms;
import edgewright.desk.parts.KeptSplit;
import edgewright.desk.parts.Look;
import edgewright.desk.parts.WhileShown;
import edgewright.desk.work.ChartView;
import edgewright.desk.work.Settings;
import edgewright.desk.work.ViewChange;
import edgewright.desk.work.Workbench;
import edgewright.texts.Messages;
import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.Window;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import javax.swing.JDialog;
import javax.swing.JPanel;
import javax.swing.JSplitPane;
import javax.swing.JTabbedPane;

/**
 * The border of the chart on a real piece: the piece is drawn as a box, what was counted is typed at its sides, and everything
 * that follows is shown at once. It stays beside the chart and goes along with it.
 */
public final class PieceWindow extends JDialog {
    private static final int WIDTH_PX = 1180;
    private static final int HEIGHT_PX = 800;
    private static final int LEAST_WIDTH_PX = 860;
    private static final int LEAST_HEIGHT_PX = 560;
    private static final int ANSWERS_PX = 400;
    private static final int LEAST_ANSWERS_PX = 200;

    private final transient Messages says;
    private final transient Piece piece;
    private final PieceDrawing drawing;

    /**
     * The window for a chart.
     *
     * @param settings remember how wide what is to be done is
     * @param output makes a pattern for the piece
     */
    public PieceWindow(Window owner, Workbench bench, ChartView view, Settings settings, PieceOutput output) {
        super(owner, ModalityType.MODELESS);
        says = view.language().messages("desk/piece");
        setTitle(says.text("piece-title"));
        setName("pieceWindow");
        piece = new Piece(bench.chart(), view.counting(), view.language());
        piece.hold(view.seeing().hand());
        drawing = new PieceDrawing(piece, view.language());
        KeptSplit split = new KeptSplit(
                        "pieceSplit",
                        JSplitPane.HORIZONTAL_SPLIT,
                        worked(new PieceKnown(piece, view), new PieceWanted(piece, bench, view, output)),
                        answers(),
                        KeptSplit.Keeps.SECOND,
                        ANSWERS_PX)
                .remembered(settings);
        split.name(says.text("piece-answers"), says.text("piece-fold"));
        setContentPane(split);
        WhileShown laying = new WhileShown(this, () -> piece.lay(bench.chart()));
        bench.listen(change -> {
            if (change.ofChart()) {
                laying.run();
            }
        });
        view.listen(change -> {
            if (change == ViewChange.COUNTING) {
                piece.count(view.counting());
            } else if (change == ViewChange.SEEING) {
                piece.hold(view.seeing().hand());
            }
        });
        open(owner);
    }

    /** The piece, between how its sides are known and what is wanted of it. */
    private JPanel worked(PieceKnown known, PieceWanted wanted) {
        FormScroll scroll = new FormScroll(drawing);
        JPanel worked = new JPanel(new BorderLayout()) {
            @Override
            public Dimension getMinimumSize() {
                int bar = scroll.getVerticalScrollBar().getPreferredSize().width;
                return new Dimension(drawing.getPreferredSize().width + bar, 1);
            }
        };
        worked.add(known, BorderLayout.NORTH);
        worked.add(scroll, BorderLayout.CENTER);
        worked.add(wanted, BorderLayout.SOUTH);
        worked.addComponentListener(new ComponentAdapter() {
            @Override
            public void componentResized(ComponentEvent event) {
                // Rows that wrap are known to be higher only at the width that they have now.
                known.revalidate();
                wanted.revalidate();
            }
        });
        return worked;
    }

    /** Where it opens and with what it begins, and what closes it. */
    private void open(Window owner) {
        addWindowListener(new WindowAdapter() {
            @Override
            public void windowOpened(WindowEvent event) {
                drawing.field(Side.FIRST).requestFocusInWindow();
            }
        });
        Forms.onEscape(this, () -> setVisible(false));
        setSize(Look.onScreen(owner, WIDTH_PX, HEIGHT_PX));
        setMinimumSize(Look.onScreen(owner, LEAST_WIDTH_PX, LEAST_HEIGHT_PX));
        setLocationRelativeTo(owner);
    }

    Piece piece() {
        return piece;
    }

    private JTabbedPane answers() {
        JTabbedPane answers = new JTabbedPane();
        answers.setName("pieceAnswers");
        answers.getAccessibleContext().setAccessibleName(says.text("piece-answers"));
        answers.addTab(says.text("piece-tab-answer"), new PieceAnswerPane(piece, says));
        answers.addTab(
                says.text("piece-tab-rounds"),
                new PieceTable(
                        piece, "piece.table.rounds", says.text("piece-table-rounds"), PieceCounts::rounds, says));
        answers.addTab(
                says.text("piece-tab-sizes"),
                new PieceTable(piece, "piece.table.sizes", says.text("piece-table-sizes"), PieceCounts::sizes, says));
        answers.setMinimumSize(new Dimension(Look.px(LEAST_ANSWERS_PX), 1));
        return answers;
    }
}
