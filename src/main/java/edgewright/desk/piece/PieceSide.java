package edgewright.desk.piece;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.count;

import edgewright.chart.Side;
import edgewright.desk.fitting.Piece;
import edgewright.desk.fitting.PieceOutcome;
import edgewright.desk.fitting.PieceTexts;
import edgewright.desk.parts.Look;
import edgewright.desk.parts.TypingListener;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.SwingConstants;
import net.miginfocom.swing.MigLayout;

/** What stands at one side of the drawing: the field to type in, the count that closes, and the sizes next to it. */
final class PieceSide extends JPanel {
    private final transient Language language;
    private final transient Messages says;
    private final transient Piece piece;
    private final Side side;
    private final JTextField field = new JTextField(5);
    private final JLabel unit = Look.quiet(" ");
    private final JLabel wanted = new JLabel(" ", SwingConstants.CENTER);
    private final JButton smaller = new JButton();
    private final JButton larger = new JButton();
    private final JLabel change = new JLabel(" ", SwingConstants.CENTER);
    private boolean following;

    PieceSide(Piece piece, Side side, Language language) {
        super(new MigLayout("insets 0, gap 4 3", "[center, grow]"));
        this.language = language;
        says = language.messages("desk/piece");
        this.piece = piece;
        this.side = side;
        setOpaque(false);
        JLabel name = new JLabel(PieceTexts.sideName(piece, side));
        name.putClientProperty("FlatLaf.styleClass", "semibold");
        name.setLabelFor(field);
        field.setName("piece." + side.name());
        field.setHorizontalAlignment(SwingConstants.CENTER);
        wanted.setName("piece.wanted." + side.name());
        wanted.putClientProperty("FlatLaf.styleClass", "h2");
        change.setName("piece.change." + side.name());
        unit.putClientProperty("FlatLaf.styleClass", "small");
        change.putClientProperty("FlatLaf.styleClass", "small");
        layOut(name);
        listen();
    }

    JTextField field() {
        return field;
    }

    private void layOut(JLabel name) {
        button(smaller, "piece.smaller." + side.name(), -1);
        button(larger, "piece.larger." + side.name(), 1);
        JPanel sizes = new JPanel(new MigLayout("insets 0, gap 7", "[52!, fill][center, 46::][52!, fill]"));
        sizes.setOpaque(false);
        sizes.add(smaller);
        sizes.add(wanted);
        sizes.add(larger);
        if (side.isLevel()) {
            add(name, "split 3, gapright 6");
            add(field, "width 72!");
            add(unit, "gapleft 6, wrap");
        } else {
            add(name, "wrap");
            add(field, "width 72!, wrap");
            add(unit, "wrap");
        }
        add(sizes, "wrap");
        add(change);
    }

    private void button(JButton button, String name, int step) {
        button.setName(name);
        button.getAccessibleContext()
                .setAccessibleName(says.text(
                        "piece-field",
                        arg("side", PieceTexts.sideName(piece, side)),
                        arg("unit", says.text("piece-tab-sizes"))));
        button.putClientProperty("FlatLaf.styleClass", "small");
        button.setMargin(new java.awt.Insets(1, 2, 1, 2));
        button.addActionListener(event -> piece.step(side, step));
    }

    private void listen() {
        field.getDocument().addDocumentListener(new TypingListener(this::typed));
    }

    private void typed() {
        if (!following) {
            piece.type(side, field.getText());
        }
    }

    /** Shows what comes of this side now. */
    void follow() {
        PieceOutcome outcome = piece.outcome();
        following = true;
        if (!field.getText().equals(piece.typed(side))) {
            field.setText(piece.typed(side));
        }
        following = false;
        String unitText = PieceTexts.unit(piece, side);
        unit.setText(unitText);
        field.getAccessibleContext()
                .setAccessibleName(
                        says.text("piece-field", arg("side", PieceTexts.sideName(piece, side)), arg("unit", unitText)));
        // A side left empty is like the one opposite, and shows so.
        field.putClientProperty("JTextField.placeholderText", piece.typed(side.opposite()));
        field.putClientProperty("JComponent.outline", outcome.wrong().contains(side) ? "error" : null);
        Optional<PieceOutcome.OfSide> of = outcome.of(side);
        wanted.setVisible(of.isPresent());
        change.setVisible(of.isPresent());
        smaller.setVisible(of.isPresent());
        larger.setVisible(of.isPresent());
        of.ifPresent(this::show);
        repaint();
    }

    private void show(PieceOutcome.OfSide of) {
        String role = of.change() == 0 ? "good" : "accent";
        wanted.setText(language.count(of.wanted()));
        Look.write(wanted, role);
        wanted.getAccessibleContext()
                .setAccessibleName(says.text(
                        "piece-wanted", arg("side", PieceTexts.sideName(piece, side)), count("stitches", of.wanted())));
        boolean bare = piece.way() != Piece.Way.COUNTED;
        change.setText(
                bare
                        ? says.text("piece-repeats", count("repeats", of.repeats()))
                        : says.text(
                                "piece-change-line",
                                arg("change", PieceTexts.change(piece, of.change())),
                                count("repeats", of.repeats())));
        Look.write(change, role);
        String sideName = PieceTexts.sideName(piece, side);
        smaller.setEnabled(of.smaller().isPresent());
        if (of.smaller().isPresent()) {
            int stitches = of.smaller().getAsInt();
            name(
                    smaller,
                    says.text("piece-smaller", count("stitches", stitches)),
                    says.text("piece-smaller-heard", arg("side", sideName), count("stitches", stitches)));
        } else {
            name(smaller, says.text("piece-noSize"), says.text("piece-noSize-heard", arg("side", sideName)));
        }
        name(
                larger,
                says.text("piece-larger", count("stitches", of.larger())),
                says.text("piece-larger-heard", arg("side", sideName), count("stitches", of.larger())));
    }

    private static void name(JButton button, String text, String heard) {
        button.setText(text);
        button.setToolTipText(heard);
        button.getAccessibleContext().setAccessibleName(heard);
    }
}
