package edgewright.desk.parts;

import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;

/** Does the same whatever happens to a text. */
public record TypingListener(Runnable deed) implements DocumentListener {
    @Override
    public void insertUpdate(DocumentEvent event) {
        deed.run();
    }

    @Override
    public void removeUpdate(DocumentEvent event) {
        deed.run();
    }

    @Override
    public void changedUpdate(DocumentEvent event) {
        deed.run();
    }
}
