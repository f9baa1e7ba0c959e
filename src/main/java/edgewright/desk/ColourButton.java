package edgewright.desk;

import edgewright.chart.Colour;
import javax.swing.JButton;
import javax.swing.SwingUtilities;

/** Shows a colour and lets another be chosen. */
final class ColourButton extends JButton {
    private transient Colour colour;

    ColourButton(String name, Colour colour) {
        setName(name);
        setIconTextGap(8);
        setHorizontalAlignment(LEADING);
        setToolTipText(Texts.of("colour.button.tip"));
        set(colour);
        addActionListener(event -> {
            ColourDialog dialog = new ColourDialog(SwingUtilities.getWindowAncestor(this), this.colour);
            if (dialog.ask()) {
                set(dialog.colour());
            }
        });
    }

    Colour colour() {
        return colour;
    }

    private void set(Colour chosen) {
        Colour before = colour;
        colour = chosen;
        setIcon(new Swatch(chosen, 16));
        setText(chosen.toString());
        getAccessibleContext().setAccessibleName(Texts.of("colour.button", chosen));
        firePropertyChange("colour", before, chosen);
    }
}
