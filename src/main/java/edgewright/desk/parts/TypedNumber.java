package edgewright.desk.parts;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.plain;
import static edgewright.texts.Arg.shortest;

import edgewright.texts.Messages;
import java.text.ParseException;
import java.text.ParsePosition;
import javax.swing.JFormattedTextField;
import javax.swing.JSpinner;
import javax.swing.KeyStroke;
import javax.swing.SpinnerNumberModel;
import javax.swing.text.DefaultFormatterFactory;
import javax.swing.text.NumberFormatter;

/**
 * A number that is typed or stepped through. What is typed stays as it is typed: a spinner of its own accord puts its last
 * number back over what it cannot read, and nobody hears why.
 */
public final class TypedNumber {
    private TypedNumber() {}

    /** Makes the number follow what is typed wherever that is one, and leaves Enter and Escape to the window around it. */
    static void in(JSpinner spinner) {
        boolean whole = spinner.getValue() instanceof Integer;
        JSpinner.NumberEditor editor = new JSpinner.NumberEditor(spinner, whole ? "0" : "0.###");
        spinner.setEditor(editor);
        JFormattedTextField typed = editor.getTextField();
        typed.setFormatterFactory(new DefaultFormatterFactory(new Exactly(editor)));
        typed.setFocusLostBehavior(JFormattedTextField.PERSIST);
        typed.getInputMap().put(KeyStroke.getKeyStroke("ESCAPE"), "none");
        typed.getDocument().addDocumentListener(new TypingListener(() -> mark(spinner)));
    }

    /** What is typed in. */
    public static JFormattedTextField field(JSpinner spinner) {
        return ((JSpinner.DefaultEditor) spinner.getEditor()).getTextField();
    }

    /** Whether what is typed is a number within the limits, to its last character. */
    static boolean isRead(JSpinner spinner) {
        return isRead(field(spinner).getText(), (JSpinner.NumberEditor) spinner.getEditor());
    }

    private static boolean isRead(String typed, JSpinner.NumberEditor editor) {
        String text = typed.strip();
        SpinnerNumberModel model = editor.getModel();
        ParsePosition end = new ParsePosition(0);
        Number number = editor.getFormat().parse(text, end);
        if (number == null || end.getIndex() < text.length()) {
            return false;
        }
        double value = number.doubleValue();
        boolean whole = model.getValue() instanceof Integer;
        return value >= ((Number) model.getMinimum()).doubleValue()
                && value <= ((Number) model.getMaximum()).doubleValue()
                && (!whole || value == Math.rint(value));
    }

    /** What is expected instead of what is typed, in one sentence that begins with the name of the field. */
    static String objection(JSpinner spinner, String label, Messages says) {
        SpinnerNumberModel model = (SpinnerNumberModel) spinner.getModel();
        Number least = (Number) model.getMinimum();
        Number most = (Number) model.getMaximum();
        return model.getValue() instanceof Integer
                ? says.text(
                        "number-objection-whole",
                        arg("field", label),
                        plain("least", least.longValue()),
                        plain("most", most.longValue()))
                : says.text(
                        "number-objection-any",
                        arg("field", label),
                        shortest("smallest", least.doubleValue(), 3),
                        shortest("largest", most.doubleValue(), 3));
    }

    private static void mark(JSpinner spinner) {
        spinner.putClientProperty("JComponent.outline", isRead(spinner) ? null : "error");
    }

    /** Takes nothing for a number that only begins like one, and hands on each number as it is typed. */
    private static final class Exactly extends NumberFormatter {
        private final transient JSpinner.NumberEditor editor;

        Exactly(JSpinner.NumberEditor editor) {
            super(editor.getFormat());
            this.editor = editor;
            setValueClass(editor.getModel().getValue().getClass());
            setCommitsOnValidEdit(true);
        }

        @Override
        public Object stringToValue(String text) throws ParseException {
            if (!isRead(text, editor)) {
                throw new ParseException(text, 0);
            }
            return super.stringToValue(text);
        }
    }
}
