package edgewright.desk.parts;

import edgewright.chart.Colour;
import edgewright.desk.work.DeskTexts;
import javax.swing.JButton;
import javax.swing.SwingUtilities;

/** Shows a colour and lets another be chosen. */
public final class ColourButton extends JButton {
    private transient Colour colour;

    public ColourButton(String name, Colour colour) {
        setName(name);
        setIconTextGap(8);
        setHorizontalAlignment(LEADING);
        setToolTipText(DeskTexts.of("colour.button.tip"));
        set(colour);
        addActionListener(event -> {
            ColourDialog dialog = new ColourDialog(SwingUtilities.getWindowAncestor(this), this.colour);
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
        getAccessibleContext().setAccessibleName(DeskTexts.of("colour.button", chosen));
        firePropertyChange("colour", before, chosen);
    }
}
