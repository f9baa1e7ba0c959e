package edgewright.desk.parts;

import static edgewright.texts.Arg.arg;

import edgewright.chart.Colour;
import edgewright.desk.work.YarnShelf;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import java.awt.Color;
import java.awt.Window;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JColorChooser;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.UIManager;
import javax.swing.colorchooser.AbstractColorChooserPanel;
import net.miginfocom.swing.MigLayout;

/** Chooses the colour of a yarn: from a shelf of yarns of the marsh, by hue and lightness, or written as #rrggbb. */
final class ColourDialog extends FormDialog {
    private final transient Messages says;
    private final JTextField written = new JTextField(8);
    private final JColorChooser chooser;
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
        form().add(shelf(), "span, growx");
        form().add(chooser, "span, growx");
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
}
