package edgewright.desk.piece;

import edgewright.desk.parts.TypingListener;
import java.util.function.Consumer;
import javax.swing.JTextField;
import javax.swing.text.Document;

/** A field that tells of what people type into it, and of nothing else: what the program shows in it is no news to it. */
final class TypedText extends JTextField {
    private transient Consumer<String> typed = text -> {};

    TypedText(String name, int columns) {
        super(columns);
        setName(name);
    }

    /** Tells this listener of every text that is typed. */
    TypedText whenTyped(Consumer<String> listener) {
        typed = listener;
        show(getText());
        return this;
    }

    /** Shows a text; a field that shows it already is left alone, with its caret. */
    void follow(String text) {
        if (!getText().equals(text)) {
            show(text);
        }
    }

    private void show(String text) {
        // In a document of its own, which nobody listens to before it is whole.
        Document document = createDefaultModel();
        setDocument(document);
        setText(text);
        document.addDocumentListener(new TypingListener(() -> typed.accept(getText())));
    }
}
