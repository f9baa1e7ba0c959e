package edgewright.desk.own;

import static edgewright.texts.Arg.count;
import static edgewright.texts.Arg.decimal;

import edgewright.booklet.own.OwnFiles;
import edgewright.chart.CleanText;
import edgewright.chart.Colour;
import edgewright.chart.Extras;
import edgewright.chart.Imprint;
import edgewright.chart.OwnSection;
import edgewright.desk.parts.ColourButton;
import edgewright.desk.parts.FormDialog;
import edgewright.desk.parts.Forms;
import edgewright.desk.parts.Look;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import java.awt.Window;
import java.util.Optional;
import java.util.function.Supplier;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;

/** Who publishes a designer's patterns: an imprint is made, or changed. */
public final class ImprintDialog extends FormDialog {
    /** A sea lavender that can be read on white. */
    private static final Colour PROPOSED = Colour.parse("#5b4b8a");

    private static final int COLUMNS = 34;

    private final transient Messages says;
    private final transient Extras extras;
    private final JTextField name = new JTextField(COLUMNS);
    private final JTextField contact = new JTextField(COLUMNS);
    private final JTextField web = new JTextField(COLUMNS);
    private final JTextField copyright = new JTextField(COLUMNS);
    private final JTextArea use = new JTextArea(4, COLUMNS);
    private final JTextField logo = new JTextField(COLUMNS);
    private final JCheckBox ofItsOwn = new JCheckBox();
    private final ColourButton accent;
    private final JLabel contrast = Look.quiet(" ");

    /**
     * @param before empty for a new one
     * @param picture asks for a picture that can be the logo
     */
    public ImprintDialog(
            Window owner, Optional<Imprint> before, Supplier<Optional<String>> picture, Language language) {
        super(owner, "imprint", language);
        says = language.messages("desk/own");
        titled(says.text("imprint-title"), says.text("imprint-accept"));
        extras = before.map(Imprint::extras).orElse(Extras.NONE);
        accent = new ColourButton(
                "imprint.accent", before.flatMap(Imprint::accent).orElse(PROPOSED), language);
        before.ifPresent(this::fill);
        field("imprint.name", says.text("imprint-name"), name);
        field("imprint.contact", says.text("imprint-contact"), contact);
        field("imprint.web", says.text("imprint-web"), web);
        field("imprint.copyright", says.text("imprint-copyright"), copyright);
        useField();
        logoField(picture);
        accentField();
    }

    private void fill(Imprint imprint) {
        name.setText(imprint.name());
        contact.setText(imprint.contact());
        web.setText(imprint.web());
        copyright.setText(imprint.copyright());
        use.setText(imprint.use());
        logo.setText(imprint.logo());
        ofItsOwn.setSelected(imprint.accent().isPresent());
    }

    private void useField() {
        use.setName("imprint.use");
        use.setLineWrap(true);
        use.setWrapStyleWord(true);
        Forms.tabLeaves(use);
        watch(use);
        form().add(Forms.label(says.text("imprint-use"), use), "top, gaptop 5");
        form().add(new JScrollPane(use), "grow, pushy, wmin 0, hmin 60");
    }

    private void logoField(Supplier<Optional<String>> picture) {
        logo.setName("imprint.logo");
        watch(logo);
        JButton choose = Forms.caption(new JButton(), says.text("imprint-logo-choose"));
        choose.setName("imprint.logo.choose");
        choose.addActionListener(event -> picture.get().ifPresent(logo::setText));
        form().add(Forms.label(says.text("imprint-logo"), logo));
        form().add(logo, "split 2, wmin 0");
        form().add(choose, "growx 0");
    }

    private void accentField() {
        Forms.caption(ofItsOwn, says.text("imprint-accent-own")).setName("imprint.ofItsOwn");
        ofItsOwn.addActionListener(event -> look());
        accent.addPropertyChangeListener("colour", event -> look());
        contrast.setName("imprint.contrast");
        JLabel label = new JLabel();
        String heard = accent.getAccessibleContext().getAccessibleName();
        form().add(Forms.label(label, says.text("imprint-accent"), accent));
        // It is called by its colour, which the label would hide.
        accent.getAccessibleContext().setAccessibleName(heard);
        JPanel choice = new JPanel(new MigLayout("insets 0, gap 8"));
        choice.add(ofItsOwn);
        choice.add(accent);
        form().add(choice);
        form().add(contrast, "skip, wmin 0");
    }

    /** What the dialog says. */
    Imprint imprint() {
        return new Imprint(
                name.getText(),
                contact.getText(),
                web.getText().strip(),
                copyright.getText(),
                use.getText(),
                logo.getText().strip(),
                ofItsOwn.isSelected() ? Optional.of(accent.colour()) : Optional.empty(),
                extras);
    }

    @Override
    protected Optional<String> objection() {
        double ratio = OwnFiles.contrast(accent.colour());
        boolean own = ofItsOwn.isSelected();
        accent.setEnabled(own);
        contrast.setText(
                own
                        ? says.text(
                                "imprint-contrast",
                                decimal("ratio", ratio, 2),
                                decimal("least", OwnFiles.LEAST_CONTRAST, 1))
                        : " ");
        if (CleanText.oneLine(name.getText()).isEmpty()) {
            return Optional.of(says.text("imprint-noName"));
        }
        String address = web.getText().strip();
        if (!address.isEmpty() && !Imprint.isWebAddress(address)) {
            return Optional.of(says.text("imprint-noWeb"));
        }
        if (use.getText().length() > OwnSection.LONGEST) {
            return Optional.of(says.text("imprint-long", count("most", OwnSection.LONGEST)));
        }
        return own && ratio < OwnFiles.LEAST_CONTRAST
                ? Optional.of(says.text(
                        "imprint-pale", decimal("ratio", ratio, 2), decimal("least", OwnFiles.LEAST_CONTRAST, 1)))
                : Optional.empty();
    }
}
