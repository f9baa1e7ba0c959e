package edgewright.desk.piece;

import static edgewright.texts.Arg.arg;

import edgewright.chart.Counting;
import edgewright.desk.fitting.Piece;
import edgewright.desk.fitting.PieceCounts;
import edgewright.desk.fitting.PieceTexts;
import edgewright.desk.parts.Forms;
import edgewright.desk.parts.Look;
import edgewright.desk.parts.TypingListener;
import edgewright.desk.parts.WhileShown;
import edgewright.desk.work.ChartView;
import edgewright.desk.work.Workbench;
import edgewright.fit.BackLayer;
import edgewright.fit.ChangeRounds;
import edgewright.texts.Messages;
import java.awt.Dimension;
import java.awt.Window;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import javax.swing.DefaultComboBoxModel;
import javax.swing.JComboBox;
import javax.swing.JDialog;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTabbedPane;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.JToggleButton;
import net.miginfocom.swing.MigLayout;

/**
 * The border of the chart on a real piece: the piece is drawn as a box, what was counted is typed at its sides, and everything
 * that follows is shown at once. It stays beside the chart and goes along with it.
 */
public final class PieceWindow extends JDialog {
    private static final int WIDTH_PX = 1180;
    private static final int HEIGHT_PX = 800;

    private final transient Messages says;
    private final transient Messages common;
    private final transient Piece piece;
    private final transient ChartView view;
    private final PieceDrawing drawing;
    private final Map<Piece.Way, JToggleButton> ways = new EnumMap<>(Piece.Way.class);
    private final JComboBox<Piece.CountedIn> round = new JComboBox<>();
    private final JLabel roundLabel = new JLabel();
    private final JComboBox<Counting> counting = new JComboBox<>(Counting.values());
    private final JPanel front = new JPanel(new MigLayout("insets 0, gap 6"));
    private final JTextField frontCounts = new JTextField(12);
    private final JComboBox<Integer> frontRound = new JComboBox<>();
    private final JPanel ratio = row("[][66!, fill][][66!, fill][]");
    private final JTextArea size = Forms.prose("");
    private transient List<Piece.CountedIn> offered = List.of();
    private boolean following;

    public PieceWindow(Window owner, Workbench bench, ChartView view) {
        super(owner, ModalityType.MODELESS);
        says = view.language().messages("desk/piece");
        common = view.language().messages("desk/common");
        setTitle(says.text("piece-title"));
        this.view = view;
        setName("pieceWindow");
        piece = new Piece(bench.chart(), view.counting(), view.language());
        drawing = new PieceDrawing(piece, view.language());
        JPanel left = new JPanel(new MigLayout("insets 0, gap 0, fill", "[grow, fill]", "[][grow, fill][]"));
        left.add(above(), "wrap");
        left.add(drawing, "wmin 640, hmin 440, wrap");
        left.add(below());
        JPanel content = new JPanel(new MigLayout(
                "insets 0, gap 0, fill",
                "[grow, fill, shrinkprio 50][310:400:400, fill, shrinkprio 200]",
                "[grow, fill]"));
        content.add(left);
        content.add(answers(), "wmin 0");
        setContentPane(content);
        WhileShown laying = new WhileShown(this, () -> piece.lay(bench.chart()));
        bench.listen(change -> {
            if (change.ofChart()) {
                laying.run();
            }
        });
        view.listen(change -> piece.count(view.counting()));
        piece.listen(this::follow);
        follow();
        open(owner);
    }

    /** Where it opens and with what it begins, and what closes it. */
    private void open(Window owner) {
        addWindowListener(new WindowAdapter() {
            @Override
            public void windowOpened(WindowEvent event) {
                drawing.field(edgewright.chart.Side.FIRST).requestFocusInWindow();
            }
        });
        Forms.onEscape(this, () -> setVisible(false));
        setSize(Look.onScreen(owner, WIDTH_PX, HEIGHT_PX));
        setMinimumSize(new Dimension(1020, 620));
        setLocationRelativeTo(owner);
    }

    Piece piece() {
        return piece;
    }

    /** How the sides are known, and in which round and way they were counted. */
    private JPanel above() {
        JPanel above = new JPanel(new MigLayout("insets 10 14 10 14, gap 6, hidemode 3", "[]12:push[][][]"));
        JPanel choice = new JPanel(new MigLayout("insets 0, gap 0"));
        for (Piece.Way way : Piece.Way.values()) {
            JToggleButton button = Forms.caption(
                    new JToggleButton(), says.text("piece-way-" + way.name()), says.text("piece-wayTip-" + way.name()));
            button.setName("piece.way." + way.name());
            button.addActionListener(event -> piece.take(way));
            ways.put(way, button);
            choice.add(button);
        }
        Forms.oneOf(List.copyOf(ways.values()));
        above.add(choice);
        round.setName("piece.countedIn");
        round.setMaximumRowCount(16);
        round.setRenderer(Forms.renderer((Piece.CountedIn in) -> roundName(in)));
        round.addActionListener(event -> {
            if (!following && round.getSelectedItem() instanceof Piece.CountedIn in) {
                piece.countIn(in);
            }
        });
        counting.setName("piece.counting");
        counting.getAccessibleContext().setAccessibleName(common.text("rounds-counting"));
        counting.setRenderer(Forms.renderer((Counting way) -> common.text("counting-" + way.name())));
        counting.addActionListener(event -> view.count((Counting) counting.getSelectedItem()));
        above.add(Forms.label(roundLabel, says.text("piece-countedIn"), round));
        above.add(round, "wmin 90");
        above.add(counting, "wmin 90");
        layOutFront();
        above.add(front, "newline, span");
        layOutRatio();
        above.add(ratio);
        return above;
    }

