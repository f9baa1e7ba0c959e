package edgewright.desk.start;

import edgewright.desk.parts.Look;
import java.awt.Dimension;
import javax.swing.JLabel;
import javax.swing.JTextArea;
import javax.swing.UIManager;

/** A first step: what it is, and in a sentence what comes of it. */
final class StartStep extends StartButton {
    StartStep(String name, String title, String sentence, Runnable deed) {
        super(name, "[grow, fill]");
        JLabel head = Look.heading(title);
        head.setName(name + ".title");
        add(head, "wmin 0");
        add(new Sentence(sentence), "wmin 0");
        getAccessibleContext().setAccessibleName(title);
        getAccessibleContext().setAccessibleDescription(sentence);
        addActionListener(event -> deed.run());
    }

    /** As high as the sentence makes it at this width. */
    int heightAt(int widthPx) {
        setSize(widthPx, getHeight());
        doLayout();
        return getPreferredSize().height;
    }

    /** Text that wraps, and lets the mouse through to its button. */
    private static final class Sentence extends JTextArea {
        Sentence(String text) {
            super(text);
            setEditable(false);
            setFocusable(false);
            setOpaque(false);
            setLineWrap(true);
            setWrapStyleWord(true);
            setBorder(null);
            Look.write(this, "quiet");
        }

        @Override
        public void updateUI() {
            super.updateUI();
            setFont(UIManager.getFont("Label.font"));
            setBorder(null);
        }

        @Override
        public boolean contains(int x, int y) {
            return false;
        }

        @Override
        public Dimension getMinimumSize() {
            return new Dimension(0, getPreferredSize().height);
        }
    }
}
