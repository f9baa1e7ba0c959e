package edgewright.desk.pattern;

import edgewright.desk.parts.Look;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.Rectangle2D;
import javax.swing.text.DefaultHighlighter;
import javax.swing.text.JTextComponent;
import javax.swing.text.View;

/** The ways in which words are lit: a tint of the accent, and for the reading mark a frame too, since colour alone is not seen by all. */
enum WordsLight {
    /** The words of the stitch at the cursor. */
    CURSOR(40, false),
    /** The words that are pointed at, here or on the chart. */
    POINTED(75, false),
    /** The words that are read. */
    READ(60, true);

    private final int veil;
    private final boolean framed;

    WordsLight(int veil, boolean framed) {
        this.veil = veil;
        this.framed = framed;
    }

    DefaultHighlighter.DefaultHighlightPainter painter() {
        return new Painter(veil, framed);
    }

    private static final class Painter extends DefaultHighlighter.DefaultHighlightPainter {
        private final int veil;
        private final boolean framed;

        Painter(int veil, boolean framed) {
            super(null);
            this.veil = veil;
            this.framed = framed;
        }

        @Override
        public Color getColor() {
            Color accent = Look.colour("accent");
            return new Color(accent.getRed(), accent.getGreen(), accent.getBlue(), veil);
        }

        @Override
        public Shape paintLayer(Graphics graphics, int begin, int end, Shape bounds, JTextComponent words, View view) {
            Shape painted = super.paintLayer(graphics, begin, end, bounds, words, view);
            if (framed && painted != null) {
                Graphics2D g = (Graphics2D) graphics.create();
                g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
                g.setColor(Look.colour("accent"));
                // Within what is painted anew when the words are not lit any more.
                g.setStroke(new BasicStroke(1.5f));
                Rectangle at = painted.getBounds();
                g.draw(new Rectangle2D.Double(at.x + 0.75, at.y + 0.75, at.width - 1.5, at.height - 1.5));
                g.dispose();
            }
            return painted;
        }
    }
}
