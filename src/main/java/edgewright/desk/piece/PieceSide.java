package edgewright.desk.piece;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.count;

import edgewright.chart.Side;
import edgewright.desk.fitting.Piece;
import edgewright.desk.fitting.PieceOutcome;
import edgewright.desk.fitting.PieceTexts;
import edgewright.desk.parts.Look;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import java.awt.Insets;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.SwingConstants;
import net.miginfocom.swing.MigLayout;

/**
 * What stands at one side of the drawing: the field to type in, the count that closes, and the sizes next to it. All of it has
 * its place whether it is seen or not, so that nothing moves under the hands of whoever types.
 */
final class PieceSide extends JPanel {
    private static final String LEVEL_SIZES = "[58!, fill][center, 62::][58!, fill]";

    /** At the upright sides, where there is more room down than across, the count stands above the sizes next to it. */
    private static final String UPRIGHT_SIZES = "[58!, fill][58!, fill]";

    private final transient Language language;
    private final transient Messages says;
    private final transient Piece piece;
    private final Side side;
    private final TypedText field;
    private final JLabel unit = Look.quiet(" ");
    private final JLabel wanted = new JLabel(" ", SwingConstants.CENTER);
    private final JButton smaller = new JButton(" ");
    private final JButton larger = new JButton(" ");
    private final JLabel change = new JLabel(" ", SwingConstants.CENTER);

    PieceSide(Piece piece, Side side, Language language) {
        super(new MigLayout("insets 0, gap 4 3", "[center, grow]"));
        this.language = language;
        says = language.messages("desk/piece");
        this.piece = piece;
        this.side = side;
        setOpaque(false);
        JLabel name = new JLabel(PieceTexts.sideName(piece, side));
        name.putClientProperty("FlatLaf.styleClass", "semibold");
        field = new TypedText("piece." + side.name(), 5).whenTyped(text -> piece.type(side, text));
        name.setLabelFor(field);
        field.setHorizontalAlignment(SwingConstants.CENTER);
        wanted.setName("piece.wanted." + side.name());
        wanted.putClientProperty("FlatLaf.styleClass", "h2");
        change.setName("piece.change." + side.name());
        unit.putClientProperty("FlatLaf.styleClass", "small");
        change.putClientProperty("FlatLaf.styleClass", "small");
        layOut(name);
    }

    JTextField field() {
        return field;
    }

    private void layOut(JLabel name) {
        button(smaller, "piece.smaller." + side.name(), -1);
        button(larger, "piece.larger." + side.name(), 1);
        // The field stands in the middle, however long the words on both sides of it are.
        JPanel counted =
                new JPanel(new MigLayout("insets 0, gap 6 2", "[right, grow, sg]0[72!, fill]0[left, grow, sg]"));
        counted.setOpaque(false);
        if (side.isLevel()) {
            counted.add(name, "gapright 6");
            counted.add(field);
            counted.add(unit, "gapleft 6");
        } else {
            counted.add(name, "span, center, wrap");
            counted.add(field, "skip, wrap");
            counted.add(unit, "span, center");
        }
        JPanel sizes = new JPanel(new MigLayout("insets 0, gap 7 3", side.isLevel() ? LEVEL_SIZES : UPRIGHT_SIZES));
        sizes.setOpaque(false);
        add(counted, "growx, wrap");
        sizes.add(smaller);
        if (side.isLevel()) {
            sizes.add(wanted);
        } else {
            add(wanted, "wrap");
        }
        sizes.add(larger);
        add(sizes, "wrap");
        add(change, "wmin 140");
    }

    private void button(JButton button, String name, int step) {
        button.setName(name);
        button.getAccessibleContext()
                .setAccessibleName(says.text(
                        "piece-field",
                        arg("side", PieceTexts.sideName(piece, side)),
                        arg("unit", says.text("piece-tab-sizes"))));
        button.putClientProperty("FlatLaf.styleClass", "small");
        button.setMargin(new Insets(1, 2, 1, 2));
        button.addActionListener(event -> piece.step(side, step));
    }

    /** Shows what comes of this side now. */
    void follow() {
        PieceOutcome outcome = piece.outcome();
        field.follow(piece.typed(side));
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
