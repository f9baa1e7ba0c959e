package edgewright.desk.parts;

import static edgewright.texts.Arg.arg;

import edgewright.chart.Colour;
import edgewright.desk.work.YarnShelf;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Window;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JColorChooser;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.SwingConstants;
import javax.swing.UIManager;
import javax.swing.colorchooser.AbstractColorChooserPanel;
import net.miginfocom.swing.MigLayout;

/** Chooses the colour of a yarn: from a shelf of yarns of the marsh, by hue and lightness, or written as #rrggbb. */
final class ColourDialog extends FormDialog {
    private final transient Messages says;
    private final JTextField written = new JTextField(8);
    private final JColorChooser chooser;
    private final ColourPair pair;
    private boolean following;

    ColourDialog(Window owner, Colour before, Language language) {
        super(owner, "colour", language);
        says = language.messages("desk/parts");
        titled(says.text("colour-title"), says.text("colour-accept"));
        chooser = new JColorChooser();
        chooser.setName("colourChooser");
        chooser.setPreviewPanel(new JPanel());
        for (AbstractColorChooserPanel panel : chooser.getChooserPanels()) {
            if (!isOfHues(panel)) {
                chooser.removeChooserPanel(panel);
            } else {
                panel.setColorTransparencySelectionEnabled(false);
            }
        }
        pair = new ColourPair(before, says);
        form().add(shelf(), "span, growx");
        form().add(chooser, "span, growx");
        form().add(pair, "span, growx");
        field("colour.written", says.text("colour-written"), written);
        written.setText(before.toString());
        chooser.getSelectionModel().addChangeListener(event -> {
            if (!following) {
                written.setText(new Colour(chooser.getColor().getRGB() & 0xffffff).toString());
            }
        });
    }

    /** Whether it is the panel of hue and lightness, whatever Java calls it on this machine. */
    private static boolean isOfHues(AbstractColorChooserPanel panel) {
        return panel.getDisplayName().equals(UIManager.getString("ColorChooser.hsvNameText", panel.getLocale()));
    }

    /** The colour as written. */
    Colour colour() {
        return Colour.parse(written.getText().strip());
    }

    @Override
    protected Optional<String> objection() {
        try {
            Colour parsed = colour();
            pair.show(parsed);
            following = true;
            chooser.setColor(new Color(parsed.rgb()));
            following = false;
            return Optional.empty();
        } catch (IllegalArgumentException e) {
            return Optional.of(says.text("colour-objection"));
        }
    }

    private JPanel shelf() {
        JPanel shelf = new JPanel(new MigLayout("insets 0, gap 4, wrap 8", "[grow, fill, sg]"));
        for (Colour colour : YarnShelf.COLOURS) {
            JButton card = new JButton(new YarnCard(colour, 22));
            card.setName("shelf" + colour);
            card.setToolTipText(colour.toString());
            card.getAccessibleContext().setAccessibleName(says.text("colour-button", arg("colour", colour.toString())));
            card.addActionListener(event -> written.setText(colour.toString()));
            shelf.add(card);
        }
        return shelf;
    }

    /** The colour that a yarn has and the one it is to have, edge to edge, so that the least difference is seen where they meet. */
    private static final class ColourPair extends JPanel {
        private static final int HEIGHT_PX = 44;

        private final transient Messages says;
        private final transient Colour before;
        private transient Colour now;

        ColourPair(Colour before, Messages says) {
            super(new MigLayout("insets 0, gap 0 3, fillx", "[grow, fill, sg][grow, fill, sg]"));
            this.says = says;
            this.before = before;
            now = before;
            setName("colour.pair");
            setOpaque(false);
            add(Look.quiet(says.text("colour-before")));
            JLabel right = Look.quiet(says.text("colour-now"));
            right.setHorizontalAlignment(SwingConstants.TRAILING);
            add(right, "wrap");
            add(new Halves(), "span, growx, height " + HEIGHT_PX);
            show(before);
        }

        /** Shows this beside the colour before. */
        void show(Colour other) {
            now = other;
            getAccessibleContext()
                    .setAccessibleName(
                            says.text("colour-pair", arg("before", before.toString()), arg("now", now.toString())));
            repaint();
        }

        private final class Halves extends JPanel {
            Halves() {
                setOpaque(false);
                setPreferredSize(new Dimension(200, HEIGHT_PX));
            }

            @Override
            protected void paintComponent(Graphics g) {
                int middle = getWidth() / 2;
                g.setColor(YarnCard.of(Look.vision().seen(before)));
                g.fillRect(0, 0, middle, getHeight());
                g.setColor(YarnCard.of(Look.vision().seen(now)));
                g.fillRect(middle, 0, getWidth() - middle, getHeight());
                g.setColor(Look.colour("quiet"));
                g.drawRect(0, 0, getWidth() - 1, getHeight() - 1);
            }
        }
    }
}
