package edgewright.desk.parts;

import edgewright.chart.Colour;
import edgewright.desk.work.DeskTexts;
import edgewright.desk.work.YarnShelf;
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
    private final JTextField written = new JTextField(8);
    private final JColorChooser chooser;
    private boolean following;

    ColourDialog(Window owner, Colour before) {
        super(owner, "colour");
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
        field("colour.written", written);
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
            return Optional.of(DeskTexts.of("colour.objection"));
        }
    }

    private JPanel shelf() {
        JPanel shelf = new JPanel(new MigLayout("insets 0, gap 4, wrap 8", "[grow, fill, sg]"));
        for (Colour colour : YarnShelf.COLOURS) {
            JButton card = new JButton(new YarnCard(colour, 22));
            card.setName("shelf" + colour);
            card.setToolTipText(colour.toString());
            card.getAccessibleContext().setAccessibleName(DeskTexts.of("colour.button", colour));
            card.addActionListener(event -> written.setText(colour.toString()));
            shelf.add(card);
        }
        return shelf;
    }
}