    /** How many stitches are picked up along how many rows. */
    private void layOutRatio() {
        JTextField stitches = number("piece.ratio.stitches", piece.ratioStitches());
        JTextField rows = number("piece.ratio.rows", piece.ratioRows());
        onTyping(() -> piece.ratio(stitches.getText(), rows.getText()), stitches, rows);
        ratio.add(Forms.label(says.text("piece-ratio-stitches"), stitches));
        ratio.add(stitches);
        ratio.add(Forms.label(says.text("piece-ratio-rows"), rows));
        ratio.add(rows);
        ratio.add(new JLabel(says.text("piece-ratio-end")));
    }

    /** The swatch, and what it says of the size. */
    private JPanel below() {
        JPanel below = new JPanel(
                new MigLayout("insets 10 14 10 14, gap 6", "[][66!, fill][][66!, fill][grow, fill]", "[][]"));
        JTextField across = number("piece.swatch.stitches", piece.swatchStitches());
        JTextField down = number("piece.swatch.rounds", piece.swatchRounds());
        onTyping(
                () -> {
                    if (!following) {
                        piece.swatch(across.getText(), down.getText());
                    }
                },
                across,
                down);
        piece.listen(() -> {
            following = true;
            follow(across, piece.swatchStitches());
            follow(down, piece.swatchRounds());
            following = false;
        });
        below.add(Forms.label(says.text("piece-swatch-stitches"), across));
        below.add(across);
        below.add(Forms.label(says.text("piece-swatch-rounds"), down));
        below.add(down);
        below.add(new JLabel(says.text("piece-swatch-end")), "wrap");
        size.setName("piece.size");
        below.add(size, "span, growx, wmin 0, hmin 34");
        return below;
    }

    private static void follow(JTextField field, String text) {
        if (!field.getText().equals(text)) {
            field.setText(text);
        }
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
        return answers;
    }

    private static JPanel row(String columns) {
        JPanel row = new JPanel(new MigLayout("insets 0, gap 6", columns));
        row.setOpaque(false);
        return row;
    }

    private static JTextField number(String name, String value) {
        JTextField field = new JTextField(value);
        field.setName(name);
        return field;
    }

    /** What was counted on the front of a double border. */
    private void layOutFront() {
        front.add(Forms.label(says.text("piece-front"), frontCounts));
        frontCounts.setName("piece.front");
        front.add(frontCounts, "wmin 120");
        frontRound.setName("piece.frontRound");
        frontRound.getAccessibleContext().setAccessibleName(says.text("piece-front-round"));
        frontRound.setRenderer(Forms.renderer((Integer in) -> PieceTexts.round(piece, in)));
        frontRound.addActionListener(event -> countFront());
        front.add(frontRound, "wmin 90");
        onTyping(this::countFront, frontCounts);
    }

    private void countFront() {
        if (!following && frontRound.getSelectedItem() instanceof Integer in) {
            piece.front(in, frontCounts.getText());
        }
    }

    private static void onTyping(Runnable deed, JTextField... fields) {
        for (JTextField field : fields) {
            field.getDocument().addDocumentListener(new TypingListener(deed));
        }
    }

    private String roundName(Piece.CountedIn in) {
        boolean whole = piece.chart().raggedSections().isEmpty();
        OptionalInt best = whole ? ChangeRounds.of(piece.chart()).counting() : OptionalInt.empty();
        boolean isBest = !in.back() && best.isPresent() && best.getAsInt() == in.round();
        return isBest
                ? says.text("piece-round-best", arg("round", PieceTexts.round(piece, in)))
                : PieceTexts.round(piece, in);
    }

    /** Offers the rounds of the chart as it is now; the lists are left alone, and open, while they are the same. */
    private void fillRounds() {
        List<Piece.CountedIn> all = new ArrayList<>();
        int rounds = piece.chart().rounds().size();
        for (int r = 0; r <= rounds; r++) {
            all.add(new Piece.CountedIn(false, r));
        }
        if (piece.chart().making().back().isPresent()) {
            new BackLayer(piece.chart().border(), rounds)
                    .rounds()
                    .forEach(back -> all.add(new Piece.CountedIn(true, back.number())));
        }
        if (!all.equals(offered)) {
            offered = List.copyOf(all);
            round.setModel(new DefaultComboBoxModel<>(all.toArray(Piece.CountedIn[]::new)));
            frontRound.setModel(new DefaultComboBoxModel<>(
                    IntStream.rangeClosed(0, rounds).boxed().toArray(Integer[]::new)));
        }
        // Which round is the best to count in depends on the stitches too.
        round.repaint();
    }

    private void follow() {
        following = true;
        fillRounds();
        round.setSelectedItem(piece.countedIn());
        counting.setSelectedItem(piece.counting());
        ways.get(piece.way()).setSelected(true);
        boolean counted = piece.way() == Piece.Way.COUNTED;
        round.setVisible(counted);
        roundLabel.setVisible(counted);
        counting.setVisible(counted);
        ratio.setVisible(piece.way() == Piece.Way.ROWS);
        front.setVisible(counted && piece.countedIn().back());
        frontRound.setSelectedItem(piece.frontRound());
        String said = String.join(" ", piece.outcome().size());
        if (!size.getText().equals(said)) {
            size.setText(said);
        }
        following = false;
    }
}
