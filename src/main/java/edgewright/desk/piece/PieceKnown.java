package edgewright.desk.piece;

import static edgewright.texts.Arg.arg;

import edgewright.chart.Counting;
import edgewright.desk.fitting.Piece;
import edgewright.desk.fitting.PieceChange;
import edgewright.desk.fitting.PieceTexts;
import edgewright.desk.parts.Forms;
import edgewright.desk.parts.WrappingRow;
import edgewright.desk.work.ChartView;
import edgewright.fit.BackLayer;
import edgewright.fit.ChangeRounds;
import edgewright.texts.Messages;
import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import javax.swing.BorderFactory;
import javax.swing.DefaultComboBoxModel;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JToggleButton;
import net.miginfocom.swing.MigLayout;

/** How the sides of a piece are known: counted or measured, in which round and way, and what was counted on the front. */
final class PieceKnown extends JPanel {
    private static final String NOTHING = "nothing";

    private final transient Messages says;
    private final transient Messages common;
    private final transient Piece piece;
    private final transient ChartView view;
    private final Map<Piece.Way, JToggleButton> ways = new EnumMap<>(Piece.Way.class);
    private final JComboBox<Piece.CountedIn> round = new JComboBox<>();
    private final JComboBox<Counting> counting = new JComboBox<>(Counting.values());
    /** What is asked of each way, in one place, so that what lies below it never moves. */
    private final CardLayout card = new CardLayout();

    private final JPanel asked = new JPanel(card);
    private final JPanel front = new JPanel(new MigLayout("insets 0 14 6 14, gap 6"));
    private final TypedText frontCounts;
    private final JComboBox<Integer> frontRound = new JComboBox<>();

    PieceKnown(Piece piece, ChartView view) {
        super(new BorderLayout());
        this.piece = piece;
        this.view = view;
        says = view.language().messages("desk/piece");
        common = view.language().messages("desk/common");
        frontCounts = new TypedText("piece.front", 12).whenTyped(text -> piece.front(piece.frontRound(), text));
        WrappingRow row = new WrappingRow(8, 6);
        row.setBorder(BorderFactory.createEmptyBorder(4, 6, 2, 6));
        row.add(ways());
        asked.add(counted(), Piece.Way.COUNTED.name());
        asked.add(new JPanel(), NOTHING);
        asked.add(ratio(), Piece.Way.ROWS.name());
        row.add(asked);
        layOutFront();
        add(row, BorderLayout.CENTER);
        add(front, BorderLayout.SOUTH);
        piece.listen(this::changed);
        fillRounds();
        follow();
    }

    private JPanel ways() {
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
        return choice;
    }

    private JPanel counted() {
        round.setName("piece.countedIn");
        round.setMaximumRowCount(16);
        round.setRenderer(Forms.renderer((Piece.CountedIn in) -> roundName(in)));
        round.addActionListener(event -> piece.countIn(round.getItemAt(round.getSelectedIndex())));
        counting.setName("piece.counting");
        counting.getAccessibleContext().setAccessibleName(common.text("rounds-counting"));
        counting.setRenderer(Forms.renderer((Counting way) -> common.text("counting-" + way.name())));
        counting.setSelectedItem(piece.counting());
        counting.addActionListener(event -> view.count(counting.getItemAt(counting.getSelectedIndex())));
        JPanel counted = new JPanel(new MigLayout("insets 0, gap 6"));
        counted.add(Forms.label(says.text("piece-countedIn"), round));
        counted.add(round, "wmin 90");
        counted.add(counting, "wmin 90");
        return counted;
    }

