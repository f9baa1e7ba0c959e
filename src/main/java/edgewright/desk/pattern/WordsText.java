package edgewright.desk.pattern;

import edgewright.desk.parts.Forms;
import edgewright.desk.parts.Look;
import edgewright.desk.pattern.ShownPattern.Paragraph;
import edgewright.desk.pattern.ShownPattern.Stretch;
import java.awt.Color;
import java.awt.Font;
import java.awt.Insets;
import java.awt.Point;
import java.awt.Rectangle;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import javax.swing.JTextPane;
import javax.swing.UIManager;
import javax.swing.text.AttributeSet;
import javax.swing.text.BadLocationException;
import javax.swing.text.DefaultCaret;
import javax.swing.text.DefaultStyledDocument;
import javax.swing.text.Highlighter;
import javax.swing.text.SimpleAttributeSet;
import javax.swing.text.StyleConstants;
import javax.swing.text.StyledDocument;

/** The text of a pattern on the screen: paragraph by paragraph, of which only those that have changed are set anew; some of it lit. */
final class WordsText extends JTextPane {
    private static final float FONT_SIZE = 14.5f;
    private static final int INDENT_PX = 16;
    private static final float GAP_PX = 5;

    /** The typeface and the colour are those of the desk: a document has others of its own, and black for any ground. */
    private static final class Lines extends DefaultStyledDocument {
        // Asked for with every word that is measured.
        private Font plain = Look.font(FONT_SIZE);
        private Font bold = plain.deriveFont(Font.BOLD);

        void lookAgain() {
            plain = Look.font(FONT_SIZE);
            bold = plain.deriveFont(Font.BOLD);
        }

        @Override
        public Font getFont(AttributeSet letters) {
            return StyleConstants.isBold(letters) ? bold : plain;
        }

        @Override
        public Color getForeground(AttributeSet letters) {
            return letters.isDefined(StyleConstants.Foreground)
                    ? super.getForeground(letters)
                    : UIManager.getColor("TextArea.foreground");
        }
    }

    /** Nothing is typed here, so only what is chosen is seen; and words that change do not scroll to where somebody once pressed. */
    private static final class Unseen extends DefaultCaret {
        Unseen() {
            setUpdatePolicy(NEVER_UPDATE);
        }

        @Override
        public void setVisible(boolean seen) {
            super.setVisible(false);
        }
    }

    private transient List<Paragraph> shown = List.of();
    private final transient Map<WordsLight, List<Object>> lights = new EnumMap<>(WordsLight.class);

    WordsText() {
        setName("words");
        setEditable(false);
        setMargin(new Insets(4, 10, 8, 10));
        setEditorKit(new HangingLines());
        setCaret(new Unseen());
        Forms.tabLeaves(this);
    }

    @Override
    public void updateUI() {
        super.updateUI();
        setFont(Look.font(FONT_SIZE));
        if (getDocument() instanceof Lines lines) {
            lines.lookAgain();
        }
        setBackground(UIManager.getColor("TextArea.background"));
        if (shown != null && !shown.isEmpty()) {
            List<Paragraph> again = shown;
            shown = List.of();
            show(again);
        }
    }

    /** Shows these paragraphs. What is lit is lit no more. */
    void show(List<Paragraph> paragraphs) {
        unlight();
        int same = 0;
        while (same < Math.min(paragraphs.size(), shown.size())
                && paragraphs.get(same).equals(shown.get(same))) {
            same++;
        }
        int sameAtEnd = 0;
        while (sameAtEnd < Math.min(paragraphs.size(), shown.size()) - same
                && paragraphs.get(paragraphs.size() - 1 - sameAtEnd).equals(shown.get(shown.size() - 1 - sameAtEnd))) {
            sameAtEnd++;
        }
        if (same == paragraphs.size() && same == shown.size()) {
            return;
        }
        try {
            if (sameAtEnd == 0) {
                // Nobody looks at this text yet, so each step of setting it costs nothing.
                Lines all = new Lines();
                put(all, 0, paragraphs, "");
                setDocument(all);
            } else {
                int begin = length(shown.subList(0, same));
                int end = length(shown.subList(0, shown.size() - sameAtEnd));
                getStyledDocument().remove(begin, end - begin);
                put(getStyledDocument(), begin, paragraphs.subList(same, paragraphs.size() - sameAtEnd), "\n");
            }
        } catch (BadLocationException e) {
            throw new IllegalStateException("the words are not where they were put", e);
        }
        shown = List.copyOf(paragraphs);
    }

