package edgewright.desk.parts;

import static edgewright.texts.Arg.arg;

import edgewright.chart.Colour;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import javax.swing.JButton;
import javax.swing.SwingUtilities;

/** Shows a colour and lets another be chosen. */
public final class ColourButton extends JButton {
    private final transient Messages says;
    private transient Colour colour;

    public ColourButton(String name, Colour colour, Language language) {
        says = language.messages("desk/parts");
        setName(name);
        setIconTextGap(8);
        setHorizontalAlignment(LEADING);
        setToolTipText(says.text("colour-button-tip"));
        set(colour);
        addActionListener(event -> {
            ColourDialog dialog = new ColourDialog(SwingUtilities.getWindowAncestor(this), this.colour, language);
            if (dialog.ask()) {
                set(dialog.colour());
            }
        });
    }

    public Colour colour() {
        return colour;
    }

    private void set(Colour chosen) {
        Colour before = colour;
        colour = chosen;
        setIcon(new YarnCard(chosen, 16));
        setText(chosen.toString());
        getAccessibleContext().setAccessibleName(says.text("colour-button", arg("colour", chosen.toString())));
        firePropertyChange("colour", before, chosen);
    }
}
