package edgewright.desk.pattern;

import java.awt.Graphics;
import java.awt.Rectangle;
import java.awt.Shape;
import javax.swing.text.AbstractDocument;
import javax.swing.text.Element;
import javax.swing.text.ParagraphView;
import javax.swing.text.StyledEditorKit;
import javax.swing.text.ViewFactory;

/**
 * Sets paragraphs whose first line begins further out than the others. Swing's own way paints such a line twice, which makes its
 * letters look bold.
 */
final class HangingLines extends StyledEditorKit {
    @Override
    public ViewFactory getViewFactory() {
        ViewFactory usual = super.getViewFactory();
        return element -> AbstractDocument.ParagraphElementName.equals(element.getName())
                ? new Paragraph(element)
                : usual.create(element);
    }

    private static final class Paragraph extends ParagraphView {
        private boolean firstIsPainted;

        Paragraph(Element element) {
            super(element);
        }

        @Override
        public void paint(Graphics g, Shape bounds) {
            firstIsPainted = false;
            super.paint(g, bounds);
        }

        @Override
        protected void paintChild(Graphics g, Rectangle at, int line) {
            if (line > 0 || !firstIsPainted) {
                firstIsPainted |= line == 0;
                super.paintChild(g, at, line);
            }
        }
    }
}