    /** How many stitches are picked up along how many rows. */
    private JPanel ratio() {
        TypedText stitches = new TypedText("piece.ratio.stitches", 3);
        stitches.setText(piece.ratioStitches());
        TypedText rows = new TypedText("piece.ratio.rows", 3);
        rows.setText(piece.ratioRows());
        stitches.whenTyped(text -> piece.ratio(text, rows.getText()));
        rows.whenTyped(text -> piece.ratio(stitches.getText(), text));
        JPanel ratio = new JPanel(new MigLayout("insets 0, gap 6"));
        ratio.add(Forms.label(says.text("piece-ratio-stitches"), stitches));
        ratio.add(stitches);
        ratio.add(Forms.label(says.text("piece-ratio-rows"), rows));
        ratio.add(rows);
        ratio.add(new JLabel(says.text("piece-ratio-end")));
        return ratio;
    }

    /** What was counted on the front of a double border. */
    private void layOutFront() {
        front.add(Forms.label(says.text("piece-front"), frontCounts));
        front.add(frontCounts, "wmin 120");
        frontRound.setName("piece.frontRound");
        frontRound.getAccessibleContext().setAccessibleName(says.text("piece-front-round"));
        frontRound.setRenderer(Forms.renderer((Integer in) -> PieceTexts.round(piece, in)));
        frontRound.addActionListener(
                event -> piece.front(frontRound.getItemAt(frontRound.getSelectedIndex()), piece.frontCounts()));
        front.add(frontRound, "wmin 90");
    }

    private String roundName(Piece.CountedIn in) {
        boolean whole = piece.chart().raggedSections().isEmpty();
        OptionalInt best = whole ? ChangeRounds.of(piece.chart()).counting() : OptionalInt.empty();
        boolean isBest = !in.back() && best.isPresent() && best.getAsInt() == in.round();
        return isBest
                ? says.text("piece-round-best", arg("round", PieceTexts.round(piece, in)))
                : PieceTexts.round(piece, in);
    }

    private boolean isLayered() {
        return piece.chart().making().back().isPresent();
    }

    /** Offers the rounds of the chart as it is now; the lists are left alone, and open, while they are the same. */
    private void fillRounds() {
        List<Piece.CountedIn> all = new ArrayList<>();
        int rounds = piece.chart().rounds().size();
        for (int r = 0; r <= rounds; r++) {
            all.add(new Piece.CountedIn(false, r));
        }
        if (isLayered()) {
            new BackLayer(piece.chart().border(), rounds)
                    .rounds()
                    .forEach(back -> all.add(new Piece.CountedIn(true, back.number())));
        }
        offer(round, all, piece.countedIn());
        offer(frontRound, IntStream.rangeClosed(0, rounds).boxed().toList(), piece.frontRound());
        // Which round is the best to count in depends on the stitches too.
        round.repaint();
    }

    private static <T> void offer(JComboBox<T> box, List<T> items, T chosen) {
        List<T> offered =
                IntStream.range(0, box.getItemCount()).mapToObj(box::getItemAt).toList();
        if (!items.equals(offered)) {
            DefaultComboBoxModel<T> model = new DefaultComboBoxModel<>();
            items.forEach(model::addElement);
            model.setSelectedItem(chosen);
            box.setModel(model);
        }
    }

    private void changed(PieceChange change) {
        if (change == PieceChange.CHART) {
            fillRounds();
        }
        follow();
    }

    /** Shows the piece as it is. Whatever is chosen here then is what it says already, and changes nothing. */
    private void follow() {
        round.setSelectedItem(piece.countedIn());
        counting.setSelectedItem(piece.counting());
        ways.get(piece.way()).setSelected(true);
        card.show(
                asked, piece.way() == Piece.Way.MEASURED ? NOTHING : piece.way().name());
        boolean ofBack = piece.way() == Piece.Way.COUNTED && piece.countedIn().back();
        // A row that comes only with the back rounds would push the drawing away from under the mouse.
        front.setVisible(isLayered());
        frontCounts.setEnabled(ofBack);
        frontRound.setEnabled(ofBack);
        frontRound.setSelectedItem(piece.frontRound());
        frontCounts.follow(piece.frontCounts());
    }
}
