package edgewright.desk.piece;

import edgewright.desk.fitting.Piece;
import edgewright.desk.fitting.PieceOutcome;
import edgewright.desk.parts.ColumnScroll;
import edgewright.desk.parts.Forms;
import edgewright.desk.parts.Look;
import edgewright.desk.parts.SeverityIcon;
import edgewright.desk.parts.TextColumn;
import edgewright.texts.Messages;
import java.awt.BorderLayout;
import java.util.List;
import javax.swing.BorderFactory;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;

/** What comes of a piece, in words: whether it fits, what to mind, what to do on each side and in which rounds. */
final class PieceAnswerPane extends ColumnScroll {
    private final transient Messages says;
    private final transient Piece piece;

    PieceAnswerPane(Piece piece, Messages says) {
        super("pieceAnswer");
        this.says = says;
        this.piece = piece;
        setBorder(BorderFactory.createEmptyBorder());
        piece.listen(change -> follow());
        follow();
    }

    private void follow() {
        PieceOutcome outcome = piece.outcome();
        TextColumn column = new TextColumn(14, 16, 16);
        JLabel headline = new JLabel(outcome.headline());
        headline.setName("piece.headline");
        headline.putClientProperty("FlatLaf.styleClass", "h2");
        Look.write(headline, role(outcome.mood()));
        headline.setBorder(BorderFactory.createEmptyBorder(0, 0, 4, 0));
        column.add(headline);
        outcome.notes().forEach(column::prose);
        outcome.warnings().forEach(warning -> column.add(warning(warning)));
        if (!outcome.rounds().isEmpty()) {
            column.heading(says.text("piece-rounds"));
            outcome.rounds().forEach(column::prose);
        }
        if (!outcome.size().isEmpty()) {
            column.heading(says.text("piece-size"));
            outcome.size().forEach(column::prose);
        }
        if (!piece.words().why().isEmpty()) {
            column.heading(says.text("piece-noWords"));
            piece.words().why().forEach(column::prose);
        }
        List<String> words = outcome.sides().stream()
                .filter(side -> !side.words().isEmpty())
                .map(side -> String.join("\n", side.words()))
                .toList();
        if (!words.isEmpty()) {
            column.heading(says.text("piece-sides"));
            words.forEach(column::prose);
        }
        show(column);
        revalidate();
        repaint();
    }

    /** The colour of the look. */
    private static String role(PieceOutcome.Mood mood) {
        return switch (mood) {
            case FITS -> "good";
            case NO, MISTAKE -> "error";
            case ASKING -> "quiet";
            case CHANGES -> "accent";
        };
    }

    private JPanel warning(String text) {
        JLabel mark = new JLabel(SeverityIcon.of(false, null));
        mark.getAccessibleContext().setAccessibleName(says.text("piece-warning"));
        mark.setBorder(BorderFactory.createEmptyBorder(1, 0, 0, 0));
        JPanel place = new JPanel(new BorderLayout());
        place.setOpaque(false);
        place.add(mark, BorderLayout.NORTH);
        JTextArea prose = Forms.prose(text);
        JPanel line = new JPanel(new BorderLayout(8, 0));
        line.setOpaque(false);
        line.add(place, BorderLayout.LINE_START);
        line.add(prose, BorderLayout.CENTER);
        return line;
    }
}
