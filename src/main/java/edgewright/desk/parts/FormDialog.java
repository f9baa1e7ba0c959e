package edgewright.desk.parts;

import edgewright.texts.Language;
import edgewright.texts.Messages;
import java.awt.Dimension;
import java.awt.Window;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JSpinner;
import javax.swing.JTextArea;
import javax.swing.SpinnerNumberModel;
import javax.swing.SwingUtilities;
import javax.swing.text.JTextComponent;
import net.miginfocom.swing.MigLayout;

/**
 * A dialog with a form, a line that says what is still wrong with it, and two buttons: one that does what the dialog is for and
 * can be pressed only when nothing is wrong, and one that leaves everything as it was. Enter and Escape press them. On a screen
 * that is too low for the form, the form scrolls and the buttons stay.
 */
public abstract class FormDialog extends JDialog {
    private static final int PROSE_PX = 420;

    private final JPanel form = new JPanel(new MigLayout("insets 0, gap 8 8, fillx, wrap 2", "[][grow, fill]"));
    private final FormScroll scroll = new FormScroll(form);
    private final JLabel objection = new JLabel(" ");
    /** Every number of the form, and how it is called. */
    private final Map<JSpinner, String> numbers = new LinkedHashMap<>();

    private final transient Messages says;
    private final JButton accept;
    private boolean accepted;

    /**
     * A dialog, not yet shown, that is still to be {@link #titled}.
     *
     * @param name under which tests find it
     */
    public FormDialog(Window owner, String name, Language language) {
        super(owner, ModalityType.APPLICATION_MODAL);
        says = language.messages("desk/parts");
        setName(name);
        accept = new JButton();
        accept.setName("accept");
        accept.addActionListener(event -> close(true));
        JButton cancel = Forms.caption(new JButton(), says.text("dialog-cancel"));
        cancel.setName("cancel");
        cancel.addActionListener(event -> close(false));
        objection.setName("objection");
        Look.write(objection, "error");
        JPanel content =
                new JPanel(new MigLayout("insets 18 20 16 20, gap 12, fill", "[grow, fill]", "[grow, fill][][]"));
        content.add(scroll, "wrap, hmin 0");
        content.add(objection, "wrap, wmin 0");
        content.add(cancel, "split 2, gapleft push, growx 0, tag cancel, wmin 96");
        content.add(accept, "growx 0, tag ok, wmin 96");
        setContentPane(content);
        getRootPane().setDefaultButton(accept);
        Forms.onEscape(this, () -> close(false));
    }

    /** Says what the dialog is for, and what its accepting button does: a text with an ampersand before its mnemonic. */
    protected final void titled(String title, String toAccept) {
        setTitle(title);
        Forms.caption(accept, toAccept);
    }

    /** What is still wrong with the form, in one sentence; empty if it can be accepted as it is. */
    protected abstract Optional<String> objection();

    /** Shows the dialog and waits for it; whether the form was accepted. */
    public final boolean ask() {
        look();
        pack();
        Dimension room = Look.onScreen(this, Math.max(420, getWidth()), getHeight());
        if (room.height < getHeight()) {
            int bar = scroll.getVerticalScrollBar().getPreferredSize().width;
            room = Look.onScreen(this, room.width + bar, room.height);
        }
        setMinimumSize(room);
        setSize(room);
        setLocationRelativeTo(getOwner());
        setVisible(true);
        dispose();
        return accepted;
    }

    /** Looks at the form again. */
    protected final void look() {
        Optional<String> wrong = objectionToNumbers().or(this::objection);
        accept.setEnabled(wrong.isEmpty());
        objection.setText(wrong.orElse(" "));
    }

    /** The first number that cannot be read and is asked for. */
    private Optional<String> objectionToNumbers() {
        return numbers.entrySet().stream()
                .filter(number -> number.getKey().isEnabled() && !TypedNumber.isRead(number.getKey()))
                .findFirst()
                .map(number -> TypedNumber.objection(number.getKey(), number.getValue(), says));
    }

    /** The form, two columns wide: labels and fields. */
    protected final JPanel form() {
        return form;
    }

    /**
     * Something to look at, at the right of the form, or on a tab of its own where there is too little room for both.
     *
     * @param title of that tab
     */
    protected final void beside(String title, JComponent view) {
        getContentPane().remove(scroll);
        getContentPane()
                .add(new FormBeside(scroll, form, says.text("dialog-form"), view, title), "wrap, hmin 0, wmin 0", 0);
    }

    /**
     * A field with its label, on a line of its own.
     *
     * @param name under which tests find it
     * @param text of the label, with an ampersand before its mnemonic
     */
    protected final <F extends JComponent> F field(String name, String text, F field) {
        field.setName(name);
        form.add(Forms.label(text, watched(field)));
        form.add(field, "wmin 0");
        return field;
    }

    /** A number with its label, as a {@link #field}. */
    protected final JSpinner number(String name, String text, int value, int least, int most) {
        JSpinner spinner = new JSpinner(new SpinnerNumberModel(Math.max(least, Math.min(value, most)), least, most, 1));
        number(name, text, spinner, "growx 0, wmin 90", "");
        return spinner;
    }

    /** A number with its label, each placed by its constraints; the form is not accepted while it cannot be read. */
    protected final void number(String name, String text, JSpinner spinner, String place, String labelPlace) {
        spinner.setName(name);
        JLabel label = Forms.label(text, spinner);
        form.add(label, labelPlace);
        form.add(spinner, place);
        TypedNumber.in(spinner);
        // Afterwards, since a field that loses the focus writes its number anew and is empty for a moment: whoever
        // looked then
        // would take the press of the button that is just being made for none.
        TypedNumber.field(spinner)
                .getDocument()
                .addDocumentListener(new TypingListener(() -> SwingUtilities.invokeLater(this::look)));
        spinner.addChangeListener(event -> SwingUtilities.invokeLater(this::look));
        numbers.put(spinner, label.getText());
    }

    /** A line of explanation across the form. */
    protected final void explain(String text) {
        JTextArea prose = Forms.prose(text);
        Look.write(prose, "quiet");
        prose.setFocusable(false);
        // It wraps at this width and is as high as that makes it.
        prose.setSize(Look.px(PROSE_PX), Short.MAX_VALUE);
        form.add(prose, "span, width " + Look.px(PROSE_PX) + "px!, height " + prose.getPreferredSize().height + "px!");
    }

    /** Looks at the form again whenever this field is changed. */
    protected final void watch(JComponent field) {
        watched(field);
    }

    protected static int value(JSpinner spinner) {
        return (Integer) spinner.getValue();
    }

    private JComponent watched(JComponent field) {
        if (field instanceof JTextComponent text) {
            text.getDocument().addDocumentListener(new TypingListener(this::look));
        } else if (field instanceof JSpinner spinner) {
            spinner.addChangeListener(event -> look());
        }
        return field;
    }

    private void close(boolean accept) {
        accepted = accept;
        setVisible(false);
    }
}