    /** The characters of paragraphs, each with its end. */
    private static int length(List<Paragraph> paragraphs) {
        return paragraphs.stream()
                .mapToInt(paragraph -> paragraph.text().length() + 1)
                .sum();
    }

    private static void put(StyledDocument into, int at, List<Paragraph> paragraphs, String end)
            throws BadLocationException {
        if (paragraphs.isEmpty()) {
            return;
        }
        into.insertString(
                at,
                paragraphs.stream().map(Paragraph::text).collect(Collectors.joining("\n")) + end,
                SimpleAttributeSet.EMPTY);
        int begin = at;
        for (Paragraph paragraph : paragraphs) {
            style(into, begin, paragraph);
            begin += paragraph.text().length() + 1;
        }
    }

    private static void style(StyledDocument into, int begin, Paragraph paragraph) {
        SimpleAttributeSet lines = new SimpleAttributeSet();
        boolean further = paragraph.kind() == ShownPattern.Kind.LINE;
        StyleConstants.setLeftIndent(lines, further ? 2 * INDENT_PX : INDENT_PX);
        StyleConstants.setFirstLineIndent(lines, -INDENT_PX);
        StyleConstants.setSpaceAbove(lines, further ? 0 : GAP_PX);
        into.setParagraphAttributes(begin, 1, lines, true);
        SimpleAttributeSet letters = new SimpleAttributeSet();
        if (paragraph.kind() == ShownPattern.Kind.OBJECTION) {
            StyleConstants.setForeground(letters, new Color(Look.colour("error").getRGB()));
        }
        into.setCharacterAttributes(begin, paragraph.text().length() + 1, letters, true);
        SimpleAttributeSet label = new SimpleAttributeSet();
        StyleConstants.setBold(label, true);
        into.setCharacterAttributes(begin, paragraph.label(), label, true);
    }

    /** Lights these stretches in one of the ways, and nothing else in it. */
    void light(WordsLight way, List<Stretch> stretches) {
        Highlighter highlighter = getHighlighter();
        lights.getOrDefault(way, List.of()).forEach(highlighter::removeHighlight);
        List<Object> lit = new ArrayList<>();
        try {
            for (Stretch stretch : stretches) {
                lit.add(highlighter.addHighlight(stretch.begin(), stretch.end(), way.painter()));
            }
        } catch (BadLocationException e) {
            throw new IllegalStateException("no words are there to be lit", e);
        }
        lights.put(way, lit);
    }

    private void unlight() {
        for (WordsLight way : WordsLight.values()) {
            light(way, List.of());
        }
    }

    /** Scrolls no further than it must for a stretch to be seen, with a line around it where there is room. */
    void reveal(Stretch stretch) {
        Rectangle around = bounds(stretch);
        if (around.height > 0 && !getVisibleRect().contains(around)) {
            int line = getFontMetrics(getFont()).getHeight();
            int room = Math.max(0, Math.min(line, (getVisibleRect().height - around.height) / 2));
            around.grow(0, room);
            scrollRectToVisible(new Rectangle(0, around.y, 1, around.height));
        }
    }

    /** From the line of its first character to that of its last. */
    Rectangle bounds(Stretch stretch) {
        try {
            if (getWidth() == 0 || modelToView2D(stretch.begin()) == null) {
                return new Rectangle();
            }
            return modelToView2D(stretch.begin())
                    .getBounds()
                    .union(modelToView2D(Math.max(stretch.begin(), stretch.end() - 1))
                            .getBounds());
        } catch (BadLocationException e) {
            throw new IllegalStateException("no words are there", e);
        }
    }

    /** The character at a point; empty where there is none. */
    OptionalInt characterAt(Point point) {
        try {
            int near = viewToModel2D(point);
            // Between two characters the nearer end is answered; the point may lie on the one before it.
            for (int character = near; character >= Math.max(0, near - 1); character--) {
                if (character < getDocument().getLength()) {
                    Rectangle from = modelToView2D(character).getBounds();
                    Rectangle to = modelToView2D(character + 1).getBounds();
                    int right = to.y == from.y ? to.x : from.x + from.height / 2;
                    if (point.y >= from.y && point.y < from.y + from.height && point.x >= from.x && point.x < right) {
                        return OptionalInt.of(character);
                    }
                }
            }
            return OptionalInt.empty();
        } catch (BadLocationException e) {
            return OptionalInt.empty();
        }
    }
}
